// Settings for random tests: a fixed seed in `npm test`, a new printed one in `npm run test:wander`. Leaves out the generators themselves.

const FIXED_SEED = 20_260_101

/** The seed of this run. Under WANDER it is drawn anew (or taken from WANDER_SEED to replay a find) and printed. */
export function runSeed(): number {
  if (process.env['WANDER'] === undefined) return FIXED_SEED
  const replay = process.env['WANDER_SEED']
  const seed = replay === undefined ? Math.floor(Math.random() * 2 ** 31) : Number(replay)
  console.log(`wander seed ${seed}: replay with WANDER=1 WANDER_SEED=${seed}`)
  return seed
}

/** fast-check parameters for one property: `fc.assert(property, seeded(500))`. */
export function seeded(numRuns: number): { readonly seed: number; readonly numRuns: number } {
  return { seed: runSeed(), numRuns }
}

/** A small seeded stream of numbers in [0, 1) for sampling loops outside fast-check (mulberry32). */
export function randomStream(seed: number = runSeed()): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = state
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296
  }
}
