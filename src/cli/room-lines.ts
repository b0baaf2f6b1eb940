// The answer for a room as lines for a terminal: when the limit is reached first, then what holds it, what a mean does not tell, and what it rests on. Leaves out the picture.
import { roomText } from '../pictures/gas-room.ts'
import type { RoomCourse, RoomQuestion } from '../supply/room-answer.ts'
import { GAS_TEXT } from '../words/gas-page-text.ts'
import {
  changesText,
  outsideAirText,
  ROOM_TEXT,
  roomBasisLines,
  shareOfOxygenText,
} from '../words/gas-room-text.ts'
import { durationText } from '../words/number-text.ts'
import { supplyTexts } from '../words/supply-text.ts'
import { drawText, GAS_UNITS } from '../words/supply-value.ts'
import { bulleted, section } from './table.ts'

export function roomLines(question: RoomQuestion, course: RoomCourse): readonly string[] {
  const { minutesToLimit } = course
  const first =
    minutesToLimit === null
      ? ROOM_TEXT.never()
      : `${ROOM_TEXT.reached()} ${durationText(Math.floor(minutesToLimit))}`
  const facts = [
    [ROOM_TEXT.settles(), shareOfOxygenText(course.steadyO2Fraction)],
    [ROOM_TEXT.limit(), shareOfOxygenText(course.limitO2Fraction)],
    [ROOM_TEXT.needed(), changesText(course.airChangesNeededPerHour)],
    [ROOM_TEXT.outsideAir(), outsideAirText(course.outsideAirNeededM3PerH)],
    [ROOM_TEXT.total(), drawText(question.oxygenLpm)],
  ]
  return [
    first,
    '',
    ...facts.map(([name, value]) => `  ${name}: ${value}`),
    '',
    roomText({ course }),
    ...section(ROOM_TEXT.mind(), bulleted(supplyTexts(course.remarks, GAS_UNITS))),
    ...section(GAS_TEXT.assumptions(), bulleted(roomBasisLines(question))),
  ]
}
