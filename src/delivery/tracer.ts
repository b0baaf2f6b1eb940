// Carries tracers through one breath. Every tracer follows the same linear steps; only its sources differ.
import type { Program } from './program-layout.ts'
import { createTracerBlock, setBlockSources, STATE } from './tracer-block.ts'
import type { TracerBlock, TracerSources, TracerTotals, TracerTrace } from './tracer-block.ts'
import { passExpiration } from './tracer-expiration.ts'
import { passInspiration } from './tracer-inspiration.ts'

export { MAX_SERIAL } from './program-layout.ts'
export { STATE, STATE_SIZE } from './tracer-block.ts'
export type { TracerSources, TracerTotals, TracerTrace } from './tracer-block.ts'

/**
 * Advances `z` (concentrations at the start of inspiration) by one breath in place and adds up what passed.
 * Every step is a convex mixture, so concentrations stay within those of their sources, and no gas is lost.
 */
export function passBreath(
  program: Program,
  z: Float64Array,
  sources: TracerSources,
  totals: TracerTotals | null = null,
  trace: TracerTrace | null = null,
): void {
  const block = createTracerBlock(1)
  block.width = 1
  block.upstreamWidth = 1
  block.state.set(z)
  setBlockSources(block, 0, sources)
  passBlock(program, block, trace)
  z.set(block.state)
  if (totals === null) return
  totals.openingInL = block.openingInL[0] ?? 0
  totals.openingOutL = block.openingOutL[0] ?? 0
  totals.tracheaInL = block.tracheaInL[0] ?? 0
  totals.alveoliInL = block.alveoliInL[0] ?? 0
}

/** passBreath for all tracers of a block at once; `trace` follows the first. */
export function passBlock(
  program: Program,
  block: TracerBlock,
  trace: TracerTrace | null = null,
): void {
  passInspiration(program, block, trace)
  moveTanksIn(program, block)
  passExpiration(program, block, trace)
  moveTanksOut(program, block)
}

// Every index below lies within its array by construction (STRIDE × steps, STATE_SIZE × capacity); the casts only say so.

/** Serial tanks at the end of inspiration; what they do not keep has reached the alveoli. */
function moveTanksIn({ passed, serialTanks, tankL }: Program, block: TracerBlock): void {
  const { state: z, width, capacity, arriving, alveoliInL, tracheaInL } = block
  for (let j = 0; j < width; j++) {
    let lostL = tracheaInL[j] as number
    for (let i = serialTanks - 1; i >= 0; i--) {
      const at = (STATE.serial + i) * capacity + j
      let after = arriving[i * capacity + j] as number
      for (let m = 0; m <= i; m++) after += (passed[m] as number) * (z[at - m * capacity] as number)
      lostL += tankL * ((z[at] as number) - after)
      z[at] = after
    }
    alveoliInL[j] = lostL
  }
}

/** Serial tanks at the end of expiration: what stood i tanks nearer the lungs, and alveolar gas behind it. */
function moveTanksOut({ passed, serialTanks }: Program, block: TracerBlock): void {
  const { state: z, width, capacity, alveolar } = block
  for (let j = 0; j < width; j++) {
    for (let i = 0; i < serialTanks; i++) {
      const at = (STATE.serial + i) * capacity + j
      let after = 0
      let share = 0
      for (let m = 0; m < serialTanks - i; m++) {
        after += (passed[m] as number) * (z[at + m * capacity] as number)
        share += passed[m] as number
      }
      z[at] = after + (1 - share) * (alveolar[j] as number)
    }
  }
}
