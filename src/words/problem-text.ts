// What is wrong with an input, in one line: what was got, what is allowed, what may have been meant. Leaves out where the line is shown.
import type { ErrorCode, Limit, Problem, ProblemValue } from '../errors.ts'
import { FIELD_LABELS, fieldLabel } from './field-labels.ts'
import { plainNumberText, withUnit } from './number-text.ts'
import { decimalSign, say } from './say.ts'

type Said = Pick<Problem, 'path' | 'value' | 'limit' | 'unit'>

/** "haemoglobin 12 g/L outside 30–250 g/L; did you mean 120 g/L?" */
export function problemText(problem: Problem): string {
  const said = PROBLEM_TEXTS[problem.code](problem)
  return problem.suggestion === undefined
    ? said
    : say('{text}; did you mean {meant}?', { text: said, meant: meantText(problem) })
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
  return text
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
  STEP_NOT_ON_METER: (said) =>
    allowing(said, say('{got} cannot be set on this source', { got: got(said) })),
  MISSING_FIELD: (said) => allowing(said, say('{label} is missing', { label: labelOf(said) })),
  UNKNOWN_FIELD: (said) =>
    allowing(said, say('unknown field {quoted}', { quoted: quoted(lastPart(said.path)) })),
  UNKNOWN_CHOICE: (said) =>
    allowing(
      said,
      say('{label}: unknown choice {quoted}', { label: labelOf(said), quoted: quoted(said.value) }),
    ),
  UNKNOWN_ID: (said) =>
    allowing(said, say('nothing is called {quoted}', { quoted: quoted(said.value) })),
  DUPLICATE_ID: (said) =>
    say('{label}: {quoted} stands here twice', {
      label: labelOf(said),
      quoted: quoted(said.value),
    }),
  NOT_A_NUMBER: (said) =>
    allowing(
      said,
      say('{label} {quoted} is not a number', { label: labelOf(said), quoted: quoted(said.value) }),
    ),
  NOT_TEXT: (said) =>
    say('{label} must be text, got {value}', {
      label: labelOf(said),
      value: valueText(said.value),
    }),
  NOT_A_BOOLEAN: (said) =>
    say('{label} must be true or false, got {quoted}', {
      label: labelOf(said),
      quoted: quoted(said.value),
    }),
  NOT_A_LIST: (said) =>
    say('{label} must be a list, got {value}', {
      label: labelOf(said),
      value: valueText(said.value),
    }),
  NOT_AN_OBJECT: (said) =>
    say('{label} must hold named fields, got {value}', {
      label: labelOf(said),
      value: valueText(said.value),
    }),
  UNREADABLE_TEXT: (said) =>
    say('{label} cannot be read: {value}', { label: labelOf(said), value: valueText(said.value) }),
  CELL_UNREADABLE: (said) =>
    typed(
      said,
      say('{label}: {quoted} cannot be read', {
        label: labelOf(said),
        quoted: quoted(said.value),
      }),
    ),
  CELL_NOT_FOR_ROW: (said) =>
    allowing(
      said,
      say('{label}: {quoted} has no place in this row', {
        label: labelOf(said),
        quoted: quoted(said.value),
      }),
    ),
  NUMBER_AMBIGUOUS: (said) =>
    allowing(
      said,
      say('{label}: {quoted} could mean two numbers', {
        label: labelOf(said),
        quoted: quoted(said.value),
      }),
    ),
  LETTERS_LOST: (said) =>
    say('{label}: letters of {quoted} were lost; save the file as UTF-8 (CSV UTF-8)', {
      label: labelOf(said),
      quoted: quoted(said.value),
    }),
  UNREADABLE_DATE: (said) =>
    say('{label} {quoted} is not a date', { label: labelOf(said), quoted: quoted(said.value) }),
  UNIT_UNKNOWN: (said) =>
    allowing(
      said,
      say('{label}: unknown unit {quoted}', { label: labelOf(said), quoted: quoted(said.value) }),
    ),
  UNIT_SLIP_SUSPECTED: (said) =>
    isWithin(said)
      ? say('{got} does not fit this patient and looks like another unit', { got: got(said) })
      : outside(said),
  WEIGHT_REQUIRED: (said) => allowing(said, say('weight is required for this patient')),
  CONTRADICTION: (said) =>
    allowing(said, say('{got} contradicts another value', { got: got(said) })),
  RANGE_REVERSED: (said) =>
    allowing(said, say('{got} must lie above the lower end', { got: got(said) })),
  TARGET_ABOVE_SOURCE: (said) =>
    allowing(said, say('{got} is above what the source holds', { got: got(said) })),
  SPREAD_EMPTY: (said) =>
    say('{label} leaves no room between its limits', { label: labelOf(said) }),
  AGE_GIVEN_TWICE: (said) => allowing(said, say('age is given more than once')),
  GESTATION_NOT_FOR_AGE: (said) =>
    allowing({ ...said, unit: 'a' }, say('gestation at birth plays no part at this age')),
  STATE_NOT_FOR_AGE: (said) =>
    allowing(
      said,
      say('breathing state {quoted} does not belong to this age', { quoted: quoted(said.value) }),
    ),
  STATE_NOT_FOR_GESTATION: (said) =>
    allowing(
      said,
      say('breathing state {quoted} does not fit the gestation', { quoted: quoted(said.value) }),
    ),
  STATE_NOT_FOR_SEX: (said) =>
    say('breathing state {quoted} does not fit the sex typed', { quoted: quoted(said.value) }),
  WEIGHT_IMPLAUSIBLE_FOR_AGE: (said) =>
    allowing(said, say('{got} is not believable at this age', { got: got(said) })),
  HEIGHT_IMPLAUSIBLE_FOR_AGE: (said) =>
    allowing(said, say('{got} is not believable at this age', { got: got(said) })),
  RATE_IMPLAUSIBLE_FOR_AGE: (said) =>
    allowing(said, say('{got} is not believable at this age', { got: got(said) })),
  TIDAL_VOLUME_IMPLAUSIBLE_FOR_SIZE: (said) =>
    allowing(said, say('{got} is not believable for this body', { got: got(said) })),
  TIDAL_VOLUME_BELOW_DEAD_SPACE: (said) =>
    allowing(said, say('{got} would not reach past the dead space', { got: got(said) })),
  UPTAKE_IMPLAUSIBLE_FOR_SIZE: (said) =>
    allowing(said, say('{got} is not believable for this body', { got: got(said) })),
  FLOW_IMPLAUSIBLE_FOR_SIZE: (said) =>
    allowing(said, say('{got} is too much for this patient', { got: got(said) })),
  SPEAKING_VALVE_WITH_CUFF_UP: () =>
    say(
      'a speaking valve with the cuff up lets nothing out: the patient cannot breathe out; deflate the cuff or take the valve off',
    ),
  CAPPED_WITH_CUFF_UP: () => say('a capped tube with the cuff up closes the airway'),
  CAPPED_WITH_SPEAKING_VALVE: () =>
    say('a tube is either capped or has a speaking valve, not both'),
  CAPPED_WITH_EXCHANGER: () => say('a capped tube carries no heat and moisture exchanger'),
  SPEAKING_VALVE_WITH_EXCHANGER: () =>
    say(
      'a speaking valve with a heat and moisture exchanger: no breath leaves through the exchanger, it stays dry; use one of them',
    ),
  ALTITUDE_AND_PRESSURE_DISAGREE: (said) =>
    allowing(said, say('{got} does not fit the altitude typed', { got: got(said) })),
  RATES_DISAGREE: (said) =>
    allowing(
      said,
      say('{got} does not fit the breathing rate typed elsewhere', { got: got(said) }),
    ),
  CHANGE_NOT_FOR_AIRWAY: (said) =>
    allowing(
      said,
      say('{what} does not fit the airway typed', {
        what: typeof said.value === 'number' ? got(said) : quoted(said.value),
      }),
    ),
  SOURCE_NOT_FOR_INTERFACE: (said) =>
    allowing(said, say('{quoted} cannot feed this interface', { quoted: quoted(said.value) })),
  SETTING_NOT_FOR_SET_UP: (said) =>
    allowing(said, say('{got} cannot be set on this set-up', { got: got(said) })),
  FLUSH_NOT_ON_SOURCE: () => say('this source has no flush: it has no scale to be opened beyond'),
  OVER_MASK_NOT_FOR_INTERFACE: (said) =>
    allowing(
      said,
      say('only a cannula is worn under a mask: {label} does not fit here', {
        label: labelOf(said),
      }),
    ),
  HYPERBARIC_REFUSED: (said) =>
    say('{text}: not for a hyperbaric chamber', {
      text: allowing(said, say('{got} is above the pressure of open air', { got: got(said) })),
    }),
  NOT_BREATHING_REFUSED: () =>
    say(
      'not for a patient who does not breathe or gasps: call for help, bag and mask, stop using this',
    ),
  PULSE_SETTING_REFUSED: () =>
    say(
      'a pulse setting is a number on a dial, no flow in L/min, and is never converted: titrate on the device with an oximeter',
    ),
  VENTILATED_REFUSED: () =>
    say(
      'not for a ventilated patient or one on pressure support: only for patients who breathe by themselves',
    ),
}

