// What is drawn from the oxygen supply when only flows are known and no set-up: read off a meter or a display. Leaves out altitude, which gas-drawn.ts knows for a set-up.
import { requireWithin } from '../errors.ts'
import { oxygenInBlendLpm } from '../kit/feeds.ts'
import { ordinaryAccuracyBandLpm } from '../physics/flowmeter-accuracy.ts'
import { AIR_O2_FRACTION } from '../units/constants.ts'
import type { DrawPart, GasDrawn } from './gas-drawn.ts'

export type StatedDraw =
  /** A meter that feeds a cannula, a mask or a bag. */
  | { readonly kind: 'meter'; readonly flowLpm: number }
  /** A meter that drives an entrainment valve: air comes from the room, so its setting does not count. */
  | { readonly kind: 'driving'; readonly flowLpm: number }
  /** High flow mixed from oxygen and air. */
  | { readonly kind: 'blend'; readonly flowLpm: number; readonly setO2Fraction: number }
  /** Constant flow of a ventilator and its bias flow, both blended, and pure oxygen that drives it. */
  | {
      readonly kind: 'ventilator'
      readonly flowLpm: number
      readonly setO2Fraction: number
      readonly biasFlowLpm: number
      readonly drivingGasLpm: number
    }

export interface StatedBeside {
  /** Jet nebuliser for drugs, driven by oxygen. */
  readonly jetLpm?: number
  readonly leakLpm?: number
}

const STATED_LPM_MAX = 150

/** Share by which a mixed flow may lie beside its display, either way (common practice). */
export const BLEND_FLOW_ERROR = 0.1

/** What a stated draw can know; air and remarks need a set-up. */
export type StatedGas = Pick<GasDrawn, 'oxygenLpm' | 'lowLpm' | 'highLpm' | 'parts'>

interface Part {
  readonly part: DrawPart
  readonly oxygenLpm: number
  /** Half of the range it may lie in. */
  readonly errorLpm: number
}

/** Sum of the parts; a blend draws its oxygen share (F − 0.2095)/0.7905. Low and high: every meter wrong by its full band [Duprez2014],
 *  mixed flows by 10 %. Valid 0–150 L/min and fractions 0.2095–1, else DomainError. Mass balance; stated-draw.test.ts. */
export function statedDraw(draw: StatedDraw, beside: StatedBeside = {}): StatedGas {
  const parts = [
    ...ownParts(draw),
    metered('JET', 'jetLpm', beside.jetLpm ?? 0),
    exact('LEAK', 'leakLpm', beside.leakLpm ?? 0),
  ].filter(({ oxygenLpm }) => oxygenLpm > 0)
  const oxygenLpm = parts.reduce((sum, part) => sum + part.oxygenLpm, 0)
  const errorLpm = parts.reduce((sum, part) => sum + part.errorLpm, 0)
  return {
    oxygenLpm,
    lowLpm: Math.max(0, oxygenLpm - errorLpm),
    highLpm: oxygenLpm + errorLpm,
    parts: parts.map(({ part, oxygenLpm: ownLpm }) => ({ part, oxygenLpm: ownLpm })),
  }
}

function ownParts(draw: StatedDraw): readonly Part[] {
  switch (draw.kind) {
    case 'meter':
    case 'driving':
      return [metered('SET_UP', 'flowLpm', draw.flowLpm)]
    case 'blend':
      return [blended('SET_UP', 'flowLpm', draw.flowLpm, draw.setO2Fraction)]
    case 'ventilator':
      return [
        blended('SET_UP', 'flowLpm', draw.flowLpm, draw.setO2Fraction),
        blended('BIAS_FLOW', 'biasFlowLpm', draw.biasFlowLpm, draw.setO2Fraction),
        exact('DRIVING_GAS', 'drivingGasLpm', draw.drivingGasLpm),
      ]
  }
}

function metered(part: DrawPart, path: string, flowLpm: number): Part {
  const oxygenLpm = checked(path, flowLpm)
  return { part, oxygenLpm, errorLpm: ordinaryAccuracyBandLpm(oxygenLpm) }
}

function exact(part: DrawPart, path: string, flowLpm: number): Part {
  return { part, oxygenLpm: checked(path, flowLpm), errorLpm: 0 }
}

function blended(part: DrawPart, path: string, flowLpm: number, setO2Fraction: number): Part {
  requireWithin({
    code: 'FRACTION_OUT_OF_RANGE',
    path: 'setO2Fraction',
    value: setO2Fraction,
    min: AIR_O2_FRACTION,
    max: 1,
  })
  const oxygenLpm = oxygenInBlendLpm({ flowLpm: checked(path, flowLpm), setO2Fraction })
  return { part, oxygenLpm, errorLpm: BLEND_FLOW_ERROR * oxygenLpm }
}

function checked(path: string, value: number): number {
  const bounds = { path, value, min: 0, max: STATED_LPM_MAX, unit: 'L/min' }
  return requireWithin({ ...bounds, code: 'FLOW_OUT_OF_RANGE' })
}
