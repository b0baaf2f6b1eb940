// How long a cylinder lasts as clock times, and the handbook's litres per psi beside it. Leaves out what a set-up draws.
import { requireWithin } from '../errors.ts'
import { usableContents, type Cylinder, type CylinderUse } from './cylinder.ts'

/** A time of day; `day` counts midnights since now. */
export interface ClockTime {
  readonly day: number
  readonly hour: number
  readonly minute: number
}

export interface CylinderClock {
  /** Until the reserve is reached, and until the regulator no longer keeps its flow; null: nothing is drawn. */
  readonly minutesToChange: number | null
  readonly minutesToEmpty: number | null
  readonly changeAt: ClockTime | null
  readonly emptyAt: ClockTime | null
}

const MINUTES_PER_HOUR = 60
const MINUTES_PER_DAY = 1440
const DRAW_LPM_MAX = 300

/** Change when the reserve pressure is reached, empty at the regulator's minimum; times are rounded down to the minute. Reserve
 *  pressure is `leftGaugeKpa`. Valid 0–300 L/min, else FLOW_OUT_OF_RANGE. Worked examples in cylinder.test.ts. */
export function cylinderClock(question: {
  readonly cylinder: Cylinder
  readonly use: CylinderUse
  readonly drawLpm: number
  readonly now: { readonly hour: number; readonly minute: number }
}): CylinderClock {
  const { cylinder, use, drawLpm, now } = question
  requireWithin({
    code: 'FLOW_OUT_OF_RANGE',
    path: 'drawLpm',
    value: drawLpm,
    min: 0,
    max: DRAW_LPM_MAX,
    unit: 'L/min',
  })
  const toChangeL = usableContents(cylinder, use).usableL
  const toEmptyL = usableContents(cylinder, { ...use, leftGaugeKpa: 0 }).usableL
  if (drawLpm === 0)
    return { minutesToChange: null, minutesToEmpty: null, changeAt: null, emptyAt: null }
  const minutesToChange = toChangeL / drawLpm
  const minutesToEmpty = toEmptyL / drawLpm
  return {
    minutesToChange,
    minutesToEmpty,
    changeAt: clockAfter(now, minutesToChange),
    emptyAt: clockAfter(now, minutesToEmpty),
  }
}

/** The clock after some minutes, rounded down. Valid times of day and minutes ≥ 0, else DURATION_OUT_OF_RANGE. Exact. */
export function clockAfter(
  now: { readonly hour: number; readonly minute: number },
  minutes: number,
): ClockTime {
  requireDuration('now.hour', now.hour, 23)
  requireDuration('now.minute', now.minute, 59)
  requireDuration('minutes', minutes, Number.MAX_SAFE_INTEGER)
  const total = Math.floor(now.hour * MINUTES_PER_HOUR + now.minute + minutes)
  return {
    day: Math.floor(total / MINUTES_PER_DAY),
    hour: Math.floor((total % MINUTES_PER_DAY) / MINUTES_PER_HOUR),
    minute: total % MINUTES_PER_HOUR,
  }
}

/** The handbook rule (gauge − reserve)·factor/flow, in psi and litres per psi. Valid flow > 0; below the reserve 0. Exact arithmetic;
 *  factors are for one country's sizes and never ours. */
export function handbookMinutes(rule: {
  readonly gaugePsi: number
  readonly reservePsi: number
  readonly factorLPerPsi: number
  readonly flowLpm: number
}): number {
  requireWithin({
    code: 'FLOW_OUT_OF_RANGE',
    path: 'flowLpm',
    value: rule.flowLpm,
    min: Number.MIN_VALUE,
    max: DRAW_LPM_MAX,
    unit: 'L/min',
  })
  return (Math.max(0, rule.gaugePsi - rule.reservePsi) * rule.factorLPerPsi) / rule.flowLpm
}

function requireDuration(path: string, value: number, max: number): void {
  requireWithin({ code: 'DURATION_OUT_OF_RANGE', path, value, min: 0, max })
}
