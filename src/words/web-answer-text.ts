// The answer as the web page puts it: rank, the one number, one sentence why. Leaves out layout and what the command line says.
import type { Case, Goal } from '../patient/case.ts'
import { airwayKind } from '../physiology/airway-state.ts'
import type { Plan, RankedSetUp } from '../planning/plan-types.ts'
import { printedText } from './breath-text.ts'
import { goalText } from './goal-text.ts'
import { AIRWAY_NAMES, BREATHING_NAMES, HUMIDIFICATION_NAMES } from './names.ts'
import {
  chanceText,
  flowText,
  numberText,
  rangeText,
  saturationBandText,
  TIME_WORDS,
} from './number-text.ts'
import { averagesText, holdsUntilText } from './plan-text.ts'
import { ageText, kgText } from './remark-exclusions.ts'
import { reasonText } from './remark-text.ts'
import { setUpOnNowText, setUpShortText, sourceText } from './set-up-text.ts'
import { say } from './say.ts'

export const ANSWER_WORDS = {
  number: say('oxygen fraction really inhaled'),
  scale: say('Scale of the inhaled oxygen fraction, 0.2 to 1'),
  spread: say('for 8 of 10 patients like this one'),
  back: say('Back to the first'),
  nothing: say('No set-up to offer'),
  chance: say('chance in the goal'),
  saturation: say('saturation forecast'),
  holds: say('holds until'),
  oxygen: say('oxygen used'),
  humidity: say('humidity'),
  pressure: say('mean airway pressure'),
} as const

/** "First of 43 set-ups for saturation 94–98 % (acutely ill)" */
export function rankText(ranked: RankedSetUp, plan: Plan): string {
  const { rank } = ranked
  const total = plan.ranked.length
  const goal = goalText(plan.goal)
  return glued(
    ranked === plan.ranked[0]
      ? say('First of {total} set-ups for {goal}', { total, goal })
      : say('Rank {rank} of {total} set-ups for {goal}', { rank, total, goal }),
  )
}

/** The set-up's name, first letter large, without its source. */
export function setUpHeadingText(ranked: RankedSetUp): string {
  return capital(setUpShortText(ranked.setUp))
}

/** "Flowmeter 1–15 L/min, bubble humidifier" */
export function feedText(ranked: RankedSetUp): string {
  const { source, humidification } = ranked.setUp
  const wet = humidification === 'none' ? '' : `, ${HUMIDIFICATION_NAMES[humidification]}`
  return glued(sourceText(source) + wet)
}

/** "Rank 31: nasal cannula, adult, 6 L/min (Flowmeter 1–15 L/min)" */
export function startText(ranked: RankedSetUp): string {
  return glued(
    say('Rank {rank}: {setUp} ({feed})', {
      rank: ranked.rank,
      setUp: setUpShortText(ranked.setUp),
      feed: feedText(ranked),
    }),
  )
}

export function fractionSpreadText(ranked: RankedSetUp): string {
  const { low, high } = ranked.effectiveO2Fraction
  return rangeText({ low, high, step: 0.01 })
}

export function printedBesideText(ranked: RankedSetUp): string {
  return printedText(ranked.printedO2Fraction)
}

/** One sentence: why this one stands where it stands. */
export function whyText(ranked: RankedSetUp, plan: Plan): string {
  if (ranked.whyNotFirst !== null)
    return glued(say('Not first: {reason}.', { reason: reasonText(ranked.whyNotFirst) }))
  return plan.reading.isUsed || plan.goal.kind === 'comfort'
    ? `${capital(whyFirst(ranked, plan))}.`
    : `${capital(whyFirst(ranked, plan))} (${averagesText(plan.reading)}).`
}

function whyFirst(ranked: RankedSetUp, plan: Plan): string {
  const { chance } = ranked
  if (chance === null) return withEquals(withoutChance(plan), plan)
  const inRange = chanceText(chance.inRange)
  const below = chanceText(chance.below)
  const above = chanceText(chance.above)
  const said =
    chance.below >= chance.above
      ? say('the best chance of staying in the goal: {inRange}, with {below} below it', {
          inRange,
          below,
        })
      : say('the best chance of staying in the goal: {inRange}, with {above} above it', {
          inRange,
          above,
        })
  return withEquals(said, plan)
}

