// The sample a plan rests on: delivery points, gas points, and how a reading on a known set-up weighs them.
import { FAMILY_IDS } from '../kit/family-id.ts'
import type { FamilyId, FitId } from '../kit/family-id.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { DeliveryBody, InterfaceDraw } from '../delivery/delivery-body.ts'
import type { PeriodicSolver } from '../delivery/periodic.ts'
import { assert } from '../errors.ts'
import { readingLikelihood } from '../physiology/oximeter.ts'
import { deliverySample } from './delivery-points.ts'
import type { DeliveryPoint } from './delivery-points.ts'
import { arterialSaturation } from './gas-points.ts'
import type { GasPoint } from './gas-points.ts'
import { latinHypercube } from './latin-hypercube.ts'
import { normaliseLogWeights, resample } from './weigh.ts'

/** What is drawn of a patient, split so that many lungs share one computed breath. `u` gives numbers in (0, 1) by index. */
export interface PatientSampler {
  readonly deliveryDimensions: number
  readonly gasDimensions: number
  drawDelivery(u: (index: number) => number): { readonly body: DeliveryBody; readonly fit: FitId }
  drawGas(u: (index: number) => number): GasPoint
}

/** A whole-number saturation on a known set-up (null: room air), with the oximeter's standard deviation in points. */
export interface UsableReading {
  readonly setUp: SetUp | null
  readonly saturationPercent: number
  readonly extraSdPercent: number
}

export interface PlanSample {
  readonly points: readonly DeliveryPoint[]
  readonly gas: readonly GasPoint[]
  /** Which delivery point goes with each gas point. */
  readonly pointOf: Int32Array
  readonly effectiveDraws: number
  readonly wasRedrawn: boolean
}

export interface SampleQuestion {
  readonly sampler: PatientSampler
  readonly reading: UsableReading | null
  readonly draws: number
  readonly deliveryPoints: number
  readonly seed: number
  readonly barometricKpa: number
  readonly solver: PeriodicSolver
}

const INTERFACE_KEYS = [
  'pocket',
  'exchange',
  'jet',
  'draught',
  'leak',
  'forwardLoss',
  'bag',
  'capture',
  'flush',
] as const
const STREAM_DIMENSIONS = 4

/** Prior samples for each final draw, and how much more when the reading leaves too few. */
const PRIOR_PER_DRAW = 32
const REDRAW_FACTOR = 4
/** Fewer effective samples than this share of the draws call for a larger prior sample. */
const ENOUGH_SHARE = 0.5

/** Draws the sample; without a reading the prior, with one the prior weighed by it and resampled. */
export function planSample(question: SampleQuestion): PlanSample {
  const points = deliveryPoints(question)
  const { reading } = question
  if (reading === null) return unweighted(question, points)
  const first = weighted(question, points, reading, PRIOR_PER_DRAW)
  if (first.effectiveDraws >= ENOUGH_SHARE * question.draws) return first
  return {
    ...weighted(question, points, reading, PRIOR_PER_DRAW * REDRAW_FACTOR),
    wasRedrawn: true,
  }
}

function deliveryPoints(question: SampleQuestion): readonly DeliveryPoint[] {
  const { sampler, deliveryPoints: count, seed } = question
  const streamAt = sampler.deliveryDimensions + INTERFACE_KEYS.length
  const modelAt = streamAt + STREAM_DIMENSIONS
  const dimensions = modelAt + FAMILY_IDS.length
  const cube = latinHypercube({ points: count, dimensions, seed })
  return Array.from({ length: count }, (_, i) => {
    const u = (d: number): number => cube[i * dimensions + d] ?? 0.5
    const interfaceDraw: Record<(typeof INTERFACE_KEYS)[number], number> = { ...EVEN }
    INTERFACE_KEYS.forEach((key, d) => (interfaceDraw[key] = u(sampler.deliveryDimensions + d)))
    return {
      ...sampler.drawDelivery(u),
      interfaceDraw,
      meterU: u(streamAt),
      secondMeterU: u(streamAt + 1),
      purityU: u(streamAt + 2),
      entrainmentU: u(streamAt + 3),
      modelU: (family: FamilyId) => u(modelAt + FAMILY_IDS.indexOf(family)),
    }
  })
}

const EVEN: InterfaceDraw = {
  pocket: 0.5,
  exchange: 0.5,
  jet: 0.5,
  draught: 0.5,
  leak: 0.5,
  forwardLoss: 0.5,
  bag: 0.5,
  capture: 0.5,
  flush: 0.5,
}

function gasPoints(question: SampleQuestion, count: number): readonly GasPoint[] {
  const { sampler, seed } = question
  const dimensions = sampler.gasDimensions
  const cube = latinHypercube({ points: count, dimensions, seed: seed + 1 })
  return Array.from({ length: count }, (_, i) =>
    sampler.drawGas((d) => cube[i * dimensions + d] ?? 0.5),
  )
}

function unweighted(question: SampleQuestion, points: readonly DeliveryPoint[]): PlanSample {
  const gas = gasPoints(question, question.draws)
  const pointOf = Int32Array.from(gas, (_, i) => i % points.length)
  return { points, gas, pointOf, effectiveDraws: question.draws, wasRedrawn: false }
}

/**
 * What changes from one settled reading to the next on the same finger, % points (common practice): most of an accuracy class is
 * between people, and stays with the patient as the drawn bias.
 */
const READING_SD_PERCENT = 1.2

/** Log-probability that this oximeter shows the reading; a reading taken too early is less sure. */
function logLikelihood(point: GasPoint, saturation: number, reading: UsableReading): number {
  const randomSdPercent = Math.hypot(READING_SD_PERCENT, reading.extraSdPercent)
  const meter = {
    armsPercent: Math.hypot(randomSdPercent, point.oximeterBiasPercent),
    biasPercent: point.oximeterBiasPercent,
    carboxyhaemoglobinFraction: point.carboxyhaemoglobinFraction,
  }
  return Math.log(
    readingLikelihood(meter, { readingPercent: reading.saturationPercent, saturation }),
  )
}

function weighted(
  question: SampleQuestion,
  points: readonly DeliveryPoint[],
  reading: UsableReading,
  perDraw: number,
): PlanSample {
  const { draws, barometricKpa, solver } = question
  const prior = gasPoints(question, draws * perDraw)
  const onNow = deliverySample(solver, points, reading.setUp, barometricKpa)
  const weights = new Float64Array(prior.length)
  prior.forEach((point, i) => {
    const o2Fraction = onNow.effectiveO2Fraction[i % points.length] ?? 0
    weights[i] = logLikelihood(point, arterialSaturation(point, o2Fraction, barometricKpa), reading)
  })
  const effectiveDraws = normaliseLogWeights(weights)
  const chosen = resample(weights, draws, 0.5)
  return {
    points,
    gas: Array.from(chosen, (i) => pointAt(prior, i)),
    pointOf: Int32Array.from(chosen, (i) => i % points.length),
    effectiveDraws,
    wasRedrawn: false,
  }
}

function pointAt(prior: readonly GasPoint[], i: number): GasPoint {
  const point = prior[i]
  assert(point !== undefined, 'resampled index within the prior')
  return point
}
