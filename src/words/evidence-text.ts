// Outside checks in words: what was compared, under which conditions, how it came out and why it misses. Leaves out citations, which the core holds.
import type {
  Comparison,
  EvidenceRow,
  GasBasis,
  Quantity,
  RowUse,
  ToleranceReason,
} from '../evidence/evidence-row.ts'
import type { ChangeId } from '../evidence/explanations.ts'
import type { FamilySummary, MissSummary } from '../evidence/family-summary.ts'
import type { EvidenceCounts, ExplainedMiss } from '../evidence/report.ts'
import type { RuleId } from '../evidence/rules-of-thumb.ts'
import type { RowOutcome, Verdict } from '../evidence/verdict.ts'
import { FAMILY_NAMES } from './names.ts'
import { numberText, percentText, plainNumberText, withUnit } from './number-text.ts'

type Names<Id extends string> = Readonly<Record<Id, string>>

export const QUANTITY_NAMES: Names<Quantity> = {
  effective: 'effective inspired fraction',
  opening: 'mean fraction at the airway opening',
  pharynx: 'fraction in the throat',
  trachea: 'fraction in the windpipe',
  'in-mask': 'fraction in the mask',
  'end-expired': 'fraction at the end of breathing out',
  'air-share': 'share of room air',
  'inspired-co2': 'inspired carbon dioxide',
  'fresh-ventilation': 'fresh ventilation',
  'demand-margin': 'stream less peak inspiratory flow',
  'lowest-bag': 'lowest volume of the bag',
  'arterial-po2-rise': 'rise of arterial PO2',
  'total-flow': 'total flow',
  flow: 'flow',
  ratio: 'ratio',
  factor: 'factor',
  saturation: 'saturation',
  content: 'content',
  'gas-pressure': 'gas pressure',
  'airway-pressure': 'airway pressure',
  clearance: 'clearance of the upper airway',
  'vapour-pressure': 'vapour pressure',
  humidity: 'humidity',
  volume: 'volume',
  rate: 'rate',
  size: 'size of the body',
  index: 'index',
}

export const COMPARISON_SIGNS: Names<Comparison> = {
  equal: '',
  'at-least': '≥ ',
  'at-most': '≤ ',
  factor: '',
  sign: 'sign ',
}

export const TOLERANCE_NAMES: Names<ToleranceReason> = {
  'published-sd': 'published standard deviation',
  'published-range': 'published range',
  'limits-of-agreement': 'published limits of agreement',
  'exact-arithmetic': 'exact arithmetic',
  'printed-digits': 'digits as printed',
  'published-fit-error': 'published error of the fit',
  'reading-precision': 'precision of reading',
  'usual-range-half-width': 'half the usual range',
  'conditions-not-stated': 'conditions not stated',
  'grid-error': 'error of the grid',
  'width-half-to-twice': 'half to twice the published width',
  'direction-only': 'direction only',
}

export const VERDICT_NAMES: Names<Verdict> = { pass: 'pass', off: 'off', far: 'far', none: '–' }

export const USE_NAMES: Names<RowUse> = {
  judge: 'judges',
  calibrate: 'calibrates',
  trend: 'judges the direction',
  context: 'shown only',
}

export const GAS_NAMES: Names<GasBasis> = {
  'btps-from-meter': 'flow as read on a meter, ventilation at body conditions',
  'one-condition': 'flow and ventilation at one condition',
}

export const RULE_NAMES: Names<RuleId> = {
  'printed-setting': 'printed setting',
  'per-litre': '4 % for each L/min',
  'printed-range': 'middle of the quoted range',
  'mask-three-percent': '0.21 + 0.03 for each L/min',
}

export const CHANGE_NUMBER_NAMES: Names<ChangeId> = {
  'exchange-base-lpm': 'exchange with the room at rest, L/min',
  'exchange-fit-factor': 'factor of the fit on the exchange with the room',
  'jet-share': 'room air dragged in by the jet, for each litre',
  'leak-ratio': 'conductance of the seal over that of the bag',
  'forward-loss': 'share that slips past a slack bag',
  'capture-out': 'share kept while breathing out',
  'gas-space-l': 'gas space, L',
  'clearance-ml-per-s-per-lpm': 'clearance, mL/s for each L/min',
  'pressure-cmh2o-per-lpm': 'pressure, cmH₂O for each L/min',
  'tidal-volume-l': 'tidal volume, L',
  'rate-per-min': 'breathing rate, /min',
  'time-constant-s': 'time constant of breathing out, s',
  'tidal-volume-cv': 'spread of tidal volume',
  'flow-lpm': 'flow that washes the pocket, L/min',
  'slope-per-lpm': 'slope for each L/min',
  'spread-factor': 'factor on the spread',
}

