// Builds the parts of dist/ that are stale: library, its types, command line, web page. Needs the npm packages.
import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { hashOf, readStamp, writeStamp } from './hash.mjs'
import { CACHE, DIST, ROOT, WEB_DIST } from './paths.mjs'
import { runBin } from './run.mjs'

const SOURCES = [
  'src',
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'tsconfig.build.json',
  'vite.config.ts',
  'scripts/lib/build.mjs',
]

const PARTS = {
  library: { product: join(DIST, 'index.js'), build: buildLibrary },
  types: { product: join(DIST, 'types', 'index.d.ts'), build: buildTypes },
  cli: { product: join(DIST, 'cli', 'oxwright.mjs'), build: buildCli },
  web: { product: join(WEB_DIST, 'index.html'), build: buildWeb },
}

/** Builds the named parts where their sources changed since the last build; throws when one fails. */
export async function build(names = Object.keys(PARTS), { say = console.log } = {}) {
  const wanted = hashOf(SOURCES)
  for (const name of names) {
    const { product, build: buildPart } = PARTS[name]
    const stamp = join(CACHE, `built-${name}`)
    if (readStamp(stamp) === wanted && existsSync(product)) continue
    say(`building ${name} …`)
    await buildPart()
    if (!existsSync(product)) throw new Error(`build of ${name} left no ${product}`)
    writeStamp(stamp, wanted)
  }
}

async function bundle(options) {
  const { build: esbuild } = await import('esbuild')
  await esbuild({
    bundle: true,
    format: 'esm',
    absWorkingDir: ROOT,
    logLevel: 'warning',
    ...options,
  })
}

async function buildLibrary() {
  await bundle({
    entryPoints: ['src/index.ts'],
    outfile: join(DIST, 'index.js'),
    platform: 'neutral',
    target: 'es2023',
  })
}

async function buildTypes() {
  rmSync(join(DIST, 'types'), { recursive: true, force: true })
  await mustPass('typescript/bin/tsc', ['-p', 'tsconfig.build.json'])
}

async function buildCli() {
  const folder = join(DIST, 'cli')
  const product = join(folder, 'oxwright.mjs')
  // Set in place whole, parts first, so that a run beside this one never reads half a bundle.
  const beside = `${folder}.${process.pid}`
  await bundle({
    entryPoints: [{ in: 'src/cli/main.ts', out: 'oxwright' }],
    outdir: beside,
    outExtension: { '.js': '.mjs' },
    // What few verbs need, such as the writer of PDF, stands in parts of its own, loaded when asked for.
    splitting: true,
    chunkNames: '[name]-[hash]',
    platform: 'node',
    target: 'node20',
    banner: {
      js: "import { createRequire as oxwrightRequire } from 'node:module'; const require = oxwrightRequire(import.meta.url); const __dirname = import.meta.dirname;",
    },
  })
  const names = readdirSync(beside)
  mkdirSync(folder, { recursive: true })
  for (const name of names.toSorted(
    (a, b) => Number(join(folder, a) === product) - Number(join(folder, b) === product),
  ))
    renameSync(join(beside, name), join(folder, name))
  rmSync(beside, { recursive: true })
  for (const name of readdirSync(folder))
    if (!names.includes(name)) rmSync(join(folder, name), { recursive: true })
}

async function buildWeb() {
  // A test runner sets NODE_ENV to test, and React would then be built for development: slower and larger.
  await mustPass(
    'vite/bin/vite.js',
    ['build', '--config', 'vite.config.ts', '--logLevel', 'warn'],
    { env: { NODE_ENV: 'production' } },
  )
}

async function mustPass(packageBin, args, options) {
  const code = await runBin(packageBin, args, options)
  if (code !== 0) throw new Error(`${packageBin} ${args.join(' ')} ended with code ${code}`)
}
