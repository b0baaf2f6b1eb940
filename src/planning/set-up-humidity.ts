// Water at the airway for a set-up of a plan on a case. Leaves out how chains are found (joining).
import type { HumidityAnswer } from '../humidity/humidity-of-path.ts'
import { humidityOfPath } from '../humidity/humidity-of-path.ts'
import { pathOfChain } from '../humidity/path-of-chain.ts'
import { flowOfSetUp, pathOfSetUp, USUAL_HOSE } from '../humidity/path-of-set-up.ts'
import { hasStage } from '../humidity/water-path.ts'
import type { Chain } from '../joining/chain.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Case } from '../patient/case.ts'
import { airwayFactsOf } from './airway-facts.ts'
import { placePressure } from './place-pressure.ts'

export interface SetUpHumidityQuestion {
  readonly case: Case
  readonly setUp: SetUp
  /** Null or absent: not known. */
  readonly roomTemperatureC?: number | null
  readonly roomRelativeHumidityFraction?: number | null
  /** Gas leaving the heater, as set. */
  readonly heaterTemperatureC?: number | null
  readonly roomAirShare?: number | null
  /** Where absent, that of the case's place, at sea level where it gives none. */
  readonly barometricKpa?: number
  /** The parts that count; without them usual hoses stand in. */
  readonly chain?: Chain | null
}

/** Null at flush: nobody knows the flow. */
export function setUpHumidity(question: SetUpHumidityQuestion): HumidityAnswer | null {
  const { case: about, setUp } = question
  const flowLpm = flowOfSetUp(setUp)
  if (flowLpm === null) return null
  const airway = airwayFactsOf(about, setUp.family)
  const barometricKpa = question.barometricKpa ?? placePressure(about.site, {}).barometricKpa
  const chain = question.chain ?? null
  const path = chain === null ? pathOfSetUp(setUp, airway) : pathOfChain(chain, airway)
  const answer = humidityOfPath({
    path,
    family: setUp.family,
    flowLpm,
    room: {
      temperatureC: question.roomTemperatureC ?? null,
      relativeHumidityFraction: question.roomRelativeHumidityFraction ?? null,
      barometricKpa,
    },
    heaterTemperatureC: question.heaterTemperatureC ?? null,
    airway,
    roomAirShare: question.roomAirShare ?? null,
  })
  if (chain !== null || !hasStage(path, 'hose')) return answer
  const values = { lengthM: USUAL_HOSE.lengthM }
  const assumed = { code: 'HOSES_ASSUMED', values, known: 'common-practice' } as const
  return { ...answer, assumptions: [...answer.assumptions, assumed] }
}
