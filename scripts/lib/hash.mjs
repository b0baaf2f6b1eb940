// Content hashes and stamps: tells whether something built from files is still fresh. Uses Node alone.
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { ROOT } from './paths.mjs'

function filesUnder(path) {
  if (!existsSync(path)) return []
  if (!statSync(path).isDirectory()) return [path]
  return readdirSync(path)
    .toSorted()
    .flatMap((name) => filesUnder(join(path, name)))
}

/** SHA-256 over names and contents of the given files and folders (tests left out). */
export function hashOf(paths) {
  const hash = createHash('sha256')
  for (const file of paths.flatMap((path) => filesUnder(join(ROOT, path)))) {
    if (/\.test\.tsx?$/.test(file)) continue
    hash.update(relative(ROOT, file)).update('\0').update(readFileSync(file)).update('\0')
  }
  return hash.digest('hex')
}

export function readStamp(file) {
  return existsSync(file) ? readFileSync(file, 'utf8') : undefined
}

export function writeStamp(file, value) {
  mkdirSync(dirname(file), { recursive: true })
  writeFileSync(file, value)
}
