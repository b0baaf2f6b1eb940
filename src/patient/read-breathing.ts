// Reads how the patient breathes: a state, and whatever of rate, volume, duty, mouth share and fit was seen. Leaves out the spreads of what was not.
import { FIT_IDS } from '../kit/family-id.ts'
import { FIELD_ALIASES, FIT_ALIASES, STATE_ALIASES } from './aliases.ts'
import { BREATHING_STATES, type Breathing } from './case.ts'
import { KEYS, NUMBERS } from './case-fields.ts'
import {
  given,
  isGiven,
  openObject,
  pathOf,
  readChoice,
  readNumber,
  report,
  reportMissing,
  type Node,
} from './field.ts'

export function readBreathing(root: Node): Breathing | undefined {
  if (!isGiven(root, 'breathing')) return reportMissing(root, 'breathing')
  const node = openObject({
    reading: root.reading,
    path: pathOf(root, 'breathing'),
    value: root.fields.get('breathing'),
    keys: KEYS.breathing,
    aliases: FIELD_ALIASES,
  })
  if (node === undefined) return undefined
  const state = readChoice(node, 'state', {
    choices: BREATHING_STATES,
    aliases: STATE_ALIASES,
    isRequired: true,
  })
  const ratePerMin = readRate(node)
  const tidalVolumeMl = readNumber(node, 'tidalVolumeMl', NUMBERS.tidalVolumeMl)
  const dutyFraction = readNumber(node, 'dutyFraction', NUMBERS.dutyFraction)
  const mouthShare = readNumber(node, 'mouthShare', NUMBERS.mouthShare)
  const fit = readChoice(node, 'fit', { choices: FIT_IDS, aliases: FIT_ALIASES })
  if (state === undefined) return undefined
  return { state, ...given({ ratePerMin, tidalVolumeMl, dutyFraction, mouthShare, fit }) }
}

/** No breath in a minute is not a rate: such a patient is not for this tool. */
export function readRate(node: Node): number | undefined {
  if (node.fields.get('ratePerMin') !== 0) return readNumber(node, 'ratePerMin', NUMBERS.ratePerMin)
  const path = pathOf(node, 'ratePerMin')
  return report(node.reading, { code: 'NOT_BREATHING_REFUSED', path, value: 0, unit: '/min' })
}
