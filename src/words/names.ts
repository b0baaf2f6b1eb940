// What the closed lists of the core are called: interfaces, sizes, fits, sources, airways, breathing. Leaves out sentences.
import type { Origins } from '../delivery/origins.ts'
import type { FamilyId, FitId, SizeId } from '../kit/family-id.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { SourceKind } from '../kit/source-row.ts'
import type {
  BreathingState,
  Goal,
  InterfaceChange,
  RetentionRisk,
  Secretions,
  Sex,
} from '../patient/case.ts'
import type { AirwayKind, NoseState, TubeCuff } from '../physiology/airway-state.ts'
import type { Known } from '../units/provenance.ts'

type Names<Id extends string> = Readonly<Record<Id, string>>

export const FAMILY_NAMES: Names<FamilyId> = {
  'nasal-cannula': 'nasal cannula',
  'nasal-catheter': 'nasal catheter',
  'simple-mask': 'simple mask',
  'partial-rebreather-mask': 'partial rebreather mask',
  'non-rebreather-mask': 'non-rebreather mask',
  'entrainment-mask': 'air-entrainment mask',
  'adjustable-entrainment-mask': 'adjustable air-entrainment mask',
  'aerosol-mask': 'aerosol mask',
  'face-tent': 'face tent',
  'tracheostomy-mask': 'tracheostomy mask',
  't-piece': 'T-piece without limb',
  't-piece-with-limb': 'T-piece with limb',
  'head-box': 'head box',
  'nasal-high-flow': 'nasal high flow',
  'cannula-under-mask': 'nasal cannula under a mask',
}

export const SIZE_NAMES: Names<SizeId> = {
  preterm: 'preterm',
  newborn: 'newborn',
  infant: 'infant',
  child: 'child',
  adult: 'adult',
}

export const FIT_NAMES: Names<FitId> = {
  tight: 'tight fit',
  gentle: 'gentle fit',
  loose: 'loose fit',
  'over-surgical-mask': 'over a surgical mask',
}

export const SOURCE_NAMES: Names<SourceKind> = {
  'wall-flowmeter': 'wall flowmeter',
  'two-flowmeters': 'two flowmeters in parallel',
  'cylinder-regulator': 'cylinder with regulator',
  concentrator: 'concentrator',
  'jet-nebuliser': 'large-volume jet nebuliser',
  blender: 'blender',
  ventilator: 'ventilator as gas source',
}

export const HUMIDIFICATION_NAMES: Names<SetUp['humidification']> = {
  none: 'no humidifier',
  bubble: 'bubble humidifier',
  collar: 'humidification collar',
  heated: 'heated humidifier',
}

export const AIRWAY_NAMES: Names<AirwayKind> = {
  natural: 'mouth and nose',
  'nose-blocked': 'mouth only, nose blocked',
  'tracheostomy-cuff-up': 'tracheostomy, cuff up',
  'tracheostomy-cuff-down': 'tracheostomy, cuff down',
  'tracheostomy-uncuffed': 'tracheostomy, uncuffed tube',
  'tracheostomy-speaking-valve': 'tracheostomy with speaking valve',
  'tracheostomy-capped': 'tracheostomy, tube capped',
  laryngectomy: 'laryngectomy (neck only)',
}

export const NOSE_NAMES: Names<NoseState> = {
  open: 'nose open',
  'one-side-blocked': 'one nostril blocked',
  blocked: 'both nostrils blocked or packed',
}

export const CUFF_NAMES: Names<TubeCuff> = {
  up: 'cuff up',
  down: 'cuff down',
  none: 'no cuff',
}

export const BREATHING_NAMES: Names<BreathingState> = {
  rest: 'quiet breathing at rest',
  sleep: 'sleep',
  walking: 'walking',
  'fast-and-shallow': 'fast and shallow',
  'severe-distress': 'severe distress',
  'copd-stable': 'COPD, stable',
  'copd-exacerbation': 'COPD, exacerbation',
  asthma: 'acute asthma',
  pneumonia: 'pneumonia',
  'heart-failure': 'heart failure',
  'slow-under-opioids': 'slow under opioids',
  'obesity-hypoventilation': 'obesity hypoventilation',
  'neuromuscular-weakness': 'neuromuscular weakness',
  pregnancy: 'pregnancy',
  fever: 'fever',
  bronchiolitis: 'bronchiolitis',
  newborn: 'newborn',
  preterm: 'preterm',
}

export const CHANGE_NAMES: Names<InterfaceChange> = {
  beard: 'beard',
  'no-teeth': 'no teeth',
  'facial-burn-or-injury': 'facial burn or injury',
  'vomiting-risk': 'risk of vomiting',
  prone: 'prone',
  'feeding-tube': 'feeding tube in the nose',
  'glasses-or-hearing-aids': 'glasses or hearing aids',
  'confused-and-pulling': 'confused and pulling at it',
  claustrophobic: 'claustrophobic under a mask',
  'must-eat-and-talk': 'must eat and talk',
  'base-of-skull-fracture': 'base-of-skull fracture',
  'thick-or-bloody-secretions': 'thick or bloody secretions',
  'new-tracheostomy': 'new tracheostomy',
}

export const SECRETION_NAMES: Names<Secretions> = {
  thin: 'thin',
  thick: 'thick',
  bloody: 'bloody',
  crusting: 'crusting',
}

export const RETENTION_NAMES: Names<RetentionRisk> = {
  none: 'no known risk of carbon-dioxide retention',
  'at-risk': 'at risk of carbon-dioxide retention',
  'known-retainer': 'known to retain carbon dioxide',
}

export const SEX_NAMES: Names<Sex> = { female: 'female', male: 'male' }

export const GOAL_KIND_NAMES: Names<Goal['kind']> = {
  saturation: 'saturation range',
  fraction: 'inspired-fraction range',
  'as-much-as-possible': 'as much oxygen as possible',
  comfort: 'comfort',
}

/** Where inhaled gas came from. */
export const ORIGIN_NAMES: Names<keyof Origins> = {
  device: 'from the device now',
  stored: 'stored in mask, bag or nose',
  room: 'room air drawn in',
  expired: 'breathed out before',
}

export const KNOWN_NAMES: Names<Known> = {
  seen: 'read in the source',
  secondary: 'read in a text that quotes the source',
  memory: 'from memory, to be confirmed',
  derived: 'worked out from stated inputs',
  'common-practice': 'common practice',
}
