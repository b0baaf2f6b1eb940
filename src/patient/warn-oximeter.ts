// Names readings that the oximeter cannot be trusted for, and readings that do not fit the blood gas. Refuses nothing. Leaves out skin pigment and movement, which are part of the error model.
import { bloodCurve, bloodSaturation } from '../physiology/dissociation.ts'
import type { BloodGas, Goal, OnNow, Patient } from './case.ts'
import type { Reading } from './field.ts'

/** Reasons under which carboxyhaemoglobin must be expected, as codes of a goal's reason. */
export const CARBON_MONOXIDE_REASONS: readonly string[] = ['carbon-monoxide', 'smoke-inhalation']

/** Carboxyhaemoglobin above what smoking alone explains, fraction (common practice). */
const CARBOXYHAEMOGLOBIN_SUSPECT = 0.1

/** A gas this recent should agree with the reading, min; and by this much, % (three times a usual accuracy class) (common practice). */
const SAME_MOMENT_MIN = 10
const DISAGREEMENT_PERCENT = 10

export function warnOximeter(
  reading: Reading,
  parts: {
    readonly patient: Patient
    readonly goal: Goal | undefined
    readonly onNow: OnNow | undefined
  },
): void {
  const { patient, goal, onNow } = parts
  const gas = patient.bloodGas
  if (goal?.reason !== undefined && CARBON_MONOXIDE_REASONS.includes(goal.reason)) {
    const path = 'goal.reason'
    reading.warnings.push({ code: 'OXIMETER_NOT_TO_BE_TRUSTED', path, value: goal.reason })
  }
  const carboxy = gas?.carboxyhaemoglobinFraction
  if (carboxy !== undefined && carboxy >= CARBOXYHAEMOGLOBIN_SUSPECT) {
    reading.warnings.push({
      code: 'OXIMETER_NOT_TO_BE_TRUSTED',
      path: 'patient.bloodGas.carboxyhaemoglobinFraction',
      value: carboxy,
      limit: { max: CARBOXYHAEMOGLOBIN_SUSPECT },
      unit: '1',
    })
  }
  if (gas !== undefined && onNow !== undefined) warnDisagreement(reading, patient, gas, onNow)
}

const PER_CENT = 100

function warnDisagreement(reading: Reading, patient: Patient, gas: BloodGas, onNow: OnNow): void {
  const { saturationPercent } = onNow
  const expected = saturationOf(gas, patient.temperatureC)
  if (saturationPercent === undefined || expected === undefined) return
  if (gas.minutesAgo === undefined || gas.minutesAgo > SAME_MOMENT_MIN) return
  const expectedPercent = PER_CENT * expected
  if (Math.abs(expectedPercent - saturationPercent) <= DISAGREEMENT_PERCENT) return
  reading.warnings.push({
    code: 'READING_DISAGREES_WITH_BLOOD_GAS',
    path: 'onNow.saturationPercent',
    value: saturationPercent,
    limit: {
      min: Math.round(expectedPercent - DISAGREEMENT_PERCENT),
      max: Math.min(PER_CENT, Math.round(expectedPercent + DISAGREEMENT_PERCENT)),
    },
    unit: '%',
  })
}

/** Saturation that goes with the gas's oxygen pressure on the adult curve at its pH and temperature. */
function saturationOf(gas: BloodGas, temperatureC: number | undefined): number | undefined {
  if (gas.arterialPo2Kpa === undefined) return undefined
  const curve = bloodCurve({
    ...(gas.ph === undefined ? {} : { ph: gas.ph }),
    ...(temperatureC === undefined ? {} : { temperatureC }),
  })
  return bloodSaturation(curve, gas.arterialPo2Kpa)
}
