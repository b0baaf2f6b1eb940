// Gas mixing, pressure, humidity and meters: tables worked by the product's own functions.
import type { EvidenceRow } from '../evidence-row.ts'
import { formulaRows } from './build.ts'

const AIR = 0.209

const RATIOS = formulaRows({
  id: 'entrainment-ratio',
  source: 'Shapiro1991',
  formula: 'entrainment-ratio',
  condition: 'litres of air for each litre of oxygen, air 0.209',
  quantity: 'ratio',
  unit: '1',
  tolerance: 0.005,
  reason: 'exact-arithmetic',
  known: 'derived',
  family: 'entrainment-mask',
  cells: (
    [
      [0.24, 24.516],
      [0.26, 14.51],
      [0.28, 10.141],
      [0.3, 7.692],
      [0.31, 6.832],
      [0.35, 4.61],
      [0.4, 3.141],
      [0.5, 1.718],
      [0.6, 1.023],
      [0.7, 0.611],
      [0.8, 0.338],
      [1, 0],
    ] as const
  ).map(([target, value]) => [{ target, air: AIR }, value] as const),
})

const TOTALS = formulaRows({
  id: 'entrainment-total',
  source: 'ODriscoll2017',
  formula: 'entrainment-total-flow',
  condition: 'total flow of the usual valves, mass balance with air 0.209; 0.5 % of 50 L/min',
  quantity: 'total-flow',
  unit: 'L/min',
  tolerance: 0.25,
  reason: 'printed-digits',
  known: 'derived',
  family: 'entrainment-mask',
  cells: (
    [
      [0.24, 2, 51],
      [0.24, 3, 76.5],
      [0.26, 3, 46.5],
      [0.28, 4, 44.6],
      [0.28, 6, 66.8],
      [0.28, 8, 89.1],
      [0.3, 5, 43.5],
      [0.31, 6, 47],
      [0.31, 8, 62.7],
      [0.35, 8, 44.9],
      [0.35, 10, 56.1],
      [0.35, 12, 67.3],
      [0.35, 15, 84.1],
      [0.4, 10, 41.4],
      [0.4, 12, 49.7],
      [0.4, 15, 62.1],
      [0.5, 12, 32.6],
      [0.5, 15, 40.8],
      [0.6, 12, 24.3],
      [0.6, 15, 30.3],
      [0.7, 15, 24.2],
      [0.8, 15, 20.1],
      [1, 15, 15],
    ] as const
  ).map(([target, drivingLpm, value]) => [{ target, air: AIR, drivingLpm }, value] as const),
})

/** The five usual valves with the two other fractions of air in use. */
const SENSITIVITY = (
  [
    [0.2095, [51.8, 44.9, 45, 41.5, 30.4]],
    [0.21, [52.7, 45.1, 45.1, 41.6, 30.4]],
  ] as const
).flatMap(([air, values]) =>
  formulaRows({
    id: 'entrainment-total-air',
    source: null,
    formula: 'entrainment-total-flow',
    condition: 'the five usual valves at their printed flow',
    quantity: 'total-flow',
    unit: 'L/min',
    tolerance: 0.06,
    reason: 'printed-digits',
    known: 'derived',
    family: 'entrainment-mask',
    cells: (
      [
        [0.24, 2],
        [0.28, 4],
        [0.35, 8],
        [0.4, 10],
        [0.6, 15],
      ] as const
    ).map(([target, drivingLpm], i) => [{ target, air, drivingLpm }, values[i] ?? 0] as const),
  }),
)

const STANDARD_ATMOSPHERE = formulaRows({
  id: 'standard-atmosphere',
  source: 'ISO2533',
  formula: 'isa-pressure',
  condition: 'pressure by altitude, agrees with a general-purpose library',
  quantity: 'gas-pressure',
  unit: 'kPa',
  tolerance: 0.01,
  reason: 'printed-digits',
  known: 'derived',
  cells: (
    [
      [0, 101.325],
      [500, 95.461],
      [1000, 89.875],
      [1500, 84.556],
      [1600, 83.523],
      [2000, 79.495],
      [2240, 77.155],
      [2438, 75.262],
      [2500, 74.682],
      [3000, 70.108],
      [3600, 64.922],
      [4000, 61.64],
      [5000, 54.02],
    ] as const
  ).map(([altitudeM, value]) => [{ altitudeM }, value] as const),
})

const MODEL_ATMOSPHERE = formulaRows({
  id: 'model-atmosphere',
  source: 'West1996',
  formula: 'west-pressure',
  condition: 'model atmosphere of inhabited high places; formula from memory, worked apart',
  quantity: 'gas-pressure',
  unit: 'mmHg',
  tolerance: 0.1,
  reason: 'printed-digits',
  known: 'memory',
  cells: (
    [
      [500, 718.2],
      [1000, 678.6],
      [1500, 640.7],
      [2000, 604.5],
      [2438, 574],
      [3000, 536.8],
      [4000, 475.3],
      [5000, 419.7],
      [8848, 252.7],
    ] as const
  ).map(([altitudeM, value]) => [{ altitudeM }, value] as const),
})

