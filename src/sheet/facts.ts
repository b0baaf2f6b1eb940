// What the steps of a sheet may ask about: set-up, airway, patient, goal. Leaves out numbers, which are values of a text and no conditions.
import { settingsOf } from '../kit/feeds.ts'
import type { FamilyId, FeedId, OpeningId, SizeId } from '../kit/family-id.ts'
import { meterOf, metersOf } from '../kit/flow-steps.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Shelf, ShelfSource } from '../kit/shelf.ts'
import type { SourceKind } from '../kit/source-row.ts'
import type { BreathingState, Case, Goal, InterfaceChange } from '../patient/case.ts'
import { CARBON_MONOXIDE_REASONS } from '../patient/warn-oximeter.ts'
import type { FlowmeterKind } from '../physics/flowmeter.ts'
import { airwayKind, neckInUse } from '../physiology/airway-state.ts'
import type { AirwayKind, AirwayState } from '../physiology/airway-state.ts'

export const SHEET_HUMIDIFIERS = ['none', 'bubble', 'collar', 'heated', 'aerosol'] as const
export type SheetHumidifier = (typeof SHEET_HUMIDIFIERS)[number]

export interface SheetFacts {
  readonly family: FamilyId
  readonly opening: OpeningId
  readonly feed: FeedId
  readonly size: SizeId
  readonly source: SourceKind
  readonly meter: FlowmeterKind | 'none'
  readonly meters: 1 | 2
  readonly markedIn: 'L/min' | 'mL/min'
  readonly isFlush: boolean
  readonly humidifier: SheetHumidifier
  /** A hose of the chain has one; false where no chain was worked out. */
  readonly hasWaterTrap: boolean
  readonly isCloseFitting: boolean
  readonly hasBag: boolean
  /** The interface has an entrainment valve with a setting to choose. */
  readonly hasValve: boolean
  readonly needsMains: boolean
  readonly airway: AirwayKind
  /** A tracheostomy tube sits in the neck, whatever passes through it. */
  readonly hasTube: boolean
  readonly isCuffUp: boolean
  /** Gas reaches the windpipe past mouth and nose. */
  readonly isBypassed: boolean
  /** Heat and moisture exchanger on the tube or stoma. */
  readonly hasExchanger: boolean
  /** It comes with the chain, as against one that the patient wears already. */
  readonly hasExchangerPart: boolean
  readonly isUnderTwoYears: boolean
  /** Scores of adults count. */
  readonly isAdult: boolean
  readonly isAtRisk: boolean
  readonly state: BreathingState
  readonly isUnderOpioids: boolean
  /** A saturation narrowed the forecast. */
  readonly isReadingUsed: boolean
  /** A breathing rate is known at which the set-up leaves the goal. */
  readonly hasHoldRate: boolean
  readonly goal: Goal['kind']
  readonly isOximeterTrusted: boolean
  readonly changes: readonly InterfaceChange[]
}

export interface FactsQuestion {
  readonly about: Pick<Case, 'patient' | 'breathing' | 'goal'>
  readonly setUp: SetUp
  /** The shelf it is taken from, for settings printed on the device and marks in mL/min. */
  readonly shelf: Pick<Shelf, 'interfaces' | 'sources'>
  /** As the chain of parts has it; the set-up's own where no chain was worked out. */
  readonly humidifier?: SheetHumidifier
  readonly hasWaterTrap?: boolean
  readonly hasExchangerPart?: boolean
  readonly isReadingUsed: boolean
  readonly hasHoldRate: boolean
}

const INFANT_YEARS = 2
/** NEWS2 counts from 16 years [RCP2017]. */
const SCORE_YEARS = 16

export function sheetFacts(question: FactsQuestion): SheetFacts {
  const { about, setUp } = question
  const { patient, breathing, goal } = about
  const family = INTERFACE_FAMILIES[setUp.family]
  const humidifier = question.humidifier ?? humidifierOf(setUp)
  const hasExchangerPart = question.hasExchangerPart ?? false
  const ofAirway = airwayFacts(patient.airway)
  return {
    family: family.id,
    opening: family.opening,
    feed: family.feeds.includes('wide-bore') ? 'wide-bore' : 'small-bore',
    size: setUp.size,
    source: setUp.source.kind,
    meter: meterOf(setUp.source)?.kind ?? 'none',
    meters: metersOf(setUp.source),
    markedIn: markedIn(setUp, question.shelf),
    isFlush: setUp.flow.kind === 'flush',
    humidifier,
    hasWaterTrap: question.hasWaterTrap ?? false,
    isCloseFitting: family.isCloseFitting,
    hasBag: family.behaviour.kind === 'reservoir',
    hasValve: family.entrainsAir !== 'no',
    needsMains: humidifier === 'heated' || NEEDS_MAINS.includes(setUp.source.kind),
    ...ofAirway,
    hasExchanger: ofAirway.hasExchanger || hasExchangerPart,
    hasExchangerPart,
    isUnderTwoYears: patient.ageYears < INFANT_YEARS,
    isAdult: patient.ageYears >= SCORE_YEARS,
    isAtRisk: patient.retentionRisk !== 'none',
    state: breathing.state,
    isReadingUsed: question.isReadingUsed,
    hasHoldRate: question.hasHoldRate,
    isUnderOpioids: breathing.state === 'slow-under-opioids',
    goal: goal.kind,
    isOximeterTrusted: !CARBON_MONOXIDE_REASONS.includes(goal.reason ?? ''),
    changes: patient.changes,
  }
}

const NEEDS_MAINS: readonly SourceKind[] = ['ventilator', 'concentrator']

function humidifierOf(setUp: SetUp): SheetHumidifier {
  return setUp.source.kind === 'jet-nebuliser' ? 'aerosol' : setUp.humidification
}

function markedIn(setUp: SetUp, shelf: FactsQuestion['shelf']): SheetFacts['markedIn'] {
  const row: ShelfSource | undefined = shelf.sources.find(({ id }) => id === setUp.source.id)
  return row?.markedIn ?? 'L/min'
}

type AirwayFacts = Pick<
  SheetFacts,
  'airway' | 'hasTube' | 'isCuffUp' | 'isBypassed' | 'hasExchanger'
>

function airwayFacts(airway: AirwayState): AirwayFacts {
  return {
    airway: airwayKind(airway),
    hasTube: airway.route === 'tracheostomy',
    isCuffUp: airway.route === 'tracheostomy' && airway.tube.cuff === 'up',
    isBypassed: neckInUse(airway),
    hasExchanger:
      airway.route === 'laryngectomy'
        ? airway.heatMoistureExchanger
        : airway.route === 'tracheostomy' && airway.tube.heatMoistureExchanger,
  }
}

/** The interface's row on the shelf; undefined where the set-up was typed from the bedside. */
export function interfaceRow(
  setUp: SetUp,
  shelf: Pick<Shelf, 'interfaces'>,
): Shelf['interfaces'][number] | undefined {
  return shelf.interfaces.find(({ id }) => id === setUp.interfaceId)
}

/** The lowest driving flow printed for a valve's setting, L/min; null where there is no such setting. */
export function printedMinimumLpm(setUp: SetUp, shelf: Pick<Shelf, 'interfaces'>): number | null {
  const row = interfaceRow(setUp, shelf)
  if (row === undefined) return null
  const setting = settingsOf(row).find(({ o2Fraction }) => o2Fraction === setUp.setO2Fraction)
  return setting?.minimumLpm ?? null
}
