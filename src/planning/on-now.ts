// The set-up in force, as typed at the bedside, made whole: source row from the shelf where one fits, size from the body.
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { SizeId } from '../kit/family-id.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Shelf } from '../kit/shelf.ts'
import { marksLpm } from '../kit/flow-steps.ts'
import { sizesFor } from '../kit/sizes-for.ts'
import type { BodySize } from '../kit/sizes-for.ts'
import type { FlowStep, MeterScale, SourceKind, SourceRow } from '../kit/source-row.ts'
import type { SetUpOnNow } from '../patient/case.ts'

/** Flush beyond a 15 L/min scale. Source: Driver2017 (more than 40 L/min) and its follow-up (40–60 L/min). */
const FLUSH = { medianLpm: 48, lowLpm: 40, highLpm: 60, source: 'Driver2017' } as const

/** The typed set-up as a set-up of the model. The fit stays the one typed, or ordinary wear. */
export function setUpOfOnNow(onNow: SetUpOnNow, shelf: Shelf, body: BodySize): SetUp {
  const source = sourceFor(onNow, shelf)
  return {
    family: onNow.family,
    size: onNow.size ?? usualSizeOf(onNow, body),
    fit: onNow.fit ?? 'gentle',
    source,
    flow: stepOf(onNow.flowLpm),
    setO2Fraction: onNow.setO2Fraction ?? null,
    humidification: source.kind === 'blender' || source.kind === 'ventilator' ? 'heated' : 'none',
    over:
      onNow.over === undefined
        ? null
        : { family: onNow.over.family, flow: stepOf(onNow.over.flowLpm) },
  }
}

function stepOf(flowLpm: number | 'flush'): FlowStep {
  return flowLpm === 'flush' ? { kind: 'flush' } : { kind: 'scale', flowLpm }
}

/** The size that suits the body best; where none is made for it, the family's nearest by age. */
function usualSizeOf(onNow: SetUpOnNow, body: BodySize): SizeId {
  const suitable = sizesFor(onNow.family, body)[0]
  if (suitable !== undefined) return suitable.size
  const { sizes } = INTERFACE_FAMILIES[onNow.family]
  const distance = (from: number, to: number): number =>
    Math.max(0, from - body.ageYears, body.ageYears - to)
  const nearest = [...sizes].sort(
    (a, b) => distance(a.ageYearsMin, a.ageYearsMax) - distance(b.ageYearsMin, b.ageYearsMax),
  )[0]
  return nearest?.id ?? 'adult'
}

/** A source of that kind on the shelf that has the mark, of several the one it holds most of; else a plain one of the kind with an ordinary scale. */
function sourceFor(onNow: SetUpOnNow, shelf: Shelf): SourceRow {
  const { flowLpm } = onNow
  const ofKind = shelf.sources.filter((row) => row.kind === onNow.sourceKind)
  const [marked] = ofKind
    .filter(
      (row) =>
        typeof flowLpm === 'number' &&
        marksLpm(row).some((mark) => Math.abs(mark - flowLpm) < 1e-9),
    )
    .toSorted((a, b) => b.count - a.count)
  const flushed = ofKind.find(
    (row) => flowLpm === 'flush' && 'meter' in row && row.meter.flush !== null,
  )
  return marked ?? flushed ?? plainSource(onNow.sourceKind, flowLpm)
}

function plainSource(kind: SourceKind, flowLpm: number | 'flush'): SourceRow {
  const base = { id: 'typed', label: '', count: 1, place: 'bedside' }
  const meter: MeterScale = {
    kind: 'tube-compensated',
    stepsLpm: typeof flowLpm === 'number' ? [flowLpm] : [],
    flush: FLUSH,
    meterClass: 'ordinary',
  }
  switch (kind) {
    case 'blender':
    case 'ventilator':
      return { ...base, kind, stepsLpm: meter.stepsLpm, fractionSteps: [], errorRelative: 0.1 }
    case 'jet-nebuliser':
      return { ...base, kind, meter, purity: 'pipeline', settings: [], driveLpmMax: 15, jets: 1 }
    case 'concentrator':
      return { ...base, kind, meter, purity: 'concentrator' }
    case 'wall-flowmeter':
    case 'two-flowmeters':
    case 'cylinder-regulator':
      return { ...base, kind, meter, purity: 'pipeline' }
  }
}
