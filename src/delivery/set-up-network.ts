// From a set-up on a patient to the pockets of network.ts: one small function for each kind of gas behaviour.
import { assert } from '../errors.ts'
import type { FitId } from '../kit/family-id.ts'
import { exchangeScale } from '../kit/families/exchange.ts'
import type { DeliveredStream } from '../kit/delivered-stream.ts'
import type {
  GasBehaviour,
  InterfaceFamily,
  InterfaceSize,
  RoomExchange,
} from '../kit/interface-family.ts'
import { lpsFromLpm } from '../units/flow.ts'
import { litresFromMl } from '../units/volume.ts'
import { quantile } from '../units/spread.ts'
import { airwayPaths } from './airway-paths.ts'
import { peakInspiratoryFlowLpmBtps } from './breath.ts'
import type { DeliveryBody, InterfaceDraw } from './delivery-body.ts'
import { BARE_NETWORK } from './network.ts'
import type { Network } from './network.ts'

export interface SetUpOnPatient {
  readonly family: InterfaceFamily
  readonly size: InterfaceSize
  readonly fit: FitId
  readonly stream: DeliveredStream
  /** The mask over a cannula, with its own stream. */
  readonly over: { readonly family: InterfaceFamily; readonly stream: DeliveredStream } | null
  readonly body: DeliveryBody
  readonly draw: InterfaceDraw
}

/** Pockets of a set-up on a patient. Source of each behaviour: docs/models/<family>.md. */
export function setUpNetwork(setUp: SetUpOnPatient): Network {
  const { behaviour } = setUp.family
  const base: Network = {
    ...BARE_NETWORK,
    serialL: setUp.body.intrathoracicL,
    deviceFlowLps: lpsFromLpm(setUp.stream.totalLpmBtps),
    sourceShare: setUp.stream.sourceShare,
    ...airwayPaths(
      setUp.body,
      behaviour.kind === 'nasal-under-mask' ? 'nose' : setUp.family.opening,
    ),
  }
  switch (behaviour.kind) {
    case 'nasal':
      return nasal(base, setUp, behaviour)
    case 'high-flow':
      return highFlow(base, setUp, behaviour)
    case 'mask':
      return mask(base, setUp, behaviour)
    case 'reservoir':
      return reservoir(base, setUp, behaviour)
    case 'box':
      return {
        ...base,
        innerL: pocketL(setUp),
        exchangeLps: exchangeLps(behaviour.exchange, setUp, 1),
      }
    case 'nasal-under-mask':
      return underMask(base, setUp)
  }
}

function nasal(
  base: Network,
  setUp: SetUpOnPatient,
  behaviour: Extract<GasBehaviour, { kind: 'nasal' }>,
): Network {
  const openMouth = base.innerShareIn > 0 ? Math.min(1, 2 * setUp.body.mouthShare) : 0
  return {
    ...base,
    ...noseStore(base, behaviour.behindNoseShare),
    captureOut: quantile(behaviour.captureOut.spread, setUp.draw.capture) * openSides(setUp.body),
    flushLps:
      base.deviceFlowLps * quantile(behaviour.flushShare.spread, setUp.draw.flush) * openMouth,
  }
}

/** With one side packed, half of what the prongs give while the patient breathes out finds no way in (common practice, no measurement). */
function openSides(body: DeliveryBody): number {
  return body.airway.route !== 'laryngectomy' && body.airway.nose === 'one-side-blocked' ? 0.5 : 1
}

/**
 * High flow: the mouth draws in only what the stream leaves unmet. Its share falls in proportion to flow over peak inspiratory
 * flow and is nil from there on (no measurement; an outward flow at the mouth cannot draw in room air).
 */
function highFlow(
  base: Network,
  setUp: SetUpOnPatient,
  behaviour: Extract<GasBehaviour, { kind: 'high-flow' }>,
): Network {
  const perLpm = quantile(behaviour.clearanceMlPerSPerLpm.spread, setUp.draw.flush)
  const adultShare = setUp.body.extrathoracicL / ADULT_EXTRATHORACIC_L
  const clearanceLps =
    litresFromMl(perLpm * setUp.stream.totalLpmBtps) * Math.min(1, Math.sqrt(adultShare))
  const unmet = Math.max(
    0,
    1 - setUp.stream.totalLpmBtps / peakInspiratoryFlowLpmBtps(setUp.body.breath),
  )
  const throughNose = base.innerShareIn > 0 ? 1 - (1 - base.innerShareIn) * unmet : 0
  return {
    ...base,
    ...noseStore(base, HIGH_FLOW_NOSE_SHARE),
    innerShareIn: throughNose,
    captureOut: 1,
    flushLps: base.innerShareIn > 0 ? Math.min(clearanceLps, base.deviceFlowLps) : 0,
  }
}

