// The way of the gas as far as water is concerned: what it meets in order, from source to patient. Leaves out how parts join (joining) and what the patient does (delivery).

/** A vessel's label may state what it gives off, which then counts, and how much water it holds. */
interface Vessel {
  readonly partId: string
  readonly waterMl: number | null
  readonly labelMgPerL: number | null
}

export type Stage =
  | ({ readonly kind: 'bubble' | 'pass-over' | 'heated-chamber' } & Vessel)
  | ({ readonly kind: 'nebuliser'; readonly isHeated: boolean } & Vessel)
  /** Room air drawn in by a jet; `hasCollar` where mist is fed to its ports. */
  | { readonly kind: 'entrainment'; readonly airPerGas: number; readonly hasCollar: boolean }
  | {
      readonly kind: 'hose'
      readonly partId: string
      readonly lengthM: number
      readonly boreMm: number
      readonly isHeated: boolean
      readonly hasWaterTrap: boolean
    }
  | {
      readonly kind: 'exchanger'
      readonly partId: string
      readonly labelMgPerL: number | null
    }

export type StageKind = Stage['kind']

/** Stages in the order the gas meets them; the exchanger, if any, last. */
export interface WaterPath {
  readonly stages: readonly Stage[]
}

export type VesselStage = Extract<Stage, { readonly waterMl: number | null }>

export function vesselsOf(path: WaterPath): readonly VesselStage[] {
  return path.stages.filter((stage): stage is VesselStage => 'waterMl' in stage)
}

export function hasStage(path: WaterPath, ...kinds: readonly StageKind[]): boolean {
  return path.stages.some(({ kind }) => kinds.includes(kind))
}

/** Room air drawn in along the whole path, litres for each litre of gas from the source. */
export function airPerGasOf(path: WaterPath): number {
  const stream = path.stages.reduce(
    (litres, stage) => (stage.kind === 'entrainment' ? litres * (1 + stage.airPerGas) : litres),
    1,
  )
  return stream - 1
}

/** A heater stands in it: a chamber, or a nebuliser that is warmed. */
export function isHeatedPath(path: WaterPath): boolean {
  return path.stages.some(
    (stage) => stage.kind === 'heated-chamber' || (stage.kind === 'nebuliser' && stage.isHeated),
  )
}

/** Water is added by something other than the patient's own breath. */
export function isActivePath(path: WaterPath): boolean {
  return hasStage(path, 'heated-chamber', 'nebuliser')
}