/** °C, saturated pressure kPa, saturated content mg/L (ideal gas). */
const VAPOUR: readonly (readonly [number, number, number])[] = [
  [15, 1.706, 12.83],
  [18, 2.065, 15.37],
  [20, 2.339, 17.29],
  [21, 2.488, 18.33],
  [22, 2.645, 19.42],
  [23, 2.811, 20.57],
  [25, 3.17, 23.04],
  [28, 3.783, 27.22],
  [30, 4.247, 30.35],
  [31, 4.497, 32.03],
  [32, 4.759, 33.79],
  [34, 5.325, 37.56],
  [35, 5.629, 39.58],
  [37, 6.282, 43.89],
  [39, 7, 48.59],
  [41, 7.787, 53.71],
]

const VAPOUR_ROWS = [
  ...formulaRows({
    id: 'saturated-pressure',
    source: 'IAPWS1997',
    formula: 'saturated-pressure',
    condition: 'saturated water vapour',
    quantity: 'vapour-pressure',
    unit: 'kPa',
    tolerance: 0.004,
    reason: 'published-fit-error',
    known: 'derived',
    cells: VAPOUR.map(([temperatureC, value]) => [{ temperatureC }, value] as const),
  }),
  ...formulaRows({
    id: 'saturated-humidity',
    source: 'IAPWS1997',
    formula: 'saturated-humidity',
    condition: 'p/(461.5 T)',
    quantity: 'humidity',
    unit: 'mg/L',
    tolerance: 0.06,
    reason: 'published-fit-error',
    known: 'derived',
    cells: VAPOUR.map(([temperatureC, , value]) => [{ temperatureC }, value] as const),
  }),
  ...formulaRows({
    id: 'condensate',
    source: 'IAPWS1997',
    formula: 'condensate',
    condition: '37 °C saturated gas cooled, water lost',
    quantity: 'humidity',
    unit: 'mg/L',
    tolerance: 0.15,
    reason: 'printed-digits',
    known: 'derived',
    cells: (
      [
        [34, 6.3],
        [31, 11.9],
        [28, 16.7],
        [25, 20.9],
        [22, 24.5],
      ] as const
    ).map(([toC, value]) => [{ fromC: 37, toC }, value] as const),
  }),
  ...formulaRows({
    id: 'room-humidity',
    source: 'IAPWS1997',
    formula: 'room-humidity',
    condition: 'room air at half saturation',
    quantity: 'humidity',
    unit: 'mg/L',
    tolerance: 0.06,
    reason: 'printed-digits',
    known: 'derived',
    cells: (
      [
        [20, 8.6],
        [22, 9.7],
        [23, 10.3],
        [25, 11.5],
      ] as const
    ).map(([temperatureC, value]) => [{ temperatureC, relative: 0.5 }, value] as const),
  }),
  ...formulaRows({
    id: 'dew-point',
    source: 'IAPWS1997',
    formula: 'dew-point',
    condition: 'temperature at which this content saturates',
    quantity: 'vapour-pressure',
    unit: '°C',
    tolerance: 0.1,
    reason: 'printed-digits',
    known: 'derived',
    cells: [
      [{ humidity: 12 }, 13.9],
      [{ humidity: 33 }, 31.6],
    ],
  }),
]

const CONDITIONS = [
  ...formulaRows({
    id: 'dry-to-body',
    source: null,
    formula: 'dry-to-body',
    condition: 'dry room gas to body conditions, sea level; ideal gas law',
    quantity: 'factor',
    unit: '1',
    tolerance: 0.0002,
    reason: 'exact-arithmetic',
    known: 'derived',
    cells: [
      [{ temperatureC: 20, barometricKpa: 101.325 }, 1.1279],
      [{ temperatureC: 23, barometricKpa: 101.325 }, 1.1165],
    ],
  }),
  ...formulaRows({
    id: 'standard-to-body',
    source: null,
    formula: 'standard-to-body',
    condition: 'dry 0 °C gas to body conditions, sea level; ideal gas law',
    quantity: 'factor',
    unit: '1',
    tolerance: 0.0002,
    reason: 'exact-arithmetic',
    known: 'derived',
    cells: [[{ barometricKpa: 101.325 }, 1.2105]],
  }),
  ...formulaRows({
    id: 'meter-to-body',
    source: null,
    formula: 'meter-to-body',
    condition: 'flowmeter litres to body conditions, sea level and 75.262 kPa; ideal gas law',
    quantity: 'factor',
    unit: '1',
    tolerance: 0.0005,
    reason: 'exact-arithmetic',
    known: 'derived',
    cells: [
      [{ barometricKpa: 101.325 }, 1.1279],
      [{ barometricKpa: 75.262 }, 1.5541],
    ],
  }),
]

