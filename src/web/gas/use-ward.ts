// The ward looked at: one of the demo hospital, or a file read on this device and kept. Leaves out what is asked of it.
import { DEMO_WARD_IDS, DEMO_WARDS } from '../../supply/demo-wards/demo-wards.ts'
import { readWard } from '../../supply/read-ward.ts'
import type { WardFile } from '../../supply/ward.ts'
import { useKeptForm } from './kept-form.ts'
import type { KeptForm } from './kept-form.ts'
import type { ReadForm } from './read-form.ts'

const START: KeptForm = { texts: { ward: 'heron' }, rows: [] }
/** Stands for the file among the wards. */
export const OWN_FILE = 'file'

export interface ChosenWard {
  readonly choice: string
  readonly choose: (choice: string) => void
  readonly fileName: string
  readonly readFile: (file: File) => Promise<void>
  readonly ward: ReadForm<WardFile>
}

export function useWard(): ChosenWard {
  const { form, change } = useKeptForm('ward', START)
  const { texts } = form
  const choice = texts['ward'] ?? 'heron'
  return {
    choice,
    choose: (ward) => change({ ...form, texts: { ...texts, ward } }),
    fileName: texts['fileName'] ?? '',
    readFile: async (file) => {
      const fileText = await parsedText(file)
      change({ ...form, texts: { ...texts, ward: OWN_FILE, fileName: file.name, fileText } })
    },
    ward: wardOf(choice, texts['fileText'] ?? ''),
  }
}

/** What the file holds as JSON, whichever of the two it was written in; empty where it cannot be parsed. */
async function parsedText(file: File): Promise<string> {
  try {
    const { parse } = await import('yaml')
    return JSON.stringify(parse(await file.text())) ?? ''
  } catch {
    return ''
  }
}

function wardOf(choice: string, fileText: string): ReadForm<WardFile> {
  const id = DEMO_WARD_IDS.find((one) => one === choice)
  if (id !== undefined) return { ok: true, value: DEMO_WARDS[id] }
  if (fileText === '')
    return {
      ok: false,
      problems: [{ code: 'UNREADABLE_TEXT', path: 'gas.ward', value: null, field: 'ward.ward' }],
    }
  const read = readWard(JSON.parse(fileText))
  return read.ok
    ? { ok: true, value: read.ward }
    : { ok: false, problems: read.problems.map((problem) => ({ ...problem, field: '' })) }
}
