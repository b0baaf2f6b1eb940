// The cylinders at hand as typed: kinds, counts, pressure to leave, and their reading. Leaves out choosing from them.
import { MR_SAFETIES } from '../../supply/store.ts'
import type { StoreRow } from '../../supply/store.ts'
import { toInside } from '../../units/choosable.ts'
import { CYLINDER_RULES, gaugeRule, pressureUnitOf } from './cylinder-form.ts'
import type { KeptForm, Texts } from './kept-form.ts'
import { formReader, readAll } from './read-form.ts'
import type { FormReader, ReadForm } from './read-form.ts'

export interface StoreGiven {
  readonly rows: readonly StoreRow[]
  readonly leftGaugeKpa: number
  readonly gaugeErrorKpa: number | undefined
  readonly temperatureC: number
  readonly isTemperatureGiven: boolean
}

/** Taken where no temperature is given: a ward's (common practice). */
const INDOORS_C = 20

/** Invented: what a small ward might have. */
export const EXAMPLE_STORE: KeptForm = {
  texts: { example: 'yes', pressureUnit: 'bar', left: '14' },
  rows: [
    { waterVolume: '2', gauge: '200', count: '3', mrSafety: 'conditional' },
    { waterVolume: '3', gauge: '150', count: '4', mrSafety: 'unknown' },
  ],
}

export const STORE_RULES = {
  waterVolume: CYLINDER_RULES.waterVolume,
  count: { min: 0, max: 1000 },
  flowLpmMax: { min: 0.1, max: 300, unit: 'L/min' },
  gasTemperatureC: CYLINDER_RULES.readAtC,
} as const

export function storePrefix(position: number): string {
  return `store-${position}`
}

export function readStore(form: KeptForm): ReadForm<StoreGiven> {
  const reader = formReader(form.texts, 'store')
  const unit = pressureUnitOf(form.texts)
  const rule = gaugeRule(unit)
  const leftGaugeKpa = toInside(reader.number('left', rule), unit)
  const error = reader.optional('gaugeError', rule)
  const temperatureC = reader.optional('gasTemperatureC', STORE_RULES.gasTemperatureC)
  const rows = form.rows.map((row, i) => rowRead(row, i, { form, all: reader }))
  return readAll(reader, () => ({
    rows,
    leftGaugeKpa,
    gaugeErrorKpa: error === undefined ? undefined : toInside(error, unit),
    temperatureC: temperatureC ?? INDOORS_C,
    isTemperatureGiven: temperatureC !== undefined,
  }))
}

function rowRead(
  row: Texts,
  position: number,
  { form, all }: { readonly form: KeptForm; readonly all: FormReader },
): StoreRow {
  const reader = formReader(row, storePrefix(position))
  const unit = pressureUnitOf(form.texts)
  const rule = gaugeRule(unit)
  const waterVolumeL = reader.number('waterVolume', STORE_RULES.waterVolume)
  const gaugeKpa = toInside(reader.number('gauge', rule), unit)
  const count = reader.number('count', STORE_RULES.count)
  if (!Number.isInteger(count))
    reader.report(
      { code: 'COUNT_OUT_OF_RANGE', path: 'gas.count', value: count, limit: STORE_RULES.count },
      'count',
    )
  const flowLpmMax = reader.optional('flowLpmMax', STORE_RULES.flowLpmMax)
  const minimum = reader.optional('regulatorMinimum', rule)
  all.problems.push(...reader.problems)
  return {
    id: `kind-${position + 1}`,
    label: row['label'] ?? '',
    waterVolumeL,
    gaugeKpa,
    count,
    mrSafety: MR_SAFETIES.find((safety) => safety === row['mrSafety']) ?? 'unknown',
    place: 'here',
    ...(flowLpmMax === undefined ? {} : { flowLpmMax }),
    ...(minimum === undefined ? {} : { regulatorMinimumGaugeKpa: toInside(minimum, unit) }),
  }
}
