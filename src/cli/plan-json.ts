// A plan as JSON (schema/plan.schema.json): the core's own result, and beside every code its text. Leaves out nothing of the plan.
import type { Shelf } from '../kit/shelf.ts'
import type { ExcludedSetUp, Plan, RankedSetUp } from '../planning/plan-types.ts'
import { assumedText } from '../words/assumed-text.ts'
import { NOT_CHECKED, STANDING_CAUTIONS } from '../words/caution-texts.ts'
import { averagesText, guidelineText, holdsUntilText } from '../words/plan-text.ts'
import { setUpText } from '../words/set-up-text.ts'
import { jsonText } from './json-output.ts'
import { told, toldHead, toldReason, toldSetUp, toldSource } from './json-parts.ts'
import type { PlanWords } from './plan-question.ts'

export const PLAN_JSON_FORMAT = 'oxwright-plan-1'

export function planJson(options: {
  readonly plan: Plan
  readonly given: PlanWords
  readonly version: string
}): string {
  const { plan, given } = options
  return jsonText({
    format: PLAN_JSON_FORMAT,
    ...toldHead(options),
    standingCautions: STANDING_CAUTIONS,
    plan: {
      ...plan,
      ranked: plan.ranked.map((one) => toldRanked(one, plan, given.shelf)),
      excluded: plan.excluded.map((one) => toldExcluded(one, given.shelf)),
      emergency: plan.emergency.map(told),
      cautions: plan.cautions.map(told),
      guideline: plan.guideline.map((one) => ({ ...one, text: guidelineText(one) })),
      assumed: plan.assumed.map((one) => ({ ...one, text: assumedText(one) })),
      reading: { ...plan.reading, remarks: plan.reading.remarks.map(told) },
      onNow: plan.onNow === null ? null : toldRanked(plan.onNow, plan, given.shelf),
      missing: plan.missing.map(told),
      reassess: { ...plan.reassess, why: told(plan.reassess.why) },
    },
  })
}

function toldRanked(one: RankedSetUp, plan: Plan, shelf: Shelf): object {
  return {
    ...one,
    setUp: toldSetUp(one.setUp),
    twins: one.twins.map(({ id, source }) => ({ id, source: toldSource(source) })),
    text: setUpText(one.setUp, shelf),
    holdsUntil: { ...one.holdsUntil, text: holdsUntilText(one.holdsUntil) },
    remarks: one.remarks.map(told),
    humidity: one.humidity.map(told),
    watch: one.watch.map(told),
    whyNotFirst: one.whyNotFirst === null ? null : toldReason(one.whyNotFirst),
    /** What must stand beside the numbers of this row wherever they are shown. */
    besideNumbers: [
      ...(one.isChecked ? [] : [NOT_CHECKED]),
      ...(plan.reading.isUsed ? [] : [averagesText(plan.reading)]),
    ],
  }
}

function toldExcluded(one: ExcludedSetUp, shelf: Shelf): object {
  return {
    ...one,
    setUp: toldSetUp(one.setUp),
    text: setUpText(one.setUp, shelf),
    reasons: one.reasons.map(toldReason),
  }
}
