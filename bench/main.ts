// `npm run bench [-- name [arguments]]`: bundles a bench as it would be shipped and runs it, so that the figures are those of real builds.
import { spawnSync } from 'node:child_process'
import { mkdirSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'

/** Every bench; those not run by default take minutes. A bench may need further entries, such as its worker. */
const BENCHES = [
  { name: 'solvers', entries: ['solvers'], byDefault: true },
  { name: 'plan', entries: ['plan'], byDefault: true },
  { name: 'agreement', entries: ['agreement', 'agreement-worker'], byDefault: false },
] as const

const here = fileURLToPath(new URL('.', import.meta.url))
// Inside node_modules, so that packages left out of the bundle are still found, and nothing lands in the tree.
const outdir = fileURLToPath(new URL('../node_modules/.cache/bench', import.meta.url))

async function runBench(bench: (typeof BENCHES)[number], args: readonly string[]): Promise<number> {
  mkdirSync(outdir, { recursive: true })
  await build({
    entryPoints: bench.entries.map((entry) => `${here}${entry}.ts`),
    outdir,
    outExtension: { '.js': '.mjs' },
    bundle: true,
    format: 'esm',
    platform: 'node',
    target: 'node20',
    minifySyntax: true,
    external: ['fast-check', 'odex'],
    logLevel: 'error',
  })
  console.log(`\n== ${bench.name}`)
  const run = spawnSync(process.execPath, [`${outdir}/${bench.entries[0]}.mjs`, ...args], {
    stdio: 'inherit',
  })
  return run.status ?? 1
}

const [wanted, ...args] = process.argv.slice(2)
const chosen = BENCHES.filter(({ name, byDefault }) =>
  wanted === undefined ? byDefault : name === wanted,
)
if (chosen.length === 0) {
  console.error(`no bench ${wanted}; there are: ${BENCHES.map(({ name }) => name).join(', ')}`)
  process.exitCode = 1
}
for (const bench of chosen) {
  const status = await runBench(bench, args)
  if (status !== 0) process.exitCode = status
}
if (wanted === undefined) console.log('\nlonger: npm run bench -- agreement')
