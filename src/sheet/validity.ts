// Until when a sheet counts, from the time its readings were taken, and whether it still does. Leaves out the rows, which are data.
import { assert } from '../errors.ts'
import type { Reassessment, Remark } from '../planning/plan-types.ts'
import type { Provenance } from '../units/provenance.ts'
import type { SheetFacts } from './facts.ts'
import type { SheetRequest } from './fragment.ts'
import { applies } from './step.ts'
import { laterBy, minutesBetween, wallText, wallTime } from './wall-clock.ts'
import { VALIDITY_ROWS } from './watch-rows.ts'

export interface SheetValidity {
  readonly until: string
  /** The row that ends first. */
  readonly because: Remark & Provenance
}

/** The shortest of the rows that apply, counted from the readings. A cylinder has its own clock. */
export function sheetValidity(question: {
  readonly request: Pick<SheetRequest, 'readAt'>
  readonly facts: SheetFacts
}): SheetValidity {
  const rows = VALIDITY_ROWS.filter((row) => applies(row, question.facts))
  const first = rows.toSorted((a, b) => a.minutes - b.minutes)[0]
  assert(first !== undefined, 'sheet/validity row applies')
  const { id, minutes, known, source } = first
  return {
    until: wallText(laterBy(wallTime(question.request.readAt, 'readAt'), minutes)),
    because: { code: id, values: {}, known, ...(source === undefined ? {} : { source }) },
  }
}

/** When the patient is looked at again after the readings, by the same rule as the plan in front of it: never after the sheet's own end. */
export function lookAgainAt(question: {
  readonly readAt: string
  readonly validity: SheetValidity
  readonly reassess: Pick<Reassessment, 'withinMin'>
}): string {
  const { readAt, validity, reassess } = question
  const planned = laterBy(wallTime(readAt, 'readAt'), reassess.withinMin)
  const end = wallTime(validity.until, 'until')
  return wallText(minutesBetween(planned, end) < 0 ? end : planned)
}

export type SheetState = 'counts' | 'past' | 'clock-before'

/** Whether a sheet counts at a time: after its end it is past; a clock before the readings is wrong, and nothing counts by it. */
export function sheetState(
  sheet: { readonly readAt: string; readonly validity: SheetValidity },
  now: string,
): SheetState {
  const at = wallTime(now, 'now')
  if (minutesBetween(wallTime(sheet.readAt, 'readAt'), at) < 0) return 'clock-before'
  return minutesBetween(wallTime(sheet.validity.until, 'until'), at) > 0 ? 'past' : 'counts'
}
