// Alveolar gas, blood and bodies: tables worked by the product's own functions.
import type { EvidenceRow } from '../evidence-row.ts'
import {
  PLASMA_CO2_SAMPLES,
  SHUNT_FRACTIONS,
  SHUNT_TABLE,
  STANDARD_CURVE_POINTS,
} from './blood-tables.ts'
import { across, formulaRows } from './build.ts'

const CURVE = formulaRows({
  id: 'standard-curve',
  source: 'Severinghaus1979',
  formula: 'standard-saturation-percent',
  condition: 'measured standard curve, 37 °C, pH 7.40; stated fit 0.55 points',
  quantity: 'saturation',
  unit: '%',
  tolerance: 0.56,
  reason: 'published-fit-error',
  known: 'seen',
  cells: STANDARD_CURVE_POINTS.map(([po2, value]) => [{ po2 }, value] as const),
})

/** Eq 1 itself, worked apart from this code: a wrong constant shows here first. */
const EQUATION = formulaRows({
  id: 'standard-equation',
  source: 'Severinghaus1979',
  formula: 'standard-saturation-percent',
  condition: 'equation 1',
  quantity: 'saturation',
  unit: '%',
  tolerance: 0.006,
  reason: 'printed-digits',
  known: 'derived',
  cells: (
    [
      [10, 9.65],
      [20, 31.98],
      [26, 47.86],
      [30, 57.38],
      [40, 74.95],
      [50, 84.99],
      [60, 90.58],
      [70, 93.79],
      [80, 95.73],
      [100, 97.75],
      [150, 99.32],
      [300, 99.91],
    ] as const
  ).map(([po2, value]) => [{ po2 }, value] as const),
})

/** Saturation, exact inverse, approximate inverse. */
const INVERSE: readonly (readonly [number, number, number])[] = [
  [0.5, 26.86, 26.83],
  [0.75, 40.04, 40.24],
  [0.85, 50.01, 49.83],
  [0.88, 54.67, 54.27],
  [0.9, 58.66, 58.09],
  [0.92, 63.79, 63.06],
  [0.94, 70.87, 70.08],
  [0.95, 75.67, 74.92],
  [0.96, 81.9, 81.34],
  [0.97, 90.57, 90.48],
  [0.98, 104.19, 105.27],
  [0.99, 131.94, 136.75],
]
const INVERSE_ROWS = [
  ...formulaRows({
    id: 'standard-inverse',
    source: 'Ellis1989',
    formula: 'standard-po2',
    condition: 'exact inverse of equation 1',
    quantity: 'gas-pressure',
    unit: 'mmHg',
    tolerance: 0.006,
    reason: 'printed-digits',
    known: 'derived',
    cells: INVERSE.map(([saturation, value]) => [{ saturation }, value] as const),
  }),
  ...formulaRows({
    id: 'standard-approximate',
    source: 'Severinghaus1979',
    formula: 'approximate-po2',
    condition: 'equation 2 with the later erratum S⁶/6, which all twelve values follow',
    quantity: 'gas-pressure',
    unit: 'mmHg',
    tolerance: 0.006,
    reason: 'printed-digits',
    known: 'derived',
    cells: INVERSE.map(([saturation, , value]) => [{ saturation }, value] as const),
  }),
]

const SLOPES = [
  ...formulaRows({
    id: 'bohr-slope',
    source: 'Severinghaus1979',
    formula: 'bohr-slope',
    condition: 'equation 4',
    quantity: 'ratio',
    unit: '1',
    tolerance: 0.0006,
    reason: 'printed-digits',
    known: 'derived',
    cells: [
      [{ po2: 27 }, -1.197],
      [{ po2: 40 }, -1.122],
      [{ po2: 60 }, -1.039],
      [{ po2: 100 }, -0.924],
    ],
  }),
  ...formulaRows({
    id: 'temperature-slope',
    source: 'Severinghaus1979',
    formula: 'temperature-slope',
    condition: 'equation 3',
    quantity: 'ratio',
    unit: '1/°C',
    tolerance: 0.0001,
    reason: 'printed-digits',
    known: 'derived',
    cells: [
      [{ po2: 27 }, 0.071],
      [{ po2: 100 }, 0.0708],
      [{ po2: 300 }, 0.0578],
    ],
  }),
]

