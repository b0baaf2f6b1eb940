// The import law holds, nothing is left unused, and the core is pure. Each rule is shown to fail on a planted violation.
import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { architectureReport } from './support/architecture-gate.ts'
import { ROOT } from './support/files.ts'
import { LAYERS, PURE_LAYERS } from './support/import-law.ts'
import { type PlantedFiles, withPlanted } from './support/planted.ts'

const CLEAN: PlantedFiles = {
  'src/index.ts': `// The library.\nexport { volumeL } from './kit/bag.ts'\nexport type { Bag } from './kit/bag.ts'\n`,
  'src/kit/bag.ts': `// A bag.\nimport { ONE } from '../units/one.ts'\nexport interface Bag { process: number }\nexport const volumeL = ONE\n`,
  'src/kit/bag.test.ts': `// Its test.\nimport { it } from 'vitest'\nimport { volumeL } from './bag.ts'\nit('x', () => { void volumeL; void Date.now() })\n`,
  'src/units/one.ts': `// One.\nexport const ONE = Math.max(1, 1)\n`,
  'src/cli/main.ts': `#!/usr/bin/env node\n// The command line.\nimport { readFileSync } from 'node:fs'\nimport { volumeL } from '../kit/bag.ts'\nvoid readFileSync\nvoid volumeL\n`,
  'src/web/index.html': `<script type="module" src="./main.tsx"></script>`,
  'src/web/main.tsx': `// The page.\nnew Worker(new URL('./worker.ts', import.meta.url), { type: 'module' })\n`,
  'src/web/worker.ts': `// The worker.\nexport {}\n`,
}

const PLANTED: readonly {
  readonly name: string
  readonly files: PlantedFiles
  readonly expected: RegExp
}[] = [
  {
    name: 'an upward import',
    files: {
      'src/units/one.ts': `// One.\nimport { volumeL } from '../kit/bag.ts'\nexport const ONE = volumeL\n`,
    },
    expected: /^src\/units\/one\.ts:2: .*units may not import kit$/,
  },
  {
    name: 'a sideways import',
    files: {
      'src/physiology/lung.ts': `// Lung.\nimport { volumeL } from '../kit/bag.ts'\nexport const LUNG = volumeL\n`,
      'src/index.ts': `// The library.\nexport { LUNG } from './physiology/lung.ts'\n`,
    },
    expected: /physiology may not import kit$/,
  },
  {
    name: 'delivery reading the patient',
    files: {
      'src/patient/case.ts': `// Case.\nexport const CASE = 1\n`,
      'src/delivery/breath.ts': `// Breath.\nexport { CASE } from '../patient/case.ts'\n`,
      'src/index.ts': `// The library.\nexport { CASE } from './delivery/breath.ts'\nexport { volumeL } from './kit/bag.ts'\n`,
    },
    expected: /delivery may not import patient$/,
  },
  {
    name: 'a type-only upward import',
    files: {
      'src/units/one.ts': `// One.\nimport type { Bag } from '../kit/bag.ts'\nexport const ONE: Bag['process'] = 1\n`,
    },
    expected: /units may not import kit$/,
  },
  {
    name: 'an upward import inside a type',
    files: {
      'src/units/one.ts': `// One.\nexport const ONE: import('../kit/bag.ts').Bag['process'] = 1\n`,
    },
    expected: /units may not import kit$/,
  },
  {
    name: 'a dynamic upward import',
    files: { 'src/units/one.ts': `// One.\nexport const ONE = 1\nvoid import('../kit/bag.ts')\n` },
    expected: /units may not import kit$/,
  },
  {
    name: 'a dynamic import of an unnamed file',
    files: { 'src/units/one.ts': `// One.\nexport const ONE = 1\nvoid import(String(ONE))\n` },
    expected: /a dynamic import must name its file$/,
  },
  {
    name: "a unit test that breaks its layer's law",
    files: {
      'src/units/one.test.ts': `// Its test.\nimport { volumeL } from '../kit/bag.ts'\nvoid volumeL\n`,
    },
    expected: /units may not import kit$/,
  },
  {
    name: 'node:fs in the core',
    files: {
      'src/units/one.ts': `// One.\nimport { existsSync } from 'node:fs'\nexport const ONE = existsSync\n`,
    },
    expected: /units may not use the package node:\*$/,
  },
  {
    name: 'fs without its prefix in the core',
    files: {
      'src/units/one.ts': `// One.\nimport { existsSync } from 'fs'\nexport const ONE = existsSync\n`,
    },
    expected: /units may not use the package node:\*$/,
  },
  {
    name: 'a package in the core',
    files: {
      'src/units/one.ts': `// One.\nimport { parse } from 'yaml'\nexport const ONE = parse\n`,
    },
    expected: /units may not use the package yaml$/,
  },
  {
    name: 'an import of no file',
    files: { 'src/units/one.ts': `// One.\nexport { ONE } from './two'\n` },
    expected: /no such file/,
  },
  {
    name: 'a file nobody imports',
    files: { 'src/units/lonely.ts': `// Lonely.\nexport const LONELY = 1\n` },
    expected: /^src\/units\/lonely\.ts: nobody imports it$/,
  },
  {
    name: "a file only its neighbour's test imports",
    files: {
      'src/units/lonely.ts': `// Lonely.\nexport const LONELY = 1\n`,
      'src/units/lonely.test.ts': `// Its test.\nimport { LONELY } from './lonely.ts'\nvoid LONELY\n`,
    },
    expected: /^src\/units\/lonely\.ts: nobody imports it$/,
  },
  {
    name: 'a folder outside the law',
    files: { 'src/misc/one.test.ts': `// One.\nexport {}\n` },
    expected: /stands in no layer/,
  },
  {
    name: 'a clock in the core',
    files: { 'src/units/one.ts': `// One.\nexport const ONE = Date.now()\n` },
    expected: /^src\/units\/one\.ts:2: units is pure but uses Date$/,
  },
  {
    name: 'chance in the core',
    files: { 'src/units/one.ts': `// One.\nexport const ONE = Math.random()\n` },
    expected: /units is pure but uses Math\.random$/,
  },
  {
    name: 'the environment in the core',
    files: { 'src/units/one.ts': `// One.\nexport const ONE = process.env\n` },
    expected: /units is pure but uses process$/,
  },
  {
    name: 'a timer in the core',
    files: { 'src/units/one.ts': `// One.\nexport const ONE = setTimeout(() => undefined, 1)\n` },
    expected: /units is pure but uses setTimeout$/,
  },
  {
    name: 'the network in the core',
    files: { 'src/units/one.ts': `// One.\nexport const ONE = fetch('x')\n` },
    expected: /units is pure but uses fetch$/,
  },
  {
    name: 'a file without its opening line',
    files: { 'src/units/one.ts': `export const ONE = 1\n` },
    expected: /^src\/units\/one\.ts: does not open with/,
  },
]

