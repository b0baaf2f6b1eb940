// Plants a fault in a bundle of the checks and runs it in a child process. Nothing in the working tree changes.
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join, resolve } from 'node:path'
import { build } from 'esbuild'
import type { Plugin } from 'esbuild'
import type { Fault } from './fault-list.ts'

const ROOT = resolve(import.meta.dirname, '../..')
/** A fault may make a solver run on; then its check counts as red. */
const CHILD_LIMIT_MS = 240_000

export type CheckResults = Readonly<Record<string, boolean>>

/** Runs the named checks (none: all), with the fault or (null) without. An empty result means that the bundle could not finish. */
export async function runPlanted(
  fault: Fault | null,
  names: readonly string[] = [],
): Promise<CheckResults> {
  const folder = mkdtempSync(join(tmpdir(), 'planted-'))
  try {
    const file = join(folder, 'checks.mjs')
    writeFileSync(file, await bundled(fault))
    const child = spawnSync(process.execPath, [file, ...names], {
      encoding: 'utf8',
      timeout: CHILD_LIMIT_MS,
      maxBuffer: 64 * 1024 * 1024,
    })
    if (child.status !== 0) return {}
    const parsed: unknown = JSON.parse(child.stdout)
    return parsed as CheckResults // checks.ts prints an object of booleans
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

async function bundled(fault: Fault | null): Promise<string> {
  const plugins = fault === null ? [] : [planting(fault)]
  const result = await build({
    entryPoints: [join(ROOT, 'test/faults/checks.ts')],
    bundle: true,
    write: false,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    logLevel: 'silent',
    plugins,
  })
  const [output] = result.outputFiles
  if (output === undefined) throw new Error('bundle has one file')
  return output.text
}

/** Replaces the expression in the one file. */
function planting(fault: Fault): Plugin {
  const path = join(ROOT, fault.file)
  return {
    name: 'plant',
    setup(builder) {
      builder.onLoad({ filter: /\.ts$/ }, (args) =>
        args.path === path ? { contents: faulty(fault), loader: 'ts' } : undefined,
      )
    },
  }
}

/** The file with the fault in it. A pattern that does not match exactly once is an error of the list. */
export function faulty(fault: Fault): string {
  const text = readFileSync(join(ROOT, fault.file), 'utf8')
  const matches = text.match(new RegExp(fault.find, 'g'))?.length ?? 0
  if (matches !== 1)
    throw new Error(`fault "${fault.id}" matches ${matches} times in ${fault.file}, wanted 1`)
  return text.replace(fault.find, fault.replace)
}

export interface FaultOutcome {
  readonly fault: Fault
  /** Named checks that did not turn red. */
  readonly undetected: readonly string[]
  /** Named checks that were red before the fault, or do not exist. */
  readonly notGreenBefore: readonly string[]
  /** How many checks in all turned red. */
  readonly turnedRed: number
}

export async function judgeFault(
  fault: Fault,
  healthy: CheckResults,
  names: readonly string[] = [],
): Promise<FaultOutcome> {
  const results = await runPlanted(fault, names)
  return {
    fault,
    undetected: fault.red.filter((id) => results[id] === true),
    notGreenBefore: fault.red.filter((id) => healthy[id] !== true),
    turnedRed: Object.keys(healthy).filter((id) => healthy[id] === true && results[id] !== true)
      .length,
  }
}
