// Runs the real command line: in this process, which is quick, or bundled in one of its own. Leaves out what it should say.
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { build } from '../../scripts/lib/build.mjs'
import { runCli } from '../../src/cli/run.ts'
import { ROOT } from './files.ts'

export interface CliResult {
  readonly code: number | null
  readonly out: string
  readonly err: string
}

/** The same verbs without a process: what is written and the exit code. For verbs that answer at once. */
export function cli(words: readonly string[]): CliResult {
  const { code, written } = started(words)
  if (typeof code !== 'number') throw new Error('answers later: use cliLater')
  return { code, ...written() }
}

/** The same for every verb. */
export async function cliLater(words: readonly string[]): Promise<CliResult> {
  const { code, written } = started(words)
  return { code: await code, ...written() }
}

function started(words: readonly string[]) {
  const out: string[] = []
  const err: string[] = []
  const code = runCli(words, {
    out: (text) => void out.push(`${text}\n`),
    err: (text) => void err.push(text),
    errIsTty: false,
  })
  return { code, written: () => ({ out: out.join(''), err: err.join('') }) }
}

export async function buildCli(): Promise<void> {
  await build(['cli'], { say: () => undefined })
}

/** The bundle, as it is installed. */
export function cliProcess(words: readonly string[], input = ''): CliResult {
  return runNode([join(ROOT, 'dist', 'cli', 'oxwright.mjs'), ...words], input)
}

/** The way from the clone, `npm run -s oxwright -- …`. */
export function cliFromClone(words: readonly string[]): CliResult {
  return runNode([join(ROOT, 'scripts', 'oxwright.mjs'), ...words], '')
}

const OUTPUT_BYTES_MOST = 2 ** 26

function runNode(words: readonly string[], input: string): CliResult {
  const run = spawnSync(process.execPath, words, {
    cwd: ROOT,
    input,
    encoding: 'utf8',
    maxBuffer: OUTPUT_BYTES_MOST,
  })
  return { code: run.status, out: run.stdout, err: run.stderr }
}
