// A whole transfer: oxygen needed with its reserve, cylinders from the store, when each is changed, the worst case, a lift that stands still, what to check. Leaves out the patient's course.
import { DomainError, isDomainError, problemOf } from '../errors.ts'
import type { MeterScale } from '../kit/source-row.ts'
import { meterOf } from '../kit/flow-steps.ts'
import type { Shelf } from '../kit/shelf.ts'
import type { BodySize } from '../kit/sizes-for.ts'
import type { Case, SetUpOnNow } from '../patient/case.ts'
import { requireBarometricKpa } from '../physics/atmosphere.ts'
import { chooseCylinders, type CylinderChoice } from './choose-cylinders.ts'
import type { BesideFlows } from './gas-drawn.ts'
import { mayEnter, scannerAnswer, type ScannerAnswer, type ScannerKit } from './scanner-rule.ts'
import type { ChainTaken } from './chain-taken.ts'
import type { StoreRow } from './store.ts'
import { supplyRemark, type SupplyRemark } from './supply-remark.ts'
import {
  legAnswer,
  legChain,
  transportLegOf,
  type LegAnswer,
  type PlannedLeg,
} from './transfer-leg.ts'
import { TRANSFER_CHECKS } from './transfer-checks.ts'
import {
  changeOvers,
  DEFAULT_RESERVE,
  LIFT_STOP_MINUTES,
  transportNeed,
  withDelay,
  type ReserveRule,
  type TransportLeg,
  type TransportNeed,
} from './transport.ts'

export interface TransferQuestion {
  /** On the patient when the way begins; null is room air. */
  readonly setUp: SetUpOnNow | null
  readonly beside?: BesideFlows
  readonly legs: readonly PlannedLeg[]
  readonly reserve?: ReserveRule
  /** Where the way begins. */
  readonly barometricKpa: number
  readonly store: readonly StoreRow[]
  /** Cylinders of this place only; all where absent. */
  readonly place?: string
  /** Pressure left in each cylinder on purpose. */
  readonly leftGaugeKpa: number
  readonly gaugeErrorKpa?: number
  readonly readAtC: number
  readonly usedAtC?: number
  readonly scanner?: ScannerKit
  readonly shelf: Shelf
  readonly body: BodySize
  /** With it the inspired fraction of each leg is modelled. */
  readonly case?: Case
}

/** One cylinder in use; minutes from the start of the way. */
export interface CylinderRun {
  readonly cylinder: number
  readonly rowId: string
  readonly label: string
  readonly fromMinute: number
  readonly untilMinute: number
}

/** The cylinders one after the other, used on beyond the way at the highest draw until all are down to what is left in them. */
export interface Course {
  readonly runs: readonly CylinderRun[]
  readonly wayEndsMinute: number
  /** When each but the last is changed, and when the last is used up; null: nothing is drawn. */
  readonly changeAtMinutes: readonly number[]
  readonly emptyAtMinute: number | null
  /** Oxygen of the way itself that no cylinder holds. */
  readonly missingL: number
}

export interface TransferPlan {
  readonly reserve: ReserveRule
  readonly need: TransportNeed
  readonly legs: readonly LegAnswer[]
  readonly choice: CylinderChoice
  readonly course: Course
  /** Every leg at its next step up, with the same cylinders. */
  readonly worstCourse: Course
  readonly worstMissingL: number
  /** Null where no leg goes to a scanner on carried gas. */
  readonly scanner: ScannerAnswer | null
  readonly remarks: readonly SupplyRemark[]
  readonly checks: readonly SupplyRemark[]
  /** The course over minutes of the patient's saturation is not computed yet. */
  readonly saturationPath: null
}

/** Litres, cylinders and times of a whole way: legs as legAnswer, need as transportNeed, cylinders as chooseCylinders, each with its range
 *  and DomainError, the path of a leg's problem begins with `legs[i]`. At least one leg, else COUNT_OUT_OF_RANGE. Exact arithmetic over
 *  usableContents [Stewart1991]; transfer.test.ts. */
