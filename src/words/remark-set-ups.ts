// Remarks on one set-up: what to mind, what to watch, humidity. Leaves out why it is ruled out.
import { NOT_CHECKED } from './caution-texts.ts'
import { flowText, fractionText, percentText } from './number-text.ts'
import { numberOf } from './remark-value.ts'
import type { RemarkTexts } from './remark-value.ts'
import { say } from './say.ts'

/** Shares below this are not worth a word. */
const SHARE_SAID_MIN = 0.05

export const SET_UP_TEXTS: RemarkTexts = {
  NOT_CHECKED_AGAINST_MEASUREMENTS: () => NOT_CHECKED,
  DEMAND_EXCEEDS_STREAM: (v) =>
    say('peak inspiratory flow exceeds the stream by about {flow}: room air is drawn in', {
      flow: flowText(-numberOf(v, 'marginLpm'), 1),
    }),
  REMOVE_IF_GAS_FAILS: () =>
    say('if the gas fails: take the mask off, give oxygen from another source, call for help'),
  FILL_BAG_FIRST: (v) =>
    numberOf(v, 'bagEmptyShare') < SHARE_SAID_MIN
      ? say('fill the bag before fitting; it must never collapse')
      : say(
          'fill the bag before fitting; it must never collapse (it would in about {share} of patients like this)',
          { share: percentText(numberOf(v, 'bagEmptyShare'), 5) },
        ),
  LOW_FLOW_REBREATHING: (v) =>
    say('below {flow} in a mask expired gas is breathed again', {
      flow: flowText(numberOf(v, 'flowLpm')),
    }),
  HIGH_FRACTION: (v) =>
    say(
      'inspired fraction {fraction} or more: collapse of small airways and toxicity over time; step down when you can',
      { fraction: fractionText(numberOf(v, 'o2Fraction')) },
    ),
  VENTILATOR_GIVES_NO_BREATHS: () =>
    say(
      'the ventilator serves as gas source at constant flow: it gives no breaths and its alarms do not watch this patient',
    ),
  NEEDS_BOTH_GASES: () => say('needs pipeline oxygen and pipeline air; its alarm must stay on'),
  CONCENTRATOR_PURITY: () =>
    say('the concentrator gives less than pure oxygen, least at high flow'),
  CYLINDER_RUNS_OUT: () => say('a cylinder runs out: work out how long it lasts before starting'),
  FLUSH_WIDE_SPREAD: () => say('flush is not metered: the real flow varies widely between outlets'),
  LOW_FLOW_ON_ORDINARY_METER: () =>
    say(
      'below 1 L/min an ordinary flowmeter is off by half the setting or more: use a low-flow meter',
    ),
  HEATER_OFF_WHEN_FLOW_STOPS: () => say('switch the heater off whenever the flow is stopped'),
}

/** Why no printed or quoted fraction stands beside ours. */
export const PRINTED_TEXTS: RemarkTexts = {
  NOTHING_QUOTED: () => say('nothing printed or quoted for it'),
  FLOW_OUTSIDE_QUOTED: () => say('nothing quoted at this flow'),
  FLUSH_NOT_QUOTED: () => say('nothing quoted at flush'),
  QUOTED_FOR_ADULTS_ONLY: () => say('quoted for adults only'),
}

export const WATCH_TEXTS: RemarkTexts = {
  WATCH_FIVE_MINUTES: () =>
    say('stay and watch saturation and breathing for 5 minutes after each change'),
  BLOOD_GAS_30_60: () => say('blood gas within 30–60 minutes'),
  WATCH_BAG: () => say('the bag stays at least part filled on every breath'),
  WATCH_NOSE_AND_EARS: () => say('skin at nose and ears, dryness, prongs or catheter in place'),
  WATCH_SKIN_UNDER_MASK: () => say('skin under the mask, the seal, vomiting'),
  WATCH_SECRETIONS: () => say('secretions, the tube clear, gas moist'),
  WATCH_BOX_CO2: () =>
    say(
      'oxygen measured near the nose, flow high enough to wash out carbon dioxide, temperature of the box',
    ),
  DRAIN_CONDENSATE: () =>
    say(
      'water in the hose: drain it away from the patient; it narrows the hose and changes the fraction',
    ),
}

export const HUMIDITY_TEXTS: RemarkTexts = {
  DRY_LOW_FLOW_USUALLY_FINE: () => say('low flow into a working nose: no humidifier called for'),
  CONSIDER_ABOVE_4_LPM: () => say('above 4 L/min: one guideline considers a humidifier'),
  BUBBLE_ADVISED_AGAINST: () => say('a guideline advises against bubble bottles'),
  CHILD_POLICY_COUNTS: () => say('no agreed threshold for children: local policy counts'),
  CATHETER_NEEDS_HUMIDITY: () => say('the tip lies behind the nose: humidify at every flow'),
  BYPASSED_NEVER_DRY: () => say('bypassed upper airway: never dry gas'),
  HEATED_REQUIRED: () => say('heated humidifier required'),
  HEATED_EXPECTED: () => say('blended pipeline gas is dry: heated humidifier in the stream'),
  AEROSOL_FROM_NEBULISER: () => say('the nebuliser brings cool aerosol'),
  ENTRAINED_ROOM_AIR_BRINGS_WATER: () => say('entrained room air brings some water'),
  COLLAR_POSSIBLE: () => say('a humidification collar fits over the air ports'),
}
