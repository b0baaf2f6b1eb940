// What a source at a setting really pushes out, as a stream at body conditions: meter error, altitude, purity, entrainment. Leaves out hoses.
import { assert, requireWithin } from '../errors.ts'
import { trueFlowSpread } from '../physics/flowmeter-accuracy.ts'
import { standardFlowFactor } from '../physics/flowmeter.ts'
import { flowmeterToBtpsFactor } from '../physics/gas-condition.ts'
import { entrainmentRatio } from '../physics/gas-mixing.ts'
import { SOURCE_PURITY } from '../physics/source-purity.ts'
import { AIR_O2_FRACTION } from '../units/constants.ts'
import { fixed, medianOf, quantile } from '../units/spread.ts'
import type { Spread } from '../units/spread.ts'
import type { InterfaceFamily } from './interface-family.ts'
import { metersOf } from './flow-steps.ts'
import type { FlowStep, FlushFlow, MeterScale, SourceRow } from './source-row.ts'

/** Numbers between 0 and 1 that choose within what is not known about the source; 0.5 is the middle. */
export interface StreamDraw {
  readonly meter: number
  readonly purity: number
  readonly entrainment: number
}

export const MIDDLE_STREAM: StreamDraw = { meter: 0.5, purity: 0.5, entrainment: 0.5 }

export interface DeliveredStream {
  /** All gas that reaches the interface, entrained air included, L/min BTPS. */
  readonly totalLpmBtps: number
  /** Share of it that is source gas; the rest is room air entrained on the way. */
  readonly sourceShare: number
  /** Oxygen fraction of the source gas (of the blend, where a blender mixes). */
  readonly sourceO2Fraction: number
  /** Pure-oxygen equivalent drawn from the supply, L/min as metered (dry, 20 °C, 101.325 kPa). */
  readonly oxygenUsedLpm: number
}

export interface StreamSetting {
  readonly source: SourceRow
  readonly flow: FlowStep
  readonly setO2Fraction: number | null
  readonly entrainsAir: InterfaceFamily['entrainsAir']
  readonly barometricKpa: number
  /** Pressure that the meter works against, such as a bubble bottle's or a jet's; 0 where absent. */
  readonly backPressureKpa?: number
  /** Pressure in the pipeline, gauge; the usual one where absent. */
  readonly supplyGaugeKpa?: number
}

/** Between valves of one kind: entrained share ± 6 % fixed, ± 10 % adjustable (SD). Fixed: Jones1984 within −1.2…+1.9 points; adjustable from memory. */
const ENTRAINMENT_LOG_SD = { 'fixed-settings': 0.06, adjustable: 0.1, nebuliser: 0.1 } as const

/** Blended fractions: ± 0.02 (common practice). */
const BLEND_ERROR = 0.02

/**
 * Stream at the interface. Flowmeters: true flow between meters of the class × altitude and supply behaviour of the mechanism ×
 * dry-to-BTPS; entrainment: ratio of the printed setting by mass balance with pure oxygen, then mixed with the purity at hand.
 * Blender and ventilator flows: condition of the display is not known, so between BTPS and dry 20 °C.
 */
export function deliveredStream(setting: StreamSetting, draw: StreamDraw): DeliveredStream {
  const { source } = setting
  if (source.kind === 'blender' || source.kind === 'ventilator')
    return blendedStream(setting, source.errorRelative, draw)
  const meteredLpm = meteredFlowLpm(setting, source.meter, draw.meter)
  const sourceO2Fraction = quantile(SOURCE_PURITY[source.purity].o2Fraction, draw.purity)
  const ratio = airPerSource(setting, draw.entrainment)
  return {
    totalLpmBtps:
      meteredLpm * (1 + ratio) * flowmeterToBtpsFactor({ barometricKpa: setting.barometricKpa }),
    sourceShare: 1 / (1 + ratio),
    sourceO2Fraction,
    oxygenUsedLpm: meteredLpm,
  }
}

/** Lowest valve or dial setting: below it the entrained stream loses all meaning (0.21 would need 1580 litres of air for each of oxygen). */
export const ENTRAINED_O2_FRACTION_MIN = 0.22

/**
 * Litres of air for each litre of source gas: 0 unless the interface or the nebuliser entrains. Formula: (1 − F)/(F − air), as the
 * valve was made for pure oxygen. Valid 0.22 ≤ F ≤ 1, else FRACTION_OUT_OF_RANGE.
 */
