// A plan in words: the answer first, then each ranked set-up's chance, hold, print, reasons. Leaves out layout.
import type { Shelf } from '../kit/shelf.ts'
import { firstChecked } from '../planning/first-checked.ts'
import type {
  Band,
  GuidelineStart,
  HoldsUntil,
  Plan,
  RankedSetUp,
  ReadingUse,
} from '../planning/plan-types.ts'
import { printedText } from './breath-text.ts'
import { NO_READING, NOT_CHECKED, READING_PUT_ASIDE } from './caution-texts.ts'
import { goalText } from './goal-text.ts'
import { KNOWN_NAMES } from './names.ts'
import {
  chanceText,
  fractionBandText,
  numberText,
  rangeText,
  saturationBandText,
  SHOWN_STEPS,
} from './number-text.ts'
import { EXCLUSION_NAMES } from './remark-exclusions.ts'
import { remarkText } from './remark-text.ts'
import { nameIn } from './remark-value.ts'
import { setUpText, sourceText } from './set-up-text.ts'
import { say } from './say.ts'

/** The answer in one primary line: set-up first, what it gives, its chance. */
export function answerText(plan: Plan, shelf?: Pick<Shelf, 'interfaces'>): string {
  const first = plan.ranked[0]
  if (first === undefined)
    return say('No set-up to offer for {goal}', { goal: goalText(plan.goal) })
  return setUpText(first.setUp, shelf)
}

/** What the first set-up gives and how likely it lands in the goal, as sentences. */
export function whyFirstLines(plan: Plan): readonly string[] {
  const first = plan.ranked[0]
  if (first === undefined) return plan.missing.map(remarkText)
  const checked = firstChecked(plan)
  const equals = plan.ranked.filter((one) => one.isEqualToFirst).length - 1
  return [
    say('Inspired fraction {gives}.', { gives: givesText(first) }),
    ...(first.saturationPercent === null
      ? []
      : [
          say('Saturation {band}.', {
            band: saturationBandText(first.saturationPercent),
          }),
        ]),
    `${capital(chanceLineText(first, plan))}.`,
    ...(equals === 0 ? [] : [equalText(equals)]),
    ...(checked === null ? [] : [firstCheckedText(checked)]),
    ...plan.missing.map(remarkText),
  ]
}

/** Beside a first that no measurement checks: the best of those that some do. */
export function firstCheckedText(checked: RankedSetUp): string {
  return say('The best that measurements check: {setUp}, rank {rank}, inspired {fraction}.', {
    setUp: setUpText(checked.setUp),
    rank: checked.rank,
    fraction: fractionBandText(checked.effectiveO2Fraction),
  })
}

function equalText(equals: number): string {
  return say(
    '{count, plural, one {One more set-up counts} other {{count} more set-ups count}} as equal: harm, comfort, humidity, gas use and fewest changes put this one first.',
    { count: equals },
  )
}

/** "about 0.45, 0.38–0.54; printed 0.4–0.6", with the word where nothing outside checks it. */
export function givesText(ranked: RankedSetUp): string {
  const said = `${fractionBandText(ranked.effectiveO2Fraction)}; ${printedText(ranked.printedO2Fraction)}`
  return ranked.isChecked ? said : `${said}; ${NOT_CHECKED}`
}

/** The chances, and whose they are when no saturation was read. */
export function chanceLineText(ranked: RankedSetUp, plan: Pick<Plan, 'goal' | 'reading'>): string {
  const said = chancesText(ranked, plan)
  return plan.reading.isUsed || plan.goal.kind === 'comfort'
    ? said
    : `${said}; ${averagesText(plan.reading)}`
}

function chancesText(ranked: RankedSetUp, plan: Pick<Plan, 'goal'>): string {
  const { chance } = ranked
  if (chance !== null) {
    return say('chance in range {inRange}, below {below}, above {above}', {
      inRange: chanceText(chance.inRange),
      below: chanceText(chance.below),
      above: chanceText(chance.above),
    })
  }
  return plan.goal.kind === 'comfort'
    ? say('comfort: no saturation goal, no scores')
    : say('ranked by inspired fraction, not by saturation')
}

/** What stands beside every chance that no reading narrowed. */
export function averagesText(reading: Pick<ReadingUse, 'remarks'>): string {
  const isGiven = reading.remarks.every(({ code }) => code !== 'NO_READING')
  return isGiven && reading.remarks.length > 0 ? READING_PUT_ASIDE : NO_READING
}

