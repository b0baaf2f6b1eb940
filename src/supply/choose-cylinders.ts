// Which cylinders of a store to take for the oxygen needed: fewest changes, then least left over. Leaves out who carries them.
import { assert, requireWithin } from '../errors.ts'
import { usableContents, type CylinderUse } from './cylinder.ts'
import type { StoreRow } from './store.ts'
import { supplyRemark, type SupplyRemark } from './supply-remark.ts'

export interface ChoiceQuestion {
  readonly store: readonly StoreRow[]
  readonly neededL: number
  /** Highest flow the regulator must give. */
  readonly drawLpmMax: number
  readonly use: Omit<CylinderUse, 'regulatorMinimumGaugeKpa'>
  /** Of the gas when the gauges were read. */
  readonly readAtC: number
  /** Only what may go near a scanner. */
  readonly isMrConditionalOnly: boolean
  /** Only what stands there; every place where absent. */
  readonly place?: string
}

export interface Pick {
  readonly row: StoreRow
  readonly count: number
  /** Of one, down to what is left on purpose. */
  readonly usableEachL: number
}

export interface CylinderChoice {
  /** Largest first: the order of use. */
  readonly picks: readonly Pick[]
  readonly cylinders: number
  /** How often the cylinder is changed on the way. */
  readonly changes: number
  readonly usableL: number
  readonly leftOverL: number
  /** What the whole store lacks; then everything usable is picked. */
  readonly missingL: number
  readonly notUsed: readonly { readonly row: StoreRow; readonly reason: SupplyRemark }[]
  readonly remarks: readonly SupplyRemark[]
}

/** More than this is no load to carry. */
const CARRIED_MOST = 6
const NEEDED_L_MAX = 1_000_000
/** Litres within which two loads count as equal. */
const EQUAL_L = 1e-6

/** Which cylinders hold the litres needed, each down to what is left in it: fewest first, then least left over. Valid 0–1 000 000 L, else
 *  CONTENT_OUT_OF_RANGE. Exact: no smaller number suffices, and none of that number leaves less over
 *  (choose-cylinders.test.ts tries every load). */
export function chooseCylinders(question: ChoiceQuestion): CylinderChoice {
  requireWithin({
    code: 'CONTENT_OUT_OF_RANGE',
    path: 'neededL',
    value: question.neededL,
    min: 0,
    max: NEEDED_L_MAX,
    unit: 'L',
  })
  const judged = question.store.map((row) => ({ row, ...judge(row, question) }))
  const stock = judged
    .flatMap(({ row, usableEachL, reason }) => (reason === null ? [{ row, usableEachL }] : []))
    .sort((a, b) => b.usableEachL - a.usableEachL)
  const counts = countsFor(
    stock.map(({ row, usableEachL }) => ({ usableL: usableEachL, most: row.count })),
    question.neededL,
  )
  const picks = stock
    .map((one, i) => ({ ...one, count: counts[i] ?? 0 }))
    .filter(({ count }) => count > 0)
  const usableL = picks.reduce((sum, { count, usableEachL }) => sum + count * usableEachL, 0)
  const cylinders = picks.reduce((sum, { count }) => sum + count, 0)
  const missingL = Math.max(0, question.neededL - usableL)
  return {
    picks,
    cylinders,
    changes: Math.max(0, cylinders - 1),
    usableL,
    leftOverL: Math.max(0, usableL - question.neededL),
    missingL: missingL < EQUAL_L ? 0 : missingL,
    notUsed: judged.flatMap(({ row, reason }) => (reason === null ? [] : [{ row, reason }])),
    remarks: [
      ...(missingL < EQUAL_L ? [] : [supplyRemark('STORE_TOO_SMALL', { missingL })]),
      ...(cylinders > CARRIED_MOST ? [supplyRemark('MANY_CYLINDERS', { count: cylinders })] : []),
    ],
  }
}

function judge(
  row: StoreRow,
  question: ChoiceQuestion,
): { readonly usableEachL: number; readonly reason: SupplyRemark | null } {
  const no = (reason: SupplyRemark) => ({ usableEachL: 0, reason })
  requireWithin({
    code: 'COUNT_OUT_OF_RANGE',
    path: 'count',
    value: row.count,
    min: 0,
    max: 10_000,
  })
  if (row.count === 0) return no(supplyRemark('NONE_LEFT'))
  if (question.place !== undefined && row.place !== question.place)
    return no(supplyRemark('OTHER_PLACE', { place: row.place }))
  if (question.isMrConditionalOnly && row.mrSafety !== 'conditional')
    return no(supplyRemark(row.mrSafety === 'unknown' ? 'MR_SAFETY_UNKNOWN' : 'NOT_MR_CONDITIONAL'))
  const { flowLpmMax, regulatorMinimumGaugeKpa = 0 } = row
  if (flowLpmMax !== undefined && flowLpmMax < question.drawLpmMax)
    return no(supplyRemark('FLOW_ABOVE_REGULATOR', { flowLpmMax, drawLpm: question.drawLpmMax }))
  const { waterVolumeL, gaugeKpa } = row
  const usable = usableContents(
    { waterVolumeL, gaugeKpa, readAtC: question.readAtC, isValveOpen: true },
    { ...question.use, regulatorMinimumGaugeKpa },
  )
  // The gauge may read high: only what is surely there counts.
  if (usable.usableLowL <= 0) return no(supplyRemark('NOTHING_USABLE'))
  return { usableEachL: usable.usableLowL, reason: null }
}

interface Kind {
  readonly usableL: number
  readonly most: number
}

/** How many of each kind, kinds falling by size. All of them where they do not suffice. */
function countsFor(kinds: readonly Kind[], neededL: number): readonly number[] {
  const least = fewest(kinds, neededL)
  if (least === null) return kinds.map(({ most }) => most)
  return least > CARRIED_MOST ? largestFirst(kinds, least) : leastOver(kinds, neededL, least)
}

/** Taking the largest first reaches any amount with the fewest. */
function fewest(kinds: readonly Kind[], neededL: number): number | null {
  let restL = neededL
  let count = 0
  for (const { usableL, most } of kinds) {
    const taken = Math.min(most, Math.max(0, Math.ceil((restL - EQUAL_L) / usableL)))
    count += taken
    restL -= taken * usableL
  }
  return restL > EQUAL_L ? null : count
}

function largestFirst(kinds: readonly Kind[], count: number): readonly number[] {
  let rest = count
  return kinds.map(({ most }) => {
    const taken = Math.min(most, rest)
    rest -= taken
    return taken
  })
}

/** Of all loads of so many cylinders that suffice, the one with the least oxygen: tried one by one. */
function leastOver(kinds: readonly Kind[], neededL: number, count: number): readonly number[] {
  let best: readonly number[] | null = null
  let bestL = Number.POSITIVE_INFINITY
  const tried = (from: number, rest: number, loadL: number, taken: readonly number[]): void => {
    if (rest === 0) {
      if (loadL < neededL - EQUAL_L || loadL >= bestL - EQUAL_L) return
      best = taken
      bestL = loadL
      return
    }
    const kind = kinds[from]
    if (kind === undefined || loadL + rest * kind.usableL < neededL - EQUAL_L) return
    for (let n = Math.min(rest, kind.most); n >= 0; n--)
      tried(from + 1, rest - n, loadL + n * kind.usableL, [...taken, n])
  }
  tried(0, count, 0, [])
  assert(best !== null, 'supply/choose a load of so many exists')
  return best
}
