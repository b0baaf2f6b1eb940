// Reads a whole case from parsed JSON or YAML: everything wrong at once, or the case as typed. Leaves out parsing of text.
import type { Problem } from '../errors.ts'
import { FIELD_ALIASES } from './aliases.ts'
import type { Case } from './case.ts'
import { KEYS } from './case-fields.ts'
import { checkBreathing } from './check-breathing.ts'
import { checkSize } from './check-size.ts'
import {
  given,
  newReading,
  openObject,
  pathOf,
  problemValue,
  readText,
  report,
  reportMissing,
  type Node,
  type Reading,
} from './field.ts'
import { readBreathing } from './read-breathing.ts'
import { readGoal } from './read-goal.ts'
import { readOnNow } from './read-on-now.ts'
import { readPatient } from './read-patient.ts'
import { readSite } from './read-site.ts'
import { warnOximeter } from './warn-oximeter.ts'
import type { CaseWarning } from './warnings.ts'

export const CASE_VERSION = 1

export type ReadCase =
  | { readonly ok: true; readonly case: Case; readonly warnings: readonly CaseWarning[] }
  | {
      readonly ok: false
      readonly problems: readonly Problem[]
      readonly warnings: readonly CaseWarning[]
    }

/** Every problem at once. A value is kept as typed or refused; none is converted, moved into range or dropped. */
export function readCase(input: unknown): ReadCase {
  const reading = newReading()
  const root = openObject({
    reading,
    path: '',
    value: input,
    keys: KEYS.case,
    aliases: FIELD_ALIASES,
  })
  const read = root === undefined ? undefined : caseOf(root)
  const { problems, warnings } = reading
  if (problems.length > 0 || read === undefined) return { ok: false, problems, warnings }
  return { ok: true, case: read, warnings }
}

function caseOf(root: Node): Case | undefined {
  readVersion(root)
  const names = given({
    note: readText(root, 'note'),
    bed: readText(root, 'bed'),
    code: readText(root, 'code'),
  })
  const patient = readPatient(root)
  const breathing = readBreathing(root)
  const site = readSite(root)
  const goal = readGoal(root)
  const onNow = readOnNow(root, patient)
  if (patient !== undefined) checkWhole(root.reading, { patient, breathing, goal, onNow })
  if (patient === undefined || breathing === undefined || goal === undefined) return undefined
  return { version: CASE_VERSION, ...names, patient, breathing, site, goal, ...given({ onNow }) }
}

function checkWhole(
  reading: Reading,
  parts: {
    readonly patient: Case['patient']
    readonly breathing: Case['breathing'] | undefined
    readonly goal: Case['goal'] | undefined
    readonly onNow: Case['onNow'] | undefined
  },
): void {
  const { patient, breathing, goal, onNow } = parts
  checkSize(reading, patient, breathing)
  if (breathing !== undefined) checkBreathing(reading, { patient, breathing, onNow })
  warnOximeter(reading, { patient, goal, onNow })
}

function readVersion(root: Node): void {
  const value = root.fields.get('version')
  const limit = { oneOf: [String(CASE_VERSION)] }
  if (value === undefined) reportMissing(root, 'version', limit)
  else if (value !== CASE_VERSION) {
    const path = pathOf(root, 'version')
    report(root.reading, { code: 'UNKNOWN_CHOICE', path, value: problemValue(value), limit })
  }
}
