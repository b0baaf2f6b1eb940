// `oxwright chain CASE`: the parts from outlet to patient for one set-up with their water, what is missing and who has it, or why they cannot be joined. Leaves out choosing the set-up.
import { checkChain } from '../joining/check-chain.ts'
import { solveChains } from '../joining/solve-chains.ts'
import type { ChainAnswer } from '../joining/solve-chains.ts'
import type { HumidityAnswer } from '../humidity/humidity-of-path.ts'
import type { SetUp } from '../kit/set-up.ts'
import { chainHumidity } from '../planning/chain-humidity.ts'
import { placePressure } from '../planning/place-pressure.ts'
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
import { WATER_OPTIONS, waterWords } from './water-words.ts'

export const chainVerb: Verb = {
  options: { ...COMMON_OPTIONS, ...SHELF_OPTIONS, 'set-up': 'text', ...WATER_OPTIONS },
  takesCase: true,
  run: (run) => {
    const given = planWords(run)
    const chosen = chosenSetUp(run, given)
    if ('reasons' in chosen) {
      run.terminal.err(`${bulleted(chosen.reasons).join('\n')}\n`)
      return EXIT.nothingReaches
    }
    const place = placePressure(given.case.site, given.shelf)
    const answer = solved(given, chosen.setUp, place.barometricKpa)
    const water = waterOf(answer, { about: given.case, place, ...waterWords(run.words) })
    const title = setUpText(chosen.setUp, given.shelf)
    run.terminal.out(
      run.words.switches.has('json')
        ? chainJson({ given, version: run.version, setUpId: chosen.id, answer, water })
        : chainLines({ answer, water, shelf: given.shelf, title }).join('\n'),
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

function solved(given: PlanWords, setUp: SetUp, barometricKpa: number): ChainAnswer {
  return solveChains({
    shelf: given.shelf,
    wanted: setUp,
    patient: given.case.patient,
    barometricKpa,
    ...(given.wardId === undefined ? {} : { wardId: given.wardId }),
  })
}

/** Along the best chain, or the one with what is missing. */
function waterOf(
  answer: ChainAnswer,
  around: Omit<Parameters<typeof chainHumidity>[0], 'chain'>,
): HumidityAnswer | null {
  if (answer.kind === 'refused') return null
  const { chain } = answer.kind === 'chains' ? answer.best : answer.withThem
  return chainHumidity({ ...around, chain })
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
