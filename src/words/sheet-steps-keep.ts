// The text of the steps once a set-up is on: verify, each shift, if the gas fails. Leaves out preparing and fitting.
import { flowText, rangeText } from './number-text.ts'
import { numberOf } from './remark-value.ts'
import type { RemarkTexts, RemarkValues } from './remark-value.ts'
import { say } from './say.ts'
import { settingText } from './sheet-value.ts'

export const VERIFY_STEP_TEXTS: RemarkTexts = {
  STAY_FIVE_MINUTES: () =>
    say(
      'Stay 5 minutes after each change: the patient first, then saturation, rate, effort, alertness. Write it down.',
    ),
  SATURATION_IN_GOAL: (v) =>
    say('Saturation {range}. Below: check set-up and probe first. Above: step down.', {
      range: rangeText({
        low: numberOf(v, 'goalLowPercent'),
        high: numberOf(v, 'goalHighPercent'),
        step: 1,
        unit: '%',
      }),
    }),
  OXIMETER_PUT_ASIDE: () =>
    say('Carbon monoxide: the oximeter reads it as oxygen. Do not step down by it.'),
  BAG_NEVER_COLLAPSES: () =>
    say('Bag never collapses: part filled even at the end of each breath in. If not, more flow.'),
  NEVER_BELOW_MINIMUM: (v) =>
    say('Never below {flow}: expired gas would be breathed again.', { flow: minimum(v) }),
  MASK_NEVER_BELOW_MINIMUM: (v) =>
    say('Flow of the mask never below {flow}: expired gas would be breathed again.', {
      flow: minimum(v),
    }),
  NEVER_BELOW_PRINTED: (v) =>
    say(
      'Never below the printed {flow} at {setting}; rate above 30/min: up to half as much again.',
      {
        flow: flowText(numberOf(v, 'printedMinimumLpm')),
        setting: settingText(v),
      },
    ),
  STREAM_NEVER_BELOW: (v) =>
    say('Whole stream never below {flow}; gas leaves the open end even while breathing in.', {
      flow: minimum(v),
    }),
  HIGH_FLOW_NEVER_BELOW: (v) =>
    say('Never below {flow} through these prongs.', { flow: minimum(v) }),
  ANALYSER_AT_NOSE: (v) =>
    say('Oxygen analyser beside the nose: near {setting}. Write it down.', {
      setting: settingText(v),
    }),
  VENTILATOR_NO_BREATHS: () =>
    say('The ventilator gives no breaths; no apnoea or disconnection alarm can be counted on.'),
  HEATER_TEMPERATURE: () =>
    say('Heater at its set temperature; a little mist at the end is right.'),
  COLLAR_MIST: () => say('Mist seen at the collar. If not: water, air meter, hose.'),
  TUBE_CLEAR: () => say('Air felt moving at the neck with each breath; suction catheter passes.'),
  VOICE: () => say('Speaks and breathes out without effort; valve off for sleep.'),
  BLOOD_GAS_DUE: () =>
    say(
      'Carbon dioxide cannot be predicted: blood gas within 30–60 minutes and after every rise in oxygen.',
    ),
  COUNT_RATE: () => say('Count the rate for a full minute; can the patient be roused?'),
  BELLY_NOT_DISTENDED: () => say('Belly not distended; stomach vented as local policy says.'),
}

function minimum(values: RemarkValues): string {
  return flowText(numberOf(values, 'minimumLpm'))
}

