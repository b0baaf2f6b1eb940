// What the Gas page says of concentrators, liquid oxygen and stock. Leaves out remarks by code.
import { fractionText, numberText, percentText } from './number-text.ts'
import { say } from './say.ts'
import { hoursText } from './supply-value.ts'

export const HOME_TEXT = {
  help: () =>
    say('What a concentrator or a vessel of liquid oxygen really gives, and for how long.'),
  concentrator: () => say('Concentrator'),
  liquid: () => say('Liquid oxygen'),
  purity: () => say('purity of its gas'),
  notKnown: () => say('Purity not known'),
  range: () => say('range'),
  inhaled: () => say('inhaled instead'),
  flow: () => say('a flow in L/min'),
  pulse: () => say('a pulse setting'),
  pulseHead: () => say('Not converted'),
  lasts: () => say('lasts'),
  lastsAtMost: () => say('lasts at most'),
  gas: () => say('gas in it'),
  holds: () => say('holds without use'),
  moreMachine: () => say('Warm-up and altitude'),
} as const

export function purityText(o2Fraction: number): string {
  return percentText(o2Fraction, 1)
}

export function inhaledText(of: { readonly pure: number; readonly real: number }): string {
  return say('{real} in place of {pure}', {
    real: fractionText(of.real),
    pure: fractionText(of.pure),
  })
}

const MINUTES_PER_HOUR = 60

export function lastsText(shortest: number, longest: number): string {
  const from = hoursText(shortest / MINUTES_PER_HOUR)
  const until = hoursText(longest / MINUTES_PER_HOUR)
  return from === until ? from : say('{from} to {until}', { from, until })
}

export function daysText(days: number): string {
  return say('{days} days', { days: numberText(days, 0.1) })
}

export const STOCK_TEXT = {
  help: () => say('Interfaces and consumables: use a day, days left, when to order.'),
  add: () => say('Add an item'),
  perDay: () => say('use a day'),
  left: () => say('days left'),
  reorder: () => say('order at'),
  order: () => say('Order now'),
  enough: () => say('Enough for now'),
  noUse: () => say('no use seen'),
  list: () => say('Fewest days left first'),
  item: () => say('item'),
  onHand: () => say('on hand'),
  invented: () => say('Invented: an example, no stock of a ward.'),
} as const

/** What must be ordered, the scarcest first. */
export function orderLine(labels: readonly string[]): string {
  return labels.length === 0
    ? say('Nothing to order now.')
    : say('Order now: {items}.', { items: labels.join('; ') })
}

export function itemName(label: string, position: number): string {
  return label.trim() === '' ? say('Item {position}', { position: String(position) }) : label.trim()
}

export function perDayText(perDay: number): string {
  return numberText(perDay, 0.1)
}
