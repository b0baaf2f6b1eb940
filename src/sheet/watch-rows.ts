// When somebody is called, what the fraction depends on, and how long a sheet counts, as rows with conditions. Leaves out their text.
import type { BreathingState } from '../patient/case.ts'
import { ALWAYS } from './step.ts'
import type { Row } from './step.ts'

const SEEN = { known: 'seen', source: 'ODriscoll2017' } as const
const SCORE = { known: 'seen', source: 'RCP2017' } as const
const USUAL = { known: 'common-practice' } as const
const DERIVED = { known: 'derived' } as const

const WITH_OXYGEN_GOAL = { goal: ['saturation', 'fraction', 'as-much-as-possible'] } as const

/** What is reason to call for help. */
export const CALL_ROWS: readonly Row[] = [
  {
    id: 'CALL_BELOW_GOAL',
    when: [{ goal: ['saturation'], isOximeterTrusted: [true] }],
    ...SEEN,
    values: ['goalLowPercent'],
  },
  {
    id: 'CALL_FALL_OF_THREE',
    when: [{ goal: ['saturation'], isOximeterTrusted: [true] }],
    ...SEEN,
  },
  { id: 'CALL_MORE_OXYGEN', when: [WITH_OXYGEN_GOAL], ...SEEN },
  { id: 'CALL_RATE_ADULT', when: [{ ...WITH_OXYGEN_GOAL, isAdult: [true] }], ...SCORE },
  { id: 'CALL_CHILD', when: [{ isAdult: [false] }], ...USUAL },
  {
    id: 'CALL_HOLDS_NO_MORE',
    when: [{ hasHoldRate: [true] }],
    ...DERIVED,
    values: ['holdsPerMin'],
  },
  { id: 'CALL_DROWSY', when: [WITH_OXYGEN_GOAL], ...USUAL },
  { id: 'CALL_CARBON_DIOXIDE', when: [{ isAtRisk: [true] }], ...USUAL },
  { id: 'CALL_NECK', when: [{ isBypassed: [true] }, { hasTube: [true] }], ...USUAL },
  { id: 'CALL_NOT_RELIEVED', when: [{ goal: ['comfort'] }], ...USUAL },
]

/** What moves the effective fraction away from the middle. */
export const DEPENDS_ROWS: readonly Row[] = [
  { id: 'DEPENDS_BREATHING', when: ALWAYS, ...DERIVED },
  { id: 'DEPENDS_MOUTH', when: [{ opening: ['nose'] }], ...DERIVED },
  { id: 'DEPENDS_FIT', when: [{ opening: ['face'] }], ...DERIVED },
  { id: 'DEPENDS_OPEN_TENT', when: [{ family: ['face-tent'] }], ...DERIVED },
  {
    id: 'DEPENDS_STREAM',
    when: [{ feed: ['wide-bore'], opening: ['neck', 'face'] }, { hasValve: [true] }],
    ...DERIVED,
  },
  { id: 'DEPENDS_BOX', when: [{ opening: ['head'] }], ...DERIVED },
  { id: 'DEPENDS_METER', when: [{ isFlush: [false] }], ...DERIVED },
  { id: 'DEPENDS_FLUSH', when: [{ isFlush: [true] }], ...DERIVED },
  { id: 'DEPENDS_CONCENTRATOR', when: [{ source: ['concentrator'] }], ...DERIVED },
]

export interface ValidityRow extends Row {
  readonly minutes: number
}

const UNSTEADY: readonly BreathingState[] = [
  'severe-distress',
  'fast-and-shallow',
  'copd-exacerbation',
  'asthma',
]
const HOUR = 60

/** The sheet counts for the shortest time of those that apply. Local policy comes first. */
export const VALIDITY_ROWS: readonly ValidityRow[] = [
  // Stable on oxygen: saturation and score four times a day.
  { id: 'VALID_FOUR_TIMES_A_DAY', minutes: 6 * HOUR, when: [WITH_OXYGEN_GOAL], ...SEEN },
  // Blood gas within 30–60 minutes where carbon dioxide may be retained.
  {
    id: 'VALID_UNTIL_BLOOD_GAS',
    minutes: HOUR,
    when: [{ isAtRisk: [true], goal: ['saturation', 'fraction', 'as-much-as-possible'] }],
    ...SEEN,
  },
  // Patient-controlled opioids: oximetry every two hours.
  { id: 'VALID_UNDER_OPIOIDS', minutes: 2 * HOUR, when: [{ isUnderOpioids: [true] }], ...SEEN },
  { id: 'VALID_UNSTEADY', minutes: HOUR, when: [{ state: UNSTEADY }], ...USUAL },
  {
    id: 'VALID_WHILE_CRITICAL',
    minutes: HOUR,
    when: [{ goal: ['as-much-as-possible'] }],
    ...USUAL,
  },
  {
    id: 'VALID_WITHOUT_READING',
    minutes: HOUR,
    when: [{ isReadingUsed: [false], goal: ['saturation'] }],
    ...USUAL,
  },
  { id: 'VALID_SMALL_CHILD', minutes: 4 * HOUR, when: [{ isUnderTwoYears: [true] }], ...USUAL },
  { id: 'VALID_COMFORT', minutes: 24 * HOUR, when: [{ goal: ['comfort'] }], ...USUAL },
]
