// Things about a case that are allowed but must be seen. Holds no text: words/ turns codes into text.
import type { Limit, ProblemValue } from '../errors.ts'

export const WARNING_CODES = [
  /** Neither altitude nor barometric pressure given: sea level is assumed. */
  'SITE_NOT_GIVEN',
  /** No saturation read: every chance comes from averages only. */
  'NO_READING',
  /** Weight outside ±3 standard deviations for age. */
  'WEIGHT_UNUSUAL_FOR_AGE',
  'HEIGHT_UNUSUAL_FOR_AGE',
  /** Carbon monoxide (reason or measured): the oximeter reads it as oxygen. */
  'OXIMETER_NOT_TO_BE_TRUSTED',
  /** The interface on now stands before an opening that does not lead to the lungs. */
  'SET_UP_DOES_NOT_REACH_LUNGS',
  /** Fitted for another size of patient. */
  'SIZE_UNUSUAL_FOR_AGE',
  /** Saturation read earlier than it can have settled after the last change. */
  'READING_MAY_NOT_HAVE_SETTLED',
  /** The oximeter and the blood gas cannot both describe this moment. */
  'READING_DISAGREES_WITH_BLOOD_GAS',
  /** Laryngectomy or cuffed tube: mouth share plays no part. */
  'VALUE_PLAYS_NO_PART',
] as const
export type WarningCode = (typeof WARNING_CODES)[number]

export interface CaseWarning {
  readonly code: WarningCode
  readonly path: string
  readonly value: ProblemValue
  readonly limit?: Limit
  readonly unit?: string
}
