// What the trade takes for granted and what guidelines print: ranges, not measurements of one study.
import { breathOf, DISTRESSED_ADULT, ILL_ADULT, RESTING_ADULT } from '../breathings.ts'
import type { EngineCase } from '../engine-case.ts'
import type { EvidenceRow } from '../evidence-row.ts'
import type { FamilyId } from '../../kit/family-id.ts'
import { engineRow, formulaRows, METERED, trendRow } from './build.ts'

/** Simple mask 0.35–0.50 at 5–8 L/min; the ends calibrate (reservoir-measured.ts), the flows between judge. */
const SIMPLE_ROWS = (
  [
    [6, 0.425, 0.075, null, 'common-practice', RESTING_ADULT],
    [7, 0.425, 0.075, null, 'common-practice', RESTING_ADULT],
    [10, 0.5, 0.1, 'ODriscoll2017', 'secondary', ILL_ADULT],
    [7.5, 0.475, 0.125, 'Beasley2015', 'secondary', ILL_ADULT],
  ] as const
).map(([flowLpm, publishedValue, tolerance, source, known, breath]) =>
  engineRow({
    id: `simple-usual-${source ?? 'practice'}-${flowLpm}`,
    source,
    condition: 'usual range, ordinary wear; resting adult, or the ill adult of a guideline',
    engine: { family: 'simple-mask', flowLpm, breath, gas: METERED },
    quantity: 'effective',
    publishedValue,
    tolerance,
    reason: 'usual-range-half-width',
    known,
  }),
)

function reservoir(flowLpm: number, fit: 'tight' | 'gentle'): EngineCase {
  return { family: 'non-rebreather-mask', fit, flowLpm, breath: RESTING_ADULT, gas: METERED }
}

/** Non-rebreather above 0.80 when the bag stays filled and the seal is tight. */
const RESERVOIR_ROWS = [
  ...[12, 15].flatMap((flowLpm) => [
    engineRow({
      id: `reservoir-filled-${flowLpm}`,
      source: null,
      condition: 'tight seal, bag stays filled: above 0.80',
      engine: reservoir(flowLpm, 'tight'),
      quantity: 'effective',
      publishedValue: 0.8,
      compare: 'at-least',
      tolerance: 0.02,
      reason: 'usual-range-half-width',
      known: 'common-practice',
    }),
    engineRow({
      id: `reservoir-bag-${flowLpm}`,
      source: null,
      condition: 'the bag of a resting adult does not run empty at this flow',
      engine: reservoir(flowLpm, 'tight'),
      quantity: 'lowest-bag',
      publishedValue: 0.05,
      compare: 'at-least',
      tolerance: 0.02,
      reason: 'usual-range-half-width',
      known: 'common-practice',
      unit: 'L',
    }),
  ]),
  engineRow({
    id: 'reservoir-guideline-range',
    source: 'ODriscoll2017',
    condition: '0.60–0.90 at 15 L/min in an ill adult, ordinary wear',
    engine: { ...reservoir(15, 'gentle'), breath: ILL_ADULT },
    quantity: 'effective',
    publishedValue: 0.75,
    tolerance: 0.15,
    reason: 'usual-range-half-width',
    known: 'secondary',
  }),
  engineRow({
    id: 'reservoir-guideline-floor',
    source: 'Beasley2015',
    condition: 'above 0.60 at 15 L/min, distressed adult',
    engine: { ...reservoir(15, 'gentle'), breath: DISTRESSED_ADULT },
    quantity: 'effective',
    publishedValue: 0.6,
    compare: 'at-least',
    tolerance: 0.02,
    reason: 'usual-range-half-width',
    known: 'secondary',
  }),
]

const SETTINGS = [
  [0.24, 2],
  [0.28, 4],
  [0.31, 6],
  [0.35, 8],
  [0.4, 10],
] as const

/** Valves of 24–40 % hold at rest at the printed flow. */
const VALVE_ROWS = SETTINGS.map(([setO2Fraction, flowLpm]) =>
  engineRow({
    id: `valve-holds-${setO2Fraction}`,
    source: null,
    condition: 'at rest at the printed flow',
    engine: {
      family: 'entrainment-mask',
      setO2Fraction,
      flowLpm,
      breath: RESTING_ADULT,
      gas: METERED,
    },
    quantity: 'effective',
    publishedValue: setO2Fraction,
    tolerance: 0.02,
    reason: 'usual-range-half-width',
    known: 'common-practice',
  }),
)

/** VT 1 L in 0.86 s: peak 110 L/min, above every total flow of a valve. */
const GASPING = breathOf({
  tidalVolumeL: 1,
  ratePerMin: 28,
  dutyFraction: 0.4,
  timeConstantS: 0.4,
})

/** Any setting falls once inspiratory flow exceeds total flow. */
const VALVE_FALLS = [...SETTINGS, [0.5, 12] as const, [0.6, 15] as const].flatMap(
  ([setO2Fraction, flowLpm]) =>
    (['entrainment-mask', 'adjustable-entrainment-mask'] as const).map((family) => {
      const to = { family, setO2Fraction, flowLpm, breath: GASPING, gas: METERED } as const
      return trendRow({
        id: `${family}-falls-${setO2Fraction}`,
        source: null,
        condition: 'peak inspiratory flow above total flow',
        from: { ...to, breath: RESTING_ADULT },
        to,
        quantity: 'effective',
        sign: -1,
        known: 'common-practice',
      })
    }),
)

