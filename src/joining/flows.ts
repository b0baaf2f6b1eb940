// What flows through each part of a chain: gas and litres per minute, from the outlets on. Leaves out leaks and meter error.
import { streamLpm } from '../kit/feeds.ts'
import { AIR_O2_FRACTION } from '../units/constants.ts'
import { feederOf, placed } from './chain.ts'
import type { Chain, PlacedPart } from './chain.ts'

export type PassingGas = 'none' | 'oxygen' | 'air' | 'blend' | 'other' | 'mixed-by-y'

export interface PassingFlow {
  /** As it leaves the part, L/min as metered. */
  readonly flowLpm: number
  readonly gas: PassingGas
  readonly o2Fraction: number
}

const NOTHING: PassingFlow = { flowLpm: 0, gas: 'none', o2Fraction: AIR_O2_FRACTION }

/** Flow and gas at the outlet of every part, in the order of the chain. The chain must stand in order: feeders first. */
export function passingFlows(chain: Chain): readonly PassingFlow[] {
  const flows: PassingFlow[] = []
  for (const at of chain.parts.keys())
    flows.push(leaving(placed(chain, at), feedsOf(chain, flows, at)))
  return flows
}

/** What comes in at a part, before a jet draws in air. */
export function drivingFlow(chain: Chain, flows: readonly PassingFlow[], at: number): PassingFlow {
  return summed(feedsOf(chain, flows, at))
}

function feedsOf(chain: Chain, flows: readonly PassingFlow[], at: number): readonly PassingFlow[] {
  return placed(chain, at).part.inlets.flatMap((end, index) => {
    // A collar only changes what the air ports draw in.
    if (end === 'air-ports') return []
    const from = feederOf(chain, at, index)
    return from === undefined || from >= at ? NOTHING : (flows[from] ?? NOTHING)
  })
}

function leaving({ part, setting }: PlacedPart, feeds: readonly PassingFlow[]): PassingFlow {
  const flowLpm = setting.flowLpm ?? 0
  switch (part.kind) {
    case 'wall-outlet':
    case 'cylinder':
      return ofGas(part.gas === 'oxygen' || part.gas === 'air' ? part.gas : 'other', 0)
    case 'wall-flowmeter':
    case 'two-flowmeters':
    case 'cylinder-regulator':
    case 'concentrator':
    case 'air-flowmeter':
      return ofGas(feeds.length === 0 ? 'oxygen' : gasOf(feeds), flowLpm)
    case 'blender':
    case 'ventilator':
      return { flowLpm, gas: 'blend', o2Fraction: setting.o2Fraction ?? 1 }
    case 'jet-nebuliser':
      return jetStream(feeds, setting.o2Fraction ?? 1)
    default:
      return summed(feeds)
  }
}

/** Air drawn in by the jet joins the driving gas; the dial's fraction holds for oxygen. */
function jetStream(feeds: readonly PassingFlow[], setO2Fraction: number): PassingFlow {
  const drive = summed(feeds)
  const flowLpm = streamLpm({ flowLpm: drive.flowLpm, setO2Fraction })
  const o2Fraction = drive.gas === 'air' ? AIR_O2_FRACTION : setO2Fraction
  return { flowLpm, gas: drive.gas, o2Fraction }
}

function ofGas(gas: PassingGas, flowLpm: number): PassingFlow {
  return { flowLpm, gas, o2Fraction: gas === 'oxygen' ? 1 : AIR_O2_FRACTION }
}

function summed(feeds: readonly PassingFlow[]): PassingFlow {
  const flowLpm = feeds.reduce((sum, feed) => sum + feed.flowLpm, 0)
  const oxygenLpm = feeds.reduce((sum, feed) => sum + feed.flowLpm * feed.o2Fraction, 0)
  const o2Fraction = flowLpm > 0 ? oxygenLpm / flowLpm : AIR_O2_FRACTION
  return { flowLpm, gas: gasOf(feeds), o2Fraction }
}

function gasOf(feeds: readonly PassingFlow[]): PassingGas {
  const gases = [...new Set(feeds.map(({ gas }) => gas).filter((gas) => gas !== 'none'))]
  return gases.length > 1 ? 'mixed-by-y' : (gases[0] ?? 'none')
}
