// What a cylinder card answers: clock times with their range, litres, the handbook's rule beside. Leaves out words.
import { barFromKpa, psiFromKpa } from '../../units/pressure.ts'
import { usableContents } from '../../supply/cylinder.ts'
import type { UsableContents } from '../../supply/cylinder.ts'
import { cylinderAnswer } from '../../supply/cylinder-answer.ts'
import type { SupplyRemark } from '../../supply/supply-remark.ts'
import { clockAfter, cylinderClock, handbookMinutes } from '../../supply/duration.ts'
import type { ClockTime } from '../../supply/duration.ts'
import type { CylinderQuestion } from './cylinder-form.ts'
import { daysBetween, minutesBetween, timeOf } from './wall-clock.ts'

export interface CylinderTimes {
  readonly changeAt: ClockTime
  readonly emptyAt: ClockTime
  /** The gauge and the meters wrong together, either way. */
  readonly changeEarliest: ClockTime
  /** Null where the meter, wrong by its full band, might let nothing through. */
  readonly changeLatest: ClockTime | null
  readonly minutesToChange: number
  readonly minutesToEmpty: number
  /** Counted from now, not from the reading; below 0: the time has passed. */
  readonly minutesLeft: number
}

export interface CardAnswer {
  readonly contents: UsableContents
  /** All it holds, down to a flat cylinder. */
  readonly heldL: number
  /** Null where nothing is drawn or nothing can be used. */
  readonly times: CylinderTimes | null
  readonly simpleRuleMinutes: number | null
  readonly factorRuleMinutes: number | null
  /** Handbooks of countries, and what warm and cold do. */
  readonly remarks: readonly SupplyRemark[]
  readonly readMinutesAgo: number
}

/** Other remarks stand in the card in its own words. */
const SHOWN_REMARKS: readonly SupplyRemark['code'][] = [
  'HANDBOOK_DIFFERS',
  'HANDBOOK_HAS_NO_SUCH_SIZE',
  'FILLED_WARM_USED_COLD',
]

/** Days of the clock times are counted from today. */
export function cardAnswer(question: CylinderQuestion, now: Date): CardAnswer {
  const { cylinder, use, drawn } = question
  const contents = usableContents(cylinder, use)
  const isDrawn = drawn.oxygenLpm > 0
  const opened = { ...cylinder, isValveOpen: true }
  return {
    contents,
    heldL: usableContents(opened, { barometricKpa: use.barometricKpa, leftGaugeKpa: 0 }).usableL,
    times: isDrawn && contents.nothing === null ? timesOf(question, contents, now) : null,
    simpleRuleMinutes: isDrawn ? simpleMinutes(question) : null,
    factorRuleMinutes: isDrawn ? factorMinutes(question) : null,
    remarks: cylinderAnswer({ cylinder, use, drawLpm: drawn.oxygenLpm }).remarks.filter(
      ({ code }) => SHOWN_REMARKS.includes(code),
    ),
    readMinutesAgo: Math.max(0, minutesBetween(question.readAt, now)),
  }
}

function timesOf(
  { cylinder, use, drawn, readAt }: CylinderQuestion,
  contents: UsableContents,
  now: Date,
): CylinderTimes {
  const reading = timeOf(readAt)
  const clock = cylinderClock({ cylinder, use, drawLpm: drawn.oxygenLpm, now: reading })
  const minutesToChange = clock.minutesToChange ?? 0
  const minutesToEmpty = clock.minutesToEmpty ?? 0
  const daysPast = daysBetween(readAt, now)
  const on = (minutes: number): ClockTime => {
    const at = clockAfter(reading, minutes)
    return { ...at, day: at.day - daysPast }
  }
  return {
    changeAt: on(minutesToChange),
    emptyAt: on(minutesToEmpty),
    changeEarliest: on(contents.usableLowL / drawn.highLpm),
    changeLatest: drawn.lowLpm > 0 ? on(contents.usableHighL / drawn.lowLpm) : null,
    minutesToChange,
    minutesToEmpty,
    minutesLeft: minutesToChange - minutesBetween(readAt, now),
  }
}

/** Water volume × (gauge − left) in bar, over the flow. */
function simpleMinutes({ cylinder, use, drawn }: CylinderQuestion): number {
  const bar = Math.max(0, barFromKpa(cylinder.gaugeKpa) - barFromKpa(use.leftGaugeKpa))
  return (cylinder.waterVolumeL * bar) / drawn.oxygenLpm
}

function factorMinutes(question: CylinderQuestion): number | null {
  const { cylinder, use, drawn, handbookFactorLPerPsi } = question
  if (handbookFactorLPerPsi === undefined) return null
  return handbookMinutes({
    gaugePsi: psiFromKpa(cylinder.gaugeKpa),
    reservePsi: psiFromKpa(use.leftGaugeKpa),
    factorLPerPsi: handbookFactorLPerPsi,
    flowLpm: drawn.oxygenLpm,
  })
}
