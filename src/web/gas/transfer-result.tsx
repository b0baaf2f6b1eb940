// The answer of the transfer planner: which cylinders, when to change, what if a lift stops or the flow must rise; the sheet to print. Leaves out the form.
import { Button } from 'react-aria-components'
import { clockAfter } from '../../supply/duration.ts'
import type { Course, TransferPlan } from '../../supply/transfer.ts'
import { GAS_TEXT } from '../../words/gas-page-text.ts'
import {
  cylinderKindText,
  legLine,
  legSetUpText,
  needText,
  pickText,
  stoppedCoveredText,
  stoppedShortText,
  stoppedText,
  transferBasisLines,
  TRANSFER_TEXT,
  wayText,
  worstText,
} from '../../words/gas-transfer-text.ts'
import { airLine } from '../../words/gas-cylinder-basis.ts'
import type { AirFrom } from '../../words/gas-cylinder-basis.ts'
import { CHAIN_TAKEN_TEXT, chainTakenLines } from '../../words/gas-chain-text.ts'
import { setUpText } from '../../words/set-up-text.ts'
import { legName } from '../../words/supply-names.ts'
import { supplyText, supplyTexts } from '../../words/supply-text.ts'
import { airPressureText, clockTimeText, gasPressureText } from '../../words/supply-value.ts'
import type { GasUnits } from '../../words/supply-value.ts'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'
import type { TransferAnswer, TransferRequest } from './gas-api.ts'
import { Timeline } from './transfer-timeline.tsx'
import type { TimeOfDay } from './wall-clock.ts'

export interface TransferResultProps {
  readonly request: TransferRequest
  readonly answer: TransferAnswer
  readonly isStale: boolean
  readonly leaveAt: TimeOfDay
  readonly airFrom: AirFrom
  readonly stopLegIndex: number | null
  readonly onStop: (legIndex: number | null) => void
  readonly units: GasUnits
}

/** The answer itself and its picture. */
export function TransferResult(props: TransferResultProps) {
  const { answer, isStale, leaveAt, units } = props
  const { plan } = answer
  const clock = (minutes: number): string => clockTimeText(clockAfter(leaveAt, minutes))
  return (
    <div className="plan gas-sheet" data-stale={isStale}>
      <h2 className="gas-sheet-heading">{TRANSFER_TEXT.sheet()}</h2>
      <p className="gas-print-only">{TRANSFER_TEXT.sheetLine()}</p>
      <div className="answer">
        <p className="eyebrow">
          {wayText({
            leaveAt: clock(0),
            plannedMinutes: plan.need.plannedMinutes,
            reservedMinutes: plan.need.reservedMinutes,
          })}
        </p>
        <Head plan={plan} clock={clock} units={units} />
        <SetUps {...props} clock={clock} />
        <p>{needText({ neededL: plan.need.neededL, usableL: plan.choice.usableL }, units)}</p>
        <Urgent plan={plan} units={units} />
        <h3>{TRANSFER_TEXT.worst()}</h3>
        <p>{worstOf(plan, clock, units)}</p>
        <LiftButtons {...props} clock={clock} />
      </div>
      <Timeline
        plan={plan}
        course={answer.stopped?.course ?? plan.course}
        leaveAt={leaveAt}
        units={units}
      />
    </div>
  )
}

/** What is checked, minded and rests below the numbers. */
export function TransferRest(props: TransferResultProps) {
  const { answer, units } = props
  const { plan } = answer
  return (
    <div className="plan gas-sheet" data-stale={props.isStale}>
      <section className="section gas-checks">
        <h2>{TRANSFER_TEXT.checks()}</h2>
        <ul className="gas-boxes">
          {supplyTexts(plan.checks, units).map((check) => (
            <li key={check}>{check}</li>
          ))}
          <li>{TRANSFER_TEXT.gasFails()}</li>
        </ul>
      </section>
      <section className="section">
        <h2>{TRANSFER_TEXT.mind()}</h2>
        <Lines lines={mindLines(plan, units)} />
      </section>
      <Fold heading={TRANSFER_TEXT.legTable()} level={2}>
        <Lines lines={legLines(plan, props.leaveAt)} />
      </Fold>
      <Fold heading={GAS_TEXT.assumptions()} level={2}>
        <Lines lines={basisLines(props)} />
      </Fold>
      <Fold heading={CHAIN_TAKEN_TEXT.heading()} level={2}>
        <Lines lines={chainLines(plan)} />
      </Fold>
      <Button className="button" onPress={() => window.print()}>
        {TRANSFER_TEXT.printSheet()}
      </Button>
    </div>
  )
}

