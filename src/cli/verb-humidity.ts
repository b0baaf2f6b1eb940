// `oxwright humidity CASE`: water at the airway on the set-up on now or a named one. Leaves out oxygen.
import { setUpOfOnNow } from '../planning/on-now.ts'
import { shelfHumidity } from '../planning/shelf-humidity.ts'
import type { SetUp } from '../kit/set-up.ts'
import { humidityFlushText } from '../words/humidity-text.ts'
import { EXIT } from './exit-codes.ts'
import { UsageError } from './failure.ts'
import { humidityJson } from './humidity-json.ts'
import { humidityLines } from './humidity-lines.ts'
import { namedCandidate } from './named-candidate.ts'
import { planWords } from './plan-question.ts'
import type { PlanWords } from './plan-question.ts'
import { COMMON_OPTIONS } from './verb.ts'
import type { Verb } from './verb.ts'
import { WATER_OPTIONS, waterWords } from './water-words.ts'

export const humidityVerb: Verb = {
  options: {
    ...COMMON_OPTIONS,
    shelf: 'text',
    ward: 'text',
    'set-up': 'text',
    ...WATER_OPTIONS,
  },
  takesCase: true,
  run: (run) => {
    const { words, terminal, version } = run
    const given = planWords(run)
    const setUp = setUpFor(given, words.texts.get('set-up'))
    const answer = shelfHumidity({
      case: given.case,
      setUp,
      shelf: given.shelf,
      ...(given.wardId === undefined ? {} : { wardId: given.wardId }),
      ...waterWords(words),
    })
    if (answer === null) {
      terminal.err(`${humidityFlushText()}\n`)
      return EXIT.badInput
    }
    const told = { setUp, answer, given, version }
    terminal.out(words.switches.has('json') ? humidityJson(told) : humidityLines(told).join('\n'))
    return EXIT.ok
  },
}

function setUpFor(given: PlanWords, namedId: string | undefined): SetUp {
  if (namedId !== undefined) return namedCandidate(given, namedId).setUp
  const { onNow } = given.case
  if (onNow === undefined) throw new UsageError({ kind: 'nothing-on-now' })
  if (onNow.setUp === null) throw new UsageError({ kind: 'room-air-on-now' })
  return setUpOfOnNow(onNow.setUp, given.shelf, given.case.patient)
}
