// The closed lists of the transfer planner: what may be on the patient, and what may feed a leg. Leaves out kinds of legs.
import { FAMILY_NAMES } from './names.ts'
import { say } from './say.ts'

export const ON_CHOICES = [
  'bedside',
  'nasal-cannula',
  'simple-mask',
  'non-rebreather-mask',
  'entrainment-mask',
  'blended-high-flow',
  'ventilator-high-flow',
] as const
export type OnChoice = (typeof ON_CHOICES)[number]

export function onChoiceText(choice: OnChoice): string {
  switch (choice) {
    case 'bedside':
      return say('what is on now at the bedside')
    case 'blended-high-flow':
      return say('nasal high flow from a blender')
    case 'ventilator-high-flow':
      return say('high flow from a ventilator')
    case 'nasal-cannula':
    case 'simple-mask':
    case 'non-rebreather-mask':
    case 'entrainment-mask':
      return FAMILY_NAMES[choice]
  }
}

export const FEED_CHOICES = ['carried', 'place'] as const
export type FeedChoice = (typeof FEED_CHOICES)[number]

export function feedText(feed: FeedChoice): string {
  return feed === 'carried' ? say('the cylinders carried') : say('an outlet there')
}
