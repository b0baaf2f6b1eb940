// Masks with a reservoir bag, and the simple mask, as measured.
import { DISTRESSED_ADULT, RESTING_ADULT, SIMULATOR_ADULT } from '../breathings.ts'
import type { EngineCase } from '../engine-case.ts'
import type { EvidenceRow } from '../evidence-row.ts'
import type { FitId } from '../../kit/family-id.ts'
import { engineRow, METERED, ONE_CONDITION } from './build.ts'
import { ADULT_MEANS, ADULT_PEOPLE } from './populations.ts'

/** Simulator, VE 9.8 L/min: fit, flow, fraction, share of air in the inhaled gas, use. */
const SIMULATOR: readonly (readonly [
  FitId,
  number,
  number,
  number | null,
  'judge' | 'calibrate',
])[] = [
  ['tight', 6, 0.59, null, 'calibrate'],
  ['tight', 8, 0.69, 0.39, 'judge'],
  ['tight', 10, 0.76, 0.3, 'judge'],
  ['tight', 12, 0.83, 0.22, 'judge'],
  ['tight', 15, 0.9, null, 'calibrate'],
  ['gentle', 15, 0.85, null, 'calibrate'],
  ['loose', 15, 0.64, null, 'calibrate'],
]

function simulator(fit: FitId, flowLpm: number): EngineCase {
  return {
    family: 'non-rebreather-mask',
    fit,
    flowLpm,
    breath: SIMULATOR_ADULT,
    gas: ONE_CONDITION,
  }
}

const SIMULATOR_ROWS = SIMULATOR.flatMap(([fit, flowLpm, fraction, airShare, use]) => {
  const common = {
    source: 'Yorozu2014',
    condition: 'patient simulator, alveolar oxygen back-calculated; VE 9.8 L/min stated',
    engine: simulator(fit, flowLpm),
    reason: 'conditions-not-stated',
    known: 'seen',
    use,
  } as const
  const row = engineRow({
    ...common,
    id: `simulator-${fit}-${flowLpm}`,
    quantity: 'effective',
    publishedValue: fraction,
    tolerance: 0.05,
  })
  if (airShare === null) return [row]
  return [
    row,
    engineRow({
      ...common,
      id: `simulator-air-share-${flowLpm}`,
      quantity: 'air-share',
      publishedValue: airShare,
      tolerance: 0.063,
    }),
  ]
})

function mask(
  family: 'non-rebreather-mask' | 'simple-mask',
  flowLpm: number,
  fit: FitId,
  breath = RESTING_ADULT,
): EngineCase {
  return { family, flowLpm, fit, breath, gas: METERED }
}

interface Expired {
  readonly id: string
  readonly source: 'Boumphrey2003' | 'Driver2017' | 'FlushOxygen2019' | 'Bunting2025'
  readonly engine: EngineCase
  readonly publishedValue: number
  readonly condition: string
}

/** Expired fractions. Fit is assumed where silent: tight with three valves, loose as worn by volunteers; flush 50 L/min unless given. */
const EXPIRED: readonly Expired[] = [
  {
    id: 'expired-three-valves-15',
    source: 'Boumphrey2003',
    engine: mask('non-rebreather-mask', 15, 'tight'),
    publishedValue: 0.85,
    condition: '10 healthy women, three valves, tight',
  },
  {
    id: 'expired-reservoir-15',
    source: 'Driver2017',
    engine: mask('non-rebreather-mask', 15, 'loose'),
    publishedValue: 0.54,
    condition:
      '26 healthy people, 3 min, single expired breath (0.50–0.57); fit not given, loose assumed',
  },
  {
    id: 'expired-reservoir-flush',
    source: 'Driver2017',
    engine: mask('non-rebreather-mask', 50, 'loose'),
    publishedValue: 0.86,
    condition: '26 healthy people, above 40 L/min (0.84–0.88); 50 L/min and loose fit assumed',
  },
  {
    id: 'expired-simple-flush',
    source: 'Driver2017',
    engine: mask('simple-mask', 50, 'gentle'),
    publishedValue: 0.72,
    condition: '26 healthy people, simple mask above 40 L/min (0.69–0.76); 50 L/min assumed',
  },
  {
    id: 'expired-reservoir-flush-again',
    source: 'FlushOxygen2019',
    engine: mask('non-rebreather-mask', 50, 'loose'),
    publishedValue: 0.81,
    condition: '30 healthy people, 40–60 L/min (0.78–0.83); loose fit assumed',
  },
  {
    id: 'expired-reservoir-flush-third',
    source: 'FlushOxygen2019',
    engine: mask('non-rebreather-mask', 50, 'loose'),
    publishedValue: 0.83,
    condition: '27 healthy people, 40–60 L/min (0.80–0.86); loose fit assumed',
  },
  {
    id: 'end-tidal-reservoir-flush',
    source: 'Bunting2025',
    engine: mask('non-rebreather-mask', 55, 'loose'),
    publishedValue: 0.87,
    condition:
      '50 healthy people, above 50 L/min, plateau of end-tidal oxygen (0.87–0.89); 55 L/min and loose fit assumed',
  },
]

