// `npm run test:wander`: the unit tests with new random seeds, each printed so that a find can be replayed.
import { runBin } from './lib/run.mjs'

process.exitCode = await runBin(
  'vitest/vitest.mjs',
  ['run', '--project', 'unit', ...process.argv.slice(2)],
  { env: { WANDER: '1' } },
)
