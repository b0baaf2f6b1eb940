// One outside check as it stands in the list. Leaves out which are shown.
import { useEffect, useRef } from 'react'
import type { ExplainedMiss } from '../../evidence/report.ts'
import type { RowOutcome } from '../../evidence/verdict.ts'
import { conditionText, VERDICT_NAMES } from '../../words/evidence-text.ts'
import { FAMILY_NAMES } from '../../words/names.ts'
import { EVIDENCE_PAGE, RESULT_NAMES } from '../../words/web-evidence-text.ts'
import { resultOf } from './filters.ts'
import { explanationText, rowFacts, sourceOf } from './row-text.ts'

export interface RowItemProps {
  readonly outcome: RowOutcome
  readonly misses: readonly ExplainedMiss[]
  /** The address of the page leads here. */
  readonly isMarked: boolean
}

export function RowItem({ outcome, misses, isMarked }: RowItemProps) {
  const { row, verdict } = outcome
  const result = resultOf(outcome)
  const source = sourceOf(outcome)
  const why = explanationText(outcome, misses)
  const item = useRef<HTMLLIElement>(null)
  useEffect(() => {
    if (!isMarked) return
    item.current?.scrollIntoView({ block: 'center' })
    item.current?.focus({ preventScroll: true })
  }, [isMarked])
  return (
    <li
      ref={item}
      className="check-row"
      id={row.id}
      data-result={result}
      aria-current={isMarked ? 'location' : undefined}
      tabIndex={-1}
    >
      <p className="check-head">
        <strong className="check-verdict">
          {result === 'miss'
            ? `${RESULT_NAMES.miss} (${VERDICT_NAMES[verdict]})`
            : RESULT_NAMES[result]}
        </strong>{' '}
        <span>
          {row.family === null ? '' : `${FAMILY_NAMES[row.family]}: `}
          {conditionText(row)}
        </span>
      </p>
      {rowFacts(outcome).map((fact) => (
        <p key={fact} className="check-fact">
          {fact}
        </p>
      ))}
      {why === null ? null : <p className="check-why">{why}</p>}
      <p className="check-fact check-source">
        {source === null ? null : (
          <span lang="en">
            {source.citation}
            {source.doi === undefined ? null : (
              <>
                {', '}
                <a
                  className="check-link"
                  href={`https://doi.org/${source.doi}`}
                  rel="noreferrer"
                  target="_blank"
                >
                  doi {source.doi}
                </a>
              </>
            )}
          </span>
        )}
        <a
          className="check-link"
          href={`#${row.id}`}
          aria-label={`${EVIDENCE_PAGE.link}, ${row.id}`}
        >
          {row.id}
        </a>
      </p>
    </li>
  )
}
