// The text of every step of a bedside sheet by its id, and the names of the phases. Leaves out when a step applies.
import type { StepPhase } from '../sheet/step.ts'
import { FIT_STEP_TEXTS } from './sheet-steps-fit.ts'
import { GAS_FAILS_STEP_TEXTS, SHIFT_STEP_TEXTS, VERIFY_STEP_TEXTS } from './sheet-steps-keep.ts'
import { meteredText, settingText } from './sheet-value.ts'
import { flowText } from './number-text.ts'
import { numberOf } from './remark-value.ts'
import type { RemarkTexts } from './remark-value.ts'
import { say } from './say.ts'

export const phaseNames = (): Readonly<Record<StepPhase, string>> => ({
  prepare: say('Prepare'),
  'check-before-use': say('Check before use'),
  fit: say('Put it on'),
  verify: say('See that it works'),
  'each-shift': say('Each shift'),
  'if-gas-fails': say('If the gas fails'),
})

const PREPARE_STEP_TEXTS: RemarkTexts = {
  RIGHT_PATIENT: () =>
    say('Clean hands. Right patient: bed and code against the wristband; goal as ordered.'),
  HELP_AT_HAND: () =>
    say('Within reach: bag and mask of the right size, suction, a second source of oxygen.'),
  FIRE_CLEAR: () =>
    say('No smoking, flame, oil or grease near; no paraffin-based cream on face or hands.'),
  OXYGEN_OUTLET: () =>
    say('Outlet that is named oxygen: read the name, plug in, tug. Never an air outlet.'),
  BOTH_GASES: () =>
    say('Oxygen hose into oxygen, air hose into air; both pressures up; supply alarm on.'),
  MAINS: () => say('Mains plug in a socket with emergency supply; cable out of the way.'),
  CYLINDER_SECURED: () =>
    say('Cylinder secured on its holder, away from heat; hands free of grease.'),
  CYLINDER_OPEN: () =>
    say('Cap off, valve slowly and fully open, then the dial: a full gauge alone is no flow.'),
  CYLINDER_GAUGE: () =>
    say('Read the gauge, write the time to change on this sheet; next full cylinder ready.'),
  CONCENTRATOR_PLACE: () =>
    say(
      'Concentrator free on all sides, filter clean; running until its oxygen indicator is content.',
    ),
  TWO_METERS: (v) =>
    say('Two meters, each set to {flow}; when one stops, half of the gas is gone.', {
      flow: flowText(numberOf(v, 'meterLpm')),
    }),
  VENTILATOR_LIMB: () =>
    say(
      'Ventilator: constant flow only, never a mode that cycles pressure; inspiratory limb with its filter.',
    ),
  BUBBLE_WATER: () => say('Bubble bottle: sterile water between the marks, dated, lid tight.'),
  NEBULISER_WATER: (v) =>
    say('Nebuliser: sterile water between the marks, dated; dial at {setting}.', {
      setting: settingText(v),
    }),
  COLLAR_AIR: () =>
    say(
      'Air meter of the mist: outlet that is named air. It feeds the collar alone, never the mask.',
    ),
  COLLAR_WATER: () => say('Mist for the collar: sterile water between the marks, dated.'),
  COLLAR_ON_PORTS: () =>
    say('Collar round the air ports, not closing them; mist from its own supply.'),
  HEATED_READY: () =>
    say(
      'Heated humidifier: sterile water, chamber seated, probes in; heater on only with gas flowing.',
    ),
}

const CHECK_STEP_TEXTS: RemarkTexts = {
  METER_TUBE: (v) =>
    say('Set {flow}: middle of the ball at the mark, at eye level.', { flow: meteredText(v) }),
  METER_OF_MASK: (v) =>
    say('That was the cannula; the meter of the mask at {flow}.', {
      flow: flowText(numberOf(v, 'overLpm')),
    }),
  METER_IN_ML: (v) =>
    say('Meter in mL/min: set {flow} mL/min. Not L/min.', {
      flow: String(Math.round(numberOf(v, 'flowMlPerMin'))),
    }),
  METER_DIAL: (v) =>
    say('Dial at {flow}, in its notch: between two marks nothing may flow.', {
      flow: meteredText(v),
    }),
  METER_ELECTRONIC: (v) => say('Display at {flow}.', { flow: meteredText(v) }),
  METER_FLUSH: () =>
    say('Meter fully open, beyond its scale: the flow is not known. Do not leave the patient.'),
  METER_UNCOMPENSATED: () =>
    say('Uncompensated meter: it reads low under back-pressure; nothing narrow behind it.'),
  BLEND_SET: (v) =>
    say('Set {setting} and {flow}; read the fraction with an oxygen analyser in the hose.', {
      setting: settingText(v),
      flow: flowText(numberOf(v, 'flowLpm')),
    }),
  BUBBLE_RELIEF: () => say('Pinch the tube: the relief valve sounds. Let go.'),
  TUBES_LABELLED: () => say('Two tubes, two meters: label both ends of each, cannula and mask.'),
  GAS_FELT: () =>
    say('Gas felt at the patient’s end; joins pushed home with a twist; no kink, no hiss.'),
  BAG_SOUND: () =>
    say('Bag whole, no hole; it fills when its way out is held shut; flaps lie flat.'),
  VALVE_PORTS_FREE: (v) =>
    say('Valve reads {setting}; its air ports stay free of blanket, hand and clothes.', {
      setting: settingText(v),
    }),
  MASK_PORTS_OPEN: () => say('Side ports of the mask open, nothing taped over them.'),
  WAY_OUT_OF_MASK: () => say('The way out is open and never capped: front port of the mask.'),
  WAY_OUT_OF_T: () => say('The way out is open and never capped: far end of the T-piece.'),
  BOX_OPEN: () =>
    say('Box whole, lid in place, gap round the neck free; oxygen analyser calibrated.'),
  SUCTION_READY: () => say('Suction tested; catheters of the right size at the bed.'),
  SPARE_TUBES: () =>
    say('At the bed: spare tube of the same size and one smaller, spare inner cannula, tapes.'),
  STOMA_SPARE: () =>
    say('At the bed: spare tube for the stoma, and a small mask that seals over it for the bag.'),
}

export const STEP_TEXTS: RemarkTexts = {
  ...PREPARE_STEP_TEXTS,
  ...CHECK_STEP_TEXTS,
  ...FIT_STEP_TEXTS,
  ...VERIFY_STEP_TEXTS,
  ...SHIFT_STEP_TEXTS,
  ...GAS_FAILS_STEP_TEXTS,
}
