// What this product is not for: words in a case that say the patient does not breathe, or is ventilated, or is given gas in pulses. Leaves out what to do instead, which words/ says.
import type { ErrorCode } from '../errors.ts'
import { plain } from './did-you-mean.ts'

const NOT_BREATHING = [
  'notbreathing',
  'apnoea',
  'apnea',
  'apnoeic',
  'apneic',
  'gasping',
  'agonal',
  'cardiacarrest',
  'respiratoryarrest',
  'arrest',
  'unrousable',
]

const VENTILATED = [
  'ventilated',
  'ventilation',
  'mechanicalventilation',
  'intubated',
  'intubation',
  'endotrachealtube',
  'niv',
  'noninvasiveventilation',
  'cpap',
  'bilevel',
  'ecmo',
]

/** A number on the dial of a device that gives gas in pulses is no flow, and differs between devices. */
const PULSED = [
  'pulse',
  'pulsesetting',
  'pulsedose',
  'pulsed',
  'pulseflow',
  'ondemand',
  'demandsetting',
  'conserver',
  'conservingdevice',
  'pulsedoseconcentrator',
  'oxygenconserver',
]

/** The refusal a word stands for, or undefined. */
export function refusalOf(word: string): ErrorCode | undefined {
  const letters = plain(word)
  if (NOT_BREATHING.includes(letters)) return 'NOT_BREATHING_REFUSED'
  if (PULSED.includes(letters)) return 'PULSE_SETTING_REFUSED'
  return VENTILATED.includes(letters) ? 'VENTILATED_REFUSED' : undefined
}
