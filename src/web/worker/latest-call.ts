// Calls a worker so that only the newest question is answered: an older one still running is ended with its worker. Leaves out what is asked.
import { releaseProxy, wrap } from 'comlink'
import type { Remote } from 'comlink'
import type { CoreApi } from './core-api.ts'

export interface LatestCall {
  /** Asks; resolves to the answer, or to undefined when a newer question came before it was there. */
  readonly ask: <T>(question: (core: Remote<CoreApi>) => Promise<T>) => Promise<T | undefined>
  readonly end: () => void
}

interface Running {
  readonly worker: Worker
  readonly core: Remote<CoreApi>
  /** Settles when the worker is ended by us (undefined) or fails by itself (rejects). */
  readonly over: Promise<undefined>
  readonly settle: () => void
}

export function createLatestCall(start: () => Worker = startWorker): LatestCall {
  let running: Running | undefined
  let isBusy = false
  let newest = 0

  const end = (): void => {
    running?.core[releaseProxy]()
    running?.worker.terminate()
    running?.settle()
    running = undefined
    isBusy = false
  }

  /** One that fails by itself is asked no more: whoever asks again gets a new one. */
  const begun = (): Running => {
    const own = started(start())
    own.over.catch(() => {
      if (running === own) end()
    })
    return own
  }

  const ask: LatestCall['ask'] = async (question) => {
    newest += 1
    const own = newest
    // The core computes without pause, so a running question can only be ended together with its worker.
    if (isBusy) end()
    running ??= begun()
    isBusy = true
    const { core, over } = running
    try {
      const answer = await Promise.race([question(core), over])
      return own === newest ? answer : undefined
    } catch (thrown) {
      if (own !== newest) return undefined
      throw thrown
    } finally {
      if (own === newest) isBusy = false
    }
  }

  return { ask, end }
}

export function startWorker(): Worker {
  return new Worker(new URL('./core-worker.ts', import.meta.url), { type: 'module' })
}

function started(worker: Worker): Running {
  let settle = (): void => undefined
  const over = new Promise<undefined>((resolve, reject) => {
    settle = () => resolve(undefined)
    // A worker that cannot start answers nothing; its error event does.
    worker.addEventListener('error', (event) => reject(new Error(event.message)))
  })
  // The rejection is for whoever asks; nobody asking is no fault.
  over.catch(() => undefined)
  return { worker, core: wrap<CoreApi>(worker), over, settle }
}