/** Extrathoracic volume for which the clearance was measured, L (Nunn1959), and the nose's part of it. */
const ADULT_EXTRATHORACIC_L = 0.072
const HIGH_FLOW_NOSE_SHARE = 0.28

/** The nose becomes the inner pocket, the rest of the upper airway stays mixed. */
function noseStore(base: Network, noseShare: number): Pick<Network, 'innerL' | 'mixedL'> {
  return { innerL: base.mixedL * noseShare, mixedL: base.mixedL * (1 - noseShare) }
}

function mask(
  base: Network,
  setUp: SetUpOnPatient,
  behaviour: Extract<GasBehaviour, { kind: 'mask' }>,
): Network {
  const spaceL = pocketL(setUp)
  const draughtLps = lpsFromLpm(quantile(behaviour.draughtLpm.spread, setUp.draw.draught))
  const swapLps = exchangeLps(behaviour.exchange, setUp, scaleOf(setUp)) + draughtLps
  if (behaviour.limbL === null) return { ...base, innerL: spaceL, exchangeLps: swapLps }
  return {
    ...base,
    innerL: spaceL,
    hasOuter: true,
    outerL: quantile(behaviour.limbL.spread, setUp.draw.bag),
    exchangeLps: swapLps,
  }
}

function reservoir(
  base: Network,
  setUp: SetUpOnPatient,
  behaviour: Extract<GasBehaviour, { kind: 'reservoir' }>,
): Network {
  const scale = scaleOf(setUp)
  return {
    ...base,
    innerL: pocketL(setUp),
    exchangeLps: exchangeLps(behaviour.exchange, setUp, scale),
    bag: {
      volumeL: quantile(behaviour.bagL.spread, setUp.draw.bag) * scale,
      leakRatio: quantile(behaviour.leakRatio[setUp.fit].spread, setUp.draw.leak),
      forwardLoss: quantile(behaviour.forwardLoss.spread, setUp.draw.forwardLoss),
      hasInletValve: behaviour.hasInletValve,
      expiredShareIntoBag: behaviour.expiredShareIntoBag,
    },
  }
}

/** Nose under a mask: the mask body is the outer pocket, fed by its own stream; the mouth draws from it too. */
function underMask(base: Network, setUp: SetUpOnPatient): Network {
  const { over } = setUp
  assert(over !== null, 'cannula-under-mask has a mask over it')
  const { behaviour } = over.family
  assert(behaviour.kind === 'mask', 'the mask over a cannula is an open mask')
  const maskFlowLpm = over.stream.totalLpmBtps
  return {
    ...base,
    ...noseStore(base, HIGH_FLOW_NOSE_SHARE),
    hasOuter: true,
    outerL: pocketL(setUp),
    sideFromOuter: true,
    captureOut: 0.5,
    exchangeLps: exchangeOf(behaviour.exchange, setUp, scaleOf(setUp), maskFlowLpm),
    outerDeviceFlowLps: lpsFromLpm(maskFlowLpm),
    outerSourceShare: over.stream.sourceShare,
  }
}

function pocketL(setUp: SetUpOnPatient): number {
  return quantile(setUp.size.pocketL.spread, setUp.draw.pocket)
}

/** Exchange by area, relative to the adult mask of the same kind. */
function scaleOf(setUp: SetUpOnPatient): number {
  const adult = setUp.family.sizes.find((size) => size.id === 'adult')
  if (adult === undefined || setUp.size.id === 'adult') return 1
  return exchangeScale(
    quantile(setUp.size.pocketL.spread, 0.5),
    quantile(adult.pocketL.spread, 0.5),
  )
}

function exchangeLps(exchange: RoomExchange, setUp: SetUpOnPatient, scale: number): number {
  return exchangeOf(exchange, setUp, scale, setUp.stream.totalLpmBtps)
}

/** Fit × (base × area scale + k × stream), L/s. See kit/families/exchange.ts. */
function exchangeOf(
  exchange: RoomExchange,
  setUp: SetUpOnPatient,
  scale: number,
  streamLpm: number,
): number {
  const baseLpm = quantile(exchange.baseLpm.spread, setUp.draw.exchange) * scale
  const jetLpm = quantile(exchange.perJetFlow.spread, setUp.draw.jet) * streamLpm
  return lpsFromLpm(exchange.fitFactor[setUp.fit] * (baseLpm + jetLpm))
}
