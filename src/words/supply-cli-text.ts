// What the gas verbs of the command line say around their numbers: headings and first lines. Leaves out remarks.
import type { ClockTime } from '../supply/duration.ts'
import { say } from './say.ts'
import {
  airPressureText,
  clockTimeText,
  drawText,
  gasPressureText,
  gasVolumeText,
  minutesLeftText,
  type GasUnits,
} from './supply-value.ts'

export const SUPPLY_WORDS = {
  remarks: say('mind'),
  parts: say('drawn'),
  assumed: say('what these numbers rest on'),
} as const

/** "change at 14:20 (in 30 min), earliest 14:10" */
export function changeLine(at: {
  readonly minutes: number
  readonly clock: ClockTime
  readonly earliest: ClockTime
}): string {
  return say('Change at {clock} (in {minutes}), at the earliest {earliest}.', {
    clock: clockTimeText(at.clock),
    minutes: minutesLeftText(at.minutes),
    earliest: clockTimeText(at.earliest),
  })
}

export function emptyLine(at: { readonly minutes: number; readonly clock: ClockTime }): string {
  return say('Empty at {clock} (in {minutes}).', {
    clock: clockTimeText(at.clock),
    minutes: minutesLeftText(at.minutes),
  })
}

export function contentsLine(
  of: { readonly contentsL: number; readonly usableL: number; readonly leftGaugeKpa: number },
  units: GasUnits,
): string {
  return say('{contents} in it; {usable} of them down to {left}.', {
    contents: gasVolumeText(of.contentsL, units),
    usable: gasVolumeText(of.usableL, units),
    left: gasPressureText(of.leftGaugeKpa, units),
  })
}

export function drawLine(of: {
  readonly drawLpm: number
  readonly lowLpm: number
  readonly highLpm: number
}): string {
  const draw = drawText(of.drawLpm)
  if (of.lowLpm === of.highLpm) return say('Drawn: {draw} of oxygen.', { draw })
  return say('Drawn: about {draw} of oxygen, {low} to {high}.', {
    draw,
    low: drawText(of.lowLpm),
    high: drawText(of.highLpm),
  })
}

export function cylinderBasisLine(
  of: {
    readonly waterVolumeL: number
    readonly gaugeKpa: number
    readonly readAtC: number
    readonly usedAtC: number
    readonly barometricKpa: number
    readonly regulatorMinimumGaugeKpa: number
  },
  units: GasUnits,
): string {
  return say(
    'Water volume {water} L, gauge {gauge} read at {read} °C, used at {used} °C and {barometric}; the regulator keeps its flow down to {minimum}; contents counted at 15 °C, flow at 20 °C.',
    {
      water: String(of.waterVolumeL),
      gauge: gasPressureText(of.gaugeKpa, units),
      read: String(of.readAtC),
      used: String(of.usedAtC),
      barometric: airPressureText(of.barometricKpa),
      minimum: gasPressureText(of.regulatorMinimumGaugeKpa, units),
    },
  )
}

export function ruleOfThumbLine(minutes: number): string {
  return say('Water volume × pressure, the rule of thumb: {minutes}.', {
    minutes: minutesLeftText(minutes),
  })
}
