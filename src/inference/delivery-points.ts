// The delivered fraction of one set-up over a sample of what is not known: breath, face, interface, meter. Common numbers for every set-up.
import type { DeliveredStream } from '../kit/delivered-stream.ts'
import { deliveredStream } from '../kit/delivered-stream.ts'
import type { FamilyId, FitId } from '../kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import { UNCHECKED_WIDENING } from '../kit/interface-family.ts'
import type { InterfaceFamily } from '../kit/interface-family.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { SourceRow, FlowStep } from '../kit/source-row.ts'
import { peakInspiratoryFlowLpmBtps } from '../delivery/breath.ts'
import { effectiveO2Fraction } from '../delivery/delivered-breath.ts'
import type { DeliveryBody, InterfaceDraw } from '../delivery/delivery-body.ts'
import type { Network } from '../delivery/network.ts'
import type { PeriodicSolver } from '../delivery/periodic.ts'
import { setUpNetwork } from '../delivery/set-up-network.ts'
import { assert } from '../errors.ts'
import { AIR_O2_FRACTION } from '../units/constants.ts'
import { lpmFromLps } from '../units/flow.ts'
import { normalQuantile } from '../units/normal.ts'

/** One sample of everything that shapes delivery; the u-numbers lie in (0, 1). */
export interface DeliveryPoint {
  readonly body: DeliveryBody
  readonly fit: FitId
  readonly interfaceDraw: InterfaceDraw
  readonly meterU: number
  readonly secondMeterU: number
  readonly purityU: number
  readonly entrainmentU: number
  /** What the model does not explain, one number for each family so that families err apart. */
  readonly modelU: (family: FamilyId) => number
}

export interface DeliverySample {
  readonly effectiveO2Fraction: Float64Array
  readonly demandMarginLpm: Float64Array
  readonly bagRunsEmpty: Uint8Array
  readonly oxygenUsedLpm: Float64Array
}

/** Delivered sample of a set-up, one value for each point; null stands for room air. */
export function deliverySample(
  solver: PeriodicSolver,
  points: readonly DeliveryPoint[],
  setUp: SetUp | null,
  barometricKpa: number,
): DeliverySample {
  const n = points.length
  const sample: DeliverySample = {
    effectiveO2Fraction: new Float64Array(n).fill(AIR_O2_FRACTION),
    demandMarginLpm: new Float64Array(n),
    bagRunsEmpty: new Uint8Array(n),
    oxygenUsedLpm: new Float64Array(n),
  }
  if (setUp === null) return sample
  points.forEach((point, i) => {
    const placed = placeSetUp(setUp, point, barometricKpa)
    const { network, sourceO2Fraction } = placed
    const computed = effectiveO2Fraction(solver, {
      network,
      breath: point.body.breath,
      sourceO2Fraction,
    })
    sample.effectiveO2Fraction[i] = withModelError(
      computed,
      sourceO2Fraction,
      INTERFACE_FAMILIES[setUp.family],
      point,
    )
    sample.demandMarginLpm[i] =
      lpmFromLps(network.deviceFlowLps + network.outerDeviceFlowLps) -
      peakInspiratoryFlowLpmBtps(point.body.breath)
    sample.bagRunsEmpty[i] = network.bag !== null && solver.bag.runsEmpty ? 1 : 0
    sample.oxygenUsedLpm[i] = placed.oxygenUsedLpm
  })
  return sample
}

export interface PlacedSetUp {
  readonly network: Network
  readonly sourceO2Fraction: number
  readonly oxygenUsedLpm: number
}

/** The pockets that a set-up forms on one sampled patient, with the gas that feeds them. */
export function placeSetUp(setUp: SetUp, point: DeliveryPoint, barometricKpa: number): PlacedSetUp {
  const family = INTERFACE_FAMILIES[setUp.family]
  const size = family.sizes.find((one) => one.id === setUp.size)
  assert(size !== undefined, 'set-up names a size of its family')
  const stream = streamOf(
    setUp.source,
    setUp.flow,
    setUp.setO2Fraction,
    family,
    point,
    point.meterU,
    barometricKpa,
  )
  const over = setUp.over === null ? null : overOf(setUp, setUp.over, point, barometricKpa)
  const network = setUpNetwork({
    family,
    size,
    fit: point.fit,
    stream,
    over,
    body: point.body,
    draw: point.interfaceDraw,
  })
  return {
    network,
    sourceO2Fraction: stream.sourceO2Fraction,
    oxygenUsedLpm: stream.oxygenUsedLpm + (over?.stream.oxygenUsedLpm ?? 0),
  }
}

function overOf(
  setUp: SetUp,
  over: NonNullable<SetUp['over']>,
  point: DeliveryPoint,
  barometricKpa: number,
): { readonly family: InterfaceFamily; readonly stream: DeliveredStream } {
  const family = INTERFACE_FAMILIES[over.family]
  return {
    family,
    stream: streamOf(
      setUp.source,
      over.flow,
      null,
      family,
      point,
      point.secondMeterU,
      barometricKpa,
    ),
  }
}

function streamOf(
  source: SourceRow,
  flow: FlowStep,
  setO2Fraction: number | null,
  family: InterfaceFamily,
  point: DeliveryPoint,
  meterU: number,
  barometricKpa: number,
): DeliveredStream {
  return deliveredStream(
    { source, flow, setO2Fraction, entrainsAir: family.entrainsAir, barometricKpa },
    { meter: meterU, purity: point.purityU, entrainment: point.entrainmentU },
  )
}

/**
 * What the model leaves unexplained: a normal error on the logit of the share (F − air)/(Fs − air), with the family's relative
 * spread, so that no draw leaves the gas at hand. Families that no measurement checks are widened by UNCHECKED_WIDENING.
 */
function withModelError(
  computed: number,
  sourceO2Fraction: number,
  family: InterfaceFamily,
  point: DeliveryPoint,
): number {
  const width = sourceO2Fraction - AIR_O2_FRACTION
  const share = width > 0 ? (computed - AIR_O2_FRACTION) / width : 0
  if (share <= 0 || share >= 1) return computed
  const sd = family.modelSd.value * (family.isChecked ? 1 : UNCHECKED_WIDENING)
  const odds = (share / (1 - share)) * Math.exp(sd * normalQuantile(point.modelU(family.id)))
  return AIR_O2_FRACTION + width * (odds / (1 + odds))
}
