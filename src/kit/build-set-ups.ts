// Every set-up that a shelf can build: interface × size × source × step × setting. Leaves out the patient, who decides what suits, and connectors.
import { DomainError } from '../errors.ts'
import type { SizeId } from './family-id.ts'
import {
  canFeed,
  fastBreathingLpm,
  FLUSH_FAMILIES,
  oxygenInBlendLpm,
  settingsOf,
  streamLpm,
} from './feeds.ts'
import { flowSteps, nominalLpm, stepCode } from './flow-steps.ts'
import { humidityRemarks } from './humidity-remark.ts'
import type { HumidityRemark } from './humidity-remark.ts'
import { INTERFACE_FAMILIES } from './interface-families.ts'
import type { InterfaceFamily } from './interface-family.ts'
import { printedFraction } from './printed-fraction.ts'
import type { PrintedAnswer } from './printed-fraction.ts'
import type { SetUp } from './set-up.ts'
import { isAtHand } from './shelf.ts'
import type { InterfaceRow, Shelf, ShelfSource, SizeStock } from './shelf.ts'
import { sizesFor } from './sizes-for.ts'
import type { BodySize } from './sizes-for.ts'
import type { FlowStep } from './source-row.ts'

/** Flow an interface may carry: as printed on the device where typed in, else as usual for the family and size. */
export interface RatedRange {
  readonly minLpm: number
  readonly maxLpm: number
  readonly isFromLabel: boolean
}

export interface CandidateSetUp {
  /** Stable: made of shelf ids, size, step and setting, such as `simple-mask/adult@wall-15#6`. */
  readonly id: string
  readonly setUp: SetUp
  readonly rated: RatedRange
  /** Flush on an interface measured with it: above the rated flow, on purpose. */
  readonly isBeyondRated: boolean
  /** Entrainment valves: the step that the printed minimum asks for, or the one for a rate above 30/min. */
  readonly valveFlow: 'minimum' | 'fast-breathing' | null
  /** Stream at the interface as set, air entrained on the way included, L/min as metered. */
  readonly streamLpm: number
  /** Oxygen drawn as set (gas of a concentrator counts in full), L/min as metered. */
  readonly oxygenUsedLpm: number
  readonly printed: PrintedAnswer
  readonly humidity: readonly HumidityRemark[]
}

/** Every set-up the shelf can build, or those that one ward can take what it needs for. Rows with a count of 0 build nothing.
 *  An unknown ward gives UNKNOWN_ID. Order: as the shelf's rows. */
export function candidateSetUps(shelf: Shelf, wardId?: string): readonly CandidateSetUp[] {
  if (wardId !== undefined) requireWard(shelf, wardId)
  const sources = shelf.sources.filter((row) => row.count > 0 && isAtHand(row, wardId))
  return shelf.interfaces
    .filter((row) => isAtHand(row, wardId))
    .flatMap((row) =>
      row.sizes
        .filter((stock) => stock.count > 0)
        .flatMap((stock) => sources.flatMap((source) => candidatesOf({ row, stock, source }))),
    )
}

/** Those whose size suits a body. */
export function candidatesForBody(
  candidates: readonly CandidateSetUp[],
  body: BodySize,
): readonly CandidateSetUp[] {
  return candidates.filter(({ setUp }) =>
    sizesFor(setUp.family, body).some(({ size }) => size === setUp.size),
  )
}

/** Label before family, each end for itself. */
export function ratedRange(family: InterfaceFamily, stock: SizeStock): RatedRange | null {
  const size = family.sizes.find(({ id }) => id === stock.size)
  if (size === undefined) return null
  return {
    minLpm: stock.ratedMinLpm ?? size.rated.minLpm,
    maxLpm: stock.ratedMaxLpm ?? size.rated.maxLpm,
    isFromLabel: stock.ratedMinLpm !== undefined || stock.ratedMaxLpm !== undefined,
  }
}

interface Chain {
  readonly row: InterfaceRow
  readonly stock: SizeStock
  readonly source: ShelfSource
}

/** What is set on a chain. */
interface Setting {
  readonly flow: FlowStep
  readonly setO2Fraction: number | null
  readonly over: SetUp['over']
  readonly valveFlow: CandidateSetUp['valveFlow']
}

function candidatesOf(chain: Chain): readonly CandidateSetUp[] {
  const family = INTERFACE_FAMILIES[chain.row.family]
  const rated = ratedRange(family, chain.stock)
  if (rated === null || !isUsedFor(chain.source, family)) return []
  return settingsFor(chain, family, rated).map((setting) => candidate(chain, rated, setting))
}

function isUsedFor(source: ShelfSource, family: InterfaceFamily): boolean {
  return canFeed(source.kind, family) && (source.usedFor?.includes(family.id) ?? true)
}

function settingsFor(chain: Chain, family: InterfaceFamily, rated: RatedRange): readonly Setting[] {
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

function candidate(chain: Chain, rated: RatedRange, setting: Setting): CandidateSetUp {
  const { row, stock, source } = chain
  const family = INTERFACE_FAMILIES[row.family]
  const setUp: SetUp = {
    family: row.family,
    size: stock.size,
    fit: 'gentle',
    interfaceId: row.id,
    source,
    flow: setting.flow,
    setO2Fraction: setting.setO2Fraction,
    humidification: 'fractionSteps' in source ? 'heated' : 'none',
    over: setting.over,
  }
  return {
    id: candidateId(row.id, stock.size, setUp),
    setUp,
    rated,
    isBeyondRated: setting.flow.kind === 'flush',
    valveFlow: setting.valveFlow,
    ...flowsOf(setUp),
    printed: printedFraction({ printed: family.printed, ...setUp }),
    humidity: humidityRemarks(setUp, { hasCollar: row.hasCollar ?? false }),
  }
}

/** `interface/size@source#step`, then `+step` of the mask over a cannula and `:fraction` of a setting. */
function candidateId(interfaceId: string, size: SizeId, setUp: SetUp): string {
  const over = setUp.over === null ? '' : `+${stepCode(setUp.over.flow)}`
  const setting = setUp.setO2Fraction === null ? '' : `:${setUp.setO2Fraction}`
  return `${interfaceId}/${size}@${setUp.source.id}#${stepCode(setUp.flow)}${over}${setting}`
}

function flowsOf(setUp: SetUp): Pick<CandidateSetUp, 'streamLpm' | 'oxygenUsedLpm'> {
  const flowLpm = nominalLpm(setUp.source, setUp.flow) ?? 0
  const overLpm = setUp.over === null ? 0 : (nominalLpm(setUp.source, setUp.over.flow) ?? 0)
  const { setO2Fraction } = setUp
  if ('fractionSteps' in setUp.source) {
    const oxygenUsedLpm = oxygenInBlendLpm({ flowLpm, setO2Fraction: setO2Fraction ?? 1 })
    return { streamLpm: flowLpm, oxygenUsedLpm }
  }
  const stream = setO2Fraction === null ? flowLpm : streamLpm({ flowLpm, setO2Fraction })
  return { streamLpm: stream + overLpm, oxygenUsedLpm: flowLpm + overLpm }
}

function requireWard(shelf: Shelf, wardId: string): void {
  const ids = shelf.wards.map(({ id }) => id)
  if (ids.includes(wardId)) return
  throw new DomainError({
    code: 'UNKNOWN_ID',
    path: 'wardId',
    value: wardId,
    limit: { oneOf: ids },
  })
}
