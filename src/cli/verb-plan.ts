// `oxwright plan CASE`: ranks a shelf's set-ups for a case. Leaves out how the answer is laid out.
import { reachSvg } from '../pictures/reach-chart.ts'
import { makePlan } from '../planning/plan.ts'
import type { Plan } from '../planning/plan-types.ts'
import { CHOOSABLE_UNITS } from '../units/choosable.ts'
import { CLI_WORDS } from '../words/cli-text.ts'
import { oneOf, wholeNumber } from './arguments.ts'
import { EXIT } from './exit-codes.ts'
import type { ExitCode } from './exit-codes.ts'
import { planJson } from './plan-json.ts'
import { planLines } from './plan-lines.ts'
import { planWords } from './plan-question.ts'
import type { PlanWords } from './plan-question.ts'
import { progressFor } from './progress.ts'
import { writeText } from './terminal.ts'
import { COMMON_OPTIONS, SHELF_OPTIONS } from './verb.ts'
import type { Verb, VerbRun } from './verb.ts'

const TOP = { min: 1, max: 10_000 }
const DEFAULT_TOP = 10

export const planVerb: Verb = {
  options: {
    ...COMMON_OPTIONS,
    ...SHELF_OPTIONS,
    top: 'text',
    all: 'switch',
    pressure: 'text',
  },
  takesCase: true,
  run: (run) => {
    const { words, terminal } = run
    const top = wholeNumber(words, 'top', TOP) ?? DEFAULT_TOP
    const pressure = oneOf(words, 'pressure', CHOOSABLE_UNITS.pressure) ?? 'kPa'
    const given = planWords(run)
    const plan = planned(run, given)
    const svgPath = words.texts.get('svg')
    const rows = words.switches.has('all') ? plan.ranked.length : top
    if (svgPath !== undefined) writeText(svgPath, reachSvg({ plan, rows, mode: 'file' }))
    if (words.switches.has('json')) {
      terminal.out(planJson({ plan, given, version: run.version }))
    } else {
      const isAll = words.switches.has('all')
      terminal.out(planLines({ plan, given, rows, isAll, pressure }).join('\n'))
      if (svgPath !== undefined) terminal.out(`\n${CLI_WORDS.reachWritten} ${svgPath}`)
    }
    return exitOf(plan)
  },
}

function planned(run: VerbRun, given: PlanWords): Plan {
  const { onProgress, end } = progressFor(run)
  try {
    return makePlan({
      case: given.case,
      shelf: given.shelf,
      draws: given.draws,
      seed: given.seed,
      ...(given.wardId === undefined ? {} : { wardId: given.wardId }),
      ...(onProgress === undefined ? {} : { onProgress }),
    })
  } finally {
    end()
  }
}

/** Said by the plan itself, so that table, JSON and exit code agree. */
function exitOf(plan: Plan): ExitCode {
  return plan.missing.length === 0 ? EXIT.ok : EXIT.nothingReaches
}
