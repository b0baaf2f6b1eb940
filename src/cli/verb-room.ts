// `oxwright room`: how rich in oxygen the air of a room becomes, and when. Leaves out how it is laid out.
import { roomSvg } from '../pictures/gas-room.ts'
import {
  roomCourse,
  ROOM_EXAMPLES,
  ROOM_KINDS,
  type RoomCourse,
  type RoomQuestion,
} from '../supply/room-answer.ts'
import { CLI_WORDS } from '../words/cli-text.ts'
import { oneOf, type ParsedWords } from './arguments.ts'
import { EXIT } from './exit-codes.ts'
import { UsageError } from './failure.ts'
import { jsonText } from './json-output.ts'
import { decimal, needed } from './quantities.ts'
import { roomLines } from './room-lines.ts'
import { toldRemarks } from './supply-json.ts'
import { writeText } from './terminal.ts'
import { COMMON_OPTIONS, type Verb } from './verb.ts'

export const ROOM_JSON_FORMAT = 'oxwright-room-1'

const VERB = 'room'
/** Looked ahead where nothing is asked, min. */
const LOOK_AHEAD_MIN = 60

export const roomVerb: Verb = {
  options: {
    ...COMMON_OPTIONS,
    oxygen: 'text',
    volume: 'text',
    'air-changes': 'text',
    like: 'text',
    aside: 'text',
    limit: 'text',
    minutes: 'text',
    svg: 'text',
  },
  takesCase: false,
  run: ({ words, terminal, version }) => {
    const question = questionOf(words)
    const course = roomCourse(question)
    const svgPath = words.texts.get('svg')
    if (svgPath !== undefined) writeText(svgPath, roomSvg({ course, mode: 'file' }))
    if (words.switches.has('json')) terminal.out(roomJson(question, course, version))
    else {
      terminal.out(roomLines(question, course).join('\n'))
      if (svgPath !== undefined) terminal.out(`\n${CLI_WORDS.roomWritten} ${svgPath}`)
    }
    return EXIT.ok
  },
}

function questionOf(words: ParsedWords): RoomQuestion {
  const givenLpm = needed(decimal(words, 'oxygen'), { option: '--oxygen', verb: VERB })
  const asideLpm = decimal(words, 'aside') ?? 0
  const limitO2Fraction = decimal(words, 'limit')
  return {
    ...placeOf(words),
    oxygenLpm: givenLpm + asideLpm,
    asideLpm,
    minutes: decimal(words, 'minutes') ?? LOOK_AHEAD_MIN,
    ...(limitO2Fraction === undefined ? {} : { limitO2Fraction }),
  }
}

/** An example of a place, or volume and air changes; never one over the other. */
function placeOf(
  words: ParsedWords,
): Pick<RoomQuestion, 'volumeM3' | 'airChangesPerHour' | 'isExample'> {
  const kind = oneOf(words, 'like', ROOM_KINDS)
  const volumeM3 = decimal(words, 'volume')
  const airChangesPerHour = decimal(words, 'air-changes')
  if (kind !== undefined) {
    if (volumeM3 !== undefined || airChangesPerHour !== undefined)
      throw new UsageError({ kind: 'one-of-two', options: ['--like', '--volume'] })
    return { ...ROOM_EXAMPLES[kind], isExample: true }
  }
  return {
    volumeM3: needed(volumeM3, { option: '--volume', verb: VERB }),
    airChangesPerHour: needed(airChangesPerHour, { option: '--air-changes', verb: VERB }),
  }
}

function roomJson(question: RoomQuestion, course: RoomCourse, version: string): string {
  return jsonText({
    format: ROOM_JSON_FORMAT,
    version,
    question: { isExample: false, ...question },
    answer: { ...course, remarks: toldRemarks(course.remarks) },
  })
}
