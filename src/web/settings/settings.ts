// What a reader may set for this device, its usual values, and how kept text is read back. Leaves out where it is kept.
import { CHOOSABLE_QUANTITIES, CHOOSABLE_UNITS, USUAL_UNITS } from '../../units/choosable.ts'
import type { ChosenUnits } from '../../units/choosable.ts'

export const LOOKS = ['device', 'light', 'dark'] as const
export type Look = (typeof LOOKS)[number]

/** Follow what the device prefers, or stand still always. */
export const MOTIONS = ['device', 'still'] as const
export type Motion = (typeof MOTIONS)[number]

/** The languages the device prefers, in their order. */
export const DEVICE_LANGUAGE = 'device'

export interface Settings {
  readonly units: ChosenUnits
  /** Altitude of the site in metres as typed, empty where none is; judged where it is used (site-altitude.ts). */
  readonly altitudeTyped: string
  /** Tag of a language (BCP 47), or DEVICE_LANGUAGE; one not at hand is as good as English. */
  readonly language: string
  readonly look: Look
  readonly motion: Motion
  /** The answer alone, legible across the room. */
  readonly isTwoMetre: boolean
}

export const USUAL_SETTINGS: Settings = {
  units: USUAL_UNITS,
  altitudeTyped: '',
  language: DEVICE_LANGUAGE,
  look: 'device',
  motion: 'device',
  isTwoMetre: false,
}

/** What could not be read and was replaced by the usual value: a setting, a unit, or all of it. */
export interface KeptSettings {
  readonly settings: Settings
  readonly faults: readonly string[]
}

/** What the kept text says, setting by setting: one that cannot be read is the usual one and is named; one that is absent is the usual one. */
export function readSettings(kept: string | null): KeptSettings {
  if (kept === null) return { settings: USUAL_SETTINGS, faults: [] }
  const plain = plainOf(kept)
  if (plain === undefined) return { settings: USUAL_SETTINGS, faults: ['all'] }
  const faults: string[] = []
  const read = <T>(name: string, usual: T, is: (value: unknown) => value is T): T => {
    const value = plain[name]
    if (value === undefined) return usual
    if (is(value)) return value
    faults.push(name)
    return usual
  }
  const settings: Settings = {
    units: readUnits(plain['units'], faults),
    altitudeTyped: read('altitudeTyped', USUAL_SETTINGS.altitudeTyped, isShortText),
    language: read('language', USUAL_SETTINGS.language, isLanguageTag),
    look: read('look', USUAL_SETTINGS.look, oneOf(LOOKS)),
    motion: read('motion', USUAL_SETTINGS.motion, oneOf(MOTIONS)),
    isTwoMetre: read('isTwoMetre', USUAL_SETTINGS.isTwoMetre, isBoolean),
  }
  return { settings, faults }
}

function readUnits(kept: unknown, faults: string[]): ChosenUnits {
  if (kept === undefined) return USUAL_UNITS
  if (!isPlain(kept)) {
    faults.push('units')
    return USUAL_UNITS
  }
  const chosen = CHOOSABLE_QUANTITIES.map((quantity) => {
    const value = kept[quantity]
    const found = CHOOSABLE_UNITS[quantity].find((unit) => unit === value)
    if (found === undefined && value !== undefined) faults.push(quantity)
    return [quantity, found ?? USUAL_UNITS[quantity]] as const
  })
  // Safe: every quantity is there once, with a unit out of its own list.
  return Object.fromEntries(chosen) as unknown as ChosenUnits
}

function plainOf(text: string): Readonly<Record<string, unknown>> | undefined {
  try {
    const parsed: unknown = JSON.parse(text)
    return isPlain(parsed) ? parsed : undefined
  } catch {
    return undefined
  }
}

function isPlain(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function oneOf<T extends string>(choices: readonly T[]): (value: unknown) => value is T {
  return (value): value is T => choices.some((choice) => choice === value)
}

function isBoolean(value: unknown): value is boolean {
  return typeof value === 'boolean'
}

const ALTITUDE_LETTERS_MOST = 100

function isShortText(value: unknown): value is string {
  return typeof value === 'string' && value.length <= ALTITUDE_LETTERS_MOST
}

function isLanguageTag(value: unknown): value is string {
  return typeof value === 'string' && /^[A-Za-z]{2,8}(?:-[A-Za-z0-9]{1,8})*$/.test(value)
}
