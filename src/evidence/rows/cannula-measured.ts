// Nasal cannula, catheter and infants' prongs as measured in people and replicas.
import type { EngineCase } from '../engine-case.ts'
import type { EvidenceRow } from '../evidence-row.ts'
import { breathOf, FAST_ADULT, infantBreath, OBSTRUCTED_ADULT, QUIET_ADULT } from '../breathings.ts'
import { engineRow, METERED, ONE_CONDITION } from './build.ts'
import { ADULT_MEANS, ADULT_PEOPLE, INFANT_PEOPLE } from './populations.ts'

function cannula(flowLpm: number, breath = QUIET_ADULT): EngineCase {
  return { family: 'nasal-cannula', flowLpm, breath, gas: METERED }
}

function largeBore(flowLpm: number, breath = QUIET_ADULT): EngineCase {
  return { family: 'nasal-high-flow', flowLpm, setO2Fraction: 1, breath, gas: METERED }
}

/** Mean pharyngeal fraction; SD 0.04–0.15 over the steps: the smallest at 1 L/min, 0.10 (the middle) from 6 L/min. */
const PHARYNX: readonly (readonly [string, EngineCase, number, number])[] = [
  ['standard-rest-1', cannula(1), 0.26, 0.04],
  ['standard-rest-6', cannula(6), 0.54, 0.1],
  ['standard-fast-1', cannula(1, FAST_ADULT), 0.24, 0.04],
  ['standard-fast-6', cannula(6, FAST_ADULT), 0.45, 0.1],
  ['large-rest-6', largeBore(6), 0.54, 0.1],
  ['large-rest-15', largeBore(15), 0.75, 0.1],
  ['large-fast-6', largeBore(6, FAST_ADULT), 0.49, 0.1],
  ['large-fast-15', largeBore(15, FAST_ADULT), 0.72, 0.1],
]

const PHARYNX_ROWS = PHARYNX.map(([name, engine, publishedValue, tolerance]) =>
  engineRow({
    id: `pharynx-${name}`,
    source: 'Wettstein2005',
    condition: '10 healthy people, gas drawn behind the uvula; volumes assumed',
    engine,
    quantity: 'pharynx',
    publishedValue,
    tolerance,
    reason: 'published-sd',
    known: 'seen',
    people: ADULT_MEANS,
  }),
)

/** 10–90 % width of a normal spread is 2.563 SD; SD 0.077 is the geometric middle of 0.04 and 0.15. */
const PHARYNX_WIDTH = engineRow({
  id: 'pharynx-width-6',
  source: 'Wettstein2005',
  condition: '10 healthy people at 6 L/min; width from the middle of the published SDs',
  engine: cannula(6),
  quantity: 'pharynx',
  publishedValue: 0.2,
  compare: 'factor',
  tolerance: 1,
  reason: 'width-half-to-twice',
  known: 'derived',
  reproduce: {
    by: 'people',
    engine: cannula(6),
    people: ADULT_MEANS,
    statistic: 'width',
  },
})

/** The slope hardly depends on what the nose stores; it fixes the tidal volume near 0.55 L. */
const TRACHEA_BREATH = breathOf({
  tidalVolumeL: 0.55,
  ratePerMin: 15,
  dutyFraction: 0.4,
  timeConstantS: 0.4,
})

/** Tracheal rise per L/min from 1 to 6 L/min, times five. */
const TRACHEA_SLOPE = engineRow({
  id: 'trachea-slope',
  source: 'ONugent2014',
  condition:
    '20 people, tracheal catheter, 15/min; tidal volume measured but unseen, 0.55 L assumed; rise from 1 to 6 L/min',
  engine: cannula(6, TRACHEA_BREATH),
  quantity: 'trachea',
  publishedValue: 0.19,
  tolerance: 0.025,
  reason: 'conditions-not-stated',
  known: 'seen',
  use: 'calibrate',
  reproduce: {
    by: 'change',
    from: cannula(1, TRACHEA_BREATH),
    to: cannula(6, TRACHEA_BREATH),
  },
})

/** From the same study, from memory: −0.012 for each 5/min, shown without verdict. */
const TRACHEA_RATE = engineRow({
  id: 'trachea-rate',
  source: 'ONugent2014',
  condition: 'change from 15 to 20/min at 4 L/min; from memory',
  engine: cannula(4, { ...TRACHEA_BREATH, ratePerMin: 20 }),
  quantity: 'trachea',
  publishedValue: -0.012,
  tolerance: 0.012,
  reason: 'conditions-not-stated',
  known: 'memory',
  use: 'context',
  reproduce: {
    by: 'change',
    from: cannula(4, TRACHEA_BREATH),
    to: cannula(4, { ...TRACHEA_BREATH, ratePerMin: 20 }),
  },
})

/** Open against closed mouth: studies disagree on the sign, within 0.03. */
const MOUTH_ROWS = [2, 4, 6].map((flowLpm) =>
  engineRow({
    id: `mouth-share-${flowLpm}`,
    source: 'Wettstein2005',
    condition:
      'mouth open against closed, a third by mouth assumed; small and of either sign between studies',
    engine: { ...cannula(flowLpm), mouthShare: 0.33 },
    quantity: 'pharynx',
    publishedValue: 0,
    tolerance: 0.03,
    reason: 'published-range',
    known: 'secondary',
    reproduce: {
      by: 'change',
      from: cannula(flowLpm),
      to: { ...cannula(flowLpm), mouthShare: 0.33 },
    },
  }),
)

