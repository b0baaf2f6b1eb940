// The text of a sheet's other rows by their id: when to call, what the fraction depends on, why it counts no longer. Leaves out the steps.
import { numberText } from './number-text.ts'
import { numberOf } from './remark-value.ts'
import type { RemarkTexts } from './remark-value.ts'
import { say } from './say.ts'

const CALL_TEXTS: RemarkTexts = {
  CALL_BELOW_GOAL: (v) =>
    say('Saturation still below {low} % after 5 minutes though set-up and probe are right.', {
      low: numberText(numberOf(v, 'goalLowPercent'), 1),
    }),
  CALL_FALL_OF_THREE: () => say('Saturation falls by 3 points or more.'),
  CALL_MORE_OXYGEN: () => say('More oxygen needed than before for the same saturation.'),
  CALL_RATE_ADULT: () => say('Breathing rate 25/min or more, or 8/min or less.'),
  CALL_CHILD: () =>
    say('Grunting, pauses, chest drawn in, too breathless to feed or speak, pale or blue.'),
  CALL_HOLDS_NO_MORE: (v) =>
    say('Breathing rate {rate}/min: from there on this set-up is likely out of the goal.', {
      rate: numberText(numberOf(v, 'holdsPerMin'), 1),
    }),
  CALL_DROWSY: () => say('Drowsy, confused, tiring, or more effort of breathing.'),
  CALL_CARBON_DIOXIDE: () => say('Headache, flushed warm hands, flapping hands: blood gas now.'),
  CALL_NECK: () => say('Tube out or blocked, bleeding, hissing past a cuff that is up.'),
  CALL_NOT_RELIEVED: () => say('Breathlessness is not relieved.'),
}

/** Each stands in a list after “depends on”. */
const DEPENDS_TEXTS: RemarkTexts = {
  DEPENDS_BREATHING: () => say('rate and depth of breathing'),
  DEPENDS_MOUTH: () => say('mouth open or shut, nose free'),
  DEPENDS_FIT: () => say('fit of the mask'),
  DEPENDS_OPEN_TENT: () => say('draught round the tent'),
  DEPENDS_STREAM: () => say('whether the stream meets the fastest part of each breath in'),
  DEPENDS_BOX: () => say('lid and neck gap of the box'),
  DEPENDS_METER: () => say('accuracy of the setting'),
  DEPENDS_FLUSH: () => say('how far the meter really opens'),
  DEPENDS_CONCENTRATOR: () => say('purity of the concentrator’s gas'),
}

/** Each stands behind the time until which the sheet counts. */
const VALIDITY_TEXTS: RemarkTexts = {
  VALID_FOUR_TIMES_A_DAY: () => say('on oxygen, looked at four times a day'),
  VALID_UNTIL_BLOOD_GAS: () => say('blood gas due: carbon dioxide may be retained'),
  VALID_UNDER_OPIOIDS: () => say('under opioids, looked at every two hours'),
  VALID_UNSTEADY: () => say('breathing not steady'),
  VALID_WHILE_CRITICAL: () => say('as much oxygen as possible is for a short time'),
  VALID_WITHOUT_READING: () => say('no reading has narrowed the forecast'),
  VALID_SMALL_CHILD: () => say('small child'),
  VALID_COMFORT: () => say('comfort, no saturation goal'),
}

export const ROW_TEXTS: RemarkTexts = { ...CALL_TEXTS, ...DEPENDS_TEXTS, ...VALIDITY_TEXTS }
