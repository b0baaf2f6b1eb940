// Steps of putting it on. Leaves out their text.
import type { Step } from '../step.ts'

const phase = 'fit'

/** On the face without sealing. */
const MASKS = [
  'simple-mask',
  'entrainment-mask',
  'adjustable-entrainment-mask',
  'aerosol-mask',
] as const

export const FIT_STEPS: readonly Step[] = [
  {
    id: 'EXPLAIN',
    phase,
    place: 'bed',
    when: [{ isUnderTwoYears: [false] }],
    known: 'common-practice',
  },
  {
    id: 'EXPLAIN_TO_PARENTS',
    phase,
    place: 'bed',
    when: [{ isUnderTwoYears: [true] }],
    known: 'common-practice',
  },
  {
    id: 'EXCHANGER_OFF_FIRST',
    phase,
    place: 'bed',
    when: [{ opening: ['neck'], hasExchanger: [true], humidifier: ['aerosol', 'heated'] }],
    known: 'common-practice',
  },
  {
    id: 'EXCHANGER_OFF_FOR_DRUG',
    phase,
    place: 'bed',
    when: [
      {
        hasExchanger: [true],
        changes: ['nebulised-drug'],
        opening: ['nose', 'face', 'head'],
      },
      {
        hasExchanger: [true],
        changes: ['nebulised-drug'],
        opening: ['neck'],
        humidifier: ['none', 'bubble', 'collar'],
      },
    ],
    known: 'common-practice',
  },
  {
    id: 'SUCTION_FIRST',
    phase,
    place: 'bed',
    when: [{ isBypassed: [true] }],
    known: 'common-practice',
  },
  {
    id: 'CUFF_PRESSURE',
    phase,
    place: 'bed',
    when: [{ isCuffUp: [true] }],
    known: 'common-practice',
  },
  {
    id: 'CUFF_STAYS_DOWN',
    phase,
    place: 'bed',
    when: [{ airway: ['tracheostomy-cuff-down'] }],
    known: 'common-practice',
  },
  {
    id: 'VALVE_CUFF_DOWN',
    phase,
    place: 'bed',
    when: [{ airway: ['tracheostomy-speaking-valve'] }],
    known: 'common-practice',
  },
  {
    id: 'CAP_OFF_IN_DISTRESS',
    phase,
    place: 'bed',
    when: [{ airway: ['tracheostomy-capped'] }],
    known: 'common-practice',
  },
  {
    id: 'FILL_BAG',
    phase,
    place: 'interface',
    when: [{ hasBag: [true] }],
    known: 'common-practice',
  },
  {
    id: 'WARM_GAS_FIRST',
    phase,
    place: 'interface',
    when: [{ family: ['nasal-high-flow'] }],
    known: 'common-practice',
    values: ['flowLpm'],
  },
  {
    id: 'HOSE_HANGS_LOW',
    phase,
    place: 'tube',
    when: [
      { feed: ['wide-bore'], hasWaterTrap: [true] },
      { humidifier: ['collar'], hasWaterTrap: [true] },
    ],
    known: 'common-practice',
  },
  {
    id: 'HOSE_WITHOUT_TRAP',
    phase,
    place: 'tube',
    when: [
      { feed: ['wide-bore'], hasWaterTrap: [false] },
      { humidifier: ['collar'], hasWaterTrap: [false] },
    ],
    known: 'common-practice',
  },
  {
    id: 'PRONGS_IN',
    phase,
    place: 'patient',
    when: [
      {
        family: ['nasal-cannula', 'nasal-high-flow', 'cannula-under-mask'],
        isUnderTwoYears: [false],
      },
    ],
    known: 'common-practice',
  },
  {
    id: 'PRONGS_TAPED',
    phase,
    place: 'patient',
    when: [
      {
        family: ['nasal-cannula', 'nasal-high-flow', 'cannula-under-mask'],
        isUnderTwoYears: [true],
      },
    ],
    known: 'common-practice',
  },
  {
    id: 'PRONGS_HALF',
    phase,
    place: 'patient',
    when: [
      {
        family: ['nasal-cannula', 'nasal-high-flow'],
        size: ['preterm', 'newborn', 'infant', 'child'],
      },
    ],
    known: 'common-practice',
  },
  {
    id: 'CATHETER_DEPTH',
    phase,
    place: 'patient',
    when: [{ family: ['nasal-catheter'] }],
    known: 'common-practice',
  },
  {
    id: 'CANNULA_THEN_MASK',
    phase,
    place: 'patient',
    when: [{ family: ['cannula-under-mask'] }],
    known: 'common-practice',
    values: ['flowLpm', 'overLpm'],
  },
  {
    id: 'MASK_ON',
    phase,
    place: 'patient',
    when: [
      {
        opening: ['face'],
        isCloseFitting: [false],
        family: MASKS,
      },
    ],
    known: 'common-practice',
  },
  {
    id: 'MASK_SNUG',
    phase,
    place: 'patient',
    when: [{ opening: ['face'], isCloseFitting: [true] }],
    known: 'common-practice',
  },
  {
    id: 'TENT_UNDER_CHIN',
    phase,
    place: 'patient',
    when: [{ family: ['face-tent'] }],
    known: 'common-practice',
  },
  {
    id: 'MASK_OVER_NECK',
    phase,
    place: 'patient',
    when: [{ family: ['tracheostomy-mask'] }],
    known: 'common-practice',
  },
  {
    id: 'EXCHANGER_ON',
    phase,
    place: 'patient',
    when: [{ hasExchangerPart: [true] }],
    known: 'common-practice',
  },
  {
    id: 'T_PIECE_ON',
    phase,
    place: 'patient',
    when: [{ family: ['t-piece', 't-piece-with-limb'] }],
    known: 'common-practice',
  },
  {
    id: 'BOX_OVER_HEAD',
    phase,
    place: 'patient',
    when: [{ opening: ['head'] }],
    known: 'common-practice',
  },
  {
    id: 'PADS_AT_EARS',
    phase,
    place: 'patient',
    when: [{ changes: ['glasses-or-hearing-aids'], opening: ['nose', 'face'] }],
    known: 'common-practice',
  },
  {
    id: 'FEEDING_TUBE_BESIDE',
    phase,
    place: 'patient',
    when: [{ changes: ['feeding-tube'], opening: ['nose'] }],
    known: 'common-practice',
  },
  {
    id: 'FEEDING_TUBE_UNDER_RIM',
    phase,
    place: 'patient',
    when: [
      { changes: ['feeding-tube'], opening: ['face'], isCloseFitting: [true] },
      { changes: ['feeding-tube'], family: MASKS },
    ],
    known: 'common-practice',
  },
  {
    id: 'SEAL_WITH_BEARD',
    phase,
    place: 'patient',
    when: [{ changes: ['beard', 'no-teeth'], opening: ['face'] }],
    known: 'common-practice',
  },
  {
    id: 'PRONE_NO_PRESSURE',
    phase,
    place: 'patient',
    when: [{ changes: ['prone'] }],
    known: 'common-practice',
  },
  {
    id: 'NEVER_TIED',
    phase,
    place: 'patient',
    when: [{ changes: ['confused-and-pulling'] }],
    known: 'common-practice',
  },
  {
    id: 'OFF_WHEN_RETCHING',
    phase,
    place: 'patient',
    when: [{ changes: ['vomiting-risk'], opening: ['face'] }],
    known: 'common-practice',
  },
  {
    id: 'LET_HOLD_MASK',
    phase,
    place: 'patient',
    when: [{ changes: ['claustrophobic'], opening: ['face', 'head'] }],
    known: 'common-practice',
  },
  {
    id: 'BURN_NOT_TIED',
    phase,
    place: 'patient',
    when: [{ changes: ['facial-burn-or-injury'], opening: ['nose', 'face'] }],
    known: 'common-practice',
  },
  {
    id: 'MEALS',
    phase,
    place: 'patient',
    when: [{ changes: ['must-eat-and-talk'], opening: ['face'] }],
    known: 'common-practice',
  },
]