const TUBE_COMPENSATED = 0
const TUBE_UNCOMPENSATED = 1

/** Square-root density law, numbers worked apart from this code. */
const METERS = [
  ...formulaRows({
    id: 'meter-uncompensated-standard',
    source: null,
    formula: 'meter-standard-factor',
    condition:
      'uncompensated tube by altitude: dry standard flow for each litre read; density law, from memory',
    quantity: 'flow',
    unit: '1',
    tolerance: 0.001,
    reason: 'printed-digits',
    known: 'memory',
    cells: (
      [
        [1500, 0.913],
        [2438, 0.862],
        [3000, 0.832],
        [4000, 0.78],
      ] as const
    ).map(([altitudeM, value]) => [{ kind: TUBE_UNCOMPENSATED, altitudeM }, value] as const),
  }),
  ...formulaRows({
    id: 'meter-uncompensated-ambient',
    source: null,
    formula: 'meter-ambient-factor',
    condition:
      'uncompensated tube by altitude: ambient volume for each litre read; density law, from memory',
    quantity: 'flow',
    unit: '1',
    tolerance: 0.001,
    reason: 'printed-digits',
    known: 'memory',
    cells: (
      [
        [1500, 1.095],
        [2438, 1.16],
        [3000, 1.202],
        [4000, 1.282],
      ] as const
    ).map(([altitudeM, value]) => [{ kind: TUBE_UNCOMPENSATED, altitudeM }, value] as const),
  }),
  ...formulaRows({
    id: 'meter-compensated-standard',
    source: null,
    formula: 'meter-standard-factor',
    condition: 'compensated tube at 400 kPa supply by altitude; density law, from memory',
    quantity: 'flow',
    unit: '1',
    tolerance: 0.001,
    reason: 'printed-digits',
    known: 'memory',
    cells: (
      [
        [1180, 0.987],
        [1500, 0.983],
        [2438, 0.974],
        [3000, 0.968],
      ] as const
    ).map(([altitudeM, value]) => [{ kind: TUBE_COMPENSATED, altitudeM }, value] as const),
  }),
  ...formulaRows({
    id: 'meter-back-pressure',
    source: null,
    formula: 'meter-standard-factor',
    condition: 'uncompensated tube against back-pressure reads low; density law, from memory',
    quantity: 'flow',
    unit: '1',
    tolerance: 0.001,
    reason: 'printed-digits',
    known: 'memory',
    cells: (
      [
        [5, 1.024],
        [10, 1.048],
        [20, 1.094],
        [50, 1.222],
        [100, 1.41],
      ] as const
    ).map(([backKpa, value]) => [{ kind: TUBE_UNCOMPENSATED, backKpa }, value] as const),
  }),
  ...formulaRows({
    id: 'meter-accuracy',
    source: 'Duprez2014',
    formula: 'meter-band',
    condition: '±0.5 L/min below 5 L/min, ±10 % above',
    quantity: 'flow',
    unit: 'L/min',
    tolerance: 1e-9,
    reason: 'exact-arithmetic',
    known: 'secondary',
    cells: [
      [{ settingLpm: 1 }, 0.5],
      [{ settingLpm: 4 }, 0.5],
      [{ settingLpm: 5 }, 0.5],
      [{ settingLpm: 10 }, 1],
      [{ settingLpm: 15 }, 1.5],
    ],
  }),
]

/** A concentrator's gas through a valve reads low: F = (Fs + ratio × air)/(1 + ratio). */
const PURITY = formulaRows({
  id: 'entrained-fraction',
  source: null,
  formula: 'entrained-fraction',
  condition: 'valve of the given ratio fed with gas of 0.93; mass balance',
  quantity: 'opening',
  unit: '1',
  tolerance: 0.001,
  reason: 'exact-arithmetic',
  known: 'derived',
  family: 'entrainment-mask',
  cells: [
    [{ ratio: 25, source: 0.93 }, 0.2372],
    [{ ratio: 10, source: 0.93 }, 0.275],
    [{ ratio: 5, source: 0.93 }, 0.3296],
    [{ ratio: 1, source: 0.93 }, 0.5698],
  ],
})

export const GAS_ROWS: readonly EvidenceRow[] = [
  ...RATIOS,
  ...TOTALS,
  ...SENSITIVITY,
  ...STANDARD_ATMOSPHERE,
  ...MODEL_ATMOSPHERE,
  ...VAPOUR_ROWS,
  ...CONDITIONS,
  ...METERS,
  ...PURITY,
]
