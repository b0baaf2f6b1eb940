// Draws valid cases for laws: any airway, goal, set-up and subset of optional fields. Leaves out children between infancy and twelve, whose sizes the examples cover.
import * as fc from 'fast-check'
import { FAMILY_IDS, FIT_IDS, type FamilyId } from '../../src/kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../../src/kit/interface-families.ts'
import {
  CHANGES,
  type Case,
  type OnNow,
  type Patient,
  type SetUpOnNow,
} from '../../src/patient/case.ts'
import type { Breathing, Goal, Site } from '../../src/patient/case.ts'
import {
  FLUSHABLE_SOURCES,
  hasSetting,
  OVER_FAMILIES,
  sourcesFor,
} from '../../src/patient/read-set-up.ts'
import type { AirwayState } from '../../src/physiology/airway-state.ts'

const number = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true })

const nose = fc.constantFrom('open', 'one-side-blocked', 'blocked')

const tube = fc.oneof(
  fc.record({
    cuff: fc.constant('up'),
    speakingValve: fc.constant(false),
    capped: fc.constant(false),
    heatMoistureExchanger: fc.boolean(),
  }),
  fc
    .constantFrom('down', 'none')
    .chain((cuff) =>
      fc.constantFrom(
        { cuff, speakingValve: false, capped: false, heatMoistureExchanger: true },
        { cuff, speakingValve: false, capped: false, heatMoistureExchanger: false },
        { cuff, speakingValve: true, capped: false, heatMoistureExchanger: false },
        { cuff, speakingValve: false, capped: true, heatMoistureExchanger: false },
      ),
    ),
)

const airway = fc.oneof(
  fc.record({ route: fc.constant('natural'), nose }),
  fc.record({ route: fc.constant('tracheostomy'), tube, nose }),
  fc.record({ route: fc.constant('laryngectomy'), heatMoistureExchanger: fc.boolean() }),
) as fc.Arbitrary<AirwayState> // Safe: the constants above are members of the unions they stand for.

const saturationGoal = fc
  .tuple(fc.integer({ min: 70, max: 99 }), fc.integer({ min: 1, max: 30 }))
  .map(([low, width]): Goal => ({
    kind: 'saturation',
    lowPercent: low,
    highPercent: Math.min(100, low + width),
  }))
const fractionGoal = fc
  .tuple(number(0.21, 0.9), number(0.01, 0.09))
  .map(([low, width]): Goal => ({ kind: 'fraction', low, high: low + width }))
const goal: fc.Arbitrary<Goal> = fc.oneof(
  saturationGoal,
  fractionGoal,
  fc.constant<Goal>({ kind: 'as-much-as-possible', reason: 'carbon-monoxide' }),
  fc.constant<Goal>({ kind: 'comfort' }),
  fc.constant<Goal>({ kind: 'comfort', reason: 'comfort-last-days' }),
)

const site: fc.Arbitrary<Site> = fc.oneof(
  fc.constant({}),
  fc.record({ altitudeM: number(-400, 5500) }),
  fc.record({ barometricPressureKpa: number(50, 107) }),
)

interface Person {
  readonly ageYears: fc.Arbitrary<number>
  readonly weightKg: fc.Arbitrary<number>
  readonly heightCm: fc.Arbitrary<number>
  readonly rate: fc.Arbitrary<number>
  readonly tidalMlPerKg: readonly [number, number]
  readonly states: readonly Breathing['state'][]
}

const ADULT: Person = {
  ageYears: number(21, 120),
  weightKg: number(36, 199),
  heightCm: number(131, 209),
  rate: number(4, 60),
  tidalMlPerKg: [6, 12],
  states: [
    'rest',
    'sleep',
    'walking',
    'severe-distress',
    'copd-exacerbation',
    'pneumonia',
    'fever',
  ],
}
const NEWBORN: Person = {
  ageYears: number(0, 0.05),
  weightKg: number(2.3, 5),
  heightCm: number(46, 55),
  rate: number(20, 100),
  tidalMlPerKg: [6, 10],
  states: ['rest', 'sleep', 'newborn', 'fever'],
}

