// `oxwright breath CASE`: what the set-up on now, or a named one, really delivers. Leaves out ranking.
import { compareRibbonsSvg, ribbonSvg } from '../pictures/breath-ribbon.ts'
import { CHOOSABLE_UNITS } from '../units/choosable.ts'
import { CLI_WORDS } from '../words/cli-text.ts'
import { oneOf } from './arguments.ts'
import { breathAnswer } from './breath-answer.ts'
import type { BreathAnswer } from './breath-answer.ts'
import { breathJson } from './breath-json.ts'
import { breathLines } from './breath-lines.ts'
import { EXIT } from './exit-codes.ts'
import { planWords } from './plan-question.ts'
import { ribbonOf } from './ribbon-of.ts'
import { writeText } from './terminal.ts'
import { COMMON_OPTIONS, SHELF_OPTIONS } from './verb.ts'
import type { Verb } from './verb.ts'

export const breathVerb: Verb = {
  options: { ...COMMON_OPTIONS, ...SHELF_OPTIONS, 'set-up': 'text', pressure: 'text' },
  takesCase: true,
  run: (run) => {
    const { words, terminal, version } = run
    const pressure = oneOf(words, 'pressure', CHOOSABLE_UNITS.pressure) ?? 'kPa'
    const given = planWords(run)
    const answer = breathAnswer(given, words.texts.get('set-up'))
    const svgPath = words.texts.get('svg')
    if (svgPath !== undefined) writeText(svgPath, pictureOf(answer))
    if (words.switches.has('json')) {
      terminal.out(breathJson({ answer, given, version }))
    } else {
      terminal.out(breathLines({ answer, given, pressure }).join('\n'))
      if (svgPath !== undefined) terminal.out(`\n${CLI_WORDS.ribbonWritten} ${svgPath}`)
    }
    return EXIT.ok
  },
}

/** Two ribbons on one scale where both are known. */
function pictureOf({ onNow, named }: BreathAnswer): string {
  if (onNow !== null && named !== null) {
    return compareRibbonsSvg({ before: ribbonOf(onNow), after: ribbonOf(named), mode: 'file' })
  }
  const one = named ?? onNow
  return one === null ? '' : ribbonSvg({ ...ribbonOf(one), mode: 'file' })
}
