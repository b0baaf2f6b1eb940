// Shunt, extra shift and arterial carbon dioxide to expect in lung conditions, as spreads with their sources. Leaves out the course of each illness and mixed conditions.
import { DomainError } from '../errors.ts'
import type { Provenance } from '../units/provenance.ts'
import { kpaFromMmhg } from '../units/pressure.ts'
import type { Spread } from '../units/spread.ts'
import { requireAge } from './body.ts'

export const LUNG_CONDITIONS = [
  'healthy',
  'postoperative',
  'pneumonia',
  'severe-pneumonia',
  'copd-stable',
  'copd-exacerbation',
  'asthma',
  'pulmonary-oedema',
  'atelectasis',
  'pulmonary-embolism',
  'interstitial',
  'hypoventilation',
  'obesity-hypoventilation',
  'pregnancy',
  'bronchiolitis',
  'newborn',
  'preterm',
  'chronic-lung-of-prematurity',
] as const

export type LungCondition = (typeof LUNG_CONDITIONS)[number]

/** A distribution and how it is known. */
export interface SourcedSpread extends Provenance {
  readonly spread: Spread
}

export interface GasExchangePreset {
  readonly shuntFraction: SourcedSpread
  readonly extraShiftKpa: SourcedSpread
  readonly arterialPco2Kpa: SourcedSpread
}

const COMMON: Provenance = { known: 'common-practice' }

function triangular(mode: number, limits: readonly [min: number, max: number]): Spread {
  return { kind: 'triangular', mode, min: limits[0], max: limits[1] }
}

function mmhgTriangular(mode: number, limits: readonly [min: number, max: number]): Spread {
  return triangular(kpaFromMmhg(mode), [kpaFromMmhg(limits[0]), kpaFromMmhg(limits[1])])
}

function mmhgNormal(mean: number, sd: number, limits: readonly [min: number, max: number]): Spread {
  return {
    kind: 'normal',
    mean: kpaFromMmhg(mean),
    sd: kpaFromMmhg(sd),
    min: kpaFromMmhg(limits[0]),
    max: kpaFromMmhg(limits[1]),
  }
}

const NORMAL_PCO2: SourcedSpread = { spread: mmhgNormal(40, 3, [33, 46]), ...COMMON }
const LOW_PCO2: SourcedSpread = { spread: mmhgNormal(35, 5, [25, 48]), ...COMMON }
const HEALTHY_SHUNT: SourcedSpread = { spread: triangular(0.025, [0.01, 0.05]), ...COMMON }
const HEALTHY_SHIFT: SourcedSpread = {
  // Total shift in health is 6 kPa, all of it the step from inspired to alveolar gas: extra shift about 0.
  spread: mmhgTriangular(1, [0, 6]),
  source: 'Quine2006',
  known: 'derived',
}

