// Air-entrainment masks as measured: at the lips, by volume-weighted sampling and by arterial oxygen.
import { breathOf, breathWithPeak, OBSTRUCTED_ADULT, RESTING_ADULT } from '../breathings.ts'
import type { EngineCase } from '../engine-case.ts'
import type { EvidenceRow } from '../evidence-row.ts'
import { engineRow, METERED } from './build.ts'
import { ADULT_MEANS, ADULT_PEOPLE } from './populations.ts'

function valve(setO2Fraction: number, flowLpm: number, breath = RESTING_ADULT): EngineCase {
  return { family: 'entrainment-mask', setO2Fraction, flowLpm, breath, gas: METERED }
}

const RECOMMENDED = [
  [0.24, 2],
  [0.28, 4],
  [0.35, 8],
  [0.4, 10],
] as const
const GROUPS = [
  ['healthy', RESTING_ADULT],
  ['obstructed', OBSTRUCTED_ADULT],
] as const

/** The mask of the study was of large volume; 0.25 L assumed. */
function largeValve(
  setO2Fraction: number,
  flowLpm: number,
  breath: typeof RESTING_ADULT,
): EngineCase {
  return { ...valve(setO2Fraction, flowLpm, breath), parameters: { 'gas-space-l': 0.25 } }
}

/** Six healthy people and ten with severe obstruction: 24–40 % within −1.2 to +1.9 points, 60 % read 50.3 %. */
const VOLUME_WEIGHTED_ROWS = GROUPS.flatMap(([group, breath]) => [
  ...RECOMMENDED.map(([setO2Fraction, flowLpm]) =>
    engineRow({
      id: `valve-${group}-${setO2Fraction}`,
      source: 'Jones1984',
      condition:
        'large-volume mask (0.25 L assumed), recommended flow, volume-weighted by mass spectrometer; −0.012 to +0.019 of the setting',
      engine: largeValve(setO2Fraction, flowLpm, breath),
      quantity: 'opening',
      people: ADULT_MEANS,
      publishedValue: setO2Fraction,
      tolerance: 0.02,
      reason: 'published-range',
      known: 'seen',
    }),
  ),
  engineRow({
    id: `valve-${group}-0.6`,
    source: 'Jones1984',
    condition: 'large-volume mask (0.25 L assumed) at 15 L/min, volume-weighted',
    engine: largeValve(0.6, 15, breath),
    quantity: 'opening',
    people: ADULT_MEANS,
    publishedValue: 0.503,
    tolerance: 0.04,
    reason: 'published-range',
    known: 'seen',
  }),
])

const CARBON_DIOXIDE_ROWS = (
  [
    ['healthy', RESTING_ADULT, 0.003, 0.001],
    ['obstructed', OBSTRUCTED_ADULT, 0.006, 0.004],
  ] as const
).map(([group, breath, publishedValue, tolerance]) =>
  engineRow({
    id: `valve-co2-${group}`,
    source: 'Jones1984',
    condition:
      'inspired carbon dioxide 0.2–0.4 % healthy, 0.6 ± 0.4 % obstructed; 28 % valve at 4 L/min assumed',
    engine: largeValve(0.28, 4, breath),
    quantity: 'inspired-co2',
    people: ADULT_MEANS,
    publishedValue,
    tolerance,
    reason: 'published-sd',
    known: 'seen',
  }),
)

const FASTER = breathOf({
  tidalVolumeL: 0.5,
  ratePerMin: 26,
  dutyFraction: 0.4,
  timeConstantS: 0.4,
})

const MANIKIN_FAST = breathOf({
  tidalVolumeL: 0.5,
  ratePerMin: 28,
  dutyFraction: 0.4,
  timeConstantS: 0.4,
})

