// The sheet that hangs at a bed, as codes and numbers: settings, fraction, goal, steps, what to watch, clock times, how long it counts. Leaves out text and layout.
import type { SetUp } from '../kit/set-up.ts'
import type { Shelf } from '../kit/shelf.ts'
import type { Goal } from '../patient/case.ts'
import type { Band, Chance, HoldsUntil, Plan, RankedSetUp, Remark } from '../planning/plan-types.ts'
import type { Provenance } from '../units/provenance.ts'
import { sheetCylinder } from './cylinder-clock.ts'
import type { SheetCylinder } from './cylinder-clock.ts'
import { sheetFacts } from './facts.ts'
import type { SheetFacts } from './facts.ts'
import type { SheetRequest } from './fragment.ts'
import {
  hasExchangerPart,
  hasWaterTrap,
  humidifierOfChain,
  partLabels,
  sheetChain,
} from './sheet-chain.ts'
import type { HumidifierRefused, SheetChain } from './sheet-chain.ts'
import { restsOn } from './rests-on.ts'
import { applies } from './step.ts'
import type { Row, Step } from './step.ts'
import { stepsFor } from './step-table.ts'
import { lookAgainAt, sheetValidity } from './validity.ts'
import type { SheetValidity } from './validity.ts'
import { sheetValues, valuesFor } from './values.ts'
import type { SheetValues } from './values.ts'
import { sheetWater } from './water-clock.ts'
import type { SheetWater } from './water-clock.ts'
import { CALL_ROWS, DEPENDS_ROWS } from './watch-rows.ts'

export interface SheetQuestion {
  readonly request: SheetRequest
  /** Of the request's case, on this shelf or on the part of it that the set-up needs. */
  readonly plan: Plan
  readonly shelf: Shelf
}

export type SheetStep = Pick<Step, 'phase' | 'place'> & Remark & Provenance

export interface Sheet {
  readonly modelVersion: string
  readonly madeAt: string
  readonly readAt: string
  readonly bed: string | null
  readonly code: string | null
  readonly goal: Goal
  readonly setUpId: string
  readonly setUp: SetUp
  readonly effectiveO2Fraction: Band
  readonly printedO2Fraction: RankedSetUp['printedO2Fraction']
  readonly dependsOn: readonly Remark[]
  readonly isChecked: boolean
  readonly saturationPercent: Band | null
  readonly chance: Chance | null
  readonly holdsUntil: HoldsUntil
  readonly oxygenUsedLpm: number
  readonly steps: readonly SheetStep[]
  readonly watch: readonly Remark[]
  readonly call: readonly Remark[]
  readonly emergency: readonly Remark[]
  readonly cautions: readonly Remark[]
  readonly humidity: readonly Remark[]
  /** Labels of the parts, line by line from its outlet on; null where the chain was not worked out. */
  readonly chain: readonly (readonly string[])[] | null
  /** Labels of those that are not at hand. */
  readonly missing: readonly string[]
  /** What wets the gas. */
  readonly humidifier: SheetFacts['humidifier']
  /** An exchanger is one of the parts. */
  readonly hasExchangerPart: boolean
  /** Null at flush, whose flow nobody knows. */
  readonly water: SheetWater | null
  /** Null where no cylinder feeds it. */
  readonly cylinder: SheetCylinder | null
  readonly validity: SheetValidity
  /** By when the patient is looked at again. */
  readonly lookAgainAt: string
  readonly restsOn: readonly Remark[]
  readonly isReadingUsed: boolean
  readonly assumedCount: number
  readonly isDemoShelf: boolean
}

/** Why there is no sheet. */
export type NoSheet =
  | { readonly why: 'ruled-out'; readonly reasons: Plan['excluded'][number]['reasons'] }
  | { readonly why: 'not-on-shelf' }
  | ({ readonly why: 'humidifier' } & Omit<HumidifierRefused, 'kind'>)

export type SheetAnswer =
  | { readonly ok: true; readonly sheet: Sheet }
  | ({ readonly ok: false } & NoSheet)

