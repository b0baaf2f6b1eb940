// What is looked at again each shift. Leaves out their text.
import { ALWAYS } from '../step.ts'
import type { Step } from '../step.ts'

const phase = 'each-shift'

export const EACH_SHIFT_STEPS: readonly Step[] = [
  { id: 'AS_ON_SHEET', phase, place: 'bed', when: ALWAYS, known: 'common-practice' },
  {
    id: 'STILL_NEEDED',
    phase,
    place: 'bed',
    when: [{ goal: ['saturation', 'fraction', 'as-much-as-possible'] }],
    known: 'seen',
    source: 'ODriscoll2017',
  },
  {
    id: 'COMFORT_ONLY',
    phase,
    place: 'bed',
    when: [{ goal: ['comfort'] }],
    known: 'seen',
    source: 'ODriscoll2017',
  },
  {
    id: 'CYLINDER_EACH_HOUR',
    phase,
    place: 'source',
    when: [{ source: ['cylinder-regulator'] }],
    known: 'common-practice',
  },
  {
    id: 'CONCENTRATOR_BACKUP',
    phase,
    place: 'source',
    when: [{ source: ['concentrator'] }],
    known: 'common-practice',
  },
  {
    id: 'WATER_LEVEL',
    phase,
    place: 'humidifier',
    when: [{ humidifier: ['bubble', 'aerosol', 'heated'] }],
    known: 'common-practice',
  },
  {
    id: 'DRAIN_WATER',
    phase,
    place: 'tube',
    when: [{ feed: ['wide-bore'] }, { humidifier: ['bubble', 'aerosol', 'heated'] }],
    known: 'common-practice',
  },
  {
    id: 'SKIN_NOSE_EARS',
    phase,
    place: 'patient',
    when: [{ opening: ['nose'] }, { family: ['cannula-under-mask'] }],
    known: 'common-practice',
  },
  {
    id: 'SKIN_UNDER_MASK',
    phase,
    place: 'patient',
    when: [{ opening: ['face'] }],
    known: 'common-practice',
  },
  {
    id: 'SKIN_ROUND_NECK',
    phase,
    place: 'patient',
    when: [{ isBypassed: [true] }],
    known: 'common-practice',
  },
  {
    id: 'BOX_TURN_HEAD',
    phase,
    place: 'patient',
    when: [{ opening: ['head'] }],
    known: 'common-practice',
  },
  {
    id: 'MOUTH_AND_NOSE',
    phase,
    place: 'patient',
    when: [{ opening: ['nose', 'face'] }],
    known: 'common-practice',
  },
  {
    id: 'CATHETER_OUT_AND_CLEAN',
    phase,
    place: 'patient',
    when: [{ family: ['nasal-catheter'] }],
    known: 'common-practice',
  },
  {
    id: 'CUFF_EACH_SHIFT',
    phase,
    place: 'patient',
    when: [{ isCuffUp: [true] }],
    known: 'common-practice',
  },
  {
    id: 'INNER_CANNULA',
    phase,
    place: 'patient',
    when: [{ hasTube: [true] }],
    known: 'common-practice',
  },
  {
    id: 'STOMA_CLEAN',
    phase,
    place: 'patient',
    when: [{ airway: ['laryngectomy'] }],
    known: 'common-practice',
  },
  {
    id: 'EXCHANGER_CHANGED',
    phase,
    place: 'patient',
    when: [
      { hasExchanger: [true], opening: ['nose', 'face', 'head'] },
      { hasExchanger: [true], opening: ['neck'], humidifier: ['none', 'bubble', 'collar'] },
    ],
    known: 'common-practice',
  },
  { id: 'DEFIBRILLATION', phase, place: 'patient', when: ALWAYS, known: 'common-practice' },
]
