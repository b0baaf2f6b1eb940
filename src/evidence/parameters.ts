// Numbers of an interface that an explanation or a calibration may change, by name. Leaves out breathing and flow, which belong to the case.
import type {
  GasBehaviour,
  InterfaceFamily,
  RoomExchange,
  SourcedSpread,
} from '../kit/interface-family.ts'
import type { FitId } from '../kit/family-id.ts'
import { fixed } from '../units/spread.ts'

export const PARAMETER_IDS = [
  'exchange-base-lpm',
  'exchange-fit-factor',
  'jet-share',
  'leak-ratio',
  'forward-loss',
  'capture-out',
  'gas-space-l',
  'clearance-ml-per-s-per-lpm',
  'pressure-cmh2o-per-lpm',
] as const
export type ParameterId = (typeof PARAMETER_IDS)[number]
export type Parameters = Readonly<Partial<Record<ParameterId, number>>>

/** The family with some numbers fixed at the given value. A parameter the family does not have changes nothing. */
export function familyWith(family: InterfaceFamily, parameters: Parameters): InterfaceFamily {
  const spaceL = parameters['gas-space-l']
  const sizes =
    spaceL === undefined
      ? family.sizes
      : family.sizes.map((size) => ({ ...size, pocketL: fixedAt(size.pocketL, spaceL) }))
  return { ...family, sizes, behaviour: behaviourWith(family.behaviour, parameters) }
}

function behaviourWith(behaviour: GasBehaviour, parameters: Parameters): GasBehaviour {
  switch (behaviour.kind) {
    case 'nasal':
      return {
        ...behaviour,
        captureOut: fixedAt(behaviour.captureOut, parameters['capture-out']),
      }
    case 'high-flow':
      return {
        ...behaviour,
        clearanceMlPerSPerLpm: fixedAt(
          behaviour.clearanceMlPerSPerLpm,
          parameters['clearance-ml-per-s-per-lpm'],
        ),
        meanPressureCmH2oPerLpm: fixedAt(
          behaviour.meanPressureCmH2oPerLpm,
          parameters['pressure-cmh2o-per-lpm'],
        ),
      }
    case 'mask':
    case 'box':
      return { ...behaviour, exchange: exchangeWith(behaviour.exchange, parameters) }
    case 'reservoir': {
      const leak = parameters['leak-ratio']
      return {
        ...behaviour,
        exchange: exchangeWith(behaviour.exchange, parameters),
        leakRatio: forEveryFit((fit) => fixedAt(behaviour.leakRatio[fit], leak)),
        forwardLoss: fixedAt(behaviour.forwardLoss, parameters['forward-loss']),
      }
    }
    case 'nasal-under-mask':
      return behaviour
  }
}

function exchangeWith(exchange: RoomExchange, parameters: Parameters): RoomExchange {
  const factor = parameters['exchange-fit-factor']
  return {
    baseLpm: fixedAt(exchange.baseLpm, parameters['exchange-base-lpm']),
    perJetFlow: fixedAt(exchange.perJetFlow, parameters['jet-share']),
    fitFactor: forEveryFit((fit) => factor ?? exchange.fitFactor[fit]),
  }
}

function forEveryFit<T>(value: (fit: FitId) => T): Readonly<Record<FitId, T>> {
  return {
    tight: value('tight'),
    gentle: value('gentle'),
    loose: value('loose'),
    'over-surgical-mask': value('over-surgical-mask'),
  }
}

function fixedAt(stored: SourcedSpread, value: number | undefined): SourcedSpread {
  return value === undefined ? stored : { ...stored, spread: fixed(value) }
}