function outside(said: Said): string {
  const range = limitText(said, unitOf(said))
  return range === ''
    ? say('{got} is not allowed', { got: got(said) })
    : say('{got} outside {range}', { got: got(said), range })
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

/** The sentence with what is allowed behind it, where that is known. */
function allowing(said: Said, text: string): string {
  const limit = limitText(said, unitOf(said))
  return limit === '' ? text : say('{text} (allowed: {limit})', { text, limit })
}

/** The sentence with an example of what can be typed. */
function typed(said: Said, text: string): string {
  const example = limitText(said, undefined)
  return example === '' ? text : say('{text} (such as: {example})', { text, example })
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
  if (min !== undefined)
    return say('at least {withUnit}', { withUnit: withUnit(plainNumberText(min), unit) })
  return max === undefined
    ? ''
    : say('at most {withUnit}', { withUnit: withUnit(plainNumberText(max), unit) })
}

function isWithin(said: Said): boolean {
  const { limit, value } = said
  if (limit === undefined || 'oneOf' in limit || typeof value !== 'number') return true
  return value >= (limit.min ?? value) && value <= (limit.max ?? value)
}

/** What was typed, never changed: even digits that look wrong stay. */
export function valueText(value: ProblemValue): string {
  if (value === null) return say('nothing')
  return typeof value === 'number' ? typedNumberText(value) : String(value)
}

function typedNumberText(value: number): string {
  return String(value).replace(/^-/, '−').replace('.', decimalSign())
}

function quoted(value: ProblemValue): string {
  return typeof value === 'string' ? `“${value}”` : valueText(value)
}

function lastPart(path: string): string {
  return path.split('.').at(-1) ?? path
}
