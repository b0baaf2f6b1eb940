// The worker in which the core of the Gas page runs, so that the page keeps answering. Leaves out when it is asked.
import { expose } from 'comlink'
import { lightsOut } from '../../supply/lights-out.ts'
import { wardDemand } from '../../supply/ward-demand.ts'
import { planTransfer, whenItStandsStill } from '../../supply/transfer.ts'
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
      const plan = planTransfer(question)
      return {
        plan,
        stopped: stopLegIndex === null ? null : whenItStandsStill(plan, { legIndex: stopLegIndex }),
      }
    }),
}

expose(api)
