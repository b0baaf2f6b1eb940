// Progress of long work on the error output: one line that is written over, a few times for each hundredth. Leaves out how long it takes.
import { progressText } from '../words/cli-text.ts'
import type { VerbRun } from './verb.ts'

const STEPS = 100

export interface Progress {
  readonly onProgress?: (done: number, total: number) => void
  /** Clears the line. */
  readonly end: () => void
}

/** Said only where a person looks on, or when asked for. */
export function progressFor(run: VerbRun): Progress {
  const { terminal, words } = run
  if (!terminal.errIsTty && !words.switches.has('progress')) return { end: () => undefined }
  let shown = -1
  let width = 0
  return {
    onProgress: (done, total) => {
      const step = Math.floor((STEPS * done) / Math.max(1, total))
      if (step === shown) return
      shown = step
      const text = progressText(done, total)
      width = text.length
      terminal.err(terminal.errIsTty ? `\r${text}` : `${text}\n`)
    },
    end: () => {
      if (terminal.errIsTty && width > 0) terminal.err(`\r${' '.repeat(width)}\r`)
    },
  }
}
