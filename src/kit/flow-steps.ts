// The flows a source can be set to: marks of the scale, the part of them in use, the next one up or down. Leaves out what then really flows.
import type { ShelfSource } from './shelf.ts'
import type { FlowStep, FlushFlow, MeterScale, SourceRow } from './source-row.ts'

/** The meter of a source that has one. */
export function meterOf(source: SourceRow): MeterScale | null {
  return 'meter' in source ? source.meter : null
}

/** Two where two meters or two jets, each on its own meter, are set to the same mark and join. */
export function metersOf(source: SourceRow): 1 | 2 {
  if (source.kind === 'two-flowmeters') return 2
  return source.kind === 'jet-nebuliser' ? source.jets : 1
}

/** Every flow that can be set, L/min, rising: marks of the scale, times two where two meters join. */
export function marksLpm(source: SourceRow): readonly number[] {
  if (source.kind === 'blender' || source.kind === 'ventilator') return source.stepsLpm
  const meters = metersOf(source)
  const maxLpm = source.kind === 'jet-nebuliser' ? source.driveLpmMax : Number.POSITIVE_INFINITY
  return source.meter.stepsLpm.filter((lpm) => lpm <= maxLpm).map((lpm) => lpm * meters)
}

export function flushOf(source: SourceRow): FlushFlow | null {
  return meterOf(source)?.flush ?? null
}

/** The steps in use, rising, flush last. A step that is not a mark of the scale is no step. */
export function flowSteps(source: ShelfSource): readonly FlowStep[] {
  const marks = marksLpm(source)
  const used = source.usedStepsLpm
  const meters = metersOf(source)
  const inUse = used === undefined ? marks : marks.filter((lpm) => used.includes(lpm / meters))
  const steps: FlowStep[] = inUse.map((flowLpm) => ({ kind: 'scale', flowLpm }))
  return flushOf(source) === null ? steps : [...steps, { kind: 'flush' }]
}

/** Whether the source can be set to this flow at all. */
export function isStepOf(source: SourceRow, flow: FlowStep): boolean {
  if (flow.kind === 'flush') return flushOf(source) !== null
  return marksLpm(source).includes(flow.flowLpm)
}

/** The step in use next above or below; null at the end of the scale. From a mark not in use, the nearest one in use on that side. */
export function nextStep(
  source: ShelfSource,
  flow: FlowStep,
  direction: 'up' | 'down',
): FlowStep | null {
  const steps = flowSteps(source)
  const height = heightOf(flow)
  const found =
    direction === 'up'
      ? steps.find((step) => heightOf(step) > height)
      : steps.findLast((step) => heightOf(step) < height)
  return found ?? null
}

/** Flow as set, L/min; of flush the middle of what is known of it. */
export function nominalLpm(source: SourceRow, flow: FlowStep): number | null {
  if (flow.kind === 'scale') return flow.flowLpm
  const flush = flushOf(source)
  return flush === null ? null : flush.medianLpm * metersOf(source)
}

/** Short code of a step, for ids: `6`, `0.25`, `flush`. */
export function stepCode(flow: FlowStep): string {
  return flow.kind === 'flush' ? 'flush' : String(flow.flowLpm)
}

function heightOf(flow: FlowStep): number {
  return flow.kind === 'flush' ? Number.POSITIVE_INFINITY : flow.flowLpm
}
