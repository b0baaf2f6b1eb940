// One breath as flow over time: shape, duty and passive expiration. Leaves out breath-to-breath change, which is drawn outside.
import { DomainError } from '../errors.ts'

/** How inspiratory flow is spread over inspiration. `sampled` holds relative flow at equal time steps from 0 to the end. */
export type InspiratoryShape =
  | { readonly kind: 'half-sine' }
  | { readonly kind: 'square' }
  | { readonly kind: 'decelerating' }
  | { readonly kind: 'sampled'; readonly relativeFlow: readonly number[] }

/** Passive emptying with a time constant, or (for handbook limits) constant flow for a share of expiration, then a pause. */
export type ExpiratoryShape =
  | { readonly kind: 'passive'; readonly timeConstantS: number }
  | { readonly kind: 'constant'; readonly shareOfExpiration: number }

export interface BreathPattern {
  readonly tidalVolumeL: number
  readonly ratePerMin: number
  /** Ti/Ttot */
  readonly dutyFraction: number
  readonly inspiration: InspiratoryShape
  readonly expiration: ExpiratoryShape
}

export const BREATH_LIMITS = {
  tidalVolumeL: { min: 0.001, max: 4, unit: 'L', code: 'VOLUME_OUT_OF_RANGE' },
  ratePerMin: { min: 3, max: 120, unit: '/min', code: 'RATE_OUT_OF_RANGE' },
  dutyFraction: { min: 0.1, max: 0.8, unit: '1', code: 'DUTY_OUT_OF_RANGE' },
  timeConstantS: { min: 0.02, max: 5, unit: 's', code: 'DURATION_OUT_OF_RANGE' },
} as const

/** Throws a DomainError when the pattern lies outside BREATH_LIMITS; never clamps. */
export function checkBreath(breath: BreathPattern): void {
  checkShapes(breath)
  const { tidalVolumeL, ratePerMin, dutyFraction } = breath
  const given = { tidalVolumeL, ratePerMin, dutyFraction }
  for (const key of ['tidalVolumeL', 'ratePerMin', 'dutyFraction'] as const)
    checkOne(key, given[key])
  if (breath.expiration.kind === 'passive')
    checkOne('timeConstantS', breath.expiration.timeConstantS)
}

const INSPIRATORY_KINDS = ['half-sine', 'square', 'decelerating', 'sampled']
const EXPIRATORY_KINDS = ['passive', 'constant']

/** Throws UNKNOWN_CHOICE for a shape the model does not know; callers without types may name any. */
export function checkShapes(breath: BreathPattern): void {
  refuseUnknown('breath.inspiration.kind', breath.inspiration.kind, INSPIRATORY_KINDS)
  refuseUnknown('breath.expiration.kind', breath.expiration.kind, EXPIRATORY_KINDS)
}

function refuseUnknown(path: string, value: string, oneOf: readonly string[]): void {
  if (oneOf.includes(value)) return
  throw new DomainError({ code: 'UNKNOWN_CHOICE', path, value, limit: { oneOf } })
}

function checkOne(key: keyof typeof BREATH_LIMITS, value: number): void {
  const { min, max, unit, code } = BREATH_LIMITS[key]
  if (!(value >= min && value <= max)) {
    throw new DomainError({ code, path: `breath.${key}`, value, limit: { min, max }, unit })
  }
}

/** Length of the whole breath, s. Formula: 60 / rate. */
export function breathPeriodS(breath: BreathPattern): number {
  return 60 / breath.ratePerMin
}

/** Length of inspiration, s. Formula: 60 / rate × duty. */
export function inspirationS(breath: BreathPattern): number {
  return breathPeriodS(breath) * breath.dutyFraction
}

/** Minute ventilation at the opening, L/min BTPS. */
export function minuteVentilationLpmBtps(breath: BreathPattern): number {
  return breath.tidalVolumeL * breath.ratePerMin
}

