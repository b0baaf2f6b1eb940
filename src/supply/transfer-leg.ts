// One leg of a transfer worked out: what its set-up draws at the pressure there, at the next step up, and what the patient inhales as far as modelled. Leaves out cylinders.
import { requireWithin } from '../errors.ts'
import { nextStep } from '../kit/flow-steps.ts'
import { marksLpm } from '../kit/flow-steps.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Shelf } from '../kit/shelf.ts'
import type { BodySize } from '../kit/sizes-for.ts'
import type { Case, SetUpOnNow } from '../patient/case.ts'
import { barometricPressureKpa, requireBarometricKpa } from '../physics/atmosphere.ts'
import { bedsideBreath } from '../planning/bedside-breath.ts'
import { setUpOfOnNow } from '../planning/on-now.ts'
import { BODY_WATER_VAPOUR_KPA } from '../units/constants.ts'
import { chainTaken, type ChainTaken } from './chain-taken.ts'
import { gasDrawn, type BesideFlows, type GasDrawn } from './gas-drawn.ts'
import { supplyRemark, type SupplyRemark } from './supply-remark.ts'
import type { LegKind, TransportLeg } from './transport.ts'

export interface PlannedLeg {
  readonly kind: LegKind
  readonly minutes: number
  readonly delayMinutes?: number
  /** From this leg on; as before where absent, null is room air. */
  readonly setUp?: SetUpOnNow | null
  readonly beside?: BesideFlows
  /** `place`: an outlet of the vehicle or the room feeds it. Carried cylinders where absent. */
  readonly feed?: 'carried' | 'place'
  /** Of the ground, or of the cabin in the air; as at the start where both are absent. */
  readonly altitudeM?: number
  readonly barometricPressureKpa?: number
  /** What withChains found for the set-up of this leg; nothing is taken from a chain where absent. */
  readonly chain?: ChainTaken
}

export interface LegContext {
  readonly setUp: SetUpOnNow | null
  readonly beside: BesideFlows
  readonly startKpa: number
  readonly shelf: Shelf
  readonly body: BodySize
  /** With it the inspired fraction of each leg is modelled. */
  readonly case?: Case
}

export interface LegAnswer {
  readonly leg: PlannedLeg
  readonly fromMinute: number
  readonly untilMinute: number
  readonly barometricKpa: number
  /** Null: room air. */
  readonly setUp: SetUp | null
  readonly drawn: GasDrawn | null
  /** Taken from the carried cylinders. */
  readonly carriedLpm: number
  readonly worstCarriedLpm: number
  readonly effectiveO2Fraction: number | null
  /** Inspired oxygen pressure against the start, at an unchanged fraction. */
  readonly inspiredPo2Share: number
  readonly remarks: readonly SupplyRemark[]
}

/** Change of pressure that is worth a word, kPa: weather alone makes as much. */
const PRESSURE_SAID_KPA = 3

/** One leg at the air pressure there: what is drawn, at the next step up too, and the inspired fraction where a case is known. Valid as
 *  gasDrawn; minutes 0–1440, else DURATION_OUT_OF_RANGE. transfer.test.ts. */
export function legAnswer(leg: PlannedLeg, fromMinute: number, context: LegContext): LegAnswer {
  for (const [path, value] of Object.entries({
    minutes: leg.minutes,
    delayMinutes: leg.delayMinutes ?? 0,
  }))
    requireWithin({ code: 'DURATION_OUT_OF_RANGE', path, value, min: 0, max: 1440, unit: 'min' })
  const barometricKpa = pressureOf(leg, context)
  const untilMinute = fromMinute + leg.minutes + (leg.delayMinutes ?? 0)
  const inspiredPo2Share =
    (barometricKpa - BODY_WATER_VAPOUR_KPA) / (context.startKpa - BODY_WATER_VAPOUR_KPA)
  const place = { leg, fromMinute, untilMinute, barometricKpa, inspiredPo2Share }
  const pressureRemarks = pressureRemarksOf(place, context)
  if (context.setUp === null) {
    const nothing = { setUp: null, drawn: null, carriedLpm: 0, worstCarriedLpm: 0 }
    return { ...place, ...nothing, effectiveO2Fraction: null, remarks: pressureRemarks }
  }
  const onNow = carriedOnNow(context.setUp, leg)
  const setUp = setUpOfOnNow(onNow, context.shelf, context.body)
  const { beside } = context
  const drawn = gasDrawn({ setUp, barometricKpa, beside })
  const up = stepUp(setUp)
  const worst = up === null ? drawn : gasDrawn({ setUp: up, barometricKpa, beside })
  const isCarried = leg.feed !== 'place' && drawn.isFromStore
  return {
    ...place,
    setUp,
    drawn,
    carriedLpm: isCarried ? drawn.oxygenLpm : 0,
    worstCarriedLpm: isCarried ? Math.max(drawn.oxygenLpm, worst.oxygenLpm) : 0,
    effectiveO2Fraction: fractionOf(setUp, barometricKpa, context),
    remarks: [
      ...drawn.remarks,
      ...(onNow === context.setUp ? [] : [supplyRemark('MOVED_TO_CYLINDER')]),
      ...(hasStep(onNow, context.shelf) ? [] : [supplyRemark('STEP_NOT_ON_REGULATOR')]),
      ...(up === null ? [supplyRemark('NO_HIGHER_STEP')] : []),
      ...(leg.feed === 'place' ? [supplyRemark('PLACE_SUPPLY_TO_CHECK')] : []),
      ...(drawn.isFromStore ? [] : [supplyRemark('CONCENTRATOR_NEEDS_POWER')]),
      ...pressureRemarks,
    ],
  }
}

