// The answer of a cylinder card: when to change, when it is empty, how much is left, and what each number rests on. Leaves out the form.
import { STANDARD_PRESSURE_KPA } from '../../units/constants.ts'
import {
  cylinderBasisLines,
  factorRuleText,
  simpleRuleText,
} from '../../words/gas-cylinder-basis.ts'
import {
  changeBetweenText,
  clockOnDayText,
  CYLINDER_TEXT,
  cylinderSentence,
  drawPartText,
  litresRangeText,
  overdueByText,
  oxygenFlowRangeText,
  oxygenFlowText,
  readingText,
} from '../../words/gas-cylinder-text.ts'
import { fromNowText, GAS_TEXT } from '../../words/gas-page-text.ts'
import { airPressureText, gasPressureText, gasVolumeText } from '../../words/supply-value.ts'
import { supplyText, supplyTexts } from '../../words/supply-text.ts'
import type { GasUnits } from '../../words/supply-value.ts'
import { durationText, plainNumberText } from '../../words/number-text.ts'
import type { Fact } from '../parts/facts.tsx'
import { Facts } from '../parts/facts.tsx'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'
import type { CardAnswer, CylinderTimes } from './cylinder-answer.ts'
import type { CylinderQuestion } from './cylinder-form.ts'
import { daysBetween, timeOf } from './wall-clock.ts'

export interface CylinderResultProps {
  readonly question: CylinderQuestion
  readonly answer: CardAnswer
  readonly name: string
  readonly now: Date
  readonly units: GasUnits
}

export function CylinderResult(props: CylinderResultProps) {
  const { answer, question, units } = props
  const isExtrapolated = answer.contents.equation === 'extrapolated'
  return (
    <div className="answer">
      <p className="eyebrow">{readingOf(props)}</p>
      <Head {...props} />
      {isExtrapolated ? (
        <ul className="badges">
          <li>{CYLINDER_TEXT.extrapolated()}</li>
        </ul>
      ) : null}
      <DrawnRemarks question={question} units={units} />
      <Facts facts={factsOf(props)} />
      <HandbookLines answer={answer} question={question} units={units} />
      <Fold heading={GAS_TEXT.assumptions()}>
        <Lines lines={cylinderBasisLines(basisOf(question, answer, units))} />
      </Fold>
    </div>
  )
}

/** A draw that is only a lower bound ends the cylinder earlier than shown: said above the numbers. */
function DrawnRemarks({ question, units }: Pick<CylinderResultProps, 'question' | 'units'>) {
  return question.drawnRemarks.map((remark) => (
    <p key={remark.code} className={remark.code === 'BIAS_FLOW_UNKNOWN' ? 'must-act' : 'why'}>
      {supplyText(remark, units)}
    </p>
  ))
}

function readingOf({ question, answer, now, units }: CylinderResultProps): string {
  const { readAt, cylinder } = question
  return readingText({
    gauge: gasPressureText(cylinder.gaugeKpa, units),
    clock: clockOnDayText({ ...timeOf(readAt), day: -daysBetween(readAt, now) }),
    minutesAgo: answer.readMinutesAgo,
  })
}

function Head({ answer, name }: CylinderResultProps) {
  const { nothing } = answer.contents
  if (nothing === 'VALVE_CLOSED')
    return <Nothing head={CYLINDER_TEXT.closed()} why={CYLINDER_TEXT.closedWhy()} />
  if (nothing === 'AT_OR_BELOW_FLOOR')
    return <Nothing head={CYLINDER_TEXT.atFloor()} why={CYLINDER_TEXT.atFloorWhy()} />
  if (answer.times === null) return <p className="answer-name">{CYLINDER_TEXT.neverEmpty()}</p>
  return <Times times={answer.times} name={name} />
}

function Nothing({ head, why }: { readonly head: string; readonly why: string }) {
  return (
    <div className="must-act" role="alert">
      <p className="answer-name">{head}</p>
      <p>{why}</p>
    </div>
  )
}