/** Peak inspiratory flow, L/min BTPS. Half-sine π/2 × VT/Ti; square VT/Ti; decelerating ramp 2 × VT/Ti (exact geometry). */
export function peakInspiratoryFlowLpmBtps(breath: BreathPattern): number {
  return 60 * peakOverMean(breath.inspiration) * (breath.tidalVolumeL / inspirationS(breath))
}

function peakOverMean(shape: InspiratoryShape): number {
  switch (shape.kind) {
    case 'half-sine':
      return Math.PI / 2
    case 'square':
      return 1
    case 'decelerating':
      return 2
    case 'sampled':
      return Math.max(...shape.relativeFlow) / sampledArea(shape.relativeFlow, 1)
  }
}

/** Inspired volume (L) at share s (0–1) of inspiration as share of the tidal volume. */
export function inspiredShare(shape: InspiratoryShape, s: number): number {
  switch (shape.kind) {
    case 'half-sine':
      return (1 - Math.cos(Math.PI * s)) / 2
    case 'square':
      return s
    case 'decelerating':
      return 2 * s - s * s
    case 'sampled':
      return sampledArea(shape.relativeFlow, s) / sampledArea(shape.relativeFlow, 1)
  }
}

/** Inspiratory flow relative to the mean inspiratory flow at share s (0–1) of inspiration. */
export function inspiredFlowRelative(shape: InspiratoryShape, s: number): number {
  switch (shape.kind) {
    case 'half-sine':
      return (Math.PI / 2) * Math.sin(Math.PI * s)
    case 'square':
      return 1
    case 'decelerating':
      return 2 * (1 - s)
    case 'sampled':
      return sampledAt(shape.relativeFlow, s) / sampledArea(shape.relativeFlow, 1)
  }
}

/** Expired volume as share of the tidal volume, t seconds into an expiration of durationS. */
export function expiredShare(
  shape: ExpiratoryShape,
  { t, durationS }: { t: number; durationS: number },
): number {
  if (shape.kind === 'constant') return Math.min(1, t / (durationS * shape.shareOfExpiration))
  return Math.expm1(-t / shape.timeConstantS) / Math.expm1(-durationS / shape.timeConstantS)
}

/** Expiratory flow in tidal volumes per second, t seconds into an expiration of durationS. */
export function expiredFlowPerS(
  shape: ExpiratoryShape,
  { t, durationS }: { t: number; durationS: number },
): number {
  if (shape.kind === 'constant') {
    const endS = durationS * shape.shareOfExpiration
    return t < endS ? 1 / endS : 0
  }
  const tau = shape.timeConstantS
  return -Math.exp(-t / tau) / (tau * Math.expm1(-durationS / tau))
}

/** Inverse of expiredShare for passive emptying: seconds until the given share has left. */
export function expiredShareTimeS(
  shape: ExpiratoryShape,
  { share, durationS }: { share: number; durationS: number },
): number {
  if (shape.kind === 'constant') return share * durationS * shape.shareOfExpiration
  return -shape.timeConstantS * Math.log1p(share * Math.expm1(-durationS / shape.timeConstantS))
}

function sampledAt(samples: readonly number[], s: number): number {
  const position = s * (samples.length - 1)
  const left = Math.min(Math.floor(position), samples.length - 2)
  const a = samples[left] ?? 0
  const b = samples[left + 1] ?? 0
  return a + (b - a) * (position - left)
}

/** Area under the piecewise-linear samples from 0 to s, in units of (relative flow × inspiration). */
function sampledArea(samples: readonly number[], s: number): number {
  const cells = samples.length - 1
  let area = 0
  for (let i = 0; i < cells; i++) {
    const from = i / cells
    if (from >= s) break
    const to = Math.min(s, (i + 1) / cells)
    area += ((sampledAt(samples, from) + sampledAt(samples, to)) / 2) * (to - from)
  }
  return area
}
