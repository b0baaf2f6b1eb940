// The list of all checks: narrowed by choice, misses first, a page at a time, each at an address of its own. Leaves out one check's look.
import { useDeferredValue, useEffect, useMemo, useState } from 'react'
import { Button } from 'react-aria-components'
import type { EvidenceReport } from '../../evidence/report.ts'
import type { RowOutcome } from '../../evidence/verdict.ts'
import { FAMILY_NAMES } from '../../words/names.ts'
import { EVIDENCE_PAGE, shownText } from '../../words/web-evidence-text.ts'
import { missesFirst, NO_FILTERS, passes, resultOf } from './filters.ts'
import type { Filters } from './filters.ts'
import { RowFilters } from './row-filters.tsx'
import { RowItem } from './row-item.tsx'
import { searchText } from './row-text.ts'

const PAGE_ROWS = 50

export function Rows({ report }: { readonly report: EvidenceReport }) {
  const [filters, setFilters] = useState(NO_FILTERS)
  const [count, setCount] = useState(PAGE_ROWS)
  const [markedId, unmark] = useHash()
  const asked = useDeferredValue(filters)
  const ordered = useMemo(() => missesFirst(report.outcomes), [report])
  const fitting = useMemo(
    () => ordered.filter((outcome) => passes(outcome, asked, searchText)),
    [ordered, asked],
  )
  const [seenMark, setSeenMark] = useState<string | null>(null)
  if (markedId !== seenMark) {
    // A newly marked row is shown whatever was chosen before.
    setSeenMark(markedId)
    const at = ordered.findIndex(({ row }) => row.id === markedId)
    if (at >= 0) {
      setFilters(NO_FILTERS)
      setCount(Math.max(PAGE_ROWS, at + 1))
    }
  }
  const shown = fitting.slice(0, count)
  const choose = (next: Filters): void => {
    unmark()
    setFilters(next)
    setCount(PAGE_ROWS)
  }
  const item = (outcome: RowOutcome) => (
    <RowItem
      key={outcome.row.id}
      outcome={outcome}
      misses={report.misses}
      isMarked={outcome.row.id === markedId}
    />
  )
  return (
    <>
      <RowFilters outcomes={report.outcomes} filters={filters} onFilter={choose} />
      <p className="row-count">
        <output>{shownText(fitting.length, shown.length)}</output>
        {filters === NO_FILTERS ? null : (
          <Button className="button" onPress={() => choose(NO_FILTERS)}>
            {EVIDENCE_PAGE.clear}
          </Button>
        )}
      </p>
      {fitting.length === 0 ? <p>{EVIDENCE_PAGE.none}</p> : null}
      <ol className="check-rows">
        {shown.filter(isMissed).map(item)}
        <Unmeasured report={report} filters={asked} />
        {shown.filter((outcome) => !isMissed(outcome)).map(item)}
      </ol>
      {shown.length < fitting.length ? (
        <Button className="button" onPress={() => setCount(count + 2 * PAGE_ROWS)}>
          {EVIDENCE_PAGE.more}
        </Button>
      ) : null}
    </>
  )
}

const isMissed = (outcome: RowOutcome): boolean => resultOf(outcome) === 'miss'

/** A line for each interface that no measurement speaks of, where the choice asks for measurements of it. */
function Unmeasured(props: { readonly report: EvidenceReport; readonly filters: Filters }) {
  const { report, filters } = props
  const isOfOthers =
    filters.source !== '' || filters.quantity !== '' || filters.text !== '' || filters.result !== ''
  const isMeasured = filters.group === '' || filters.group === 'measured'
  if (isOfOthers || !isMeasured) return null
  const families = report.families.filter(
    ({ family, hasMeasurement }) =>
      !hasMeasurement && (filters.family === '' || filters.family === family),
  )
  if (families.length === 0) return null
  return (
    <>
      {families.map(({ family }) => (
        <li key={family} className="check-row" data-result="none">
          <p className="check-head">
            <strong className="check-verdict">{EVIDENCE_PAGE.noMeasurement}</strong>{' '}
            <span>{FAMILY_NAMES[family]}</span>
          </p>
        </li>
      ))}
    </>
  )
}

/** What the address names after the hash, as it changes, and how to take it from the address. */
function useHash(): readonly [hash: string | null, clear: () => void] {
  const [hash, setHash] = useState(hashNow)
  useEffect(() => {
    const follow = (): void => setHash(hashNow())
    addEventListener('hashchange', follow)
    addEventListener('popstate', follow)
    return () => {
      removeEventListener('hashchange', follow)
      removeEventListener('popstate', follow)
    }
  }, [])
  const clear = (): void => {
    if (hash === null) return
    history.replaceState(history.state, '', location.pathname)
    setHash(null)
  }
  return [hash, clear]
}

function hashNow(): string | null {
  const hash = location.hash.slice(1)
  return hash === '' ? null : decodeURIComponent(hash)
}
