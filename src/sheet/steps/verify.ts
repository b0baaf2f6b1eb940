// What must be seen once it is on. Leaves out their text.
import { ALWAYS } from '../step.ts'
import type { Step } from '../step.ts'

const phase = 'verify'

export const VERIFY_STEPS: readonly Step[] = [
  {
    id: 'STAY_FIVE_MINUTES',
    phase,
    place: 'bed',
    when: ALWAYS,
    known: 'seen',
    source: 'ODriscoll2017',
  },
  {
    id: 'SATURATION_IN_GOAL',
    phase,
    place: 'patient',
    when: [{ goal: ['saturation'], isOximeterTrusted: [true] }],
    known: 'seen',
    source: 'ODriscoll2017',
    values: ['goalLowPercent', 'goalHighPercent'],
  },
  {
    id: 'OXIMETER_PUT_ASIDE',
    phase,
    place: 'patient',
    when: [{ isOximeterTrusted: [false] }],
    known: 'seen',
    source: 'ODriscoll2017',
  },
  {
    id: 'BAG_NEVER_COLLAPSES',
    phase,
    place: 'interface',
    when: [{ hasBag: [true] }],
    known: 'common-practice',
  },
  {
    id: 'NEVER_BELOW_MINIMUM',
    phase,
    place: 'interface',
    when: [
      {
        family: [
          'simple-mask',
          'partial-rebreather-mask',
          'non-rebreather-mask',
          'cannula-under-mask',
          'head-box',
        ],
      },
    ],
    known: 'seen',
    source: 'ODriscoll2017',
    values: ['minimumLpm'],
  },
  {
    id: 'NEVER_BELOW_PRINTED',
    phase,
    place: 'interface',
    when: [{ hasValve: [true] }],
    known: 'seen',
    source: 'ODriscoll2017',
    values: ['printedMinimumLpm', 'setO2Fraction'],
  },
  {
    id: 'STREAM_NEVER_BELOW',
    phase,
    place: 'interface',
    when: [
      {
        feed: ['wide-bore'],
        family: ['aerosol-mask', 'face-tent', 'tracheostomy-mask', 't-piece', 't-piece-with-limb'],
      },
    ],
    known: 'common-practice',
    values: ['minimumLpm'],
  },
  {
    id: 'HIGH_FLOW_NEVER_BELOW',
    phase,
    place: 'interface',
    when: [{ family: ['nasal-high-flow'] }],
    known: 'common-practice',
    values: ['minimumLpm'],
  },
  {
    id: 'ANALYSER_AT_NOSE',
    phase,
    place: 'interface',
    when: [{ opening: ['head'] }],
    known: 'common-practice',
    values: ['setO2Fraction'],
  },
  {
    id: 'VENTILATOR_NO_BREATHS',
    phase,
    place: 'source',
    when: [{ source: ['ventilator'] }],
    known: 'common-practice',
  },
  {
    id: 'HEATER_TEMPERATURE',
    phase,
    place: 'humidifier',
    when: [{ humidifier: ['heated'] }],
    known: 'common-practice',
  },
  {
    id: 'TUBE_CLEAR',
    phase,
    place: 'patient',
    when: [{ isBypassed: [true] }],
    known: 'common-practice',
  },
  {
    id: 'VOICE',
    phase,
    place: 'patient',
    when: [{ airway: ['tracheostomy-speaking-valve'] }],
    known: 'common-practice',
  },
  {
    id: 'BLOOD_GAS_DUE',
    phase,
    place: 'patient',
    when: [{ isAtRisk: [true] }],
    known: 'seen',
    source: 'ODriscoll2017',
  },
  {
    id: 'COUNT_RATE',
    phase,
    place: 'patient',
    when: [{ isUnderOpioids: [true] }],
    known: 'common-practice',
  },
  {
    id: 'BELLY_NOT_DISTENDED',
    phase,
    place: 'patient',
    when: [{ isUnderTwoYears: [true], opening: ['nose'] }],
    known: 'common-practice',
  },
]
