// How far our value of a row moves with the breathing that its source leaves open. Leaves out rows whose source states the breathing.
import type { EngineCase } from './engine-case.ts'
import type { EvidenceRow, Reproduction } from './evidence-row.ts'
import { reproduceRow } from './reproduce.ts'

/** Ventilation taken a fifth lower and a fifth higher, by depth of breath. */
export const VENTILATION_FACTORS = { low: 0.8, high: 1.2 } as const

export interface BreathingSensitivity {
  readonly atLowerVentilation: number
  readonly atHigherVentilation: number
}

/** Null where the source states the breathing, or where no breath is run. */
export function breathingSensitivity(row: EvidenceRow): BreathingSensitivity | null {
  if (row.breathing === null || row.breathing.isStated) return null
  const at = (factor: number): number =>
    reproduceRow({ ...row, reproduce: scaledReproduction(row.reproduce, factor) })
  return {
    atLowerVentilation: at(VENTILATION_FACTORS.low),
    atHigherVentilation: at(VENTILATION_FACTORS.high),
  }
}

function scaledReproduction(reproduce: Reproduction, factor: number): Reproduction {
  const scaled = (engine: EngineCase): EngineCase => ({
    ...engine,
    breath: { ...engine.breath, tidalVolumeL: engine.breath.tidalVolumeL * factor },
  })
  switch (reproduce.by) {
    case 'formula':
      return reproduce
    case 'engine':
    case 'people':
      return { ...reproduce, engine: scaled(reproduce.engine) }
    case 'change':
      return { ...reproduce, from: scaled(reproduce.from), to: scaled(reproduce.to) }
    case 'patterns':
      return { ...reproduce, engines: reproduce.engines.map(scaled) }
  }
}
