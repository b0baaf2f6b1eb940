// The worker in which the core runs, so that the page keeps answering. Leaves out when it is asked.
import { expose } from 'comlink'
import { isDomainError, problemOf } from '../../errors.ts'
import { DEMO_SHELF } from '../../kit/demo-shelf/demo-shelf.ts'
import { bedsideBreath } from '../../planning/bedside-breath.ts'
import { makePlan } from '../../planning/plan.ts'
import type { Answer, CoreApi, Progress } from './core-api.ts'

/** Messages in all; more would only cost time. */
const PROGRESS_MESSAGES = 25

const api: CoreApi = {
  plan: ({ about, wardId }, onProgress) =>
    answered(() =>
      makePlan({
        case: about,
        shelf: DEMO_SHELF,
        onProgress: seldom(onProgress),
        ...(wardId === undefined ? {} : { wardId }),
      }),
    ),
  breath: ({ about, setUp }) => answered(() => bedsideBreath({ case: about, setUp }).breath),
}

function answered<T>(ask: () => T): Answer<T> {
  try {
    return { ok: true, value: ask() }
  } catch (thrown) {
    if (!isDomainError(thrown)) throw thrown
    return { ok: false, problem: problemOf(thrown) }
  }
}

function seldom(onProgress: Progress): Progress {
  let said = -1
  return (done, total) => {
    const part = Math.floor((done / total) * PROGRESS_MESSAGES)
    if (part === said) return
    said = part
    onProgress(done, total)
  }
}

expose(api)
