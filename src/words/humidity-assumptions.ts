// What the water content rests on, and what is required of it, in words. Leaves out the rules.
import { numberOf, textOf } from './remark-value.ts'
import type { RemarkTexts, RemarkValues } from './remark-value.ts'
import { numberText, percentText, plainNumberText, withUnit } from './number-text.ts'
import { say } from './say.ts'

export const HUMIDITY_ASSUMPTION_TEXTS: RemarkTexts = {
  ROOM_TEMPERATURE_ASSUMED: (v) => say('room temperature {range}', { range: rangeIn(v, 1) }),
  ROOM_HUMIDITY_ASSUMED: (v) => say('relative humidity of the room {range}', { range: shareIn(v) }),
  BUBBLE_OUTPUT_MEASURED_ON_OTHERS: (v) =>
    say('bubble bottle as measured on four others: {range} of saturation at its own water', {
      range: shareIn(v),
    }),
  BUBBLE_WATER_COOLS: (v) =>
    say('the water of a bottle cools as it evaporates; heat taken from the room {range}', {
      range: rangeIn(v, 0.1),
    }),
  PASS_OVER_OUTPUT_ASSUMED: (v) =>
    say('gas over unheated water takes up {range} of saturation', { range: shareIn(v) }),
  HEATER_SETTING_ASSUMED: (v) =>
    say('heater setting not given: gas leaves it at {range}', { range: rangeIn(v, 1) }),
  CHAMBER_REACHES_SETTING: (v) =>
    say('the chamber reaches its setting within {range}', { range: rangeIn(v, 0.1) }),
  NEBULISER_WATER_FROM_MEMORY: (v) =>
    say('water from the nebuliser, vapour and droplets together: {range}', {
      range: rangeIn(v, 1),
    }),
  COLLAR_EFFECT_ASSUMED: (v) =>
    say('a collar brings the air drawn in {range} of the way to saturation', {
      range: shareIn(v),
    }),
  HOSE_HEAT_ASSUMED: (v) =>
    say('heat lost by a hose {range}: an assumption that nothing measured judges', {
      range: rangeIn(v, 1),
    }),
  HEATED_WALL_ASSUMED: (v) =>
    say('the heated hose runs {range} above the chamber', { range: rangeIn(v, 0.1) }),
  DROPLET_LOSS_ASSUMED: (v) =>
    say('{range} of the droplets settle in the hose', { range: shareIn(v) }),
  EXCHANGER_AS_MEASURED_ON_OTHERS: (v) =>
    say('exchanger as 71 others measured: {range}', { range: rangeIn(v, 1) }),
  EXCHANGER_LABEL_OVERSTATES: (v) =>
    say('labels of exchangers overstate by {range}: taken off the printed figure', {
      range: rangeIn(v, 1),
    }),
  EXCHANGER_RETURN_ASSUMED: (v) =>
    say('{range} of the breath comes back through the exchanger, the rest past the tube', {
      range: shareIn(v),
    }),
  LABEL_OUTPUT_USED: (v) =>
    say('output as printed on the label, taken at {range} of it', { range: shareIn(v) }),
  PLACE_OF_SHELF: (v) =>
    say('the case gives no place: {altitude} m assumed, where the shelf stands', {
      altitude: plainNumberText(numberOf(v, 'altitudeM')),
    }),
  PLACE_AT_SEA_LEVEL: () => say('neither case nor shelf gives a place: sea level assumed'),
  SOURCE_GAS_DRY: () => say('gas from outlet, cylinder or concentrator brings no water'),
  WATER_VOLUME_ASSUMED: () =>
    say('the volume of water is not on the shelf row: usual sizes are assumed'),
  ROOM_AIR_BESIDE_NOT_COUNTED: () => say('room air drawn in beside the stream is not counted'),
  HOSES_ASSUMED: (v) =>
    say('hose of {length} m assumed, as no chain is chosen', {
      length: numberText(numberOf(v, 'lengthM'), 0.1),
    }),
  HUMIDITY_NOT_CHECKED_AT_BEDSIDE: () =>
    say('worked out, not measured at this bed: look at secretions and listen to the chest'),
}

/** Why there is no verdict. */
export const NOT_MEASURED_TEXTS: RemarkTexts = {
  NEBULISER_NOT_MEASURED: () => say('no measurement judges the water of a jet nebuliser'),
  PASS_OVER_NOT_MEASURED: () => say('no measurement judges what gas takes up over unheated water'),
  COLLAR_NOT_MEASURED: () => say('no measurement judges what a collar adds'),
  EXCHANGER_BESIDE_NOT_MEASURED: () =>
    say('no measurement judges an exchanger where breath passes beside it'),
}

export const REQUIREMENT_TEXTS: RemarkTexts = {
  BYPASSED_ACTIVE: () => say('upper airway bypassed'),
  BYPASSED_EXCHANGER: () => say('exchanger on a bypassed airway'),
  HIGH_FLOW_NOSE: () => say('high flow into the nose'),
  MORE_THAN_LOW_FLOW: () =>
    say('more than low flow into nose or mouth; guidelines differ on whether it is needed'),
  BEHIND_THE_NOSE: () => say('gas enters behind the nose; local policy counts'),
  MOSTLY_ROOM_AIR: () => say('mostly room air, which brings its own water: nothing required'),
  NOTHING_REQUIRED: () => say('low flow into a working nose: nothing required'),
}

function rangeIn(values: RemarkValues, step: number): string {
  const at = (key: string): string => numberText(numberOf(values, key), step)
  const unit = textOf(values, 'unit')
  return withUnit(say('{low} to {high}', { low: at('low'), high: at('high') }), unit)
}

function shareIn(values: RemarkValues): string {
  const at = (key: string): string => percentText(numberOf(values, key))
  return say('{low} to {high}', { low: at('low'), high: at('high') })
}
