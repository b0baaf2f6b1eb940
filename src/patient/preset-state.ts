// The breathing preset that stands for each breathing state of a case. Leaves out the presets' numbers.
import type { BreathingState as PresetState } from '../physiology/breathing-state-rows.ts'
import type { BreathingState } from './case.ts'

const PRESET_OF: Readonly<Record<BreathingState, PresetState>> = {
  rest: 'rest',
  sleep: 'sleep',
  walking: 'walking',
  'fast-and-shallow': 'fast-shallow',
  'severe-distress': 'severe-distress',
  'copd-stable': 'copd-stable',
  'copd-exacerbation': 'copd-exacerbation',
  asthma: 'asthma',
  pneumonia: 'pneumonia',
  'heart-failure': 'heart-failure',
  'slow-under-opioids': 'opioid-slow',
  'obesity-hypoventilation': 'obesity-hypoventilation',
  'neuromuscular-weakness': 'neuromuscular',
  pregnancy: 'pregnancy',
  fever: 'fever',
  bronchiolitis: 'bronchiolitis',
  newborn: 'newborn',
  preterm: 'preterm',
}

export function presetState(state: BreathingState): PresetState {
  return PRESET_OF[state]
}
