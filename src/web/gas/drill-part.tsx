// The lights-out drill: every bed of a ward when one thing fails, most endangered first, on one page to print. Leaves out the patients' saturation, which is not computed yet.
import type { Remote } from 'comlink'
import { useCallback } from 'react'
import { Button } from 'react-aria-components'
import { FAILURES } from '../../supply/bed-outage.ts'
import type { Failure } from '../../supply/bed-outage.ts'
import type { BedDrill } from '../../supply/lights-out.ts'
import type { WardFile } from '../../supply/ward.ts'
import { drillBasisLines } from '../../words/gas-assumptions.ts'
import { GAS_TEXT } from '../../words/gas-page-text.ts'
import {
  bedName,
  DRILL_TEXT,
  endangeredText,
  failureName,
  outageText,
  sheetHeadText,
  WARD_TEXT,
} from '../../words/gas-ward-text.ts'
import { setUpShortText } from '../../words/set-up-text.ts'
import { supplyTexts } from '../../words/supply-text.ts'
import { useShelf } from '../shelf/shelf-store.ts'
import { ChoiceField } from '../parts/choice-field.tsx'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'
import type { GasApi, WardRequest } from './gas-api.ts'
import { GasRefused } from './gas-refused.tsx'
import { useKeptForm } from './kept-form.ts'
import { followed } from './read-form.ts'
import { ShelfSaid } from './shelf-said.tsx'
import { useGasAnswer } from './use-gas-answer.ts'
import { useGasUnits } from './use-gas-units.ts'
import { useWard } from './use-ward.ts'
import { WardChoice } from './ward-choice.tsx'

const START = { texts: { failure: 'pipeline-oxygen' }, rows: [] }

export function DrillPart() {
  const chosen = useWard()
  const { shelf } = useShelf()
  const { form, change } = useKeptForm('drill', START)
  const failure = FAILURES.find((one) => one === form.texts['failure']) ?? 'pipeline-oxygen'
  const ask = useCallback(
    async (core: Remote<GasApi>, request: WardRequest) => await core.drill(request),
    [],
  )
  const answer = useGasAnswer(
    followed(chosen.ward, (ward): WardRequest => ({ ward, shelf })),
    ask,
  )
  return (
    <>
      <p className="section-help">{DRILL_TEXT.help()}</p>
      <section className="gas-card" aria-label={DRILL_TEXT.sheet()}>
        <div className="gas-form">
          <ChoiceField
            field="drill.failure"
            label={DRILL_TEXT.fails()}
            value={failure}
            onChoose={(text) => change({ ...form, texts: { ...form.texts, failure: text } })}
            choices={FAILURES.map((one) => ({ value: one, text: failureName(one) }))}
          />
          <WardChoice chosen={chosen} />
          <ShelfSaid />
        </div>
        <div className="gas-result">
          {answer.kind === 'refused' ? <GasRefused problems={answer.problems} /> : null}
          {answer.kind === 'failed' ? <p className="must-act">{answer.failure}</p> : null}
          {answer.kind === 'answered' ? (
            <Sheet
              ward={answer.question.ward}
              beds={answer.value.byFailure[failure]}
              failure={failure}
              isStale={answer.isStale}
            />
          ) : null}
        </div>
      </section>
    </>
  )
}

/** About as many as one page holds. */
const ONE_PAGE_BEDS = 18

function Sheet(props: {
  readonly ward: WardFile
  readonly beds: readonly BedDrill[]
  readonly failure: Failure
  readonly isStale: boolean
}) {
  const { ward, beds, failure } = props
  const used = beds.filter(({ answer }) => answer.feed !== 'empty')
  const worst = used.filter(({ outages }) => ['fails', 'unknown'].includes(outages[failure].state))
  return (
    <div className="plan gas-sheet" data-stale={props.isStale}>
      {ward.isInvented === true ? <p className="badge-line">{WARD_TEXT.demo()}</p> : null}
      <div className="answer">
        <h2>{sheetHeadText({ ward: ward.ward, failure: failureName(failure) })}</h2>
        <output className={worst.length > 0 ? 'must-act' : 'why'}>
          {endangeredText(worst.length, used.length)}
        </output>
      </div>
      <section className="section">
        <h2>{DRILL_TEXT.beds()}</h2>
        <ol className="gas-drill">
          {used.map((bed) => (
            <DrillRow key={bed.answer.bed.bed} bed={bed} failure={failure} />
          ))}
        </ol>
      </section>
      <p className="gas-print-only">{DRILL_TEXT.printedOn()}</p>
      {used.length > ONE_PAGE_BEDS ? (
        <p className="gas-print-only">{DRILL_TEXT.nextPage()}</p>
      ) : null}
      <p className="why">{DRILL_TEXT.notComputed()}</p>
      <Fold heading={GAS_TEXT.assumptions()} level={2}>
        <Lines lines={drillBasisLines(ward)} />
      </Fold>
      <Button className="button" onPress={() => window.print()}>
        {DRILL_TEXT.print()}
      </Button>
    </div>
  )
}

function DrillRow({ bed, failure }: { readonly bed: BedDrill; readonly failure: Failure }) {
  const { answer } = bed
  const outage = bed.outages[failure]
  const units = useGasUnits()
  const actions = supplyTexts(outage.actions, units)
  // What the state says already is not said twice.
  const remarks = outage.remarks.filter(({ code }) => code !== 'WORKS_ON')
  return (
    <li className="gas-drill-row" data-state={outage.state}>
      <div>
        <h3>{bedName(answer.bed.bed, answer.bed.code)}</h3>
        <p className="gas-drill-set-up">
          {answer.setUp === null ? '' : setUpShortText(answer.setUp)}
        </p>
      </div>
      <div>
        <p className="gas-drill-state">{outageText(outage)}</p>
        <p>{supplyTexts(remarks, units).join('; ')}</p>
      </div>
      <ul className="gas-boxes" aria-label={DRILL_TEXT.doThis()}>
        {actions.map((action) => (
          <li key={action}>{action}</li>
        ))}
      </ul>
    </li>
  )
}
