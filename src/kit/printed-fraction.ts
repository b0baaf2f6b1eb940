// What is printed on a device or quoted for it at a setting, for the comparison beside ours. Never used to compute anything.
import type { Provenance } from '../units/provenance.ts'
import type { SizeId } from './family-id.ts'
import type { PrintedFraction } from './interface-family.ts'
import type { FlowStep } from './source-row.ts'

export type PrintedAnswer =
  | (Provenance & { readonly kind: 'range'; readonly low: number; readonly high: number })
  | { readonly kind: 'none'; readonly code: NoPrintedCode }

export type NoPrintedCode =
  /** Nothing is usually quoted for this kind of interface. */
  | 'NOTHING_QUOTED'
  /** Quoted, but not at this flow: nothing is extrapolated. */
  | 'FLOW_OUTSIDE_QUOTED'
  | 'FLUSH_NOT_QUOTED'
  /** The quoted figures are for adults. */
  | 'QUOTED_FOR_ADULTS_ONLY'

export interface PrintedQuestion {
  readonly printed: PrintedFraction
  readonly size: SizeId
  readonly flow: FlowStep
  readonly setO2Fraction: number | null
}

/** The rule of thumb is printed from 1 L/min (teaching pages). */
const PER_LITRE_LPM_MIN = 1

/** Setting: the setting itself. Rule: base + slope × flow, valid 1 L/min to its maximum. Table: linear between its rows, nothing outside them. */
export function printedFraction(question: PrintedQuestion): PrintedAnswer {
  const { printed, setO2Fraction } = question
  if (printed.kind === 'none') return none('NOTHING_QUOTED')
  if (printed.kind === 'setting') {
    if (setO2Fraction === null) return none('NOTHING_QUOTED')
    return { kind: 'range', low: setO2Fraction, high: setO2Fraction, ...provenanceOf(printed) }
  }
  if (question.size !== 'adult') return none('QUOTED_FOR_ADULTS_ONLY')
  if (question.flow.kind === 'flush') return none('FLUSH_NOT_QUOTED')
  const range = rangeAt(printed, question.flow.flowLpm)
  if (range === null) return none('FLOW_OUTSIDE_QUOTED')
  return { kind: 'range', ...range, ...provenanceOf(printed) }
}

interface Range {
  readonly low: number
  readonly high: number
}

function rangeAt(
  printed: Extract<PrintedFraction, { kind: 'per-litre' | 'table' }>,
  flowLpm: number,
): Range | null {
  if (printed.kind === 'table') return interpolated(printed.rows, flowLpm)
  if (flowLpm < PER_LITRE_LPM_MIN || flowLpm > printed.maxLpm) return null
  const o2Fraction = printed.base + printed.perLpm * flowLpm
  return { low: o2Fraction, high: o2Fraction }
}

function interpolated(
  rows: readonly (Range & { readonly flowLpm: number })[],
  flowLpm: number,
): Range | null {
  const below = rows.findLast((row) => row.flowLpm <= flowLpm)
  const above = rows.find((row) => row.flowLpm >= flowLpm)
  if (below === undefined || above === undefined) return null
  const span = above.flowLpm - below.flowLpm
  const share = span === 0 ? 0 : (flowLpm - below.flowLpm) / span
  return {
    low: below.low + share * (above.low - below.low),
    high: below.high + share * (above.high - below.high),
  }
}

function provenanceOf(from: Provenance): Provenance {
  return from.source === undefined
    ? { known: from.known }
    : { known: from.known, source: from.source }
}

function none(code: NoPrintedCode): PrintedAnswer {
  return { kind: 'none', code }
}
