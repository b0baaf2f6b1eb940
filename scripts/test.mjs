// `npm test`: installs what is lacking, then types, lint, format, unit and browser tests; ends with `N passed, N failed` over all. Uses Node alone until things are installed.
import { mkdirSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { build } from './lib/build.mjs'
import { ensureChromium, ensurePackages, requireNode } from './lib/install.mjs'
import { CACHE } from './lib/paths.mjs'
import { runBin } from './lib/run.mjs'
import { Tally, readVitestReport } from './lib/tally.mjs'

const CHECKS = [
  { name: 'types', bin: 'typescript/bin/tsc', args: ['-p', 'tsconfig.json'] },
  {
    name: 'types of the core (no DOM, no Node)',
    bin: 'typescript/bin/tsc',
    args: ['-p', 'tsconfig.core.json'],
  },
  { name: 'lint', bin: 'oxlint/bin/oxlint', args: ['--type-aware', '--deny-warnings'] },
  { name: 'format', bin: 'oxfmt/bin/oxfmt', args: ['--check'] },
]

function heading(text) {
  console.log(`\n── ${text}`)
}

async function runCheck({ tally, name, bin, args }) {
  heading(name)
  const code = await runBin(bin, args)
  tally.add({ name, passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1 })
}

async function runChecks(tally) {
  for (const check of CHECKS) await runCheck({ tally, ...check })
}

async function runBuild(tally) {
  heading('build')
  try {
    await build()
    tally.add({ name: 'build', passed: 1, failed: 0 })
  } catch (error) {
    console.error(error.message)
    tally.add({ name: 'build', passed: 0, failed: 1, remarks: [error.message] })
  }
}

/** Browser and unit tests in one run, the longest first, so that no core waits for the last file of either. */
async function runTests(tally) {
  heading('tests')
  const reportFile = join(CACHE, 'vitest.json')
  mkdirSync(CACHE, { recursive: true })
  rmSync(reportFile, { force: true })
  const exitCode = await runBin('vitest/vitest.mjs', [
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${reportFile}`,
  ])
  tally.add({ name: 'tests', ...readVitestReport({ reportFile, exitCode }) })
}

async function main() {
  const tally = new Tally()
  try {
    requireNode()
    await ensurePackages()
    process.env.OXWRIGHT_CHROMIUM = await ensureChromium()
    // Beside each other: each uses one core for most of its time.
    await Promise.all([runChecks(tally), runBuild(tally)])
    await runTests(tally)
  } catch (error) {
    tally.add({ name: 'set-up', passed: 0, failed: 1, remarks: error.message.split('\n') })
  }
  heading('summary')
  for (const line of tally.lines) console.log(line)
  console.log(tally.total)
  process.exitCode = tally.failed === 0 ? 0 : 1
}

await main()