const BAZUAYE = [
  ['healthy-1', cannula(1), 0.245],
  ['healthy-2', cannula(2), 0.28],
  ['obstructed-1', cannula(1, OBSTRUCTED_ADULT), 0.245],
  ['obstructed-2', cannula(2, OBSTRUCTED_ADULT), 0.28],
] as const

const EXPIRED_METHOD_ROWS = [
  ...BAZUAYE.map(([name, engine, publishedValue]) =>
    engineRow({
      id: `breath-by-breath-${name}`,
      source: 'Bazuaye1992',
      condition: '7 + 7 people, from expired gas with R 0.8; mean similar to a 24.5 or 28 % valve',
      engine,
      quantity: 'effective',
      publishedValue,
      tolerance: 0.041,
      reason: 'published-range',
      known: 'seen',
      people: ADULT_MEANS,
    }),
  ),
  engineRow({
    id: 'breath-by-breath-width-2',
    source: 'Bazuaye1992',
    condition:
      'individual means 0.237–0.349 of 7 people at 2 L/min, as 10–90 % width of a normal spread',
    engine: cannula(2, OBSTRUCTED_ADULT),
    quantity: 'effective',
    publishedValue: 0.106,
    compare: 'factor',
    tolerance: 1,
    reason: 'width-half-to-twice',
    known: 'derived',
    reproduce: {
      by: 'people',
      engine: cannula(2, OBSTRUCTED_ADULT),
      people: ADULT_PEOPLE,
      statistic: 'width',
    },
  }),
]

/** Replica of an adult airway: 500/640/800 mL × 12/17/22 per min; the supply flow of the range is not given, 6 L/min assumed. */
const REPLICA = [0.5, 0.64, 0.8].flatMap((tidalVolumeL) =>
  [12, 17, 22].map((ratePerMin): EngineCase => ({
    family: 'nasal-cannula',
    flowLpm: 6,
    breath: breathOf({ tidalVolumeL, ratePerMin, dutyFraction: 0.4, timeConstantS: 0.4 }),
    gas: ONE_CONDITION,
    isBench: true,
  })),
)
const REPLICA_ROWS = (
  [
    ['max-over-min', 1.59, 0.26, 'factor'],
    ['min', 0.302, 0.05, 'equal'],
    ['max', 0.48, 0.05, 'equal'],
  ] as const
).map(([statistic, publishedValue, tolerance, compare]) =>
  engineRow({
    id: `replica-range-${statistic}`,
    source: 'Katz2019',
    condition:
      'volume-averaged tracheal fraction over all patterns at one supply flow, 6 L/min assumed',
    engine: REPLICA[0] ?? cannula(6),
    quantity: 'trachea',
    publishedValue,
    compare,
    tolerance,
    reason: 'conditions-not-stated',
    known: 'seen',
    reproduce: { by: 'patterns', engines: REPLICA, statistic },
  }),
)

/** Nasopharyngeal catheter at 150 mL/kg/min: about 0.50 below 2 years. */
const CATHETER_ROWS = (
  [
    ['newborn', 3.3, 45],
    ['infant', 6.5, 35],
    ['child', 11, 28],
  ] as const
).map(([size, weightKg, ratePerMin]) =>
  engineRow({
    id: `catheter-${size}`,
    source: 'Shann1988',
    condition: '150 mL/kg/min, about 0.50 below 2 years; 6.5 mL/kg and rate for age assumed',
    engine: {
      family: 'nasal-catheter',
      size,
      flowLpm: 0.15 * weightKg,
      breath: infantBreath({ weightKg, tidalMlPerKg: 6.5, ratePerMin }),
      gas: METERED,
      infantKg: weightKg,
    },
    quantity: 'trachea',
    publishedValue: 0.5,
    tolerance: 0.1,
    reason: 'reading-precision',
    known: 'seen',
  }),
)

function infantCannula(flowLpm: number, ratePerMin: number): EngineCase {
  return {
    family: 'nasal-cannula',
    size: 'infant',
    flowLpm,
    breath: infantBreath({ weightKg: 6, tidalMlPerKg: 6.5, ratePerMin }),
    gas: METERED,
    infantKg: 6,
  }
}

const HYPOPHARYNX_ROWS = [2, 3, 4].map((flowLpm) =>
  engineRow({
    id: `hypopharynx-${flowLpm}`,
    source: 'Kuluz2001',
    condition:
      '20 infants, above 0.60 in two thirds of samples from 2 L/min; 6 kg, 6.5 mL/kg and 35/min assumed',
    engine: infantCannula(flowLpm, 35),
    quantity: 'pharynx',
    publishedValue: 2 / 3,
    compare: 'at-least',
    tolerance: 0.1,
    reason: 'reading-precision',
    known: 'seen',
    reproduce: {
      by: 'people',
      engine: infantCannula(flowLpm, 35),
      people: INFANT_PEOPLE,
      statistic: 'share-above',
      above: 0.6,
    },
  }),
)

export const CANNULA_ROWS: readonly EvidenceRow[] = [
  ...PHARYNX_ROWS,
  PHARYNX_WIDTH,
  TRACHEA_SLOPE,
  TRACHEA_RATE,
  ...MOUTH_ROWS,
  ...EXPIRED_METHOD_ROWS,
  ...REPLICA_ROWS,
  ...CATHETER_ROWS,
  ...HYPOPHARYNX_ROWS,
]
