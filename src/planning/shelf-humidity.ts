// Water at the airway for a set-up along the best chain of parts that a ward can build; where it can build none, along usual hoses. Leaves out how chains are found (joining).
import type { HumidityAnswer } from '../humidity/humidity-of-path.ts'
import type { Chain } from '../joining/chain.ts'
import { solveChains } from '../joining/solve-chains.ts'
import type { Shelf } from '../kit/shelf.ts'
import { placePressure, restingOn } from './place-pressure.ts'
import type { PlacePressure } from './place-pressure.ts'
import { setUpHumidity } from './set-up-humidity.ts'
import type { SetUpHumidityQuestion } from './set-up-humidity.ts'

export interface ShelfHumidityQuestion extends Omit<
  SetUpHumidityQuestion,
  'chain' | 'barometricKpa'
> {
  readonly shelf: Shelf
  readonly wardId?: string
}

/** Null at flush: nobody knows the flow. */
export function shelfHumidity(question: ShelfHumidityQuestion): HumidityAnswer | null {
  const place = placePressure(question.case.site, question.shelf)
  const { barometricKpa } = place
  const answer = setUpHumidity({ ...question, barometricKpa, chain: chainFor(question, place) })
  return answer === null ? null : restingOn(answer, place)
}

function chainFor(question: ShelfHumidityQuestion, { barometricKpa }: PlacePressure): Chain | null {
  const { case: about, setUp, shelf, wardId } = question
  if (setUp.interfaceId === undefined) return null
  const answer = solveChains({
    shelf,
    wanted: setUp,
    patient: about.patient,
    barometricKpa,
    ...(wardId === undefined ? {} : { wardId }),
  })
  return answer.kind === 'chains' ? answer.best.chain : null
}