type Clock = (minutes: number) => string

function Head({
  plan,
  clock,
  units,
}: {
  readonly plan: TransferPlan
  readonly clock: Clock
  readonly units: GasUnits
}) {
  const { choice, course } = plan
  if (choice.picks.length === 0)
    return (
      <p className="answer-name">
        {plan.need.neededL > 0 ? TRANSFER_TEXT.noCylinder() : TRANSFER_TEXT.none()}
      </p>
    )
  return (
    <>
      <ul className="gas-picks" aria-label={TRANSFER_TEXT.take()}>
        {choice.picks.map(({ row, count }) => (
          <li key={row.id} className="answer-name">
            {pickText({ ...row, count }, units)}
          </li>
        ))}
      </ul>
      <output className="gas-times">
        <span className="gas-change">
          {course.changeAtMinutes.length === 0 ? (
            <span>{TRANSFER_TEXT.noChange()}</span>
          ) : (
            <>
              <span>{TRANSFER_TEXT.change()}</span>{' '}
              <strong className="gas-clock">{changesOf(course, clock)}</strong>
            </>
          )}
        </span>
        <span className="gas-empty">
          <span>{TRANSFER_TEXT.empty()}</span> <strong>{emptyOf(course, clock)}</strong>
        </span>
      </output>
    </>
  )
}

function changesOf({ changeAtMinutes }: Course, clock: Clock): string {
  return changeAtMinutes.map(clock).join(', ')
}

function emptyOf({ emptyAtMinute }: Course, clock: Clock): string {
  return emptyAtMinute === null ? '–' : clock(emptyAtMinute)
}

/** Where the set-up or its flow changes on the way, so that the sheet says it too. */
function SetUps({ request, answer, clock }: TransferResultProps & { readonly clock: Clock }) {
  const { shelf } = request.question
  const texts = answer.plan.legs.map(({ setUp }) =>
    setUp === null ? null : setUpText(setUp, shelf),
  )
  const changed = answer.plan.legs.flatMap(({ leg, fromMinute }, i) => {
    const setUp = texts[i] ?? null
    if (setUp === null || (i > 0 && setUp === texts[i - 1])) return []
    return [legSetUpText({ position: i + 1, kind: leg.kind, from: clock(fromMinute), setUp })]
  })
  if (changed.length < 2) return null
  return (
    <>
      <h3>{TRANSFER_TEXT.setUps()}</h3>
      <Lines lines={changed} />
    </>
  )
}

/** A draw that is only a lower bound makes every time above too late. */
const URGENT = [
  'RUNS_OUT_ON_THE_WAY',
  'RESERVE_NOT_COVERED',
  'STORE_TOO_SMALL',
  'BIAS_FLOW_UNKNOWN',
] as const
const isUrgent = ({ code }: { readonly code: string }): boolean =>
  URGENT.some((urgent) => urgent === code)

function Urgent({ plan, units }: { readonly plan: TransferPlan; readonly units: GasUnits }) {
  const ofLegs = plan.legs.flatMap(({ remarks }) => remarks)
  const urgent = [...plan.remarks, ...ofLegs].filter(isUrgent)
  if (urgent.length === 0) return null
  return (
    <div className="must-act" role="alert">
      {[...new Set(supplyTexts(urgent, units))].map((text) => (
        <p key={text}>{text}</p>
      ))}
    </div>
  )
}

function worstOf(plan: TransferPlan, clock: Clock, units: GasUnits): string {
  return worstText(
    {
      neededL: plan.need.worstNeededL,
      missingL: plan.worstMissingL,
      emptyAt: emptyOf(plan.worstCourse, clock),
    },
    units,
  )
}

