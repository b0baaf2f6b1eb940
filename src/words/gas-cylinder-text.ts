// What the cylinder cards say: times, litres, what each number rests on, the handbook beside. Leaves out labels of fields.
import type { DrawPart } from '../supply/gas-drawn.ts'
import { clockText, durationText, numberText } from './number-text.ts'
import { say } from './say.ts'

export const CYLINDER_TEXT = {
  heading: () => say('How long a cylinder lasts'),
  help: () => say('For what is really drawn. Times count from the moment the gauge was read.'),
  change: () => say('Change at'),
  empty: () => say('empty at'),
  neverEmpty: () => say('Nothing is drawn: it does not run down'),
  closed: () => say('0 minutes: the valve is closed'),
  closedWhy: () =>
    say(
      'A closed cylinder gives nothing, whatever the gauge shows. Open the valve, read the gauge, feel the flow.',
    ),
  atFloor: () => say('0 minutes: nothing left to use'),
  atFloorWhy: () => say('The gauge stands at or below what is to be left. Change it now.'),
  overdue: () => say('Change it now: the time to change has passed'),
  extrapolated: () =>
    say('extrapolated: above 27 °C the equation of state goes beyond its own range'),
  usable: () => say('usable oxygen'),
  usableRange: () => say('usable, low and high'),
  drawn: () => say('drawn'),
  drawnRange: () => say('drawn, low and high'),
  parts: () => say('made up of'),
  between: () => say('change between'),
  isOpen: () => say('the valve is open'),
  moreDrawn: () => say('What else runs on it'),
  fine: () => say('Reserve, temperature, gauge, place'),
  beside: () => say('The handbook beside'),
  another: () => say('Add another cylinder'),
  nothingAtBedside: () =>
    say('No set-up is typed at Bedside as on now. Type it there, or a flow here.'),
  bedsideRefused: () =>
    say('The case at Bedside cannot be read as it stands. Mend it there, or type a flow here.'),
} as const

/** "From Bedside, 7 · H-1042: nasal cannula, 2 L/min" */
export function bedsideSaidText(of: {
  readonly setUp: string
  readonly who: string
  readonly isExample: boolean
}): string {
  const { setUp, who } = of
  if (of.isExample) return say('From Bedside, an invented example: {setUp}', { setUp })
  return who === ''
    ? say('From Bedside: {setUp}', { setUp })
    : say('From Bedside, {who}: {setUp}', { who, setUp })
}

/** Heading of a card: the ward's own marking, else its place in the list. */
export function cylinderName(marking: string, position: number): string {
  return marking.trim() === ''
    ? say('Cylinder {position}', { position: String(position) })
    : say('Cylinder {marking}', { marking: marking.trim() })
}

export const DRAW_KINDS = ['meter', 'driving', 'blend', 'ventilator', 'bedside'] as const
export type DrawKind = (typeof DRAW_KINDS)[number]

export const DRAW_KIND_TEXTS: Readonly<Record<DrawKind, () => string>> = {
  meter: () => say('constant flow: cannula, mask, bag'),
  driving: () => say('driving flow of an air-entrainment mask'),
  blend: () => say('high flow, blended from oxygen and air'),
  ventilator: () => say('ventilator, with its bias flow'),
  bedside: () => say('what is on now at the bedside'),
}

export const DRAW_PART_TEXTS: Readonly<Record<DrawPart, () => string>> = {
  SET_UP: () => say('set-up'),
  MASK_OVER: () => say('mask over the cannula'),
  BIAS_FLOW: () => say('bias flow'),
  DRIVING_GAS: () => say('driving gas'),
  JET: () => say('jet nebuliser'),
  LEAK: () => say('leak'),
}

/** A clock time on a day counted from today: "14:20", "00:10 tomorrow". */
export function clockOnDayText(time: {
  readonly hour: number
  readonly minute: number
  readonly day: number
}): string {
  const clock = clockText(time)
  if (time.day === 0) return clock
  if (time.day === 1) return say('{clock} tomorrow', { clock })
  if (time.day === -1) return say('{clock} yesterday', { clock })
  return time.day > 0
    ? say('{clock} in {days} days', { clock, days: String(time.day) })
    : say('{clock}, {days} days ago', { clock, days: String(-time.day) })
}

const FLOW_STEP_LPM = 0.1

export function oxygenFlowText(flowLpm: number): string {
  return say('{flow} L/min of oxygen', { flow: numberText(flowLpm, FLOW_STEP_LPM) })
}

export function oxygenFlowRangeText(range: {
  readonly lowLpm: number
  readonly highLpm: number
}): string {
  return say('{low}–{high} L/min', {
    low: numberText(range.lowLpm, FLOW_STEP_LPM),
    high: numberText(range.highLpm, FLOW_STEP_LPM),
  })
}

export function drawPartText(part: DrawPart, oxygenLpm: number): string {
  return say('{part}: {flow} L/min', {
    part: DRAW_PART_TEXTS[part](),
    flow: numberText(oxygenLpm, FLOW_STEP_LPM),
  })
}

/** "140 bar read at 13:50, 5 min ago" */
export function readingText(reading: {
  readonly gauge: string
  readonly clock: string
  readonly minutesAgo: number
}): string {
  const { gauge, clock, minutesAgo } = reading
  return minutesAgo < 1
    ? say('{gauge} read at {clock}, just now', { gauge, clock })
    : say('{gauge} read at {clock}, {ago} ago', { gauge, clock, ago: durationText(minutesAgo) })
}

/** The whole answer in one sentence, for who listens. */
export function cylinderSentence(said: {
  readonly name: string
  readonly changeAt: string
  readonly emptyAt: string
  readonly left: string
}): string {
  const { name, changeAt, emptyAt, left } = said
  return say('{name}: change at {changeAt}, {left}; empty at {emptyAt}.', {
    name,
    changeAt,
    emptyAt,
    left,
  })
}

export function litresRangeText(low: string, high: string): string {
  return say('{low} to {high}', { low, high })
}

/** Gauge and meters wrong together, either way. */
export function changeBetweenText(earliest: string, latest: string | null): string {
  if (latest === null) return say('not before {earliest}', { earliest })
  return earliest === latest ? earliest : say('{earliest} and {latest}', { earliest, latest })
}

export function overdueByText(duration: string): string {
  return say('{duration} ago', { duration })
}
