// Texts of remarks on one cylinder, the draw, the store and the choice. Leaves out the way and the ward.
import type { SupplyCode } from '../supply/supply-remark.ts'
import { HANDBOOK_ROWS, type HandbookCountry } from '../supply/handbook.ts'
import { flowText, numberText, percentText } from './number-text.ts'
import { numberOf, textOf, type RemarkValues } from './remark-value.ts'
import { say } from './say.ts'
import { countryName } from './supply-names.ts'
import { drawText, gasPressureText, gasVolumeText, minutesLeftText } from './supply-value.ts'
import type { GasUnits } from './supply-value.ts'

export type SupplyText = (values: RemarkValues, units: GasUnits) => string
export type SupplyTexts = Readonly<Partial<Record<SupplyCode, SupplyText>>>

export const CYLINDER_TEXTS = {
  OPEN_THE_VALVE: () =>
    say(
      'The valve is closed: nothing flows, whatever the gauge shows. Open it, then set the flow and feel it.',
    ),
  AT_OR_BELOW_FLOOR: (v, units: GasUnits) =>
    say('At {gauge} the cylinder has reached the {left} to be left in it: change it now.', {
      gauge: gasPressureText(numberOf(v, 'gaugeKpa'), units),
      left: gasPressureText(numberOf(v, 'leftGaugeKpa'), units),
    }),
  NOTHING_DRAWN: () => say('Nothing is drawn, so it does not run out.'),
  EQUATION_EXTRAPOLATED: (v) =>
    say(
      'Extrapolated: the gas equation was fitted up to 27 °C, the cylinder is at {temperature} °C.',
      {
        temperature: numberText(numberOf(v, 'temperatureC'), 1),
      },
    ),
  FILLED_WARM_USED_COLD: (v, units: GasUnits) =>
    say(
      'Read at {read} °C and used at {used} °C: the gauge will fall to about {gauge} before any gas is drawn.',
      {
        read: numberText(numberOf(v, 'readAtC'), 1),
        used: numberText(numberOf(v, 'usedAtC'), 1),
        gauge: gasPressureText(numberOf(v, 'gaugeAtUseKpa'), units),
      },
    ),
  GAUGE_MAY_READ_HIGH: (v, units: GasUnits) =>
    say('The gauge may be wrong by {error}: the earliest time counts it as reading high.', {
      error: gasPressureText(numberOf(v, 'gaugeErrorKpa'), units),
    }),
  HANDBOOK_DIFFERS: (v) => {
    const share = numberOf(v, 'differenceShare')
    const country = countryOf(textOf(v, 'country'))
    return say('{country} handbook, its size {letter}: {minutes}, {share} {direction} than ours.', {
      country: country === undefined ? textOf(v, 'country') : countryName(country),
      letter: textOf(v, 'letter'),
      minutes: minutesLeftText(numberOf(v, 'minutes')),
      share: percentText(Math.abs(share)),
      direction: share < 0 ? say('shorter') : say('longer'),
    })
  },
  HANDBOOK_HAS_NO_SUCH_SIZE: () =>
    say(
      'No handbook size we hold lies near this one; letters mean other sizes in other countries.',
    ),
  BIAS_FLOW_UNKNOWN: () =>
    say(
      'The ventilator’s bias flow is not given: it really draws more than shown here. Read it on the machine.',
    ),
  BIAS_FLOW_NONE_BY_SHELF: () =>
    say('No bias flow is counted: the shelf says that this machine draws none besides.'),
  FLUSH_DRAW_UNCERTAIN: (v) =>
    say('Flush is not metered: it may draw {low} to {high}.', {
      low: drawText(numberOf(v, 'lowLpm')),
      high: drawText(numberOf(v, 'highLpm')),
    }),
  BLEND_NEEDS_AIR: (v) =>
    say(
      'Only the oxygen share of the blend comes from the cylinder; the rest, {air}, must come from air under pressure or a turbine.',
      {
        air: drawText(numberOf(v, 'airLpm')),
      },
    ),
  NONE_LEFT: () => say('none in store'),
  OTHER_PLACE: (v) => say('stands elsewhere: {place}', { place: textOf(v, 'place') }),
  NOT_MR_CONDITIONAL: () => say('not for the scanner room: steel is pulled into the magnet'),
  MR_SAFETY_UNKNOWN: () => say('scanner safety not known, so not for the scanner room'),
  FLOW_ABOVE_REGULATOR: (v) =>
    say('its regulator gives at most {most}, {wanted} may be wanted', {
      most: flowText(numberOf(v, 'flowLpmMax')),
      wanted: drawText(numberOf(v, 'drawLpm')),
    }),
  NOTHING_USABLE: () => say('nothing usable in it'),
  STORE_TOO_SMALL: (v, units: GasUnits) =>
    say(
      'The store lacks {missing}: borrow a cylinder, shorten the way, or find a supply on it before leaving.',
      {
        missing: gasVolumeText(numberOf(v, 'missingL'), units),
      },
    ),
  MANY_CYLINDERS: (v) =>
    say('{count} cylinders are no load to carry: look for a supply on the way.', {
      count: numberText(numberOf(v, 'count'), 1),
    }),
} satisfies SupplyTexts

function countryOf(text: string): HandbookCountry | undefined {
  return HANDBOOK_ROWS.find(({ country }) => country === text)?.country
}
