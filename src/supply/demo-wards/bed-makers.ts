// Short ways to write the beds of the demo wards. Holds no bed.
import type { SetUpOnNow } from '../../patient/case.ts'
import { kpaFromBar } from '../../units/pressure.ts'
import type { Bed, BedCylinder } from '../ward.ts'

export const WALL = { sourceKind: 'wall-flowmeter' } as const

export function cannula(flowLpm: number): SetUpOnNow {
  return { family: 'nasal-cannula', ...WALL, flowLpm }
}

export function valve(setO2Fraction: number, flowLpm: number): SetUpOnNow {
  return { family: 'entrainment-mask', ...WALL, flowLpm, setO2Fraction }
}

export function mask(flowLpm: number): SetUpOnNow {
  return { family: 'simple-mask', ...WALL, flowLpm }
}

export function reservoir(flowLpm: number): SetUpOnNow {
  return { family: 'non-rebreather-mask', ...WALL, flowLpm }
}

export function highFlow(flowLpm: number, setO2Fraction: number): SetUpOnNow {
  return { family: 'nasal-high-flow', sourceKind: 'blender', flowLpm, setO2Fraction }
}

export function small(gaugeBar: number, isValveOpen: boolean): readonly BedCylinder[] {
  return [{ waterVolumeL: 2, gaugeKpa: kpaFromBar(gaugeBar), isValveOpen }]
}

export function large(gaugeBar: number): readonly BedCylinder[] {
  return [{ waterVolumeL: 10, gaugeKpa: kpaFromBar(gaugeBar), isValveOpen: false }]
}

/** Two oxygen outlets and one of air, as at every bed of the demo hospital. */
export const OUTLETS = { oxygenOutlets: 2, airOutlets: 1 } as const

export function empty(bed: string): Bed {
  return { bed, isEmpty: true, ...OUTLETS }
}
