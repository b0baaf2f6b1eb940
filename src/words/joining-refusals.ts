// Why a chain is refused, and what mends it, in words. Leaves out remarks on sound chains.
import type { Refusal, RefusalCode } from '../joining/refusal.ts'
import { END_NAMES } from './joining-names.ts'
import { flowText, fractionText, numberText } from './number-text.ts'
import { SIZE_NAMES } from './names.ts'
import { nameIn, numberOf, textOf } from './remark-value.ts'
import type { RemarkText, RemarkValues } from './remark-value.ts'
import { say, translated } from './say.ts'

const PRESSURE_STEP_KPA = 0.1
const LENGTH_STEP_M = 0.1

function kpa(values: RemarkValues, key: string): string {
  return numberText(numberOf(values, key), PRESSURE_STEP_KPA)
}

function end(values: RemarkValues, key: string): string {
  return nameIn(END_NAMES, textOf(values, key))
}

const part = (v: RemarkValues): string => translated(textOf(v, 'part'))
const later = (v: RemarkValues): string => translated(textOf(v, 'after'))
const flow = (v: RemarkValues): string => flowText(numberOf(v, 'flowLpm'))
const limit = (v: RemarkValues): string => flowText(numberOf(v, 'limitLpm'))

export const REFUSAL_TEXTS: Readonly<Record<RefusalCode, RemarkText>> = {
  ENDS_DO_NOT_MATE: (v) =>
    say('{from} does not fit {to}', { from: end(v, 'from'), to: end(v, 'to') }),
  ENDS_MEET_NOWHERE: () => say('no parts lead from an outlet to this interface'),
  NEVER_FOR_GAS: (v) =>
    say('{from} on {to}: gas must never meet this line', {
      from: end(v, 'from'),
      to: end(v, 'to'),
    }),
  INLET_NOT_FED: (v) => say('nothing feeds {part}', { part: part(v) }),
  INLET_FED_TWICE: (v) => say('two parts feed one end of {part}', { part: part(v) }),
  OUTLET_LEADS_NOWHERE: (v) => say('{part} leads nowhere', { part: part(v) }),
  OUTLET_SPLIT: (v) => say('the flow of {part} is split', { part: part(v) }),
  NO_AIR_PORTS: (v) => say('a collar sits on air ports, and {part} has none', { part: part(v) }),
  SPLIT_TO_TWO_PATIENTS: (v) =>
    say('{part} feeds two patients: nobody knows what each one gets', { part: part(v) }),
  NO_PATIENT: () => say('the chain does not reach the patient'),
  NO_GAS_OUTLET: () => say('no gas comes to the patient'),
  GOES_IN_A_CIRCLE: () => say('the parts feed each other in a circle'),
  AIR_INSTEAD_OF_OXYGEN: () => say('the chain begins at an air outlet: the patient gets air'),
  GAS_NOT_FOR_PATIENT: () => say('the chain begins at an outlet of another gas'),
  GASES_MIXED_BY_Y: () =>
    say(
      'a Y-piece joins air and oxygen: the mixture is not known and one gas can push the other back',
    ),
  COLLAR_FED_WITH_OXYGEN: () =>
    say('the collar is fed with oxygen: the valve would give more than is set'),
  WRONG_GAS_AT_MIXER: (v) => say('an inlet of {part} gets the wrong gas', { part: part(v) }),
  CLOSED_CIRCUIT: () =>
    say('closed circuit: gas keeps flowing and neither it nor breath can leave'),
  CLOSED_CIRCUIT_CAPPED: (v) =>
    say('closed circuit: the open arm of {part} is capped', { part: part(v) }),
  OPEN_BEFORE_PATIENT: (v) =>
    say('{part} is open with a hose between it and the patient: gas is lost there', {
      part: part(v),
    }),
  NO_EVEN_MODE: (v) =>
    say('every mode named on {part} gives or supports breaths: none streams evenly', {
      part: part(v),
    }),
  MODE_CYCLES_PRESSURE: (v) =>
    say('{part} is set to a mode that gives breaths: only constant flow may feed this chain', {
      part: part(v),
    }),
  FLOW_NOT_ON_METER: (v) => say('{part} has no mark at {flow}', { part: part(v), flow: flow(v) }),
  FRACTION_NOT_ON_SCALE: (v) =>
    say('{part} cannot be set to {fraction}', {
      part: part(v),
      fraction: fractionText(numberOf(v, 'o2Fraction')),
    }),
  FLOW_BELOW_RATED: (v) =>
    say('{part} gets {flow}, less than its {limit}', {
      part: part(v),
      flow: flow(v),
      limit: limit(v),
    }),
  FLOW_ABOVE_RATED: (v) =>
    say('{part} gets {flow}, more than its {limit}', {
      part: part(v),
      flow: flow(v),
      limit: limit(v),
    }),
  TUBE_ABOVE_ITS_FLOW: (v) =>
    say('{part} would need {pressure} kPa for {flow}; a pushed-on tube holds about {limit} kPa', {
      part: part(v),
      flow: flow(v),
      pressure: kpa(v, 'pressureKpa'),
      limit: kpa(v, 'limitKpa'),
    }),
  TUBE_ABOVE_ITS_LABEL: (v) =>
    say('{part} may carry {limit} by its label; {flow} would need {pressure} kPa', {
      part: part(v),
      flow: flow(v),
      pressure: kpa(v, 'pressureKpa'),
      limit: limit(v),
    }),
  DRIVE_ABOVE_JET: (v) =>
    say('a jet of {part} may be driven with {limit}, not {flow}', {
      part: part(v),
      limit: limit(v),
      flow: flow(v),
    }),
  RELIEF_VALVE_OPENS: (v) =>
    say('{part} opens its relief valve: {pressure} kPa behind it, it opens at {limit} kPa', {
      part: part(v),
      pressure: kpa(v, 'pressureKpa'),
      limit: kpa(v, 'limitKpa'),
    }),
  SOURCE_CANNOT_PUSH: (v) =>
    say('{part} would have to push with {pressure} kPa; it gives at most {limit} kPa', {
      part: part(v),
      pressure: kpa(v, 'pressureKpa'),
      limit: kpa(v, 'limitKpa'),
    }),
  DOES_NOT_REACH: (v) =>
    say('{length} m of tube do not reach the bed; at least {needed} m', {
      length: numberText(numberOf(v, 'lengthM'), LENGTH_STEP_M),
      needed: numberText(numberOf(v, 'neededM'), LENGTH_STEP_M),
    }),
  WRONG_SIZE: (v) =>
    say('{part} in size {size} is not for this patient', {
      part: part(v),
      size: nameIn(SIZE_NAMES, textOf(v, 'size')),
    }),
  OPENING_NOT_IN_USE: (v) =>
    say('gas at this place does not reach the lungs: {place}', { place: end(v, 'end') }),
  EXCHANGER_WORN_WITH_HUMIDIFIER: () =>
    say('the patient wears an exchanger: take it off or leave the humidifier out, never both'),
  DRY_GAS_TO_NECK: () => say('dry gas past mouth and nose: it must be moistened'),
  BUBBLE_BEFORE_JET: (v) =>
    say('bubble humidifier before {after}: the jet holds it back and its relief valve opens', {
      after: later(v),
    }),
  BUBBLE_BEFORE_RESERVOIR: (v) =>
    say(
      'bubble humidifier before {after}: it cannot pass the flow, and water gets into bag and valve',
      {
        after: later(v),
      },
    ),
  EXCHANGER_WITH_HUMIDIFIER: () =>
    say('exchanger after a humidifier: it fills with water and blocks'),
  TWO_HUMIDIFIERS: () => say('two humidifiers in one line'),
  FILTER_GETS_WET: (v) =>
    say('{after} stands after the humidifier and gets wet', { after: later(v) }),
  TWO_Y_PIECES: () => say('two Y-pieces in one line'),
  VENTILATOR_WITHOUT_FILTER: (v) =>
    say('{part} without a filter on its inspiratory limb', { part: part(v) }),
  HIGH_FLOW_WITHOUT_HEATED: (v) => say('{part} without a heated humidifier', { part: part(v) }),
}

