// What the page says about newer versions of itself. Leaves out everything else.
import { say } from './say.ts'

export const OFFLINE_WORDS = {
  ready: say('A newer version is ready. Nothing typed is lost by taking it.'),
  take: say('Take it now'),
} as const
