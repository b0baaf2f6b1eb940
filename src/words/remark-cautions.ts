// Cautions of a plan: emergency lines, the patient's, the goal's. Leaves out cautions of a single set-up.
import { CO2_NOT_PREDICTABLE } from './caution-texts.ts'
import type { RemarkTexts } from './remark-value.ts'
import { say } from './say.ts'

export const EMERGENCY_TEXTS: RemarkTexts = {
  EMERGENCY_OXYGEN_FIRST: () => say('In an emergency give oxygen first, calculate later.'),
  EMERGENCY_NOT_BREATHING: () =>
    say('Not breathing, gasping or unrousable: call for help, bag and mask, stop using this.'),
  EMERGENCY_NECK_BREATHER: () =>
    say(
      'Neck breather in an emergency: oxygen to the face and to the neck until the airway is known.',
    ),
}

export const PLAN_CAUTION_TEXTS: RemarkTexts = {
  DECISION_SUPPORT: () =>
    say(
      'Decision support for trained staff: local policy and licensed practice come first, the clinician decides.',
    ),
  NOT_A_MONITOR: () =>
    say(
      'Not a monitor and not an alarm: it does not watch the patient. Look at the patient first, then at the set-up.',
    ),
  FIRE: () =>
    say(
      'Oxygen feeds fire: no smoking, flames, oil or grease; paraffin-based creams on the face burn; for defibrillation move the mask or cannula at least a metre away.',
    ),
  PACO2_NOT_PREDICTABLE: () => sentence(CO2_NOT_PREDICTABLE),
  WATCH_DROWSINESS: () =>
    say(
      'Carbon-dioxide retention: controlled oxygen, and watch for drowsiness, headache and flushed, warm hands.',
    ),
  OPIOID_SATURATION_HIDES_CO2: () =>
    say(
      'In opioid or sedative depression a good saturation hides a rising carbon dioxide: count the rate, watch drowsiness.',
    ),
  PRETERM_TOO_MUCH_HARMS: () =>
    say(
      'Preterm: too much oxygen harms eyes and lungs; ranges differ from those of older patients.',
    ),
  BLOW_BY_NO_NUMBER: () =>
    say(
      'Oxygen held in front of the face: what is inhaled cannot be told, no number is given; use an interface that stays on.',
    ),
  OXIMETER_LIMITS: () =>
    say(
      'Saturation readings carry error: accuracy class, motion, perfusion, skin pigment, carboxyhaemoglobin.',
    ),
  BURN_AIRWAY_MAY_SWELL: () =>
    say(
      'Facial burn or injury: the airway may swell; have it looked at early by someone who can secure it.',
    ),
  VOMITING_UNDER_MASK: () =>
    say(
      'Risk of vomiting: a mask can hold vomit at the mouth; keep it in sight and easy to take off.',
    ),
  EXCHANGER_OFF_WHILE_NEBULISED: () =>
    say(
      'A drug is being nebulised: take the heat and moisture exchanger off meanwhile, and put it back afterwards.',
    ),
}

/** The caution that goes with the reason for a goal. */
export const GOAL_CAUTION_TEXTS: RemarkTexts = {
  GOAL_USUAL: () => say('Usual range for acute illness without risk of carbon-dioxide retention.'),
  GOAL_REGIONAL_92_96: () => say('A regional guideline takes 92–96 % for most: follow your own.'),
  GOAL_AT_MOST_96: () => say('One recommendation stops at 96 % for everyone on oxygen.'),
  GOAL_CRITICAL_FIRST_RESERVOIR: () =>
    say('Critical illness: reservoir mask at 15 L/min first, then down to the range once stable.'),
  GOAL_BLOOD_GAS: () =>
    say(
      'Lower range until a blood gas is known; repeat the gas after 30–60 minutes and after each rise in oxygen.',
    ),
  GOAL_NOT_STARTED_ABOVE_93: () =>
    say('Heart attack or stroke: one recommendation does not start oxygen at 93 % or above.'),
  GOAL_OXYGEN_HARMS_LUNG: () =>
    say('Paraquat or bleomycin: oxygen harms this lung; start only below 85 %.'),
  GOAL_OR_USUAL_VALUE: () => say('Sickle-cell crisis: this range or the person’s usual value.'),
  GOAL_LEFT_LATERAL: () =>
    say('Pregnancy: left lateral position or the womb moved aside as well as oxygen.'),
  GOAL_CARDIOLOGIST_DECIDES: () =>
    say('Cyanotic heart disease: the cardiologist sets the range; higher may be worse.'),
  GOAL_IGNORE_OXIMETER: () =>
    say(
      'Carbon monoxide possible: the oximeter reads it as oxygen; give as much as possible whatever it shows, and take a blood gas.',
    ),
  GOAL_CLUSTER_12_LPM: () => say('Cluster headache: at least 12 L/min from a reservoir mask.'),
  GOAL_PNEUMOTHORAX_LOCAL_POLICY: () =>
    say(
      'Pneumothorax under observation: high oxygen is given by some guidance and dropped by newer; local policy decides.',
    ),
  GOAL_PRETERM: () =>
    say('Preterm: both ends of the range matter; follow the unit’s own alarm limits.'),
  GOAL_CHRONIC_NEONATAL: () =>
    say('Chronic lung disease of the newborn: the children’s lung team sets the range.'),
  GOAL_BRONCHIOLITIS: () =>
    say(
      'Bronchiolitis: start below 90 %, or below 92 % when younger than six weeks or with other disease.',
    ),
  GOAL_CHILD_WHO: () =>
    say('Child where means are few: start below 90 %, below 94 % with emergency signs.'),
  GOAL_COMFORT: () =>
    say('Comfort in the last days: no saturation goal and no scores; oxygen only if it relieves.'),
}

function sentence(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}.`
}
