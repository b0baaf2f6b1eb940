// What a run reads and writes: files, standard input, output, the error output. Leaves out what is in them.
import { readFileSync, writeFileSync } from 'node:fs'
import { cannotReadText, cannotWriteText } from '../words/cli-text.ts'
import { FileError } from './failure.ts'

export interface Terminal {
  readonly out: (text: string) => void
  readonly err: (text: string) => void
  /** Whether a person may be looking at the error output. */
  readonly errIsTty: boolean
}

export const STANDARD_INPUT = '-'
const STANDARD_INPUT_DESCRIPTOR = 0

export function processTerminal(): Terminal {
  return {
    out: (text) => void process.stdout.write(`${text}\n`),
    err: (text) => void process.stderr.write(text),
    errIsTty: process.stderr.isTTY === true,
  }
}

export function readText(path: string): string {
  try {
    return readFileSync(path === STANDARD_INPUT ? STANDARD_INPUT_DESCRIPTOR : path, 'utf8')
  } catch (thrown) {
    throw new FileError(cannotReadText(path, systemReason(thrown)))
  }
}

export function writeText(path: string, content: string): void {
  writeContent(path, content)
}

export function writeContent(path: string, content: string | Uint8Array): void {
  try {
    writeFileSync(path, content)
  } catch (thrown) {
    throw new FileError(cannotWriteText(path, systemReason(thrown)))
  }
}

/** The system's own code, such as ENOENT; anything else is no matter of files and goes on as it came. */
function systemReason(thrown: unknown): string {
  if (thrown instanceof Error && 'code' in thrown && typeof thrown.code === 'string') {
    return thrown.code
  }
  throw thrown
}
