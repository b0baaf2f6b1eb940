// What the Chain page says. Leaves out parts, refusals and remarks, which have words of their own.
import { say } from './say.ts'

export const CHAIN_PAGE = {
  heading: () => say('Chain'),
  build: () => say('Build'),
  practice: () => say('Wrong on purpose'),
  parts: () => say('Parts of this page'),
  ward: () => say('Ward'),
  anyWard: () => say('any ward'),
  interface: () => say('Interface and size'),
  source: () => say('Gas source'),
  humidifier: () => say('Humidifier'),
  flow: () => say('Flow'),
  fraction: () => say('Set oxygen fraction'),
  airway: () => say('Airway'),
  natural: () => say('mouth and nose'),
  tube: () => say('tracheostomy tube'),
  usualAge: () => say('Reckoned for a patient of the usual age for this size.'),
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
