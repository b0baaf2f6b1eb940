// Every set-up that a shelf can build: interface × size × source × step × setting. Leaves out the patient, who decides what suits, and connectors.
import { DomainError } from '../errors.ts'
import type { SizeId } from './family-id.ts'
import { canFeed, oxygenInBlendLpm, streamLpm } from './feeds.ts'
import { meterOf, metersOf, nominalLpm, stepCode } from './flow-steps.ts'
import { humidityRemarks } from './humidity-remark.ts'
import type { HumidityRemark } from './humidity-remark.ts'
import { INTERFACE_FAMILIES } from './interface-families.ts'
import type { InterfaceFamily } from './interface-family.ts'
import { printedFraction } from './printed-fraction.ts'
import type { PrintedAnswer } from './printed-fraction.ts'
import type { SetUp } from './set-up.ts'
import { hasNoEvenMode, isAtHand } from './shelf.ts'
import type { Shelf, ShelfSource } from './shelf.ts'
import { ratedRange, settingsFor } from './set-up-settings.ts'
import type { Chain, RatedRange, Setting } from './set-up-settings.ts'
import { sizesFor } from './sizes-for.ts'
import type { BodySize } from './sizes-for.ts'

export interface CandidateSetUp {
  /** Stable: made of shelf ids, size, step and setting, such as `simple-mask/adult@wall-15#6`. */
  readonly id: string
  readonly setUp: SetUp
  readonly rated: RatedRange
  /** Flush on an interface measured with it: above the rated flow, on purpose. */
  readonly isBeyondRated: boolean
  readonly valveFlow: Setting['valveFlow']
  /** Stream at the interface as set, air entrained on the way included, L/min as metered. */
  readonly streamLpm: number
  /** Oxygen drawn as set (gas of a concentrator counts in full), L/min as metered. */
  readonly oxygenUsedLpm: number
  readonly printed: PrintedAnswer
  readonly humidity: readonly HumidityRemark[]
  readonly cautions: readonly SetUpCaution[]
}

/** Below 1 L/min an ordinary meter's ±0.5 L/min is half of the setting and more (Duprez2014, derived): a low-flow meter is wanted. */
export type SetUpCaution = 'LOW_FLOW_ON_ORDINARY_METER'

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

function candidatesOf(chain: Chain): readonly CandidateSetUp[] {
  const family = INTERFACE_FAMILIES[chain.row.family]
  const rated = ratedRange(family, chain.stock)
  if (rated === null || !isUsedFor(chain.source, family)) return []
  return settingsFor(chain, family, rated).map((setting) => candidate(chain, rated, setting))
}

function isUsedFor(source: ShelfSource, family: InterfaceFamily): boolean {
  if (hasNoEvenMode(source)) return false
  return canFeed(source.kind, family) && (source.usedFor?.includes(family.id) ?? true)
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
    cautions: cautionsOf(setUp),
  }
}

const ORDINARY_METER_LPM_MIN = 1

function cautionsOf({ source, flow }: SetUp): readonly SetUpCaution[] {
  const meter = meterOf(source)
  const isSmall = flow.kind === 'scale' && flow.flowLpm / metersOf(source) < ORDINARY_METER_LPM_MIN
  return meter?.meterClass === 'ordinary' && isSmall ? ['LOW_FLOW_ON_ORDINARY_METER'] : []
}

/** `interface/size@source#step`, then `+step` of the mask over a cannula and `:fraction` of a setting. */
function candidateId(interfaceId: string, size: SizeId, setUp: SetUp): string {
  const over = setUp.over === null ? '' : `+${stepCode(setUp.over.flow)}`
  const setting = setUp.setO2Fraction === null ? '' : `:${setUp.setO2Fraction}`
  return `${interfaceId}/${size}@${setUp.source.id}#${stepCode(setUp.flow)}${over}${setting}`
}

/** What streams out of a set-up and the oxygen it uses as set, L/min; errors of meters are left to the draws. */
export function flowsOf(setUp: SetUp): Pick<CandidateSetUp, 'streamLpm' | 'oxygenUsedLpm'> {
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
