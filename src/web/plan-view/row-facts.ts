// The facts beside the numbers of a row: chances, how long it holds, gas used, pressure, humidity. Leaves out their layout.
import type { Goal } from '../../patient/case.ts'
import type { RankedSetUp } from '../../planning/plan-types.ts'
import { remarkText } from '../../words/remark-text.ts'
import {
  ANSWER_WORDS,
  chanceSplitText,
  holdsText,
  oxygenText,
  pressureBandText,
} from '../../words/web-answer-text.ts'
import type { Fact } from '../parts/facts.tsx'

/** A trial is not followed to the rate at which it leaves the goal, and its pressure and humidity are not worked out. */
export function factsOf(told: {
  readonly row: RankedSetUp
  readonly goal: Goal
  readonly isTrial: boolean
}): readonly Fact[] {
  const { row, goal, isTrial } = told
  const pressure = isTrial ? null : pressureBandText(row)
  const hasRange = goal.kind === 'saturation' || goal.kind === 'fraction'
  return [
    ...(row.chance === null ? [] : [{ name: ANSWER_WORDS.chance, value: chanceSplitText(row) }]),
    ...(hasRange && !isTrial ? [{ name: ANSWER_WORDS.holds, value: holdsText(row) }] : []),
    { name: ANSWER_WORDS.oxygen, value: oxygenText(row) },
    ...(pressure === null ? [] : [{ name: ANSWER_WORDS.pressure, value: pressure }]),
    ...(isTrial ? [] : row.humidity)
      .slice(0, 1)
      .map((remark) => ({ name: ANSWER_WORDS.humidity, value: remarkText(remark), isWide: true })),
  ]
}