/** The sheet of one set-up, or why there is none: a set-up that the plan rules out, or that does not take the humidifier chosen, gets no sheet. */
export function makeSheet(question: SheetQuestion): SheetAnswer {
  const { request, plan } = question
  const ranked = rankedOf(plan, request.setUpId)
  if (ranked !== undefined) {
    const chain = chainOf(question, ranked.setUp)
    if (chain.kind !== 'refused') return { ok: true, sheet: sheetOf(question, ranked, chain) }
    const { kind: _kind, ...refused } = chain
    return { ok: false, why: 'humidifier', ...refused }
  }
  const excluded = plan.excluded.find(({ id }) => id === request.setUpId)
  return excluded === undefined
    ? { ok: false, why: 'not-on-shelf' }
    : { ok: false, why: 'ruled-out', reasons: excluded.reasons }
}

/** The row itself, or the row that lists it as doing as well on another source. */
function rankedOf(plan: Plan, id: string): RankedSetUp | undefined {
  const row = plan.ranked.find((one) => one.id === id)
  if (row !== undefined) return row
  const host = plan.ranked.find(({ twins }) => twins.some((twin) => twin.id === id))
  const source = host?.twins.find((twin) => twin.id === id)?.source
  if (host === undefined || source === undefined) return undefined
  return { ...host, id, setUp: { ...host.setUp, source } }
}

/** Of the parts of the ward, where the shelf still has that ward. */
function chainOf({ request, shelf }: SheetQuestion, setUp: SetUp): SheetChain {
  const { wardId, humidification } = request
  return sheetChain({
    about: request.case,
    setUp,
    shelf,
    ...(shelf.wards.some(({ id }) => id === wardId) && wardId !== undefined ? { wardId } : {}),
    ...(humidification === undefined ? {} : { humidification }),
  })
}

function sheetOf(
  { request, plan, shelf }: SheetQuestion,
  ranked: RankedSetUp,
  joined: Exclude<SheetChain, HumidifierRefused>,
): Sheet {
  const { setUp, holdsUntil } = ranked
  const about = request.case
  const holdsPerMin = holdsUntil.ratePerMin
  const chain = joined.kind === 'chain' ? joined.chain : null
  const facts = sheetFacts({
    about,
    setUp,
    shelf,
    isReadingUsed: plan.reading.isUsed,
    hasHoldRate: holdsPerMin !== null,
    ...(chain === null
      ? {}
      : {
          humidifier: humidifierOfChain(chain, setUp),
          hasWaterTrap: hasWaterTrap(chain),
          hasExchangerPart: hasExchangerPart(chain),
        }),
  })
  const values = sheetValues({
    setUp,
    shelf,
    goal: about.goal,
    ...(holdsPerMin === null ? {} : { holdsPerMin }),
  })
  const steps = stepsFor(facts)
  const validity = sheetValidity({ request, facts })
  const { readAt } = request
  const cylinder = sheetCylinder({ request, setUp, barometricKpa: plan.barometricPressureKpa })
  return {
    modelVersion: plan.modelVersion,
    madeAt: request.madeAt,
    readAt,
    bed: about.bed ?? null,
    code: about.code ?? null,
    goal: about.goal,
    setUpId: ranked.id,
    setUp,
    effectiveO2Fraction: ranked.effectiveO2Fraction,
    printedO2Fraction: ranked.printedO2Fraction,
    dependsOn: said(DEPENDS_ROWS, facts, values),
    isChecked: ranked.isChecked,
    saturationPercent: ranked.saturationPercent,
    chance: ranked.chance,
    holdsUntil,
    oxygenUsedLpm: ranked.oxygenUsedLpm,
    steps: steps.map((step) => ({
      ...saidRow(step, values),
      phase: step.phase,
      place: step.place,
    })),
    watch: unsaid(ranked.watch, steps),
    call: said(CALL_ROWS, facts, values),
    emergency: plan.emergency,
    cautions: unsaid([...plan.cautions, ...ranked.remarks], steps),
    humidity: humidityOf(joined, ranked),
    chain: chain === null ? null : partLabels(chain),
    missing: joined.kind === 'chain' ? joined.missing : [],
    humidifier: facts.humidifier,
    hasExchangerPart: facts.hasExchangerPart,
    water: sheetWater({ request, setUp, chain, barometricKpa: plan.barometricPressureKpa }),
    cylinder,
    validity,
    lookAgainAt: lookAgainAt({ readAt, validity, reassess: plan.reassess }),
    restsOn: restsOn(about, plan),
    isReadingUsed: plan.reading.isUsed,
    assumedCount: plan.assumed.length,
    isDemoShelf: shelf.isInvented ?? false,
  }
}