/** One button for each lift; where there is none, for the first leg. */
function LiftButtons(props: TransferResultProps & { readonly clock: Clock }) {
  const { answer, stopLegIndex, onStop, clock, units } = props
  const { plan, stopped } = answer
  const lifts = plan.legs.flatMap(({ leg }, i) => (leg.kind === 'lift' ? [i] : []))
  const offered = lifts.length === 0 ? [0] : lifts
  const nameAt = (i: number): string => legNameAt(plan, i)
  return (
    <div className="gas-lift">
      <div className="gas-actions">
        {offered.map((i) => (
          <Button
            key={i}
            className="button"
            aria-pressed={stopLegIndex === i}
            onPress={() => onStop(stopLegIndex === i ? null : i)}
          >
            {stopLegIndex === i ? TRANSFER_TEXT.moving() : TRANSFER_TEXT.still(nameAt(i))}
          </Button>
        ))}
      </div>
      <output>
        {stopped === null || stopLegIndex === null ? null : (
          <div className="gas-stopped">
            <p>
              {stoppedText({
                leg: nameAt(stopLegIndex),
                arriveAt: clock(stopped.course.wayEndsMinute),
                changeAt:
                  stopped.course.changeAtMinutes.length === 0
                    ? '–'
                    : changesOf(stopped.course, clock),
                emptyAt: emptyOf(stopped.course, clock),
              })}
            </p>
            <p className={stopped.isCovered ? '' : 'must-act'}>
              {stopped.isCovered
                ? stoppedCoveredText()
                : stoppedShortText(stopped.course.missingL, units)}
            </p>
          </div>
        )}
      </output>
    </div>
  )
}

/** "lift", or where several legs are of its kind "lift (leg 4)". */
function legNameAt({ legs }: TransferPlan, at: number): string {
  const kind = legs[at]?.leg.kind ?? 'corridor'
  const isOnly = legs.filter(({ leg }) => leg.kind === kind).length === 1
  return isOnly ? legName(kind) : TRANSFER_TEXT.numbered(legName(kind), at + 1)
}

/** Said elsewhere on the page, as what is urgent is. */
const SAID_ELSEWHERE = ['WORST_CASE_NOT_COVERED']

function mindLines(plan: TransferPlan, units: GasUnits): readonly string[] {
  const ofLegs = plan.legs.flatMap(({ remarks }) => remarks)
  const all = [...plan.remarks, ...ofLegs]
    .filter((remark) => !isUrgent(remark) && !SAID_ELSEWHERE.includes(remark.code))
    .map((remark) => supplyText(remark, units))
  return [...new Set(all)]
}

function legLines(plan: TransferPlan, leaveAt: TimeOfDay): readonly string[] {
  return plan.legs.map((leg) =>
    legLine({
      name: legName(leg.leg.kind),
      from: clockAfter(leaveAt, leg.fromMinute),
      until: clockAfter(leaveAt, leg.untilMinute),
      carriedLpm: leg.carriedLpm,
      worstLpm: leg.worstCarriedLpm,
      barometricKpa: leg.barometricKpa,
      effectiveO2Fraction: leg.effectiveO2Fraction,
    }),
  )
}

/** Each chain once, whichever legs have it. */
function chainLines({ legs }: TransferPlan): readonly string[] {
  const lines = legs.flatMap(({ leg: { chain } }) =>
    chain === undefined ? [] : chainTakenLines(chain),
  )
  return [...new Set(lines)]
}

function basisLines({ request, answer, airFrom, units }: TransferResultProps): readonly string[] {
  const { question } = request
  const first = answer.plan.legs[0]?.setUp ?? null
  return [
    ...(first === null ? [] : [TRANSFER_TEXT.onIt(setUpText(first, question.shelf))]),
    ...transferBasisLines({
      factor: answer.plan.reserve.factor,
      extraMinutes: answer.plan.reserve.extraMinutes,
      leftText: gasPressureText(question.leftGaugeKpa, units),
      gaugeErrorText:
        question.gaugeErrorKpa === undefined
          ? null
          : gasPressureText(question.gaugeErrorKpa, units),
      temperatureC: question.readAtC,
    }),
    airLine(airFrom, airPressureText(question.barometricKpa)),
    ...answer.plan.choice.notUsed.map(({ row, reason }) =>
      TRANSFER_TEXT.notTaken(cylinderKindText(row, units), supplyText(reason, units)),
    ),
  ]
}
