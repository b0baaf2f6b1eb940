// What the page asks the worker of chains for, across its border. Leaves out how it is carried.
import type { HumidityAnswer } from '../../humidity/humidity-of-path.ts'
import type { ChainCheck } from '../../joining/check-chain.ts'
import type { ChainAnswer, SolveQuestion } from '../../joining/solve-chains.ts'
import type { Shelf } from '../../kit/shelf.ts'
import type { Case } from '../../patient/case.ts'
import type { PlacePressure } from '../../planning/place-pressure.ts'
import type { Plan } from '../../planning/plan-types.ts'
import type { ShelfHumidityQuestion } from '../../planning/shelf-humidity.ts'
import type { SheetRequest } from '../../sheet/fragment.ts'
import type { SheetAnswer } from '../../sheet/sheet.ts'
import type { Answer } from './core-api.ts'

export type ChainAsked = Omit<SolveQuestion, 'patient' | 'barometricKpa'> & {
  readonly about: Pick<Case, 'patient' | 'breathing'>
  readonly place: PlacePressure
}

export interface SolvedChain {
  readonly answer: ChainAnswer
  /** Along the best chain, or the one with what is missing; null for a refused wish, and at flush, whose flow nobody knows. */
  readonly water: HumidityAnswer | null
  /** What is wrong with the nearest chain of a refused wish, for its picture; null where there is none. */
  readonly nearestCheck: ChainCheck | null
}

export interface SheetAsked {
  readonly request: SheetRequest
  readonly plan: Plan
  readonly shelf: Shelf
}

export interface ChainApi {
  readonly solve: (asked: ChainAsked) => Answer<SolvedChain>
  /** With the chain of the set-up. */
  readonly sheet: (asked: SheetAsked) => Answer<SheetAnswer>
  /** Null at flush, whose flow nobody knows. */
  readonly humidity: (question: ShelfHumidityQuestion) => Answer<HumidityAnswer | null>
}
