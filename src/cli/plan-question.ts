// From the words of a command line to a case, a shelf and the size of the sample. Leaves out planning.
import type { Shelf } from '../kit/shelf.ts'
import { wholeNumber } from './arguments.ts'
import { caseFrom, shelfFrom } from './read-input.ts'
import type { GivenCase } from './read-input.ts'
import type { VerbRun } from './verb.ts'

export interface PlanWords extends GivenCase {
  readonly shelf: Shelf
  readonly isDemoShelf: boolean
  readonly wardId: string | undefined
  readonly draws: number
  readonly seed: number
}

const DRAWS = { min: 64, max: 8192 }
const SEED = { min: 0, max: 4_294_967_295 }
const DEFAULT_DRAWS = 512
const DEFAULT_SEED = 1

export function planWords(run: VerbRun): PlanWords {
  const { words } = run
  const shelfPath = words.texts.get('shelf')
  const draws = wholeNumber(words, 'draws', DRAWS) ?? DEFAULT_DRAWS
  const seed = wholeNumber(words, 'seed', SEED) ?? DEFAULT_SEED
  return {
    ...caseFrom(words.positionals[0] ?? ''),
    shelf: shelfFrom(shelfPath),
    isDemoShelf: shelfPath === undefined,
    wardId: words.texts.get('ward'),
    draws,
    seed,
  }
}