function withoutChance(plan: Plan): string {
  return plan.goal.kind === 'comfort'
    ? say('comfort is the goal: no saturation is aimed at and no scores are given')
    : say('it gives the highest inspired fraction; the oximeter is not asked')
}

function withEquals(said: string, plan: Plan): string {
  const count = plan.ranked.filter((one) => one.isEqualToFirst).length - 1
  if (count <= 0) return said
  return say(
    '{said}; {count, plural, one {one more counts} other {{count} more count}} as equal, and each says why it stands after this one',
    { said, count },
  )
}

/** The forecast, and why there is none where there is none. */
export function saturationText(ranked: RankedSetUp, goal: Goal): string {
  if (ranked.saturationPercent !== null) return glued(saturationBandText(ranked.saturationPercent))
  return goal.kind === 'comfort' ? say('no goal here') : say('oximeter put aside')
}

/** "about 65 % in it, about 30 % below, under 5 % above" */
export function chanceSplitText(ranked: RankedSetUp): string {
  const { chance } = ranked
  if (chance === null) return say('no range to land in')
  return glued(
    say('{inRange} in it, {below} below, {above} above', {
      inRange: chanceText(chance.inRange),
      below: chanceText(chance.below),
      above: chanceText(chance.above),
    }),
  )
}

export function holdsText(ranked: RankedSetUp): string {
  return holdsUntilText(ranked.holdsUntil)
}

export function oxygenText(ranked: RankedSetUp): string {
  return flowText(ranked.oxygenUsedLpm, ranked.oxygenUsedLpm < 1 ? 0.01 : 0.1)
}

export function pressureBandText(ranked: RankedSetUp): string | null {
  const band = ranked.meanAirwayPressureCmH2o
  if (band === null) return null
  return rangeText({ low: band.low, high: band.high, step: 0.5, unit: 'cmH₂O' })
}

/** The case in one line: who, how they breathe, what is on. */
export function caseLineText(about: Case): string {
  const { patient, breathing, onNow } = about
  const airway = airwayKind(patient.airway)
  return [
    ageText(patient.ageYears),
    patient.weightKg === undefined ? '' : kgText(patient.weightKg),
    airway === 'natural' ? '' : AIRWAY_NAMES[airway],
    BREATHING_NAMES[breathing.state],
    breathing.ratePerMin === undefined ? '' : `${numberText(breathing.ratePerMin, 1)}/min`,
    onNow === undefined ? say('nothing known of what is on now') : readsText(onNow),
  ]
    .filter((part) => part !== '')
    .join(', ')
}

function readsText(onNow: NonNullable<Case['onNow']>): string {
  const on = setUpOnNowText(onNow.setUp)
  return onNow.saturationPercent === undefined
    ? on
    : say('{on}, reads {percent} %', {
        on,
        percent: numberText(onNow.saturationPercent, 1),
      })
}

/** "Heron 4 · H-1042: 67 years, pneumonia, nasal cannula" */
export function exampleText(about: Case): string {
  const { patient, breathing, onNow } = about
  const airway = airwayKind(patient.airway)
  const who = [about.bed ?? '', about.code ?? ''].filter((part) => part !== '').join(' · ')
  const what = [
    ageText(patient.ageYears),
    airway === 'natural' ? '' : AIRWAY_NAMES[airway],
    BREATHING_NAMES[breathing.state],
    onNow === undefined ? say('nothing read') : setUpOnNowText(onNow.setUp).split(',')[0],
  ]
  return `${who}: ${what.filter((part) => part !== '').join(', ')}`
}

/** Said to a screen reader when an answer has come. */
export function announcedText(plan: Plan): string {
  const first = plan.ranked[0]
  if (first === undefined) return ANSWER_WORDS.nothing
  return `${rankText(first, plan)}: ${setUpHeadingText(first)}, ${ANSWER_WORDS.number} ${numberText(first.effectiveO2Fraction.median, 0.01)}`
}

/** Capital first, and numbers kept on one line with their units. */
function capital(said: string): string {
  return glued(said.slice(0, 1).toUpperCase() + said.slice(1))
}

const UNITS = ['%', 'L/min', 'kg', 'g/L', 'kPa', 'min\\b', ...TIME_WORDS]
const NUMBER_AND_UNIT = new RegExp(`(\\d) (${UNITS.join('|')})`, 'g')
const NO_BREAK = '\u00a0'

function glued(said: string): string {
  return said.replaceAll(NUMBER_AND_UNIT, `$1${NO_BREAK}$2`)
}
