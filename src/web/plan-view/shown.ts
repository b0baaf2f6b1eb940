// Which set-up is in sight and what is tried on it. Leaves out computing and drawing.
import { flowSteps } from '../../kit/flow-steps.ts'
import { stepCode } from '../../kit/flow-steps.ts'
import type { SetUp } from '../../kit/set-up.ts'
import type { Shelf } from '../../kit/shelf.ts'
import type { FlowStep } from '../../kit/source-row.ts'
import type { Case } from '../../patient/case.ts'
import type { Plan, RankedSetUp } from '../../planning/plan-types.ts'
import type { Trial } from '../../planning/trial.ts'

/** The key under which what is on now stands beside the ids of ranked set-ups. */
export const ON_NOW = 'on-now'

/** What is in sight: a row of the plan, or room air, of which a plan has no row. */
export type Shown =
  | { readonly kind: 'row'; readonly key: string; readonly row: RankedSetUp }
  | { readonly kind: 'air'; readonly key: typeof ON_NOW }

/** What a reader changed on the set-up in sight; null where it is as the case has it. */
export interface Tweak {
  readonly flow: FlowStep | null
  readonly overFlow: FlowStep | null
  readonly ratePerMin: number | null
}

export const NO_TWEAK: Tweak = { flow: null, overFlow: null, ratePerMin: null }

export function isTweaked(tweak: Tweak): boolean {
  return tweak.flow !== null || tweak.overFlow !== null || tweak.ratePerMin !== null
}

/** What is on now, where that is known. */
export function onNowShown(about: Case, plan: Plan): Shown | null {
  if (about.onNow === undefined) return null
  if (plan.onNow !== null) return { kind: 'row', key: ON_NOW, row: plan.onNow }
  return about.onNow.setUp === null ? { kind: 'air', key: ON_NOW } : null
}

/** The one asked for; else what is on now; else the first; null where there is neither. */
export function shownOf(about: Case, plan: Plan, key: string | null): Shown | null {
  const onNow = onNowShown(about, plan)
  const asked = plan.ranked.find(({ id }) => id === key)
  if (asked !== undefined) return { kind: 'row', key: asked.id, row: asked }
  if (onNow !== null) return onNow
  const first = plan.ranked[0]
  return first === undefined ? null : { kind: 'row', key: first.id, row: first }
}

/** The steps in use on this source: those of its row on the shelf, where it is one. */
export function stepsOf(setUp: SetUp, shelf: Shelf): readonly FlowStep[] {
  const onShelf = shelf.sources.find(({ id }) => id === setUp.source.id)
  const steps = flowSteps(onShelf ?? setUp.source)
  return indexOfStep(steps, setUp.flow) < 0 ? withStep(steps, setUp.flow) : steps
}

/** A mark in force that is not among those in use keeps its place. */
function withStep(steps: readonly FlowStep[], own: FlowStep): readonly FlowStep[] {
  const height = (step: FlowStep): number => (step.kind === 'flush' ? Infinity : step.flowLpm)
  return [...steps, own].toSorted((a, b) => height(a) - height(b))
}

export function indexOfStep(steps: readonly FlowStep[], step: FlowStep): number {
  return steps.findIndex((one) => stepCode(one) === stepCode(step))
}

export function tweakedSetUp(setUp: SetUp, tweak: Tweak): SetUp {
  if (tweak.flow === null && tweak.overFlow === null) return setUp
  const over =
    setUp.over === null ? null : { ...setUp.over, flow: tweak.overFlow ?? setUp.over.flow }
  return { ...setUp, flow: tweak.flow ?? setUp.flow, over }
}

/** The row as the trial has it, so that it is told in the same words. */
export function triedRow(row: RankedSetUp, setUp: SetUp, trial: Trial): RankedSetUp {
  return {
    ...row,
    setUp,
    effectiveO2Fraction: trial.effectiveO2Fraction,
    saturationPercent: trial.saturationPercent,
    chance: trial.chance,
    oxygenUsedLpm: trial.oxygenUsedLpm,
    printedO2Fraction: trial.printedO2Fraction,
  }
}
