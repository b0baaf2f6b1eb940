// The chain of parts a sheet is for: the best that the shelf builds for its set-up and the humidifier chosen for it, what is missing, or why not; and what of it the steps ask about. Leaves out how chains are found.
import { humidifiersOf, placed } from '../joining/chain.ts'
import type { Chain } from '../joining/chain.ts'
import type { Refusal } from '../joining/refusal.ts'
import { solveChains } from '../joining/solve-chains.ts'
import type { ChainAnswer } from '../joining/solve-chains.ts'
import { wantedOf } from '../joining/wanted.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Humidification, Shelf } from '../kit/shelf.ts'
import type { Case } from '../patient/case.ts'
import { chainHumidity } from '../planning/chain-humidity.ts'
import { placePressure } from '../planning/place-pressure.ts'
import type { Remark } from '../planning/plan-types.ts'
import type { SheetHumidifier } from './facts.ts'

export type SheetChain =
  | {
      readonly kind: 'chain'
      readonly chain: Chain
      /** Labels of its parts that are not at hand. */
      readonly missing: readonly string[]
      /** What is to be asked and known of its water; null where the plan says it, as the humidifier is the set-up's own. */
      readonly humidity: readonly Remark[] | null
    }
  /** For a humidifier that nobody chose: the sheet then says that no chain was worked out. */
  | { readonly kind: 'not-worked-out' }
  | HumidifierRefused

/** The humidifier chosen cannot be used here. Without refusals and breaches, no parts lead through it to this interface. */
export interface HumidifierRefused {
  readonly kind: 'refused'
  readonly humidification: Humidification
  readonly refusals: readonly Refusal[]
  /** Rules of humidity that the chain would break. */
  readonly breaches: readonly Remark[]
}

export interface SheetChainQuestion {
  readonly about: Case
  readonly setUp: SetUp
  readonly shelf: Shelf
  readonly wardId?: string
  /** As chosen; absent: the usual one, and where that gives no chain the set-up's own. */
  readonly humidification?: Humidification
}

export function sheetChain(question: SheetChainQuestion): SheetChain {
  const { setUp, humidification } = question
  if (humidification !== undefined) return joined(question, humidification)
  const tried = [usualHumidification(setUp), setUp.humidification]
  const found = tried.map((one) => joined(question, one)).find(({ kind }) => kind === 'chain')
  return found ?? { kind: 'not-worked-out' }
}

/** A tip behind the nose is humidified at every flow (FreyShann2003); all else as the set-up has it. */
function usualHumidification({ family, humidification }: SetUp): Humidification {
  return family === 'nasal-catheter' && humidification === 'none' ? 'bubble' : humidification
}

function joined(
  question: SheetChainQuestion,
  humidification: Humidification,
): Exclude<SheetChain, { kind: 'not-worked-out' }> {
  const answer = solved(question, humidification)
  const refused = { kind: 'refused', humidification, refusals: [], breaches: [] } as const
  if (answer.kind === 'refused') return { ...refused, refusals: answer.refusals.filter(isTold) }
  const { chain } = answer.kind === 'chains' ? answer.best : answer.withThem
  if (humidification !== 'none' && !kindsOf(chain).includes(humidification)) return refused
  const missing = answer.kind === 'chains' ? [] : answer.missing.map(({ part }) => part.label)
  if (humidification === question.setUp.humidification)
    return { kind: 'chain', chain, missing, humidity: null }
  const { about, shelf } = question
  // At flush nobody knows the flow, so nothing of its water.
  const rules =
    chainHumidity({ chain, about, place: placePressure(about.site, shelf) })?.rules ?? []
  const breaches = rules.filter(
    ({ code, weight }) => weight === 'breach' && code !== DONE_BY_A_STEP,
  )
  if (breaches.length > 0) return { ...refused, breaches }
  const humidity = rules.filter(({ weight }) => weight === 'ask' || weight === 'note')
  return { kind: 'chain', chain, missing, humidity }
}

/** The exchanger comes off for the drug and goes back on: a step, not a fault of the humidifier. */
const DONE_BY_A_STEP = 'EXCHANGER_OFF_FOR_NEBULISED_DRUG'

/** That the ends meet nowhere says no more than that there is no such chain. */
function isTold({ code }: Refusal): boolean {
  return code !== 'ENDS_MEET_NOWHERE'
}

function solved(question: SheetChainQuestion, humidification: Humidification): ChainAnswer {
  const { about, setUp, shelf, wardId } = question
  const { ageYears, weightKg, airway } = about.patient
  return solveChains({
    shelf,
    wanted: { ...wantedOf(setUp), humidification },
    patient: { ageYears, airway, ...(weightKg === undefined ? {} : { weightKg }) },
    barometricKpa: placePressure(about.site, shelf).barometricKpa,
    ...(wardId === undefined ? {} : { wardId }),
  })
}

/** Labels of its parts from each outlet on to where that line meets another, the patient left out. */
export function partLabels(chain: Chain): readonly (readonly string[])[] {
  const lines: string[][] = [[]]
  for (const [at, { part }] of chain.parts.entries()) {
    if (part.kind === 'patient') continue
    lines.at(-1)?.push(part.label)
    const next = chain.joins.find(({ from }) => from === at)?.to
    if (next === undefined || next === at + 1) continue
    lines.at(-1)?.push(placed(chain, next).part.label)
    lines.push([])
  }
  return lines
}

/** What wets the gas on the way, as steps know it. */
export function humidifierOfChain(chain: Chain, { source }: SetUp): SheetHumidifier {
  const kinds = kindsOf(chain)
  if (kinds.includes('heated') || kinds.includes('pass-over')) return 'heated'
  if (kinds.includes('bubble')) return 'bubble'
  if (kinds.includes('collar')) return 'collar'
  return source.kind === 'jet-nebuliser' ? 'aerosol' : 'none'
}

/** An exchanger is one of its parts, as against one that the patient wears already. */
export function hasExchangerPart(chain: Chain): boolean {
  return kindsOf(chain).includes('exchanger')
}

function kindsOf(chain: Chain): readonly string[] {
  return humidifiersOf(chain).map(({ part }) => part.kind)
}

/** Whether one of its hoses has a trap where water gathers. */
export function hasWaterTrap(chain: Chain): boolean {
  return chain.parts.some(({ part }) => part.tube?.hasWaterTrap === true)
}
