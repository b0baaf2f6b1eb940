// Runs a program and reports its exit code; leaves out any judgement of its output. Uses Node alone.
import { spawn } from 'node:child_process'
import { accessSync, constants } from 'node:fs'
import { delimiter, join } from 'node:path'
import { ROOT } from './paths.mjs'

/** Runs a command with its output shown; resolves to the exit code (127 when it cannot start, 1 when a signal ended it). */
export function run(command, args, { env = {}, cwd = ROOT } = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, { cwd, stdio: 'inherit', env: { ...process.env, ...env } })
    child.on('error', () => resolve(127))
    child.on('close', (code) => resolve(code ?? 1))
  })
}

/** Runs a program of node_modules with this very Node, without asking npx. */
export function runBin(packageBin, args, options) {
  return run(process.execPath, [join(ROOT, 'node_modules', packageBin), ...args], options)
}

/** The full path of a program on PATH, or undefined. */
export function which(program) {
  for (const folder of (process.env.PATH ?? '').split(delimiter)) {
    const candidate = join(folder, program)
    try {
      accessSync(candidate, constants.X_OK)
      return candidate
    } catch {
      continue
    }
  }
  return undefined
}
