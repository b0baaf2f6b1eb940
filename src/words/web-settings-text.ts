// The words of the Settings page: what may be set, its choices, and what each does. Leaves out units, which print as their codes.
import type { ChoosableQuantity } from '../units/choosable.ts'
import { plainNumberText } from './number-text.ts'
import { say } from './say.ts'

export const SETTINGS_WORDS = {
  heading: say('Settings'),
  kept: say(
    'Kept on this device, in this browser. Every open page of Oxwright here follows at once.',
  ),
  units: say('Units'),
  unitsHelp: say(
    'What was typed before keeps its meaning: it is shown in the unit chosen here and computed from what was typed.',
  ),
  site: say('Site'),
  altitude: say('altitude of the site'),
  altitudeHelp: say('Used for a case that gives neither altitude nor barometric pressure.'),
  language: say('Language'),
  languageDevice: say('as the device'),
  languageHelp: say(
    'A change opens the page anew; nothing typed is lost. Names of sources and guidelines stay as they are.',
  ),
  look: say('Look'),
  lookDevice: say('as the device'),
  lookLight: say('light'),
  lookDark: say('dark'),
  motion: say('Motion'),
  motionDevice: say('as the device'),
  motionStill: say('always still'),
  twoMetre: say('Two-metre mode'),
  twoMetreOn: say('show the answer alone, large enough to read across the room'),
  twoMetreHelp: say(
    'Bedside has a button for it too. Everything else is folded away until you leave it.',
  ),
  usual: say('Back to the usual settings'),
} as const

export const QUANTITY_LABELS: Readonly<Record<ChoosableQuantity, string>> = {
  pressure: say('pressure in blood and air'),
  height: say('height'),
  weight: say('weight'),
  gasPressure: say('pressure of gas supplies'),
  gasVolume: say('volume of gas'),
}

/** Names of settings as the store calls those it could not read. */
const FAULT_NAMES: Readonly<Record<string, string>> = {
  ...QUANTITY_LABELS,
  units: say('units'),
  altitudeTyped: SETTINGS_WORDS.altitude,
  language: say('language'),
  look: say('look'),
  motion: say('motion'),
  isTwoMetre: say('two-metre mode'),
}

/** What could not be read of the settings kept, and what stands in for it. */
export function faultsText(faults: readonly string[]): string {
  if (faults.includes('all')) {
    return say('The settings kept here could not be read. The usual ones stand in for them.')
  }
  const names = faults.map((fault) => FAULT_NAMES[fault] ?? fault).join(', ')
  return say('Could not be read and is as usual: {names}.', { names })
}

/** Beside the case that does not say where the patient is. */
export function siteFromSettingsText(altitudeM: number): string {
  return say('Altitude {altitude} m from settings', { altitude: plainNumberText(altitudeM) })
}
