// What the delivery model needs of a patient: breath, airway volumes and how the breath divides. Leaves out blood.
import type { AirwayState } from '../physiology/airway-state.ts'
import type { BreathPattern } from './breath.ts'

export interface DeliveryBody {
  readonly airway: AirwayState
  readonly breath: BreathPattern
  /** Nose, mouth and pharynx to the glottis. */
  readonly extrathoracicL: number
  /** Conducting airways below it. */
  readonly intrathoracicL: number
  /** Share of the breath that goes by mouth, 0–1 (natural airway). */
  readonly mouthShare: number
  /** Share of the breath that goes through the tube when its cuff is down or absent, 0–1. */
  readonly tubeShare: number
}

/** Numbers between 0 and 1 that choose within what is not known about the interface on this face; 0.5 is the middle. */
export interface InterfaceDraw {
  readonly pocket: number
  readonly exchange: number
  readonly jet: number
  readonly draught: number
  readonly leak: number
  readonly forwardLoss: number
  readonly bag: number
  readonly capture: number
  readonly flush: number
}

export const MIDDLE_INTERFACE: InterfaceDraw = {
  pocket: 0.5,
  exchange: 0.5,
  jet: 0.5,
  draught: 0.5,
  leak: 0.5,
  forwardLoss: 0.5,
  bag: 0.5,
  capture: 0.5,
  flush: 0.5,
}
