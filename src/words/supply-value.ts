// Numbers of the gas answers as people read them: litres, pressures, times, in the units chosen. Leaves out sentences.
import type { ClockTime } from '../supply/duration.ts'
import type { UnitOf } from '../units/choosable.ts'
import { barFromKpa, psiFromKpa } from '../units/pressure.ts'
import { cubicFeetFromLitres } from '../units/volume.ts'
import { say } from './say.ts'
import { clockText, durationText, numberText } from './number-text.ts'

export type GasPressureUnit = UnitOf<'gasPressure'>
export type GasVolumeUnit = UnitOf<'gasVolume'>

export interface GasUnits {
  readonly pressure: GasPressureUnit
  readonly volume: GasVolumeUnit
}

export const GAS_UNITS: GasUnits = { pressure: 'bar', volume: 'L' }

/** "137 bar", "1990 psi", "13700 kPa" */
export function gasPressureText(pressureKpa: number, units: GasUnits = GAS_UNITS): string {
  switch (units.pressure) {
    case 'bar':
      return `${numberText(barFromKpa(pressureKpa), 1)} bar`
    case 'psi':
      return `${numberText(psiFromKpa(pressureKpa), 10)} psi`
    case 'kPa':
      return `${numberText(pressureKpa, 100)} kPa`
  }
}

/** Litres of free gas: whole litres, from 1000 L on tens; cubic feet to a tenth. */
export function gasVolumeText(volumeL: number, units: GasUnits = GAS_UNITS): string {
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
