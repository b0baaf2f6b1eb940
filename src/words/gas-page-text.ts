// What the Gas page says around its parts: names, buttons, units, standing cautions. Leaves out the parts, whose words stand beside.
import { say } from './say.ts'

export const GAS_TEXT = {
  heading: () => say('Gas'),
  parts: () => say('Parts of Gas'),
  pressureShownIn: () => say('Pressure in'),
  volumeShownIn: () => say('Gas volume in'),
  remove: () => say('Remove'),
  now: () => say('Read just now'),
  bringBack: () => say('Bring it back'),
  example: () => say('Invented example: type your own over it'),
  refusedHeading: () => say('Not worked out'),
  refusedWhy: () => say('What is typed cannot be used yet. Nothing typed is lost. To mend:'),
  assumptions: () => say('Each number and what it rests on'),
  inWords: () => say('The same in words'),
  choose: () => say('please choose'),
} as const

export const GAS_PARTS = {
  cylinder: () => say('Cylinders'),
  transfer: () => say('Transfer'),
  ward: () => say('Ward demand'),
  drill: () => say('Lights-out drill'),
  room: () => say('Room'),
  home: () => say('Home sources'),
  stock: () => say('Stock'),
} as const

export type GasPart = keyof typeof GAS_PARTS

/** Whose meters and sources an answer is worked out with. */
export function shelfSaidText(of: { readonly hospital: string; readonly isDemo: boolean }): string {
  return of.isDemo
    ? say('Meters and sources are those of the demo shelf, which is invented.')
    : say('Meters and sources are those of the shelf in use: {hospital}.', {
        hospital: of.hospital,
      })
}

/** "1 h 5 min from now", and what is past. */
export function fromNowText(duration: string): string {
  return say('{duration} from now', { duration })
}

/** Always in sight on the Gas page. */
export function gasStandingText(): string {
  return say(
    'Local policy first. Oxygen feeds fire: no smoking, flames, oil or grease near it. Before any move: valve open, gauge read, flow felt at the mask, cylinder secured, spare at hand.',
  )
}
