// What is wrong with an input, in one line: what was got, what is allowed, what may have been meant. Leaves out where the line is shown.
import type { ErrorCode, Limit, Problem, ProblemValue } from '../errors.ts'
import { FIELD_LABELS, fieldLabel } from './field-labels.ts'
import { plainNumberText, withUnit } from './number-text.ts'

type Said = Pick<Problem, 'path' | 'value' | 'limit' | 'unit'>

/** "haemoglobin 12 g/L outside 30–250 g/L; did you mean 120 g/L?" */
export function problemText(problem: Problem): string {
  const said = PROBLEM_TEXTS[problem.code](problem)
  return problem.suggestion === undefined ? said : `${said}; ${meantText(problem)}`
}

/** Codes whose suggestion is a name and no quantity. */
const NAMES_SUGGESTED: readonly ErrorCode[] = ['UNKNOWN_FIELD', 'UNKNOWN_CHOICE', 'UNKNOWN_ID']

function meantText(problem: Problem): string {
  const { suggestion = '' } = problem
  const isName = NAMES_SUGGESTED.includes(problem.code)
  const text =
    typeof suggestion === 'number' || !isName
      ? withUnit(valueText(suggestion), unitOf(problem))
      : suggestion
  return `did you mean ${text}?`
}

/** "got, allowed" of every code. */
const PROBLEM_TEXTS: Readonly<Record<ErrorCode, (said: Said) => string>> = {
  VALUE_OUT_OF_RANGE: outside,
  FLOW_OUT_OF_RANGE: outside,
  FRACTION_OUT_OF_RANGE: outside,
  PRESSURE_OUT_OF_RANGE: outside,
  PARTIAL_PRESSURE_OUT_OF_RANGE: outside,
  BAROMETRIC_PRESSURE_OUT_OF_RANGE: outside,
  ALTITUDE_OUT_OF_RANGE: outside,
  TEMPERATURE_OUT_OF_RANGE: outside,
  HUMIDITY_OUT_OF_RANGE: outside,
  VOLUME_OUT_OF_RANGE: outside,
  DURATION_OUT_OF_RANGE: outside,
  RATE_OUT_OF_RANGE: outside,
  DUTY_OUT_OF_RANGE: outside,
  BREATH_OUT_OF_RANGE: outside,
  AGE_OUT_OF_RANGE: outside,
  GESTATION_OUT_OF_RANGE: outside,
  WEIGHT_OUT_OF_RANGE: outside,
  HEIGHT_OUT_OF_RANGE: outside,
  SATURATION_OUT_OF_RANGE: outside,
  HAEMOGLOBIN_OUT_OF_RANGE: outside,
  PH_OUT_OF_RANGE: outside,
  CONTENT_OUT_OF_RANGE: outside,
  SHUNT_OUT_OF_RANGE: outside,
  PROBABILITY_OUT_OF_RANGE: outside,
  Z_SCORE_OUT_OF_RANGE: outside,
  SIZE_OUT_OF_RANGE: outside,
  COUNT_OUT_OF_RANGE: outside,
  STEP_NOT_ON_METER: (said) => `${got(said)} cannot be set on this source${allowed(said)}`,
  MISSING_FIELD: (said) => `${labelOf(said)} is missing${allowed(said)}`,
  UNKNOWN_FIELD: (said) => `unknown field ${quoted(lastPart(said.path))}${allowed(said)}`,
  UNKNOWN_CHOICE: (said) =>
    `${labelOf(said)}: unknown choice ${quoted(said.value)}${allowed(said)}`,
  UNKNOWN_ID: (said) => `nothing is called ${quoted(said.value)}${allowed(said)}`,
  DUPLICATE_ID: (said) => `${labelOf(said)}: ${quoted(said.value)} stands here twice`,
  NOT_A_NUMBER: (said) => `${labelOf(said)} ${quoted(said.value)} is not a number${allowed(said)}`,
  NOT_TEXT: (said) => `${labelOf(said)} must be text, got ${valueText(said.value)}`,
  NOT_A_BOOLEAN: (said) => `${labelOf(said)} must be true or false, got ${quoted(said.value)}`,
  NOT_A_LIST: (said) => `${labelOf(said)} must be a list, got ${valueText(said.value)}`,
  NOT_AN_OBJECT: (said) => `${labelOf(said)} must hold named fields, got ${valueText(said.value)}`,
  UNREADABLE_TEXT: (said) => `${labelOf(said)} cannot be read: ${valueText(said.value)}`,
  UNREADABLE_DATE: (said) => `${labelOf(said)} ${quoted(said.value)} is not a date`,
  UNIT_UNKNOWN: (said) => `${labelOf(said)}: unknown unit ${quoted(said.value)}${allowed(said)}`,
  UNIT_SLIP_SUSPECTED: (said) =>
    isWithin(said)
      ? `${got(said)} does not fit this patient and looks like another unit`
      : outside(said),
  WEIGHT_REQUIRED: (said) => `weight is required for this patient${allowed(said)}`,
  CONTRADICTION: (said) => `${got(said)} contradicts another value${allowed(said)}`,
  RANGE_REVERSED: (said) => `${got(said)} must lie above the lower end${allowed(said)}`,
  TARGET_ABOVE_SOURCE: (said) => `${got(said)} is above what the source holds${allowed(said)}`,
  SPREAD_EMPTY: (said) => `${labelOf(said)} leaves no room between its limits`,
  AGE_GIVEN_TWICE: (said) => `age is given more than once${allowed(said)}`,
  GESTATION_NOT_FOR_AGE: (said) =>
    `gestation at birth plays no part at this age${allowed({ ...said, unit: 'a' })}`,
  STATE_NOT_FOR_AGE: (said) =>
    `breathing state ${quoted(said.value)} does not belong to this age${allowed(said)}`,
  STATE_NOT_FOR_GESTATION: (said) =>
    `breathing state ${quoted(said.value)} does not fit the gestation${allowed(said)}`,
  STATE_NOT_FOR_SEX: (said) => `breathing state ${quoted(said.value)} does not fit the sex typed`,
  WEIGHT_IMPLAUSIBLE_FOR_AGE: (said) =>
    `${got(said)} is not believable at this age${allowed(said)}`,
  HEIGHT_IMPLAUSIBLE_FOR_AGE: (said) =>
    `${got(said)} is not believable at this age${allowed(said)}`,
  RATE_IMPLAUSIBLE_FOR_AGE: (said) => `${got(said)} is not believable at this age${allowed(said)}`,
  TIDAL_VOLUME_IMPLAUSIBLE_FOR_SIZE: (said) =>
    `${got(said)} is not believable for this body${allowed(said)}`,
  TIDAL_VOLUME_BELOW_DEAD_SPACE: (said) =>
    `${got(said)} would not reach past the dead space${allowed(said)}`,
  UPTAKE_IMPLAUSIBLE_FOR_SIZE: (said) =>
    `${got(said)} is not believable for this body${allowed(said)}`,
  FLOW_IMPLAUSIBLE_FOR_SIZE: (said) => `${got(said)} is too much for this patient${allowed(said)}`,
  SPEAKING_VALVE_WITH_CUFF_UP: () =>
    'a speaking valve with the cuff up lets nothing out: the patient cannot breathe out; deflate the cuff or take the valve off',
  CAPPED_WITH_CUFF_UP: () => 'a capped tube with the cuff up closes the airway',
  CAPPED_WITH_SPEAKING_VALVE: () => 'a tube is either capped or has a speaking valve, not both',
  CAPPED_WITH_EXCHANGER: () => 'a capped tube carries no heat and moisture exchanger',
  SPEAKING_VALVE_WITH_EXCHANGER: () =>
    'a speaking valve with a heat and moisture exchanger: no breath leaves through the exchanger, it stays dry; use one of them',
  ALTITUDE_AND_PRESSURE_DISAGREE: (said) =>
    `${got(said)} does not fit the altitude typed${allowed(said)}`,
  RATES_DISAGREE: (said) =>
    `${got(said)} does not fit the breathing rate typed elsewhere${allowed(said)}`,
  CHANGE_NOT_FOR_AIRWAY: (said) =>
    `${typeof said.value === 'number' ? got(said) : quoted(said.value)} does not fit the airway typed${allowed(said)}`,
  SOURCE_NOT_FOR_INTERFACE: (said) =>
    `${quoted(said.value)} cannot feed this interface${allowed(said)}`,
  SETTING_NOT_FOR_SET_UP: (said) => `${got(said)} cannot be set on this set-up${allowed(said)}`,
  FLUSH_NOT_ON_SOURCE: () => 'this source has no flush: it has no scale to be opened beyond',
  OVER_MASK_NOT_FOR_INTERFACE: (said) =>
    `only a cannula is worn under a mask: ${labelOf(said)} does not fit here${allowed(said)}`,
  HYPERBARIC_REFUSED: (said) =>
    `${got(said)} is above the pressure of open air${allowed(said)}: not for a hyperbaric chamber`,
  NOT_BREATHING_REFUSED: () =>
    'not for a patient who does not breathe or gasps: call for help, bag and mask, stop using this',
  VENTILATED_REFUSED: () =>
    'not for a ventilated patient or one on pressure support: only for patients who breathe by themselves',
}

