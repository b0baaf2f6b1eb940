// The gas source of a published study: a calibrated meter, blender or nebuliser without steps. Leaves out the ward's own rows.
import type { InterfaceFamily } from '../kit/interface-family.ts'
import type { MeterScale, SourceRow } from '../kit/source-row.ts'

const METER: MeterScale = {
  kind: 'electronic',
  stepsLpm: [],
  flush: null,
  meterClass: 'ordinary',
}

const PLACE = { label: 'study', count: 1, place: 'study' } as const
const PIPELINE_METER: SourceRow = {
  ...PLACE,
  id: 'study-meter',
  kind: 'wall-flowmeter',
  meter: METER,
  purity: 'pipeline',
}
const BLENDER: SourceRow = {
  ...PLACE,
  id: 'study-blender',
  kind: 'blender',
  stepsLpm: [],
  fractionSteps: [],
  errorRelative: 0,
}
const NEBULISER: SourceRow = {
  ...PLACE,
  id: 'study-nebuliser',
  kind: 'jet-nebuliser',
  meter: METER,
  purity: 'pipeline',
  settings: [],
  driveLpmMax: 15,
  jets: 1,
}

/** Small tubing is fed by a meter; high flow and head box by a blender; the other wide hoses by a nebuliser. */
export function researchSource(family: InterfaceFamily): SourceRow {
  if (family.feeds.includes('small-bore')) return PIPELINE_METER
  return family.id === 'nasal-high-flow' || family.id === 'head-box' ? BLENDER : NEBULISER
}