export function planTransfer(question: TransferQuestion): TransferPlan {
  requireBarometricKpa(question.barometricKpa)
  const reserve = question.reserve ?? DEFAULT_RESERVE
  const legs = answeredLegs(question)
  const transportLegs = legs.map(transportLegOf)
  const need = transportNeed(transportLegs, reserve)
  const { choice, isInside } = choiceFor(question, need, transportLegs)
  const cylinders = choice.picks.flatMap(({ row, count, usableEachL }) =>
    Array.from({ length: count }, () => ({ row, usableEachL })),
  )
  const course = courseOf(transportLegs, cylinders)
  const worstLegs = transportLegs.map((leg) => ({
    ...leg,
    drawLpm: leg.worstDrawLpm ?? leg.drawLpm,
  }))
  const worstMissingL = Math.max(0, need.worstNeededL - choice.usableL)
  const scanner = scannerOf(question, legs, isInside)
  return {
    reserve,
    need,
    legs,
    choice,
    course,
    worstCourse: courseOf(worstLegs, cylinders),
    worstMissingL,
    scanner,
    remarks: [
      supplyRemark('LOCAL_POLICY_FIRST'),
      ...(course.missingL > 0
        ? [supplyRemark('RUNS_OUT_ON_THE_WAY', { missingL: course.missingL })]
        : []),
      ...(choice.missingL > 0
        ? [supplyRemark('RESERVE_NOT_COVERED', { missingL: choice.missingL })]
        : []),
      ...(worstMissingL > 0
        ? [supplyRemark('WORST_CASE_NOT_COVERED', { missingL: worstMissingL })]
        : []),
      ...choice.remarks,
      ...(scanner?.remarks ?? []),
      supplyRemark('NOT_COMPUTED_YET'),
    ],
    checks: [
      ...TRANSFER_CHECKS.map((code) => supplyRemark(code)),
      ...(scanner === null ? [] : [supplyRemark('CHECK_MR_ITEMS')]),
    ],
    saturationPath: null,
  }
}

/** The question with what the shelf's best chain says of each leg's set-up, each set-up solved once; typed tubes and bias flows still win.
 *  `solved` keeps chains from one question to the next. Valid as planTransfer. transfer-chain.test.ts. */
export function withChains(
  question: TransferQuestion,
  solved = new Map<string, ChainTaken | undefined>(),
): TransferQuestion {
  const { barometricKpa: startKpa, shelf, body, place } = question
  const known = question.case === undefined ? {} : { case: question.case }
  let { setUp } = question
  const legs = question.legs.map((leg): PlannedLeg => {
    if (leg.setUp !== undefined) setUp = leg.setUp
    const context = { setUp, shelf, body, startKpa, ...known }
    const key = JSON.stringify([setUp, leg.feed, body, startKpa, known, place])
    if (!solved.has(key))
      solved.set(
        key,
        legChain(leg, { ...context, ...(place === undefined ? {} : { wardId: place }) }),
      )
    const chain = solved.get(key)
    return chain === undefined ? leg : { ...leg, chain }
  })
  return { ...question, legs }
}

/** The plan when a leg stands still: same cylinders, later end. Valid index of a leg, else COUNT_OUT_OF_RANGE,
 *  minutes 0–1440, else DURATION_OUT_OF_RANGE. Exact; transfer.test.ts. */
export function whenItStandsStill(
  plan: TransferPlan,
  stop: { readonly legIndex: number; readonly minutes?: number },
): { readonly need: TransportNeed; readonly course: Course; readonly isCovered: boolean } {
  const minutes = stop.minutes ?? LIFT_STOP_MINUTES
  const legs = withDelay(plan.legs.map(transportLegOf), { legIndex: stop.legIndex, minutes })
  const cylinders = plan.choice.picks.flatMap(({ row, count, usableEachL }) =>
    Array.from({ length: count }, () => ({ row, usableEachL })),
  )
  const course = courseOf(legs, cylinders)
  return { need: transportNeed(legs, plan.reserve), course, isCovered: course.missingL === 0 }
}

function answeredLegs(question: TransferQuestion): readonly LegAnswer[] {
  const { barometricKpa: startKpa, shelf, body } = question
  const known = question.case === undefined ? {} : { case: question.case }
  let setUp = question.setUp
  let beside = question.beside ?? {}
  let minute = 0
  return question.legs.map((leg, i) => {
    if (leg.setUp !== undefined) setUp = leg.setUp
    if (leg.beside !== undefined) beside = leg.beside
    try {
      const answer = legAnswer(leg, minute, { setUp, beside, startKpa, shelf, body, ...known })
      minute = answer.untilMinute
      return answer
    } catch (thrown) {
      if (!isDomainError(thrown)) throw thrown
      throw new DomainError({ ...problemOf(thrown), path: `legs[${i}].${thrown.path}` })
    }
  })
}

