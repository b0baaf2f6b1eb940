// The packed package, unpacked into an empty folder without node_modules, works in Node, in a browser and for a compiler. Leaves out the registry.
import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { build } from 'esbuild'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { parseFile } from './support/ast.ts'
import { launchChromium } from './support/browser.ts'
import { ROOT } from './support/files.ts'
import { importsOf } from './support/imports.ts'
import { type UnpackedPackage, unpackPackage } from './support/packed.ts'

/** What a program that uses the library does: a ratio anyone can check by hand, one breath, a refused input. */
const PROGRAM = `
  import { BARE_NETWORK, DomainError, createPeriodicSolver, effectiveO2Fraction, entrainmentRatio } from 'oxwright'
  function refusal(targetO2Fraction) {
    try {
      return entrainmentRatio({ targetO2Fraction })
    } catch (error) {
      return error instanceof DomainError ? [error.code, error.path, error.value] : String(error)
    }
  }
  const ratio = entrainmentRatio({ targetO2Fraction: 0.5, airO2Fraction: 0.2 })
  const roomAir = effectiveO2Fraction(createPeriodicSolver(), {
    network: BARE_NETWORK,
    breath: {
      tidalVolumeL: 0.5,
      ratePerMin: 15,
      dutyFraction: 0.4,
      inspiration: { kind: 'half-sine' },
      expiration: { kind: 'constant', shareOfExpiration: 0.9 },
    },
    sourceO2Fraction: 1,
    metabolism: { oxygenUptakeLpmBtps: 0.3, carbonDioxideOutputLpmBtps: 0.24 },
  })
  report({ ratio, roomAir, refused: refusal(1.5) })
`
/** (1 − 0.5)/(0.5 − 0.2), by hand; a breath without any device is room air. */
const BY_HAND = {
  ratio: expect.closeTo(5 / 3, 12),
  roomAir: expect.closeTo(0.2095, 4),
  refused: ['FRACTION_OUT_OF_RANGE', 'targetO2Fraction', 1.5],
}

let unpacked: UnpackedPackage

beforeAll(async () => {
  unpacked = await unpackPackage()
})

afterAll(() => {
  rmSync(unpacked.host, { recursive: true, force: true })
})

describe('packed package', () => {
  it('needs no other package at run time', () => {
    const manifest: Record<string, unknown> = JSON.parse(
      readFileSync(join(unpacked.folder, 'package.json'), 'utf8'),
    )
    expect(manifest['dependencies'] ?? {}).toEqual({})
    expect(manifest['peerDependencies'] ?? {}).toEqual({})
    expect(importsOf(parseFile({ root: unpacked.folder, path: 'dist/index.js' }))).toEqual([])
    expect(existsSync(join(unpacked.folder, 'node_modules'))).toBe(false)
  })

  it('carries licence, notices, readme, command line and page, and no source or test', () => {
    const wanted = [
      'LICENSE',
      'NOTICE',
      'README.md',
      'dist/index.js',
      'dist/types/index.d.ts',
      'dist/cli/oxwright.mjs',
      'dist/web/index.html',
    ]
    expect(unpacked.files).toEqual(expect.arrayContaining(wanted))
    expect(
      unpacked.files.filter((path) => /^(src|test|scripts|docs)\/|\.test\./.test(path)),
    ).toEqual([])
  })

  it('computes in Node', () => {
    const program = `${PROGRAM}; function report(result) { console.log(JSON.stringify(result)) }`
    const result = spawnSync(process.execPath, ['--input-type=module', '-e', program], {
      cwd: unpacked.folder,
      encoding: 'utf8',
    })
    expect(result.stderr).toBe('')
    expect(JSON.parse(result.stdout)).toEqual(BY_HAND)
  })

  it('computes in a browser bundle', async () => {
    const bundled = await build({
      stdin: {
        contents: `${PROGRAM}; function report(result) { globalThis.reported = result }`,
        resolveDir: unpacked.folder,
      },
      bundle: true,
      write: false,
      platform: 'browser',
      format: 'iife',
    })
    const browser = await launchChromium()
    try {
      const page = await browser.newPage()
      await page.addScriptTag({ content: bundled.outputFiles[0]?.text ?? '' })
      expect(await page.evaluate('globalThis.reported')).toEqual(BY_HAND)
    } finally {
      await browser.close()
    }
  })

  it('has types a strict program compiles with, without DOM or Node', () => {
    writeFileSync(
      join(unpacked.host, 'use.ts'),
      `import { entrainmentRatio } from 'oxwright'\nexport const ratio: number = entrainmentRatio({ targetO2Fraction: 0.5 })\n// @ts-expect-error a text is no fraction\nentrainmentRatio({ targetO2Fraction: '50 %' })\n`,
    )
    const paths = { oxwright: ['./package/dist/types/index.d.ts'] }
    const compilerOptions = {
      strict: true,
      noEmit: true,
      module: 'nodenext',
      target: 'es2023',
      lib: ['es2023'],
      types: [],
      paths,
    }
    writeFileSync(
      join(unpacked.host, 'tsconfig.json'),
      JSON.stringify({ compilerOptions, files: ['use.ts'] }),
    )
    const compiler = join(ROOT, 'node_modules/typescript/bin/tsc')
    const result = spawnSync(
      process.execPath,
      [compiler, '-p', unpacked.host, '--pretty', 'false'],
      { encoding: 'utf8' },
    )
    expect(result.stdout).toBe('')
    expect(result.status).toBe(0)
  })

  it('has a command line that starts alone', () => {
    const result = spawnSync(
      process.execPath,
      [join(unpacked.folder, 'dist/cli/oxwright.mjs'), '--help'],
      { cwd: unpacked.host, encoding: 'utf8' },
    )
    expect(result.stderr).toBe('')
    expect(result.status).toBe(0)
    expect(result.stdout).toContain('oxwright plan')
  })
})
