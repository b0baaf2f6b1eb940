// `npm run -s oxwright -- <verb> …`: bundles the command line when its sources changed, and runs it. Installs nothing. Uses Node alone until then.
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { build } from './lib/build.mjs'
import { requireNode } from './lib/install.mjs'
import { DIST, ROOT } from './lib/paths.mjs'

/** Standard output belongs to the answer alone. */
const say = (line) => console.error(line)

try {
  requireNode()
  if (!existsSync(join(ROOT, 'node_modules', 'esbuild'))) {
    throw new Error(`missing: npm packages of package-lock.json\n  to install them: npm ci`)
  }
  await build(['cli'], { say })
  await import(pathToFileURL(join(DIST, 'cli', 'oxwright.mjs')).href)
} catch (error) {
  say(error.message)
  process.exitCode = 1
}
