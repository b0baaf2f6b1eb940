// What a verb of the command line is, and what it is given. Leaves out the verbs.
import type { OptionKinds, ParsedWords } from './arguments.ts'
import type { ExitCode } from './exit-codes.ts'
import type { Terminal } from './terminal.ts'

export interface VerbRun {
  readonly words: ParsedWords
  readonly terminal: Terminal
  readonly version: string
}

export interface Verb {
  readonly options: OptionKinds
  /** Whether a case is named. */
  readonly takesCase: boolean
  /** What the file is called where it is no case. */
  readonly takes?: 'transfer' | 'ward' | 'shelf' | 'stock'
  /** A verb that waits, for a PDF say, answers later. */
  run(run: VerbRun): ExitCode | Promise<ExitCode>
}

/** Options that every verb has. */
export const COMMON_OPTIONS = {
  json: 'switch',
  progress: 'switch',
  help: 'switch',
  language: 'text',
} as const

/** Options of verbs that read a shelf. */
export const SHELF_OPTIONS = {
  shelf: 'text',
  ward: 'text',
  draws: 'text',
  seed: 'text',
  svg: 'text',
} as const
