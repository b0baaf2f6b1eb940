// What is done when the gas fails, in this order. Leaves out their text.
import { ALWAYS } from '../step.ts'
import type { Step } from '../step.ts'

const phase = 'if-gas-fails'

export const IF_GAS_FAILS_STEPS: readonly Step[] = [
  { id: 'LOOK_AND_CALL', phase, place: 'bed', when: ALWAYS, known: 'common-practice' },
  {
    id: 'MASK_OFF_AT_ONCE',
    phase,
    place: 'interface',
    when: [{ isCloseFitting: [true] }],
    known: 'common-practice',
  },
  {
    id: 'LOOSE_MASK_OFF',
    phase,
    place: 'interface',
    when: [{ opening: ['face'], isCloseFitting: [false] }],
    known: 'common-practice',
  },
  {
    id: 'T_PIECE_OFF',
    phase,
    place: 'interface',
    when: [{ family: ['t-piece', 't-piece-with-limb'] }],
    known: 'common-practice',
  },
  {
    id: 'BOX_OFF',
    phase,
    place: 'interface',
    when: [{ opening: ['head'] }],
    known: 'common-practice',
  },
  {
    id: 'WIDE_PRONGS_OUT',
    phase,
    place: 'interface',
    when: [{ family: ['nasal-high-flow'] }],
    known: 'common-practice',
  },
  {
    id: 'OTHER_SOURCE_CYLINDER',
    phase,
    place: 'interface',
    when: [{ source: ['wall-flowmeter', 'two-flowmeters', 'jet-nebuliser'] }],
    known: 'common-practice',
  },
  {
    id: 'OTHER_SOURCE_NEXT',
    phase,
    place: 'interface',
    when: [{ source: ['cylinder-regulator'] }],
    known: 'common-practice',
  },
  {
    id: 'OTHER_SOURCE_BACKUP',
    phase,
    place: 'interface',
    when: [{ source: ['concentrator'] }],
    known: 'common-practice',
  },
  {
    id: 'OTHER_SOURCE_METER',
    phase,
    place: 'interface',
    when: [{ source: ['blender', 'ventilator'] }],
    known: 'common-practice',
  },
  {
    id: 'HEATER_OFF',
    phase,
    place: 'patient',
    when: [{ humidifier: ['heated'] }],
    known: 'common-practice',
  },
  {
    id: 'ONE_GAS_FAILS',
    phase,
    place: 'patient',
    when: [{ source: ['blender', 'ventilator'] }],
    known: 'common-practice',
  },
  {
    id: 'MAINS_FAILS',
    phase,
    place: 'patient',
    when: [{ needsMains: [true], humidifier: ['heated'] }],
    known: 'common-practice',
  },
  {
    id: 'MAINS_FAILS_UNHEATED',
    phase,
    place: 'patient',
    when: [{ needsMains: [true], humidifier: ['none', 'bubble', 'collar', 'aerosol'] }],
    known: 'common-practice',
  },
  {
    id: 'TUBE_BLOCKED',
    phase,
    place: 'patient',
    when: [{ hasTube: [true] }],
    known: 'common-practice',
  },
  {
    id: 'NECK_BREATHER',
    phase,
    place: 'patient',
    when: [{ hasTube: [true] }, { isBypassed: [true] }],
    known: 'common-practice',
  },
  {
    id: 'LARYNGECTOMY_NECK_ONLY',
    phase,
    place: 'patient',
    when: [{ airway: ['laryngectomy'] }],
    known: 'common-practice',
  },
  { id: 'NOT_BREATHING', phase, place: 'patient', when: ALWAYS, known: 'common-practice' },
]
