// Oxygen and carbon dioxide carried by blood. Leaves out carbamino differences between people and temperature change in the vessel.
import { requireWithin } from '../errors.ts'
import { BODY_TEMPERATURE_C } from '../units/constants.ts'
import { KPA_PER_MMHG } from '../units/pressure.ts'
import { STANDARD_PH } from './dissociation.ts'

/** Oxygen bound per gram of haemoglobin and dissolved per dL and mmHg. The two belong together. */
export interface CarriagePair {
  readonly boundMlPerG: number
  readonly dissolvedMlPerDlPerMmhg: number
}

/** Measured pair, used by the model [Huefner1894]; dissolved 0.003–0.0031. */
export const MEASURED_PAIR: CarriagePair = { boundMlPerG: 1.34, dissolvedMlPerDlPerMmhg: 0.0031 }
/** Theoretical pair found in many textbooks (common practice). */
export const THEORETICAL_PAIR: CarriagePair = { boundMlPerG: 1.39, dissolvedMlPerDlPerMmhg: 0.003 }

/** Haemoglobin accepted, g/dL. */
export const HAEMOGLOBIN_G_PER_DL_MIN = 2
export const HAEMOGLOBIN_G_PER_DL_MAX = 27

/** Douglas, Jones and Reed's constants [Douglas1988]: pK′, solubility of CO2 in plasma, blood factor. Their molar volume gives the 2.226. */
const PK = {
  constant: 6.086,
  ph: 0.042,
  temperatureC: 38,
  slope: 0.00472,
  phSlope: 0.00139,
} as const
const CO2_SOLUBILITY = { at37: 0.0307, slope: 0.00057, square: 0.00002 } as const
const ML_PER_DL_PER_MMOL_PER_L = 2.226
const BLOOD_FACTOR = { slope: 0.0289, constant: 3.352, saturation: 0.456, ph: 8.142 } as const

/** Oxygen content: k·Hb·S·(1 − COHb − MetHb) + α·PO2, mL/dL; S is functional saturation.
 *  Valid Hb 2–27 g/dL, S 0–1, PO2 0–110 kPa. Source: definition; pair 1.34/0.0031 unless given.
 *  Reproduces the published worked contents to their last digit (contents.test.ts). */
export function o2ContentMlPerDl(blood: {
  readonly haemoglobinGPerDl: number
  readonly saturation: number
  readonly po2Kpa: number
  readonly pair?: CarriagePair
  readonly carboxyhaemoglobinFraction?: number
  readonly methaemoglobinFraction?: number
}): number {
  const pair = blood.pair ?? MEASURED_PAIR
  requireWithin({
    code: 'SATURATION_OUT_OF_RANGE',
    path: 'saturation',
    value: blood.saturation,
    min: 0,
    max: 1,
  })
  requirePo2(blood.po2Kpa)
  const capacity = o2CapacityMlPerDl({ ...blood, pair })
  return capacity * blood.saturation + (pair.dissolvedMlPerDlPerMmhg * blood.po2Kpa) / KPA_PER_MMHG
}

/** Oxygen bound at full saturation, mL/dL. Valid Hb 2–27 g/dL, dyshaemoglobins together 0–0.9. */
export function o2CapacityMlPerDl(blood: {
  readonly haemoglobinGPerDl: number
  readonly pair?: CarriagePair
  readonly carboxyhaemoglobinFraction?: number
  readonly methaemoglobinFraction?: number
}): number {
  requireHaemoglobin(blood.haemoglobinGPerDl)
  const carboxy = blood.carboxyhaemoglobinFraction ?? 0
  const met = blood.methaemoglobinFraction ?? 0
  requireDyshaemoglobin('carboxyhaemoglobinFraction', carboxy)
  requireDyshaemoglobin('methaemoglobinFraction', met)
  requireDyshaemoglobin('dyshaemoglobinFraction', carboxy + met)
  const pair = blood.pair ?? MEASURED_PAIR
  return pair.boundMlPerG * blood.haemoglobinGPerDl * (1 - carboxy - met)
}