/** Twelve healthy people, sampled at the lips: means within 2 points, nobody above +5. */
const LIPS_ROWS = (
  [
    [0.24, 2],
    [0.28, 4],
  ] as const
).flatMap(([setO2Fraction, flowLpm]) => [
  ...(
    [
      ['rest', RESTING_ADULT],
      ['26', FASTER],
    ] as const
  ).map(([name, breath]) =>
    engineRow({
      id: `lips-${setO2Fraction}-${name}`,
      source: 'Jeffrey1992',
      condition:
        '12 healthy people at the lips, rest 8–20/min or 26/min; means within 2 points; volume assumed',
      engine: valve(setO2Fraction, flowLpm, breath),
      quantity: 'opening',
      people: ADULT_MEANS,
      publishedValue: setO2Fraction,
      tolerance: 0.02,
      reason: 'published-range',
      known: 'seen',
    }),
  ),
  engineRow({
    id: `lips-excess-${setO2Fraction}`,
    source: 'Jeffrey1992',
    condition: 'nobody of 12 more than 5 points above the printed fraction',
    engine: valve(setO2Fraction, flowLpm),
    quantity: 'opening',
    publishedValue: 0,
    compare: 'at-most',
    tolerance: 0.05,
    reason: 'published-range',
    known: 'seen',
    reproduce: {
      by: 'people',
      engine: valve(setO2Fraction, flowLpm),
      people: ADULT_PEOPLE,
      statistic: 'share-above',
      above: setO2Fraction + 0.05,
    },
  }),
])

const ARTERIAL_ROWS = [
  engineRow({
    id: 'valve-arterial-effective',
    source: 'ValveMask1984',
    condition:
      '10 healthy people, 24 % valve at 2 L/min for 20 min; effective fraction by arterial oxygen',
    engine: valve(0.24, 2),
    quantity: 'effective',
    people: ADULT_MEANS,
    publishedValue: 0.228,
    tolerance: 0.02,
    reason: 'published-range',
    known: 'seen',
  }),
  engineRow({
    id: 'valve-arterial-rise',
    source: 'ValveMask1984',
    condition: '10 healthy people, 24 % valve: rise of arterial oxygen, SD 0.7 kPa',
    engine: valve(0.24, 2),
    quantity: 'arterial-po2-rise',
    people: ADULT_MEANS,
    publishedValue: 1.8,
    tolerance: 0.7,
    reason: 'published-sd',
    known: 'seen',
    unit: 'kPa',
  }),
]

/** Manikin, rising rate: 24–40 % hold. */
const MANIKIN_ROWS = RECOMMENDED.map(([setO2Fraction, flowLpm]) =>
  engineRow({
    id: `valve-holds-with-rate-${setO2Fraction}`,
    source: 'Wagstaff2007',
    condition: 'manikin, rate 15 to 28/min at fixed volume (0.5 L assumed): no fall that counts',
    engine: valve(setO2Fraction, flowLpm, MANIKIN_FAST),
    quantity: 'effective',
    publishedValue: 0,
    tolerance: 0.02,
    reason: 'reading-precision',
    known: 'seen',
    reproduce: {
      by: 'change',
      from: valve(setO2Fraction, flowLpm),
      to: valve(setO2Fraction, flowLpm, MANIKIN_FAST),
    },
  }),
)

/** Below total flow nothing changes with peak inspiratory flow. */
const LOW_DEMAND_ROWS = RECOMMENDED.slice(0, 3).map(([setO2Fraction, flowLpm]) =>
  engineRow({
    id: `valve-fixed-below-total-${setO2Fraction}`,
    source: 'Hill1984',
    condition: 'peak inspiratory flow 20 to 35 L/min, below total flow: fixed performance',
    engine: valve(setO2Fraction, flowLpm, breathWithPeak(35)),
    quantity: 'effective',
    publishedValue: 0,
    tolerance: 0.01,
    reason: 'reading-precision',
    known: 'seen',
    reproduce: {
      by: 'change',
      from: valve(setO2Fraction, flowLpm, breathWithPeak(20)),
      to: valve(setO2Fraction, flowLpm, breathWithPeak(35)),
    },
  }),
)

const DEAD_SPACE_ROW = engineRow({
  id: 'valve-adds-no-dead-space',
  source: 'Bethune1967',
  condition: 'entrainment mask adds no dead space: next to no carbon dioxide inspired',
  engine: valve(0.28, 4),
  quantity: 'inspired-co2',
  publishedValue: 0.004,
  compare: 'at-most',
  tolerance: 0.001,
  reason: 'reading-precision',
  known: 'seen',
})

export const ENTRAINMENT_ROWS: readonly EvidenceRow[] = [
  ...VOLUME_WEIGHTED_ROWS,
  ...CARBON_DIOXIDE_ROWS,
  ...LIPS_ROWS,
  ...ARTERIAL_ROWS,
  ...MANIKIN_ROWS,
  ...LOW_DEMAND_ROWS,
  DEAD_SPACE_ROW,
]
