// The shelf as files, out and in: saves it, opens a file, shows what each row would do, takes the good rows when told to. Leaves out judging rows (files/shelf-csv).
import { useState } from 'react'
import { Button } from 'react-aria-components'
import type { Problem } from '../../errors.ts'
import { problemText } from '../../words/problem-text.ts'
import { tooLargeText } from '../../words/case-file-text.ts'
import { IMPORT_WORDS, tookText, unreadableFileText } from '../../words/web-shelf-import-text.ts'
import { FileDrop, FileOpen } from '../parts/file-drop.tsx'
import { saveFile } from '../parts/save-file.ts'
import type { ImportedFile } from './import-file.ts'
import { ImportReport } from './import-report.tsx'
import { isImportUndoable, takeImport, undoImport } from './import-undo.ts'
import { useShelf } from './shelf-store.ts'
import type { ShelfChoice } from './shelf-store.ts'
import '../styles/shelf-import.css'

/** Larger than any shelf; a film dropped by mistake is not read. */
const BYTES_MOST = 2_000_000

interface Said {
  readonly text: string
  readonly problems: readonly Problem[]
}

const NOTHING_SAID: Said = { text: '', problems: [] }

export function ImportPart() {
  const choice = useShelf()
  const [file, setFile] = useState<ImportedFile | null>(null)
  const [filesOpened, setFilesOpened] = useState(0)
  const [said, setSaid] = useState<Said>(NOTHING_SAID)
  const show = (found: ImportedFile | Said): void => {
    setFile('text' in found ? null : found)
    setFilesOpened((before) => before + 1)
    setSaid('text' in found ? found : NOTHING_SAID)
  }
  const open = (chosen: File): void => {
    opened(chosen)
      .then(show)
      .catch((thrown: unknown) =>
        show({ text: unreadableFileText(chosen.name, String(thrown)), problems: [] }),
      )
  }
  return (
    <section className="shelf-import" aria-labelledby="shelf-import">
      <h2 id="shelf-import">{IMPORT_WORDS.heading}</h2>
      <SaveButtons choice={choice} />
      <FileChoice onFile={open} />
      <div aria-live="polite" className="file-said">
        {said.text === '' ? null : <p>{said.text}</p>}
        {said.problems.map((problem) => (
          <p key={problem.code + problem.path}>{problemText(problem)}</p>
        ))}
      </div>
      {file === null && isImportUndoable(choice.shelf) ? (
        <Button
          className="button"
          onPress={() => {
            undoImport()
            setSaid({ text: IMPORT_WORDS.undone, problems: [] })
          }}
        >
          {IMPORT_WORDS.undo}
        </Button>
      ) : null}
      {file === null ? null : (
        <ImportReport
          key={filesOpened}
          file={file}
          choice={choice}
          onTake={(shelf, counts) => {
            takeImport(shelf)
            setFile(null)
            setSaid({ text: tookText(file.name, counts), problems: [] })
          }}
          onRefused={(problems) => setSaid({ text: IMPORT_WORDS.notTaken, problems })}
          onLeave={() => {
            setFile(null)
            setSaid({ text: IMPORT_WORDS.left, problems: [] })
          }}
        />
      )}
    </section>
  )
}

async function opened(chosen: File): Promise<ImportedFile | Said> {
  if (chosen.size > BYTES_MOST)
    return { text: tooLargeText(chosen.name, `${BYTES_MOST / 1_000_000} MB`), problems: [] }
  const { openedFile } = await import('./import-file.ts')
  const read = openedFile(chosen.name, await chosen.text())
  return read.ok ? read.file : { text: unreadableFileText(chosen.name, read.why), problems: [] }
}

function SaveButtons({ choice }: { readonly choice: ShelfChoice }) {
  const save = (kind: 'shelfAsCsv' | 'shelfAsJson'): void => {
    void import('./import-file.ts').then((files) => saveFile(files[kind](choice.shelf)))
  }
  return (
    <div className="buttons">
      <Button className="button" onPress={() => save('shelfAsCsv')}>
        {IMPORT_WORDS.saveCsv}
      </Button>
      <Button className="button" onPress={() => save('shelfAsJson')}>
        {IMPORT_WORDS.saveJson}
      </Button>
    </div>
  )
}

function FileChoice({ onFile }: { readonly onFile: (file: File) => void }) {
  return (
    <FileDrop onFile={onFile}>
      {() => (
        <>
          <FileOpen
            label={IMPORT_WORDS.open}
            accept=".csv,.json,.yaml,.yml,text/csv,application/json"
            onFile={onFile}
          />
          <p className="field-help">{IMPORT_WORDS.openHelp}</p>
        </>
      )}
    </FileDrop>
  )
}
