// The humidity answer as lines: water at the airway against what is required, shortfall, water use, condensate. Leaves out rules and assumptions, which have texts by code.
import type { HumidityBand } from '../humidity/band.ts'
import type { HumidityAnswer } from '../humidity/humidity-of-path.ts'
import type { Requirement } from '../humidity/required-content.ts'
import type { Shortfall } from '../humidity/shortfall.ts'
import type { CondensatePlace } from '../humidity/water-use.ts'
import { KNOWN_NAMES } from './names.ts'
import { bandText, numberText, rangeText } from './number-text.ts'
import { remarkText } from './remark-text.ts'
import { say } from './say.ts'

const MG_PER_L = 'mg/L'
/** Below this, droplets are not worth a word. */
const AEROSOL_SAID_MIN = 0.5

/** "water at the airway about 31 mg/L, 27–34 mg/L, of 33 mg/L required" */
export function humidityLineText(answer: HumidityAnswer): string {
  const water = waterText(answer.vapourMgPerLBtps)
  const least = answer.requirement.leastMgPerL
  if (least === null) return say('water at the airway {water}; none required', { water })
  const asked = `${numberText(least, 1)} ${MG_PER_L}`
  return answer.requirement.isDisputed
    ? say('water at the airway {water}; {asked} by one standard, guidelines differ', {
        water,
        asked,
      })
    : say('water at the airway {water}, of {asked} required', { water, asked })
}

export function shortfallText(answer: Pick<HumidityAnswer, 'shortfall' | 'requirement'>): string {
  const { shortfall } = answer
  const missing = waterText(shortfall.mgPerL)
  if (answer.requirement.isDisputed && shortfall.verdict === 'short')
    return say('{missing} below that figure; whether it matters is disputed', { missing })
  switch (shortfall.verdict) {
    case 'not-measured':
      return notMeasuredText(shortfall, missing)
    case 'enough':
      return say('enough')
    case 'perhaps':
      return say('perhaps short: {missing} missing', { missing })
    case 'short':
      return say('too dry: {missing} missing', { missing })
    case 'not-required':
      return say('nothing required')
  }
}

function notMeasuredText({ notMeasured, mgPerL }: Shortfall, missing: string): string {
  const why = whyNotMeasuredText(notMeasured)
  return mgPerL.high === 0
    ? say('not measured: {why}', { why })
    : say('not measured: {why}; vapour alone {missing} below that figure', { why, missing })
}

/** What nobody measured, so that no verdict is given. */
export function whyNotMeasuredText(codes: Shortfall['notMeasured']): string {
  return codes.map((code) => remarkText({ code, values: {} })).join('; ')
}

/** Droplets beside the vapour; null where there are hardly any. */
export function aerosolText({
  aerosolMgPerLBtps,
}: Pick<HumidityAnswer, 'aerosolMgPerLBtps'>): string | null {
  if (aerosolMgPerLBtps.high < AEROSOL_SAID_MIN) return null
  return say('beside it droplets {water}, not counted', { water: waterText(aerosolMgPerLBtps) })
}

export function temperatureText({ temperatureC }: Pick<HumidityAnswer, 'temperatureC'>): string {
  return say('gas at the airway {temperature}', {
    temperature: bandText(medianBand(temperatureC), { step: 1, unit: '°C' }),
  })
}

export function requirementText(requirement: Requirement): string {
  const why = remarkText({ code: requirement.code, values: {} })
  const known = KNOWN_NAMES[requirement.known]
  const source = requirement.source ?? ''
  const { leastMgPerL, recommended } = requirement
  if (leastMgPerL === null) return say('{why} ({source}, {known})', { why, source, known })
  const least = `${numberText(leastMgPerL, 1)} ${MG_PER_L}`
  if (recommended === null)
    return say('at least {least}: {why} ({source}, {known})', { least, why, source, known })
  return say('at least {least}, {range} recommended: {why} ({source}, {known})', {
    least,
    range: rangeText({ ...recommended, step: 1, unit: MG_PER_L }),
    why,
    source,
    known,
  })
}

/** Null where no vessel gives off water. */
export function waterUseText(answer: HumidityAnswer): string | null {
  if (answer.vessels.length === 0) return null
  const use = bandText(medianBand(answer.waterUseMlPerHour), {
    step: stepFor(answer.waterUseMlPerHour.middle),
    unit: 'mL/h',
  })
  const { refillAfterHours } = answer
  if (refillAfterHours === null) return say('water given off {use}', { use })
  return say('water given off {use}; a full bottle lasts {hours}, reckon with the shorter time', {
    use,
    hours: bandText(medianBand(refillAfterHours), {
      step: stepFor(refillAfterHours.middle),
      unit: 'h',
    }),
  })
}

export function condensateText(one: HumidityAnswer['condensate'][number]): string {
  return say('condensate {volume} {place}', {
    volume: bandText(medianBand(one.mlPerHour), {
      step: stepFor(one.mlPerHour.middle),
      unit: 'mL/h',
    }),
    place: PLACE_NAMES[one.place],
  })
}

const PLACE_NAMES: Readonly<Record<CondensatePlace, string>> = {
  'water-trap': say('in the water trap'),
  'lowest-loop': say('in the lowest loop of the hose'),
}

function waterText(band: HumidityBand): string {
  return bandText(medianBand(band), { step: 1, unit: MG_PER_L })
}

function medianBand(band: HumidityBand): { low: number; median: number; high: number } {
  return { low: band.low, median: band.middle, high: band.high }
}

const SMALL = 10

function stepFor(middle: number): number {
  return middle < SMALL ? 0.1 : 1
}

/** Heading over each group of rules by weight. */
export const HUMIDITY_HEADINGS = {
  breach: say('broken by this set-up'),
  ask: say('to find out'),
  do: say('to do'),
  note: say('to know'),
  assumed: say('what these numbers rest on'),
} as const

export function humidityFlushText(): string {
  return say('opened to flush the flow is not known, so no water content is worked out')
}

/** Everything the answer says, without rules and assumptions, line by line. */
export function humidityFactLines(answer: HumidityAnswer): readonly string[] {
  return [
    humidityLineText(answer),
    // Where none is required, the line has said so.
    answer.shortfall.verdict === 'not-required' ? null : shortfallText(answer),
    aerosolText(answer),
    temperatureText(answer),
    requirementText(answer.requirement),
    waterUseText(answer),
    ...answer.condensate.map(condensateText),
    say('all water is counted for each litre of gas at body conditions: 37 °C, saturated'),
  ].filter((line) => line !== null)
}

/** An assumption with how it is known. */
export function assumptionText(one: HumidityAnswer['assumptions'][number]): string {
  const said = remarkText(one)
  const known = KNOWN_NAMES[one.known]
  return one.source === undefined
    ? say('{said} ({known})', { said, known })
    : say('{said} ({source}, {known})', { said, source: one.source, known })
}
