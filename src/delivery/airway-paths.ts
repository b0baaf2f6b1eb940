// How the breath divides between the interface and the other way in, for each airway state and place of the interface.
import type { OpeningId } from '../kit/family-id.ts'
import { airwayKind } from '../physiology/airway-state.ts'
import type { DeliveryBody } from './delivery-body.ts'
import type { Network } from './network.ts'

type Paths = Pick<Network, 'innerShareIn' | 'innerShareOut' | 'sideL' | 'mixedL'>

/** Gas space of a tube and its connector, L (geometry of an 8 mm tube; memory). */
const TUBE_L = 0.005
/** Part of the extrathoracic volume that the mouth adds to the second path (memory). */
const MOUTH_SHARE_OF_VOLUME = 0.2

/** Shares and volumes of the two paths. An interface whose opening does not lead to the lungs delivers nothing: share 0. */
export function airwayPaths(body: DeliveryBody, opening: OpeningId): Paths {
  switch (airwayKind(body.airway)) {
    case 'natural':
    case 'tracheostomy-capped':
      return naturalPaths(body, opening)
    case 'nose-blocked':
      return naturalPaths({ ...body, mouthShare: 1 }, opening)
    case 'tracheostomy-cuff-up':
    case 'laryngectomy':
      return neckPaths(opening, { in: 1, out: 1 })
    case 'tracheostomy-speaking-valve':
      return speakingValvePaths(body, opening)
    case 'tracheostomy-cuff-down':
    case 'tracheostomy-uncuffed':
      return dividedPaths(body, opening)
  }
}

function naturalPaths(body: DeliveryBody, opening: OpeningId): Paths {
  if (opening === 'neck')
    return { innerShareIn: 0, innerShareOut: 0, sideL: 0, mixedL: body.extrathoracicL }
  const throughNose = opening === 'nose' ? 1 - body.mouthShare : 1
  // A cannula under a mask also sits at the nose; its family sets the opening to face and divides by mouth share itself.
  return {
    innerShareIn: throughNose,
    innerShareOut: throughNose,
    sideL: throughNose < 1 ? body.extrathoracicL * MOUTH_SHARE_OF_VOLUME : 0,
    mixedL: body.extrathoracicL,
  }
}

function neckPaths(
  opening: OpeningId,
  share: { readonly in: number; readonly out: number },
): Paths {
  const reaches = opening === 'neck'
  return {
    innerShareIn: reaches ? share.in : 0,
    innerShareOut: reaches ? share.out : 0,
    sideL: 0,
    mixedL: TUBE_L,
  }
}

/** In by the tube only, out by mouth and nose only. */
function speakingValvePaths(body: DeliveryBody, opening: OpeningId): Paths {
  if (opening === 'neck')
    return { innerShareIn: 1, innerShareOut: 0, sideL: body.extrathoracicL, mixedL: TUBE_L }
  return { innerShareIn: 0, innerShareOut: 1, sideL: 0, mixedL: TUBE_L }
}

/** Tube and upper airway side by side; the path without the interface draws room air. */
function dividedPaths(body: DeliveryBody, opening: OpeningId): Paths {
  if (opening === 'neck') {
    return {
      innerShareIn: body.tubeShare,
      innerShareOut: body.tubeShare,
      sideL: body.extrathoracicL,
      mixedL: TUBE_L,
    }
  }
  const upper = 1 - body.tubeShare
  const share = opening === 'nose' ? upper * (1 - body.mouthShare) : upper
  return { innerShareIn: share, innerShareOut: share, sideL: TUBE_L, mixedL: body.extrathoracicL }
}
