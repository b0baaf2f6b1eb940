// What a ward draws against its pipework, the hours behind it, and what one more patient does. Leaves out single beds' failures.
import type { Remote } from 'comlink'
import { useCallback, useState } from 'react'
import { Button } from 'react-aria-components'
import { wardDemandSvg, wardDemandText } from '../../pictures/gas-bars.ts'
import type { Autonomy } from '../../supply/ward-demand.ts'
import type { WardFile } from '../../supply/ward.ts'
import { GAS_TEXT } from '../../words/gas-page-text.ts'
import { wardBasisLines } from '../../words/gas-assumptions.ts'
import { drawPartText } from '../../words/gas-cylinder-text.ts'
import {
  bedDrawText,
  bedPartsText,
  demandText,
  hoursRangeText,
  oneMoreText,
  shareText,
  WARD_TEXT,
} from '../../words/gas-ward-text.ts'
import { setUpShortText } from '../../words/set-up-text.ts'
import { supplyTexts } from '../../words/supply-text.ts'
import { drawText, hoursText } from '../../words/supply-value.ts'
import { Facts } from '../parts/facts.tsx'
import type { Fact } from '../parts/facts.tsx'
import { useShelf } from '../shelf/shelf-store.ts'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'
import { Picture } from '../parts/picture.tsx'
import type { GasApi, WardRequest, WardSummary } from './gas-api.ts'
import { GasRefused } from './gas-refused.tsx'
import { followed } from './read-form.ts'
import { ShelfSaid } from './shelf-said.tsx'
import { useGasAnswer } from './use-gas-answer.ts'
import { useGasUnits } from './use-gas-units.ts'
import { useWard } from './use-ward.ts'
import { WardChoice } from './ward-choice.tsx'

export function WardPart() {
  const chosen = useWard()
  const { shelf } = useShelf()
  const ask = useCallback(
    async (core: Remote<GasApi>, request: WardRequest) => await core.ward(request),
    [],
  )
  const answer = useGasAnswer(
    followed(chosen.ward, (ward): WardRequest => ({ ward, shelf })),
    ask,
  )
  return (
    <>
      <p className="section-help">{WARD_TEXT.help()}</p>
      <section className="gas-card" aria-label={WARD_TEXT.picture()}>
        <div className="gas-form">
          <WardChoice chosen={chosen} />
          <ShelfSaid />
        </div>
        <div className="gas-result">
          {answer.kind === 'refused' ? <GasRefused problems={answer.problems} /> : null}
          {answer.kind === 'failed' ? <p className="must-act">{answer.failure}</p> : null}
          {answer.kind === 'answered' ? (
            <WardResult
              ward={answer.question.ward}
              summary={answer.value}
              isStale={answer.isStale}
            />
          ) : null}
        </div>
      </section>
    </>
  )
}