describe('architecture', () => {
  it('holds in src', () => {
    const report = architectureReport(ROOT)
    expect(report.violations).toEqual([])
    expect(report.examined).toBeGreaterThan(0)
  })

  it('finds nothing to blame in a clean planted tree', () => {
    const report = withPlanted(CLEAN, architectureReport)
    expect(report).toEqual({ examined: Object.keys(CLEAN).length - 1, violations: [] })
  })

  it.each(PLANTED)('fails on $name', ({ files, expected }) => {
    const { violations } = withPlanted({ ...CLEAN, ...files }, architectureReport)
    expect(violations).toEqual([expect.stringMatching(expected)])
  })

  it('fails when it examined no file', () => {
    const report = withPlanted({ 'README.md': 'nothing here' }, architectureReport)
    expect(report).toEqual({ examined: 0, violations: ['src: no file was examined'] })
  })

  it('names each layer once', () => {
    expect(new Set(LAYERS).size).toBe(LAYERS.length)
  })
})

describe('tsconfig.core.json', () => {
  it('covers every pure layer', () => {
    const { include }: { readonly include: readonly string[] } = JSON.parse(
      readFileSync(join(ROOT, 'tsconfig.core.json'), 'utf8'),
    )
    const wanted = PURE_LAYERS.map((layer) =>
      ['errors', 'index'].includes(layer) ? `src/${layer}.ts` : `src/${layer}`,
    )
    expect(new Set(include)).toEqual(new Set(wanted))
  })

  it.each([
    'document.title',
    'process.env',
    'setTimeout(() => 1, 1)',
    'console.log(1)',
    "fetch('x')",
  ])('refuses a core that uses %s', (expression) => {
    const output = typesOfCoreFile(`export const x = ${expression}\n`)
    expect(output).toMatch(/planted\.ts\(1,\d+\): error TS2(304|580|584|591)/)
  })

  it('accepts a core file that keeps to the language', () => {
    expect(typesOfCoreFile('export const x: number = Math.max(1, 2)\n')).toBe('')
  })
})

/** What the compiler says of one file under the core's settings. */
function typesOfCoreFile(text: string): string {
  const config = JSON.stringify({
    extends: join(ROOT, 'tsconfig.core.json'),
    include: ['planted.ts'],
    exclude: [],
  })
  return withPlanted({ 'planted.ts': text, 'tsconfig.json': config }, (root) => {
    const compiler = join(ROOT, 'node_modules/typescript/bin/tsc')
    return spawnSync(process.execPath, [compiler, '-p', root, '--pretty', 'false'], {
      encoding: 'utf8',
    }).stdout
  })
}
