// The numbers of one delivered breath as named rows, the answer first. Leaves out carbon dioxide of the lungs, which is never forecast.
import type { DeliveredBreath } from '../delivery/delivered-breath.ts'
import type { BedsideBreath } from '../planning/bedside-breath.ts'
import type { Band, RankedSetUp } from '../planning/plan-types.ts'
import { BREATH_ROW_NAMES, marginText, printedText } from './breath-text.ts'
import type { BreathRow } from './breath-text.ts'
import {
  bandText,
  flowText,
  fractionBandText,
  fractionText,
  numberText,
  percentText,
  pressureBandText,
  rangeText,
  saturationBandText,
} from './number-text.ts'
import type { PressureUnit } from './number-text.ts'
import { say } from './say.ts'

export interface BreathRowsOptions {
  readonly bedside: BedsideBreath
  /** Null where the plan rules the set-up out: then there are no bands. */
  readonly ranked: RankedSetUp | null
  readonly pressure: PressureUnit
}

export interface NamedRow {
  readonly name: string
  readonly value: string
}

export function breathRows(options: BreathRowsOptions): readonly NamedRow[] {
  const { breath, breathToBreath } = options.bedside
  const { ranked } = options
  const rows: readonly (readonly [BreathRow, string | null])[] = [
    [
      'effective',
      ranked === null
        ? fractionText(breath.effectiveO2Fraction)
        : fractionBandText(ranked.effectiveO2Fraction),
    ],
    ['printed', ranked === null ? null : printedText(ranked.printedO2Fraction)],
    ['saturation', saturationText(ranked)],
    ['opening', fractionText(breath.openingO2Fraction)],
    ['trachea', fractionText(breath.tracheaO2Fraction)],
    ['fresh', fractionText(breath.freshO2Fraction)],
    ['breathToBreath', breathToBreathText(breathToBreath)],
    ['alveolarO2', bloodText(ranked?.blood?.alveolarPo2Kpa, options.pressure)],
    ['arterialO2', bloodText(ranked?.blood?.arterialPo2Kpa, options.pressure)],
    ['inspiredCo2', percentText(breath.inspiredCo2Fraction, INSPIRED_CO2_STEP_PERCENT)],
    ['margin', marginText(breath.demandMarginLpm)],
    ['bag', bagText(breath)],
    ['wasted', percentText(breath.wastedShare)],
    ['oxygenUsed', ranked === null ? null : flowText(ranked.oxygenUsedLpm, FLOW_STEP_LPM)],
    ['clearance', clearanceText(options.bedside.upperAirwayClearanceMlPerS)],
    ['pressure', airwayPressureText(options.bedside.meanAirwayPressureCmH2o)],
  ]
  return rows.flatMap(([row, value]) =>
    value === null ? [] : [{ name: BREATH_ROW_NAMES[row], value }],
  )
}

const INSPIRED_CO2_STEP_PERCENT = 0.1
const BAG_STEP_L = 0.05
const FLOW_STEP_LPM = 0.1
const AIRWAY_PRESSURE_STEP_CMH2O = 0.5

function saturationText(ranked: RankedSetUp | null): string | null {
  const band = ranked?.saturationPercent ?? null
  return band === null ? null : saturationBandText(band)
}

function breathToBreathText(band: Band | null): string | null {
  return band === null ? null : rangeText({ low: band.low, high: band.high, step: 0.01 })
}

function bloodText(band: Band | undefined, unit: PressureUnit): string | null {
  return band === undefined ? null : pressureBandText(band, unit)
}

const CLEARANCE_STEP_ML_PER_S = 10

function clearanceText(clearanceMlPerS: number | null): string | null {
  if (clearanceMlPerS === null) return null
  return say('about {value}', {
    value: `${numberText(clearanceMlPerS, CLEARANCE_STEP_ML_PER_S)} mL/s`,
  })
}

function bagText(breath: DeliveredBreath): string | null {
  if (breath.lowestBagL === null) return null
  return breath.bagRunsEmpty ? say('runs empty') : `${numberText(breath.lowestBagL, BAG_STEP_L)} L`
}

function airwayPressureText(band: Band | null): string | null {
  return band === null ? null : bandText(band, { step: AIRWAY_PRESSURE_STEP_CMH2O, unit: 'cmH2O' })
}
