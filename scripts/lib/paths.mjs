// Where things are in this checkout. Uses Node alone, so that it runs before anything is installed.
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

export const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..', '..')
export const DIST = join(ROOT, 'dist')
export const CACHE = join(ROOT, '.cache')
export const WEB_DIST = join(DIST, 'web')
