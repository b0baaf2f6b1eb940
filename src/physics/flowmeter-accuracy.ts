// How far a flowmeter's true flow may lie from its setting, as a spread. Leaves out the physics of the correction (flowmeter.ts) and worn or dirty meters.
import { requireWithin } from '../errors.ts'
import type { Provenance } from '../units/provenance.ts'
import { fixed, type Spread } from '../units/spread.ts'

/** ordinary: scales of 3 L/min and more. low-flow: scales to 3 L/min and less, marked in tenths or in mL/min. */
export type FlowmeterClass = 'ordinary' | 'low-flow'

/** ±0.5 L/min below 5 L/min, ±10 % of the setting above, at 23 ± 2 °C and 101.3 kPa. */
export const ORDINARY_ACCURACY = {
  absoluteLpm: 0.5,
  relative: 0.1,
  changeoverLpm: 5,
  provenance: { source: 'Duprez2014', known: 'secondary' },
} as const satisfies { readonly provenance: Provenance; readonly [name: string]: unknown }

/** 24 low-flow meters: flow set, mean flow found, SD between meters, L/min. */
export const LOW_FLOW_BIAS = {
  rows: [
    { setLpm: 0.25, meanLpm: 0.32, sdLpm: 0.05 },
    { setLpm: 1, meanLpm: 1.05, sdLpm: 0.05 },
    { setLpm: 1.5, meanLpm: 1.52, sdLpm: 0.06 },
  ],
  provenance: { source: 'Tinaglia2002', known: 'seen' },
} as const satisfies { readonly provenance: Provenance; readonly [name: string]: unknown }

/** Standard deviations that the accuracy band of an ordinary meter is taken to be: the standard gives limits, not a distribution (derived). */
const BAND_SDS = 2
/** Truncation of every meter's error, in SDs (common practice). */
const LIMIT_SDS = 3
const SETTING_LPM_MAX = 150

/** Half width of the accuracy band at a setting, L/min: ISO 15002 for an ordinary meter [Duprez2014].
 *  Valid 0–150 L/min, else FLOW_OUT_OF_RANGE. */
export function ordinaryAccuracyBandLpm(settingLpm: number): number {
  requireSetting(settingLpm)
  return settingLpm < ORDINARY_ACCURACY.changeoverLpm
    ? ORDINARY_ACCURACY.absoluteLpm
    : settingLpm * ORDINARY_ACCURACY.relative
}

/** True flow at a setting, between meters of a class. Ordinary: unbiased, band = ±2 SD (derived), never below 0.
 *  Low-flow: mean and SD interpolated between the three settings measured [Tinaglia2002]; below 0.25 L/min the
 *  relative bias and SD of 0.25 L/min, above 1.5 L/min those of 1.5 L/min (derived). A setting of 0 is closed: exactly 0.
 *  Valid 0–150 L/min, else FLOW_OUT_OF_RANGE. */
export function trueFlowSpread(meter: {
  readonly settingLpm: number
  readonly meterClass: FlowmeterClass
}): Spread {
  requireSetting(meter.settingLpm)
  if (meter.settingLpm === 0) return fixed(0)
  const error =
    meter.meterClass === 'ordinary'
      ? { mean: meter.settingLpm, sd: ordinaryAccuracyBandLpm(meter.settingLpm) / BAND_SDS }
      : lowFlowError(meter.settingLpm)
  return {
    kind: 'normal',
    ...error,
    min: Math.max(0, error.mean - LIMIT_SDS * error.sd),
    max: error.mean + LIMIT_SDS * error.sd,
  }
}

function lowFlowError(settingLpm: number): { readonly mean: number; readonly sd: number } {
  const [low, middle, high] = LOW_FLOW_BIAS.rows
  if (settingLpm <= low.setLpm) return proportional(low, settingLpm)
  if (settingLpm >= high.setLpm) return proportional(high, settingLpm)
  return settingLpm < middle.setLpm
    ? between(low, middle, settingLpm)
    : between(middle, high, settingLpm)
}

interface BiasRow {
  readonly setLpm: number
  readonly meanLpm: number
  readonly sdLpm: number
}

function proportional(row: BiasRow, settingLpm: number) {
  const factor = settingLpm / row.setLpm
  return { mean: row.meanLpm * factor, sd: row.sdLpm * factor }
}

function between(low: BiasRow, high: BiasRow, settingLpm: number) {
  const share = (settingLpm - low.setLpm) / (high.setLpm - low.setLpm)
  return {
    mean: low.meanLpm + share * (high.meanLpm - low.meanLpm),
    sd: low.sdLpm + share * (high.sdLpm - low.sdLpm),
  }
}

function requireSetting(settingLpm: number): void {
  requireWithin({
    code: 'FLOW_OUT_OF_RANGE',
    path: 'settingLpm',
    value: settingLpm,
    min: 0,
    max: SETTING_LPM_MAX,
    unit: 'L/min',
  })
}