function airPerSource(setting: StreamSetting, u: number): number {
  const kind = setting.source.kind === 'jet-nebuliser' ? 'nebuliser' : setting.entrainsAir
  if (kind === 'no') return 0
  assert(setting.setO2Fraction !== null, 'entrained streams have a set fraction')
  const targetO2Fraction = requireWithin({
    code: 'FRACTION_OUT_OF_RANGE',
    path: 'setO2Fraction',
    value: setting.setO2Fraction,
    min: ENTRAINED_O2_FRACTION_MIN,
    max: 1,
  })
  const nominal = entrainmentRatio({ targetO2Fraction })
  if (nominal === 0) return 0
  const spread: Spread = {
    kind: 'lognormal',
    median: nominal,
    logSd: ENTRAINMENT_LOG_SD[kind],
    min: nominal * 0.7,
    max: nominal * 1.4,
  }
  return quantile(spread, u)
}

function meteredFlowLpm(setting: StreamSetting, meter: MeterScale, u: number): number {
  const { barometricKpa, backPressureKpa, supplyGaugeKpa } = setting
  const factor = standardFlowFactor({
    kind: meter.kind,
    indicatedFlowLpm: 1,
    barometricKpa,
    ...(backPressureKpa === undefined ? {} : { backPressureKpa }),
    ...(supplyGaugeKpa === undefined ? {} : { supplyGaugeKpa }),
  })
  return nominalTrueLpm(setting, meter, u) * factor
}

/** Two meters err independently: the error of their sum is that of one, times two, divided by √2, drawn through the same u. */
function nominalTrueLpm({ source, flow }: StreamSetting, meter: MeterScale, u: number): number {
  const meters = metersOf(source)
  if (flow.kind === 'flush') {
    assert(meter.flush !== null, 'flush step only on a meter with flush')
    return meters * flushLpm(meter.flush, u)
  }
  const spread = trueFlowSpread({
    settingLpm: flow.flowLpm / meters,
    meterClass: meter.meterClass,
  })
  const middleLpm = medianOf(spread)
  return meters * (middleLpm + (quantile(spread, u) - middleLpm) / Math.sqrt(meters))
}

/** Half of the flows lie below the median, with falling weight towards either end. */
function flushLpm({ lowLpm, medianLpm, highLpm }: FlushFlow, u: number): number {
  return u < 1 / 2
    ? lowLpm + (medianLpm - lowLpm) * Math.sqrt(2 * u)
    : highLpm - (highLpm - medianLpm) * Math.sqrt(2 * (1 - u))
}

function blendedStream(
  setting: StreamSetting,
  errorRelative: number,
  draw: StreamDraw,
): DeliveredStream {
  assert(setting.flow.kind === 'scale', 'blended sources have no flush')
  assert(setting.setO2Fraction !== null, 'blended sources have a set fraction')
  const setO2Fraction = requireWithin({
    code: 'FRACTION_OUT_OF_RANGE',
    path: 'setO2Fraction',
    value: setting.setO2Fraction,
    min: AIR_O2_FRACTION,
    max: 1,
  })
  const dryToBtps = flowmeterToBtpsFactor({ barometricKpa: setting.barometricKpa })
  const conditionFactor = 1 + (dryToBtps - 1) * draw.purity
  const error = quantile(flowErrorSpread(errorRelative), draw.meter)
  const sourceO2Fraction = quantile(blendSpread(setO2Fraction), draw.entrainment)
  const totalLpmBtps = setting.flow.flowLpm * error * conditionFactor
  const oxygenShare = (sourceO2Fraction - AIR_O2_FRACTION) / (1 - AIR_O2_FRACTION)
  return {
    totalLpmBtps,
    sourceShare: 1,
    sourceO2Fraction,
    oxygenUsedLpm: (totalLpmBtps / dryToBtps) * Math.max(0, oxygenShare),
  }
}

/** Some makers print no error at all: then none is drawn. */
function flowErrorSpread(errorRelative: number): Spread {
  return errorRelative === 0
    ? fixed(1)
    : { kind: 'triangular', min: 1 - errorRelative, mode: 1, max: 1 + errorRelative }
}

function blendSpread(o2Fraction: number): Spread {
  const min = Math.max(AIR_O2_FRACTION, o2Fraction - BLEND_ERROR)
  const max = Math.min(1, o2Fraction + BLEND_ERROR)
  return { kind: 'triangular', min, mode: o2Fraction, max }
}
