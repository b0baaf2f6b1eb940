// Asks one lasting worker without ending it: in each slot a running question is finished and answered, then only the newest one that waits. Leaves out what is asked.
import { releaseProxy, wrap } from 'comlink'
import type { Remote } from 'comlink'

type Question<Api, T> = (core: Remote<Api>) => Promise<T>

export interface SteadyCall<Api> {
  /** Resolves to the answer, or to undefined when a newer question of the slot took its place before it was begun. */
  readonly ask: <T>(slot: string, question: Question<Api, T>) => Promise<T | undefined>
  readonly end: () => void
}

interface Waiting {
  readonly run: () => Promise<void>
  readonly giveUp: () => void
}

interface Slot {
  isRunning: boolean
  waiting: Waiting | null
}

interface Running<Api> {
  readonly worker: Worker
  readonly core: Remote<Api>
  /** Rejects when the worker fails by itself. */
  readonly failed: Promise<never>
}

export function createSteadyCall<Api>(start: () => Worker): SteadyCall<Api> {
  const slots = new Map<string, Slot>()
  let running: Running<Api> | null = null

  const end = (): void => {
    running?.core[releaseProxy]()
    running?.worker.terminate()
    running = null
    for (const slot of slots.values()) slot.waiting?.giveUp()
    slots.clear()
  }

  const ask: SteadyCall<Api>['ask'] = async (name, question) =>
    await new Promise((resolve, reject) => {
      const slot = slots.get(name) ?? { isRunning: false, waiting: null }
      slots.set(name, slot)
      slot.waiting?.giveUp()
      const run = async (): Promise<void> => {
        running ??= started<Api>(start())
        const { core, failed } = running
        try {
          resolve(await Promise.race([question(core), failed]))
        } catch (thrown) {
          // A worker that failed once is not asked again.
          running = null
          reject(thrown)
        }
      }
      slot.waiting = { run, giveUp: () => resolve(undefined) }
      void goOn(slot)
    })

  const goOn = async (slot: Slot): Promise<void> => {
    while (!slot.isRunning && slot.waiting !== null) {
      const { run } = slot.waiting
      slot.waiting = null
      slot.isRunning = true
      await run()
      slot.isRunning = false
    }
  }

  return { ask, end }
}

function started<Api>(worker: Worker): Running<Api> {
  const failed = new Promise<never>((_, reject) => {
    worker.addEventListener('error', (event) => reject(new Error(event.message)))
  })
  // The rejection is for whoever asks; nobody asking is no fault.
  failed.catch(() => undefined)
  return { worker, core: wrap<Api>(worker), failed }
}
