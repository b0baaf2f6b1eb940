// Hazards name tests that exist, references list exactly the keys in use, decisions account for each dependency. Each gate is shown to fail.
import { describe, expect, it } from 'vitest'
import {
  HAZARDS_AT_LEAST,
  dependencyReport,
  hazardReport,
  referenceReport,
} from './support/docs-gate.ts'
import { ROOT } from './support/files.ts'
import { type PlantedFiles, withPlanted } from './support/planted.ts'

const HAZARD_HEAD = '| id | cause | harm | prevention | test |\n| --- | --- | --- | --- | --- |\n'
const REFERENCE_HEAD =
  '| key | citation | DOI | what we took | how we know it |\n| --- | --- | --- | --- | --- |\n'
const TESTS = `describe('bag', () => { it('a | b', () => {}); it.each([1])('row %i', () => {}) })\n`

function hazardRows(options: { readonly count: number; readonly last: string }): string {
  const rows = Array.from({ length: options.count - 1 }, (_, at) => {
    return `| H${String(at + 1).padStart(2, '0')} | c | h | p | \`src/kit/bag.test.ts › row %i\`<br>\`src/kit/bag.test.ts › a \\| b\` |\n`
  })
  return `${HAZARD_HEAD}${rows.join('')}${options.last}\n\nafter the table\n`
}

function judgeHazards(options: {
  readonly count: number
  readonly last: string
}): readonly string[] {
  return withPlanted(
    { 'docs/hazards.md': hazardRows(options), 'src/kit/bag.test.ts': TESTS },
    hazardReport,
  ).violations
}

const GOOD_REFERENCES: PlantedFiles = {
  'docs/references.md': `${REFERENCE_HEAD}| Planted2014 | A paper. | – | a table | seen |\n`,
  'src/kit/bag.ts': `/** A bag. Source: [Planted2014 eq 7]. */\nexport const ROW = { source: 'Planted2014 table 2' }\n`,
}

describe('docs/hazards.md', () => {
  it('names causes, harms, preventions and existing tests', () => {
    const report = hazardReport(ROOT)
    expect(report.violations).toEqual([])
    expect(report.examined).toBeGreaterThanOrEqual(HAZARDS_AT_LEAST)
  })

  it('may name titles, groups, rows and bars', () => {
    expect(
      judgeHazards({ count: 30, last: '| H30 | c | h | p | `src/kit/bag.test.ts › bag` |' }),
    ).toEqual([])
  })

  it.each([
    {
      name: 'a test that is not there',
      last: '| H30 | c | h | p | `src/kit/bag.test.ts › gone` |',
      expected: /H30: no such test/,
    },
    {
      name: 'a test file that is not there',
      last: '| H30 | c | h | p | `src/kit/gone.test.ts › bag` |',
      expected: /H30: no such test/,
    },
    { name: 'no test', last: '| H30 | c | h | p | none |', expected: /H30 names no test/ },
    {
      name: 'no harm',
      last: '| H30 | c |  | p | `src/kit/bag.test.ts › bag` |',
      expected: /empty harm/,
    },
    {
      name: 'an id twice',
      last: '| H29 | c | h | p | `src/kit/bag.test.ts › bag` |',
      expected: /H29 stands twice/,
    },
  ])('the gate fails on $name', ({ last, expected }) => {
    expect(judgeHazards({ count: 30, last })).toEqual([expect.stringMatching(expected)])
  })

  it('the gate fails on too few hazards and on none', () => {
    expect(
      judgeHazards({ count: 29, last: '| H29 | c | h | p | `src/kit/bag.test.ts › bag` |' }),
    ).toEqual([expect.stringMatching(/29 hazards/)])
    expect(withPlanted({}, hazardReport).violations).toEqual([expect.stringMatching(/0 hazards/)])
  })
})

describe('docs/references.md', () => {
  it('lists exactly the sources in use, once each', () => {
    const report = referenceReport(ROOT)
    expect(report.violations).toEqual([])
    expect(report.examined).toBeGreaterThan(0)
  })

  it('is satisfied by a key that is listed and used', () => {
    expect(withPlanted(GOOD_REFERENCES, referenceReport)).toEqual({ examined: 1, violations: [] })
  })

  it.each([
    {
      name: 'an unlisted key in data',
      files: { 'src/kit/a.ts': `export const A = { source: 'Other1999b fig 1' }\n` },
      expected: /cites Other1999b/,
    },
    {
      name: 'an unlisted key in a docstring',
      files: { 'src/kit/a.ts': `/** Source: [Other1999 eq 1]. */\nexport const A = 1\n` },
      expected: /cites Other1999/,
    },
    {
      name: 'an unlisted key in a plain remark',
      files: { 'src/kit/a.ts': `// Source: Other1999 eq 1.\nexport const A = 1\n` },
      expected: /cites Other1999/,
    },
    {
      name: 'a listed key that nothing uses',
      files: { 'src/kit/bag.ts': `export const A = 1\n` },
      expected: /Planted2014 is listed but nothing uses it/,
    },
    {
      name: 'a key listed twice',
      files: {
        'docs/references.md': `${REFERENCE_HEAD}${'| Planted2014 | A paper. | – | a table | seen |\n'.repeat(2)}`,
      },
      expected: /Planted2014 stands twice/,
    },
    {
      name: 'a key without how we know it',
      files: {
        'docs/references.md': `${REFERENCE_HEAD}| Planted2014 | A paper. | – | a table | hearsay |\n`,
      },
      expected: /does not say how we know it/,
    },
  ])('the gate fails on $name', ({ files, expected }) => {
    const planted: PlantedFiles = { ...GOOD_REFERENCES, ...(files satisfies PlantedFiles) }
    expect(withPlanted(planted, referenceReport).violations).toEqual([
      expect.stringMatching(expected),
    ])
  })

  it('the gate fails when it examined nothing', () => {
    expect(withPlanted({}, referenceReport).violations).toEqual([
      expect.stringMatching(/nothing was examined/),
    ])
  })
})

describe('docs/decisions', () => {
  it('account for every dependency', () => {
    const report = dependencyReport(ROOT)
    expect(report.violations).toEqual([])
    expect(report.examined).toBeGreaterThan(0)
  })

  it('the gate fails on an unnamed dependency and on none', () => {
    const files = {
      'package.json': '{"devDependencies":{"left":"1","right":"1"}}',
      'docs/decisions/0001-a.md': 'why `left`',
    }
    expect(withPlanted(files, dependencyReport).violations).toEqual([
      'package.json: no decision record names right',
    ])
    expect(withPlanted({}, dependencyReport).violations).toEqual([
      'package.json: nothing was examined',
    ])
  })
})
