// Water at the airway for a set-up along the best chain of parts that a ward can build; where it can build none, along usual hoses. Leaves out how chains are found (joining).
import type { HumidityAnswer } from '../humidity/humidity-of-path.ts'
import type { Chain } from '../joining/chain.ts'
import { solveChains } from '../joining/solve-chains.ts'
import type { Shelf } from '../kit/shelf.ts'
import { assumePatient } from '../patient/assume.ts'
import { medianOf } from '../units/spread.ts'
import { setUpHumidity } from './set-up-humidity.ts'
import type { SetUpHumidityQuestion } from './set-up-humidity.ts'

export interface ShelfHumidityQuestion extends Omit<SetUpHumidityQuestion, 'chain'> {
  readonly shelf: Shelf
  readonly wardId?: string
}

/** Null at flush: nobody knows the flow. */
export function shelfHumidity(question: ShelfHumidityQuestion): HumidityAnswer | null {
  return setUpHumidity({ ...question, chain: chainFor(question) })
}

function chainFor(question: ShelfHumidityQuestion): Chain | null {
  const { case: about, setUp, shelf, wardId } = question
  if (setUp.interfaceId === undefined) return null
  const answer = solveChains({
    shelf,
    wanted: setUp,
    patient: about.patient,
    barometricKpa: medianOf(assumePatient(about).values.barometricPressureKpa.spread),
    ...(wardId === undefined ? {} : { wardId }),
  })
  return answer.kind === 'chains' ? answer.best.chain : null
}
