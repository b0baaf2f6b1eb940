// Error codes and the two kinds of failure: bad input (DomainError) and a bug (assert). Holds no sentence: words/ turns codes into text.

/** Kind of each code. A new code is one line here and one text in words/. */
export const ERROR_CODES = {
  // A number outside what the model or the product allows.
  VALUE_OUT_OF_RANGE: 'range',
  FLOW_OUT_OF_RANGE: 'range',
  FRACTION_OUT_OF_RANGE: 'range',
  PRESSURE_OUT_OF_RANGE: 'range',
  PARTIAL_PRESSURE_OUT_OF_RANGE: 'range',
  BAROMETRIC_PRESSURE_OUT_OF_RANGE: 'range',
  ALTITUDE_OUT_OF_RANGE: 'range',
  TEMPERATURE_OUT_OF_RANGE: 'range',
  HUMIDITY_OUT_OF_RANGE: 'range',
  VOLUME_OUT_OF_RANGE: 'range',
  DURATION_OUT_OF_RANGE: 'range',
  RATE_OUT_OF_RANGE: 'range',
  DUTY_OUT_OF_RANGE: 'range',
  BREATH_OUT_OF_RANGE: 'range',
  AGE_OUT_OF_RANGE: 'range',
  GESTATION_OUT_OF_RANGE: 'range',
  WEIGHT_OUT_OF_RANGE: 'range',
  HEIGHT_OUT_OF_RANGE: 'range',
  SATURATION_OUT_OF_RANGE: 'range',
  HAEMOGLOBIN_OUT_OF_RANGE: 'range',
  PH_OUT_OF_RANGE: 'range',
  CONTENT_OUT_OF_RANGE: 'range',
  SHUNT_OUT_OF_RANGE: 'range',
  PROBABILITY_OUT_OF_RANGE: 'range',
  Z_SCORE_OUT_OF_RANGE: 'range',
  SIZE_OUT_OF_RANGE: 'range',
  COUNT_OUT_OF_RANGE: 'range',
  STEP_NOT_ON_METER: 'range',
  // A field that is absent, unknown or of the wrong shape.
  MISSING_FIELD: 'shape',
  UNKNOWN_FIELD: 'shape',
  UNKNOWN_CHOICE: 'shape',
  UNKNOWN_ID: 'shape',
  DUPLICATE_ID: 'shape',
  NOT_A_NUMBER: 'shape',
  NOT_TEXT: 'shape',
  NOT_A_BOOLEAN: 'shape',
  NOT_A_LIST: 'shape',
  NOT_AN_OBJECT: 'shape',
  UNREADABLE_TEXT: 'shape',
  CELL_UNREADABLE: 'shape',
  CELL_NOT_FOR_ROW: 'shape',
  NUMBER_AMBIGUOUS: 'shape',
  LETTERS_LOST: 'shape',
  UNREADABLE_DATE: 'shape',
  UNIT_UNKNOWN: 'shape',
  UNIT_SLIP_SUSPECTED: 'shape',
  WEIGHT_REQUIRED: 'shape',
  // Values that are each allowed but do not fit each other.
  CONTRADICTION: 'contradiction',
  RANGE_REVERSED: 'contradiction',
  TARGET_ABOVE_SOURCE: 'contradiction',
  SPREAD_EMPTY: 'contradiction',
  AGE_GIVEN_TWICE: 'contradiction',
  GESTATION_NOT_FOR_AGE: 'contradiction',
  STATE_NOT_FOR_AGE: 'contradiction',
  STATE_NOT_FOR_GESTATION: 'contradiction',
  STATE_NOT_FOR_SEX: 'contradiction',
  WEIGHT_IMPLAUSIBLE_FOR_AGE: 'contradiction',
  HEIGHT_IMPLAUSIBLE_FOR_AGE: 'contradiction',
  RATE_IMPLAUSIBLE_FOR_AGE: 'contradiction',
  TIDAL_VOLUME_IMPLAUSIBLE_FOR_SIZE: 'contradiction',
  TIDAL_VOLUME_BELOW_DEAD_SPACE: 'contradiction',
  UPTAKE_IMPLAUSIBLE_FOR_SIZE: 'contradiction',
  FLOW_IMPLAUSIBLE_FOR_SIZE: 'contradiction',
  SPEAKING_VALVE_WITH_CUFF_UP: 'contradiction',
  CAPPED_WITH_CUFF_UP: 'contradiction',
  CAPPED_WITH_SPEAKING_VALVE: 'contradiction',
  CAPPED_WITH_EXCHANGER: 'contradiction',
  SPEAKING_VALVE_WITH_EXCHANGER: 'contradiction',
  ALTITUDE_AND_PRESSURE_DISAGREE: 'contradiction',
  RATES_DISAGREE: 'contradiction',
  CHANGE_NOT_FOR_AIRWAY: 'contradiction',
  SOURCE_NOT_FOR_INTERFACE: 'contradiction',
  SETTING_NOT_FOR_SET_UP: 'contradiction',
  FLUSH_NOT_ON_SOURCE: 'contradiction',
  OVER_MASK_NOT_FOR_INTERFACE: 'contradiction',
  // Asked for on purpose, refused on purpose.
  HYPERBARIC_REFUSED: 'refused',
  NOT_BREATHING_REFUSED: 'refused',
  VENTILATED_REFUSED: 'refused',
  PULSE_SETTING_REFUSED: 'refused',
} as const

