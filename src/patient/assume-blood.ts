// Blood, carbon dioxide, metabolism and circulation as spreads for one body. Leaves out haemoglobin and the lungs, which have their own files.
import type { Body } from '../physiology/body.ts'
import type { BreathingPreset } from '../physiology/breathing-states.ts'
import {
  BLOOD_TEMPERATURE_C_MAX,
  BLOOD_TEMPERATURE_C_MIN,
  PH_MAX,
  PH_MIN,
  STANDARD_PH,
} from '../physiology/dissociation.ts'
import { p50SpreadKpa } from '../physiology/fetal-haemoglobin.ts'
import { cardiacOutputSpread, oxygenUptakeSpread } from '../physiology/metabolism.ts'
import { BODY_TEMPERATURE_C } from '../units/constants.ts'
import { medianOf, scaled, type Spread } from '../units/spread.ts'
import type { BreathingState, Case } from './case.ts'
import { NUMBERS } from './case-fields.ts'
import { around, assumed, typed, type PatientSpread } from './patient-spread.ts'
import { CARBON_MONOXIDE_REASONS } from './warn-oximeter.ts'

/** Thermometer error, °C (common practice). */
const THERMOMETER_SD_C = 0.2
/** Body temperature by state where it is not the usual one, °C (common practice). */
const STATE_TEMPERATURES: Readonly<Partial<Record<BreathingState, readonly [number, number]>>> = {
  fever: [38.7, 0.5],
  pneumonia: [38, 0.8],
  'severe-distress': [37.7, 0.9],
  bronchiolitis: [37.6, 0.6],
}
const USUAL_TEMPERATURE = [BODY_TEMPERATURE_C, 0.4] as const

export function temperatureSpread(about: Case): PatientSpread {
  const limits = { min: BLOOD_TEMPERATURE_C_MIN, max: BLOOD_TEMPERATURE_C_MAX }
  const { temperatureC } = about.patient
  if (temperatureC !== undefined) {
    return typed(around({ value: temperatureC, sd: THERMOMETER_SD_C, ...limits }))
  }
  const [value, sd] = STATE_TEMPERATURES[about.breathing.state] ?? USUAL_TEMPERATURE
  const spread = around({ value, sd, ...limits })
  return assumed({ spread, known: 'common-practice', code: 'FROM_STATE' })
}

/** Analyser and sampling error of pH, and its spread where no gas was taken (common practice). */
const PH_ERROR = 0.01
const PH_UNKNOWN_SD = 0.03

export function phSpread(about: Case): PatientSpread {
  const ph = about.patient.bloodGas?.ph
  const limits = { min: PH_MIN, max: PH_MAX }
  if (ph !== undefined) return typed(around({ value: ph, sd: PH_ERROR, ...limits }))
  const spread = around({ value: STANDARD_PH, sd: PH_UNKNOWN_SD, ...limits })
  return assumed({ spread, known: 'common-practice' })
}

/** Carboxyhaemoglobin: measured; expected where the reason for the goal says so; else that of non-smokers and smokers (common practice). */
const CARBOXY_ERROR = 0.005
const CARBOXY_EXPECTED: Spread = { kind: 'triangular', mode: 0.15, min: 0.02, max: 0.45 }
const CARBOXY_USUAL: Spread = { kind: 'triangular', mode: 0.01, min: 0, max: 0.06 }

export function carboxyhaemoglobinSpread(about: Case): PatientSpread {
  const value = about.patient.bloodGas?.carboxyhaemoglobinFraction
  const { min, max } = NUMBERS.carboxyhaemoglobinFraction
  if (value !== undefined) return typed(around({ value, sd: CARBOXY_ERROR, min, max }))
  const { reason } = about.goal
  if (reason !== undefined && CARBON_MONOXIDE_REASONS.includes(reason)) {
    const code = 'FROM_GOAL_REASON'
    return assumed({ spread: CARBOXY_EXPECTED, known: 'common-practice', code })
  }
  return assumed({ spread: CARBOXY_USUAL, known: 'common-practice' })
}

export function p50Spread(about: Case): PatientSpread {
  const spread = p50SpreadKpa(about.patient)
  return assumed({ spread, known: 'memory', source: 'Oski1972', code: 'FROM_SIZE' })
}

/** Between burning fat alone and sugar alone, mostly mixed (common practice); infants measured 0.79 and 0.83 [Verma2019]. */
const QUOTIENT: Spread = { kind: 'triangular', mode: 0.8, min: 0.7, max: 1 }

export function quotientSpread(): PatientSpread {
  return assumed({ spread: QUOTIENT, known: 'common-practice' })
}

/** Error of indirect calorimetry (common practice). */
const UPTAKE_ERROR_RELATIVE = 0.07

/** At rest for the body and its temperature, times the state's own factor. */
export function uptakeSpread(
  about: Case,
  options: { readonly body: Body; readonly preset: BreathingPreset },
): PatientSpread {
  const { oxygenUptakeMlPerMin, temperatureC } = about.patient
  if (oxygenUptakeMlPerMin !== undefined) {
    const { min, max } = NUMBERS.oxygenUptakeMlPerMin
    const sd = UPTAKE_ERROR_RELATIVE * oxygenUptakeMlPerMin
    return typed(around({ value: oxygenUptakeMlPerMin, sd, min, max }))
  }
  // The factor of the fever state already holds its temperature.
  const isCounted = temperatureC !== undefined && about.breathing.state !== 'fever'
  const warmth = isCounted ? { temperatureC } : {}
  const resting = oxygenUptakeSpread({ ...options.body, ...warmth })
  const spread = scaled(resting, medianOf(options.preset.metabolicFactor))
  return assumed({ spread, known: 'derived', source: 'Lundell1996', code: 'FROM_SIZE' })
}

/** Circulation of a state relative to rest beyond what uptake asks for (common practice). */
const STATE_OUTPUT: Readonly<Partial<Record<BreathingState, number>>> = {
  pregnancy: 1.3,
  'heart-failure': 0.8,
  fever: 1.1,
}
/** Cardiac output rises with uptake above rest, L/min for each L/min (common practice in exercise physiology: 5 to 6). */
const OUTPUT_PER_UPTAKE = 5.5
const ML_PER_L = 1000
/** Below this haemoglobin the heart makes up for part of what the blood does not carry: output × √(120/Hb) (common practice). */
const ANAEMIA_GPL = 120

/** Resting output for the body, times the state's factor, plus what the uptake above rest asks for. */
export function cardiacOutput(
  about: Case,
  options: { readonly body: Body; readonly preset: BreathingPreset },
): PatientSpread {
  const resting = cardiacOutputSpread(options.body)
  const restMlPerMin = medianOf(oxygenUptakeSpread(options.body))
  const uptakeMlPerMin = medianOf(uptakeSpread(about, options).spread)
  const extraLpm = (Math.max(0, uptakeMlPerMin - restMlPerMin) / ML_PER_L) * OUTPUT_PER_UPTAKE
  const haemoglobinGpl = about.patient.haemoglobinGpl ?? ANAEMIA_GPL
  const anaemia = Math.sqrt(ANAEMIA_GPL / Math.min(ANAEMIA_GPL, haemoglobinGpl))
  const factor = anaemia * (STATE_OUTPUT[about.breathing.state] ?? 1)
  const spread = scaled(resting, factor + extraLpm / medianOf(resting))
  return assumed({ spread, known: 'secondary', source: 'Katori1979', code: 'FROM_SIZE' })
}
