// The worker in which chains are solved, with their water and their sheets, so that the page keeps answering. Leaves out when it is asked.
import { expose } from 'comlink'
import { checkChain } from '../../joining/check-chain.ts'
import { solveChains } from '../../joining/solve-chains.ts'
import type { SolveQuestion } from '../../joining/solve-chains.ts'
import { shelfHumidity } from '../../planning/shelf-humidity.ts'
import { sheetChain } from '../../sheet/sheet-chain.ts'
import { makeSheet } from '../../sheet/sheet.ts'
import type { SheetAnswer } from '../../sheet/sheet.ts'
import { answered } from './answered.ts'
import type { ChainApi, SheetAsked, SolvedChain } from './chain-api.ts'

const api: ChainApi = {
  solve: (question) => answered(() => solved(question)),
  sheet: (asked) => answered(() => sheetFor(asked)),
  humidity: (question) => answered(() => shelfHumidity(question)),
}

function solved(question: SolveQuestion): SolvedChain {
  const answer = solveChains(question)
  if (answer.kind !== 'refused' || answer.nearest === null) return { answer, nearestCheck: null }
  return { answer, nearestCheck: checkChain({ ...question, chain: answer.nearest }) }
}

function sheetFor({ request, plan, shelf }: SheetAsked): SheetAnswer {
  const row = plan.ranked.find(({ id }) => id === request.setUpId)
  const chain =
    row === undefined ? null : sheetChain({ about: request.case, setUp: row.setUp, shelf })
  return makeSheet({ request, plan, shelf, chain })
}

expose(api)
