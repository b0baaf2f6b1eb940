// Directions that studies report without usable numbers: sign tests of the engine.
import { breathOf, OBSTRUCTED_ADULT, RESTING_ADULT } from '../breathings.ts'
import type { BreathPattern } from '../../delivery/breath.ts'
import type { EngineCase } from '../engine-case.ts'
import type { EvidenceRow } from '../evidence-row.ts'
import type { FamilyId } from '../../kit/family-id.ts'
import { METERED, ONE_CONDITION, trendRow } from './build.ts'

const BASE = { tidalVolumeL: 0.5, ratePerMin: 15, dutyFraction: 0.4, timeConstantS: 0.4 }
const LARGER = breathOf({ ...BASE, tidalVolumeL: 0.8 })
const FASTER = breathOf({ ...BASE, ratePerMin: 28 })
const LONGER_IN = breathOf({ ...BASE, dutyFraction: 0.5 })

function on(family: FamilyId, flowLpm: number, breath: BreathPattern = RESTING_ADULT): EngineCase {
  return { family, flowLpm, breath, gas: METERED }
}
function valve(setO2Fraction: number, flowLpm: number, breath = RESTING_ADULT): EngineCase {
  return { ...on('entrainment-mask', flowLpm, breath), setO2Fraction }
}

const CANNULA_TRENDS = [
  trendRow({
    id: 'cannula-up-with-flow',
    source: 'ONugent2014',
    condition: '2 to 4 L/min',
    from: on('nasal-cannula', 2),
    to: on('nasal-cannula', 4),
    quantity: 'trachea',
    sign: 1,
  }),
  trendRow({
    id: 'cannula-down-with-rate',
    source: 'ONugent2014',
    condition: '15 to 28/min',
    from: on('nasal-cannula', 4),
    to: on('nasal-cannula', 4, FASTER),
    quantity: 'trachea',
    sign: -1,
  }),
  trendRow({
    id: 'cannula-down-with-rate-pharynx',
    source: 'Schachter1980',
    condition: '15 to 28/min, hypopharynx',
    from: on('nasal-cannula', 4),
    to: on('nasal-cannula', 4, FASTER),
    quantity: 'pharynx',
    sign: -1,
  }),
  trendRow({
    id: 'cannula-down-with-volume',
    source: 'Katz2019',
    condition: '500 to 800 mL in an airway replica',
    from: { ...on('nasal-cannula', 4), gas: ONE_CONDITION, isBench: true },
    to: { ...on('nasal-cannula', 4, LARGER), gas: ONE_CONDITION, isBench: true },
    quantity: 'trachea',
    sign: -1,
  }),
  trendRow({
    id: 'cannula-up-with-pause',
    source: 'Katz2019',
    condition: 'same volume per minute and inspiration, faster emptying: longer pause',
    from: on('nasal-cannula', 4, breathOf({ ...BASE, timeConstantS: 0.7 })),
    to: on('nasal-cannula', 4, breathOf({ ...BASE, timeConstantS: 0.25 })),
    quantity: 'trachea',
    sign: 1,
  }),
  trendRow({
    id: 'cannula-up-with-duty',
    source: 'Duprez2018',
    condition: 'Ti/Ttot 0.4 to 0.5',
    from: on('nasal-cannula', 4),
    to: on('nasal-cannula', 4, LONGER_IN),
    quantity: 'trachea',
    sign: 1,
  }),
  trendRow({
    id: 'cannula-down-with-late-flow',
    source: 'Zhou2014',
    condition: 'expiratory flow that has not ended washes out the store',
    from: on('nasal-cannula', 3, breathOf({ ...BASE, tidalVolumeL: 0.685, ratePerMin: 20 })),
    to: on(
      'nasal-cannula',
      3,
      breathOf({ ...BASE, tidalVolumeL: 0.685, ratePerMin: 20, timeConstantS: 1.5 }),
    ),
    quantity: 'trachea',
    sign: -1,
  }),
  trendRow({
    id: 'infant-down-with-rate',
    source: 'Kuluz2001',
    condition: 'infant above 40/min',
    from: infant(2, 35),
    to: infant(2, 50),
    quantity: 'pharynx',
    sign: -1,
  }),
  trendRow({
    id: 'infant-down-with-volume',
    source: 'Bertzouanis2024',
    condition: 'infant replica, larger tidal volume',
    from: infant(0.5, 40),
    to: infant(0.5, 40, 0.05),
    quantity: 'trachea',
    sign: -1,
  }),
]