function Times({ times, name }: { readonly times: CylinderTimes; readonly name: string }) {
  const changeAt = clockOnDayText(times.changeAt)
  const emptyAt = clockOnDayText(times.emptyAt)
  const isPast = times.minutesLeft < 0
  const left = isPast
    ? overdueByText(durationText(-times.minutesLeft))
    : fromNowText(durationText(Math.floor(times.minutesLeft)))
  return (
    <>
      <output className="unseen">{cylinderSentence({ name, changeAt, emptyAt, left })}</output>
      {isPast ? (
        <p className="must-act" role="alert">
          {CYLINDER_TEXT.overdue()}
        </p>
      ) : null}
      <div className="gas-times">
        <p className="gas-change">
          <span>{CYLINDER_TEXT.change()}</span>{' '}
          <strong className="primary-value">{changeAt}</strong>
        </p>
        <p className="gas-empty">
          <span>{CYLINDER_TEXT.empty()}</span> <strong>{emptyAt}</strong>
        </p>
      </div>
      <p className="why">{left}</p>
    </>
  )
}

function factsOf({ answer, question, units }: CylinderResultProps): readonly Fact[] {
  const { contents, times } = answer
  const { drawn } = question
  const volume = (litres: number): string => gasVolumeText(litres, units)
  const hasRange = contents.usableHighL > contents.usableLowL
  return [
    { name: CYLINDER_TEXT.usable(), value: volume(contents.usableL) },
    ...(hasRange
      ? [
          {
            name: CYLINDER_TEXT.usableRange(),
            value: litresRangeText(volume(contents.usableLowL), volume(contents.usableHighL)),
          },
        ]
      : []),
    { name: CYLINDER_TEXT.drawn(), value: oxygenFlowText(drawn.oxygenLpm) },
    { name: CYLINDER_TEXT.drawnRange(), value: oxygenFlowRangeText(drawn) },
    ...(times === null
      ? []
      : [
          {
            name: CYLINDER_TEXT.between(),
            value: changeBetweenText(
              clockOnDayText(times.changeEarliest),
              times.changeLatest === null ? null : clockOnDayText(times.changeLatest),
            ),
          },
        ]),
    ...(drawn.parts.length > 1
      ? [
          {
            name: CYLINDER_TEXT.parts(),
            value: drawn.parts
              .map(({ part, oxygenLpm }) => drawPartText(part, oxygenLpm))
              .join('; '),
            isWide: true,
          },
        ]
      : []),
  ]
}

function HandbookLines(props: Pick<CylinderResultProps, 'answer' | 'question' | 'units'>) {
  const { answer, question, units } = props
  const { times, simpleRuleMinutes, factorRuleMinutes } = answer
  if (times === null || simpleRuleMinutes === null) return null
  const oursMinutes = times.minutesToChange
  return (
    <section className="section">
      <h3>{CYLINDER_TEXT.beside()}</h3>
      <p>{simpleRuleText({ ruleMinutes: simpleRuleMinutes, oursMinutes })}</p>
      <Lines lines={supplyTexts(answer.remarks, units)} />
      {factorRuleMinutes === null ? null : (
        <p>
          {factorRuleText({
            factorText: plainNumberText(question.handbookFactorLPerPsi ?? 0),
            ruleMinutes: factorRuleMinutes,
            oursMinutes,
          })}
        </p>
      )}
    </section>
  )
}

function basisOf(question: CylinderQuestion, answer: CardAnswer, units: GasUnits) {
  const { cylinder, use } = question
  const pressure = (gaugeKpa: number | undefined): string | null =>
    gaugeKpa === undefined ? null : gasPressureText(gaugeKpa, units)
  return {
    heldText: gasVolumeText(answer.heldL, units),
    readAtC: cylinder.readAtC,
    isReadAtGiven: question.isReadAtCGiven,
    usedAtC: use.usedAtC ?? cylinder.readAtC,
    isUsedAtGiven: question.isUsedAtCGiven,
    leftText: gasPressureText(use.leftGaugeKpa, units),
    regulatorMinimumText: pressure(use.regulatorMinimumGaugeKpa),
    gaugeErrorText: pressure(use.gaugeErrorKpa),
    airText: airPressureText(use.barometricKpa),
    standardAirText: airPressureText(STANDARD_PRESSURE_KPA),
    airFrom: question.airFrom,
    drawnFrom: question.drawKind,
  }
}
