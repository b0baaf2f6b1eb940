// What is on really, shut until wanted and loaded then. Leaves out its entries.
import { lazy, Suspense } from 'react'
import { REALLY_WORDS } from '../../words/web-really-text.ts'
import { Fold } from '../parts/fold.tsx'
import type { EntriesProps } from './entries.tsx'

const Entries = lazy(async () => ({ default: (await import('./entries.tsx')).Entries }))

export function Really(props: EntriesProps) {
  return (
    <Fold heading={REALLY_WORDS.heading} level={3}>
      <Suspense fallback={<p>{REALLY_WORDS.opening}</p>}>
        <Entries {...props} />
      </Suspense>
    </Fold>
  )
}
