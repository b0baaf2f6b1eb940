// Writes small planted source trees into a temporary folder, so that a gate can be shown to fail on them.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'

/** Path from the planted root → text. */
export type PlantedFiles = Readonly<Record<string, string>>

/** Runs `judge` on a folder holding just these files and removes the folder afterwards. */
export function withPlanted<Result>(files: PlantedFiles, judge: (root: string) => Result): Result {
  const root = plant(files)
  try {
    return judge(root)
  } finally {
    rmSync(root, { recursive: true, force: true })
  }
}

/** Writes the files into a folder of their own, which the caller removes. */
export function plant(files: PlantedFiles): string {
  const root = mkdtempSync(join(tmpdir(), 'oxwright-planted-'))
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(root, path)), { recursive: true })
    writeFileSync(join(root, path), text)
  }
  return root
}
