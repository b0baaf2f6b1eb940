// What can be set on one interface fed by one source: steps, blends, valve settings, all within the rated flow. Leaves out the patient.
import { fastBreathingLpm, FLUSH_FAMILIES, settingsOf, streamLpm } from './feeds.ts'
import { flowSteps } from './flow-steps.ts'
import { INTERFACE_FAMILIES } from './interface-families.ts'
import type { InterfaceFamily } from './interface-family.ts'
import type { SetUp } from './set-up.ts'
import type { InterfaceRow, ShelfSource, SizeStock } from './shelf.ts'
import type { LabelWeight } from './shelf-row.ts'
import { labelWeight } from './weight-fit.ts'
import type { FlowStep } from './source-row.ts'

/** Flow an interface may carry: as printed on the device where typed in, else as usual for the family and size. */
export interface RatedRange {
  readonly minLpm: number
  readonly maxLpm: number
  readonly isFromLabel: boolean
  /** Whom the device is for by its label; empty where nothing is typed. */
  readonly fits: LabelWeight
}

export interface Chain {
  readonly row: InterfaceRow
  readonly stock: SizeStock
  readonly source: ShelfSource
}

/** What is set on a chain. */
export interface Setting {
  readonly flow: FlowStep
  readonly setO2Fraction: number | null
  readonly over: SetUp['over']
  /** Entrainment valves: the step that the printed minimum asks for, or the one for a rate above 30/min. */
  readonly valveFlow: 'minimum' | 'fast-breathing' | null
}

/** Label before family, each end for itself. */
export function ratedRange(family: InterfaceFamily, stock: SizeStock): RatedRange | null {
  const size = family.sizes.find(({ id }) => id === stock.size)
  if (size === undefined) return null
  return {
    minLpm: stock.ratedMinLpm ?? size.rated.minLpm,
    maxLpm: stock.ratedMaxLpm ?? size.rated.maxLpm,
    isFromLabel: stock.ratedMinLpm !== undefined || stock.ratedMaxLpm !== undefined,
    fits: labelWeight(stock),
  }
}

/** Every setting of a chain within its rated flow; the source must be one that can feed the interface. */
export function settingsFor(
  chain: Chain,
  family: InterfaceFamily,
  rated: RatedRange,
): readonly Setting[] {
  const { source } = chain
  if ('fractionSteps' in source) return blends(source, rated)
  if (source.kind === 'jet-nebuliser') return nebulised(source, rated)
  if (family.entrainsAir !== 'no') return valves(chain, rated)
  if (family.id === 'cannula-under-mask') return underMask(chain, rated)
  return meteredSteps(chain, rated).map(plain)
}

function plain(flow: FlowStep): Setting {
  return { flow, setO2Fraction: null, over: null, valveFlow: null }
}

/** Steps within the rated flow; two meters only above what one gives; flush only where it was measured and no label forbids it. */
function meteredSteps({ row, stock, source }: Chain, rated: RatedRange): readonly FlowStep[] {
  const isFlushOffered =
    source.kind !== 'two-flowmeters' &&
    FLUSH_FAMILIES.includes(row.family) &&
    stock.size === 'adult' &&
    stock.ratedMaxLpm === undefined
  return flowSteps(source).filter((step) => {
    if (step.kind === 'flush') return isFlushOffered
    return isRated(rated, step.flowLpm) && isWorthTwoMeters(source, step.flowLpm)
  })
}

function isWorthTwoMeters(source: ShelfSource, flowLpm: number): boolean {
  if (source.kind !== 'two-flowmeters') return true
  return flowLpm > Math.max(...source.meter.stepsLpm)
}

function blends(
  source: Extract<ShelfSource, { readonly fractionSteps: readonly number[] }>,
  rated: RatedRange,
): readonly Setting[] {
  const used = source.usedFractions
  const fractions =
    used === undefined ? source.fractionSteps : source.fractionSteps.filter((f) => used.includes(f))
  return flowSteps(source)
    .filter((flow) => flow.kind === 'scale' && isRated(rated, flow.flowLpm))
    .flatMap((flow) => fractions.map((setO2Fraction) => ({ ...plain(flow), setO2Fraction })))
}

/** The stream that leaves the nebuliser, not its drive, must suit the interface. */
function nebulised(
  source: Extract<ShelfSource, { readonly kind: 'jet-nebuliser' }>,
  rated: RatedRange,
): readonly Setting[] {
  const used = source.usedFractions
  const settings =
    used === undefined ? source.settings : source.settings.filter((f) => used.includes(f))
  return settings.flatMap((setO2Fraction) =>
    flowSteps(source)
      .filter(
        (flow) =>
          flow.kind === 'scale' &&
          isRated(rated, streamLpm({ flowLpm: flow.flowLpm, setO2Fraction })),
      )
      .map((flow) => ({ ...plain(flow), setO2Fraction })),
  )
}

/** Each setting at the first step that reaches its printed minimum, and at the first that reaches the flow for fast breathing. */
function valves({ row, source }: Chain, rated: RatedRange): readonly Setting[] {
  const marks = flowSteps(source).filter(
    (flow) => flow.kind === 'scale' && isRated(rated, flow.flowLpm),
  )
  const reaching = (lpm: number): FlowStep | undefined =>
    marks.find((flow) => flow.kind === 'scale' && flow.flowLpm >= lpm)
  return settingsOf(row).flatMap((setting) => {
    const slow = reaching(setting.minimumLpm)
    if (slow === undefined) return []
    const base = { ...plain(slow), setO2Fraction: setting.o2Fraction }
    const fast = reaching(fastBreathingLpm(setting))
    const minimum: Setting = { ...base, valveFlow: 'minimum' }
    if (fast === undefined || fast === slow) return [minimum]
    return [minimum, { ...base, flow: fast, valveFlow: 'fast-breathing' }]
  })
}

/** Cannula and mask each on a meter of the same kind, so two of them are needed; few steps of each. */
function underMask({ row, stock, source }: Chain, rated: RatedRange): readonly Setting[] {
  if (source.count < 2) return []
  const mask = INTERFACE_FAMILIES['simple-mask']
  const maskRated = ratedRange(mask, { size: stock.size, count: stock.count })
  if (maskRated === null) return []
  const cannulaSteps = spaced(meteredSteps({ row, stock, source }, rated), 3)
  const maskSteps = spaced(
    flowSteps(source).filter((step) => step.kind === 'scale' && isRated(maskRated, step.flowLpm)),
    2,
  )
  return cannulaSteps.flatMap((flow) =>
    maskSteps.map((over) => ({
      ...plain(flow),
      over: { family: 'simple-mask' as const, flow: over },
    })),
  )
}

/** At most `count` of the list, evenly spaced, first and last among them. */
function spaced<T>(list: readonly T[], count: number): readonly T[] {
  if (list.length <= count) return list
  const gap = (list.length - 1) / (count - 1)
  return list.filter((_, i) =>
    Array.from({ length: count }, (_unused, k) => Math.round(k * gap)).includes(i),
  )
}

function isRated(rated: RatedRange, flowLpm: number): boolean {
  return flowLpm >= rated.minLpm && flowLpm <= rated.maxLpm
}
