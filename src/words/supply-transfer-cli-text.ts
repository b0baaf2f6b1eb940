// What the transfer verb and its printable sheet say around their numbers. Leaves out remarks.
import type { ClockTime } from '../supply/duration.ts'
import type { ReserveRule } from '../supply/transport.ts'
import { numberText } from './number-text.ts'
import { say } from './say.ts'
import {
  clockTimeText,
  drawText,
  gasVolumeText,
  minutesLeftText,
  type GasUnits,
} from './supply-value.ts'

export const TRANSFER_WORDS = {
  legs: say('the way'),
  cylinders: say('cylinders, one after the other'),
  notUsed: say('not taken'),
  remarks: say('mind'),
  checks: say('before leaving'),
  roomAir: say('room air'),
  asBefore: say('as before'),
  fromPlace: say('outlet of the place'),
  columns: {
    leg: say('leg'),
    time: say('time'),
    setUp: say('set-up'),
    draw: say('drawn, L/min'),
    worst: say('next step, L/min'),
    fraction: say('inhaled'),
  },
} as const

/** "Take 2 × 2 L light and 1 × 5 L steel." */
export function takeLine(
  picks: readonly { readonly count: number; readonly label: string }[],
): string {
  if (picks.length === 0) return say('No cylinder is needed.')
  const list = picks.map(({ count, label }) => `${numberText(count, 1)} × ${label}`).join(', ')
  return say('Take {list}.', { list })
}

export function changeAtLine(times: readonly ClockTime[]): string {
  if (times.length === 0) return say('No change on the way or after it.')
  return say('Change at {times}.', { times: times.map(clockTimeText).join(', ') })
}

export function wayEmptyLine(clock: ClockTime, arrives: ClockTime): string {
  return say('Empty at {clock}; the way ends at {arrives}.', {
    clock: clockTimeText(clock),
    arrives: clockTimeText(arrives),
  })
}

export function nothingDrawnLine(): string {
  return say('Nothing is drawn from carried cylinders.')
}

export function needLine(
  of: {
    readonly plannedMinutes: number
    readonly reservedMinutes: number
    readonly plannedL: number
    readonly neededL: number
    readonly usableL: number
  },
  units: GasUnits,
): string {
  return say(
    'Planned {planned}, {plannedL}; with the reserve {reserved}, {neededL}. The cylinders taken hold {usable}.',
    {
      planned: minutesLeftText(of.plannedMinutes),
      plannedL: gasVolumeText(of.plannedL, units),
      reserved: minutesLeftText(of.reservedMinutes),
      neededL: gasVolumeText(of.neededL, units),
      usable: gasVolumeText(of.usableL, units),
    },
  )
}

export function reserveLine({ factor, extraMinutes }: ReserveRule): string {
  return say('Reserve rule: {factor} × the planned time, or {extra} min more, whichever is more.', {
    factor: numberText(factor, 0.1),
    extra: numberText(extraMinutes, 1),
  })
}

export function worstLine(clock: ClockTime | null): string {
  return clock === null
    ? say('At the next step up nothing is drawn either.')
    : say('If the flow must rise to the next step on every leg: empty at {clock}.', {
        clock: clockTimeText(clock),
      })
}

export function stopLine(of: {
  readonly leg: string
  readonly number: number
  readonly minutes: number
  readonly changeAt: readonly ClockTime[]
  readonly emptyAt: ClockTime | null
  readonly arrives: ClockTime
  readonly isCovered: boolean
}): string {
  const { leg, isCovered } = of
  const number = numberText(of.number, 1)
  const minutes = numberText(of.minutes, 1)
  const arrives = clockTimeText(of.arrives)
  if (of.emptyAt === null)
    return say('Leg {number} ({leg}) stands still {minutes} min: the way ends at {arrives}.', {
      number,
      leg,
      minutes,
      arrives,
    })
  const empty = clockTimeText(of.emptyAt)
  if (!isCovered)
    return say(
      'Leg {number} ({leg}) stands still {minutes} min: empty at {empty}, before the way ends at {arrives}.',
      { number, leg, minutes, empty, arrives },
    )
  const change = of.changeAt.map(clockTimeText).join(', ')
  return change === ''
    ? say(
        'Leg {number} ({leg}) stands still {minutes} min: empty at {empty}, the way ends at {arrives}.',
        { number, leg, minutes, empty, arrives },
      )
    : say(
        'Leg {number} ({leg}) stands still {minutes} min: change at {change}, empty at {empty}, the way ends at {arrives}.',
        { number, leg, minutes, change, empty, arrives },
      )
}

export function runLine(of: {
  readonly number: number
  readonly label: string
  readonly from: ClockTime
  readonly until: ClockTime
}): string {
  return say('{number}. {label}: {from} to {until}', {
    number: numberText(of.number, 1),
    label: of.label,
    from: clockTimeText(of.from),
    until: clockTimeText(of.until),
  })
}

export function legRemarkLine(number: number, text: string): string {
  return say('Leg {number}: {text}', { number: numberText(number, 1), text })
}

/** The sheet: what is filled in by hand, and who signs. */
export const SHEET_WORDS = {
  title: say('Transfer with oxygen'),
  box: '[ ]',
  gauge: say(
    'Gauge when leaving: ________   Flow felt: ________   Saturation when leaving: ________',
  ),
  lift: say('If the way stands still'),
  signed: say('Filled in by: ________________   Time: ________'),
  invented: say('Invented: an example, no patient.'),
} as const

export function sheetHeadLine(who: string, draw: string): string {
  return who === '' ? draw : say('{who}: {draw}', { who, draw })
}

export function sheetStartLine(start: ClockTime): string {
  return say('The clock times hold if the way begins at {start}.', { start: clockTimeText(start) })
}

export function setUpDrawLine(setUp: string, drawLpm: number): string {
  return say('{setUp}, draws {draw}', { setUp, draw: drawText(drawLpm) })
}
