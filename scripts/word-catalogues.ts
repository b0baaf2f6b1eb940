// The catalogues of messages: read out of the sources into PO files, and compiled into what the program loads. Leaves out who translates them.
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { getCatalogs } from '@lingui/cli/api'
import { makeConfig } from '@lingui/conf'
import { parseFile } from '../test/support/ast.ts'
import { filesUnder, isTestFile, ROOT } from '../test/support/files.ts'
import type { SaidMessage } from './said-messages.ts'
import { messagesIn } from './said-messages.ts'

/** Languages that are translated; English is what the sources hold. */
export const TRANSLATED = ['de'] as const
export type TranslatedLanguage = (typeof TRANSLATED)[number]

const FOLDERS = ['src/words', 'src/kit/demo-shelf', 'src/evidence']
const CATALOGUES = 'src/words/languages/{locale}'

/** Every message of the sources, in the order of files and lines. */
export function saidMessages(root: string = ROOT): readonly SaidMessage[] {
  return FOLDERS.flatMap((folder) => filesUnder({ root, folder, endings: ['.ts'] }))
    .filter((path) => !isTestFile(path))
    .flatMap((path) => messagesIn(parseFile({ root, path })))
}

/** The message itself is its id; without line numbers an edit elsewhere changes no entry. */
const PO_OPTIONS = { lineNumbers: false, explicitIdAsDefault: true }

async function poCatalogue() {
  const [only] = await getCatalogs(
    makeConfig(
      {
        rootDir: ROOT,
        locales: [...TRANSLATED],
        sourceLocale: 'en',
        catalogs: [{ path: CATALOGUES, include: FOLDERS }],
        format: 'po',
        formatOptions: PO_OPTIONS,
      },
      { skipValidation: true },
    ),
  )
  if (only === undefined) throw new Error('no catalogue is configured')
  return only
}

/** Brings the PO files to exactly the messages of the sources; what is translated stays. */
export async function extractMessages(): Promise<void> {
  const catalogue = await poCatalogue()
  const next: Record<string, { origin: [string][] }> = {}
  for (const { message, path } of saidMessages()) {
    const entry = (next[message] ??= { origin: [] })
    if (!entry.origin.some(([known]) => known === path)) entry.origin.push([path])
  }
  const merged = catalogue.merge(await catalogue.readAll(), next, { overwrite: false })
  for (const language of TRANSLATED) {
    const entries = Object.entries(merged[language] ?? {})
      .filter(([, entry]) => entry.obsolete !== true)
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
    await catalogue.write(language, Object.fromEntries(entries))
  }
}

/** Message → translation, empty where there is none yet. */
export async function translationsIn(
  language: TranslatedLanguage,
): Promise<ReadonlyMap<string, string>> {
  const read = await (await poCatalogue()).read(language)
  return new Map(Object.entries(read ?? {}).map(([id, entry]) => [id, entry.translation ?? '']))
}

export function compiledPath(language: TranslatedLanguage): string {
  return join(ROOT, CATALOGUES.replace('{locale}', language)) + '.json'
}

/** What the program loads: the translated messages alone, in one order. */
export async function compiledText(language: TranslatedLanguage): Promise<string> {
  const entries = [...(await translationsIn(language))]
    .filter(([, translation]) => translation !== '')
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
  return `${JSON.stringify(Object.fromEntries(entries), null, 2)}\n`
}

export async function compileMessages(): Promise<void> {
  for (const language of TRANSLATED)
    writeFileSync(compiledPath(language), await compiledText(language))
}

export function readCompiled(language: TranslatedLanguage): string {
  return readFileSync(compiledPath(language), 'utf8')
}
