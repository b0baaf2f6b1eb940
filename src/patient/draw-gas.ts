// One draw of what turns inhaled oxygen into a saturation: lungs, blood, circulation, oximeter. Leaves out the breath (draw-body.ts). Uptake and output are those of the middle body: only their ratio counts, from which size cancels.
import { assert } from '../errors.ts'
import { bloodCurve } from '../physiology/dissociation.ts'
import { gasExchange, type GasExchange } from '../physiology/shunt-shift.ts'
import { MEASURED_PAIR } from '../physiology/contents.ts'
import { gramsPerDlFromGramsPerL } from '../units/concentration.ts'
import { fixed, limitsOf, quantile } from '../units/spread.ts'
import { preparedQuantile } from './prepared-quantile.ts'
import { cut, type PatientSpreads } from './patient-spread.ts'

/** Dimensions of a gas-exchange draw, by index. */
export const GAS_DIMENSIONS = [
  'haemoglobinGpl',
  'temperatureC',
  'arterialPco2Kpa',
  'ph',
  'carboxyhaemoglobinFraction',
  'p50Kpa',
  'respiratoryQuotient',
  'oxygenUptakeMlPerMin',
  'cardiacOutputLpm',
  'shuntFraction',
  'extraShiftKpa',
  'oximeterBiasPercent',
] as const
export type GasDimension = (typeof GAS_DIMENSIONS)[number]
export type GasDraw = Readonly<Record<GasDimension, number>>

/** A body takes up at most this share of the oxygen its arterial blood can carry, and at most this difference, mL/dL (common practice: athletes at their limit). */
const MOST_EXTRACTION = 0.75
const MOST_DIFFERENCE_ML_PER_DL = 16
const ML_PER_DL_PER_LPM = 10

/** Draws from one patient; the spreads are prepared once. u(i) in (0, 1) for each index of GAS_DIMENSIONS. */
export type GasSampler = (u: (index: number) => number) => GasDraw

/**
 * Given uptake and haemoglobin, a cardiac output that could not carry the uptake has no share; where nothing is left, the output
 * is what the uptake asks for.
 */
export function gasSampler(spreads: PatientSpreads): GasSampler {
  const inverses = GAS_DIMENSIONS.map((key) => preparedQuantile(spreads.values[key].spread))
  const output = spreads.values.cardiacOutputLpm.spread
  const { min: usualLeastLpm } = limitsOf(output)
  return (u) => {
    const draw = emptyDraw()
    inverses.forEach((inverse, index) => {
      draw[keyAt(index)] = inverse(u(index))
    })
    const leastLpm = leastOutputLpm(draw)
    if (leastLpm > usualLeastLpm) {
      const possible = cut(output, { min: leastLpm, max: Number.MAX_VALUE }) ?? fixed(leastLpm)
      draw.cardiacOutputLpm = quantile(possible, u(OUTPUT_INDEX))
    }
    return draw
  }
}

const OUTPUT_INDEX = GAS_DIMENSIONS.indexOf('cardiacOutputLpm')

function emptyDraw(): Record<GasDimension, number> {
  return {
    haemoglobinGpl: 0,
    temperatureC: 0,
    arterialPco2Kpa: 0,
    ph: 0,
    carboxyhaemoglobinFraction: 0,
    p50Kpa: 0,
    respiratoryQuotient: 0,
    oxygenUptakeMlPerMin: 0,
    cardiacOutputLpm: 0,
    shuntFraction: 0,
    extraShiftKpa: 0,
    oximeterBiasPercent: 0,
  }
}

function keyAt(index: number): GasDimension {
  const key = GAS_DIMENSIONS[index]
  assert(key !== undefined, 'index of a gas dimension')
  return key
}

function leastOutputLpm(blood: {
  readonly haemoglobinGpl: number
  readonly oxygenUptakeMlPerMin: number
  readonly carboxyhaemoglobinFraction: number
}): number {
  const capacityMlPerDl =
    MEASURED_PAIR.boundMlPerG *
    gramsPerDlFromGramsPerL(blood.haemoglobinGpl) *
    (1 - blood.carboxyhaemoglobinFraction)
  const mostMlPerDl = Math.min(MOST_EXTRACTION * capacityMlPerDl, MOST_DIFFERENCE_ML_PER_DL)
  return blood.oxygenUptakeMlPerMin / (ML_PER_DL_PER_LPM * mostMlPerDl)
}

/** The draw as the saturation engine takes it. */
export function lungOf(draw: GasDraw): GasExchange {
  const { ph, temperatureC, p50Kpa } = draw
  return gasExchange({
    shuntFraction: draw.shuntFraction,
    extraShiftKpa: draw.extraShiftKpa,
    o2UptakeMlPerMin: draw.oxygenUptakeMlPerMin,
    cardiacOutputLpm: draw.cardiacOutputLpm,
    haemoglobinGPerDl: gramsPerDlFromGramsPerL(draw.haemoglobinGpl),
    carboxyhaemoglobinFraction: draw.carboxyhaemoglobinFraction,
    curve: bloodCurve({ ph, temperatureC, p50Kpa }),
  })
}
