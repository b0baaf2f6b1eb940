// One line about the set-up in sight: water at the airway against what is required. Leaves out water use, condensate and rules.
import type { Remote } from 'comlink'
import { memo, useMemo } from 'react'
import type { HumidityAnswer } from '../../humidity/humidity-of-path.ts'
import type { SetUp } from '../../kit/set-up.ts'
import type { ShelfHumidityQuestion } from '../../planning/shelf-humidity.ts'
import { HUMIDITY_LINE, humiditySummaryText } from '../../words/web-humidity-text.ts'
import { useSettled } from '../pages/use-settled.ts'
import type { ChainApi } from '../worker/chain-api.ts'
import type { PlanRequest } from '../worker/core-api.ts'
import { useChainAnswer } from '../worker/use-chain-answer.ts'
import type { ChainWait } from '../worker/use-chain-answer.ts'

export interface HumidityLineProps {
  readonly request: PlanRequest
  readonly setUp: SetUp
}

/** Asked only when the dials stand still, so that a drag never waits for it. */
export const HumidityLine = memo(function HumidityLine({ request, setUp }: HumidityLineProps) {
  const settled = useSettled(setUp)
  const question = useMemo(() => questionOf(request, settled), [request, settled])
  const water = useChainAnswer({ slot: 'humidity', question, ask })
  return (
    <p className="humidity-line" data-verdict={verdictOf(water)}>
      {settled === setUp ? saidText(water) : HUMIDITY_LINE.working}
    </p>
  )
})

function questionOf({ about, shelf, wardId }: PlanRequest, setUp: SetUp): ShelfHumidityQuestion {
  return { case: about, setUp, shelf, ...(wardId === undefined ? {} : { wardId }) }
}

const ask = async (core: Remote<ChainApi>, question: ShelfHumidityQuestion) =>
  await core.humidity(question)

type Water = ChainWait<ShelfHumidityQuestion, HumidityAnswer | null>

function saidText(water: Water): string {
  if (water.kind === 'waiting') return HUMIDITY_LINE.working
  if (water.kind !== 'answered') return HUMIDITY_LINE.failed
  return water.isStale ? HUMIDITY_LINE.working : humiditySummaryText(water.value)
}

/** Bold where water is missing. */
function verdictOf(water: Water): string | undefined {
  return water.kind === 'answered' ? water.value?.shortfall.verdict : undefined
}
