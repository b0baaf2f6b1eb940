// The worker in which the core runs, so that the page keeps answering. Leaves out when it is asked.
import { expose } from 'comlink'
import { makePlan } from '../../planning/plan.ts'
import { openTrials } from '../../planning/trial.ts'
import type { Trials } from '../../planning/trial.ts'
import { answered } from './answered.ts'
import type { CoreApi, PlanRequest, Progress } from './core-api.ts'

/** Messages in all; more would only cost time. */
const PROGRESS_MESSAGES = 25

const api: CoreApi = {
  plan: (request, onProgress) =>
    answered(() => makePlan({ ...questionOf(request), onProgress: seldom(onProgress) })),
  trial: ({ request, question }) =>
    answered(() => {
      const trials = trialsOf(request)
      const asked = question === 'on-now' ? { setUp: trials.onNow } : question
      return { trial: trials.at(asked), rates: trials.rates }
    }),
  measured: async (question) => {
    const { measuredBeside } = await import('./measured-beside.ts')
    return measuredBeside(question)
  },
  evidence: async (onProgress) => {
    const { evidenceAnswer } = await import('./evidence-answer.ts')
    return evidenceAnswer(seldom(onProgress))
  },
}

function questionOf({ about, shelf, wardId }: PlanRequest) {
  return { case: about, shelf, ...(wardId === undefined ? {} : { wardId }) }
}

/** The draws of the newest case asked about: a drag asks many times about one. */
let drawn: { readonly key: string; readonly trials: Trials } | null = null

function trialsOf(request: PlanRequest): Trials {
  const key = JSON.stringify(request)
  if (drawn === null || drawn.key !== key) drawn = { key, trials: openTrials(questionOf(request)) }
  return drawn.trials
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
