// Texts of remarks on the demand of a ward, on a room and on stock. Leaves out single beds.
import { flowText, numberText, percentText } from './number-text.ts'
import { numberOf, textOf } from './remark-value.ts'
import { say } from './say.ts'
import type { SupplyTexts } from './supply-cylinder-texts.ts'
import { drawText, minutesLeftText } from './supply-value.ts'

export const WARD_TEXTS = {
  DIVERSITY_FROM_MEMORY: () =>
    say(
      'The design formula is from memory and was not seen in the standard: compare it with your own copy.',
    ),
  DEMAND_ABOVE_FORMULA: (v) =>
    say(
      'The ward draws {drawn}, more than the {design} the pipework was designed for by that formula.',
      {
        drawn: drawText(numberOf(v, 'drawnLpm')),
        design: drawText(numberOf(v, 'designLpm')),
      },
    ),
  DEMAND_ABOVE_BRANCH: (v) =>
    say(
      'The ward draws {drawn}, more than its branch of the pipeline carries ({limit}): pressure falls at every bed.',
      {
        drawn: drawText(numberOf(v, 'drawnLpm')),
        limit: drawText(numberOf(v, 'limitLpm')),
      },
    ),
  BRANCH_LIMIT_UNKNOWN: () =>
    say(
      'What this branch of the pipeline carries is not in the file: a ward can starve while the source has plenty.',
    ),
  FLOW_ABOVE_OUTLET: (v) =>
    say('Bed {bed} draws {drawn}, more than the {limit} of one outlet.', {
      bed: textOf(v, 'bed'),
      drawn: drawText(numberOf(v, 'drawnLpm')),
      limit: drawText(numberOf(v, 'limitLpm')),
    }),
  OUTLETS_SHORT: (v) =>
    say('Bed {bed} needs {needed} oxygen outlets and has {has}.', {
      bed: textOf(v, 'bed'),
      needed: numberText(numberOf(v, 'needed'), 1),
      has: numberText(numberOf(v, 'has'), 1),
    }),
  AIR_OUTLETS_SHORT: (v) =>
    say('Bed {bed} needs {needed} air outlets and has {has}.', {
      bed: textOf(v, 'bed'),
      needed: numberText(numberOf(v, 'needed'), 1),
      has: numberText(numberOf(v, 'has'), 1),
    }),
  OUTLETS_NOT_STATED: () => say('How many outlets each bed has is not in the file.'),
  BEDS_NOT_COUNTED: (v) =>
    say('The file does not say what is on at bed {beds}: its draw is not counted.', {
      beds: textOf(v, 'beds'),
    }),
  AUTONOMY_UNKNOWN: () =>
    say('What stands behind the pipeline is not in the file: no hours are given.'),
  SIMULATION_ASSUMES: (v) =>
    say(
      'Simulated: meters err; each patient is {away} of the time away or off, {up} one step up, {down} one step down. These shares are assumptions, to be changed.',
      {
        away: percentText(numberOf(v, 'awayShare')),
        up: percentText(numberOf(v, 'upShare')),
        down: percentText(numberOf(v, 'downShare')),
      },
    ),
  ONE_MORE_BREAKS_FORMULA: (v) =>
    say('One more such patient lifts the draw to {drawn}, above the design flow of {design}.', {
      drawn: drawText(numberOf(v, 'drawnLpm')),
      design: drawText(numberOf(v, 'designLpm')),
    }),
  ONE_MORE_BREAKS_BRANCH: (v) =>
    say(
      'One more such patient lifts the draw to {drawn}, above what the branch carries ({limit}).',
      {
        drawn: drawText(numberOf(v, 'drawnLpm')),
        limit: drawText(numberOf(v, 'limitLpm')),
      },
    ),
  SUPPLY_WARD_INVENTED: () => say('Demo ward: hospital, beds and every figure are invented.'),
  ROOM_IS_A_MEAN: () =>
    say('A mean over the whole space, well mixed, with nothing taken up by people.'),
  NEAR_FIELD_HIGHER: () =>
    say(
      'Within half a metre of a mask, under bedding and in curtains it is higher, whatever the mean: no spark or flame there.',
    ),
  ABOVE_ENRICHED_LIMIT: (v) =>
    say(
      'It settles at {steady}, above the limit of {limit}: more outside air, less flow, or fewer patients here.',
      {
        steady: percentText(numberOf(v, 'steadyO2Fraction'), 0.1),
        limit: percentText(numberOf(v, 'limitO2Fraction'), 0.1),
      },
    ),
  REACHES_LIMIT: (v) =>
    say('It reaches {limit} after {minutes}.', {
      limit: percentText(numberOf(v, 'limitO2Fraction'), 0.1),
      minutes: minutesLeftText(numberOf(v, 'minutes')),
    }),
  STAYS_BELOW_LIMIT: (v) =>
    say('The mean stays below {limit}.', {
      limit: percentText(numberOf(v, 'limitO2Fraction'), 0.1),
    }),
  ASIDE_RUNNING: (v) =>
    say('A set-up laid aside with {flow} running gives it all to bed and room: turn it off.', {
      flow: flowText(numberOf(v, 'flowLpm'), 0.1),
    }),
  NO_VENTILATION: () => say('No air is changed: the share only rises.'),
  ROOM_DEFAULTS_ASSUMED: () =>
    say('Volume and air changes are examples of such a place, not measured: type your own.'),
  REORDER_NOW: (v) =>
    say('At or below the reorder point of {point}: order now.', {
      point: numberText(numberOf(v, 'reorderPoint'), 1),
    }),
  OUT_BEFORE_DELIVERY: (v) =>
    say('Runs out in {days} days, before a delivery ordered today comes: borrow.', {
      days: numberText(numberOf(v, 'daysLeft'), 0.1),
    }),
  STOCK_FORMULA: (v) =>
    say(
      'Reorder point: smallest stock that covers the use of {days} days in {level} of cases, days independent.',
      {
        days: numberText(numberOf(v, 'leadTimeDays'), 0.5),
        level: percentText(numberOf(v, 'serviceLevel'), 0.1),
      },
    ),
  NO_USE_SEEN: () => say('No use is recorded, so no day is given on which it runs out.'),
} satisfies SupplyTexts
