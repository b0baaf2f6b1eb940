// One thread of the long agreement run: compares or climbs from the points it is handed. Leaves out ranking and printing.
import { parentPort } from 'node:worker_threads'
import { climb, compareAt } from '../test/support/agreement.ts'
import type { CasePoint } from '../test/support/random-network.ts'
import { randomStream } from '../test/support/seed.ts'

export interface Task {
  readonly id: number
  readonly point: CasePoint
  /** Neighbours to try; 0 compares the point alone. */
  readonly tries: number
  readonly seed: number
}

export interface Outcome {
  readonly id: number
  readonly point: CasePoint
  readonly fast: number
  readonly judge: number
  readonly miss: number
  readonly settled: boolean
}

parentPort?.on('message', ({ id, point, tries, seed }: Task) => {
  const found = climb(compareAt(point), tries, randomStream(seed))
  const outcome: Outcome = {
    id,
    point: found.point,
    fast: found.fast,
    judge: found.judge.effectiveO2Fraction,
    miss: found.miss,
    settled: found.judge.settled,
  }
  // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread has no origin
  parentPort?.postMessage(outcome)
})