function infant(flowLpm: number, ratePerMin: number, tidalVolumeL = 0.036): EngineCase {
  return {
    ...on('nasal-cannula', flowLpm),
    size: 'infant',
    breath: breathOf({ tidalVolumeL, ratePerMin, dutyFraction: 0.4, timeConstantS: 0.1 }),
    infantKg: 6,
  }
}

const MASK_TRENDS = [
  ...(['simple-mask', 'non-rebreather-mask'] as const).flatMap((family) => [
    trendRow({
      id: `${family}-down-with-rate`,
      source: 'Goldstein1982',
      condition: '15 to 28/min',
      from: on(family, 10),
      to: on(family, 10, FASTER),
      quantity: 'effective',
      sign: -1,
    }),
    trendRow({
      id: `${family}-down-with-volume`,
      source: 'Goldstein1982',
      condition: '0.5 to 0.8 L',
      from: on(family, 10),
      to: on(family, 10, LARGER),
      quantity: 'effective',
      sign: -1,
    }),
    trendRow({
      id: `${family}-up-with-flow`,
      source: 'Goldstein1982',
      condition: '10 to 15 L/min',
      from: on(family, 10),
      to: on(family, 15),
      quantity: 'effective',
      sign: 1,
    }),
  ]),
  trendRow({
    id: 'simple-mask-falls-with-rate',
    source: 'Wagstaff2007',
    condition: 'manikin, rising rate',
    from: { ...on('simple-mask', 8), gas: ONE_CONDITION, isBench: true },
    to: { ...on('simple-mask', 8, FASTER), gas: ONE_CONDITION, isBench: true },
    quantity: 'effective',
    sign: -1,
  }),
  trendRow({
    id: 'reservoir-up-with-seal',
    source: 'Yorozu2014',
    condition: 'loose to tight at 10 L/min',
    from: { ...on('non-rebreather-mask', 10), fit: 'loose' },
    to: { ...on('non-rebreather-mask', 10), fit: 'tight' },
    quantity: 'effective',
    sign: 1,
  }),
  trendRow({
    id: 'simple-mask-down-over-mask',
    source: 'OverMask2024',
    condition: 'over a surgical mask',
    from: on('simple-mask', 8),
    to: { ...on('simple-mask', 8), fit: 'over-surgical-mask' },
    quantity: 'effective',
    sign: -1,
  }),
  trendRow({
    id: 'aerosol-mask-down-in-draught',
    source: 'Wexler1975',
    condition: 'more exchange at the ports',
    from: { ...on('aerosol-mask', 12), setO2Fraction: 0.6 },
    to: {
      ...on('aerosol-mask', 12),
      setO2Fraction: 0.6,
      parameters: { 'exchange-base-lpm': 20 },
    },
    quantity: 'effective',
    sign: -1,
  }),
  trendRow({
    id: 'aerosol-mask-down-with-rate',
    source: 'Schachter1980',
    condition: '15 to 28/min, hypopharynx',
    from: { ...on('aerosol-mask', 12), setO2Fraction: 0.6 },
    to: { ...on('aerosol-mask', 12, FASTER), setO2Fraction: 0.6 },
    quantity: 'pharynx',
    sign: -1,
  }),
]

