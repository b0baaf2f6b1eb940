// Texts of remarks on a transfer, its scanner leg, its checks, and on concentrators and liquid oxygen. Leaves out cylinders and the ward.
import { numberText, percentText } from './number-text.ts'
import { numberOf } from './remark-value.ts'
import { say } from './say.ts'
import type { SupplyTexts } from './supply-cylinder-texts.ts'
import {
  airPressureText,
  drawText,
  gasVolumeText,
  minutesLeftText,
  smallGasPressureText,
} from './supply-value.ts'
import type { GasUnits } from './supply-value.ts'

/** Weather and cabin about a model atmosphere (common practice). */
const CABIN_ERROR_KPA = 3

export const TRANSFER_TEXTS = {
  LOCAL_POLICY_FIRST: () => say('Local policy on transfers and reserves comes first.'),
  MOVED_TO_CYLINDER: () =>
    say(
      'On the way the flow comes from a cylinder’s regulator: set it, feel it, then leave the wall.',
    ),
  STEP_NOT_ON_REGULATOR: () =>
    say(
      'No cylinder regulator on the shelf has this step: try the nearest one at the bed, before leaving.',
    ),
  NO_HIGHER_STEP: () =>
    say('The source has no higher step: if more is needed on the way, another set-up is.'),
  WORST_CASE_NOT_COVERED: (v, units: GasUnits) =>
    say('If the flow must rise to the next step for the whole way, {missing} are missing.', {
      missing: gasVolumeText(numberOf(v, 'missingL'), units),
    }),
  RESERVE_NOT_COVERED: (v, units: GasUnits) =>
    say('The reserve is not covered: {missing} are missing.', {
      missing: gasVolumeText(numberOf(v, 'missingL'), units),
    }),
  RUNS_OUT_ON_THE_WAY: (v, units: GasUnits) =>
    say('Oxygen runs out on the way: {missing} are missing. Do not leave like this.', {
      missing: gasVolumeText(numberOf(v, 'missingL'), units),
    }),
  PLACE_SUPPLY_TO_CHECK: () =>
    say(
      'An outlet on this leg is to feed the set-up: check that it works before giving up the cylinder.',
    ),
  CYLINDER_MAY_ENTER: () =>
    say(
      'Cylinder, regulator and flowmeter are MR conditional: they may go in within the limits printed on them. Staff of the scanner decide.',
    ),
  GAS_STAYS_OUTSIDE: () =>
    say(
      'The cylinder stays outside the scanner room and a long tube leads gas in: cylinder, regulator and flowmeter are not all MR conditional.',
    ),
  TUBE_LENGTH_UNKNOWN: () => say('The length of the tube to the scanner is not given; it counts.'),
  TUBE_FROM_CHAIN: (v) =>
    say(
      'Counted with the {length} m of tube of the chain, {bore} mm wide. Where a longer one leads into the scanner room, type its length.',
      {
        length: numberText(numberOf(v, 'lengthM'), 0.1),
        bore: numberText(numberOf(v, 'boreMm'), 0.1),
      },
    ),
  TUBE_DELAYS_GAS: (v) =>
    say('Through {length} m of tube the gas arrives {minutes} min after it is set.', {
      length: numberText(numberOf(v, 'lengthM'), 0.5),
      minutes: numberText(numberOf(v, 'delayMinutes'), 0.1),
    }),
  TUBE_MAKES_METER_READ_LOW: (v, units: GasUnits) =>
    say(
      'Against {length} m of tube ({pressure}) this uncompensated meter reads {share} low: more flows than it shows.',
      {
        length: numberText(numberOf(v, 'lengthM'), 0.5),
        pressure: smallGasPressureText(numberOf(v, 'dropKpa'), units),
        share: percentText(numberOf(v, 'readsLowShare')),
      },
    ),
  THIN_AIR: (v) =>
    say(
      'At {pressure} the same fraction gives {share} of the oxygen pressure at the start: expect a lower saturation and set the flow anew.',
      {
        pressure: airPressureText(numberOf(v, 'barometricKpa')),
        share: percentText(numberOf(v, 'inspiredPo2Share')),
      },
    ),
  DENSER_AIR: (v) =>
    say(
      'At {pressure} the same fraction gives {share} of the oxygen pressure at the start: the flow may be too much there; set it anew.',
      {
        pressure: airPressureText(numberOf(v, 'barometricKpa')),
        share: percentText(numberOf(v, 'inspiredPo2Share')),
      },
    ),
  FRACTION_ON_THE_WAY_NOT_MODELLED: () =>
    say('What is inhaled there is not modelled: no case of the patient was given.'),
  CABIN_PRESSURE_ASSUMED: (v) =>
    say(
      'Pressure at {altitude} m from a model atmosphere; weather and cabin change it by about {error}.',
      {
        altitude: numberText(numberOf(v, 'altitudeM'), 10),
        error: airPressureText(CABIN_ERROR_KPA),
      },
    ),
  CONCENTRATOR_NEEDS_POWER: () =>
    say(
      'The concentrator draws nothing from a cylinder, but needs power: a cylinder must go along.',
    ),
  CHECK_VALVE_OPEN: () => say('Valve open: a closed one gives nothing, with a full gauge.'),
  CHECK_GAUGE_READ: () => say('Gauge read with the valve open, and written down.'),
  CHECK_FLOW_FELT: () =>
    say('Flow set and felt at the end of the tube; the bag of a reservoir mask full.'),
  CHECK_SPARE: () => say('Spare cylinder, key or tool, and seal go along.'),
  CHECK_CHANGE_AT: () =>
    say('Times to change and of empty written on the sheet and said to the crew.'),
  CHECK_SECURED: () => say('Cylinder secured in its holder, not on the bed between the legs.'),
  CHECK_FIRE: () =>
    say(
      'No smoking, flame, oil or grease; a set-up laid aside is turned off, never left under bedding.',
    ),
  CHECK_OXIMETER: () =>
    say('Oximeter on and seen on the whole way; it may be late and wrong in the cold.'),
  CHECK_BAG_AND_MASK: () => say('Bag and mask, and suction, within reach.'),
  CHECK_MR_ITEMS: () => say('Everything on and near the patient cleared for the scanner room.'),
  PURITY_BY_CLASS: (v) =>
    say(
      'Purity as of concentrators in general, {low} to {high}; the label’s own table is better.',
      {
        low: percentText(numberOf(v, 'lowO2Fraction')),
        high: percentText(numberOf(v, 'highO2Fraction')),
      },
    ),
  ABOVE_RATED_FLOW: (v) =>
    say(
      'Above its rated flow of {rated} purity falls, and nobody measured by how much: use another source.',
      {
        rated: drawText(numberOf(v, 'ratedFlowLpm')),
      },
    ),
  STILL_WARMING_UP: (v) =>
    say('Still warming up: purity is reached in {minutes}. Another source until then.', {
      minutes: minutesLeftText(Math.ceil(numberOf(v, 'minutesLeft'))),
    }),
  WARM_UP_NOT_STATED: () => say('How long it takes to warm up is not given: look on its label.'),
  ALTITUDE_ABOVE_RATING: (v) =>
    say('Above its rated altitude of {altitude} m its purity is not known.', {
      altitude: numberText(numberOf(v, 'ratedAltitudeM'), 10),
    }),
  OUTSIDE_PURITY_TABLE: (v) =>
    say('The table of its label ends at {flow}; nothing is guessed beyond.', {
      flow: drawText(numberOf(v, 'flowLpm')),
    }),
  PULSE_IS_NO_FLOW: () =>
    say(
      'A pulse setting is a number on a dial, no flow in L/min, and differs between devices: it is not converted. Titrate on the device with an oximeter.',
    ),
  EVAPORATION_NOT_STATED: () =>
    say(
      'Loss by evaporation is not given: the time shown ends earlier. Look on the vessel’s label.',
    ),
  EVAPORATION_RULES: (v) =>
    say(
      'At this flow more evaporates by itself ({loss}) than is drawn: the vessel empties in {time} in any case.',
      {
        loss: drawText(numberOf(v, 'evaporationLpm')),
        time: minutesLeftText(numberOf(v, 'minutes')),
      },
    ),
  LIQUID_BURNS_SKIN: () => say('Liquid oxygen burns by cold: gloves, upright, never covered.'),
} satisfies SupplyTexts