const EXPIRED_ROWS = EXPIRED.map((row) =>
  engineRow({
    ...row,
    quantity: 'end-expired',
    people: ADULT_MEANS,
    tolerance: 0.05,
    reason: 'conditions-not-stated',
    known: 'seen',
  }),
)

const FAILURE = mask('non-rebreather-mask', 14.7, 'loose', DISTRESSED_ADULT)
const FAILURE_ROWS = [
  engineRow({
    id: 'failure-in-mask',
    source: 'Coudroy2020',
    condition:
      '262 patients, analyser in the mask; flow as used, 14.7 L/min by their own rule 0.21 + 0.03 × flow',
    engine: FAILURE,
    quantity: 'in-mask',
    publishedValue: 0.65,
    people: ADULT_MEANS,
    tolerance: 0.13,
    reason: 'published-sd',
    known: 'seen',
  }),
  engineRow({
    id: 'failure-in-mask-width',
    source: 'Coudroy2020',
    condition: '262 patients, SD 0.13 as 10–90 % width of a normal spread',
    engine: FAILURE,
    quantity: 'in-mask',
    publishedValue: 0.333,
    compare: 'factor',
    tolerance: 1,
    reason: 'width-half-to-twice',
    known: 'derived',
    reproduce: { by: 'people', engine: FAILURE, people: ADULT_PEOPLE, statistic: 'width' },
  }),
]

/** Simple mask alone and over another mask; site of sampling unseen, in the mask assumed. */
const OVER_MASK_ROWS = (
  [
    [5, 'gentle', 0.61, 'judge'],
    [8, 'gentle', 0.73, 'judge'],
    [5, 'over-surgical-mask', 0.45, 'judge'],
    [8, 'over-surgical-mask', 0.52, 'judge'],
    [5, 'over-surgical-mask', 0.32, 'context'],
    [8, 'over-surgical-mask', 0.36, 'context'],
  ] as const
).map(([flowLpm, fit, publishedValue, use]) =>
  engineRow({
    id: `over-mask-${use === 'context' ? 'respirator' : fit}-${flowLpm}`,
    source: 'OverMask2024',
    condition:
      use === 'context'
        ? '5 healthy people, over a filtering respirator, which no fit of ours stands for'
        : '5 healthy people; site not seen, in the mask assumed',
    engine: mask('simple-mask', flowLpm, fit),
    quantity: 'in-mask',
    people: ADULT_MEANS,
    publishedValue,
    tolerance: 0.08,
    reason: 'conditions-not-stated',
    known: 'seen',
    use,
  }),
)

/** Centre of the usual range 0.35–0.50 at 5–8 L/min. */
const SIMPLE_CALIBRATE_ROWS = (
  [
    [5, 0.4],
    [8, 0.5],
  ] as const
).map(([flowLpm, publishedValue]) =>
  engineRow({
    id: `simple-centre-${flowLpm}`,
    source: null,
    condition: 'centre of the usual range in a resting adult',
    engine: mask('simple-mask', flowLpm, 'gentle'),
    quantity: 'effective',
    publishedValue,
    tolerance: 0.075,
    reason: 'usual-range-half-width',
    known: 'common-practice',
    use: 'calibrate',
  }),
)

export const MASK_ROWS: readonly EvidenceRow[] = [
  ...SIMULATOR_ROWS,
  ...EXPIRED_ROWS,
  ...FAILURE_ROWS,
  ...OVER_MASK_ROWS,
  ...SIMPLE_CALIBRATE_ROWS,
]
