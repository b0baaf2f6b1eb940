// What a set-up really draws from the oxygen supply: meter, driving flow, oxygen share of a blend, and what runs beside it. Leaves out air drawn from a pipeline.
import { requireWithin } from '../errors.ts'
import { flowmeterToBtpsFactor } from '../physics/gas-condition.ts'
import { deliveredStream, MIDDLE_STREAM } from '../kit/delivered-stream.ts'
import { oxygenInBlendLpm } from '../kit/feeds.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { ShelfSource } from '../kit/shelf.ts'
import type { SourceRow } from '../kit/source-row.ts'
import { requireBarometricKpa } from '../physics/atmosphere.ts'
import { supplyRemark, type SupplyRemark } from './supply-remark.ts'

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
  readonly parts: readonly DrawnPart[]
  /** Air under pressure that a blend takes beside it, L/min as the oxygen. */
  readonly airLpm: number
  /** A concentrator makes its own: nothing leaves pipeline or cylinder. */
  readonly isFromStore: boolean
  /** True where something that also draws is not known. */
  readonly isLowerBound: boolean
  readonly remarks: readonly SupplyRemark[]
}

export interface DrawnPart {
  readonly part: DrawPart
  readonly oxygenLpm: number
}

export interface DrawQuestion {
  readonly setUp: SetUp
  readonly barometricKpa: number
  readonly beside?: BesideFlows
}

const BESIDE_LPM_MAX = 100
const LOW_DRAW = 0.1
const HIGH_DRAW = 0.9

/** Sum of the parts: an entraining valve draws its driving flow alone, a blend its oxygen share (F − 0.2095)/0.7905; a ventilator’s
 *  bias flow as typed, none where its shelf row says that none adds, else a lower bound. Valid 50–107 kPa
 *  and 0–100 L/min beside it, else DomainError. Mass balance; gas-drawn.test.ts. */
export function gasDrawn(question: DrawQuestion): GasDrawn {
  const { setUp } = question
  const parts = partsAt(question, MIDDLE_STREAM.meter)
  const isBiasOpen =
    setUp.source.kind === 'ventilator' && question.beside?.biasFlowLpm === undefined
  const isBiasNone = isBiasOpen && saysNoBiasFlow(setUp.source)
  const isBiasUnknown = isBiasOpen && !isBiasNone
  const drawn = {
    oxygenLpm: sum(parts),
    lowLpm: sum(partsAt(question, LOW_DRAW)),
    highLpm: sum(partsAt(question, HIGH_DRAW)),
    airLpm: airBesideLpm(question),
  }
  return {
    ...drawn,
    parts,
    isFromStore: setUp.source.kind !== 'concentrator',
    isLowerBound: isBiasUnknown,
    remarks: [
      ...(isBiasUnknown ? [supplyRemark('BIAS_FLOW_UNKNOWN')] : []),
      ...(isBiasNone ? [supplyRemark('BIAS_FLOW_NONE_BY_SHELF')] : []),
      ...(setUp.flow.kind === 'flush' || setUp.over?.flow.kind === 'flush'
        ? [supplyRemark('FLUSH_DRAW_UNCERTAIN', { lowLpm: drawn.lowLpm, highLpm: drawn.highLpm })]
        : []),
      ...(drawn.airLpm > 0 ? [supplyRemark('BLEND_NEEDS_AIR', { airLpm: drawn.airLpm })] : []),
    ],
  }
}

/** The shelf’s row of a source may say that no bias flow adds to what it uses; anything else leaves it open. */
function saysNoBiasFlow(source: SourceRow & Pick<ShelfSource, 'biasFlowAddsToUse'>): boolean {
  return source.biasFlowAddsToUse === 'no'
}

/** What is drawn when the meters stand at `meterU` of what is not known of them, 0–1; for simulations. Valid as gasDrawn. */
export function oxygenDrawnLpm(question: DrawQuestion, meterU: number): number {
  return sum(partsAt(question, meterU))
}

function partsAt({ setUp, barometricKpa, beside }: DrawQuestion, meterU: number): DrawnPart[] {
  requireBarometricKpa(barometricKpa)
  return [...setUpParts(setUp, barometricKpa, meterU), ...besideOf(setUp, beside ?? {})].filter(
    ({ oxygenLpm }) => oxygenLpm > 0,
  )
}

/** The rest of a blend, in the litres of the oxygen. */
function airBesideLpm({ setUp, barometricKpa }: DrawQuestion): number {
  const { source, flow, setO2Fraction } = setUp
  if (source.kind !== 'blender' && source.kind !== 'ventilator') return 0
  const stream = deliveredStream(
    { source, flow, setO2Fraction, entrainsAir: 'no', barometricKpa },
    MIDDLE_STREAM,
  )
  const standardLpm = stream.totalLpmBtps / flowmeterToBtpsFactor({ barometricKpa })
  return Math.max(0, standardLpm - stream.oxygenUsedLpm)
}

function setUpParts(setUp: SetUp, barometricKpa: number, meter: number): readonly DrawnPart[] {
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

function besideOf(setUp: SetUp, beside: BesideFlows): readonly DrawnPart[] {
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
