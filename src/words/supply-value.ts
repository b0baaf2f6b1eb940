// Numbers of the gas answers as people read them: litres, pressures, times, in the units chosen. Leaves out sentences.
import type { ClockTime } from '../supply/duration.ts'
import type { UnitOf } from '../units/choosable.ts'
import { barFromKpa, psiFromKpa } from '../units/pressure.ts'
import { cubicFeetFromLitres } from '../units/volume.ts'
import { say } from './say.ts'
import { clockText, durationText, numberText, pressureText } from './number-text.ts'
import { shownUnit } from './shown-unit.ts'

export type GasPressureUnit = UnitOf<'gasPressure'>
export type GasVolumeUnit = UnitOf<'gasVolume'>

export interface GasUnits {
  readonly pressure: GasPressureUnit
  readonly volume: GasVolumeUnit
}

export const GAS_UNITS: GasUnits = { pressure: 'bar', volume: 'L' }

/** The units chosen for all that is said, where none are handed over. */
export function shownGasUnits(): GasUnits {
  return { pressure: shownUnit('gasPressure'), volume: shownUnit('gasVolume') }
}

/** "137 bar", "1990 psi", "13700 kPa" */
export function gasPressureText(pressureKpa: number, units: GasUnits): string {
  switch (units.pressure) {
    case 'bar':
      return `${numberText(barFromKpa(pressureKpa), 1)} bar`
    case 'psi':
      return `${numberText(psiFromKpa(pressureKpa), 10)} psi`
    case 'kPa':
      return `${numberText(pressureKpa, 100)} kPa`
  }
}

/** A drop of a few kPa along a tube, in the unit of gas pressures: "0.04 bar", "0.6 psi", "4 kPa". */
export function smallGasPressureText(pressureKpa: number, units: GasUnits): string {
  switch (units.pressure) {
    case 'bar':
      return `${numberText(barFromKpa(pressureKpa), 0.01)} bar`
    case 'psi':
      return `${numberText(psiFromKpa(pressureKpa), 0.1)} psi`
    case 'kPa':
      return `${numberText(pressureKpa, 1)} kPa`
  }
}

/** Pressure of the air around, in the unit chosen for blood and weather. */
export function airPressureText(pressureKpa: number): string {
  return pressureText({ pressureKpa, unit: shownUnit('pressure') })
}

/** Litres of free gas: whole litres, from 1000 L on tens; cubic feet to a tenth. */
export function gasVolumeText(volumeL: number, units: GasUnits): string {
  if (units.volume === 'ft³') return `${numberText(cubicFeetFromLitres(volumeL), 0.1)} ft³`
  return `${numberText(volumeL, volumeL < 1000 ? 1 : 10)} L`
}

/** What a set-up draws: steps of 0.1 L/min, below 1 L/min of 0.01. */
export function drawText(drawLpm: number): string {
  return `${numberText(drawLpm, drawLpm < 1 ? 0.01 : 0.1)} L/min`
}

/** Time left, rounded down: never later than it is. */
export function minutesLeftText(minutes: number): string {
  return durationText(Math.floor(minutes))
}

/** "14:20", or "02:05 tomorrow". */
export function clockTimeText(time: ClockTime): string {
  const clock = clockText(time)
  if (time.day === 0) return clock
  if (time.day === 1) return say('{clock} tomorrow', { clock })
  return say('{clock} in {days} days', { clock, days: String(time.day) })
}

/** Hours, for manifolds and tanks: "5 h", "3 days 4 h". */
export function hoursText(hours: number): string {
  const whole = Math.floor(hours)
  if (whole < 48) return durationText(Math.floor(hours * 60))
  const days = String(Math.floor(whole / 24))
  return say('{days} days {rest} h', { days, rest: String(whole % 24) })
}
