// Keeps the page on this device and learns of a newer version, which waits until it is taken. Leaves out how it is offered.
import { Workbox } from 'workbox-window'

export interface UpdateStore {
  /** Whether a newer version is ready and waits to be taken. */
  readonly isReady: () => boolean
  readonly listen: (listener: () => void) => () => void
  /** Takes it: the page starts anew, with what was typed kept by each place as it is typed. */
  readonly take: () => void
}

const SCRIPT = '/sw.js'
/** How often a page left open asks for a newer version. */
const ASKED_EVERY_MS = 60 * 60 * 1000

/** Nothing is kept where the browser has no service workers, or the page is not served safely. */
export function startKeeping(): UpdateStore {
  const listeners = new Set<() => void>()
  let isWaiting = false
  let isTaking = false
  let worker: Workbox | undefined
  const becomeReady = (): void => {
    isWaiting = true
    for (const listener of listeners) listener()
  }
  if ('serviceWorker' in navigator) {
    worker = new Workbox(SCRIPT)
    worker.addEventListener('waiting', becomeReady)
    worker.addEventListener('controlling', ({ isUpdate }) => {
      if (isTaking) location.reload()
      // Another tab has taken it: what this tab loads late is gone from the store, so it offers to start anew.
      else if (isUpdate === true) becomeReady()
    })
    const kept = worker
    kept
      .register()
      .then(() => setInterval(() => void kept.update().catch(ignore), ASKED_EVERY_MS), ignore)
  }
  return {
    isReady: () => isWaiting,
    listen: (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
    take: () => {
      isTaking = true
      takeWaiting(worker).catch(ignore)
    },
  }
}

async function takeWaiting(worker: Workbox | undefined): Promise<void> {
  const registration = await navigator.serviceWorker.getRegistration()
  const isWaiting = registration?.waiting !== null && registration?.waiting !== undefined
  if (isWaiting && worker !== undefined) worker.messageSkipWaiting()
  else location.reload()
}

/** Without a connection, or where the browser refuses, the page works on as it is. */
function ignore(): void {
  // Nothing to undo.
}