const setUpOf = (isAdult: boolean): fc.Arbitrary<SetUpOnNow> =>
  fc
    .constantFrom(...FAMILY_IDS.filter((id) => sizeFor(id, isAdult) !== undefined))
    .chain((family) => fc.tuple(fc.constant(family), fc.constantFrom(...sourcesFor(family))))
    .chain(([family, sourceKind]) => {
      const size = sizeFor(family, isAdult)
      const rated = size?.rated ?? { minLpm: 1, maxLpm: 1 }
      const flows = FLUSHABLE_SOURCES.includes(sourceKind)
        ? fc.oneof(number(rated.minLpm, rated.maxLpm), fc.constant<'flush'>('flush'))
        : number(rated.minLpm, rated.maxLpm)
      const over = fc.record({ family: fc.constantFrom(...OVER_FAMILIES), flowLpm: number(5, 15) })
      const always = {
        family: fc.constant(family),
        sourceKind: fc.constant(sourceKind),
        flowLpm: flows,
        ...(hasSetting({ family, sourceKind }) ? { setO2Fraction: number(0.22, 1) } : {}),
        ...(family === 'cannula-under-mask' ? { over } : {}),
      }
      const optional = { size: fc.constant(size?.id), fit: fc.constantFrom(...FIT_IDS) }
      return fc.record({ ...always, ...optional }, { requiredKeys: keysOf(always) })
    }) as fc.Arbitrary<SetUpOnNow> // Safe: sizes are defined for the families let through.

function keysOf<T extends object>(shape: T): (keyof T)[] {
  // Safe: a plain object literal has no other own keys.
  return Object.keys(shape) as (keyof T)[]
}

function sizeFor(family: FamilyId, isAdult: boolean) {
  return INTERFACE_FAMILIES[family].sizes.find(
    (size) => size.id === (isAdult ? 'adult' : 'newborn'),
  )
}

const onNowOf = (isAdult: boolean): fc.Arbitrary<OnNow> =>
  fc.record(
    {
      setUp: fc.oneof(setUpOf(isAdult), fc.constant(null)),
      sinceMinutes: number(0, 600),
      saturationPercent: number(60, 100),
    },
    { requiredKeys: ['setUp'] },
  )

function caseOf(person: Person, isAdult: boolean): fc.Arbitrary<Case> {
  const bloodGas = fc.record(
    {
      arterialPco2Kpa: number(2, 20),
      ph: number(6.9, 7.7),
      arterialPo2Kpa: number(3, 60),
      carboxyhaemoglobinFraction: number(0, 0.6),
      minutesAgo: number(0, 600),
    },
    { requiredKeys: ['arterialPco2Kpa'] },
  )
  const patient = fc.record(
    {
      ageYears: person.ageYears,
      weightKg: person.weightKg,
      heightCm: person.heightCm,
      sex: fc.constantFrom('female' as const, 'male' as const),
      airway,
      retentionRisk: fc.constantFrom(
        'none' as const,
        'at-risk' as const,
        'known-retainer' as const,
      ),
      haemoglobinGpl: number(60, 220),
      temperatureC: number(34, 41),
      bloodGas,
      changes: fc.subarray(CHANGES.filter((change) => change !== 'new-tracheostomy')),
    },
    { requiredKeys: ['ageYears', 'airway', 'retentionRisk', 'changes'] },
  ) as fc.Arbitrary<Patient>
  return patient.chain((drawn) =>
    fc.record(
      {
        version: fc.constant(1 as const),
        note: fc.string(),
        bed: fc.string(),
        code: fc.string(),
        patient: fc.constant(drawn),
        breathing: breathingOf(person, drawn),
        site,
        goal,
        onNow: onNowOf(isAdult),
      },
      { requiredKeys: ['version', 'patient', 'breathing', 'site', 'goal'] },
    ),
  ) as fc.Arbitrary<Case>
}

function breathingOf(person: Person, patient: Patient): fc.Arbitrary<Breathing> {
  const [low, high] = person.tidalMlPerKg
  const weightKg = patient.weightKg
  const volume =
    weightKg === undefined ? {} : { tidalVolumeMl: number(low * weightKg, high * weightKg) }
  return fc.record(
    {
      state: fc.constantFrom(...person.states),
      ratePerMin: person.rate,
      dutyFraction: number(0.25, 0.55),
      mouthShare: number(0, 1),
      fit: fc.constantFrom(...FIT_IDS),
      ...volume,
    },
    { requiredKeys: ['state'] },
  ) as fc.Arbitrary<Breathing>
}

export const randomCase: fc.Arbitrary<Case> = fc.oneof(caseOf(ADULT, true), caseOf(NEWBORN, false))