/** Stable code of something wrong with an input. */
export type ErrorCode = keyof typeof ERROR_CODES
export type ErrorKind = (typeof ERROR_CODES)[ErrorCode]

/** What is allowed: bounds (either may be absent) or the list of choices. */
export type Limit =
  | { readonly min?: number; readonly max?: number }
  | { readonly oneOf: readonly string[] }

/** What was got. Longer things (lists, objects) are named by their type only. */
export type ProblemValue = string | number | boolean | null

/** One thing wrong with an input, as data. Case and shelf readers collect a list of these. */
export interface Problem {
  readonly code: ErrorCode
  /** Where, in the input's own words: `patient.weightKg`, `flowLpm`. */
  readonly path: string
  readonly value: ProblemValue
  readonly limit?: Limit
  /** Unit of value and limit, as printed: `L/min`. */
  readonly unit?: string
  /** A value the writer may have meant, to be offered and never applied. */
  readonly suggestion?: string | number
}

/** Bad or out-of-range input. The message is code and fields only; words/ makes the sentence. */
export class DomainError extends Error implements Problem {
  readonly code: ErrorCode
  readonly path: string
  readonly value: ProblemValue
  declare readonly limit?: Limit
  declare readonly unit?: string
  declare readonly suggestion?: string | number

  constructor(problem: Problem) {
    super(compactProblem(problem))
    this.name = 'DomainError'
    this.code = problem.code
    this.path = problem.path
    this.value = problem.value
    if (problem.limit !== undefined) this.limit = problem.limit
    if (problem.unit !== undefined) this.unit = problem.unit
    if (problem.suggestion !== undefined) this.suggestion = problem.suggestion
  }
}

/** A broken promise inside the program, never the user's doing. */
export class BugError extends Error {
  constructor(what: string) {
    super(what)
    this.name = 'BugError'
  }
}

/** States what must hold; stays on in production. `what` is a short token path, not a sentence. */
export function assert(condition: boolean, what: string): asserts condition {
  if (!condition) throw new BugError(what)
}

export function isDomainError(thrown: unknown): thrown is DomainError {
  return thrown instanceof DomainError
}

/** The plain Problem held by an error, for collecting and for JSON. */
export function problemOf(error: DomainError): Problem {
  const problem: { -readonly [K in keyof Problem]: Problem[K] } = {
    code: error.code,
    path: error.path,
    value: error.value,
  }
  if (error.limit !== undefined) problem.limit = error.limit
  if (error.unit !== undefined) problem.unit = error.unit
  if (error.suggestion !== undefined) problem.suggestion = error.suggestion
  return problem
}

export interface Bounds {
  readonly code: ErrorCode
  readonly path: string
  readonly value: number
  readonly min: number
  readonly max: number
  readonly unit?: string
}

/** Throws unless min ≤ value ≤ max; NaN and infinities never pass. Returns the value. */
export function requireWithin(bounds: Bounds): number {
  if (bounds.value >= bounds.min && bounds.value <= bounds.max) return bounds.value
  throw outOfRange(bounds)
}

/** The error for a value outside bounds, for hot code that tests the bounds itself. */
export function outOfRange(bounds: Bounds): DomainError {
  const code = Number.isFinite(bounds.value) ? bounds.code : 'NOT_A_NUMBER'
  const limit = { min: bounds.min, max: bounds.max }
  return new DomainError({
    code,
    path: bounds.path,
    value: bounds.value,
    limit,
    ...(bounds.unit === undefined ? {} : { unit: bounds.unit }),
  })
}

/** `FLOW_OUT_OF_RANGE flowLpm 70 (1–60 L/min)`: for logs and stack traces. */
export function compactProblem(problem: Problem): string {
  const limit = problem.limit === undefined ? '' : compactLimit(problem.limit)
  const bracket = [limit, problem.unit ?? ''].filter((part) => part !== '').join(' ')
  const head = `${problem.code} ${problem.path} ${String(problem.value)}`
  const tail = problem.suggestion === undefined ? '' : ` ~ ${problem.suggestion}`
  return (bracket === '' ? head : `${head} (${bracket})`) + tail
}

function compactLimit(limit: Limit): string {
  if ('oneOf' in limit) return limit.oneOf.join('|')
  if (limit.max === undefined) return limit.min === undefined ? '' : `≥${limit.min}`
  return limit.min === undefined ? `≤${limit.max}` : `${limit.min}–${limit.max}`
}
