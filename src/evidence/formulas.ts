// Published equations by name, each worked by the function the product uses. Leaves out the breath engine.
import { ordinaryAccuracyBandLpm } from '../physics/flowmeter-accuracy.ts'
import { standardFlowFactor, ambientFlowFactor } from '../physics/flowmeter.ts'
import type { FlowmeterKind } from '../physics/flowmeter.ts'
import { isaPressureKpa, westPressureKpa } from '../physics/atmosphere.ts'
import {
  atpd,
  btps,
  conditionFactor,
  flowmeterToBtpsFactor,
  STPD,
} from '../physics/gas-condition.ts'
import {
  dilutedO2Fraction,
  entrainedO2Fraction,
  entrainmentRatio,
  entrainmentTotalFlowLpm,
} from '../physics/gas-mixing.ts'
import {
  absoluteHumidityMgPerL,
  condensateMgPerL,
  saturatedHumidityMgPerL,
  saturatedVapourPressureKpa,
  saturationTemperatureC,
} from '../physics/water-vapour.ts'
import { alveolarPo2Kpa, alveolarPo2SimpleKpa, inspiredPo2Kpa } from '../physiology/alveolar-gas.ts'
import { predictedBodyWeightKg } from '../physiology/body.ts'
import {
  bloodCo2ContentMlPerDl,
  o2ContentMlPerDl,
  plasmaCo2ContentMlPerDl,
  THEORETICAL_PAIR,
} from '../physiology/contents.ts'
import { anatomicalDeadSpace } from '../physiology/dead-space.ts'
import { dashP50Mmhg, dashSaturation, kelmanSaturation } from '../physiology/dissociation-models.ts'
import {
  approximatePo2Kpa,
  bohrSlope,
  bloodCurve,
  bloodPo2Kpa,
  standardPo2Kpa,
  standardSaturation,
  temperatureSlope,
} from '../physiology/dissociation.ts'
import { heightAtZCm, weightAtZKg } from '../physiology/growth.ts'
import { rusconiRatePerMin } from '../physiology/respiratory-rate.ts'
import { arterialFromInspired, gasExchange } from '../physiology/shunt-shift.ts'
import { kpaFromMmhg, mmhgFromKpa } from '../units/pressure.ts'
import { assert } from '../errors.ts'
import { HUMIDITY_FORMULAS } from './humidity-formulas.ts'
import {
  highFlowClearanceMlPerS,
  highFlowClearanceWidthMlPerS,
  highFlowPressureCmH2o,
  highFlowPressureWidthCmH2o,
} from './high-flow-effects.ts'

import { SUPPLY_FORMULAS } from './supply-formulas.ts'

type Given = Readonly<Record<string, number>>

const METERS: readonly FlowmeterKind[] = [
  'tube-compensated',
  'tube-uncompensated',
  'dial',
  'electronic',
]