/** What to do instead. */
export const MEND_TEXTS: Readonly<Record<RefusalCode, () => string>> = {
  ENDS_DO_NOT_MATE: () => say('put an adapter between, or take parts whose ends fit'),
  ENDS_MEET_NOWHERE: () => say('choose another source or interface'),
  NEVER_FOR_GAS: () => say('take it off at once and trace every line to where it begins'),
  INLET_NOT_FED: () => say('join what feeds it'),
  INLET_FED_TWICE: () => say('leave one line'),
  OUTLET_LEADS_NOWHERE: () => say('join it or take it out'),
  OUTLET_SPLIT: () => say('one line from each outlet'),
  NO_AIR_PORTS: () => say('choose another humidifier, or an air-entrainment mask'),
  SPLIT_TO_TWO_PATIENTS: () => say('a flowmeter for each patient'),
  NO_PATIENT: () => say('join the interface last'),
  NO_GAS_OUTLET: () => say('begin at an oxygen outlet'),
  GOES_IN_A_CIRCLE: () => say('take it apart and begin at the outlet'),
  AIR_INSTEAD_OF_OXYGEN: () =>
    say('take an oxygen flowmeter at an oxygen outlet; cap or remove the air flowmeter'),
  GAS_NOT_FOR_PATIENT: () => say('begin at an oxygen outlet'),
  GASES_MIXED_BY_Y: () => say('mix with a blender or an entrainment valve'),
  COLLAR_FED_WITH_OXYGEN: () => say('feed the collar with air'),
  WRONG_GAS_AT_MIXER: () => say('each inlet to its own outlet'),
  CLOSED_CIRCUIT: () => say('put an open T-piece or an exhalation port at the patient'),
  CLOSED_CIRCUIT_CAPPED: () => say('take the cap off'),
  OPEN_BEFORE_PATIENT: () => say('move it to the patient’s end of the hose'),
  NO_EVEN_MODE: () => say('take a flowmeter or blender'),
  MODE_CYCLES_PRESSURE: () => say('set constant flow, or take a flowmeter or blender'),
  FLOW_NOT_ON_METER: () => say('choose a mark, or another meter'),
  FRACTION_NOT_ON_SCALE: () => say('choose a setting that is printed'),
  FLOW_BELOW_RATED: () => say('raise the flow, or take another part'),
  FLOW_ABOVE_RATED: () => say('lower the flow, or take another part'),
  TUBE_ABOVE_ITS_FLOW: () => say('take a shorter or wider tube, or lower the flow'),
  TUBE_ABOVE_ITS_LABEL: () => say('take a shorter or wider tube, or lower the flow'),
  DRIVE_ABOVE_JET: () => say('lower the flow, or take two jets'),
  RELIEF_VALVE_OPENS: () => say('take a shorter or wider tube, or lower the flow'),
  SOURCE_CANNOT_PUSH: () => say('take a shorter or wider tube, or lower the flow'),
  DOES_NOT_REACH: () => say('take a longer tube'),
  WRONG_SIZE: () => say('take the size for age and weight'),
  OPENING_NOT_IN_USE: () => say('give oxygen where the patient breathes'),
  EXCHANGER_WORN_WITH_HUMIDIFIER: () => say('one of the two'),
  DRY_GAS_TO_NECK: () => say('heated humidifier, or an exchanger'),
  BUBBLE_BEFORE_JET: () => say('leave the bubble humidifier out; moisten with a collar'),
  BUBBLE_BEFORE_RESERVOIR: () => say('leave the bubble humidifier out'),
  EXCHANGER_WITH_HUMIDIFIER: () => say('one of the two'),
  TWO_HUMIDIFIERS: () => say('leave one'),
  FILTER_GETS_WET: () => say('put the filter before the humidifier'),
  TWO_Y_PIECES: () => say('leave one'),
  VENTILATOR_WITHOUT_FILTER: () => say('put a filter on the limb, before the humidifier'),
  HIGH_FLOW_WITHOUT_HEATED: () => say('put a heated humidifier in the line'),
}

export function refusalText(refusal: Pick<Refusal, 'code' | 'values'>): string {
  return REFUSAL_TEXTS[refusal.code](refusal.values)
}

export function mendText(refusal: Pick<Refusal, 'code'>): string {
  return MEND_TEXTS[refusal.code]()
}