const VALUE_DIGITS = 4
const MISS_STEP = 0.001

/** "0.44", "≥ 0.8", "sign +" */
export function publishedText(row: EvidenceRow): string {
  if (row.compare === 'sign') return `${COMPARISON_SIGNS.sign}${signText(row.publishedValue)}`
  return withUnit(`${COMPARISON_SIGNS[row.compare]}${valueText(row.publishedValue)}`, row.unit)
}

export function ourValueText(outcome: RowOutcome): string {
  const { row, ourValue } = outcome
  return row.compare === 'sign' ? signText(ourValue) : withUnit(valueText(ourValue), row.unit)
}

function valueText(value: number): string {
  return plainNumberText(Number(value.toPrecision(VALUE_DIGITS)))
}

function signText(value: number): string {
  if (value === 0) return '0'
  return value > 0 ? '+' : '−'
}

/** The tolerance with its unit and its reason. */
export function toleranceText(row: EvidenceRow): string {
  const { value, reason } = row.tolerance
  return `${withUnit(`±${valueText(value)}`, row.compare === 'equal' ? row.unit : '1')} (${TOLERANCE_NAMES[reason]})`
}

/** "published 0.54, ours 0.6621" */
export function besideText(outcome: RowOutcome): string {
  return `published ${publishedText(outcome.row)}, ours ${ourValueText(outcome)}`
}

/** "pass with gas space, L 0.15 in place of 0.1" */
export function missText(miss: ExplainedMiss): string {
  if (miss.explanation === null || miss.resultingVerdict === null) return 'no explanation'
  const { parameter, from, to } = miss.explanation
  const change = `${CHANGE_NUMBER_NAMES[parameter]}: ${valueText(to)} in place of ${valueText(from)}`
  return `${VERDICT_NAMES[miss.resultingVerdict]} with ${change}`
}

/** Totals, the kinds counted apart. */
export function countLines(counts: EvidenceCounts): readonly string[] {
  return [
    `${counts.rows} rows from ${counts.sources} sources: ${counts.formula} formula rows, ${counts.model} model rows (${counts.limitingCases} of them limiting cases), ${counts.trends} directions`,
    `${counts.judgedMeasured} model rows from ${counts.modelSources} sources judge by measurements; ${counts.missedMeasured} of them miss (${percentText(counts.missedMeasuredShare)}); ${counts.calibrate} rows calibrate and judge nothing; ${counts.context} are shown only`,
  ]
}

/** Bias, scatter and worst of a family, and the rule of thumb on the same rows. */
export function familyLines(summary: FamilySummary): readonly string[] {
  const { ours, rule, judged, missed } = summary
  const head = `${FAMILY_NAMES[summary.family]}: ${judged} rows judge, ${missed} miss`
  if (ours === null) {
    return [summary.hasMeasurement ? head : `${head}; no measurement of a fraction`]
  }
  return [
    `${head}; ours ${missesText(ours)}`,
    ...(rule === null
      ? []
      : [
          `${rule.ruleIds.map((id) => RULE_NAMES[id]).join(', ')}: ${missesText(rule)}; ours on the same rows ${missesText(rule.ours)}`,
        ]),
  ]
}

export function missesText(misses: MissSummary): string {
  const { bias, rms, worst, rows } = misses
  const signed = (value: number): string => (value > 0 ? '+' : '') + numberText(value, MISS_STEP)
  return `bias ${signed(bias)}, RMS ${numberText(rms, MISS_STEP)}, worst ${signed(worst)} (${rows} rows)`
}

export const EVIDENCE_WORDS = {
  families: 'by interface',
  rows: 'rows',
  misses: 'rows that miss, and what would remove each miss',
  noMisses: 'no row misses',
  unchecked: 'not checked against measurements',
  columns: {
    id: 'row',
    condition: 'condition',
    quantity: 'compared',
    published: 'published',
    ours: 'ours',
    verdict: '',
    known: 'known',
  },
} as const
