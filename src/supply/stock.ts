// Stock of interfaces and consumables: use a day, days left, and the stock at which to order. Leaves out prices and expiry.
import { assert, requireWithin } from '../errors.ts'
import { normalQuantile } from '../units/normal.ts'
import { supplyRemark, type SupplyRemark } from './supply-remark.ts'

export interface StockItem {
  readonly id: string
  readonly label: string
  readonly onHand: number
  /** Used on each of the last days, the latest last. */
  readonly usedEachDay: readonly number[]
  readonly leadTimeDays: number
  /** Share of order cycles in which it must not run out; 0.95 where absent (common practice). */
  readonly serviceLevel?: number
}

export interface StockAnswer {
  readonly item: StockItem
  readonly usePerDay: number
  /** Null: nothing was used. */
  readonly daysLeft: number | null
  readonly reorderPoint: number
  readonly serviceLevel: number
  readonly mustOrder: boolean
  readonly remarks: readonly SupplyRemark[]
}

export const SERVICE_LEVEL = 0.95

/** Use in the lead time with a safety margin: mean·L + z·√(variance·L), rounded up; the variance is that of the days seen, and at least
 *  the mean (counts that fall at random). Common practice of stock keeping. Valid counts 0–100 000, 1–365 days seen, lead 0–365 d, level
 *  0.5–0.999, else DomainError. stock.test.ts compares with the exact sum of random counts. */
export function stockAnswer(item: StockItem): StockAnswer {
  const level = item.serviceLevel ?? SERVICE_LEVEL
  check(item, level)
  const days = item.usedEachDay.length
  const usePerDay = item.usedEachDay.reduce((sum, used) => sum + used, 0) / days
  const variance = Math.max(usePerDay, varianceOf(item.usedEachDay, usePerDay))
  const meanL = usePerDay * item.leadTimeDays
  const reorderPoint = Math.ceil(
    meanL + normalQuantile(level) * Math.sqrt(variance * item.leadTimeDays),
  )
  assert(reorderPoint >= Math.floor(meanL), 'supply/stock covers the mean')
  const daysLeft = usePerDay === 0 ? null : item.onHand / usePerDay
  const mustOrder = usePerDay > 0 && item.onHand <= reorderPoint
  return {
    item,
    usePerDay,
    daysLeft,
    reorderPoint,
    serviceLevel: level,
    mustOrder,
    remarks: [
      ...(daysLeft === null ? [supplyRemark('NO_USE_SEEN')] : []),
      ...(mustOrder ? [supplyRemark('REORDER_NOW', { reorderPoint })] : []),
      ...(daysLeft !== null && daysLeft < item.leadTimeDays
        ? [supplyRemark('OUT_BEFORE_DELIVERY', { daysLeft })]
        : []),
      supplyRemark(
        'STOCK_FORMULA',
        { leadTimeDays: item.leadTimeDays, serviceLevel: level },
        { known: 'common-practice' },
      ),
    ],
  }
}

/** Fewest days left first; what is not used last. */
export function stockAnswers(items: readonly StockItem[]): readonly StockAnswer[] {
  const left = ({ daysLeft }: StockAnswer): number => daysLeft ?? Number.POSITIVE_INFINITY
  return items.map(stockAnswer).sort((a, b) => Math.sign(left(a) - left(b)) || 0)
}

function varianceOf(values: readonly number[], mean: number): number {
  if (values.length < 2) return 0
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0)
  return squares / (values.length - 1)
}

const COUNT_MAX = 100_000
const DAYS_MAX = 365

function check(item: StockItem, serviceLevel: number): void {
  const count = (path: string, value: number, min: number, max: number): void => {
    requireWithin({ code: 'COUNT_OUT_OF_RANGE', path, value, min, max })
  }
  count('onHand', item.onHand, 0, COUNT_MAX)
  count('usedEachDay', item.usedEachDay.length, 1, DAYS_MAX)
  item.usedEachDay.forEach((used, i) => count(`usedEachDay[${i}]`, used, 0, COUNT_MAX))
  const lead = { path: 'leadTimeDays', value: item.leadTimeDays, min: 0, max: DAYS_MAX, unit: 'd' }
  requireWithin({ ...lead, code: 'DURATION_OUT_OF_RANGE' })
  const level = { path: 'serviceLevel', value: serviceLevel, min: 0.5, max: 0.999 }
  requireWithin({ ...level, code: 'PROBABILITY_OUT_OF_RANGE' })
}