/** Chance in range alone, for a table; a dash where the goal has no range. */
export function chanceCellText(ranked: RankedSetUp): string {
  return ranked.chance === null ? '–' : chanceText(ranked.chance.inRange)
}

/** Heading of the chances; it says whose they are when no saturation was read. */
export function chanceHeadingText(plan: Pick<Plan, 'goal' | 'reading'>): string {
  return plan.reading.isUsed ? say('chance in range') : say('chance in range (averages only)')
}

/** "0.45 0.38–0.54" */
export function fractionCellText(ranked: RankedSetUp): string {
  return cellText(ranked.effectiveO2Fraction, SHOWN_STEPS.o2Fraction)
}

/** "91 87–94"; a dash where the oximeter is put aside. */
export function saturationCellText(ranked: RankedSetUp): string {
  return ranked.saturationPercent === null
    ? '–'
    : cellText(ranked.saturationPercent, SHOWN_STEPS.saturationPercent)
}

function cellText(band: Band, step: number): string {
  return `${numberText(band.median, step)} ${rangeText({ low: band.low, high: band.high, step })}`
}

export function oxygenCellText(ranked: RankedSetUp): string {
  return numberText(ranked.oxygenUsedLpm, ranked.oxygenUsedLpm < 1 ? 0.01 : 0.1)
}

/** The breathing rate at which the set-up leaves the goal. */
export function holdsUntilText(holds: HoldsUntil): string {
  const { ratePerMin, side } = holds
  if (ratePerMin === null) {
    if (side === null) return say('at every rate')
    return side === 'below' ? say('below the goal already') : say('above the goal already')
  }
  const rate = numberText(ratePerMin, 1)
  return side === 'above'
    ? say('{rate}/min, then above', { rate })
    : say('{rate}/min, then below', { rate })
}

/** More than a few make a list nobody reads; the shelf holds them all. */
const TWINS_NAMED = 3

/** The other sources that would do as well; null where there is none. */
export function twinsText(ranked: RankedSetUp): string | null {
  const sources = [...new Set(ranked.twins.map(({ source }) => sourceText(source)))]
  if (sources.length === 0) return null
  const more = sources.length - TWINS_NAMED
  const named = sources.slice(0, TWINS_NAMED).join('; ')
  return more > 0
    ? say('as well on: {named}; and {more} more', { named, more })
    : say('as well on: {named}', { named })
}

/** Every remark of one set-up, most pressing first: what to mind, humidity, what to watch. */
export function notesOf(ranked: RankedSetUp): readonly string[] {
  return [...ranked.remarks, ...ranked.humidity, ...ranked.watch].map(remarkText)
}

export function guidelineText(start: GuidelineStart): string {
  const source = start.source === undefined ? '' : `${start.source}, `
  const said = `${remarkText(start)} (${source}${KNOWN_NAMES[start.known]})`
  return start.setUpIds.length === 0 ? say('{start}; not on this shelf', { start: said }) : said
}

/** Whether and how the reading was used. */
export function readingText(reading: ReadingUse): string {
  if (!reading.isUsed) return averagesText(reading)
  const said = say('the reading narrows the forecast: about {draws} drawn patients fit it', {
    draws: numberText(reading.effectiveDraws, 10),
  })
  return reading.wasRedrawn ? say('{said}; drawn again around it', { said }) : said
}

export function excludedGroupText(group: ExcludedGroup): string {
  return `${group.count}: ${group.name}`
}

export interface ExcludedGroup {
  readonly code: string
  readonly name: string
  readonly count: number
}

/** How many set-ups each reason rules out, most first; a set-up counts under its first reason. */
export function excludedGroups(plan: Plan): readonly ExcludedGroup[] {
  const counts = new Map<string, number>()
  for (const { reasons } of plan.excluded) {
    const code = reasons[0]?.code
    if (code !== undefined) counts.set(code, (counts.get(code) ?? 0) + 1)
  }
  return [...counts]
    .map(([code, count]) => ({ code, count, name: nameIn(EXCLUSION_NAMES, code) }))
    .toSorted((a, b) => b.count - a.count)
}

function capital(said: string): string {
  return said.slice(0, 1).toUpperCase() + said.slice(1)
}