const MODELS = [
  ...formulaRows({
    id: 'kelman',
    source: 'Kelman1966',
    formula: 'kelman-percent',
    condition: 'polynomial, coefficients seen in three transcriptions',
    quantity: 'saturation',
    unit: '%',
    tolerance: 0.006,
    reason: 'printed-digits',
    known: 'derived',
    cells: [
      [{ po2: 20 }, 33.83],
      [{ po2: 26 }, 48.15],
      [{ po2: 40 }, 74.12],
      [{ po2: 60 }, 91.06],
      [{ po2: 100 }, 97.49],
      [{ po2: 60, ph: 7.2, pco2: 40 }, 85.07],
      [{ po2: 40, ph: 7.2, pco2: 40 }, 63.06],
      [{ po2: 60, ph: 7.2, pco2: 70 }, 83.66],
      [{ po2: 60, temperatureC: 39 }, 87.82],
      [{ po2: 60, temperatureC: 34 }, 94.3],
    ],
  }),
  ...formulaRows({
    id: 'dash',
    source: 'Dash2016',
    formula: 'dash-percent',
    condition: 'simplified Hill form',
    quantity: 'saturation',
    unit: '%',
    tolerance: 0.006,
    reason: 'printed-digits',
    known: 'derived',
    cells: [
      [{ po2: 20 }, 32.03],
      [{ po2: 26 }, 47.98],
      [{ po2: 40 }, 75.19],
      [{ po2: 60 }, 90.59],
      [{ po2: 100 }, 97.62],
      [{ po2: 60, ph: 7.2, pco2: 40 }, 86.33],
      [{ po2: 40, ph: 7.2, pco2: 40 }, 66.68],
      [{ po2: 60, ph: 7.2, pco2: 70 }, 81.15],
      [{ po2: 60, temperatureC: 39 }, 87.68],
      [{ po2: 60, temperatureC: 34 }, 93.77],
    ],
  }),
  ...formulaRows({
    id: 'dash-p50',
    source: 'Dash2016',
    formula: 'dash-p50',
    condition: 'half-saturation pressure',
    quantity: 'gas-pressure',
    unit: 'mmHg',
    tolerance: 0.006,
    reason: 'printed-digits',
    known: 'derived',
    cells: [
      [{ ph: 7.4 }, 26.8],
      [{ ph: 7.2, pco2: 40 }, 31.14],
      [{ ph: 7.2, pco2: 70 }, 35.69],
      [{ temperatureC: 39 }, 29.84],
    ],
  }),
  ...formulaRows({
    id: 'fetal-blood',
    source: null,
    formula: 'fetal-po2',
    condition: 'curve scaled to the half-saturation pressure of newborn blood; worked apart',
    quantity: 'gas-pressure',
    unit: 'mmHg',
    tolerance: 0.6,
    reason: 'printed-digits',
    known: 'derived',
    cells: [
      [{ p50: 19, saturation: 0.85 }, 35],
      [{ p50: 19, saturation: 0.9 }, 41],
      [{ p50: 19, saturation: 0.95 }, 54],
      [{ p50: 21, saturation: 0.85 }, 39],
      [{ p50: 21, saturation: 0.9 }, 46],
      [{ p50: 21, saturation: 0.95 }, 59],
    ],
  }),
]

/** Hb g/dL, PO2 mmHg, content with 1.34/0.0031, with 1.39/0.003. */
const CONTENTS: readonly (readonly [number, number, number, number])[] = [
  [15, 100, 19.96, 20.68],
  [15, 60, 18.39, 19.07],
  [15, 40, 15.19, 15.75],
  [10, 100, 13.41, 13.89],
  [15, 500, 21.65, 22.35],
  [7, 90, 9.37, 9.7],
  [14, 95, 18.56, 19.24],
]
const CONTENT_ROWS = [
  ...formulaRows({
    id: 'oxygen-content',
    source: 'Huefner1894',
    formula: 'o2-content',
    condition: '1.34 and 0.0031 mL, saturation by equation 1',
    quantity: 'content',
    unit: 'mL/dL',
    tolerance: 0.006,
    reason: 'printed-digits',
    known: 'derived',
    cells: CONTENTS.map(([haemoglobin, po2, value]) => [{ haemoglobin, po2 }, value] as const),
  }),
  ...formulaRows({
    id: 'oxygen-content-theoretical',
    source: null,
    formula: 'o2-content-theoretical',
    condition: '1.39 and 0.003 mL, saturation by equation 1',
    quantity: 'content',
    unit: 'mL/dL',
    tolerance: 0.006,
    reason: 'printed-digits',
    known: 'derived',
    cells: CONTENTS.map(([haemoglobin, po2, , value]) => [{ haemoglobin, po2 }, value] as const),
  }),
  ...PLASMA_CO2_SAMPLES.flatMap(([pco2, ph, value], i) =>
    formulaRows({
      id: `plasma-carbon-dioxide-${i + 1}`,
      source: 'Douglas1988',
      formula: 'plasma-co2-content',
      condition: 'measured sample of table 3, plasma column',
      quantity: 'content',
      unit: 'mL/dL',
      tolerance: 0.01,
      reason: 'printed-digits',
      known: 'seen',
      cells: [[{ pco2, ph }, value]],
    }),
  ),
  ...formulaRows({
    id: 'blood-carbon-dioxide',
    source: 'Douglas1988',
    formula: 'blood-co2-content',
    condition: 'whole blood, worked apart from this code',
    quantity: 'content',
    unit: 'mL/dL',
    tolerance: 0.006,
    reason: 'printed-digits',
    known: 'derived',
    cells: [
      [{ pco2: 40, ph: 7.4, haemoglobin: 15, saturation: 0.975 }, 46.71],
      [{ pco2: 46, ph: 7.37, haemoglobin: 15, saturation: 0.75 }, 51.06],
      [{ pco2: 60, ph: 7.32, haemoglobin: 15, saturation: 0.9 }, 59.97],
    ],
  }),
]

