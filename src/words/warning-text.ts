// Things about a case that are allowed but must be seen, in one line each. Leaves out what is refused.
import type { CaseWarning, WarningCode } from '../patient/warnings.ts'
import { fieldLabel } from './field-labels.ts'
import { FAMILY_NAMES } from './names.ts'
import { withUnit } from './number-text.ts'
import { limitText, valueText } from './problem-text.ts'

export function warningText(warning: CaseWarning): string {
  return WARNING_TEXTS[warning.code](warning)
}

const WARNING_TEXTS: Readonly<Record<WarningCode, (warning: CaseWarning) => string>> = {
  SITE_NOT_GIVEN: () => 'neither altitude nor barometric pressure is given: sea level is assumed',
  NO_READING: () => 'no reading: from averages only; type what is on now and the saturation on it',
  WEIGHT_UNUSUAL_FOR_AGE: (warning) => `${got(warning)} is unusual for this age: check it`,
  HEIGHT_UNUSUAL_FOR_AGE: (warning) => `${got(warning)} is unusual for this age: check it`,
  OXIMETER_NOT_TO_BE_TRUSTED: () =>
    'carbon monoxide: the oximeter reads it as oxygen and is not to be trusted',
  SET_UP_DOES_NOT_REACH_LUNGS: (warning) =>
    `${familyName(warning.value)} on now stands before an opening that does not lead to the lungs: check it at once`,
  SIZE_UNUSUAL_FOR_AGE: (warning) =>
    `${got(warning)} is made for another age (${limitText(warning, warning.unit)})`,
  READING_MAY_NOT_HAVE_SETTLED: (warning) =>
    `${got(warning)}: the saturation may not have settled yet (watch it for ${limitText(warning, warning.unit)})`,
  READING_DISAGREES_WITH_BLOOD_GAS: (warning) =>
    `${got(warning)} and the blood gas cannot both describe this moment (the gas speaks for ${limitText(warning, warning.unit)})`,
  VALUE_PLAYS_NO_PART: (warning) => `${got(warning)} plays no part with this airway`,
}

function got(warning: CaseWarning): string {
  return `${fieldLabel(warning.path)} ${withUnit(valueText(warning.value), warning.unit)}`
}

function familyName(value: CaseWarning['value']): string {
  const names: Readonly<Record<string, string>> = FAMILY_NAMES
  return (typeof value === 'string' ? names[value] : undefined) ?? valueText(value)
}
