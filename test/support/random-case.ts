// Draws valid cases for laws: any airway, goal, set-up and subset of optional fields. Leaves out contradictions, which test/case-bad-inputs.test.ts plants.
import * as fc from 'fast-check'
import { FAMILY_IDS, FIT_IDS, type FamilyId } from '../../src/kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../../src/kit/interface-families.ts'
import {
  CHANGES,
  SECRETIONS,
  type Case,
  type OnNow,
  type Patient,
  type SetUpOnNow,
} from '../../src/patient/case.ts'
import {
  BREATHING_STATES,
  type Breathing,
  type BreathingState,
  type Goal,
  type Site,
} from '../../src/patient/case.ts'
import { presetState } from '../../src/patient/preset-state.ts'
import { RETENTION_RISKS, SEXES } from '../../src/patient/read-patient.ts'
import { breathingStateAges } from '../../src/physiology/breathing-states.ts'
import { GROWTH_AGE_YEARS_MAX, heightAtZCm, weightAtZKg } from '../../src/physiology/growth.ts'
import {
  FLUSHABLE_SOURCES,
  hasSetting,
  OVER_FAMILIES,
  sourcesFor,
} from '../../src/patient/read-set-up.ts'
import type { AirwayState } from '../../src/physiology/airway-state.ts'

/** JSON has no negative zero. */
const number = (min: number, max: number): fc.Arbitrary<number> =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true }).map((x) => (x === 0 ? 0 : x))

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

/** Limits within which a body of an age is usual; sex may be left out of the case, so both must agree. */
function usualSize(ageYears: number) {
  if (ageYears >= GROWTH_AGE_YEARS_MAX) {
    return { weightKg: [36, 199], heightCm: [131, 209] } as const
  }
  const at = (z: number) =>
    SEXES.map((sex) => ({
      weightKg: weightAtZKg({ ageYears, sex, z }),
      heightCm: heightAtZCm({ ageYears, sex, z }),
    }))
  const low = at(-2.5)
  const high = at(2.5)
  return {
    weightKg: [
      Math.max(...low.map((one) => one.weightKg)),
      Math.min(...high.map((one) => one.weightKg)),
    ],
    heightCm: [
      Math.max(...low.map((one) => one.heightCm)),
      Math.min(...high.map((one) => one.heightCm)),
    ],
  } as const
}

/** Rates well within what every age can have. */
function usualRates(ageYears: number): readonly [number, number] {
  if (ageYears < 1) return [15, 100]
  return ageYears < 12 ? [8, 70] : [5, 50]
}

const setUpOf = (ageYears: number): fc.Arbitrary<SetUpOnNow> =>
  fc
    .constantFrom(...FAMILY_IDS.filter((id) => sizeFor(id, ageYears) !== undefined))
    .chain((family) => fc.tuple(fc.constant(family), fc.constantFrom(...sourcesFor(family))))
    .chain(([family, sourceKind]) => {
      const size = sizeFor(family, ageYears)
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

function sizeFor(family: FamilyId, ageYears: number) {
  return INTERFACE_FAMILIES[family].sizes.findLast(
    (size) => size.ageYearsMin <= ageYears && ageYears <= size.ageYearsMax,
  )
}

const onNowOf = (ageYears: number): fc.Arbitrary<OnNow> =>
  fc.record(
    {
      setUp: fc.oneof(setUpOf(ageYears), fc.constant(null)),
      sinceMinutes: number(0, 600),
      saturationPercent: number(60, 100),
    },
    { requiredKeys: ['setUp'] },
  )

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

function patientOf(ageYears: number): fc.Arbitrary<Patient> {
  const size = usualSize(ageYears)
  return fc.record(
    {
      ageYears: fc.constant(ageYears),
      weightKg: number(...size.weightKg),
      heightCm: number(...size.heightCm),
      sex: fc.constantFrom(...SEXES),
      airway,
      retentionRisk: fc.constantFrom(...RETENTION_RISKS),
      haemoglobinGpl: number(60, 220),
      temperatureC: number(34, 41),
      bloodGas,
      secretions: fc.constantFrom(...SECRETIONS.filter((one) => one !== 'thin')),
      changes: fc.subarray(CHANGES.filter((change) => change !== 'new-tracheostomy')),
    },
    { requiredKeys: ['ageYears', 'airway', 'retentionRisk', 'changes'] },
  ) as fc.Arbitrary<Patient> // Safe: the shapes above are those of a patient; fast-check only widens what may be left out.
}

function breathingOf(patient: Patient): fc.Arbitrary<Breathing> {
  const { weightKg, ageYears } = patient
  const states = BREATHING_STATES.filter((state) => isStateFor(state, patient))
  const volume =
    weightKg === undefined ? {} : { tidalVolumeMl: number(6 * weightKg, 11 * weightKg) }
  return fc.record(
    {
      state: fc.constantFrom(...states),
      ratePerMin: number(...usualRates(ageYears)),
      dutyFraction: number(0.25, 0.55),
      mouthShare: number(0, 1),
      fit: fc.constantFrom(...FIT_IDS),
      ...volume,
    },
    { requiredKeys: ['state'] },
  ) as fc.Arbitrary<Breathing> // Safe: as above.
}

function isStateFor(state: BreathingState, patient: Patient): boolean {
  const { min, max } = breathingStateAges(presetState(state))
  if (patient.ageYears < min || patient.ageYears > max) return false
  if (state === 'pregnancy') return patient.sex !== 'male'
  return state !== 'preterm' || patient.weightKg !== undefined
}

function caseAt(ageYears: number): fc.Arbitrary<Case> {
  return patientOf(ageYears).chain((patient) =>
    fc.record(
      {
        version: fc.constant(1 as const),
        note: fc.string(),
        bed: fc.string(),
        code: fc.string(),
        patient: fc.constant(patient),
        breathing: breathingOf(patient),
        site,
        goal,
        onNow: onNowOf(ageYears),
      },
      { requiredKeys: ['version', 'patient', 'breathing', 'site', 'goal'] },
    ),
  ) as fc.Arbitrary<Case> // Safe: as above.
}

/** Every age is as likely in its logarithm: many infants, many adults. */
const ageYears = fc.oneof(number(0, 0.1), number(0.1, 2), number(2, 20), number(20, 120))

export const randomCase: fc.Arbitrary<Case> = ageYears.chain(caseAt)