/** CO2 content of plasma, mL/dL: 2.226·s·PCO2·(1 + 10^(pH − pK′)). Valid PCO2 0.5–25 kPa, pH 6.8–7.8, 30–43 °C.
 *  Source: [Douglas1988]. Within 0.01 mL/dL of the plasma column of test/reference/douglas-1988. */
export function plasmaCo2ContentMlPerDl(plasma: {
  readonly pco2Kpa: number
  readonly ph: number
  readonly temperatureC?: number
}): number {
  const temperatureC = plasma.temperatureC ?? BODY_TEMPERATURE_C
  requireAcidBase(plasma.pco2Kpa, plasma.ph, temperatureC)
  const cold = BODY_TEMPERATURE_C - temperatureC
  const solubility =
    CO2_SOLUBILITY.at37 + CO2_SOLUBILITY.slope * cold + CO2_SOLUBILITY.square * cold * cold
  const acid = STANDARD_PH - plasma.ph
  const pk =
    PK.constant + PK.ph * acid + (PK.temperatureC - temperatureC) * (PK.slope + PK.phSlope * acid)
  const pco2Mmhg = plasma.pco2Kpa / KPA_PER_MMHG
  return ML_PER_DL_PER_MMOL_PER_L * solubility * pco2Mmhg * (1 + 10 ** (plasma.ph - pk))
}

/** CO2 content of whole blood, mL/dL: plasma·(1 − 0.0289·Hb/((3.352 − 0.456·S)(8.142 − pH))), Hb in g/dL.
 *  Valid as plasmaCo2ContentMlPerDl, Hb 2–27 g/dL, S 0–1. Source: [Douglas1988]. Mean bias under 0.1, SD under
 *  1.2 mL/dL against its 38 measured samples (contents.test.ts). */
export function bloodCo2ContentMlPerDl(blood: {
  readonly pco2Kpa: number
  readonly ph: number
  readonly haemoglobinGPerDl: number
  readonly saturation: number
  readonly temperatureC?: number
}): number {
  requireHaemoglobin(blood.haemoglobinGPerDl)
  requireWithin({
    code: 'SATURATION_OUT_OF_RANGE',
    path: 'saturation',
    value: blood.saturation,
    min: 0,
    max: 1,
  })
  const cells =
    (BLOOD_FACTOR.slope * blood.haemoglobinGPerDl) /
    ((BLOOD_FACTOR.constant - BLOOD_FACTOR.saturation * blood.saturation) *
      (BLOOD_FACTOR.ph - blood.ph))
  return plasmaCo2ContentMlPerDl(blood) * (1 - cells)
}

export function requireHaemoglobin(haemoglobinGPerDl: number): number {
  return requireWithin({
    code: 'HAEMOGLOBIN_OUT_OF_RANGE',
    path: 'haemoglobinGPerDl',
    value: haemoglobinGPerDl,
    min: HAEMOGLOBIN_G_PER_DL_MIN,
    max: HAEMOGLOBIN_G_PER_DL_MAX,
    unit: 'g/dL',
  })
}

function requireDyshaemoglobin(path: string, value: number): void {
  requireWithin({ code: 'FRACTION_OUT_OF_RANGE', path, value, min: 0, max: 0.9 })
}

function requirePo2(po2Kpa: number): void {
  requireWithin({
    code: 'PARTIAL_PRESSURE_OUT_OF_RANGE',
    path: 'po2Kpa',
    value: po2Kpa,
    min: 0,
    max: 110,
    unit: 'kPa',
  })
}

function requireAcidBase(pco2Kpa: number, ph: number, temperatureC: number): void {
  requireWithin({
    code: 'PARTIAL_PRESSURE_OUT_OF_RANGE',
    path: 'pco2Kpa',
    value: pco2Kpa,
    min: 0.5,
    max: 25,
    unit: 'kPa',
  })
  requireWithin({ code: 'PH_OUT_OF_RANGE', path: 'ph', value: ph, min: 6.8, max: 7.8 })
  requireWithin({
    code: 'TEMPERATURE_OUT_OF_RANGE',
    path: 'temperatureC',
    value: temperatureC,
    min: 30,
    max: 43,
    unit: '°C',
  })
}
