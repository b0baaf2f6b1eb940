// Oxygen that a transfer needs: legs, delays, reserve, worst case, and cylinders used one after the other. Leaves out which cylinders to choose.
import { assert, requireWithin } from '../errors.ts'

export const LEG_KINDS = ['lift', 'corridor', 'scanner', 'ambulance', 'helicopter'] as const
export type LegKind = (typeof LEG_KINDS)[number]

export interface TransportLeg {
  readonly kind: LegKind
  readonly minutes: number
  readonly delayMinutes?: number
  /** What the set-up of this leg draws at the pressure of this leg. */
  readonly drawLpm: number
  /** What it draws at the next step up; as drawn where absent. */
  readonly worstDrawLpm?: number
}

/** Oxygen for the larger of factor × planned time and planned time + extra minutes. Local policy comes first. */
export interface ReserveRule {
  readonly factor: number
  readonly extraMinutes: number
}

/** Twice the planned time or 30 minutes more, whichever is more (secondary: teaching text; memory: guideline wording). */
export const DEFAULT_RESERVE: ReserveRule = { factor: 2, extraMinutes: 30 }

/** A lift that stands still, minutes. */
export const LIFT_STOP_MINUTES = 20

export interface TransportNeed {
  readonly plannedMinutes: number
  readonly reservedMinutes: number
  readonly plannedL: number
  readonly neededL: number
  /** The same with every leg at its next step up. */
  readonly worstPlannedL: number
  readonly worstNeededL: number
}

/** Litres for the way and its reserve; the reserve time is drawn at the highest draw of any leg. Valid at least one leg, each 0–1440
 *  min, 0–300 L/min, factor 1–10, extra 0–1440 min, else DomainError. Worked examples in transport.test.ts. */
export function transportNeed(
  legs: readonly TransportLeg[],
  rule: ReserveRule = DEFAULT_RESERVE,
): TransportNeed {
  within('COUNT_OUT_OF_RANGE', 'legs', legs.length, 1, 100)
  within('VALUE_OUT_OF_RANGE', 'factor', rule.factor, 1, 10)
  within('DURATION_OUT_OF_RANGE', 'extraMinutes', rule.extraMinutes, 0, 1440)
  legs.forEach(requireLeg)
  const plannedMinutes = legs.reduce((total, leg) => total + minutesOf(leg), 0)
  const reservedMinutes = Math.max(rule.factor * plannedMinutes, plannedMinutes + rule.extraMinutes)
  const extraMinutes = reservedMinutes - plannedMinutes
  const litres = (draw: (leg: TransportLeg) => number): readonly [number, number] => {
    const plannedL = legs.reduce((total, leg) => total + minutesOf(leg) * draw(leg), 0)
    return [plannedL, plannedL + extraMinutes * Math.max(...legs.map(draw))]
  }
  const [plannedL, neededL] = litres((leg) => leg.drawLpm)
  const [worstPlannedL, worstNeededL] = litres(worstOf)
  return { plannedMinutes, reservedMinutes, plannedL, neededL, worstPlannedL, worstNeededL }
}

/** The legs when one of them, a lift say, stands still. Valid index of a leg and minutes 0–1440, else COUNT_ or DURATION_OUT_OF_RANGE. */
export function withDelay(
  legs: readonly TransportLeg[],
  delay: { readonly legIndex: number; readonly minutes?: number },
): readonly TransportLeg[] {
  within('COUNT_OUT_OF_RANGE', 'legIndex', delay.legIndex, 0, legs.length - 1)
  const minutes = delay.minutes ?? LIFT_STOP_MINUTES
  return legs.map((leg, i) =>
    i === delay.legIndex ? { ...leg, delayMinutes: (leg.delayMinutes ?? 0) + minutes } : leg,
  )
}

export interface ChangeOver {
  readonly cylinderIndex: number
  readonly fromMinute: number
  /** When it is used up to its reserve; the end of the way for the last one in use. */
  readonly untilMinute: number
}

export interface ChangeOvers {
  readonly uses: readonly ChangeOver[]
  /** Oxygen wanted that no cylinder holds. */
  readonly missingL: number
}

/** Cylinders used in the order given, each to its usable litres, over the planned way. Valid as transportNeed, litres ≥ 0. Exact:
 *  litres used and missing add up to the planned litres. */
export function changeOvers(
  legs: readonly TransportLeg[],
  usableL: readonly number[],
): ChangeOvers {
  legs.forEach(requireLeg)
  usableL.forEach((litres, i) => {
    within('CONTENT_OUT_OF_RANGE', `usableL[${i}]`, litres, 0, 100_000)
  })
  const uses: ChangeOver[] = []
  let cylinderIndex = 0
  let leftL = usableL[0] ?? 0
  let sinceMinute = 0
  let minute = 0
  let missingL = 0
  for (const leg of legs) {
    let restMinutes = minutesOf(leg)
    while (leg.drawLpm > 0 && restMinutes > 0 && cylinderIndex < usableL.length) {
      const lasted = Math.min(restMinutes, leftL / leg.drawLpm)
      minute += lasted
      restMinutes -= lasted
      leftL -= lasted * leg.drawLpm
      if (restMinutes <= 0) break
      uses.push({ cylinderIndex, fromMinute: sinceMinute, untilMinute: minute })
      sinceMinute = minute
      cylinderIndex += 1
      leftL = usableL[cylinderIndex] ?? 0
    }
    minute += restMinutes
    if (cylinderIndex >= usableL.length) missingL += restMinutes * leg.drawLpm
  }
  if (cylinderIndex < usableL.length)
    uses.push({ cylinderIndex, fromMinute: sinceMinute, untilMinute: minute })
  assert(missingL >= 0, 'supply/transport missing at least 0')
  return { uses, missingL }
}

function minutesOf(leg: TransportLeg): number {
  return leg.minutes + (leg.delayMinutes ?? 0)
}

function worstOf(leg: TransportLeg): number {
  return Math.max(leg.drawLpm, leg.worstDrawLpm ?? leg.drawLpm)
}

function requireLeg(leg: TransportLeg, i: number): void {
  within('DURATION_OUT_OF_RANGE', `legs[${i}].minutes`, leg.minutes, 0, 1440)
  within('DURATION_OUT_OF_RANGE', `legs[${i}].delayMinutes`, leg.delayMinutes ?? 0, 0, 1440)
  within('FLOW_OUT_OF_RANGE', `legs[${i}].drawLpm`, leg.drawLpm, 0, 300)
  within('FLOW_OUT_OF_RANGE', `legs[${i}].worstDrawLpm`, worstOf(leg), 0, 300)
}

function within(
  code:
    | 'COUNT_OUT_OF_RANGE'
    | 'VALUE_OUT_OF_RANGE'
    | 'DURATION_OUT_OF_RANGE'
    | 'FLOW_OUT_OF_RANGE'
    | 'CONTENT_OUT_OF_RANGE',
  path: string,
  value: number,
  min: number,
  max: number,
): void {
  requireWithin({ code, path, value, min, max })
}
