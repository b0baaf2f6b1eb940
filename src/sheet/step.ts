// What a row of the step table is, and whether it applies to the facts of one sheet. Leaves out the rows and their text.
import type { Provenance } from '../units/provenance.ts'
import type { SheetFacts } from './facts.ts'
import type { SheetValue } from './values.ts'

/** In the order in which they are done. */
export const STEP_PHASES = [
  'prepare',
  'check-before-use',
  'fit',
  'verify',
  'each-shift',
  'if-gas-fails',
] as const
export type StepPhase = (typeof STEP_PHASES)[number]

/** Where along the chain a step is done: within a phase they follow the gas from the outlet to the patient. */
export const STEP_PLACES = [
  'bed',
  'outlet',
  'source',
  'humidifier',
  'tube',
  'interface',
  'patient',
] as const
export type StepPlace = (typeof STEP_PLACES)[number]

type Single<T> = T extends readonly (infer One)[] ? One : T

/** Holds when every fact named here has one of the values listed; a fact that is a list needs one of them in it. */
export type Condition = {
  readonly [Fact in keyof SheetFacts]?: readonly Single<SheetFacts[Fact]>[]
}

/** A row: when any of its conditions holds, it is on the sheet. */
export interface Row extends Provenance {
  /** Also the code of its text in words/sheet-steps.ts. */
  readonly id: string
  readonly when: readonly Condition[]
  /** What its text needs to know. */
  readonly values?: readonly SheetValue[]
}

export interface Step extends Row {
  readonly phase: StepPhase
  readonly place: StepPlace
}

export const ALWAYS: readonly Condition[] = [{}]

export function applies(row: Pick<Row, 'when'>, facts: SheetFacts): boolean {
  return row.when.some((condition) => holds(condition, facts))
}

function holds(condition: Condition, facts: SheetFacts): boolean {
  return Object.entries(condition).every(([fact, allowed]) => {
    // Safe: a condition names facts alone, and lists values of that very fact.
    const has = facts[fact as keyof SheetFacts]
    const values: readonly unknown[] = Array.isArray(has) ? has : [has]
    return values.some((value) => (allowed as readonly unknown[]).includes(value))
  })
}
