// A small plan written by hand, to test words and pictures of plans on known numbers. Leaves out planning, which tests of its own cover.
import type { SetUp } from '../../src/kit/set-up.ts'
import type { Plan, RankedSetUp } from '../../src/planning/plan-types.ts'

export const WALL_CANNULA: SetUp = {
  family: 'nasal-cannula',
  size: 'adult',
  fit: 'gentle',
  source: {
    id: 'wall-15',
    label: 'Flowmeter 1–15 L/min',
    count: 1,
    place: 'everywhere',
    kind: 'wall-flowmeter',
    meter: { kind: 'tube-compensated', stepsLpm: [1, 2, 4], flush: null, meterClass: 'ordinary' },
    purity: 'pipeline',
  },
  flow: { kind: 'scale', flowLpm: 2 },
  setO2Fraction: null,
  humidification: 'none',
  over: null,
}

export function rankedData(changes: Partial<RankedSetUp> = {}): RankedSetUp {
  return {
    id: 'cannula/adult@wall-15#2',
    setUp: WALL_CANNULA,
    rank: 1,
    isEqualToFirst: true,
    equalGroup: 1,
    effectiveO2Fraction: { median: 0.284, low: 0.262, high: 0.311 },
    saturationPercent: { median: 91.2, low: 88, high: 94 },
    chance: { below: 0.081, inRange: 0.742, above: 0.177 },
    score: 0.7,
    twins: [],
    printedO2Fraction: { low: 0.28, high: 0.28 },
    oxygenUsedLpm: 2,
    demandMarginLpm: { median: -28, low: -36, high: -20 },
    holdsUntil: { ratePerMin: 31, side: 'below' },
    isChecked: true,
    remarks: [{ code: 'DEMAND_EXCEEDS_STREAM', values: { marginLpm: -28 } }],
    humidity: [{ code: 'DRY_LOW_FLOW_USUALLY_FINE', values: {} }],
    watch: [{ code: 'WATCH_FIVE_MINUTES', values: {} }],
    whyNotFirst: null,
    blood: null,
    meanAirwayPressureCmH2o: null,
    ...changes,
  }
}

export const SECOND_DATA = rankedData({
  id: 'tent/adult@wall-15#4',
  setUp: {
    ...WALL_CANNULA,
    family: 'adjustable-entrainment-mask',
    setO2Fraction: 0.35,
    flow: { kind: 'scale', flowLpm: 4 },
    humidification: 'collar',
  },
  rank: 2,
  isEqualToFirst: false,
  equalGroup: 2,
  saturationPercent: { median: 95, low: 92.6, high: 98.4 },
  chance: { below: 0.01, inRange: 0.38, above: 0.61 },
  isChecked: false,
  remarks: [{ code: 'NOT_CHECKED_AGAINST_MEASUREMENTS', values: {} }],
  whyNotFirst: {
    code: 'LIKELY_ABOVE_GOAL',
    values: { medianPercent: 95, chance: 0.38 },
    flip: { path: 'goal', value: '93–97', unit: '%' },
  },
})

export function planData(changes: Partial<Plan> = {}): Plan {
  return {
    modelVersion: '0.0.0',
    goal: {
      kind: 'saturation',
      lowPercent: 88,
      highPercent: 92,
      reason: 'risk-of-hypercapnia',
    },
    ranked: [
      rankedData(),
      SECOND_DATA,
      rankedData({
        id: 'cannula/adult@wall-15#4',
        setUp: { ...WALL_CANNULA, flow: { kind: 'scale', flowLpm: 4 } },
        rank: 3,
        isEqualToFirst: false,
        equalGroup: 3,
        saturationPercent: { median: 96, low: 94, high: 98 },
      }),
    ],
    excluded: [],
    emergency: [{ code: 'EMERGENCY_OXYGEN_FIRST', values: {} }],
    cautions: [{ code: 'DECISION_SUPPORT', values: {} }],
    guideline: [],
    assumed: [],
    reading: { isUsed: true, effectiveDraws: 180, wasRedrawn: false, remarks: [] },
    onNow: null,
    missing: [],
    reassess: {
      withinMin: 60,
      why: { code: 'REASSESS_HOURLY', values: { withinMin: 60 }, known: 'common-practice' },
    },
    draws: 512,
    barometricPressureKpa: 87.9,
    ...changes,
  }
}

export const NO_READING_USE: Plan['reading'] = {
  isUsed: false,
  effectiveDraws: 512,
  wasRedrawn: false,
  remarks: [{ code: 'NO_READING', values: {} }],
}