/** Cannula 1–6 L/min: about 0.24 to 0.50; 1–4 L/min 0.24 to 0.35. */
const CANNULA_ROWS = (
  [
    [1, 0.24, 'at-least', 'ODriscoll2017'],
    [6, 0.5, 'at-most', 'ODriscoll2017'],
    [1, 0.24, 'at-least', 'Beasley2015'],
    [4, 0.35, 'at-most', 'Beasley2015'],
  ] as const
).map(([flowLpm, publishedValue, compare, source]) =>
  engineRow({
    id: `cannula-printed-${source}-${flowLpm}`,
    source,
    condition: 'end of the printed range; ill adult, nose breathing',
    engine: { family: 'nasal-cannula', flowLpm, breath: ILL_ADULT, gas: METERED },
    quantity: 'effective',
    publishedValue,
    compare,
    tolerance: 0.05,
    reason: 'usual-range-half-width',
    known: 'secondary',
  }),
)

/** Smallest flows in use give something: 0.125 L/min in small children. */
const SMALL_FLOW = trendRow({
  id: 'cannula-smallest-flow',
  source: null,
  condition: 'from the lowest step of the infant size to 0.125 L/min, 6 kg',
  from: smallFlow(0.05),
  to: smallFlow(0.125),
  quantity: 'effective',
  sign: 1,
  known: 'common-practice',
})

function smallFlow(flowLpm: number): EngineCase {
  return {
    family: 'nasal-cannula',
    size: 'infant',
    flowLpm,
    breath: breathOf({
      tidalVolumeL: 0.039,
      ratePerMin: 35,
      dutyFraction: 0.4,
      timeConstantS: 0.1,
    }),
    gas: METERED,
    infantKg: 6,
  }
}

const CUFFED = {
  route: 'tracheostomy',
  nose: 'open',
  tube: { cuff: 'up', speakingValve: false, capped: false, heatMoistureExchanger: false },
} as const

/** Families without a measurement: printed beside ours, no verdict. */
const CONTEXT: readonly (readonly [FamilyId, number, number | null, number])[] = [
  ['face-tent', 10, 0.4, 0.4],
  ['face-tent', 15, 0.4, 0.4],
  ['aerosol-mask', 10, 0.35, 0.35],
  ['aerosol-mask', 12, 0.4, 0.4],
  ['aerosol-mask', 15, 0.6, 0.6],
  ['tracheostomy-mask', 12, 0.4, 0.4],
  ['t-piece', 12, 0.4, 0.4],
  ['t-piece-with-limb', 12, 0.4, 0.4],
  ['adjustable-entrainment-mask', 10, 0.4, 0.4],
  ['partial-rebreather-mask', 8, null, 0.55],
]

const CONTEXT_ROWS = CONTEXT.map(([family, flowLpm, setO2Fraction, publishedValue]) =>
  engineRow({
    id: `printed-${family}-${flowLpm}`,
    source: family === 'partial-rebreather-mask' ? 'Aarc2002' : null,
    condition: 'set or quoted value; no measurement found',
    engine: {
      family,
      flowLpm,
      ...(setO2Fraction === null ? {} : { setO2Fraction }),
      breath: RESTING_ADULT,
      gas: METERED,
      ...(family.startsWith('t') ? { airway: CUFFED } : {}),
    },
    quantity: 'effective',
    publishedValue,
    tolerance: 0.1,
    reason: 'usual-range-half-width',
    known: family === 'partial-rebreather-mask' ? 'memory' : 'common-practice',
    use: 'context',
  }),
)

/** What a nebuliser's dial and drive give in all: the real limit of an aerosol mask. */
const NEBULISER_ROWS = formulaRows({
  id: 'nebuliser-total',
  source: null,
  formula: 'entrainment-total-flow',
  condition: 'dial setting and drive; mass balance with air 0.209',
  quantity: 'total-flow',
  unit: 'L/min',
  tolerance: 0.5,
  reason: 'printed-digits',
  known: 'derived',
  family: 'aerosol-mask',
  cells: [
    [{ target: 0.35, air: 0.209, drivingLpm: 10 }, 56],
    [{ target: 0.4, air: 0.209, drivingLpm: 12 }, 50],
    [{ target: 0.6, air: 0.209, drivingLpm: 15 }, 30],
    [{ target: 1, air: 0.209, drivingLpm: 15 }, 15],
  ],
})

export const PRACTICE_ROWS: readonly EvidenceRow[] = [
  ...SIMPLE_ROWS,
  ...RESERVOIR_ROWS,
  ...VALVE_ROWS,
  ...VALVE_FALLS,
  ...CANNULA_ROWS,
  SMALL_FLOW,
  ...CONTEXT_ROWS,
  ...NEBULISER_ROWS,
]
