// Scales of the demo hospital's meters: marks and flush. Invented, but such as meters of each kind have.
import type { FlushFlow, MeterScale } from '../source-row.ts'

/** Marks from the first to the last in even steps; counted in whole steps so that each is the printed decimal. */
function marks(scale: {
  readonly from: number
  readonly to: number
  readonly by: number
}): readonly number[] {
  const count = Math.round((scale.to - scale.from) / scale.by) + 1
  return Array.from({ length: count }, (_, i) =>
    Number((scale.from + i * scale.by).toFixed(DECIMALS)),
  )
}

const DECIMALS = 3

/** Meter opened fully: above 40 L/min in one study, 40–60 in the next of the same group, above 50 in a third. */
export const FLUSH: FlushFlow = {
  lowLpm: 40,
  medianLpm: 50,
  highLpm: 60,
  source: 'Driver2017',
}

const TUBE = { kind: 'tube-compensated', flush: null } as const

export const TUBE_200_ML: MeterScale = {
  ...TUBE,
  stepsLpm: marks({ from: 0.01, to: 0.2, by: 0.01 }),
  meterClass: 'low-flow',
}
export const TUBE_1: MeterScale = {
  ...TUBE,
  stepsLpm: marks({ from: 0.1, to: 1, by: 0.1 }),
  meterClass: 'low-flow',
}
export const TUBE_3: MeterScale = {
  ...TUBE,
  stepsLpm: marks({ from: 0.25, to: 3, by: 0.25 }),
  meterClass: 'low-flow',
}
export const TUBE_5: MeterScale = {
  ...TUBE,
  stepsLpm: marks({ from: 0.5, to: 5, by: 0.5 }),
  meterClass: 'ordinary',
}
export const TUBE_6: MeterScale = {
  ...TUBE,
  stepsLpm: marks({ from: 0.5, to: 6, by: 0.5 }),
  meterClass: 'ordinary',
}
export const TUBE_15: MeterScale = {
  ...TUBE,
  stepsLpm: marks({ from: 1, to: 15, by: 1 }),
  flush: FLUSH,
  meterClass: 'ordinary',
}
export const TUBE_30: MeterScale = {
  ...TUBE,
  stepsLpm: marks({ from: 2, to: 30, by: 1 }),
  flush: FLUSH,
  meterClass: 'ordinary',
}
export const TUBE_70: MeterScale = {
  ...TUBE,
  stepsLpm: marks({ from: 10, to: 70, by: 5 }),
  meterClass: 'ordinary',
}
export const TUBE_15_UNCOMPENSATED: MeterScale = {
  ...TUBE_15,
  kind: 'tube-uncompensated',
  flush: null,
}
/** A tube to 15 without a full-open position, for jets and pairs. */
export const TUBE_15_PLAIN: MeterScale = { ...TUBE_15, flush: null }

const DIAL_MARKS = [0.25, 0.5, 0.75, 1, 1.5, 2, 3, 4, 6, 8, 10, 12, 15]

export const DIAL_15: MeterScale = {
  kind: 'dial',
  stepsLpm: DIAL_MARKS,
  flush: null,
  meterClass: 'ordinary',
}
export const DIAL_15_FLUSH: MeterScale = { ...DIAL_15, flush: FLUSH }

export const ELECTRONIC_15: MeterScale = {
  kind: 'electronic',
  stepsLpm: marks({ from: 0.1, to: 15, by: 0.1 }),
  flush: null,
  meterClass: 'ordinary',
}

export const BLENDER_30_LPM = marks({ from: 1, to: 30, by: 1 })
export const BLENDER_60_LPM = marks({ from: 5, to: 60, by: 5 })
export const VENTILATOR_LPM = marks({ from: 2, to: 60, by: 1 })
export const FRACTIONS = marks({ from: 0.21, to: 1, by: 0.01 })
