// The worker in which the core of the Gas page runs, so that the page keeps answering. Leaves out when it is asked.
import { expose } from 'comlink'
import { lightsOut } from '../../supply/lights-out.ts'
import { wardDemand } from '../../supply/ward-demand.ts'
import type { ChainTaken } from '../../supply/chain-taken.ts'
import {
  planTransfer,
  whenItStandsStill,
  withChains,
  type TransferQuestion,
} from '../../supply/transfer.ts'
import { answered } from '../worker/answered.ts'
import type { GasApi } from './gas-api.ts'

const api: GasApi = {
  ward: (request) =>
    answered(() => {
      const { simulation, ...demand } = wardDemand(request)
      const { shareAbove, ...numbers } = simulation
      return {
        ...demand,
        simulation: numbers,
        shareAboveDesign: shareAbove(demand.designLpm),
      }
    }),
  drill: ({ ward, shelf }) => answered(() => lightsOut(ward, shelf)),
  transfer: ({ question, stopLegIndex }) =>
    answered(() => {
      const plan = planTransfer(withChains(question, solvedFor(question)))
      return {
        plan,
        stopped: stopLegIndex === null ? null : whenItStandsStill(plan, { legIndex: stopLegIndex }),
      }
    }),
}

/** Chains of the shelf asked with last, so that typing a time does not solve them anew. */
let solved = { shelf: '', chains: new Map<string, ChainTaken | undefined>() }

function solvedFor(question: TransferQuestion): typeof solved.chains {
  const shelf = JSON.stringify(question.shelf)
  if (solved.shelf !== shelf) solved = { shelf, chains: new Map() }
  return solved.chains
}

expose(api)
