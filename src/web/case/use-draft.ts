// The typed case with the time it was last typed or confirmed, kept in this browser. Leaves out the form.
import { useCallback, useEffect, useState } from 'react'
import { useClock } from '../parts/clock.tsx'
import { keepDraft, keptDraft, keptTypedAt } from './draft-store.ts'
import type { Draft } from './draft.ts'
import { FIRST_EXAMPLE } from './first-example.ts'

interface Typed {
  readonly draft: Draft
  /** Whether it holds anything that choosing its example again would not bring back. */
  readonly isTouched: boolean
  readonly typedAtMs: number
}

export interface DraftState extends Typed {
  readonly change: (next: Draft | ((now: Draft) => Draft)) => void
  /** What was typed before another case took its place; null where nothing was. */
  readonly before: Draft | null
  readonly replace: (next: Draft) => void
  /** The reader says that what is typed holds now. */
  readonly confirm: () => void
}

export function useDraft(): DraftState {
  const clock = useClock()
  const [typed, setTyped] = useState<Typed>(() => {
    const draft = keptDraft(localStorage)
    const nowMs = clock.nowMs()
    return draft === undefined
      ? { draft: FIRST_EXAMPLE.draft, typedAtMs: nowMs, isTouched: false }
      : { draft, isTouched: true, typedAtMs: keptTypedAt(localStorage) ?? nowMs }
  })
  const [before, setBefore] = useState<Draft | null>(null)
  const { draft, isTouched } = typed
  useEffect(() => {
    keepDraft(localStorage, typed.draft, typed.typedAtMs)
  }, [typed])
  const change = useCallback<DraftState['change']>(
    (next) =>
      setTyped((now) => ({
        draft: typeof next === 'function' ? next(now.draft) : next,
        isTouched: true,
        typedAtMs: clock.nowMs(),
      })),
    [clock],
  )
  const replace = useCallback(
    (next: Draft) => {
      const isBack = before === next
      setBefore(isTouched ? draft : isBack ? null : before)
      setTyped({ draft: next, isTouched: isBack, typedAtMs: clock.nowMs() })
    },
    [draft, isTouched, before, clock],
  )
  const confirm = useCallback(
    () => setTyped((now) => ({ ...now, typedAtMs: clock.nowMs() })),
    [clock],
  )
  return { ...typed, change, before, replace, confirm }
}
