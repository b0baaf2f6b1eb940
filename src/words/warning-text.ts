// Things about a case that are allowed but must be seen, in one line each. Leaves out what is refused.
import type { CaseWarning, WarningCode } from '../patient/warnings.ts'
import { fieldLabel } from './field-labels.ts'
import { FAMILY_NAMES } from './names.ts'
import { withUnit } from './number-text.ts'
import { limitText, valueText } from './problem-text.ts'
import { say } from './say.ts'
import { inShownUnit, quantityAt, shownUnit } from './shown-unit.ts'

export function warningText(warning: CaseWarning): string {
  return WARNING_TEXTS[warning.code](warning)
}

const WARNING_TEXTS: Readonly<Record<WarningCode, (warning: CaseWarning) => string>> = {
  SITE_NOT_GIVEN: () =>
    say('neither altitude nor barometric pressure is given: sea level is assumed'),
  NO_READING: () =>
    say('no reading: from averages only; type what is on now and the saturation on it'),
  WEIGHT_UNUSUAL_FOR_AGE: (warning) =>
    say('{got} is unusual for this age: check it', { got: got(warning) }),
  HEIGHT_UNUSUAL_FOR_AGE: (warning) =>
    say('{got} is unusual for this age: check it', { got: got(warning) }),
  OXIMETER_NOT_TO_BE_TRUSTED: () =>
    say('carbon monoxide: the oximeter reads it as oxygen and is not to be trusted'),
  SET_UP_DOES_NOT_REACH_LUNGS: (warning) =>
    say(
      '{family} on now stands before an opening that does not lead to the lungs: check it at once',
      { family: familyName(warning.value) },
    ),
  SIZE_UNUSUAL_FOR_AGE: (warning) =>
    say('{got} is made for another age ({limit})', {
      got: got(warning),
      limit: limitText(warning, warning.unit),
    }),
  READING_MAY_NOT_HAVE_SETTLED: (warning) =>
    say('{got}: the saturation may not have settled yet (watch it for {limit})', {
      got: got(warning),
      limit: limitText(warning, warning.unit),
    }),
  READING_DISAGREES_WITH_BLOOD_GAS: (warning) =>
    say('{got} and the blood gas cannot both describe this moment (the gas speaks for {limit})', {
      got: got(warning),
      limit: limitText(warning, warning.unit),
    }),
  VALUE_PLAYS_NO_PART: (warning) =>
    say('{got} plays no part with this airway', { got: got(warning) }),
}

function got(warning: CaseWarning): string {
  return `${fieldLabel(warning.path)} ${valueInUnitText(warning)}`
}

const SHOWN_DIGITS = 4

function valueInUnitText({ path, value, unit }: CaseWarning): string {
  const quantity = quantityAt(path)
  if (quantity === undefined || typeof value !== 'number' || shownUnit(quantity) === unit)
    return withUnit(valueText(value), unit)
  const shown = inShownUnit(quantity, value)
  return withUnit(valueText(Number(shown.value.toPrecision(SHOWN_DIGITS))), shown.unit)
}

function familyName(value: CaseWarning['value']): string {
  const names: Readonly<Record<string, string>> = FAMILY_NAMES
  return (typeof value === 'string' ? names[value] : undefined) ?? valueText(value)
}
