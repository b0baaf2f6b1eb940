// Humidity of a chain of parts: what reaches the airway, what is required, water, condensate, rules. Leaves out how the chain was found.
import { DomainError } from '../errors.ts'
import type { Chain } from '../joining/chain.ts'
import type { AirwayFacts } from './facts.ts'
import { humidityOfPath } from './humidity-of-path.ts'
import type { HumidityAnswer } from './humidity-of-path.ts'
import { familyOfChain, flowOfChain, pathOfChain } from './path-of-chain.ts'

export interface ChainHumidityQuestion {
  readonly chain: Chain
  /** Gas from the source as metered; absent: what is set on the chain. */
  readonly flowLpm?: number
  readonly barometricKpa: number
  /** Null or absent: not known, carried as a spread. */
  readonly roomTemperatureC?: number | null
  readonly roomRelativeHumidityFraction?: number | null
  /** Gas leaving the heater, as set. */
  readonly heaterTemperatureC?: number | null
  readonly roomAirShare?: number | null
  readonly airway: AirwayFacts
}

/** Vapour in mg per litre at body conditions with its 10–90 % band. Without a flow on chain or question, or at flush, which
 *  nobody can meter: MISSING_FIELD. Rooms 12–45 °C, heaters 20–45 °C, 50–107 kPa. */
export function humidityOf(question: ChainHumidityQuestion): HumidityAnswer {
  const { chain, airway } = question
  const flowLpm = question.flowLpm ?? flowOfChain(chain)
  if (flowLpm === null)
    throw new DomainError({ code: 'MISSING_FIELD', path: 'flowLpm', value: null, unit: 'L/min' })
  return humidityOfPath({
    path: pathOfChain(chain, airway),
    family: familyOfChain(chain),
    flowLpm,
    room: {
      temperatureC: question.roomTemperatureC ?? null,
      relativeHumidityFraction: question.roomRelativeHumidityFraction ?? null,
      barometricKpa: question.barometricKpa,
    },
    heaterTemperatureC: question.heaterTemperatureC ?? null,
    airway,
    roomAirShare: question.roomAirShare ?? null,
  })
}
