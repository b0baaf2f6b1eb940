// What a file would do to the shelf, row by row: counts first, then the rows of one outcome, refused ones before all. Nothing changes until taken. Leaves out judging rows.
import { useEffect, useMemo, useRef, useState } from 'react'
import { Button } from 'react-aria-components'
import type { Problem } from '../../errors.ts'
import type { ShelfReading, ShelfRowReading } from '../../files/shelf-csv/shelf-reading.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { changeText, rowHeadText, rowProblemText } from '../../words/shelf-file-text.ts'
import {
  filterTexts,
  IMPORT_WORDS,
  moreRowsText,
  reportHeadText,
  takeText,
} from '../../words/web-shelf-import-text.ts'
import type { OutcomeCounts } from '../../words/web-shelf-import-text.ts'
import { RadioChoice } from '../parts/radio-choice.tsx'
import type { ImportedFile } from './import-file.ts'
import { saveFile } from '../parts/save-file.ts'
import type { ShelfChoice } from './shelf-store.ts'

export interface ImportReportProps {
  readonly file: ImportedFile
  readonly choice: ShelfChoice
  readonly onTake: (shelf: Shelf, counts: OutcomeCounts) => void
  readonly onRefused: (problems: readonly Problem[]) => void
  readonly onLeave: () => void
}

const TARGETS = ['into', 'instead'] as const
type Target = (typeof TARGETS)[number]
const TARGET_TEXTS = { into: IMPORT_WORDS.into, instead: IMPORT_WORDS.instead }

const OUTCOMES = ['refused', 'changed', 'added', 'same'] as const

export function ImportReport({ file, choice, onTake, onRefused, onLeave }: ImportReportProps) {
  const [target, setTarget] = useState<Target>(() => usualTarget(file, choice))
  const base = target === 'into' ? choice.shelf : file.nothing
  const reading = useMemo(() => file.read(base), [file, base])
  const counts = countsOf(reading)
  const taken = counts.added + counts.changed
  const heading = useRef<HTMLHeadingElement>(null)
  // A reader that speaks begins with the counts.
  useEffect(() => heading.current?.focus(), [])
  const take = (): void => {
    const read = file.take(base, reading)
    if (read.ok) onTake(read.shelf, counts)
    else onRefused(read.problems)
  }
  return (
    <section className="import-report" aria-labelledby="import-report">
      <h3 id="import-report" ref={heading} tabIndex={-1}>
        {reportHeadText(file.name, counts)}
      </h3>
      <p className="field-help">{IMPORT_WORDS.notYet}</p>
      {reading.headProblems.length === 0 ? null : (
        <ul className="lines import-head">
          {reading.headProblems.map((problem) => (
            <li key={problem.code + problem.column}>{rowProblemText(problem)}</li>
          ))}
        </ul>
      )}
      <RadioChoice
        label={IMPORT_WORDS.target}
        value={target}
        choices={TARGETS}
        texts={TARGET_TEXTS}
        onChoose={setTarget}
      />
      <p className="field-help">
        {target === 'into' ? IMPORT_WORDS.intoHelp : IMPORT_WORDS.insteadHelp}
      </p>
      <div className="buttons">
        {taken === 0 ? null : (
          <Button className="button import-take" onPress={take}>
            {takeText(taken)}
          </Button>
        )}
        {counts.refused === 0 ? null : (
          <Button className="button" onPress={() => saveFile(file.refused(reading))}>
            {IMPORT_WORDS.saveRefused}
          </Button>
        )}
        <Button className="button" onPress={onLeave}>
          {IMPORT_WORDS.leave}
        </Button>
      </div>
      {taken === 0 ? <p>{IMPORT_WORDS.nothingToTake}</p> : null}
      <Rows reading={reading} counts={counts} />
    </section>
  )
}

/** A file of another hospital is no change to the invented one. */
function usualTarget(file: ImportedFile, { shelf, isDemo }: ShelfChoice): Target {
  if (!isDemo) return 'into'
  const renames = ({ list, changes }: ShelfRowReading): boolean =>
    list === 'hospital' && changes.some(({ column }) => column === 'name')
  return file.read(shelf).rows.some(renames) ? 'instead' : 'into'
}

function countsOf({ rows }: ShelfReading): OutcomeCounts {
  const count = (outcome: ShelfRowReading['outcome']): number =>
    rows.filter((row) => row.outcome === outcome).length
  return {
    added: count('added'),
    changed: count('changed'),
    same: count('same'),
    refused: count('refused'),
  }
}

/** More would make the page slow; the counts above are of all. */
const ROWS_MOST = 200

function Rows(props: { readonly reading: ShelfReading; readonly counts: OutcomeCounts }) {
  const { reading, counts } = props
  const [chosen, setChosen] = useState<(typeof OUTCOMES)[number] | null>(null)
  const outcome = chosen ?? OUTCOMES.find((one) => counts[one] > 0) ?? 'same'
  const rows = reading.rows.filter((row) => row.outcome === outcome)
  return (
    <>
      <RadioChoice
        label={IMPORT_WORDS.show}
        value={outcome}
        choices={OUTCOMES}
        texts={filterTexts(counts)}
        onChoose={setChosen}
      />
      {rows.length === 0 ? <p className="field-help">{IMPORT_WORDS.noRow}</p> : null}
      <ul className="import-rows">
        {rows.slice(0, ROWS_MOST).map((row) => (
          <li key={row.line}>
            <p className="import-row-head">{rowHeadText(row)}</p>
            <RowLines row={row} />
          </li>
        ))}
      </ul>
      {rows.length > ROWS_MOST ? <p>{moreRowsText(rows.length - ROWS_MOST)}</p> : null}
    </>
  )
}

function RowLines({ row }: { readonly row: ShelfRowReading }) {
  const lines =
    row.outcome === 'refused' ? row.problems.map(rowProblemText) : row.changes.map(changeText)
  if (lines.length === 0) return null
  return (
    <ul className="lines">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  )
}
