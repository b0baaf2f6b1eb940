// The words of two-metre mode. Leaves out the answer itself, which has its own.
import { say } from './say.ts'

export const FAR_WORDS = {
  enter: say('Two-metre mode'),
  leave: say('Leave two-metre mode'),
  onNow: say('on now'),
  saturation: say('saturation forecast'),
  holds: say('holds until'),
} as const