const FRACTIONS = [0.2095, 0.21, 0.24, 0.28, 0.31, 0.35, 0.4, 0.5, 0.6, 0.8, 1]
const SEA_LEVEL = { barometric: 760, pco2: 40 }
const ALVEOLAR = [
  ...(
    [
      [
        'inspired-po2',
        'inspired-po2',
        0.06,
        [149.4, 149.7, 171.1, 199.6, 221, 249.5, 285.2, 356.5, 427.8, 570.4, 713],
      ],
      [
        'alveolar-simple',
        'alveolar-po2-simple',
        0.05,
        [99.37, 99.73, 121.12, 149.64, 171.03, 199.55, 235.2, 306.5, 377.8, 520.4, 663],
      ],
      [
        'alveolar-full',
        'alveolar-po2',
        0.05,
        [101.47, 101.83, 123.52, 152.44, 174.13, 203.05, 239.2, 311.5, 383.8, 528.4, 673],
      ],
    ] as const
  ).flatMap(([id, formula, tolerance, values]) =>
    formulaRows({
      id,
      source: 'Fenn1946',
      formula,
      condition: 'sea level, PaCO2 40 mmHg, R 0.8, 47 mmHg of vapour',
      quantity: 'gas-pressure',
      unit: 'mmHg',
      tolerance,
      reason: 'printed-digits',
      known: 'derived',
      cells: across(FRACTIONS, values).map(
        ([fraction, value]) => [{ fraction, ...SEA_LEVEL }, value] as const,
      ),
    }),
  ),
  ...formulaRows({
    id: 'alveolar-elsewhere',
    source: 'Fenn1946',
    formula: 'alveolar-po2',
    condition: 'other PaCO2 and barometric pressure, full form',
    quantity: 'gas-pressure',
    unit: 'mmHg',
    tolerance: 0.05,
    reason: 'printed-digits',
    known: 'derived',
    cells: [
      [{ fraction: 0.21, barometric: 760, pco2: 60 }, 77.88],
      [{ fraction: 0.28, barometric: 760, pco2: 80 }, 105.24],
      [{ fraction: 0.21, barometric: 626.5, pco2: 40 }, 73.79],
      [{ fraction: 0.21, barometric: 564.5, pco2: 40 }, 60.77],
      [{ fraction: 0.3, barometric: 564.5, pco2: 35 }, 114.12],
    ],
  }),
]

const SHUNT_ROWS = SHUNT_TABLE.flatMap(([shunt, shift, pressures, saturations]) => [
  ...formulaRows({
    id: 'shunt-pressure',
    source: 'Sapsford1995',
    formula: 'shunt-po2',
    condition:
      'shunt and extra shift, Hb 14, arteriovenous difference 5 mL/dL, sea level; worked apart',
    quantity: 'gas-pressure',
    unit: 'mmHg',
    tolerance: 0.2,
    reason: 'printed-digits',
    known: 'derived',
    cells: across(SHUNT_FRACTIONS, pressures).map(
      ([fraction, value]) => [{ shunt, shift, fraction }, value] as const,
    ),
  }),
  ...formulaRows({
    id: 'shunt-saturation',
    source: 'Sapsford1995',
    formula: 'shunt-saturation-percent',
    condition:
      'shunt and extra shift, Hb 14, arteriovenous difference 5 mL/dL, sea level; worked apart',
    quantity: 'saturation',
    unit: '%',
    tolerance: 0.1,
    reason: 'printed-digits',
    known: 'derived',
    cells: across(SHUNT_FRACTIONS, saturations).map(
      ([fraction, value]) => [{ shunt, shift, fraction }, value] as const,
    ),
  }),
])

export const BLOOD_ROWS: readonly EvidenceRow[] = [
  ...CURVE,
  ...EQUATION,
  ...INVERSE_ROWS,
  ...SLOPES,
  ...MODELS,
  ...CONTENT_ROWS,
  ...ALVEOLAR,
  ...SHUNT_ROWS,
]
