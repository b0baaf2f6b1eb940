// Steady mixing of gas streams: entrainment by mass balance, mixtures, and dilution of what a device gives by room air. Leaves out jets and mixing in time.
import { DomainError, requireWithin } from '../errors.ts'
import { AIR_O2_FRACTION } from '../units/constants.ts'

/** One stream of a mixture; flows of all streams at one gas condition. */
export interface GasStream {
  readonly flowLpm: number
  readonly o2Fraction: number
}

export interface EntrainmentSetting {
  /** Oxygen fraction of the mixture. */
  readonly targetO2Fraction: number
  /** Oxygen fraction of the driving gas; 1 for pure oxygen. */
  readonly sourceO2Fraction?: number
  /** Oxygen fraction of the entrained air; handbook tables used 0.20, 0.209 or 0.21. */
  readonly airO2Fraction?: number
}

/** Litres of air drawn in per litre of driving gas: (Fs − F)/(F − Fair). Valid Fair < F ≤ Fs, else
 *  FRACTION_OUT_OF_RANGE or TARGET_ABOVE_SOURCE. Exact mass balance: agrees with the handbook ratios to their
 *  rounding (test/reference/entrainment-ratios). */
export function entrainmentRatio(setting: EntrainmentSetting): number {
  const sourceO2Fraction = setting.sourceO2Fraction ?? 1
  const airO2Fraction = setting.airO2Fraction ?? AIR_O2_FRACTION
  requireFraction('airO2Fraction', airO2Fraction)
  requireFraction('sourceO2Fraction', sourceO2Fraction)
  requireFraction('targetO2Fraction', setting.targetO2Fraction)
  if (setting.targetO2Fraction > sourceO2Fraction) {
    throw new DomainError({
      code: 'TARGET_ABOVE_SOURCE',
      path: 'targetO2Fraction',
      value: setting.targetO2Fraction,
      limit: { max: sourceO2Fraction },
    })
  }
  if (setting.targetO2Fraction <= airO2Fraction) {
    throw new DomainError({
      code: 'FRACTION_OUT_OF_RANGE',
      path: 'targetO2Fraction',
      value: setting.targetO2Fraction,
      limit: { min: airO2Fraction, max: sourceO2Fraction },
    })
  }
  return (sourceO2Fraction - setting.targetO2Fraction) / (setting.targetO2Fraction - airO2Fraction)
}

/** Driving flow plus entrained air, at the condition of the driving flow. Valid as entrainmentRatio. */
export function entrainmentTotalFlowLpm(
  setting: EntrainmentSetting & { readonly drivingFlowLpm: number },
): number {
  requireFlow('drivingFlowLpm', setting.drivingFlowLpm)
  return setting.drivingFlowLpm * (1 + entrainmentRatio(setting))
}

/** Fraction a valve of this ratio gives on another driving gas: (Fs + ratio·Fair)/(1 + ratio). A valve made for
 *  pure oxygen reads low on a concentrator. Valid ratio ≥ 0 and fractions 0–1. */
export function entrainedO2Fraction(valve: {
  readonly ratio: number
  readonly sourceO2Fraction: number
  readonly airO2Fraction?: number
}): number {
  requireWithin({
    code: 'VALUE_OUT_OF_RANGE',
    path: 'ratio',
    value: valve.ratio,
    min: 0,
    max: Number.MAX_VALUE,
  })
  requireFraction('sourceO2Fraction', valve.sourceO2Fraction)
  const airO2Fraction = valve.airO2Fraction ?? AIR_O2_FRACTION
  requireFraction('airO2Fraction', airO2Fraction)
  return (valve.sourceO2Fraction + valve.ratio * airO2Fraction) / (1 + valve.ratio)
}

/** Total flow and oxygen fraction of streams that join, such as two flowmeters in parallel or a blender's inlets.
 *  Valid with at least one flow above 0, else FLOW_OUT_OF_RANGE. Exact. */
export function mixedStream(streams: readonly GasStream[]): GasStream {
  let flowLpm = 0
  let o2Lpm = 0
  for (const stream of streams) {
    requireFlow('flowLpm', stream.flowLpm)
    requireFraction('o2Fraction', stream.o2Fraction)
    flowLpm += stream.flowLpm
    o2Lpm += stream.flowLpm * stream.o2Fraction
  }
  requireWithin({
    code: 'FLOW_OUT_OF_RANGE',
    path: 'flowLpm',
    value: flowLpm,
    min: Number.MIN_VALUE,
    max: Number.MAX_VALUE,
    unit: 'L/min',
  })
  return { flowLpm, o2Fraction: o2Lpm / flowLpm }
}

/** Oxygen fraction of a demand met first by the device and then by air: Fair + (Fs − Fair)·min(1, q/demand).
 *  With minute ventilation as demand it is the upper bound of the fresh-gas mean; with mean inspiratory flow it
 *  is the formula for a cannula without reservoir [Duprez2018]. Device flow and demand at one condition.
 *  Valid demand > 0, device ≥ 0. Exact. */
export function dilutedO2Fraction(supply: {
  readonly deviceFlowLpm: number
  readonly demandFlowLpm: number
  readonly sourceO2Fraction?: number
  readonly airO2Fraction?: number
}): number {
  requireFlow('deviceFlowLpm', supply.deviceFlowLpm)
  requireFlow('demandFlowLpm', supply.demandFlowLpm, Number.MIN_VALUE)
  const sourceO2Fraction = supply.sourceO2Fraction ?? 1
  const airO2Fraction = supply.airO2Fraction ?? AIR_O2_FRACTION
  requireFraction('sourceO2Fraction', sourceO2Fraction)
  requireFraction('airO2Fraction', airO2Fraction)
  const share = Math.min(1, supply.deviceFlowLpm / supply.demandFlowLpm)
  return airO2Fraction + (sourceO2Fraction - airO2Fraction) * share
}

function requireFraction(path: string, value: number): void {
  requireWithin({ code: 'FRACTION_OUT_OF_RANGE', path, value, min: 0, max: 1 })
}

function requireFlow(path: string, value: number, min = 0): void {
  requireWithin({
    code: 'FLOW_OUT_OF_RANGE',
    path,
    value,
    min,
    max: Number.MAX_VALUE,
    unit: 'L/min',
  })
}
