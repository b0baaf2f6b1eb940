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
import { say, translated } from './say.ts'

type Names<Id extends string> = Readonly<Record<Id, string>>

export const QUANTITY_NAMES: Names<Quantity> = {
  effective: say('effective inspired fraction'),
  opening: say('mean fraction at the airway opening'),
  pharynx: say('fraction in the throat'),
  trachea: say('fraction in the windpipe'),
  'in-mask': say('fraction in the mask'),
  'end-expired': say('fraction at the end of breathing out'),
  'air-share': say('share of room air'),
  'inspired-co2': say('inspired carbon dioxide'),
  'fresh-ventilation': say('fresh ventilation'),
  'demand-margin': say('stream less peak inspiratory flow'),
  'lowest-bag': say('lowest volume of the bag'),
  'arterial-po2-rise': say('rise of arterial PO2'),
  'total-flow': say('total flow'),
  flow: say('flow'),
  ratio: say('ratio'),
  factor: say('factor'),
  saturation: say('saturation'),
  content: say('content'),
  'gas-pressure': say('gas pressure'),
  'airway-pressure': say('airway pressure'),
  clearance: say('clearance of the upper airway'),
  'vapour-pressure': say('vapour pressure'),
  humidity: say('humidity'),
  volume: say('volume'),
  duration: say('time it lasts'),
  rate: say('rate'),
  size: say('size of the body'),
  index: say('index'),
}

export const COMPARISON_SIGNS: Names<Comparison> = {
  equal: '',
  'at-least': '≥ ',
  'at-most': '≤ ',
  factor: '',
  sign: '',
}

export const TOLERANCE_NAMES: Names<ToleranceReason> = {
  'published-sd': say('published standard deviation'),
  'published-range': say('published range'),
  'limits-of-agreement': say('published limits of agreement'),
  'exact-arithmetic': say('exact arithmetic'),
  'printed-digits': say('digits as printed'),
  'published-fit-error': say('published error of the fit'),
  'reading-precision': say('precision of reading'),
  'usual-range-half-width': say('half the usual range'),
  'conditions-not-stated': say('conditions not stated'),
  'grid-error': say('error of the grid'),
  'width-half-to-twice': say('half to twice the published width'),
  'direction-only': say('direction only'),
}

export const VERDICT_NAMES: Names<Verdict> = {
  pass: say('pass'),
  off: say('off'),
  far: say('far'),
  none: '–',
}

export const USE_NAMES: Names<RowUse> = {
  judge: say('judges'),
  calibrate: say('calibrates'),
  trend: say('judges the direction'),
  context: say('shown only'),
}

export const GAS_NAMES: Names<GasBasis> = {
  'btps-from-meter': say('flow as read on a meter, ventilation at body conditions'),
  'one-condition': say('flow and ventilation at one condition'),
}

export const RULE_NAMES: Names<RuleId> = {
  'printed-setting': say('printed setting'),
  'per-litre': say('4 % for each L/min'),
  'printed-range': say('middle of the quoted range'),
  'mask-three-percent': say('0.21 + 0.03 for each L/min'),
}

export const CHANGE_NUMBER_NAMES: Names<ChangeId> = {
  'exchange-base-lpm': say('exchange with the room at rest, L/min'),
  'exchange-fit-factor': say('factor of the fit on the exchange with the room'),
  'jet-share': say('room air dragged in by the jet, for each litre'),
  'leak-ratio': say('conductance of the seal over that of the bag'),
  'forward-loss': say('share that slips past a slack bag'),
  'capture-out': say('share kept while breathing out'),
  'gas-space-l': say('gas space, L'),
  'clearance-ml-per-s-per-lpm': say('clearance, mL/s for each L/min'),
  'pressure-cmh2o-per-lpm': say('pressure, cmH₂O for each L/min'),
  'tidal-volume-l': say('tidal volume, L'),
  'rate-per-min': say('breathing rate, /min'),
  'time-constant-s': say('time constant of breathing out, s'),
  'tidal-volume-cv': say('spread of tidal volume'),
  'flow-lpm': say('flow that washes the pocket, L/min'),
  'slope-per-lpm': say('slope for each L/min'),
  'spread-factor': say('factor on the spread'),
}

const VALUE_DIGITS = 4
const DECIMALS_MOST = 12
const MISS_STEP = 0.001

/** The conditions a row was measured or reckoned under, which the core holds in English. */
export function conditionText(row: Pick<EvidenceRow, 'condition'>): string {
  return translated(row.condition)
}

