// A concentrator's purity at a flow, as far as its label tells, and the fraction inhaled with such gas. Leaves out how purity falls beyond the label, which nobody measured for us.
import { requireWithin } from '../errors.ts'
import { SOURCE_PURITY } from '../physics/source-purity.ts'
import { AIR_O2_FRACTION } from '../units/constants.ts'
import { limitsOf, medianOf } from '../units/spread.ts'
import { supplyRemark, type SupplyRemark } from './supply-remark.ts'

/** As on the machine's label. */
export interface Concentrator {
  readonly ratedFlowLpm: number
  /** Purity by flow, rising flows; the class of all concentrators where absent. */
  readonly purityTable?: readonly { readonly flowLpm: number; readonly o2Fraction: number }[]
  readonly warmUpMinutes?: number
  readonly ratedAltitudeM?: number
}

export interface ConcentratorAnswer {
  /** Null: not known, with the reason among the remarks. */
  readonly o2Fraction: number | null
  readonly lowO2Fraction: number | null
  readonly highO2Fraction: number | null
  readonly remarks: readonly SupplyRemark[]
}

const UNKNOWN = { o2Fraction: null, lowO2Fraction: null, highO2Fraction: null } as const

/** Purity at a flow. Within the label's table by straight lines, never beyond; without one 0.93 (0.90–0.96) up to the rated flow
 *  [PhEur2010]. Still warming up, above rated flow or altitude: null with a code. Valid 0–20 L/min, else FLOW_OUT_OF_RANGE. */
export function concentratorPurity(
  machine: Concentrator,
  use: { readonly flowLpm: number; readonly minutesOn?: number; readonly altitudeM?: number },
): ConcentratorAnswer {
  const flow = { path: 'flowLpm', value: use.flowLpm, min: 0, max: 20, unit: 'L/min' }
  requireWithin({ ...flow, code: 'FLOW_OUT_OF_RANGE' })
  const { ratedFlowLpm, warmUpMinutes, ratedAltitudeM } = machine
  if (use.flowLpm > ratedFlowLpm)
    return { ...UNKNOWN, remarks: [supplyRemark('ABOVE_RATED_FLOW', { ratedFlowLpm })] }
  if (ratedAltitudeM !== undefined && (use.altitudeM ?? 0) > ratedAltitudeM)
    return { ...UNKNOWN, remarks: [supplyRemark('ALTITUDE_ABOVE_RATING', { ratedAltitudeM })] }
  if (use.minutesOn !== undefined && warmUpMinutes !== undefined && use.minutesOn < warmUpMinutes) {
    const minutesLeft = warmUpMinutes - use.minutesOn
    return { ...UNKNOWN, remarks: [supplyRemark('STILL_WARMING_UP', { minutesLeft })] }
  }
  const warm = warmUpMinutes === undefined ? [supplyRemark('WARM_UP_NOT_STATED')] : []
  const answer = purityAt(machine, use.flowLpm)
  return { ...answer, remarks: [...warm, ...answer.remarks] }
}

function purityAt({ purityTable }: Concentrator, flowLpm: number): ConcentratorAnswer {
  if (purityTable === undefined) {
    const { o2Fraction } = SOURCE_PURITY.concentrator
    const { min: lowO2Fraction, max: highO2Fraction } = limitsOf(o2Fraction)
    const spread = { lowO2Fraction, highO2Fraction }
    return {
      o2Fraction: medianOf(o2Fraction),
      ...spread,
      remarks: [supplyRemark('PURITY_BY_CLASS', spread)],
    }
  }
  purityTable.forEach((row, i) => {
    const path = `purityTable[${i}].o2Fraction`
    requireWithin({
      code: 'FRACTION_OUT_OF_RANGE',
      path,
      value: row.o2Fraction,
      min: AIR_O2_FRACTION,
      max: 1,
    })
  })
  const above = purityTable.find((row) => row.flowLpm >= flowLpm)
  const below = purityTable.findLast((row) => row.flowLpm <= flowLpm)
  if (above === undefined || below === undefined) {
    const end = above ?? below
    return {
      ...UNKNOWN,
      remarks: [supplyRemark('OUTSIDE_PURITY_TABLE', { flowLpm: end?.flowLpm ?? 0 })],
    }
  }
  const width = above.flowLpm - below.flowLpm
  const share = width === 0 ? 0 : (flowLpm - below.flowLpm) / width
  const o2Fraction = below.o2Fraction + share * (above.o2Fraction - below.o2Fraction)
  return { o2Fraction, lowO2Fraction: o2Fraction, highO2Fraction: o2Fraction, remarks: [] }
}

/** The inhaled fraction with gas of this purity, from the one with pure oxygen: every millilitre that came from the device holds less,
 *  the rest is unchanged. F = air + (F₁ − air)·(purity − air)/(1 − air). Valid 0.2095–1 each, else FRACTION_OUT_OF_RANGE. Exact. */
export function fractionWithPurity(question: {
  readonly fractionWithPureOxygen: number
  readonly purity: number
}): number {
  for (const [path, value] of Object.entries(question))
    requireWithin({ code: 'FRACTION_OUT_OF_RANGE', path, value, min: AIR_O2_FRACTION, max: 1 })
  const added = question.fractionWithPureOxygen - AIR_O2_FRACTION
  return AIR_O2_FRACTION + (added * (question.purity - AIR_O2_FRACTION)) / (1 - AIR_O2_FRACTION)
}

/** A pulse setting asked for as a flow: always no, with its code, whatever the setting; nothing is converted. sources.test.ts. */
export function pulseSettingAsFlow(): { readonly flowLpm: null; readonly remark: SupplyRemark } {
  return { flowLpm: null, remark: supplyRemark('PULSE_IS_NO_FLOW') }
}
