// What the Gas page says of a room filling with oxygen, and its picture. Leaves out remarks by code.
import type { RoomKind } from '../supply/room-answer.ts'
import { durationText, numberText, percentText } from './number-text.ts'
import { say } from './say.ts'

export const ROOM_TEXT = {
  help: () => say('How rich in oxygen the air of a room, an ambulance or a tent becomes.'),
  place: () => say('example of a place'),
  ownPlace: () => say('a place of your own'),
  reached: () => say('reaches the limit after'),
  never: () => say('The mean stays below the limit'),
  settles: () => say('settles at'),
  limit: () => say('limit'),
  needed: () => say('air changes that hold the limit'),
  outsideAir: () => say('outside air that holds it'),
  total: () => say('oxygen set free'),
  picture: () => say('Oxygen share over time'),
  mind: () => say('Mind'),
  aside: () => say('A mask laid aside with its flow on gives all of it to bed and room.'),
  limitSource: () =>
    say('Limit 23.5 % (NFPA 99, secondary); other definitions run from 21 to 25 %.'),
  balance: () =>
    say(
      'One well-mixed volume: V·dF/dt = A(F0 − F) + q(f − F); air at 20.95 %; people take nothing up, which is the safe side.',
    ),
} as const

/** What the numbers of a room rest on. */
export function roomBasisLines(of: { readonly isExample?: boolean }): readonly string[] {
  return [
    of.isExample === true
      ? say('Volume and air changes of an example, assumed: not of your room.')
      : say('Volume and air changes as typed; the air that comes in is outside air.'),
    say('Oxygen set free as typed: all that is given, and all of a mask laid aside.'),
    ROOM_TEXT.balance(),
    ROOM_TEXT.limitSource(),
  ]
}

export function roomKindName(kind: RoomKind): string {
  switch (kind) {
    case 'side-room':
      return say('side room')
    case 'bay':
      return say('bay of six beds')
    case 'ambulance':
      return say('ambulance')
    case 'tent':
      return say('tent')
  }
}

export function shareOfOxygenText(o2Fraction: number): string {
  return percentText(o2Fraction, 0.1)
}

export function changesText(perHour: number): string {
  return say('{changes} an hour', { changes: numberText(perHour, 0.1) })
}

export function outsideAirText(m3PerH: number): string {
  return say('{air} m³ an hour', { air: numberText(m3PerH, 1) })
}

export const ROOM_PICTURE = {
  title: () => say('Oxygen share over time'),
  time: () => say('minutes'),
  share: () => say('oxygen, %'),
  limit: (limit: string) => say('limit {limit}', { limit }),
} as const

export function roomPictureText(of: {
  readonly startO2Fraction: number
  readonly endO2Fraction: number
  readonly minutes: number
  readonly limitO2Fraction: number
}): string {
  return say('From {start} to {end} in {time}; limit {limit}.', {
    start: shareOfOxygenText(of.startO2Fraction),
    end: shareOfOxygenText(of.endO2Fraction),
    time: durationText(of.minutes),
    limit: shareOfOxygenText(of.limitO2Fraction),
  })
}