/** Conditions in adults and children. Numbers in mmHg are those of the sources. */
const PRESETS: Readonly<Record<LungCondition, GasExchangePreset>> = {
  healthy: {
    shuntFraction: HEALTHY_SHUNT,
    extraShiftKpa: HEALTHY_SHIFT,
    arterialPco2Kpa: NORMAL_PCO2,
  },
  postoperative: {
    shuntFraction: { spread: triangular(0.05, [0.02, 0.12]), ...COMMON },
    // Day 2: 3.2 (1.2–6.4) kPa, day 3: 4.0 (1.2–8.3) kPa after coronary surgery, median and range.
    extraShiftKpa: { spread: triangular(3.2, [1.2, 8.3]), source: 'Kjaergaard2004', known: 'seen' },
    arterialPco2Kpa: NORMAL_PCO2,
  },
  pneumonia: {
    // 7 ± 2 % (sem), 13 patients breathing spontaneously.
    shuntFraction: {
      spread: { kind: 'lognormal', median: 0.06, logSd: 0.6, min: 0.01, max: 0.3 },
      source: 'Gea1991',
      known: 'derived',
    },
    extraShiftKpa: { spread: mmhgTriangular(25, [5, 55]), source: 'Gea1991', known: 'derived' },
    arterialPco2Kpa: LOW_PCO2,
  },
  'severe-pneumonia': {
    // 22 ± 5 % (sem), 10 ventilated patients.
    shuntFraction: {
      spread: { kind: 'lognormal', median: 0.2, logSd: 0.45, min: 0.05, max: 0.5 },
      source: 'Gea1991',
      known: 'derived',
    },
    extraShiftKpa: { spread: mmhgTriangular(30, [10, 60]), source: 'Gea1991', known: 'derived' },
    arterialPco2Kpa: { spread: mmhgNormal(38, 7, [25, 60]), ...COMMON },
  },
  'copd-stable': {
    shuntFraction: {
      spread: triangular(0.02, [0.005, 0.06]),
      source: 'Barbera1997',
      known: 'derived',
    },
    // Ratio of arterial to inspired oxygen 282 ± 52 mmHg, about 36 mmHg of shift at 70 years, less the part of age.
    extraShiftKpa: { spread: mmhgTriangular(28, [8, 55]), source: 'Barbera1997', known: 'derived' },
    // 44 ± 6 mmHg when stable.
    arterialPco2Kpa: { spread: mmhgNormal(44, 6, [32, 65]), source: 'Barbera1997', known: 'seen' },
  },
  'copd-exacerbation': {
    // Shunt almost nil in exacerbation; worsening is low ventilation–perfusion.
    shuntFraction: { spread: triangular(0.015, [0, 0.05]), source: 'Barbera1997', known: 'seen' },
    // Ratio 245 ± 58 mmHg: about 50 mmHg of shift on 24 % oxygen at 70 years, less the part of age.
    extraShiftKpa: {
      spread: mmhgTriangular(42, [18, 70]),
      source: 'Barbera1997',
      known: 'derived',
    },
    // 51 ± 12 mmHg.
    arterialPco2Kpa: { spread: mmhgNormal(51, 12, [32, 95]), source: 'Barbera1997', known: 'seen' },
  },
  asthma: {
    shuntFraction: { spread: triangular(0.015, [0.005, 0.05]), ...COMMON },
    extraShiftKpa: { spread: mmhgTriangular(30, [8, 55]), ...COMMON },
    arterialPco2Kpa: { spread: mmhgNormal(36, 5, [25, 55]), ...COMMON },
  },
  'pulmonary-oedema': {
    shuntFraction: { spread: triangular(0.15, [0.04, 0.45]), ...COMMON },
    extraShiftKpa: { spread: mmhgTriangular(20, [5, 45]), ...COMMON },
    arterialPco2Kpa: { spread: mmhgNormal(38, 8, [25, 65]), ...COMMON },
  },
  atelectasis: {
    shuntFraction: { spread: triangular(0.2, [0.05, 0.5]), ...COMMON },
    extraShiftKpa: { spread: mmhgTriangular(15, [3, 40]), ...COMMON },
    arterialPco2Kpa: { spread: mmhgNormal(38, 5, [28, 55]), ...COMMON },
  },
  'pulmonary-embolism': {
    shuntFraction: { spread: triangular(0.06, [0.02, 0.25]), ...COMMON },
    extraShiftKpa: { spread: mmhgTriangular(25, [5, 50]), ...COMMON },
    arterialPco2Kpa: { spread: mmhgNormal(32, 5, [22, 45]), ...COMMON },
  },
  interstitial: {
    shuntFraction: { spread: triangular(0.04, [0.01, 0.12]), ...COMMON },
    extraShiftKpa: { spread: mmhgTriangular(30, [10, 60]), ...COMMON },
    arterialPco2Kpa: { spread: mmhgNormal(37, 5, [28, 55]), ...COMMON },
  },
  hypoventilation: {
    shuntFraction: { spread: triangular(0.04, [0.015, 0.12]), ...COMMON },
    extraShiftKpa: { spread: mmhgTriangular(8, [0, 25]), ...COMMON },
    arterialPco2Kpa: { spread: mmhgNormal(52, 8, [40, 85]), ...COMMON },
  },
  'obesity-hypoventilation': {
    shuntFraction: { spread: triangular(0.06, [0.02, 0.15]), ...COMMON },
    extraShiftKpa: { spread: mmhgTriangular(20, [5, 40]), ...COMMON },
    arterialPco2Kpa: { spread: mmhgNormal(51, 6, [45, 75]), ...COMMON },
  },
  pregnancy: {
    shuntFraction: HEALTHY_SHUNT,
    extraShiftKpa: HEALTHY_SHIFT,
    arterialPco2Kpa: { spread: mmhgNormal(30, 2.5, [25, 36]), ...COMMON },
  },
  bronchiolitis: {
    shuntFraction: { spread: triangular(0.08, [0.02, 0.25]), ...COMMON },
    extraShiftKpa: { spread: mmhgTriangular(25, [5, 55]), ...COMMON },
    arterialPco2Kpa: { spread: mmhgNormal(42, 7, [30, 70]), ...COMMON },
  },
  newborn: {
    // 10–25 % early after birth through duct and foramen, falling over days.
    shuntFraction: { spread: triangular(0.1, [0.03, 0.25]), ...COMMON },
    extraShiftKpa: { spread: mmhgTriangular(5, [0, 20]), ...COMMON },
    arterialPco2Kpa: { spread: mmhgNormal(38, 5, [28, 52]), ...COMMON },
  },
  preterm: {
    shuntFraction: { spread: triangular(0.12, [0.03, 0.4]), ...COMMON },
    extraShiftKpa: { spread: mmhgTriangular(20, [3, 60]), ...COMMON },
    arterialPco2Kpa: { spread: mmhgNormal(44, 6, [32, 65]), ...COMMON },
  },
  'chronic-lung-of-prematurity': {
    // Median 8 % (quartiles 0.3–16.5), 24 babies.
    shuntFraction: { spread: triangular(0.04, [0, 0.25]), source: 'Dassios2015', known: 'derived' },
    // Total shift 14.5 (10.9–19.4) kPa, less 6 kPa in health.
    extraShiftKpa: {
      spread: { kind: 'normal', mean: 8.5, sd: 3.5, min: 1, max: 14 },
      source: 'Dassios2015',
      known: 'derived',
    },
    arterialPco2Kpa: { spread: mmhgNormal(50, 7, [36, 75]), ...COMMON },
  },
}

