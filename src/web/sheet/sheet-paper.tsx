// The sheet as it is read on the screen and printed: the same words, in the same order, as on any paper. Leaves out tools.
import { useLayoutEffect, useMemo, useRef } from 'react'
import type { ReactNode } from 'react'
import { qrCode } from '../../files/qr-code.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { writeFragment } from '../../sheet/fragment.ts'
import type { SheetRequest } from '../../sheet/fragment.ts'
import type { Sheet } from '../../sheet/sheet.ts'
import { sheetState } from '../../sheet/validity.ts'
import { sheetPage } from '../../words/sheet-text.ts'
import type { SheetFact, SheetList, SheetPage } from '../../words/sheet-text.ts'
import { wholeRuns } from '../../words/whole-runs.ts'
import { useNow } from '../gas/use-now.ts'
import { fitType } from './fit-type.ts'
import { momentOf } from './sheet-address.ts'
import { SHEET_PATH } from './sheet-path.ts'

export interface SheetPaperProps {
  readonly request: SheetRequest
  readonly shelf: Shelf
  readonly sheet: Sheet
}

export function SheetPaper({ request, shelf, sheet }: SheetPaperProps) {
  const now = momentOf(useNow())
  const state = sheetState(sheet, now)
  const page = useMemo(() => sheetPage({ sheet, shelf, state }), [sheet, shelf, state])
  const code = <Code request={request} page={page} />
  return (
    <>
      <article className="sheet-paper" data-counts={page.counts}>
        <Parts page={page} code={code} />
      </article>
      <PrinterCopy page={page} code={code} />
    </>
  )
}

interface PartsProps {
  readonly page: SheetPage
  readonly code: ReactNode
}

/** What the printer gets, in the largest type that one page of either paper holds. Readers of the screen have it above. */
function PrinterCopy({ page, code }: PartsProps) {
  const copy = useRef<HTMLDivElement>(null)
  // After every drawing: what it says may have become longer.
  useLayoutEffect(() => {
    if (copy.current !== null) fitType(copy.current)
  })
  return (
    <div className="sheet-printer" aria-hidden="true">
      <div className="sheet-paper as-paper" data-counts={page.counts} ref={copy}>
        <Parts page={page} code={code} />
      </div>
    </div>
  )
}

function Parts({ page, code }: PartsProps) {
  const lists = [...page.phases, page.call, page.watch, page.cautions]
  return (
    <>
      <div className="sheet-top">
        <div className="sheet-facts">
          <p className="sheet-who">{page.who}</p>
          <div className="sheet-state">
            <p>{page.state}</p>
            <p>{page.because}</p>
          </div>
          <Fraction page={page} />
        </div>
        {code}
      </div>
      <dl className="sheet-settings">
        {page.settings.map((fact) => (
          <Fact key={fact.name} fact={fact} />
        ))}
      </dl>
      <dl className="sheet-lines">
        {page.clocks.map((fact) => (
          <Fact key={fact.name} fact={fact} />
        ))}
      </dl>
      <p className="sheet-emergency">{page.emergency}</p>
      <div className="sheet-steps">
        {lists.map((list) => (
          <List key={list.id} list={list} />
        ))}
      </div>
      <dl className="sheet-lines">
        <Fact fact={page.restsOn} />
      </dl>
      <div className="sheet-by-hand">
        {page.byHand.map((name, at) => (
          // Two of them have the same name.
          <p key={`${name}${String(at)}`}>{name}</p>
        ))}
      </div>
      {page.foot.map((line) => (
        <p key={line} className="sheet-foot">
          {line}
        </p>
      ))}
    </>
  )
}

function Fact({ fact }: { readonly fact: SheetFact }) {
  return (
    <div>
      <dt>{fact.name}</dt>
      <dd>
        <Line said={fact.value} />
      </dd>
    </div>
  )
}

/** A number never parts from its unit. */
function Line({ said }: { readonly said: string }) {
  return wholeRuns(said).map(({ text, isWhole }, at) =>
    isWhole ? (
      // The same run may stand in a line twice.
      <span key={`${text}${String(at)}`} className="sheet-whole">
        {text}
      </span>
    ) : (
      text
    ),
  )
}

function Fraction({ page }: { readonly page: SheetPage }) {
  const { fraction, goal } = page
  return (
    <div className="sheet-number">
      <p>
        <span>{fraction.name}</span>
        <strong>{fraction.value}</strong>
      </p>
      <div>
        <p className="sheet-spread">
          {fraction.spread}; {fraction.printed}
        </p>
        <p>{fraction.dependsOn}</p>
        <dl className="sheet-lines">
          {goal.map((fact) => (
            <Fact key={fact.name} fact={fact} />
          ))}
        </dl>
      </div>
    </div>
  )
}

function Code({ request, page }: { readonly request: SheetRequest; readonly page: SheetPage }) {
  const { size, path } = useMemo(
    () => qrCode(`${location.origin}${SHEET_PATH}#${writeFragment(request)}`),
    [request],
  )
  return (
    <figure className="sheet-code">
      <svg viewBox={`0 0 ${size} ${size}`} role="img" aria-label={page.code.caption}>
        <path className="sheet-code-ground" d={`M0 0h${size}v${size}h-${size}z`} />
        <path className="sheet-code-dark" d={path} />
      </svg>
      <figcaption aria-hidden="true">{page.code.caption}</figcaption>
    </figure>
  )
}

function List({ list }: { readonly list: SheetList }) {
  return (
    <section className="sheet-list" data-list={list.id}>
      <h2>{list.name}</h2>
      <ul>
        {list.lines.map((line) => (
          <li key={line}>
            <Line said={line} />
          </li>
        ))}
      </ul>
    </section>
  )
}
