// The chain of parts a sheet is for: the best that the shelf builds for its set-up, and what of it the steps ask about. Leaves out how chains are found.
import { humidifiersOf } from '../joining/chain.ts'
import type { Chain } from '../joining/chain.ts'
import { solveChains } from '../joining/solve-chains.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Shelf } from '../kit/shelf.ts'
import type { Case } from '../patient/case.ts'
import type { SheetHumidifier } from './facts.ts'

/** Null where parts are missing or the chain is refused; then the sheet says that it was not worked out. */
export function sheetChain(question: {
  readonly about: Case
  readonly setUp: SetUp
  readonly shelf: Shelf
  readonly wardId?: string
}): Chain | null {
  const { about, setUp, shelf, wardId } = question
  const { ageYears, weightKg, airway } = about.patient
  const answer = solveChains({
    shelf,
    wanted: setUp,
    patient: { ageYears, airway, ...(weightKg === undefined ? {} : { weightKg }) },
    ...(wardId === undefined ? {} : { wardId }),
  })
  return answer.kind === 'chains' ? answer.best.chain : null
}

/** Labels of its parts from the outlet on, the patient left out. */
export function partLabels(chain: Chain): readonly string[] {
  return chain.parts.filter(({ part }) => part.kind !== 'patient').map(({ part }) => part.label)
}

/** What wets the gas on the way, as steps know it; undefined where the set-up itself says. */
export function humidifierOfChain(chain: Chain): SheetHumidifier | undefined {
  const kinds = humidifiersOf(chain).map(({ part }) => part.kind)
  if (kinds.includes('heated') || kinds.includes('pass-over')) return 'heated'
  if (kinds.includes('bubble')) return 'bubble'
  return kinds.includes('collar') ? 'collar' : undefined
}

/** Whether one of its hoses has a trap where water gathers. */
export function hasWaterTrap(chain: Chain): boolean {
  return chain.parts.some(({ part }) => part.tube?.hasWaterTrap === true)
}