function WardResult(props: {
  readonly ward: WardFile
  readonly summary: WardSummary
  readonly isStale: boolean
}) {
  const { ward, summary } = props
  const units = useGasUnits()
  const [hasOneMore, setOneMore] = useState(false)
  const { branchLpmMax } = ward.supply
  const picture = {
    demand: summary,
    ...(branchLpmMax === undefined ? {} : { branchLpmMax }),
  }
  const beds = summary.beds
    .filter(({ pipelineLpm }) => pipelineLpm > 0)
    .toSorted((a, b) => b.pipelineLpm - a.pipelineLpm)
  return (
    <div className="plan gas-sheet" data-stale={props.isStale}>
      {ward.isInvented === true ? <p className="badge-line">{WARD_TEXT.demo()}</p> : null}
      <div className="answer">
        <h2>{ward.ward}</h2>
        <output className="gas-change">
          <strong className="gas-clock">{drawText(summary.drawnLpm)}</strong>{' '}
          <span>{WARD_TEXT.drawn()}</span>
        </output>
        <p className={summary.drawnLpm > summary.designLpm ? 'must-act' : 'why'}>
          {demandText(summary)}
        </p>
        <Facts facts={factsOf(ward, summary, summary.autonomy)} />
        <div className="gas-lift">
          <div className="gas-actions">
            <Button
              className="button"
              aria-pressed={hasOneMore}
              onPress={() => setOneMore(!hasOneMore)}
            >
              {hasOneMore ? WARD_TEXT.oneLess() : WARD_TEXT.oneMore()}
            </Button>
          </div>
          <output>{hasOneMore ? <OneMore summary={summary} /> : null}</output>
        </div>
      </div>
      <section className="section">
        <h2>{WARD_TEXT.picture()}</h2>
        <Picture draw={(widthPx) => wardDemandSvg({ ...picture, widthPx })} />
        <Fold heading={GAS_TEXT.inWords()}>
          <Lines lines={wardDemandText(picture)} />
        </Fold>
      </section>
      <section className="section">
        <h2>{WARD_TEXT.mind()}</h2>
        <Lines lines={[...new Set(supplyTexts(summary.remarks, units))]} />
      </section>
      <Fold heading={WARD_TEXT.beds()} level={2}>
        <Lines lines={beds.map(bedLine)} />
      </Fold>
      <Fold heading={GAS_TEXT.assumptions()} level={2}>
        <Lines lines={wardBasisLines(ward, summary, units)} />
      </Fold>
    </div>
  )
}

/** With its parts where something runs beside the set-up. */
function bedLine({ bed, setUp, pipelineLpm, drawn }: WardSummary['beds'][number]): string {
  const line = bedDrawText(bed.bed, setUp === null ? '' : setUpShortText(setUp), pipelineLpm)
  const parts = drawn?.parts ?? []
  if (parts.length < 2) return line
  const told = parts.map(({ part, oxygenLpm }) => drawPartText(part, oxygenLpm))
  return bedPartsText(line, told.join('; '))
}

function OneMore({ summary }: { readonly summary: WardSummary }) {
  const { oneMore } = summary
  const units = useGasUnits()
  return (
    <div className="gas-stopped">
      <p>{oneMoreText(oneMore)}</p>
      <Facts facts={autonomyFacts(oneMore.autonomy)} />
      {supplyTexts(oneMore.remarks, units).map((text) => (
        <p key={text} className="must-act">
          {text}
        </p>
      ))}
    </div>
  )
}

function factsOf(ward: WardFile, summary: WardSummary, autonomy: Autonomy): readonly Fact[] {
  const { branchLpmMax } = ward.supply
  return [
    { name: WARD_TEXT.p95(), value: drawText(summary.simulation.percentilesLpm.p95) },
    { name: WARD_TEXT.design(), value: drawText(summary.designLpm) },
    { name: WARD_TEXT.aboveDesign(), value: shareText(summary.shareAboveDesign) },
    {
      name: WARD_TEXT.branch(),
      value: branchLpmMax === undefined ? WARD_TEXT.notKnown() : drawText(branchLpmMax),
    },
    ...autonomyFacts(autonomy),
    { name: WARD_TEXT.air(), value: drawText(summary.airLpm) },
    ...(summary.unknownBeds === 0
      ? []
      : [{ name: WARD_TEXT.unknown(), value: String(summary.unknownBeds) }]),
  ]
}

function autonomyFacts(autonomy: Autonomy): readonly Fact[] {
  const { manifoldHours, tankShortestHours, tankLongestHours } = autonomy
  return [
    ...(manifoldHours === null
      ? []
      : [{ name: WARD_TEXT.manifold(), value: hoursText(manifoldHours) }]),
    ...(tankShortestHours === null || tankLongestHours === null
      ? []
      : [
          {
            name: WARD_TEXT.tank(),
            value: hoursRangeText(hoursText(tankShortestHours), hoursText(tankLongestHours)),
          },
        ]),
  ]
}
