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
import { say } from './say.ts'

type Names<Id extends string> = Readonly<Record<Id, string>>

export const FAMILY_NAMES: Names<FamilyId> = {
  'nasal-cannula': say('nasal cannula'),
  'nasal-catheter': say('nasopharyngeal catheter'),
  'simple-mask': say('simple mask'),
  'partial-rebreather-mask': say('partial rebreather mask'),
  'non-rebreather-mask': say('non-rebreather mask'),
  'entrainment-mask': say('air-entrainment mask'),
  'adjustable-entrainment-mask': say('adjustable air-entrainment mask'),
  'aerosol-mask': say('aerosol mask'),
  'face-tent': say('face tent'),
  'tracheostomy-mask': say('tracheostomy mask'),
  't-piece': say('T-piece without limb'),
  't-piece-with-limb': say('T-piece with limb'),
  'head-box': say('head box'),
  'nasal-high-flow': say('nasal high flow'),
  'cannula-under-mask': say('nasal cannula under a mask'),
}

export const SIZE_NAMES: Names<SizeId> = {
  preterm: say('preterm'),
  newborn: say('newborn'),
  infant: say('infant'),
  child: say('child'),
  adult: say('adult'),
}

export const FIT_NAMES: Names<FitId> = {
  tight: say('tight fit'),
  gentle: say('gentle fit'),
  loose: say('loose fit'),
  'over-surgical-mask': say('over a surgical mask'),
}

export const SOURCE_NAMES: Names<SourceKind> = {
  'wall-flowmeter': say('wall flowmeter'),
  'two-flowmeters': say('two flowmeters in parallel'),
  'cylinder-regulator': say('cylinder with regulator'),
  concentrator: say('concentrator'),
  'jet-nebuliser': say('large-volume jet nebuliser'),
  blender: say('blender'),
  ventilator: say('ventilator as gas source'),
}

export const HUMIDIFICATION_NAMES: Names<SetUp['humidification']> = {
  none: say('no humidifier'),
  bubble: say('bubble humidifier'),
  collar: say('humidification collar'),
  heated: say('heated humidifier'),
}

export const AIRWAY_NAMES: Names<AirwayKind> = {
  natural: say('mouth and nose'),
  'nose-blocked': say('mouth only, nose blocked'),
  'tracheostomy-cuff-up': say('tracheostomy, cuff up'),
  'tracheostomy-cuff-down': say('tracheostomy, cuff down'),
  'tracheostomy-uncuffed': say('tracheostomy, uncuffed tube'),
  'tracheostomy-speaking-valve': say('tracheostomy with speaking valve'),
  'tracheostomy-capped': say('tracheostomy, tube capped'),
  laryngectomy: say('laryngectomy (neck only)'),
}

export const NOSE_NAMES: Names<NoseState> = {
  open: say('nose open'),
  'one-side-blocked': say('one nostril blocked'),
  blocked: say('both nostrils blocked or packed'),
}

export const CUFF_NAMES: Names<TubeCuff> = {
  up: say('cuff up'),
  down: say('cuff down'),
  none: say('no cuff'),
}

export const BREATHING_NAMES: Names<BreathingState> = {
  rest: say('quiet breathing at rest'),
  sleep: say('sleep'),
  walking: say('walking'),
  'fast-and-shallow': say('fast and shallow'),
  'severe-distress': say('severe distress'),
  'copd-stable': say('COPD, stable'),
  'copd-exacerbation': say('COPD, exacerbation'),
  asthma: say('acute asthma'),
  pneumonia: say('pneumonia'),
  'heart-failure': say('heart failure'),
  'slow-under-opioids': say('slow under opioids'),
  'obesity-hypoventilation': say('obesity hypoventilation'),
  'neuromuscular-weakness': say('neuromuscular weakness'),
  pregnancy: say('pregnancy'),
  fever: say('fever'),
  bronchiolitis: say('bronchiolitis'),
  newborn: say('newborn'),
  preterm: say('preterm'),
}

export const CHANGE_NAMES: Names<InterfaceChange> = {
  beard: say('beard'),
  'no-teeth': say('no teeth'),
  'facial-burn-or-injury': say('facial burn or injury'),
  'vomiting-risk': say('risk of vomiting'),
  prone: say('prone'),
  'feeding-tube': say('feeding tube in the nose'),
  'glasses-or-hearing-aids': say('glasses or hearing aids'),
  'confused-and-pulling': say('confused and pulling at it'),
  claustrophobic: say('claustrophobic under a mask'),
  'must-eat-and-talk': say('must eat and talk'),
  'base-of-skull-fracture': say('base-of-skull fracture'),
  'thick-or-bloody-secretions': say('thick or bloody secretions'),
  'new-tracheostomy': say('new tracheostomy'),
  'nebulised-drug': say('a drug is being nebulised'),
}

export const SECRETION_NAMES: Names<Secretions> = {
  thin: say('thin'),
  thick: say('thick'),
  bloody: say('bloody'),
  crusting: say('crusting'),
}

export const RETENTION_NAMES: Names<RetentionRisk> = {
  none: say('no known risk of carbon-dioxide retention'),
  'at-risk': say('at risk of carbon-dioxide retention'),
  'known-retainer': say('known to retain carbon dioxide'),
}

export const SEX_NAMES: Names<Sex> = { female: say('female'), male: say('male') }

export const GOAL_KIND_NAMES: Names<Goal['kind']> = {
  saturation: say('saturation range'),
  fraction: say('inspired-fraction range'),
  'as-much-as-possible': say('as much oxygen as possible'),
  comfort: say('comfort'),
}

/** Where inhaled gas came from. */
export const ORIGIN_NAMES: Names<keyof Origins> = {
  device: say('from the device now'),
  stored: say('stored in mask, bag or nose'),
  room: say('room air drawn in'),
  expired: say('breathed out before'),
}

export const KNOWN_NAMES: Names<Known> = {
  seen: say('read in the source'),
  secondary: say('read in a text that quotes the source'),
  memory: say('from memory, to be confirmed'),
  derived: say('worked out from stated inputs'),
  'common-practice': say('common practice'),
}