/** "0.44", "≥ 0.8", "sign +" */
export function publishedText(row: EvidenceRow): string {
  if (row.compare === 'sign') return say('sign {sign}', { sign: signText(row.publishedValue) })
  return withUnit(`${COMPARISON_SIGNS[row.compare]}${valueText(row.publishedValue)}`, row.unit)
}

export function ourValueText(outcome: RowOutcome): string {
  const { row, ourValue } = outcome
  if (row.compare === 'sign') return signText(ourValue)
  return withUnit(valueText(roundedToTolerance(ourValue, row.tolerance.value)), row.unit)
}

/** To a tenth of the tolerance: what stands behind it says nothing. */
function roundedToTolerance(value: number, tolerance: number): number {
  if (tolerance <= 0) return value
  const decimals = 1 - Math.floor(Math.log10(tolerance))
  return decimals < 0 || decimals > DECIMALS_MOST ? value : Number(value.toFixed(decimals))
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
  return say('published {published}, ours {ours}', {
    published: publishedText(outcome.row),
    ours: ourValueText(outcome),
  })
}

/** "pass with gas space, L 0.15 in place of 0.1" */
export function missText(miss: ExplainedMiss): string {
  if (miss.explanation === null || miss.resultingVerdict === null) return say('no explanation')
  const { parameter, from, to } = miss.explanation
  const change = say('{parameter}: {new} in place of {old}', {
    parameter: CHANGE_NUMBER_NAMES[parameter],
    new: valueText(to),
    old: valueText(from),
  })
  return say('{verdict} with {change}', {
    verdict: VERDICT_NAMES[miss.resultingVerdict],
    change,
  })
}

/** Totals, the kinds counted apart. */
export function countLines(counts: EvidenceCounts): readonly string[] {
  return [
    say(
      '{rows} rows from {sources} sources: {formula} formula rows, {model} model rows ({limitingCases} of them limiting cases), {trends} directions',
      {
        rows: counts.rows,
        sources: counts.sources,
        formula: counts.formula,
        model: counts.model,
        limitingCases: counts.limitingCases,
        trends: counts.trends,
      },
    ),
    say(
      '{judgedMeasured} model rows from {modelSources} sources judge by measurements; {missedMeasured} of them miss ({missedShare}); {calibrate} rows calibrate and judge nothing; {context} are shown only',
      {
        judgedMeasured: counts.judgedMeasured,
        modelSources: counts.modelSources,
        missedMeasured: counts.missedMeasured,
        missedShare: percentText(counts.missedMeasuredShare),
        calibrate: counts.calibrate,
        context: counts.context,
      },
    ),
  ]
}

/** Bias, scatter and worst of a family, and the rule of thumb on the same rows. */
export function familyLines(summary: FamilySummary): readonly string[] {
  const { ours, rule, judged, missed } = summary
  const head = say('{family}: {judged} rows judge, {missed} miss', {
    family: FAMILY_NAMES[summary.family],
    judged,
    missed,
  })
  if (ours === null) {
    return [summary.hasMeasurement ? head : say('{head}; no measurement of a fraction', { head })]
  }
  return [
    say('{head}; ours {misses}', { head, misses: missesText(ours) }),
    ...(rule === null
      ? []
      : [
          say('{rules}: {misses}; ours on the same rows {ourMisses}', {
            rules: rule.ruleIds.map((id) => RULE_NAMES[id]).join(', '),
            misses: missesText(rule),
            ourMisses: missesText(rule.ours),
          }),
        ]),
  ]
}

export function missesText(misses: MissSummary): string {
  const { bias, rms, worst, rows } = misses
  const signed = (value: number): string => (value > 0 ? '+' : '') + numberText(value, MISS_STEP)
  return say('bias {bias}, RMS {rms}, worst {worst} ({rows} rows)', {
    bias: signed(bias),
    rms: numberText(rms, MISS_STEP),
    worst: signed(worst),
    rows,
  })
}

export const EVIDENCE_WORDS = {
  families: say('by interface'),
  rows: say('rows'),
  misses: say('rows that miss, and what would remove each miss'),
  noMisses: say('no row misses'),
  unchecked: say('not checked against measurements'),
  columns: {
    id: say('row'),
    condition: say('condition'),
    quantity: say('compared'),
    published: say('published'),
    ours: say('ours'),
    verdict: '',
    known: say('known'),
  },
} as const
