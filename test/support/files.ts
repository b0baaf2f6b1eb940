// Finds files of this checkout for the gates. Leaves out their contents.
import { existsSync, readdirSync, statSync } from 'node:fs'
import { dirname, join, relative, sep } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The checkout's own folder, with which every path of the gates begins. */
export const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..')

/** Files under `folder` (from `root`) with one of the endings, as sorted paths with `/` from `root`. */
export function filesUnder(options: {
  readonly root: string
  readonly folder: string
  readonly endings: readonly string[]
}): string[] {
  const start = join(options.root, options.folder)
  if (!existsSync(start)) return []
  if (statSync(start).isFile()) return [options.folder]
  return readdirSync(start, { recursive: true, encoding: 'utf8' })
    .filter((name) => options.endings.some((ending) => name.endsWith(ending)))
    .filter((name) => statSync(join(start, name)).isFile())
    .map((name) => relative(options.root, join(start, name)).split(sep).join('/'))
    .toSorted()
}

export function isTestFile(path: string): boolean {
  return /\.test\.tsx?$/.test(path)
}
