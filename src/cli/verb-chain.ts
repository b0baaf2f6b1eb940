// `oxwright chain CASE`: the parts from outlet to patient for one set-up, what is missing and who has it, or why they cannot be joined. Leaves out choosing the set-up.
import { checkChain } from '../joining/check-chain.ts'
import { solveChains } from '../joining/solve-chains.ts'
import type { ChainAnswer } from '../joining/solve-chains.ts'
import type { SetUp } from '../kit/set-up.ts'
import { barometricPressureKpa } from '../physics/atmosphere.ts'
import { makePlan } from '../planning/plan.ts'
import { chainSvg } from '../pictures/chain-picture.ts'
import { remarkText } from '../words/remark-text.ts'
import { setUpText } from '../words/set-up-text.ts'
import { chainJson } from './chain-json.ts'
import { chainLines } from './chain-lines.ts'
import { EXIT } from './exit-codes.ts'
import type { ExitCode } from './exit-codes.ts'
import { namedCandidate } from './named-candidate.ts'
import { planWords } from './plan-question.ts'
import type { PlanWords } from './plan-question.ts'
import { bulleted } from './table.ts'
import { writeText } from './terminal.ts'
import { COMMON_OPTIONS, SHELF_OPTIONS } from './verb.ts'
import type { Verb, VerbRun } from './verb.ts'

export const chainVerb: Verb = {
  options: { ...COMMON_OPTIONS, ...SHELF_OPTIONS, 'set-up': 'text' },
  takesCase: true,
  run: (run) => {
    const given = planWords(run)
    const chosen = chosenSetUp(run, given)
    if ('reasons' in chosen) {
      run.terminal.err(`${bulleted(chosen.reasons).join('\n')}\n`)
      return EXIT.nothingReaches
    }
    const answer = solved(given, chosen.setUp)
    const title = setUpText(chosen.setUp, given.shelf)
    run.terminal.out(
      run.words.switches.has('json')
        ? chainJson({ given, version: run.version, setUpId: chosen.id, answer })
        : chainLines({ answer, shelf: given.shelf, title }).join('\n'),
    )
    const svgPath = run.words.texts.get('svg')
    if (svgPath !== undefined) writeText(svgPath, pictureOf(answer, given))
    return exitOf(answer)
  },
}

type Chosen =
  | { readonly id: string; readonly setUp: SetUp }
  | { readonly reasons: readonly string[] }

/** The one named, or the first of the plan. */
function chosenSetUp({ words }: VerbRun, given: PlanWords): Chosen {
  const named = words.texts.get('set-up')
  if (named !== undefined) return { id: named, setUp: namedCandidate(given, named).setUp }
  const { case: read, shelf, draws, seed, wardId } = given
  const plan = makePlan({
    case: read,
    shelf,
    draws,
    seed,
    ...(wardId === undefined ? {} : { wardId }),
  })
  const first = plan.ranked[0]
  return first ?? { reasons: plan.missing.map(remarkText) }
}

function solved(given: PlanWords, setUp: SetUp): ChainAnswer {
  const { site, patient } = given.case
  const altitudeM = site.altitudeM ?? given.shelf.altitudeM ?? 0
  return solveChains({
    shelf: given.shelf,
    wanted: setUp,
    patient,
    barometricKpa: site.barometricPressureKpa ?? barometricPressureKpa(altitudeM),
    ...(given.wardId === undefined ? {} : { wardId: given.wardId }),
  })
}

/** The best chain, or the nearest with what is wrong with it. */
function pictureOf(answer: ChainAnswer, given: PlanWords): string {
  if (answer.kind === 'chains') return chainSvg({ ...answer.best, mode: 'file' })
  if (answer.kind === 'missing') return chainSvg({ ...answer.withThem, mode: 'file' })
  const chain = answer.nearest ?? { parts: [], joins: [] }
  const check = checkChain({ chain, patient: given.case.patient })
  return chainSvg({ chain, check: { ...check, refusals: answer.refusals }, mode: 'file' })
}

function exitOf(answer: ChainAnswer): ExitCode {
  return answer.kind === 'chains' ? EXIT.ok : EXIT.nothingReaches
}
