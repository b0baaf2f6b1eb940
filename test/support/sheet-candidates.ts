// Every set-up the demo shelf builds, on every airway it may be put before, on bodies of its size and in every circumstance a step asks about. Leaves out which steps there should be.
import { candidateSetUps } from '../../src/kit/build-set-ups.ts'
import type { CandidateSetUp } from '../../src/kit/build-set-ups.ts'
import { DEMO_SHELF } from '../../src/kit/demo-shelf/demo-shelf.ts'
import type { OpeningId, SizeId } from '../../src/kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../../src/kit/interface-families.ts'
import { CHANGES } from '../../src/patient/case.ts'
import type { Case, Goal } from '../../src/patient/case.ts'
import type { AirwayState } from '../../src/physiology/airway-state.ts'
import { sheetFacts } from '../../src/sheet/facts.ts'
import type { FactsQuestion, SheetFacts, SheetHumidifier } from '../../src/sheet/facts.ts'

export const CANDIDATES: readonly CandidateSetUp[] = candidateSetUps(DEMO_SHELF)

export interface SheetSubject {
  readonly candidate: CandidateSetUp
  readonly about: Pick<Case, 'patient' | 'breathing' | 'goal'>
  /** Where it is not the set-up's own. */
  readonly humidifier: SheetHumidifier | 'exchanger' | undefined
  readonly facts: SheetFacts
}

type Cuff = 'up' | 'down' | 'none'

function tube(cuff: Cuff, on: 'nothing' | 'speaking-valve' | 'cap' | 'exchanger'): AirwayState {
  return {
    route: 'tracheostomy',
    nose: 'open',
    tube: {
      cuff,
      speakingValve: on === 'speaking-valve',
      capped: on === 'cap',
      heatMoistureExchanger: on === 'exchanger',
    },
  }
}

const WITH_UPPER_AIRWAY: readonly AirwayState[] = [
  { route: 'natural', nose: 'open' },
  { route: 'natural', nose: 'one-side-blocked' },
  { route: 'natural', nose: 'blocked' },
  tube('down', 'cap'),
  tube('none', 'exchanger'),
]

const AT_THE_NECK: readonly AirwayState[] = [
  tube('up', 'nothing'),
  tube('up', 'exchanger'),
  tube('down', 'nothing'),
  tube('none', 'exchanger'),
  tube('down', 'speaking-valve'),
  { route: 'laryngectomy', heatMoistureExchanger: false },
  { route: 'laryngectomy', heatMoistureExchanger: true },
]

function airwaysFor(opening: OpeningId): readonly AirwayState[] {
  return opening === 'neck' ? AT_THE_NECK : WITH_UPPER_AIRWAY
}

const AGE_YEARS: Readonly<Record<SizeId, readonly number[]>> = {
  preterm: [0.05],
  newborn: [0.02],
  infant: [0.3, 2.1],
  child: [1.5, 7],
  adult: [11, 55],
}

const GOALS: readonly Goal[] = [
  { kind: 'saturation', lowPercent: 94, highPercent: 98 },
  { kind: 'saturation', lowPercent: 88, highPercent: 92, reason: 'risk-of-hypercapnia' },
  { kind: 'fraction', low: 0.35, high: 0.45 },
  { kind: 'as-much-as-possible', reason: 'carbon-monoxide' },
  { kind: 'comfort' },
]

/** Humidifiers that can stand in this set-up's gas: what it brings, or what may be added to it. */
function humidifiersFor(
  { setUp }: CandidateSetUp,
  airway: AirwayState,
): readonly SheetSubject['humidifier'][] {
  const family = INTERFACE_FAMILIES[setUp.family]
  if (setUp.family.startsWith('t-piece') && setUp.humidification === 'heated')
    return isBareTube(airway) ? [undefined, 'exchanger'] : [undefined]
  if (setUp.humidification !== 'none' || setUp.source.kind === 'jet-nebuliser') return [undefined]
  if (family.entrainsAir !== 'no') return [undefined, 'collar']
  return family.behaviour.kind === 'reservoir' ? [undefined] : [undefined, 'bubble']
}

function isBareTube(airway: AirwayState): boolean {
  return airway.route === 'tracheostomy' && !airway.tube.heatMoistureExchanger
}

/** One after another, so that each value meets many candidates without trying every pair. */
function inTurn<T>(list: readonly T[], turn: number): T {
  const found = list[turn % list.length]
  if (found === undefined) throw new Error('an empty list has no turn')
  return found
}

function wettedBy(humidifier: SheetSubject['humidifier']): Partial<FactsQuestion> {
  if (humidifier === undefined) return {}
  return humidifier === 'exchanger'
    ? { humidifier: 'none', hasExchangerPart: true }
    : { humidifier }
}

export function* sheetSubjects(): Generator<SheetSubject> {
  let turn = 0
  for (const candidate of CANDIDATES) {
    const { setUp } = candidate
    for (const airway of airwaysFor(INTERFACE_FAMILIES[setUp.family].opening)) {
      for (const ageYears of AGE_YEARS[setUp.size]) {
        for (const humidifier of humidifiersFor(candidate, airway)) {
          turn += 1
          const about: SheetSubject['about'] = {
            patient: {
              ageYears,
              airway,
              retentionRisk: inTurn(['none', 'at-risk', 'known-retainer'], turn),
              changes: inTurn([[], ...CHANGES.map((change) => [change])], turn),
            },
            breathing: { state: inTurn(['rest', 'slow-under-opioids', 'asthma'], turn >> 1) },
            goal: inTurn(GOALS, turn),
          }
          const question = {
            about,
            setUp,
            hasWaterTrap: inTurn([false, true], turn),
            shelf: DEMO_SHELF,
            isReadingUsed: inTurn([true, false], turn >> 2),
            hasHoldRate: inTurn([false, true], turn >> 3),
          }
          const facts = sheetFacts({ ...question, ...wettedBy(humidifier) })
          yield { candidate, about, humidifier, facts }
        }
      }
    }
  }
}
