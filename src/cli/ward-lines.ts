// A ward's demand and its lights-out drill as lines for a terminal or a printer. Leaves out what is computed.
import { FAILURES, type Failure } from '../supply/bed-outage.ts'
import type { BedDrill } from '../supply/lights-out.ts'
import { numberText } from '../words/number-text.ts'
import { setUpText } from '../words/set-up-text.ts'
import { supplyTexts } from '../words/supply-text.ts'
import { GAS_UNITS } from '../words/supply-value.ts'
import {
  airLine,
  autonomyLines,
  demandLine,
  failureName,
  feedName,
  oneMoreLine,
  outageStateText,
  simulatedLine,
  WARD_WORDS,
} from '../words/supply-ward-cli-text.ts'
import { bulleted, indented, section, tableLines } from './table.ts'
import type { WardAnswer } from './verb-ward-demand.ts'

export function demandLines({ ward, shelf, demand }: WardAnswer): readonly string[] {
  const { simulation, designLpm, drawnLpm, airLpm, oneMore } = demand
  const { rule, percentilesLpm } = simulation
  const facts = [
    demandLine({ ward: ward.ward, drawnLpm, designLpm }),
    simulatedLine({
      ...rule,
      ...percentilesLpm,
      aboveDesignShare: simulation.shareAbove(designLpm),
    }),
    ...(airLpm > 0 ? [airLine(airLpm)] : []),
    ...autonomyLines(demand.autonomy),
  ]
  const { columns } = WARD_WORDS
  return [
    ...facts.flatMap((fact) => indented(fact, 0)),
    ...section(
      WARD_WORDS.beds,
      tableLines(
        [
          { heading: columns.bed },
          { heading: columns.code },
          { heading: columns.setUp, widthMost: 46 },
          { heading: columns.oxygen, align: 'right' },
          { heading: columns.from },
        ],
        demand.beds.map(({ bed, feed, setUp, drawn }) => ({
          cells: [
            bed.bed,
            bed.code ?? '',
            setUp === null ? '' : setUpText(setUp, shelf),
            drawn === null ? '' : numberText(drawn.oxygenLpm, drawn.oxygenLpm < 1 ? 0.01 : 0.1),
            feedName(feed),
          ],
        })),
      ),
    ),
    ...section(
      WARD_WORDS.oneMore,
      [
        oneMoreLine(oneMore),
        ...autonomyLines(oneMore.autonomy),
        ...supplyTexts(oneMore.remarks, GAS_UNITS),
      ].flatMap((line) => indented(line)),
    ),
    ...section(WARD_WORDS.remarks, bulleted(supplyTexts(demand.remarks, GAS_UNITS))),
  ]
}

/** One page for each failure asked for. */
export function drillLines({ drill, failure }: WardAnswer): readonly string[] {
  const failures: readonly Failure[] = failure === undefined ? FAILURES : [failure]
  return [
    WARD_WORDS.drill,
    ...failures.flatMap((one) => section(failureName(one), drillTable(drill.byFailure[one], one))),
    ...section(WARD_WORDS.remarks, bulleted(supplyTexts(drill.remarks, GAS_UNITS))),
  ]
}

function drillTable(beds: readonly BedDrill[], failure: Failure): readonly string[] {
  const { columns } = WARD_WORDS
  return tableLines(
    [
      { heading: columns.bed },
      { heading: columns.code },
      { heading: columns.state, widthMost: 36 },
      { heading: columns.doThis, widthMost: 42 },
    ],
    beds.map(({ answer, outages }) => {
      const outage = outages[failure]
      const why = supplyTexts(outage.remarks, GAS_UNITS).join('; ')
      return {
        cells: [
          answer.bed.bed,
          answer.bed.code ?? '',
          outage.state === 'works' ? outageStateText(outage) : `${outageStateText(outage)}: ${why}`,
          supplyTexts(outage.actions, GAS_UNITS).join('; '),
        ],
      }
    }),
  )
}
