// Texts for the drill: what a failure does to a bed, and what to do. Leaves out cylinders and the demand of a ward.
import { fractionText } from './number-text.ts'
import { numberOf } from './remark-value.ts'
import { say } from './say.ts'
import type { SupplyTexts } from './supply-cylinder-texts.ts'
import { drawText, minutesLeftText } from './supply-value.ts'

export const OUTAGE_TEXTS = {
  WORKS_ON: () => say('works on'),
  ON_BED_CYLINDER: (v) =>
    say('{minutes} on the cylinders at the bed, once moved to them', {
      minutes: minutesLeftText(numberOf(v, 'minutes')),
    }),
  NO_CYLINDER_AT_BED: () => say('no cylinder at the bed'),
  ON_BATTERY: (v) =>
    say('{minutes} on its battery', { minutes: minutesLeftText(numberOf(v, 'minutes')) }),
  BATTERY_NOT_STATED: () => say('the battery time is not in the file'),
  PLANT_NOT_STATED: () => say('the file does not say what feeds the pipeline'),
  PLANT_STOPS: () =>
    say('the pipeline is fed by a concentrator plant, which stops; its reserve holds for a time'),
  MIXER_DRIVE_NOT_STATED: () => say('the file does not say whether the mixer needs power'),
  SET_UP_NOT_KNOWN: () => say('the file does not say what is on'),
  GIVES_AIR_ONLY: () => say('gives air only: the fraction falls to 0.21'),
  GIVES_OXYGEN_ONLY: (v) =>
    say('gives oxygen only: the fraction rises from {set} to 1, the flow may fall', {
      set: fractionText(numberOf(v, 'setO2Fraction')),
    }),
  NO_GAS_AT_ALL: () => say('no gas at all'),
  BREATHES_ROOM_AIR: () => say('breathes room air: not touched'),
  CYLINDER_NOT_STATED: () => say('the file names no cylinder at the bed that it runs on'),
  DRAW_AT_RESERVOIR_MASK: (v) =>
    say('reckoned for a reservoir mask at {flow}', { flow: drawText(numberOf(v, 'flowLpm')) }),
  HEATER_STOPS: () => say('the heater stops: gas turns dry and cold, water collects in the hose'),
  DO_TAKE_MASK_OFF: () => say('take the close-fitting mask off until gas flows again'),
  DO_MOVE_TO_CYLINDER: () => say('move to the cylinder at the bed: open it, set the flow, feel it'),
  DO_MOVE_TO_FLOWMETER: () => say('move to a mask on a wall flowmeter'),
  DO_FETCH_CYLINDER: () => say('fetch a cylinder now, in the order of this list'),
  DO_OPEN_CYLINDER: () => say('see that the cylinder’s valve is open'),
  DO_WATCH_FOR_TOO_MUCH_OXYGEN: () =>
    say('turn down or change the set-up: too much oxygen harms this patient'),
  DO_CALL_FOR_HELP: () => say('call for help'),
  DO_BRING_POWER: () => say('to an emergency socket, or another source before the battery ends'),
  DO_FIND_OUT: () => say('find out now, and write it into the file'),
  DO_NOTHING_BUT_WATCH: () => say('watch the patient; nothing to move'),
  NOT_COMPUTED_YET: () => say('How the saturation falls minute by minute is not computed yet.'),
} satisfies SupplyTexts
