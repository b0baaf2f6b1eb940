// One draw of what shapes delivery: body, breath, air spaces, how the breath divides, fit. Leaves out blood and lungs (draw-gas.ts) and the interface itself.
import type { FitId } from '../kit/family-id.ts'
import { type AirwayState } from '../physiology/airway-state.ts'
import type { Body } from '../physiology/body.ts'
import {
  type BreathVariability,
  type InspiratoryShapeName,
  tidalVolumeAtRateMl,
} from '../physiology/breathing-states.ts'
import { metabolicWeightKg } from '../physiology/metabolism.ts'
import { litresFromMl } from '../units/volume.ts'
import { fixed, limitsOf, quantile, scaled, type Spread } from '../units/spread.ts'
import { bodyAt } from './assume-body.ts'
import { breathingSpreads, type BreathingSpreads } from './assume-breathing.ts'
import { fitAt, fitSpread } from './assume-fit.ts'
import type { Case } from './case.ts'
import { LEAST_BREATH_PER_DEAD_SPACE, upperAirwayIsDeadSpace } from './dead-space-in-use.ts'
import { cut } from './patient-spread.ts'

/** Dimensions of a delivery draw, by index: the same index means the same thing for every set-up and every case. */
export const BODY_DIMENSIONS = [
  'sex',
  'height',
  'weight',
  'rate',
  'tidalVolume',
  'duty',
  'timeConstant',
  'mouth',
  'tube',
  'intrathoracic',
  'extrathoracic',
  'capacity',
  'fit',
] as const
export type BodyDimension = (typeof BODY_DIMENSIONS)[number]

/** A breath as the delivery engine takes it. */
export interface DrawnBreath {
  readonly tidalVolumeL: number
  readonly ratePerMin: number
  readonly dutyFraction: number
  readonly inspiration: { readonly kind: InspiratoryShapeName }
  readonly expiration: { readonly kind: 'passive'; readonly timeConstantS: number }
}

export interface BodyDraw {
  readonly body: Body
  readonly airway: AirwayState
  readonly breath: DrawnBreath
  readonly variability: BreathVariability
  readonly extrathoracicL: number
  readonly intrathoracicL: number
  readonly mouthShare: number
  readonly tubeShare: number
  readonly functionalResidualCapacityL: number
  readonly fit: FitId
}

/** Least minute ventilation of a living body, mL/min per kg: below it carbon dioxide could not be washed out (common practice). */
const LEAST_VENTILATION_ML_PER_KG = 25
const MOST_VENTILATION_ML_PER_KG = 1200
const TIDAL_ML_MAX = 4000

/**
 * One draw; u(i) in (0, 1) for each index of BODY_DIMENSIONS. What must fit together is cut out of the distributions, never
 * moved: a volume below 1.3 times the least dead space or outside 25–1200 mL/min per kg has no share, and given the volume a
 * dead space above volume/1.3 has none. Where a typed volume leaves nothing, the nearest value of the distribution stands.
 */
export function drawBody(about: Case, u: (index: number) => number): BodyDraw {
  const at = (dimension: BodyDimension): number => u(BODY_DIMENSIONS.indexOf(dimension))
  const body = bodyAt(about, { sex: at('sex'), height: at('height'), weight: at('weight') })
  const spreads = breathingSpreads(about, body)
  const { preset, values } = spreads
  const { airway } = about.patient
  const ratePerMin = quantile(values.ratePerMin.spread, at('rate'))
  const tidalVolumeMl = quantile(
    volumeAtRate({ spreads, body, airway, ratePerMin }),
    at('tidalVolume'),
  )
  const space = airSpace({ spreads, airway, tidalVolumeMl, at })
  return {
    body,
    airway,
    breath: {
      tidalVolumeL: litresFromMl(tidalVolumeMl),
      ratePerMin,
      dutyFraction: quantile(values.dutyFraction.spread, at('duty')),
      inspiration: { kind: preset.inspiratoryShape },
      expiration: {
        kind: 'passive',
        timeConstantS: quantile(values.expiratoryTimeConstantS.spread, at('timeConstant')),
      },
    },
    variability: preset.variability,
    ...space,
    mouthShare: quantile(values.mouthShare.spread, at('mouth')),
    tubeShare: quantile(values.tubeShare.spread, at('tube')),
    functionalResidualCapacityL: litresFromMl(
      quantile(values.functionalResidualCapacityMl.spread, at('capacity')),
    ),
    fit: fitAt(fitSpread(about), at('fit')),
  }
}

/** The volume's spread at the drawn rate: whoever breathes faster than the state's middle takes smaller breaths. */
function volumeAtRate(options: {
  readonly spreads: BreathingSpreads
  readonly body: Body
  readonly airway: AirwayState
  readonly ratePerMin: number
}): Spread {
  const { spreads, body, airway, ratePerMin } = options
  const { preset, values } = spreads
  const isTyped = values.tidalVolumeMl.origin === 'typed'
  const relative = isTyped ? 1 : tidalVolumeAtRateMl({ preset, tidalVolumeMl: 1, ratePerMin })
  const spread = scaled(values.tidalVolumeMl.spread, relative)
  const perBreathKg = metabolicWeightKg(body) / ratePerMin
  const leastMl = LEAST_BREATH_PER_DEAD_SPACE * leastSpaceMl(values, airway)
  const min = isTyped ? leastMl : Math.max(leastMl, LEAST_VENTILATION_ML_PER_KG * perBreathKg)
  const max = isTyped
    ? TIDAL_ML_MAX
    : Math.min(TIDAL_ML_MAX, MOST_VENTILATION_ML_PER_KG * perBreathKg)
  return cut(spread, { min, max }) ?? fixed(Math.min(max, Math.max(min, limitsOf(spread).min)))
}

function leastSpaceMl(values: BreathingSpreads['values'], airway: AirwayState): number {
  const intrathoracic = limitsOf(values.intrathoracicMl.spread).min
  const extrathoracic = limitsOf(values.extrathoracicMl.spread).min
  return upperAirwayIsDeadSpace(airway) ? intrathoracic + extrathoracic : intrathoracic
}

/** Lower airways first, then the throat in what the breath leaves for it. */
function airSpace(options: {
  readonly spreads: BreathingSpreads
  readonly airway: AirwayState
  readonly tidalVolumeMl: number
  readonly at: (dimension: BodyDimension) => number
}): { readonly intrathoracicL: number; readonly extrathoracicL: number } {
  const { values } = options.spreads
  const mostMl = options.tidalVolumeMl / LEAST_BREATH_PER_DEAD_SPACE
  const isCounted = upperAirwayIsDeadSpace(options.airway)
  const leastThroatMl = isCounted ? limitsOf(values.extrathoracicMl.spread).min : 0
  const intrathoracicMl = quantile(
    atMost(values.intrathoracicMl.spread, mostMl - leastThroatMl),
    options.at('intrathoracic'),
  )
  const throat = isCounted
    ? atMost(values.extrathoracicMl.spread, mostMl - intrathoracicMl)
    : values.extrathoracicMl.spread
  return {
    intrathoracicL: litresFromMl(intrathoracicMl),
    extrathoracicL: litresFromMl(quantile(throat, options.at('extrathoracic'))),
  }
}

function atMost(spread: Spread, max: number): Spread {
  const { min } = limitsOf(spread)
  return cut(spread, { min, max }) ?? fixed(min)
}
