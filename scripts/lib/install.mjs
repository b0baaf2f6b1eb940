// Installs what this checkout lacks: npm packages, and Debian's chromium for the browser tests. Uses Node alone.
import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { hashOf, readStamp, writeStamp } from './hash.mjs'
import { ROOT } from './paths.mjs'
import { run, which } from './run.mjs'

const NODE_AT_LEAST = [20, 19]
const PACKAGES_STAMP = join(ROOT, 'node_modules', '.oxwright-lock')
const CHROMIUM_NAMES = ['chromium', 'chromium-browser', 'google-chrome']
const APT_WAIT = ['-o', 'DPkg::Lock::Timeout=600']

/** Something is missing and may not be installed from here; `command` is what the reader can do about it. */
export class MissingError extends Error {
  constructor({ missing, command }) {
    super(`missing: ${missing}\n  to install it: ${command}`)
  }
}

export function requireNode() {
  const [major, minor] = process.versions.node.split('.').map(Number)
  const [wantMajor, wantMinor] = NODE_AT_LEAST
  if (major > wantMajor || (major === wantMajor && minor >= wantMinor)) return
  throw new MissingError({
    missing: `Node ${NODE_AT_LEAST.join('.')} or newer (this is ${process.versions.node})`,
    command: 'see https://nodejs.org/en/download',
  })
}

/** `npm ci` when node_modules is absent or was installed from another lock file. */
export async function ensurePackages() {
  const wanted = hashOf(['package-lock.json'])
  if (readStamp(PACKAGES_STAMP) === wanted) return
  console.log('installing npm packages (npm ci) …')
  const code = await run('npm', ['ci', '--no-audit', '--no-fund'])
  if (code !== 0) {
    throw new MissingError({
      missing: `npm packages of package-lock.json (npm ci ended with code ${code})`,
      command: 'npm ci   (with the npm registry reachable)',
    })
  }
  writeStamp(PACKAGES_STAMP, wanted)
}

/** The browser the tests drive: OXWRIGHT_CHROMIUM, else the first known name on PATH. */
export function findChromium() {
  const chosen = process.env.OXWRIGHT_CHROMIUM
  if (chosen !== undefined) return existsSync(chosen) ? chosen : undefined
  return CHROMIUM_NAMES.map(which).find((path) => path !== undefined)
}

/** Finds chromium, or installs Debian's package when this user may; resolves to its path. */
export async function ensureChromium() {
  const found = findChromium()
  if (found !== undefined) return found
  if (process.env.OXWRIGHT_CHROMIUM !== undefined) {
    throw new MissingError({
      missing: `the browser that OXWRIGHT_CHROMIUM names: ${process.env.OXWRIGHT_CHROMIUM}`,
      command: 'unset OXWRIGHT_CHROMIUM   (to use the chromium on PATH)',
    })
  }
  const missing = new MissingError({
    missing: 'chromium (the browser and accessibility tests drive it)',
    command: 'sudo apt-get update && sudo apt-get install -y --no-install-recommends chromium',
  })
  const mayInstall = process.getuid?.() === 0 && which('apt-get') !== undefined
  if (!mayInstall) throw missing
  console.log('installing the Debian package chromium (apt-get) …')
  const env = { DEBIAN_FRONTEND: 'noninteractive' }
  const updated = await run('apt-get', [...APT_WAIT, 'update', '-qq'], { env })
  if (updated !== 0) throw missing
  const install = ['install', '-y', '-qq', '--no-install-recommends', 'chromium']
  const installed = await run('apt-get', [...APT_WAIT, ...install], { env })
  const path = findChromium()
  if (installed !== 0 || path === undefined) throw missing
  return path
}