/** Alveolar–arterial difference grows by about 0.25 mmHg per year of age (upper limit age/4 + 4 mmHg on air); this
 *  much of it as extra shift from this age on. */
const AGE_SHIFT = {
  fromYears: 30,
  mmhgPerYear: 0.2,
  source: 'Mellemgaard1966',
  known: 'memory',
} as const

/** Gas exchange to expect in a condition. In adults the extra shift grows by 0.2 mmHg per year above 30 (from
 *  memory), so that a healthy old person reads what old people read. Valid 0–120 years; an unknown condition is
 *  UNKNOWN_CHOICE. Each spread names its source. */
export function gasExchangePreset(patient: {
  readonly condition: LungCondition
  readonly ageYears: number
}): GasExchangePreset {
  requireAge(patient.ageYears)
  const preset = PRESETS[patient.condition]
  // The type allows no other condition, but callers may hold unchecked text.
  if (preset === undefined) throw unknownCondition(patient.condition)
  const older = Math.max(0, patient.ageYears - AGE_SHIFT.fromYears)
  if (older === 0) return preset
  const addedKpa = kpaFromMmhg(older * AGE_SHIFT.mmhgPerYear)
  const shift = preset.extraShiftKpa
  return { ...preset, extraShiftKpa: { ...shift, spread: moved(shift.spread, addedKpa) } }
}

function moved(spread: Spread, by: number): Spread {
  switch (spread.kind) {
    case 'normal':
      return { ...spread, mean: spread.mean + by, min: spread.min + by, max: spread.max + by }
    case 'triangular':
      return { ...spread, mode: spread.mode + by, min: spread.min + by, max: spread.max + by }
    case 'uniform':
      return { ...spread, min: spread.min + by, max: spread.max + by }
    case 'fixed':
      return { ...spread, value: spread.value + by }
    case 'lognormal':
    case 'box-cox':
      return { ...spread, median: spread.median + by, min: spread.min + by, max: spread.max + by }
  }
}

function unknownCondition(condition: string): DomainError {
  return new DomainError({
    code: 'UNKNOWN_CHOICE',
    path: 'condition',
    value: condition,
    limit: { oneOf: LUNG_CONDITIONS },
  })
}
