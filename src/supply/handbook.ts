// Handbook factors of cylinders by country, as data, and what they say beside our real-gas answer. Letters are a country's own; leaves out any use of them in our numbers.
import { STANDARD_PRESSURE_KPA } from '../units/constants.ts'
import { barFromKpa, kpaFromBar, kpaFromPsi, psiFromKpa } from '../units/pressure.ts'
import type { Known } from '../units/provenance.ts'
import { oxygenContentsLitres } from '../physics/real-gas-oxygen.ts'
import { handbookMinutes } from './duration.ts'

export type HandbookCountry = 'GB' | 'US'

export interface HandbookRow {
  readonly country: HandbookCountry
  /** The country's own letter. The same letter means another size elsewhere. */
  readonly letter: string
  readonly contentsL: number
  /** Filling pressure, where it is stated; else what contents and factor give. */
  readonly fillGaugeKpa: number | null
  readonly factorLPerPsi: number
  readonly waterVolumeL: number | null
  readonly known: Known
}

const BAR_137 = kpaFromBar(137)
const BAR_230 = kpaFromBar(230)
const perPsi = (contentsL: number, fillGaugeKpa: number): number =>
  contentsL / psiFromKpa(fillGaugeKpa)

/** United States: an ambulance service's teaching sheet and a second page without author or year, read. United Kingdom: contents as
 *  printed, from a transfer paper and a teaching page; C, E, G, HX and water volumes but D and J from memory. */
export const HANDBOOK_ROWS: readonly HandbookRow[] = [
  us('D', 350, 0.16),
  us('E', 625, 0.28),
  us('M', 3000, 1.56),
  us('G', 5300, 2.41),
  us('H', 6900, 3.14),
  gb('C', { contentsL: 170, waterVolumeL: 1.2, factorLPerPsi: 0.085, known: 'memory' }),
  gb('CD', { contentsL: 460, waterVolumeL: 2, fillGaugeKpa: BAR_230, known: 'secondary' }),
  gb('D', { contentsL: 340, waterVolumeL: 2.3, factorLPerPsi: 0.17, known: 'secondary' }),
  gb('E', { contentsL: 680, waterVolumeL: 4.7, factorLPerPsi: 0.34, known: 'secondary' }),
  gb('F', { contentsL: 1360, waterVolumeL: 9.43, factorLPerPsi: 0.68, known: 'secondary' }),
  gb('HX', { contentsL: 2300, waterVolumeL: 10, fillGaugeKpa: BAR_230, known: 'memory' }),
  gb('G', { contentsL: 3400, waterVolumeL: 23.6, factorLPerPsi: 1.7, known: 'secondary' }),
  gb('J', { contentsL: 6800, waterVolumeL: 47.2, factorLPerPsi: 3.4, known: 'secondary' }),
]

function us(letter: string, contentsL: number, factorLPerPsi: number): HandbookRow {
  const rest = { fillGaugeKpa: null, waterVolumeL: null, known: 'secondary' } as const
  return { country: 'US', letter, contentsL, factorLPerPsi, ...rest }
}

function gb(
  letter: string,
  row: Pick<HandbookRow, 'contentsL' | 'waterVolumeL' | 'known'> & {
    readonly factorLPerPsi?: number
    readonly fillGaugeKpa?: number
  },
): HandbookRow {
  const fillGaugeKpa = row.fillGaugeKpa ?? BAR_137
  const factorLPerPsi = row.factorLPerPsi ?? perPsi(row.contentsL, fillGaugeKpa)
  return { ...row, country: 'GB', letter, fillGaugeKpa, factorLPerPsi }
}

export interface HandbookQuestion {
  readonly waterVolumeL: number
  readonly gaugeKpa: number
  readonly leftGaugeKpa: number
  readonly drawLpm: number
}

export interface HandbookBeside {
  readonly row: HandbookRow
  readonly minutes: number
}

/** How far a handbook's size may lie from the cylinder to be set beside it, ratio of contents. */
const SIZE_RATIO_MOST = 1.3

/** The handbook's answer of each country that has a cylinder of nearly this size. Exact arithmetic of its own rule; 0 below the reserve.
 *  Valid draw > 0, else FLOW_OUT_OF_RANGE. Check figures in cylinder.test.ts. */
export function handbookBeside(question: HandbookQuestion): readonly HandbookBeside[] {
  return (['GB', 'US'] as const).flatMap((country) => {
    const row = nearestRow(country, question.waterVolumeL)
    if (row === null) return []
    const minutes = handbookMinutes({
      gaugePsi: psiFromKpa(question.gaugeKpa),
      reservePsi: psiFromKpa(question.leftGaugeKpa),
      factorLPerPsi: row.factorLPerPsi,
      flowLpm: question.drawLpm,
    })
    return [{ row, minutes }]
  })
}

/** Water volume × gauge pressure in bar, over the flow: the metric rule of thumb; 4–7 % low below 250 bar. Valid draw > 0
 *  as its callers see to; cylinder-answer.test.ts. */
export function waterVolumeMinutes(question: HandbookQuestion): number {
  const bar = Math.max(0, barFromKpa(question.gaugeKpa - question.leftGaugeKpa))
  return handbookMinutes({
    gaugePsi: bar,
    reservePsi: 0,
    factorLPerPsi: question.waterVolumeL,
    flowLpm: question.drawLpm,
  })
}

function nearestRow(country: HandbookCountry, waterVolumeL: number): HandbookRow | null {
  const ratioOf = (row: HandbookRow): number => {
    const ours = waterVolumeL * filledLitresPerLitre(row)
    return Math.max(ours / row.contentsL, row.contentsL / ours)
  }
  const rows = HANDBOOK_ROWS.filter((row) => row.country === country && isNear(ratioOf(row)))
  return [...rows].sort((a, b) => ratioOf(a) - ratioOf(b))[0] ?? null
}

function isNear(ratio: number): boolean {
  return ratio <= SIZE_RATIO_MOST
}

/** Real-gas litres at 15 °C in each litre of water volume at the row's own filling. */
function filledLitresPerLitre({ fillGaugeKpa, contentsL, factorLPerPsi }: HandbookRow): number {
  const gaugeKpa = fillGaugeKpa ?? kpaFromPsi(contentsL / factorLPerPsi)
  return oxygenContentsLitres({ temperatureC: 15, pressureKpa: gaugeKpa + STANDARD_PRESSURE_KPA })
}
