// The long agreement run: fast solver against the judge on 10,000 random cases and on a hill-climb from the 100 worst. Exits 1 beyond the tolerance.
import { Worker } from 'node:worker_threads'
import { AGREEMENT_TOLERANCE } from '../test/support/agreement.ts'
import { caseFromPoint, randomPoints } from '../test/support/random-network.ts'
import { randomStream, runSeed } from '../test/support/seed.ts'
import type { Outcome, Task } from './agreement-worker.ts'

const THREADS = 2
const [cases = 10_000, climbs = 100, tries = 30] = process.argv.slice(2).map(Number)

function runTasks(tasks: readonly Task[], label: string): Promise<readonly Outcome[]> {
  const outcomes: Outcome[] = []
  let next = 0
  return new Promise((resolve, reject) => {
    const workers = Array.from({ length: THREADS }, () => {
      const worker = new Worker(new URL('./agreement-worker.mjs', import.meta.url))
      const feed = (): void => {
        const task = tasks[next++]
        // oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread has no origin
        if (task !== undefined) worker.postMessage(task)
      }
      worker.on('error', reject)
      worker.on('message', (outcome: Outcome) => {
        outcomes.push(outcome)
        report(label, outcomes, tasks.length)
        if (outcomes.length < tasks.length) feed()
        else finish()
      })
      feed()
      return worker
    })
    const finish = (): void => {
      Promise.all(workers.map((worker) => worker.terminate())).then(() => resolve(outcomes), reject)
    }
  })
}

function report(label: string, outcomes: readonly Outcome[], total: number): void {
  const every = Math.max(1, Math.floor(total / 20))
  if (outcomes.length % every !== 0) return
  const worst = Math.max(...outcomes.map(({ miss }) => miss))
  console.log(`${label} ${outcomes.length}/${total}  worst so far ${worst.toExponential(2)}`)
}

function ranked(outcomes: readonly Outcome[]): readonly Outcome[] {
  return outcomes.toSorted((a, b) => b.miss - a.miss)
}

function printWorst(label: string, [worst]: readonly Outcome[]): void {
  if (worst === undefined) return
  const { miss, fast, judge, point } = worst
  console.log(
    `${label}: worst miss ${miss.toExponential(2)}  fast ${fast.toFixed(5)}  judge ${judge.toFixed(5)}`,
  )
  console.log(JSON.stringify(caseFromPoint(point)))
}

const seed = runSeed()
const points = randomPoints(cases, randomStream(seed))
const compared = ranked(
  await runTasks(
    points.map((point, id) => ({ id, point, tries: 0, seed })),
    'cases',
  ),
)
const misses = compared.map(({ miss }) => miss)
const at = (share: number): string =>
  (misses[Math.floor(share * misses.length)] ?? 0).toExponential(2)
console.log(
  `seed ${seed}: ${cases} cases, median miss ${at(0.5)}, 95 % within ${at(0.05)}, 99 % within ${at(0.01)}`,
)
console.log(`unsettled judges: ${compared.filter(({ settled }) => !settled).length}`)
printWorst('random cases', compared)
const climbed = ranked(
  await runTasks(
    compared.slice(0, climbs).map(({ point }, id) => ({ id, point, tries, seed: seed + id + 1 })),
    'climbs',
  ),
)
printWorst(`climb from the ${climbs} worst`, climbed)
const worst = Math.max(misses[0] ?? 0, climbed[0]?.miss ?? 0)
const isWithin = worst < AGREEMENT_TOLERANCE
console.log(`${isWithin ? 'within' : 'BEYOND'} ${AGREEMENT_TOLERANCE}`)
process.exitCode = isWithin ? 0 : 1