function outside(said: Said): string {
  const range = limitText(said, unitOf(said))
  return range === '' ? `${got(said)} is not allowed` : `${got(said)} outside ${range}`
}

function labelOf(said: Said): string {
  return fieldLabel(said.path)
}

/** Label, value and unit: "haemoglobin 12 g/L". */
function got(said: Said): string {
  return `${labelOf(said)} ${withUnit(valueText(said.value), unitOf(said))}`
}

/** The code's own unit, else the one the field is typed in. */
function unitOf(said: Said): string | undefined {
  return said.unit ?? FIELD_LABELS[said.path]?.unit
}

function allowed(said: Said): string {
  const text = limitText(said, unitOf(said))
  return text === '' ? '' : ` (allowed: ${text})`
}

/** "30–250 g/L", "at least 5 min", "rest, sleep, …" */
export function limitText(said: { readonly limit?: Limit }, unit: string | undefined): string {
  const { limit } = said
  if (limit === undefined) return ''
  if ('oneOf' in limit) return limit.oneOf.join(', ')
  const { min, max } = limit
  if (min !== undefined && max !== undefined) {
    return withUnit(`${plainNumberText(min)}–${plainNumberText(max)}`, unit)
  }
  if (min !== undefined) return `at least ${withUnit(plainNumberText(min), unit)}`
  return max === undefined ? '' : `at most ${withUnit(plainNumberText(max), unit)}`
}

function isWithin(said: Said): boolean {
  const { limit, value } = said
  if (limit === undefined || 'oneOf' in limit || typeof value !== 'number') return true
  return value >= (limit.min ?? value) && value <= (limit.max ?? value)
}

/** What was typed, never changed: even digits that look wrong stay. */
export function valueText(value: ProblemValue): string {
  if (value === null) return 'nothing'
  return typeof value === 'number' ? typedNumberText(value) : String(value)
}

function typedNumberText(value: number): string {
  return String(value).replace(/^-/, '−')
}

function quoted(value: ProblemValue): string {
  return typeof value === 'string' ? `“${value}”` : valueText(value)
}

function lastPart(path: string): string {
  return path.split('.').at(-1) ?? path
}
