// Water along a chain for a patient of whom little or much is known. Leaves out how the chain was found (joining).
import { humidityOf } from '../humidity/humidity-of.ts'
import type { HumidityAnswer } from '../humidity/humidity-of-path.ts'
import { familyOfChain, flowOfChain } from '../humidity/path-of-chain.ts'
import type { Chain } from '../joining/chain.ts'
import type { Case } from '../patient/case.ts'
import { airwayFactsOf } from './airway-facts.ts'
import { restingOn } from './place-pressure.ts'
import type { PlacePressure } from './place-pressure.ts'

/** Null at flush, whose flow nobody knows. The chain ends in an interface. As humidityOf. */
export function chainHumidity(question: {
  readonly chain: Chain
  readonly about: Pick<Case, 'patient' | 'breathing'>
  readonly place: PlacePressure
  /** Null or absent: not known. */
  readonly roomTemperatureC?: number | null
  readonly roomRelativeHumidityFraction?: number | null
  readonly heaterTemperatureC?: number | null
}): HumidityAnswer | null {
  const { about, place, ...asked } = question
  const { chain } = asked
  if (flowOfChain(chain) === null) return null
  const { barometricKpa } = place
  const airway = airwayFactsOf(about, familyOfChain(chain))
  return restingOn(humidityOf({ ...asked, barometricKpa, airway }), place)
}
