// Opens a case or shelf file, chosen or dropped, and saves the case as one. A file that is refused changes nothing. Leaves out reading it.
import { useState } from 'react'
import { Button } from 'react-aria-components'
import type { Problem } from '../../errors.ts'
import type { Case } from '../../patient/case.ts'
import { writeCase } from '../../patient/write-case.ts'
import {
  FILE_WORDS,
  openedCaseText,
  openedShelfText,
  refusedText,
  tooLargeText,
  unreadableText,
} from '../../words/case-file-text.ts'
import { problemLineText } from '../../words/web-form-text.ts'
import type { Draft } from '../case/draft.ts'
import { FileDrop, FileOpen } from '../parts/file-drop.tsx'
import { saveFile } from '../parts/save-file.ts'
import { chooseDemoShelf, chooseShelf, useShelf } from '../shelf/shelf-store.ts'

export interface CaseFileProps {
  /** Null while what is typed is refused: there is no case to save. */
  readonly about: Case | null
  readonly onCase: (draft: Draft) => void
}

interface Opened {
  readonly said: string
  readonly problems: readonly Problem[]
}

/** Larger than any shelf; a film dropped by mistake is not read. */
const BYTES_MOST = 2_000_000

export function CaseFile({ about, onCase }: CaseFileProps) {
  const [opened, setOpened] = useState<Opened | null>(null)
  const open = (file: File): void => {
    openFile(file, onCase)
      .then(setOpened)
      .catch((thrown: unknown) =>
        setOpened({ said: unreadableText(file.name, String(thrown)), problems: [] }),
      )
  }
  return (
    <FileDrop onFile={open}>
      {(isOver) => (
        <>
          <div className="buttons">
            <FileOpen
              label={FILE_WORDS.open}
              accept=".json,.yaml,.yml,.csv,application/json,text/csv"
              onFile={open}
            />
            {about === null ? null : (
              <Button className="button" onPress={() => save(about)}>
                {FILE_WORDS.save}
              </Button>
            )}
          </div>
          <p className="field-help">{isOver ? FILE_WORDS.dropNow : FILE_WORDS.drop}</p>
          <OpenedLines opened={opened} />
          <OwnShelf />
        </>
      )}
    </FileDrop>
  )
}

async function openFile(file: File, onCase: (draft: Draft) => void): Promise<Opened> {
  if (file.size > BYTES_MOST)
    return { said: tooLargeText(file.name, `${BYTES_MOST / 1_000_000} MB`), problems: [] }
  const { readText } = await import('./read-text.ts')
  const read = await readText(file.name, await file.text())
  switch (read.kind) {
    case 'unreadable':
      return { said: unreadableText(file.name, read.why), problems: [] }
    case 'refused':
      return { said: refusedText(file.name, read), problems: read.problems }
    case 'case':
      onCase(read.draft)
      return { said: openedCaseText(file.name), problems: [] }
    case 'shelf':
      chooseShelf(read.shelf)
      return { said: openedShelfText(file.name, read.shelf.hospital), problems: [] }
  }
}

function OpenedLines({ opened }: { readonly opened: Opened | null }) {
  return (
    <div aria-live="polite" className="file-said">
      {opened === null ? null : <p>{opened.said}</p>}
      {opened === null || opened.problems.length === 0 ? null : (
        <ul className="lines">
          {opened.problems.map((problem) => (
            <li key={problem.code + problem.path}>{problemLineText(problem)}</li>
          ))}
        </ul>
      )}
    </div>
  )
}

function OwnShelf() {
  const { shelf, isDemo, isKept } = useShelf()
  if (isDemo) return null
  return (
    <div className="offer">
      <span>
        {FILE_WORDS.ownShelf}: {shelf.hospital}. {isKept ? null : FILE_WORDS.notKept}
      </span>
      <Button className="button" onPress={chooseDemoShelf}>
        {FILE_WORDS.demoShelf}
      </Button>
    </div>
  )
}

function save(about: Case): void {
  const text = `${JSON.stringify(writeCase(about), null, 2)}\n`
  saveFile({
    name: `case-${fileNamePart(about.code ?? about.bed)}.json`,
    type: 'application/json',
    text,
  })
}

/** Letters, digits and hyphens only, so that every system takes it. */
function fileNamePart(text: string | undefined): string {
  const plain = (text ?? '').replaceAll(/[^A-Za-z0-9-]+/g, '-')
  return plain === '' ? 'oxwright' : plain
}
