// Water that reaches the airway on a sheet, against what is wanted, and the clock time by which a full vessel may be empty. Leaves out the model of humidity.
import { humidityOf } from '../humidity/humidity-of.ts'
import type { HumidityBand } from '../humidity/band.ts'
import type { Shortfall, ShortfallVerdict } from '../humidity/shortfall.ts'
import type { Chain } from '../joining/chain.ts'
import type { SetUp } from '../kit/set-up.ts'
import { airwayFactsOf } from '../planning/airway-facts.ts'
import { setUpHumidity } from '../planning/set-up-humidity.ts'
import type { SheetRequest } from './fragment.ts'
import { laterBy, wallText, wallTime } from './wall-clock.ts'

export interface SheetWater {
  readonly vapourMgPerLBtps: HumidityBand
  /** Null where nothing is required. */
  readonly leastMgPerL: number | null
  readonly verdict: ShortfallVerdict
  /** What no measurement judges, where that is why there is no verdict. */
  readonly notMeasured: Shortfall['notMeasured']
  /** Guidelines or local policies differ about what is wanted. */
  readonly isDisputed: boolean
  /** The earliest at which a vessel filled when the sheet was made may be empty; null where none holds water, and where it lasts longer than a day, as its water is changed before. */
  readonly emptyAt: string | null
}

const MINUTES_PER_HOUR = 60

/** Of the chain of parts where there is one, else of the set-up with usual parts. Null at flush, whose flow nobody knows. As humidityOf. */
export function sheetWater(question: {
  readonly request: Pick<SheetRequest, 'case' | 'madeAt'>
  readonly setUp: SetUp
  readonly chain: Chain | null
  readonly barometricKpa: number
}): SheetWater | null {
  const { request, setUp, chain, barometricKpa } = question
  if (setUp.flow.kind === 'flush') return null
  const answer =
    chain === null
      ? setUpHumidity({ case: request.case, setUp })
      : humidityOf({ chain, barometricKpa, airway: airwayFactsOf(request.case, setUp.family) })
  if (answer === null) return null
  const { vapourMgPerLBtps, requirement, shortfall, refillAfterHours } = answer
  return {
    vapourMgPerLBtps,
    leastMgPerL: requirement.leastMgPerL,
    verdict: shortfall.verdict,
    notMeasured: shortfall.notMeasured,
    isDisputed: requirement.isDisputed,
    emptyAt: emptyAt(request.madeAt, refillAfterHours?.low ?? null),
  }
}

const HOURS_PER_DAY = 24

function emptyAt(madeAt: string, hours: number | null): string | null {
  if (hours === null || hours > HOURS_PER_DAY) return null
  return wallText(laterBy(wallTime(madeAt, 'madeAt'), hours * MINUTES_PER_HOUR))
}
