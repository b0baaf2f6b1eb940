// Reads the example cases of examples/ from disk, JSON and YAML alike. Leaves out what is in them.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'
import { ROOT } from './files.ts'

const FOLDER = join(ROOT, 'examples')

/** File names of all cases, sorted. */
export const EXAMPLE_FILES: readonly string[] = readdirSync(FOLDER)
  .filter((name) => /\.(json|yaml)$/.test(name))
  .toSorted()

export function parsedFile(file: string): unknown {
  const text = readFileSync(join(FOLDER, file), 'utf8')
  const parsed: unknown = file.endsWith('.json') ? JSON.parse(text) : parse(text)
  return parsed
}

/** The example by its name without ending. */
export function parsedExample(name: string): unknown {
  const file = EXAMPLE_FILES.find((candidate) => candidate.replace(/\.\w+$/, '') === name)
  if (file === undefined) throw new Error(`no example ${name}`)
  return parsedFile(file)
}
