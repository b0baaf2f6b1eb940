// Checks on the set-up before it touches the patient. Leaves out their text.
import { ALWAYS } from '../step.ts'
import type { Step } from '../step.ts'

const phase = 'check-before-use'

export const CHECK_BEFORE_USE_STEPS: readonly Step[] = [
  {
    id: 'METER_TUBE',
    phase,
    place: 'source',
    when: [
      { meter: ['tube-compensated', 'tube-uncompensated'], isFlush: [false], markedIn: ['L/min'] },
    ],
    known: 'common-practice',
    values: ['meterLpm'],
  },
  {
    id: 'METER_IN_ML',
    phase,
    place: 'source',
    when: [{ markedIn: ['mL/min'], isFlush: [false] }],
    known: 'common-practice',
    values: ['flowMlPerMin'],
  },
  {
    id: 'METER_DIAL',
    phase,
    place: 'source',
    when: [{ meter: ['dial'], isFlush: [false] }],
    known: 'common-practice',
    values: ['meterLpm'],
  },
  {
    id: 'METER_ELECTRONIC',
    phase,
    place: 'source',
    when: [{ meter: ['electronic'], isFlush: [false] }],
    known: 'common-practice',
    values: ['meterLpm'],
  },
  {
    id: 'METER_FLUSH',
    phase,
    place: 'source',
    when: [{ isFlush: [true] }],
    known: 'common-practice',
  },
  {
    id: 'METER_UNCOMPENSATED',
    phase,
    place: 'source',
    when: [{ meter: ['tube-uncompensated'] }],
    known: 'derived',
  },
  {
    id: 'BLEND_SET',
    phase,
    place: 'source',
    when: [{ source: ['blender', 'ventilator'] }],
    known: 'common-practice',
    values: ['setO2Fraction', 'flowLpm'],
  },
  {
    id: 'BUBBLE_RELIEF',
    phase,
    place: 'humidifier',
    when: [{ humidifier: ['bubble'] }],
    known: 'common-practice',
  },
  {
    id: 'TUBES_LABELLED',
    phase,
    place: 'tube',
    when: [{ family: ['cannula-under-mask'] }],
    known: 'common-practice',
  },
  { id: 'GAS_FELT', phase, place: 'tube', when: ALWAYS, known: 'common-practice' },
  {
    id: 'BAG_SOUND',
    phase,
    place: 'interface',
    when: [{ hasBag: [true] }],
    known: 'common-practice',
  },
  {
    id: 'VALVE_PORTS_FREE',
    phase,
    place: 'interface',
    when: [{ hasValve: [true] }],
    known: 'common-practice',
    values: ['setO2Fraction'],
  },
  {
    id: 'MASK_PORTS_OPEN',
    phase,
    place: 'interface',
    when: [
      {
        opening: ['face'],
        hasBag: [false],
        hasValve: [false],
        family: ['simple-mask', 'aerosol-mask', 'cannula-under-mask'],
      },
    ],
    known: 'common-practice',
  },
  {
    id: 'WAY_OUT_OPEN',
    phase,
    place: 'interface',
    when: [{ opening: ['neck'] }],
    known: 'common-practice',
  },
  {
    id: 'BOX_OPEN',
    phase,
    place: 'interface',
    when: [{ opening: ['head'] }],
    known: 'common-practice',
  },
  {
    id: 'SUCTION_READY',
    phase,
    place: 'patient',
    when: [{ isBypassed: [true] }],
    known: 'common-practice',
  },
  {
    id: 'SPARE_TUBES',
    phase,
    place: 'patient',
    when: [{ hasTube: [true] }],
    known: 'common-practice',
  },
  {
    id: 'STOMA_SPARE',
    phase,
    place: 'patient',
    when: [{ airway: ['laryngectomy'] }],
    known: 'common-practice',
  },
]
