// Steps before anything is set: patient, help, fire, supply, water. Leaves out their text.
import { ALWAYS } from '../step.ts'
import type { Step } from '../step.ts'

const phase = 'prepare'

export const PREPARE_STEPS: readonly Step[] = [
  { id: 'RIGHT_PATIENT', phase, place: 'bed', when: ALWAYS, known: 'common-practice' },
  {
    id: 'HELP_AT_HAND',
    phase,
    place: 'bed',
    when: [{ goal: ['saturation', 'fraction', 'as-much-as-possible'] }],
    known: 'common-practice',
  },
  { id: 'FIRE_CLEAR', phase, place: 'bed', when: ALWAYS, known: 'common-practice' },
  {
    id: 'OXYGEN_OUTLET',
    phase,
    place: 'outlet',
    when: [{ source: ['wall-flowmeter', 'two-flowmeters', 'jet-nebuliser'] }],
    known: 'seen',
    source: 'NhsAlert2016',
  },
  {
    id: 'BOTH_GASES',
    phase,
    place: 'outlet',
    when: [{ source: ['blender', 'ventilator'] }],
    known: 'common-practice',
  },
  { id: 'MAINS', phase, place: 'outlet', when: [{ needsMains: [true] }], known: 'common-practice' },
  {
    id: 'CYLINDER_SECURED',
    phase,
    place: 'outlet',
    when: [{ source: ['cylinder-regulator'] }],
    known: 'common-practice',
  },
  {
    id: 'CYLINDER_OPEN',
    phase,
    place: 'source',
    when: [{ source: ['cylinder-regulator'] }],
    known: 'seen',
    source: 'NhsAlert2018',
  },
  {
    id: 'CYLINDER_GAUGE',
    phase,
    place: 'source',
    when: [{ source: ['cylinder-regulator'] }],
    known: 'common-practice',
  },
  {
    id: 'CONCENTRATOR_PLACE',
    phase,
    place: 'source',
    when: [{ source: ['concentrator'] }],
    known: 'common-practice',
  },
  {
    id: 'TWO_METERS',
    phase,
    place: 'source',
    when: [{ source: ['two-flowmeters'] }, { source: ['jet-nebuliser'], meters: [2] }],
    known: 'common-practice',
    values: ['meterLpm'],
  },
  {
    id: 'VENTILATOR_LIMB',
    phase,
    place: 'source',
    when: [{ source: ['ventilator'] }],
    known: 'common-practice',
  },
  {
    id: 'BUBBLE_WATER',
    phase,
    place: 'humidifier',
    when: [{ humidifier: ['bubble'] }],
    known: 'common-practice',
  },
  {
    id: 'NEBULISER_WATER',
    phase,
    place: 'humidifier',
    when: [{ humidifier: ['aerosol'] }],
    known: 'common-practice',
    values: ['setO2Fraction'],
  },
  {
    id: 'COLLAR_ON_PORTS',
    phase,
    place: 'humidifier',
    when: [{ humidifier: ['collar'] }],
    known: 'common-practice',
  },
  {
    id: 'HEATED_READY',
    phase,
    place: 'humidifier',
    when: [{ humidifier: ['heated'] }],
    known: 'common-practice',
  },
]
