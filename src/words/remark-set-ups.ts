// Remarks on one set-up: what to mind, what to watch, humidity. Leaves out why it is ruled out.
import { NOT_CHECKED } from './caution-texts.ts'
import { flowText, fractionText, numberText, percentText } from './number-text.ts'
import { numberOf } from './remark-value.ts'
import type { RemarkTexts } from './remark-value.ts'

/** Shares below this are not worth a word. */
const SHARE_SAID_MIN = 0.05

export const SET_UP_TEXTS: RemarkTexts = {
  NOT_CHECKED_AGAINST_MEASUREMENTS: () => NOT_CHECKED,
  DEMAND_EXCEEDS_STREAM: (v) =>
    `peak inspiratory flow exceeds the stream by about ${numberText(-numberOf(v, 'marginLpm'), 1)} L/min: room air is drawn in`,
  REMOVE_IF_GAS_FAILS: () =>
    'if the gas fails: take the mask off, give oxygen from another source, call for help',
  FILL_BAG_FIRST: (v) =>
    numberOf(v, 'bagEmptyShare') < SHARE_SAID_MIN
      ? 'fill the bag before fitting; it must never collapse'
      : `fill the bag before fitting; it must never collapse (it would in about ${percentText(numberOf(v, 'bagEmptyShare'), 5)} of patients like this)`,
  LOW_FLOW_REBREATHING: (v) =>
    `below ${flowText(numberOf(v, 'flowLpm'))} in a mask expired gas is breathed again`,
  HIGH_FRACTION: (v) =>
    `inspired fraction ${fractionText(numberOf(v, 'o2Fraction'))} or more: collapse of small airways and toxicity over time; step down when you can`,
  VENTILATOR_GIVES_NO_BREATHS: () =>
    'the ventilator serves as gas source at constant flow: it gives no breaths and its alarms do not watch this patient',
  NEEDS_BOTH_GASES: () => 'needs pipeline oxygen and pipeline air; its alarm must stay on',
  CONCENTRATOR_PURITY: () => 'the concentrator gives less than pure oxygen, least at high flow',
  CYLINDER_RUNS_OUT: () => 'a cylinder runs out: work out how long it lasts before starting',
  FLUSH_WIDE_SPREAD: () => 'flush is not metered: the real flow varies widely between outlets',
  LOW_FLOW_ON_ORDINARY_METER: () =>
    'below 1 L/min an ordinary flowmeter is off by half the setting or more: use a low-flow meter',
  HEATER_OFF_WHEN_FLOW_STOPS: () => 'switch the heater off whenever the flow is stopped',
}

/** Why no printed or quoted fraction stands beside ours. */
export const PRINTED_TEXTS: RemarkTexts = {
  NOTHING_QUOTED: () => 'nothing printed or quoted for it',
  FLOW_OUTSIDE_QUOTED: () => 'nothing quoted at this flow',
  FLUSH_NOT_QUOTED: () => 'nothing quoted at flush',
  QUOTED_FOR_ADULTS_ONLY: () => 'quoted for adults only',
}

export const WATCH_TEXTS: RemarkTexts = {
  WATCH_FIVE_MINUTES: () =>
    'stay and watch saturation and breathing for 5 minutes after each change',
  BLOOD_GAS_30_60: () => 'blood gas within 30–60 minutes',
  WATCH_BAG: () => 'the bag stays at least part filled on every breath',
  WATCH_NOSE_AND_EARS: () => 'skin at nose and ears, dryness, prongs still in the nose',
  WATCH_SKIN_UNDER_MASK: () => 'skin under the mask, the seal, vomiting',
  WATCH_SECRETIONS: () => 'secretions, the tube clear, gas warm and wet',
  WATCH_BOX_CO2: () =>
    'oxygen measured near the nose, flow high enough to wash out carbon dioxide, temperature of the box',
  DRAIN_CONDENSATE: () =>
    'water in the hose: drain it away from the patient; it narrows the hose and changes the fraction',
}

export const HUMIDITY_TEXTS: RemarkTexts = {
  DRY_LOW_FLOW_USUALLY_FINE: () => 'low flow into a working nose: no humidifier called for',
  CONSIDER_ABOVE_4_LPM: () => 'above 4 L/min: one guideline considers a humidifier',
  BUBBLE_ADVISED_AGAINST: () => 'another guideline advises against bubble bottles',
  CHILD_POLICY_COUNTS: () => 'no agreed threshold for children: local policy counts',
  CATHETER_NEEDS_HUMIDITY: () => 'the tip lies behind the nose: humidify at every flow',
  BYPASSED_NEVER_DRY: () => 'bypassed upper airway: never dry gas',
  HEATED_REQUIRED: () => 'heated humidifier required',
  HEATED_EXPECTED: () => 'blended pipeline gas is dry: heated humidifier in the stream',
  AEROSOL_FROM_NEBULISER: () => 'the nebuliser brings cool aerosol',
  ENTRAINED_ROOM_AIR_BRINGS_WATER: () => 'entrained room air brings some water',
  COLLAR_POSSIBLE: () => 'a humidification collar fits over the air ports',
}
