// What the answer rests on and nobody typed, as codes with values and provenance. Leaves out their words.
import type { Known, Provenance } from '../units/provenance.ts'
import { medianOf, quantile } from '../units/spread.ts'
import type { Spreads } from './band.ts'
import type { HumidityQuestion } from './humidity-of-path.ts'
import { PARAMETERS } from './parameters.ts'
import type { ParameterId } from './parameters.ts'
import { vesselsOf } from './water-path.ts'

export interface Assumption extends Provenance {
  readonly code: string
  /** Middle and 10–90 % ends, with the unit; empty where the assumption is no number. */
  readonly values: Readonly<Record<string, number | string>>
}

const LOW = 0.1
const HIGH = 0.9

export function assumptionsOf(options: {
  readonly question: HumidityQuestion
  readonly spreads: Spreads
  readonly used: readonly ParameterId[]
}): readonly Assumption[] {
  const { question, spreads, used } = options
  const numbers = used
    .filter((id) => spreads[id].kind !== 'fixed')
    .map((id) => numberAssumption(id, spreads))
  return [...numbers, ...plainAssumptions(question)]
}

function numberAssumption(id: ParameterId, spreads: Spreads): Assumption {
  const { code, unit, known, source } = PARAMETERS[id]
  const spread = spreads[id]
  const values = {
    low: quantile(spread, LOW),
    middle: medianOf(spread),
    high: quantile(spread, HIGH),
    unit,
  }
  return { code, values, known, ...(source === undefined ? {} : { source }) }
}

function plainAssumptions(question: HumidityQuestion): readonly Assumption[] {
  const holdsWater = vesselsOf(question.path)
  return [
    plain('SOURCE_GAS_DRY', 'memory', 'PhEur2010'),
    ...(holdsWater.some(({ waterMl }) => waterMl === null)
      ? [plain('WATER_VOLUME_ASSUMED', 'common-practice')]
      : []),
    ...((question.roomAirShare ?? null) === null && !isSealed(question)
      ? [plain('ROOM_AIR_BESIDE_NOT_COUNTED', 'derived')]
      : []),
    plain('HUMIDITY_NOT_CHECKED_AT_BEDSIDE', 'derived'),
  ]
}

/** An exchanger's figure is of the whole breath. */
function isSealed(question: HumidityQuestion): boolean {
  return question.path.stages.some(({ kind }) => kind === 'exchanger')
}

function plain(code: string, known: Known, source?: string): Assumption {
  return { code, values: {}, known, ...(source === undefined ? {} : { source }) }
}