const FORMULAS = {
  ...HUMIDITY_FORMULAS,
  ...SUPPLY_FORMULAS,
  'entrainment-ratio': (g: Given) =>
    entrainmentRatio({ targetO2Fraction: of(g, 'target'), airO2Fraction: of(g, 'air') }),
  'entrainment-total-flow': (g: Given) =>
    entrainmentTotalFlowLpm({
      targetO2Fraction: of(g, 'target'),
      airO2Fraction: of(g, 'air'),
      drivingFlowLpm: of(g, 'drivingLpm'),
    }),
  'entrained-fraction': (g: Given) =>
    entrainedO2Fraction({ ratio: of(g, 'ratio'), sourceO2Fraction: of(g, 'source') }),
  /** The oxygen table of infants: percent of the way from air to the cannula's gas. */
  'infant-factor': (g: Given) => 100 * infantShare(g),
  'infant-effective-percent': (g: Given) =>
    21 + (of(g, 'factor') / 100) * (of(g, 'concentration') - 21),
  'diluted-fraction': (g: Given) =>
    dilutedO2Fraction({
      deviceFlowLpm: of(g, 'flowLpm'),
      demandFlowLpm: of(g, 'demandLpm'),
      airO2Fraction: of(g, 'air'),
    }),
  'standard-saturation-percent': (g: Given) => 100 * standardSaturation(mmhg(g, 'po2')),
  'standard-po2': (g: Given) => mmhgFromKpa(standardPo2Kpa(of(g, 'saturation'))),
  'approximate-po2': (g: Given) => mmhgFromKpa(approximatePo2Kpa(of(g, 'saturation'))),
  'bohr-slope': (g: Given) => bohrSlope(mmhg(g, 'po2')),
  'temperature-slope': (g: Given) => temperatureSlope(mmhg(g, 'po2')),
  'fetal-po2': (g: Given) =>
    mmhgFromKpa(bloodPo2Kpa(bloodCurve({ p50Kpa: mmhg(g, 'p50') }), of(g, 'saturation'))),
  'kelman-percent': (g: Given) => 100 * kelmanSaturation(bloodState(g)),
  'dash-percent': (g: Given) => 100 * dashSaturation(bloodState(g)),
  'dash-p50': (g: Given) => dashP50Mmhg(bloodState({ ...g, po2: 40 })),
  'o2-content': (g: Given) => o2Content(g, false),
  'o2-content-theoretical': (g: Given) => o2Content(g, true),
  'plasma-co2-content': (g: Given) =>
    plasmaCo2ContentMlPerDl({ pco2Kpa: mmhg(g, 'pco2'), ph: of(g, 'ph') }),
  'blood-co2-content': (g: Given) =>
    bloodCo2ContentMlPerDl({
      pco2Kpa: mmhg(g, 'pco2'),
      ph: of(g, 'ph'),
      haemoglobinGPerDl: of(g, 'haemoglobin'),
      saturation: of(g, 'saturation'),
    }),
  'inspired-po2': (g: Given) =>
    mmhgFromKpa(
      inspiredPo2Kpa({
        inspiredO2Fraction: of(g, 'fraction'),
        barometricKpa: mmhg(g, 'barometric'),
        waterVapourKpa: kpaFromMmhg(BEDSIDE_VAPOUR_MMHG),
      }),
    ),
  'alveolar-po2': (g: Given) => mmhgFromKpa(alveolarPo2Kpa(alveolar(g))),
  'alveolar-po2-simple': (g: Given) => mmhgFromKpa(alveolarPo2SimpleKpa(alveolar(g))),
  'shunt-po2': (g: Given) => mmhgFromKpa(shunted(g).arterialPo2Kpa),
  'shunt-saturation-percent': (g: Given) => 100 * shunted(g).arterialSaturation,
  'isa-pressure': (g: Given) => isaPressureKpa(of(g, 'altitudeM')),
  'west-pressure': (g: Given) => mmhgFromKpa(westPressureKpa(of(g, 'altitudeM'))),
  'saturated-pressure': (g: Given) => saturatedVapourPressureKpa(of(g, 'temperatureC')),
  'saturated-humidity': (g: Given) => saturatedHumidityMgPerL(of(g, 'temperatureC')),
  'room-humidity': (g: Given) =>
    absoluteHumidityMgPerL({
      temperatureC: of(g, 'temperatureC'),
      relativeHumidityFraction: of(g, 'relative'),
    }),
  'dew-point': (g: Given) => saturationTemperatureC(of(g, 'humidity')),
  condensate: (g: Given) =>
    condensateMgPerL({ fromTemperatureC: of(g, 'fromC'), toTemperatureC: of(g, 'toC') }),
  'dry-to-body': (g: Given) =>
    conditionFactor({
      from: atpd({
        temperatureC: of(g, 'temperatureC'),
        barometricKpa: of(g, 'barometricKpa'),
      }),
      to: btps({ barometricKpa: of(g, 'barometricKpa') }),
    }),
  'standard-to-body': (g: Given) =>
    conditionFactor({ from: STPD, to: btps({ barometricKpa: of(g, 'barometricKpa') }) }),
  'meter-to-body': (g: Given) => flowmeterToBtpsFactor({ barometricKpa: of(g, 'barometricKpa') }),
  'meter-standard-factor': (g: Given) => standardFlowFactor(meterReading(g)),
  'meter-ambient-factor': (g: Given) => ambientFlowFactor(meterReading(g)),
  'meter-band': (g: Given) => ordinaryAccuracyBandLpm(of(g, 'settingLpm')),
  'dead-space-per-kg': (g: Given) => deadSpace(g).totalMl / of(g, 'weightKg'),
  'intrathoracic-per-kg': (g: Given) => deadSpace(g).intrathoracicMl / of(g, 'weightKg'),
  'rate-centile': (g: Given) =>
    rusconiRatePerMin({
      ageMonths: of(g, 'ageMonths'),
      z: of(g, 'z'),
      asleep: of(g, 'asleep') > 0,
    }),
  'boy-weight': (g: Given) =>
    weightAtZKg({ ageYears: of(g, 'ageMonths') / 12, sex: 'male', z: of(g, 'z') }),
  'girl-weight': (g: Given) =>
    weightAtZKg({ ageYears: of(g, 'ageMonths') / 12, sex: 'female', z: of(g, 'z') }),
  'boy-height': (g: Given) =>
    heightAtZCm({ ageYears: of(g, 'ageMonths') / 12, sex: 'male', z: of(g, 'z') }),
  'girl-height': (g: Given) =>
    heightAtZCm({ ageYears: of(g, 'ageMonths') / 12, sex: 'female', z: of(g, 'z') }),
  'predicted-weight-male': (g: Given) =>
    predictedBodyWeightKg({ heightCm: of(g, 'heightCm'), sex: 'male' }),
  'predicted-weight-female': (g: Given) =>
    predictedBodyWeightKg({ heightCm: of(g, 'heightCm'), sex: 'female' }),
  'high-flow-pressure': (g: Given) =>
    highFlowPressureCmH2o({
      flowLpm: of(g, 'flowLpm'),
      isMouthOpen: of(g, 'mouthOpen') > 0,
      ...changed(g),
    }),
  'high-flow-pressure-width': (g: Given) =>
    (g[SPREAD_FACTOR] ?? 1) * highFlowPressureWidthCmH2o(of(g, 'flowLpm')),
  'high-flow-clearance-width': (g: Given) =>
    (g[SPREAD_FACTOR] ?? 1) * highFlowClearanceWidthMlPerS(of(g, 'flowLpm')),
  'high-flow-clearance': (g: Given) =>
    highFlowClearanceMlPerS({ flowLpm: of(g, 'flowLpm'), ...changed(g) }),
} as const satisfies Readonly<Record<string, (given: Given) => number>>

