// The worker in which chains are solved, with their water and their sheets, so that the page keeps answering. Leaves out when it is asked.
import { expose } from 'comlink'
import { checkChain } from '../../joining/check-chain.ts'
import { solveChains } from '../../joining/solve-chains.ts'
import { chainHumidity } from '../../planning/chain-humidity.ts'
import { shelfHumidity } from '../../planning/shelf-humidity.ts'
import { makeSheet } from '../../sheet/sheet.ts'
import { answered } from './answered.ts'
import type { ChainApi, ChainAsked, SolvedChain } from './chain-api.ts'

const api: ChainApi = {
  solve: (asked) => answered(() => solved(asked)),
  sheet: (asked) => answered(() => makeSheet(asked)),
  humidity: (question) => answered(() => shelfHumidity(question)),
}

function solved({ about, place, ...asked }: ChainAsked): SolvedChain {
  const { barometricKpa } = place
  const { patient } = about
  const answer = solveChains({ ...asked, patient, barometricKpa })
  if (answer.kind === 'refused') {
    const { nearest } = answer
    const nearestCheck =
      nearest === null ? null : checkChain({ chain: nearest, patient, barometricKpa })
    return { answer, nearestCheck, water: null }
  }
  const { chain } = answer.kind === 'chains' ? answer.best : answer.withThem
  return { answer, nearestCheck: null, water: chainHumidity({ chain, about, place }) }
}

expose(api)
