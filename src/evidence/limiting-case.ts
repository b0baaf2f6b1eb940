// The engine with its pockets switched off, so that it must meet handbook arithmetic exactly. No set-up on a patient is built this way.
import type { Network } from '../delivery/network.ts'

export type LimitingCase =
  /** Gas goes straight from the device to the mouth; air makes up the rest. */
  | { readonly kind: 'no-pocket' }
  /**
   * A store of pure device gas of fixed size, emptied first in each inspiration and filled only by the given share of the flow
   * during expiration: with 0.75 lost and 2 s of expiration it takes in 0.5 s of flow, as in the handbook's pause.
   */
  | { readonly kind: 'store'; readonly storeL: number; readonly lostShare: number }
  /** All gas that the device gives is inhaled: an endless store. */
  | { readonly kind: 'all-captured' }

/** The pockets of `network` reduced to the limiting case. Device flow and its mixture stay. */
export function limitingNetwork(network: Network, limit: LimitingCase): Network {
  const bare: Network = {
    ...network,
    innerL: 0,
    outerL: 0,
    sideL: 0,
    hasOuter: false,
    innerShareIn: 1,
    innerShareOut: 1,
    exchangeLps: 0,
    captureOut: 1,
    flushLps: 0,
    bag: null,
  }
  switch (limit.kind) {
    case 'no-pocket':
      return bare
    case 'store':
      return { ...bare, bag: store(limit.storeL, limit.lostShare) }
    case 'all-captured':
      return { ...bare, bag: store(ENDLESS_L, 0) }
  }
}

/** More than any breath takes. */
const ENDLESS_L = 10

function store(volumeL: number, lostShare: number) {
  return {
    volumeL,
    leakRatio: 0,
    forwardLoss: lostShare,
    hasInletValve: true,
    expiredShareIntoBag: 0,
  }
}
