// What a set-up really draws from the oxygen supply: meter, driving flow, oxygen share of a blend, and what runs beside it. Leaves out air drawn from a pipeline.
import { requireWithin } from '../errors.ts'
import { deliveredStream, MIDDLE_STREAM } from '../kit/delivered-stream.ts'
import { oxygenInBlendLpm } from '../kit/feeds.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { SetUp } from '../kit/set-up.ts'
import { requireBarometricKpa } from '../physics/atmosphere.ts'

/** Flows beside the set-up's own, L/min; 0 where absent. */
export interface BesideFlows {
  /** Of a ventilator used as a source, at the blend's fraction. */
  readonly biasFlowLpm?: number
  /** Pure oxygen that drives a machine. */
  readonly drivingGasLpm?: number
  /** Jet nebuliser for drugs, driven by oxygen. */
  readonly jetLpm?: number
  readonly leakLpm?: number
}

export type DrawPart = 'SET_UP' | 'MASK_OVER' | 'BIAS_FLOW' | 'DRIVING_GAS' | 'JET' | 'LEAK'

export interface GasDrawn {
  /** Pure oxygen, L/min dry at 20 °C and 101.325 kPa; low and high: 10 and 90 % of what is not known of the meter. */
  readonly oxygenLpm: number
  readonly lowLpm: number
  readonly highLpm: number
  readonly parts: readonly { readonly part: DrawPart; readonly oxygenLpm: number }[]
}

const BESIDE_LPM_MAX = 100
const LOW_DRAW = 0.1
const HIGH_DRAW = 0.9

/** Sum of the parts: an entraining valve draws its driving flow alone, a blend its oxygen share (F − 0.2095)/0.7905. Valid 50–107 kPa
 *  and 0–100 L/min beside it, else DomainError. Mass balance; gas-drawn.test.ts. */
export function gasDrawn(question: {
  readonly setUp: SetUp
  readonly barometricKpa: number
  readonly beside?: BesideFlows
}): GasDrawn {
  const { setUp, barometricKpa } = question
  requireBarometricKpa(barometricKpa)
  const besideParts = besideOf(setUp, question.beside ?? {})
  const at = (meter: number): readonly { part: DrawPart; oxygenLpm: number }[] =>
    [...setUpParts(setUp, barometricKpa, meter), ...besideParts].filter(
      ({ oxygenLpm }) => oxygenLpm > 0,
    )
  const parts = at(MIDDLE_STREAM.meter)
  return {
    oxygenLpm: sum(parts),
    lowLpm: sum(at(LOW_DRAW)),
    highLpm: sum(at(HIGH_DRAW)),
    parts,
  }
}

function setUpParts(
  setUp: SetUp,
  barometricKpa: number,
  meter: number,
): readonly { part: DrawPart; oxygenLpm: number }[] {
  const draw = { ...MIDDLE_STREAM, meter }
  const { source, over } = setUp
  const own = deliveredStream(
    {
      source,
      flow: setUp.flow,
      setO2Fraction: setUp.setO2Fraction,
      entrainsAir: INTERFACE_FAMILIES[setUp.family].entrainsAir,
      barometricKpa,
    },
    draw,
  )
  const ownPart = { part: 'SET_UP', oxygenLpm: own.oxygenUsedLpm } as const
  if (over === null) return [ownPart]
  const mask = deliveredStream(
    { source, flow: over.flow, setO2Fraction: null, entrainsAir: 'no', barometricKpa },
    draw,
  )
  return [ownPart, { part: 'MASK_OVER', oxygenLpm: mask.oxygenUsedLpm }]
}

function besideOf(
  setUp: SetUp,
  beside: BesideFlows,
): readonly { part: DrawPart; oxygenLpm: number }[] {
  const biasFlowLpm = checked('biasFlowLpm', beside.biasFlowLpm)
  return [
    {
      part: 'BIAS_FLOW',
      oxygenLpm: oxygenInBlendLpm({
        flowLpm: biasFlowLpm,
        setO2Fraction: setUp.setO2Fraction ?? 1,
      }),
    },
    { part: 'DRIVING_GAS', oxygenLpm: checked('drivingGasLpm', beside.drivingGasLpm) },
    { part: 'JET', oxygenLpm: checked('jetLpm', beside.jetLpm) },
    { part: 'LEAK', oxygenLpm: checked('leakLpm', beside.leakLpm) },
  ]
}

function checked(path: string, value = 0): number {
  const bounds = { path, value, min: 0, max: BESIDE_LPM_MAX, unit: 'L/min' }
  return requireWithin({ ...bounds, code: 'FLOW_OUT_OF_RANGE' })
}

function sum(parts: readonly { readonly oxygenLpm: number }[]): number {
  return parts.reduce((total, { oxygenLpm }) => total + oxygenLpm, 0)
}
