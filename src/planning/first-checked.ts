// The best set-up that published measurements check, where the first of all is one that none does. Leaves out why it is checked, which the kit says.
import type { Plan, RankedSetUp } from './plan-types.ts'

/** The first ranked set-up of a checked family, where the very first is unchecked; null where the first is checked or none is. */
export function firstChecked(plan: Pick<Plan, 'ranked'>): RankedSetUp | null {
  const [first] = plan.ranked
  if (first === undefined || first.isChecked) return null
  return plan.ranked.find(({ isChecked }) => isChecked) ?? null
}