export const SHIFT_STEP_TEXTS: RemarkTexts = {
  AS_ON_SHEET: () =>
    say('Interface, source, setting and flow read against this sheet. Any change: a new sheet.'),
  STILL_NEEDED: () =>
    say('Still needed? Stable for some hours at the upper end: ask to step down.'),
  COMFORT_ONLY: () =>
    say('Does it relieve? If not, it may stop. No saturation checks in the last days.'),
  CYLINDER_EACH_HOUR: () =>
    say('Cylinder: gauge read every hour; changed before the time on this sheet.'),
  CONCENTRATOR_BACKUP: () =>
    say('Concentrator: indicator content, filter clean, back-up cylinder full.'),
  WATER_LEVEL: () => say('Water level; sterile water, dated; changed as local policy says.'),
  DRAIN_WATER: () => say('Drain water in the hose away from the patient, never back.'),
  COLLAR_AIR_METER_OFF: () => say('No mist needed any more: take the air meter out of its outlet.'),
  SKIN_NOSE_EARS: () =>
    say('Skin at nose, cheeks and ears whole; prongs or catheter in place, not blocked.'),
  SKIN_UNDER_MASK: () => say('Skin at bridge of nose, cheeks and ears whole; face wiped dry.'),
  SKIN_ROUND_NECK: () => say('Skin under tapes and round the opening whole and dry.'),
  BOX_TURN_HEAD: () => say('Turn the head; skin at neck and ears whole; temperature in the box.'),
  MOUTH_AND_NOSE: () => say('Mouth and nose moist and clean; water-based cream only.'),
  CATHETER_OUT_AND_CLEAN: () =>
    say('Catheter out and cleaned at least twice a day; other nostril; no mucus plug.'),
  CUFF_EACH_SHIFT: () => say('Cuff pressure by gauge, 20–30 cmH₂O, written down.'),
  INNER_CANNULA: () =>
    say('Inner cannula out, cleaned or changed, back in; secretions: amount, thick, blood?'),
  STOMA_CLEAN: () => say('Stoma cleaned, crusts off; secretions: amount, thick, blood?'),
  EXCHANGER_CHANGED: () =>
    say('Exchanger changed when wet, soiled or due; off for nebulised drugs.'),
  DEFIBRILLATION: () =>
    say('Before defibrillation: mask or cannula at least a metre away from the chest.'),
}

export const GAS_FAILS_STEP_TEXTS: RemarkTexts = {
  LOOK_AND_CALL: () => say('Look at the patient. Call for help.'),
  MASK_OFF_AT_ONCE: () => say('Take the mask off at once: it seals, and without gas it smothers.'),
  LOOSE_MASK_OFF: () => say('Take it off the face while no gas flows: expired gas stays in it.'),
  T_PIECE_OFF: () => say('Take the T-piece off the tube at once.'),
  BOX_OFF: () => say('Open the box at once: carbon dioxide builds up in it.'),
  WIDE_PRONGS_OUT: () => say('Take the wide prongs out: they narrow the nose.'),
  OTHER_SOURCE_CYLINDER: () =>
    say('Oxygen from another source now: a cylinder with its own meter, at least this flow.'),
  OTHER_SOURCE_NEXT: () =>
    say('Oxygen from another source now: the next full cylinder, or a wall outlet.'),
  OTHER_SOURCE_BACKUP: () => say('Oxygen from another source now: the back-up cylinder.'),
  OTHER_SOURCE_METER: () =>
    say(
      'Oxygen from another source now: a cylinder with its own meter, to where the patient breathes.',
    ),
  HEATER_OFF: () => say('Heater off whenever the flow stops.'),
  ONE_GAS_FAILS: () =>
    say(
      'One of two gases lost: the mixture can no longer be trusted. Change the source even if gas flows.',
    ),
  MAINS_FAILS: () =>
    say('Mains lost: count on no battery. Change the source; humidifier stays cold.'),
  MAINS_FAILS_UNHEATED: () => say('Mains lost: count on no battery. Change the source.'),
  TUBE_BLOCKED: () =>
    say('Suction catheter will not pass: valve or cap off, inner cannula out, cuff down. Call.'),
  NECK_BREATHER: () =>
    say('Emergency: oxygen to the face and to the neck until the airway is known.'),
  LARYNGECTOMY_NECK_ONLY: () =>
    say('Laryngectomy: breathes by the neck alone. Bag and mask over the stoma.'),
  NOT_BREATHING: () =>
    say('Not breathing, gasping or unrousable: call for help, bag and mask, leave this sheet.'),
}
