// A room, an ambulance or a tent filling with oxygen: course over time, times and needs, and what a mean does not tell. Leaves out draughts and layers.
import { requireWithin } from '../errors.ts'
import { gasDrawn, type DrawQuestion } from './gas-drawn.ts'
import {
  ENRICHED_O2_FRACTION,
  roomEnrichment,
  roomO2Fraction,
  type EnrichedRoom,
  type RoomAnswer,
} from './room-enrichment.ts'
import { supplyRemark, type SupplyRemark } from './supply-remark.ts'

export const ROOM_KINDS = ['side-room', 'bay', 'ambulance', 'tent'] as const
export type RoomKind = (typeof ROOM_KINDS)[number]

/** Examples to start from, all assumed; a person types the real ones. */
export const ROOM_EXAMPLES: Readonly<
  Record<RoomKind, { readonly volumeM3: number; readonly airChangesPerHour: number }>
> = {
  'side-room': { volumeM3: 30, airChangesPerHour: 6 },
  bay: { volumeM3: 180, airChangesPerHour: 2 },
  ambulance: { volumeM3: 10, airChangesPerHour: 10 },
  tent: { volumeM3: 40, airChangesPerHour: 1 },
}

export interface RoomQuestion extends EnrichedRoom {
  readonly limitO2Fraction?: number
  /** Over which the course is given. */
  readonly minutes: number
  /** Oxygen of a set-up laid aside running, part of `oxygenLpm`; 0 where absent. */
  readonly asideLpm?: number
  /** True where volume and air changes are the examples. */
  readonly isExample?: boolean
}

export interface RoomCourse extends RoomAnswer {
  readonly limitO2Fraction: number
  readonly points: readonly { readonly minute: number; readonly o2Fraction: number }[]
  readonly remarks: readonly SupplyRemark[]
}

const POINTS = 60

/** The course in 60 equal steps from plain air. Valid as roomEnrichment, 1–10 080 min, else DURATION_OUT_OF_RANGE.
 *  Exact as its formula; room-answer.test.ts. */
export function roomCourse(question: RoomQuestion): RoomCourse {
  const time = { path: 'minutes', value: question.minutes, min: 1, max: 10_080, unit: 'min' }
  requireWithin({ ...time, code: 'DURATION_OUT_OF_RANGE' })
  const limitO2Fraction = question.limitO2Fraction ?? ENRICHED_O2_FRACTION
  const answer = roomEnrichment({ ...question, limitO2Fraction })
  const points = Array.from({ length: POINTS + 1 }, (_, i) => {
    const minute = (question.minutes * i) / POINTS
    return { minute, o2Fraction: roomO2Fraction(question, minute) }
  })
  return {
    ...answer,
    limitO2Fraction,
    points,
    remarks: remarksOf(question, answer, limitO2Fraction),
  }
}

/** Oxygen that a set-up gives to the room when it is laid aside running, L/min: all that it draws. Valid as gasDrawn, else DomainError.
 *  room-answer.test.ts. */
export function asideFlowLpm(draw: DrawQuestion): number {
  return gasDrawn(draw).oxygenLpm
}

function remarksOf(
  question: RoomQuestion,
  { steadyO2Fraction, minutesToLimit }: RoomAnswer,
  limitO2Fraction: number,
): readonly SupplyRemark[] {
  const { asideLpm = 0 } = question
  return [
    ...(minutesToLimit === null
      ? [supplyRemark('STAYS_BELOW_LIMIT', { limitO2Fraction })]
      : [
          supplyRemark('ABOVE_ENRICHED_LIMIT', { steadyO2Fraction, limitO2Fraction }),
          supplyRemark('REACHES_LIMIT', { limitO2Fraction, minutes: minutesToLimit }),
        ]),
    ...(question.airChangesPerHour === 0 ? [supplyRemark('NO_VENTILATION')] : []),
    ...(asideLpm > 0 ? [supplyRemark('ASIDE_RUNNING', { flowLpm: asideLpm })] : []),
    supplyRemark('ROOM_IS_A_MEAN'),
    supplyRemark('NEAR_FIELD_HIGHER'),
    ...(question.isExample === true ? [supplyRemark('ROOM_DEFAULTS_ASSUMED')] : []),
  ]
}
