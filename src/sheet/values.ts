// The numbers that texts of a sheet may need, worked out once for a set-up and its case. Leaves out which text needs which.
import { assert } from '../errors.ts'
import { metersOf } from '../kit/flow-steps.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import { ratedRange } from '../kit/set-up-settings.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Shelf } from '../kit/shelf.ts'
import type { Goal } from '../patient/case.ts'
import { interfaceRow, printedMinimumLpm } from './facts.ts'

export const SHEET_VALUES = [
  /** As set on the source; on each of two meters its own mark. L/min, or `flush`. */
  'meterLpm',
  'flowLpm',
  'flowMlPerMin',
  'overLpm',
  'minimumLpm',
  'printedMinimumLpm',
  'setO2Fraction',
  'goalLowPercent',
  'goalHighPercent',
  /** The breathing rate at which the set-up leaves the goal. */
  'holdsPerMin',
] as const
export type SheetValue = (typeof SHEET_VALUES)[number]

export type SheetValues = Readonly<Partial<Record<SheetValue, number | string>>>

export interface ValuesQuestion {
  readonly setUp: SetUp
  readonly shelf: Pick<Shelf, 'interfaces'>
  readonly goal: Goal
  readonly holdsPerMin?: number
}

const ML_PER_L = 1000

/** What is known; what has no meaning for the set-up is absent. */
export function sheetValues(question: ValuesQuestion): SheetValues {
  const { setUp, shelf, goal, holdsPerMin } = question
  const { flow, over, setO2Fraction } = setUp
  const printed = printedMinimumLpm(setUp, shelf)
  return {
    ...(flow.kind === 'flush'
      ? { flowLpm: 'flush', meterLpm: 'flush' }
      : {
          flowLpm: flow.flowLpm,
          meterLpm: flow.flowLpm / metersOf(setUp.source),
          flowMlPerMin: flow.flowLpm * ML_PER_L,
        }),
    ...(over === null ? {} : { overLpm: over.flow.kind === 'flush' ? 'flush' : over.flow.flowLpm }),
    minimumLpm: ratedMinimumLpm(setUp, shelf),
    ...(printed === null ? {} : { printedMinimumLpm: printed }),
    ...(setO2Fraction === null ? {} : { setO2Fraction }),
    ...(goal.kind === 'saturation'
      ? { goalLowPercent: goal.lowPercent, goalHighPercent: goal.highPercent }
      : {}),
    ...(holdsPerMin === undefined ? {} : { holdsPerMin }),
  }
}

/** The values a row asks for; a row that asks for one its set-up has not is a bug. */
export function valuesFor(
  wanted: readonly SheetValue[] | undefined,
  values: SheetValues,
): Readonly<Record<string, number | string>> {
  return Object.fromEntries(
    (wanted ?? []).map((name) => {
      const value = values[name]
      assert(value !== undefined, `sheet/value ${name} known`)
      return [name, value]
    }),
  )
}

/** Lowest flow of interface and size: the device's own label wins over ours. For a mask over a cannula, that of the mask. */
function ratedMinimumLpm(setUp: SetUp, shelf: Pick<Shelf, 'interfaces'>): number {
  const family = INTERFACE_FAMILIES[setUp.over === null ? setUp.family : setUp.over.family]
  const stock = interfaceRow(setUp, shelf)?.sizes.find(({ size }) => size === setUp.size)
  const isLabelled = setUp.over === null && stock !== undefined
  const rated = ratedRange(family, isLabelled ? stock : { size: setUp.size, count: 1 })
  assert(rated !== null, 'sheet/size rated')
  return rated.minLpm
}
