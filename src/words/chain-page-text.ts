// What the Chain page says. Leaves out parts, refusals and remarks, which have words of their own.
import type { Case } from '../patient/case.ts'
import { airwayKind } from '../physiology/airway-state.ts'
import { HUMIDITY_HEADINGS } from './humidity-text.ts'
import { AIRWAY_NAMES } from './names.ts'
import { ageText, kgText } from './remark-exclusions.ts'
import { say } from './say.ts'

export const CHAIN_PAGE = {
  heading: () => say('Chain'),
  build: () => say('Build'),
  practice: () => say('Wrong on purpose'),
  parts: () => say('Parts of this page'),
  patient: () => say('Patient'),
  fromBedside: () => say('as on Bedside'),
  usual: () => say('a usual one'),
  bedsideUnreadable: () =>
    say('What is typed on Bedside is no whole case yet: a usual patient stands in.'),
  ward: () => say('Ward'),
  anyWard: () => say('any ward'),
  interface: () => say('Interface and size'),
  source: () => say('Gas source'),
  humidifier: () => say('Humidifier'),
  flow: () => say('Flow'),
  overFlow: () => say('Flow to the mask'),
  fraction: () => say('Set oxygen fraction'),
  airway: () => say('Airway'),
  natural: () => say('mouth and nose'),
  tube: () => say('tracheostomy tube'),
  usualAge: () => say('Reckoned for a patient of the usual age for this size.'),
  water: () => say('Water at the airway'),
  toChain: () => say('Chain of parts'),
  working: () => say('Looking for the chain …'),
  workingStale: () => say('Looking for the chain; below is still the one before.'),
  practiceLead: () => say('Each of these ten chains has a fault. Choose where it is, then look.'),
  where: () => say('Where is the fault?'),
  choose: () => say('choose a part'),
  reveal: () => say('Show what is wrong'),
  next: () => say('Next chain'),
  found: () => say('Yes, there.'),
  elsewhere: () => say('It is elsewhere.'),
} as const

/** "For the patient on Bedside: 67 years, 70 kg, mouth and nose." */
export function bedsidePatientText({ patient }: Pick<Case, 'patient'>): string {
  const { ageYears, weightKg, airway } = patient
  const who = [
    ageText(ageYears),
    ...(weightKg === undefined ? [] : [kgText(weightKg)]),
    AIRWAY_NAMES[airwayKind(airway)],
  ]
  return say('For the patient on Bedside: {who}.', { who: who.join(', ') })
}

/** What an address asked for and the shelf does not hold. */
export function notOnShelfText(asked: readonly string[]): string {
  return say(
    '{count, plural, one {The address asks for {asked}, which cannot be picked here: something else stands in its place.} other {The address asks for {asked}, which cannot be picked here: something else stands in their place.}}',
    { count: asked.length, asked: asked.join(', ') },
  )
}

export function waterHeadingText(part: keyof typeof HUMIDITY_HEADINGS): string {
  const heading = HUMIDITY_HEADINGS[part]
  return heading.charAt(0).toUpperCase() + heading.slice(1)
}

export function practiceNumberText(place: number, total: number): string {
  return say('Chain {place} of {total}', { place, total })
}

/** Whether it can be built, in one line. */
export function chainResultText(kind: 'chains' | 'missing' | 'refused', others: number): string {
  if (kind === 'refused') return say('This cannot be joined')
  if (kind === 'missing') return say('Parts are missing here')
  return others === 0
    ? say('It can be joined with the parts at hand')
    : say(
        '{others, plural, one {It can be joined with the parts at hand; # other way} other {It can be joined with the parts at hand; # other ways}}',
        { others },
      )
}
