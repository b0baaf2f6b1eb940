// Water at the airway for a set-up of a plan on a case. Leaves out chains of parts, which name hoses and vessels.
import type { HumidityAnswer } from '../humidity/humidity-of-path.ts'
import { humidityOfPath } from '../humidity/humidity-of-path.ts'
import { flowOfSetUp, pathOfSetUp, USUAL_HOSE } from '../humidity/path-of-set-up.ts'
import type { SetUp } from '../kit/set-up.ts'
import { assumePatient } from '../patient/assume.ts'
import type { Case } from '../patient/case.ts'
import { medianOf } from '../units/spread.ts'
import { airwayFactsOf } from './airway-facts.ts'

export interface SetUpHumidityQuestion {
  readonly case: Case
  readonly setUp: SetUp
  /** Null or absent: not known. */
  readonly roomTemperatureC?: number | null
  readonly roomRelativeHumidityFraction?: number | null
  /** Gas leaving the heater, as set. */
  readonly heaterTemperatureC?: number | null
  readonly roomAirShare?: number | null
}

/** Null at flush: nobody knows the flow. */
export function setUpHumidity(question: SetUpHumidityQuestion): HumidityAnswer | null {
  const { case: about, setUp } = question
  const flowLpm = flowOfSetUp(setUp)
  if (flowLpm === null) return null
  const airway = airwayFactsOf(about, setUp.family)
  const path = pathOfSetUp(setUp, airway)
  const barometric = assumePatient(about).values.barometricPressureKpa.spread
  const answer = humidityOfPath({
    path,
    family: setUp.family,
    flowLpm,
    room: {
      temperatureC: question.roomTemperatureC ?? null,
      relativeHumidityFraction: question.roomRelativeHumidityFraction ?? null,
      barometricKpa: medianOf(barometric),
    },
    heaterTemperatureC: question.heaterTemperatureC ?? null,
    airway,
    roomAirShare: question.roomAirShare ?? null,
  })
  if (!path.stages.some(({ kind }) => kind === 'hose')) return answer
  const values = { lengthM: USUAL_HOSE.lengthM }
  const assumed = { code: 'HOSES_ASSUMED', values, known: 'common-practice' } as const
  return { ...answer, assumptions: [...answer.assumptions, assumed] }
}