export type FormulaId = keyof typeof FORMULAS

export interface FormulaCall {
  readonly formula: FormulaId
  readonly given: Given
}

/** Value of the named formula. */
export function callFormula(call: FormulaCall): number {
  return FORMULAS[call.formula](call.given)
}

/** Given numbers that stand for a changed parameter of the family. */
const SLOPE = 'slope-per-lpm'
const SPREAD_FACTOR = 'spread-factor'

function changed(g: Given): { readonly slopePerLpm?: number } {
  return g[SLOPE] === undefined ? {} : { slopePerLpm: g[SLOPE] }
}

/** Bedside texts take 47 mmHg of water vapour. */
const BEDSIDE_VAPOUR_MMHG = 47

function of(given: Given, name: string): number {
  const value = given[name]
  assert(value !== undefined, 'formula gets every number it names')
  return value
}

function mmhg(given: Given, name: string): number {
  return kpaFromMmhg(of(given, name))
}

/** Share of a 5 mL/kg breath of 0.3 s that a cannula fills: flow × 0.3 s over the breath. */
function infantShare(g: Given): number {
  const breathMlPerKg = 5
  const inspirationS = 0.3
  const demandLpm = (breathMlPerKg * of(g, 'weightKg') * 0.06) / inspirationS
  return dilutedO2Fraction({
    deviceFlowLpm: of(g, 'flowLpm'),
    demandFlowLpm: demandLpm,
    airO2Fraction: 0,
  })
}

function bloodState(g: Given) {
  return {
    po2Kpa: mmhg(g, 'po2'),
    ...(g['ph'] === undefined ? {} : { ph: g['ph'] }),
    ...(g['pco2'] === undefined ? {} : { pco2Kpa: kpaFromMmhg(g['pco2']) }),
    ...(g['temperatureC'] === undefined ? {} : { temperatureC: g['temperatureC'] }),
    ...(g['dpg'] === undefined ? {} : { dpgMmolPerL: g['dpg'] }),
  }
}

function o2Content(g: Given, isTheoretical: boolean): number {
  const po2Kpa = mmhg(g, 'po2')
  return o2ContentMlPerDl({
    haemoglobinGPerDl: of(g, 'haemoglobin'),
    saturation: standardSaturation(po2Kpa),
    po2Kpa,
    ...(isTheoretical ? { pair: THEORETICAL_PAIR } : {}),
  })
}

function alveolar(g: Given) {
  return {
    inspiredO2Fraction: of(g, 'fraction'),
    barometricKpa: mmhg(g, 'barometric'),
    arterialPco2Kpa: mmhg(g, 'pco2'),
    waterVapourKpa: kpaFromMmhg(BEDSIDE_VAPOUR_MMHG),
  }
}

/** Uptake 250 mL/min, output 5 L/min, Hb 14 g/dL at sea level, PaCO2 40 mmHg: the table's own constants. */
function shunted(g: Given) {
  const lung = gasExchange({
    shuntFraction: of(g, 'shunt'),
    extraShiftKpa: mmhg(g, 'shift'),
    o2UptakeMlPerMin: 250,
    cardiacOutputLpm: 5,
    haemoglobinGPerDl: 14,
  })
  return arterialFromInspired(lung, alveolar({ ...g, barometric: 760, pco2: 40 }))
}

function deadSpace(g: Given) {
  return anatomicalDeadSpace({ ageYears: of(g, 'ageYears'), weightKg: of(g, 'weightKg') })
}

/** `kind` counts through METERS. */
function meterReading(g: Given) {
  const kind = METERS[of(g, 'kind')]
  assert(kind !== undefined, 'meter kind by number')
  return {
    kind,
    indicatedFlowLpm: 10,
    barometricKpa: g['altitudeM'] === undefined ? 101.325 : isaPressureKpa(g['altitudeM']),
    supplyGaugeKpa: g['supplyKpa'] ?? 400,
    backPressureKpa: g['backKpa'] ?? 0,
    gasTemperatureC: g['temperatureC'] ?? 20,
  }
}
