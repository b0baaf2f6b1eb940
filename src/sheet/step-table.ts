// Every step there is, by phase, and those of one sheet in the order they are done. Leaves out their text.
import type { SheetFacts } from './facts.ts'
import { applies, STEP_PHASES, STEP_PLACES } from './step.ts'
import type { Step } from './step.ts'
import { PREPARE_STEPS } from './steps/prepare.ts'
import { CHECK_BEFORE_USE_STEPS } from './steps/check-before-use.ts'
import { FIT_STEPS } from './steps/fit.ts'
import { VERIFY_STEPS } from './steps/verify.ts'
import { EACH_SHIFT_STEPS } from './steps/each-shift.ts'
import { IF_GAS_FAILS_STEPS } from './steps/if-gas-fails.ts'

export const STEPS: readonly Step[] = [
  ...PREPARE_STEPS,
  ...CHECK_BEFORE_USE_STEPS,
  ...FIT_STEPS,
  ...VERIFY_STEPS,
  ...EACH_SHIFT_STEPS,
  ...IF_GAS_FAILS_STEPS,
]

/** The steps for these facts: phase by phase, within a phase along the gas from the outlet to the patient, else as in the table. */
export function stepsFor(facts: SheetFacts): readonly Step[] {
  return STEPS.filter((step) => applies(step, facts)).toSorted(
    (a, b) =>
      STEP_PHASES.indexOf(a.phase) - STEP_PHASES.indexOf(b.phase) ||
      STEP_PLACES.indexOf(a.place) - STEP_PLACES.indexOf(b.place),
  )
}