const VALVE_TRENDS = [
  trendRow({
    id: 'valve-60-falls-with-rate',
    source: 'Wagstaff2007',
    condition: '60 % valve, rising rate',
    from: valve(0.6, 15),
    to: valve(0.6, 15, FASTER),
    quantity: 'effective',
    sign: -1,
  }),
  trendRow({
    id: 'valve-variable-above-total-flow',
    source: 'Hill1984',
    condition: '35 % valve, peak inspiratory flow above total flow',
    from: valve(0.35, 8),
    to: valve(0.35, 8, breathOf({ ...BASE, tidalVolumeL: 1, ratePerMin: 25 })),
    quantity: 'effective',
    sign: -1,
  }),
  trendRow({
    id: 'valve-more-flow-in-fast-breathing',
    source: 'ODriscoll2017',
    condition: '35 % valve in fast deep breathing: 12 instead of 8 L/min brings it back up',
    from: valve(0.35, 8, breathOf({ ...BASE, tidalVolumeL: 0.8, ratePerMin: 32 })),
    to: valve(0.35, 12, breathOf({ ...BASE, tidalVolumeL: 0.8, ratePerMin: 32 })),
    quantity: 'effective',
    sign: 1,
  }),
]

const CARBON_DIOXIDE_TRENDS = [
  ...(
    [
      ['simple-0-to-3', 'Jensen1991', on('simple-mask', 0), on('simple-mask', 3), -1],
      ['simple-3-to-5', 'Jensen1991', on('simple-mask', 3), on('simple-mask', 5), -1],
      ['simple-3-faster', 'Kurhekar2017', on('simple-mask', 3), on('simple-mask', 3, FASTER), 1],
      ['entrainment-less-than-simple', 'Bethune1967', on('simple-mask', 0), valve(0.28, 4), -1],
      ['obstructed-more', 'Jones1984', valve(0.28, 4), valve(0.28, 4, OBSTRUCTED_ADULT), 1],
    ] as const
  ).map(([name, source, from, to, sign]) =>
    trendRow({
      id: `co2-${name}`,
      source,
      condition: 'inspired carbon dioxide',
      from,
      to,
      quantity: 'inspired-co2',
      sign,
    }),
  ),
  trendRow({
    id: 'head-box-co2-falls-with-flow',
    source: 'Frey2003',
    condition: 'newborn, 2 to 5 L/min',
    from: box(2),
    to: box(5),
    quantity: 'inspired-co2',
    sign: -1,
    known: 'secondary',
  }),
]

function box(flowLpm: number): EngineCase {
  return {
    ...on('head-box', flowLpm),
    size: 'newborn',
    setO2Fraction: 0.4,
    breath: breathOf({
      tidalVolumeL: 0.02,
      ratePerMin: 50,
      dutyFraction: 0.4,
      timeConstantS: 0.1,
    }),
    infantKg: 3.5,
  }
}

const HIGH_FLOW_TRENDS = [
  trendRow({
    id: 'high-flow-frees-dead-space',
    source: 'Moeller2017',
    condition: '15 to 45 L/min: less expired gas breathed again',
    from: { ...on('nasal-high-flow', 15), setO2Fraction: 0.4 },
    to: { ...on('nasal-high-flow', 45), setO2Fraction: 0.4 },
    quantity: 'fresh-ventilation',
    sign: 1,
  }),
  trendRow({
    id: 'high-flow-up-with-ratio',
    source: 'Huang2024',
    condition: 'ratio of flow to demand below 1: more flow, more oxygen',
    from: { ...on('nasal-high-flow', 20, FASTER), setO2Fraction: 1 },
    to: { ...on('nasal-high-flow', 35, FASTER), setO2Fraction: 1 },
    quantity: 'trachea',
    sign: 1,
  }),
]

export const TREND_ROWS: readonly EvidenceRow[] = [
  ...CANNULA_TRENDS,
  ...MASK_TRENDS,
  ...VALVE_TRENDS,
  ...CARBON_DIOXIDE_TRENDS,
  ...HIGH_FLOW_TRENDS,
]
