// What the ward-demand verb says around its numbers: headline, columns, hours, the drill. Leaves out remarks.
import type { BedOutage, Failure, OutageState } from '../supply/bed-outage.ts'
import type { BedFeed } from '../supply/ward-bed.ts'
import { numberText, percentText } from './number-text.ts'
import { say } from './say.ts'
import { drawText, hoursText, minutesLeftText } from './supply-value.ts'

export const WARD_WORDS = {
  beds: say('beds'),
  oneMore: say('one more patient on high flow'),
  remarks: say('mind'),
  drill: say('lights-out drill: most endangered first'),
  columns: {
    bed: say('bed'),
    code: say('code'),
    setUp: say('set-up'),
    oxygen: say('oxygen, L/min'),
    from: say('from'),
    state: say('what happens'),
    doThis: say('do this'),
  },
} as const

export function feedName(feed: BedFeed): string {
  switch (feed) {
    case 'pipeline':
      return say('pipeline')
    case 'cylinder':
      return say('cylinder')
    case 'own-source':
      return say('concentrator')
    case 'room-air':
      return say('room air')
    case 'empty':
      return say('empty bed')
    case 'unknown':
      return say('not known')
  }
}

export function failureName(failure: Failure): string {
  switch (failure) {
    case 'mains':
      return say('mains power fails')
    case 'pipeline-oxygen':
      return say('pipeline oxygen fails')
    case 'medical-air':
      return say('medical air fails')
    case 'blender':
      return say('the blender fails')
  }
}

/** "still works", "40 min left", "fails at once" */
export function outageStateText({ state, minutes }: Pick<BedOutage, 'state' | 'minutes'>): string {
  const texts: Readonly<Record<OutageState, () => string>> = {
    works: () =>
      minutes === null
        ? say('still works')
        : say('still works, {minutes} on its cylinder', { minutes: minutesLeftText(minutes) }),
    minutes: () => say('{minutes} left', { minutes: minutesLeftText(minutes ?? 0) }),
    fails: () => say('fails at once'),
    'other-gas': () => say('another gas than set'),
    unknown: () => say('not known'),
  }
  return texts[state]()
}

export function demandLine(of: {
  readonly ward: string
  readonly drawnLpm: number
  readonly designLpm: number
}): string {
  return say(
    '{ward} draws {drawn} of oxygen from the pipeline; the design formula gives {design}.',
    {
      ward: of.ward,
      drawn: drawText(of.drawnLpm),
      design: drawText(of.designLpm),
    },
  )
}

export function simulatedLine(of: {
  readonly draws: number
  readonly seed: number
  readonly p50: number
  readonly p95: number
  readonly p99: number
  readonly aboveDesignShare: number
}): string {
  return say(
    'Simulated ({draws} draws, seed {seed}): half of the time up to {p50}, 95 % up to {p95}, 99 % up to {p99}; above the design flow {above} of the time.',
    {
      draws: numberText(of.draws, 1),
      seed: numberText(of.seed, 1),
      p50: drawText(of.p50),
      p95: drawText(of.p95),
      p99: drawText(of.p99),
      above: percentText(of.aboveDesignShare),
    },
  )
}

export function airLine(airLpm: number): string {
  return say('Blends take {air} of medical air.', { air: drawText(airLpm) })
}

export function autonomyLines(of: {
  readonly manifoldHours: number | null
  readonly tankShortestHours: number | null
  readonly tankLongestHours: number | null
}): readonly string[] {
  return [
    ...(of.manifoldHours === null
      ? []
      : [
          say('The manifold lasts {hours} for ward and hospital.', {
            hours: hoursText(of.manifoldHours),
          }),
        ]),
    ...(of.tankShortestHours === null || of.tankLongestHours === null
      ? []
      : [
          say('The tank lasts {short} to {long} for ward and hospital.', {
            short: hoursText(of.tankShortestHours),
            long: hoursText(of.tankLongestHours),
          }),
        ]),
  ]
}

export function oneMoreLine(of: { readonly moreLpm: number; readonly drawnLpm: number }): string {
  return say('It adds {more}: {total} in all.', {
    more: drawText(of.moreLpm),
    total: drawText(of.drawnLpm),
  })
}