function said(rows: readonly Row[], facts: SheetFacts, values: SheetValues): readonly Remark[] {
  return rows.filter((row) => applies(row, facts)).map((row) => saidRow(row, values))
}

function saidRow(row: Row, values: SheetValues): Remark & Provenance {
  const { id, known, source } = row
  return {
    code: id,
    values: valuesFor(row.values, values),
    known,
    ...(source === undefined ? {} : { source }),
  }
}

/** What the plan says of airway and patient, whatever wets the gas. */
const WHATEVER_WETS: readonly string[] = [
  'BYPASSED_NEVER_DRY',
  'CATHETER_NEEDS_HUMIDITY',
  'CHILD_POLICY_COUNTS',
  'ENTRAINED_ROOM_AIR_BRINGS_WATER',
]

/** As the plan has it; with another humidifier than the set-up's own, what holds for that one. */
function humidityOf(
  joined: Exclude<SheetChain, HumidifierRefused>,
  { humidity }: RankedSetUp,
): readonly Remark[] {
  const chosen = joined.kind === 'chain' ? joined.humidity : null
  if (chosen === null) return humidity
  return [...humidity.filter(({ code }) => WHATEVER_WETS.includes(code)), ...chosen]
}

/** Cautions and things to watch that a step says already, and which step; null: what every sheet says or is, a mark beside its number or an interface that stays on. */
const SAID_BY_STEP: Readonly<Record<string, string | null>> = {
  NOT_CHECKED_AGAINST_MEASUREMENTS: null,
  BLOW_BY_NO_NUMBER: null,
  // The heater of the set-up's own; where another humidifier was chosen there is none.
  HEATER_OFF_WHEN_FLOW_STOPS: null,
  FIRE: 'FIRE_CLEAR',
  REMOVE_IF_GAS_FAILS: 'MASK_OFF_AT_ONCE',
  FILL_BAG_FIRST: 'FILL_BAG',
  EXCHANGER_OFF_WHILE_NEBULISED: 'EXCHANGER_OFF_FOR_DRUG',
  LOW_FLOW_REBREATHING: 'NEVER_BELOW_MINIMUM',
  VENTILATOR_GIVES_NO_BREATHS: 'VENTILATOR_NO_BREATHS',
  NEEDS_BOTH_GASES: 'BOTH_GASES',
  CYLINDER_RUNS_OUT: 'CYLINDER_EACH_HOUR',
  FLUSH_WIDE_SPREAD: 'METER_FLUSH',
  PACO2_NOT_PREDICTABLE: 'BLOOD_GAS_DUE',
  GOAL_BLOOD_GAS: 'BLOOD_GAS_DUE',
  BLOOD_GAS_30_60: 'BLOOD_GAS_DUE',
  WATCH_FIVE_MINUTES: 'STAY_FIVE_MINUTES',
  WATCH_BAG: 'BAG_NEVER_COLLAPSES',
  DRAIN_CONDENSATE: 'DRAIN_WATER',
}

function unsaid(remarks: readonly Remark[], steps: readonly Step[]): readonly Remark[] {
  return remarks.filter(({ code }) => {
    const by = SAID_BY_STEP[code]
    return by === undefined || (by !== null && !steps.some(({ id }) => id === by))
  })
}
