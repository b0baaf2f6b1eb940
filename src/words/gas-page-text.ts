// What the Gas page says around its parts: names, buttons, units, standing cautions. Leaves out the parts, whose words stand beside.
import { numberText } from './number-text.ts'
import { say } from './say.ts'
import { barFromKpa, psiFromKpa } from '../units/pressure.ts'
import { cubicFeetFromLitres } from '../units/volume.ts'

export const PRESSURE_UNITS = ['bar', 'psi', 'kPa'] as const
export type PressureUnitOfGas = (typeof PRESSURE_UNITS)[number]

export const VOLUME_UNITS = ['L', 'ft³'] as const
export type VolumeUnitOfGas = (typeof VOLUME_UNITS)[number]

export interface GasUnits {
  readonly pressure: PressureUnitOfGas
  readonly volume: VolumeUnitOfGas
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

const BAR_STEP = 1
const PSI_STEP = 10
const KPA_STEP = 100

/** A pressure in a cylinder, as finely as a gauge can be read. */
export function gaugeText(gaugeKpa: number, unit: PressureUnitOfGas): string {
  switch (unit) {
    case 'bar':
      return say('{value} bar', { value: numberText(barFromKpa(gaugeKpa), BAR_STEP) })
    case 'psi':
      return say('{value} psi', { value: numberText(psiFromKpa(gaugeKpa), PSI_STEP) })
    case 'kPa':
      return say('{value} kPa', { value: numberText(gaugeKpa, KPA_STEP) })
  }
}

const SIGNIFICANT = 3

/** A volume of gas to three digits: what the gauge deserves. */
export function gasVolumeText(volumeL: number, unit: VolumeUnitOfGas): string {
  const inUnit = unit === 'L' ? volumeL : cubicFeetFromLitres(volumeL)
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
