// What the Gas page says around its parts: names, buttons, units, standing cautions. Leaves out the parts, whose words stand beside.
import { numberText } from './number-text.ts'
import { say } from './say.ts'
import { fromInside } from '../units/choosable.ts'
import type { UnitOf } from '../units/choosable.ts'

export interface GasUnits {
  readonly pressure: UnitOf<'gasPressure'>
  readonly volume: UnitOf<'gasVolume'>
}

export const GAS_TEXT = {
  heading: () => say('Gas'),
  parts: () => say('Parts of Gas'),
  pressureShownIn: () => say('Pressure in'),
  volumeShownIn: () => say('Gas volume in'),
  add: () => say('Add another'),
  remove: () => say('Remove'),
  now: () => say('Read just now'),
  bringBack: () => say('Bring it back'),
  example: () => say('Invented example: type your own over it'),
  refusedHeading: () => say('Not worked out'),
  refusedWhy: () => say('What is typed cannot be used yet. Nothing typed is lost. To mend:'),
  assumptions: () => say('Each number and what it rests on'),
  print: () => say('Print'),
  choose: () => say('please choose'),
  cautions: () => say('Cautions'),
} as const

export const GAS_PARTS = {
  cylinder: () => say('Cylinders'),
} as const

export type GasPart = keyof typeof GAS_PARTS

/** "1 h 5 min from now", and what is past. */
export function fromNowText(duration: string): string {
  return say('{duration} from now', { duration })
}

/** As finely as a gauge can be read. */
const GAUGE_STEPS: Readonly<Record<UnitOf<'gasPressure'>, number>> = { bar: 1, psi: 10, kPa: 100 }

/** A pressure in a cylinder. */
export function gaugeText(gaugeKpa: number, unit: UnitOf<'gasPressure'>): string {
  const value = numberText(fromInside(gaugeKpa, unit), GAUGE_STEPS[unit])
  return say('{value} {unit}', { value, unit })
}

const SIGNIFICANT = 3

/** A volume of gas to three digits: what the gauge deserves. */
export function gasVolumeText(volumeL: number, unit: UnitOf<'gasVolume'>): string {
  const inUnit = fromInside(volumeL, unit)
  return say('{value} {unit}', { value: threeDigits(inUnit), unit })
}

/** Three significant digits, without an exponent. */
export function threeDigits(value: number): string {
  if (value === 0) return '0'
  const power = Math.floor(Math.log10(Math.abs(value))) - SIGNIFICANT + 1
  return numberText(value, 10 ** Math.max(-SIGNIFICANT, power))
}

/** Always in sight on the Gas page. */
export function gasStandingText(): string {
  return say(
    'Local policy first. Oxygen feeds fire: no smoking, flames, oil or grease near it. Before any move: valve open, gauge read, flow felt at the mask, cylinder secured, spare at hand.',
  )
}
