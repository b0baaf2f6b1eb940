// Through which opening a patient breathes and what sits in it. Leaves out disease of the lungs.

export type TubeCuff = 'up' | 'down' | 'none'

/** A tracheostomy tube and what is on it. */
export interface TracheostomyTube {
  readonly cuff: TubeCuff
  /** One-way valve: in by the tube, out by the mouth and nose. */
  readonly speakingValve: boolean
  /** Closed tube: the patient breathes by mouth and nose. */
  readonly capped: boolean
  /** Heat and moisture exchanger on the tube. */
  readonly heatMoistureExchanger: boolean
}

export type NoseState = 'open' | 'one-side-blocked' | 'blocked'

export type AirwayState =
  | { readonly route: 'natural'; readonly nose: NoseState }
  | { readonly route: 'tracheostomy'; readonly tube: TracheostomyTube; readonly nose: NoseState }
  /** The windpipe ends at the neck; mouth and nose do not lead to the lungs. */
  | { readonly route: 'laryngectomy'; readonly heatMoistureExchanger: boolean }

export type AirwayKind =
  | 'natural'
  | 'nose-blocked'
  | 'tracheostomy-cuff-up'
  | 'tracheostomy-cuff-down'
  | 'tracheostomy-uncuffed'
  | 'tracheostomy-speaking-valve'
  | 'tracheostomy-capped'
  | 'laryngectomy'

/** One name for the state as a whole, as the delivery model distinguishes it. A capped tube counts first, then the valve, then the cuff. */
export function airwayKind(airway: AirwayState): AirwayKind {
  if (airway.route === 'laryngectomy') return 'laryngectomy'
  if (airway.route === 'natural') return airway.nose === 'blocked' ? 'nose-blocked' : 'natural'
  if (airway.tube.capped) return 'tracheostomy-capped'
  if (airway.tube.speakingValve) return 'tracheostomy-speaking-valve'
  if (airway.tube.cuff === 'up') return 'tracheostomy-cuff-up'
  return airway.tube.cuff === 'down' ? 'tracheostomy-cuff-down' : 'tracheostomy-uncuffed'
}

/** Whether mouth and nose lead to the lungs. */
export function upperAirwayInUse(airway: AirwayState): boolean {
  const kind = airwayKind(airway)
  return kind !== 'laryngectomy' && kind !== 'tracheostomy-cuff-up'
}

/** Whether the neck opening leads to the lungs. */
export function neckInUse(airway: AirwayState): boolean {
  const kind = airwayKind(airway)
  return kind !== 'natural' && kind !== 'nose-blocked' && kind !== 'tracheostomy-capped'
}
