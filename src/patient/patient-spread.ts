// What is known of one patient as spreads: each value typed (with the error of its measurement) or assumed, and how that is known. Holds no values itself.
import type { FitId } from '../kit/family-id.ts'
import type { Body } from '../physiology/body.ts'
import type { BreathVariability, InspiratoryShapeName } from '../physiology/breathing-states.ts'
import type { Provenance } from '../units/provenance.ts'
import { limitsOf, medianOf, quantile, type Spread } from '../units/spread.ts'

/** Every value of the patient that is drawn, with its unit; 1 stands for a fraction. In the order they are printed. */
export const VALUE_UNITS = {
  weightKg: 'kg',
  heightCm: 'cm',
  ratePerMin: '/min',
  tidalVolumeMl: 'mL',
  dutyFraction: '1',
  expiratoryTimeConstantS: 's',
  mouthShare: '1',
  tubeShare: '1',
  extrathoracicMl: 'mL',
  intrathoracicMl: 'mL',
  functionalResidualCapacityMl: 'mL',
  haemoglobinGpl: 'g/L',
  temperatureC: '°C',
  arterialPco2Kpa: 'kPa',
  ph: '1',
  carboxyhaemoglobinFraction: '1',
  p50Kpa: 'kPa',
  respiratoryQuotient: '1',
  oxygenUptakeMlPerMin: 'mL/min',
  cardiacOutputLpm: 'L/min',
  shuntFraction: '1',
  extraShiftKpa: 'kPa',
  oximeterBiasPercent: '%',
  barometricPressureKpa: 'kPa',
} as const

export type ValueKey = keyof typeof VALUE_UNITS

/** Remarks on how a value came about, beyond its source. */
export type AssumptionCode =
  /** Neither altitude nor pressure given. */
  | 'SEA_LEVEL_ASSUMED'
  /** From the altitude, with the weather as spread. */
  | 'PRESSURE_FROM_ALTITUDE'
  /** Size from the growth tables or adult sizes. */
  | 'SIZE_FROM_AGE'
  /** From a typed weight (or height) and the age. */
  | 'SIZE_FROM_OTHER_SIZE'
  /** From the breathing state. */
  | 'FROM_STATE'
  /** From age, sex and size. */
  | 'FROM_SIZE'
  /** Some lung disease of unknown kind: whoever needs oxygen is not taken for healthy. */
  | 'LUNG_CONDITION_NOT_KNOWN'
  /** From the risk of carbon-dioxide retention. */
  | 'FROM_RETENTION_RISK'
  /** From the reason for the goal. */
  | 'FROM_GOAL_REASON'
  /** Plays no part in this airway. */
  | 'PLAYS_NO_PART'

export interface SourcedSpread extends Provenance {
  readonly spread: Spread
  readonly code?: AssumptionCode
}

export interface PatientSpread extends SourcedSpread {
  readonly origin: 'typed' | 'assumed'
}

/** How likely each fit is; the shares sum to one. */
export interface FitSpread extends Provenance {
  readonly origin: 'typed' | 'assumed'
  readonly shares: Readonly<Record<FitId, number>>
}

/** Spreads for the middle body; what goes by size is drawn anew for each drawn body (draw-body.ts). */
export interface PatientSpreads {
  readonly body: Body
  readonly values: Readonly<Record<ValueKey, PatientSpread>>
  readonly fit: FitSpread
  readonly inspiratoryShape: InspiratoryShapeName
  readonly variability: BreathVariability
}

export function assumed(value: SourcedSpread): PatientSpread {
  return { ...value, origin: 'assumed' }
}

/** Error of a typed value; without a source it is common practice. */
export function typed(
  spread: Spread,
  how: Provenance = { known: 'common-practice' },
): PatientSpread {
  return { spread, origin: 'typed', ...how }
}

/** Normal error around a typed value, within limits; three standard deviations at most. */
export function around(options: {
  readonly value: number
  readonly sd: number
  readonly min: number
  readonly max: number
}): Spread {
  const { value, sd } = options
  const reach = 3 * sd
  const min = Math.max(options.min, value - reach)
  const max = Math.min(options.max, value + reach)
  return min < max ? { kind: 'normal', mean: value, sd, min, max } : { kind: 'fixed', value }
}

/** A value that was not typed, with middle and 10–90 % limits, ready to be printed as assumed. */
export interface AssumedValue extends Provenance {
  readonly key: ValueKey
  readonly unit: string
  readonly median: number
  readonly low: number
  readonly high: number
  readonly code?: AssumptionCode
}

const LOW = 0.1
const HIGH = 0.9

/** Everything assumed, in printing order. */
export function assumedValues(spreads: PatientSpreads): readonly AssumedValue[] {
  return VALUE_KEYS.flatMap((key) => {
    const { spread, origin, known, source, code } = spreads.values[key]
    if (origin === 'typed' || code === 'PLAYS_NO_PART') return []
    return {
      key,
      unit: VALUE_UNITS[key],
      median: medianOf(spread),
      low: quantile(spread, LOW),
      high: quantile(spread, HIGH),
      known,
      ...(source === undefined ? {} : { source }),
      ...(code === undefined ? {} : { code }),
    }
  })
}

// Safe: the table is a literal with no other own keys.
export const VALUE_KEYS = Object.keys(VALUE_UNITS) as readonly ValueKey[]

/** The same spread cut at limits; undefined where nothing of it is left. */
export function cut(
  spread: Spread,
  limits: { readonly min: number; readonly max: number },
): Spread | undefined {
  const own = limitsOf(spread)
  const min = Math.max(own.min, limits.min)
  const max = Math.min(own.max, limits.max)
  if (spread.kind === 'fixed') return min === max ? spread : undefined
  if (min >= max) return undefined
  if (spread.kind !== 'triangular') return { ...spread, min, max }
  // A triangle cut to one side of its peak is no triangle; even shares over what is left keep the limits.
  return spread.mode > min && spread.mode < max
    ? { ...spread, min, max }
    : { kind: 'uniform', min, max }
}
