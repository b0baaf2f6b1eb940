// What the closed lists of the gas answers are called: legs, parts of a draw, failures, countries of a handbook. Leaves out sentences.
import type { DrawPart } from '../supply/gas-drawn.ts'
import type { HandbookCountry } from '../supply/handbook.ts'
import type { MrSafety } from '../supply/store.ts'
import type { LegKind } from '../supply/transport.ts'
import { say } from './say.ts'

export function legName(kind: LegKind): string {
  switch (kind) {
    case 'lift':
      return say('lift')
    case 'corridor':
      return say('corridor')
    case 'scanner':
      return say('scanner')
    case 'ambulance':
      return say('ambulance')
    case 'helicopter':
      return say('helicopter')
  }
}

export function drawPartName(part: DrawPart): string {
  switch (part) {
    case 'SET_UP':
      return say('set-up')
    case 'MASK_OVER':
      return say('mask over the cannula')
    case 'BIAS_FLOW':
      return say('bias flow of the ventilator')
    case 'DRIVING_GAS':
      return say('driving gas')
    case 'JET':
      return say('jet nebuliser for drugs')
    case 'LEAK':
      return say('leak')
  }
}

export function countryName(country: HandbookCountry): string {
  return country === 'GB' ? say('British') : say('US')
}

export function mrSafetyName(safety: MrSafety): string {
  switch (safety) {
    case 'conditional':
      return say('MR conditional')
    case 'not':
      return say('not for the scanner room')
    case 'unknown':
      return say('scanner safety not known')
  }
}