/** The chain that the shelf builds for a leg's set-up as it is carried; undefined for room air. Valid as chainTaken. */
export function legChain(
  leg: PlannedLeg,
  context: Pick<LegContext, 'setUp' | 'shelf' | 'body' | 'case' | 'startKpa'> & {
    readonly wardId?: string
  },
): ChainTaken | undefined {
  const { setUp: onNow, shelf, body, wardId } = context
  if (onNow === null) return undefined
  const airway = context.case?.patient.airway
  return chainTaken({
    setUp: setUpOfOnNow(carriedOnNow(onNow, leg), shelf, body),
    shelf,
    patient: { ...body, ...(airway === undefined ? {} : { airway }) },
    barometricKpa: context.startKpa,
    ...(wardId === undefined ? {} : { wardId }),
  })
}

/** The leg as the reckoning of needs and change-overs takes it. */
export function transportLegOf(answer: LegAnswer): TransportLeg {
  const { leg, carriedLpm, worstCarriedLpm } = answer
  return {
    kind: leg.kind,
    minutes: leg.minutes,
    ...(leg.delayMinutes === undefined ? {} : { delayMinutes: leg.delayMinutes }),
    drawLpm: carriedLpm,
    worstDrawLpm: worstCarriedLpm,
  }
}

function pressureOf(leg: PlannedLeg, { startKpa }: LegContext): number {
  if (leg.barometricPressureKpa !== undefined)
    return requireBarometricKpa(leg.barometricPressureKpa, 'barometricPressureKpa')
  return leg.altitudeM === undefined ? startKpa : barometricPressureKpa(leg.altitudeM)
}

/** A wall meter stays on the wall: on the way its flow comes from a cylinder's regulator. */
function carriedOnNow(onNow: SetUpOnNow, leg: PlannedLeg): SetUpOnNow {
  const isWall = onNow.sourceKind === 'wall-flowmeter' || onNow.sourceKind === 'two-flowmeters'
  return isWall && leg.feed !== 'place' ? { ...onNow, sourceKind: 'cylinder-regulator' } : onNow
}

function hasStep(onNow: SetUpOnNow, shelf: Shelf): boolean {
  const { flowLpm, sourceKind } = onNow
  if (sourceKind !== 'cylinder-regulator') return true
  const regulators = shelf.sources.filter(({ kind }) => kind === sourceKind)
  return regulators.some((row) =>
    flowLpm === 'flush'
      ? 'meter' in row && row.meter.flush !== null
      : marksLpm(row).some((mark) => Math.abs(mark - flowLpm) < 1e-9),
  )
}

/** The same set-up at the next flow its source has; the mask over a cannula stays. Null at the end of the scale. */
function stepUp(setUp: SetUp): SetUp | null {
  const flow = nextStep(setUp.source, setUp.flow, 'up')
  return flow === null ? null : { ...setUp, flow }
}

function fractionOf(setUp: SetUp, barometricKpa: number, context: LegContext): number | null {
  if (context.case === undefined) return null
  const there: Case = { ...context.case, site: { barometricPressureKpa: barometricKpa } }
  return bedsideBreath({ case: there, setUp }).breath.effectiveO2Fraction
}

function pressureRemarksOf(
  place: Pick<LegAnswer, 'leg' | 'barometricKpa' | 'inspiredPo2Share'>,
  context: LegContext,
): readonly SupplyRemark[] {
  const { barometricKpa, inspiredPo2Share } = place
  if (Math.abs(barometricKpa - context.startKpa) < PRESSURE_SAID_KPA) return []
  return [
    supplyRemark(inspiredPo2Share < 1 ? 'THIN_AIR' : 'DENSER_AIR', {
      barometricKpa,
      inspiredPo2Share,
    }),
    ...(place.leg.barometricPressureKpa === undefined
      ? [supplyRemark('CABIN_PRESSURE_ASSUMED', { altitudeM: place.leg.altitudeM ?? 0 })]
      : []),
    ...(context.case === undefined ? [supplyRemark('FRACTION_ON_THE_WAY_NOT_MODELLED')] : []),
  ]
}