/** To a scanner only what may enter; where that does not suffice, anything, and gas stays outside. */
function choiceFor(
  question: TransferQuestion,
  need: TransportNeed,
  legs: readonly TransportLeg[],
): { readonly choice: CylinderChoice; readonly isInside: boolean } {
  const { store, readAtC, usedAtC, leftGaugeKpa, gaugeErrorKpa, barometricKpa, place } = question
  const choose = (isMrConditionalOnly: boolean): CylinderChoice =>
    chooseCylinders({
      store,
      neededL: need.neededL,
      drawLpmMax: Math.max(...legs.map((leg) => leg.worstDrawLpm ?? leg.drawLpm)),
      readAtC,
      isMrConditionalOnly,
      use: {
        barometricKpa,
        leftGaugeKpa,
        ...(usedAtC === undefined ? {} : { usedAtC }),
        ...(gaugeErrorKpa === undefined ? {} : { gaugeErrorKpa }),
      },
      ...(place === undefined ? {} : { place }),
    })
  if (!carriesToScanner(question) || !mayEnter(question.scanner))
    return { choice: choose(false), isInside: false }
  const inside = choose(true)
  return inside.missingL === 0
    ? { choice: inside, isInside: true }
    : { choice: choose(false), isInside: false }
}

function carriesToScanner({ legs }: TransferQuestion): boolean {
  return legs.some(({ kind, feed }) => kind === 'scanner' && feed !== 'place')
}

function scannerOf(
  question: TransferQuestion,
  legs: readonly LegAnswer[],
  isCylinderConditional: boolean,
): ScannerAnswer | null {
  const leg = legs.find((one) => one.leg.kind === 'scanner' && one.leg.feed !== 'place')
  if (leg === undefined || leg.setUp === null) return null
  const meter: MeterScale | null = meterOf(leg.setUp.source)
  const { chain } = leg.leg
  return scannerAnswer({
    kit: question.scanner,
    chain: chain?.kind === 'chain' ? chain : null,
    isCylinderConditional,
    flowLpm: leg.carriedLpm,
    barometricKpa: leg.barometricKpa,
    meter,
  })
}

/** A leg is a day at most; as many follow as the cylinders may last. */
const USED_ON_MINUTES = 1440

function courseOf(
  legs: readonly TransportLeg[],
  cylinders: readonly { readonly row: StoreRow; readonly usableEachL: number }[],
): Course {
  const wayEndsMinute = legs.reduce((sum, leg) => sum + leg.minutes + (leg.delayMinutes ?? 0), 0)
  const usable = cylinders.map(({ usableEachL }) => usableEachL)
  const { missingL } = changeOvers(legs, usable)
  const drawLpm = Math.max(...legs.map((leg) => leg.drawLpm))
  if (drawLpm === 0)
    return { runs: [], wayEndsMinute, changeAtMinutes: [], emptyAtMinute: null, missingL }
  const days = Math.ceil(
    usable.reduce((sum, litres) => sum + litres, 0) / drawLpm / USED_ON_MINUTES,
  )
  const usedOn = Array.from({ length: days + 1 }, (): TransportLeg => {
    return { kind: 'corridor', minutes: USED_ON_MINUTES, drawLpm }
  })
  const { uses } = changeOvers([...legs, ...usedOn], usable)
  const runs = uses.map(({ cylinderIndex, fromMinute, untilMinute }) => {
    const row = cylinders[cylinderIndex]?.row
    return {
      cylinder: cylinderIndex + 1,
      rowId: row?.id ?? '',
      label: row?.label ?? '',
      fromMinute,
      untilMinute,
    }
  })
  return {
    runs,
    wayEndsMinute,
    changeAtMinutes: runs.slice(0, -1).map(({ untilMinute }) => untilMinute),
    emptyAtMinute: runs.at(-1)?.untilMinute ?? 0,
    missingL,
  }
}
