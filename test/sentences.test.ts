// No sentence stands outside src/words, so that every text can be reworded or translated in one place. Shown to fail on planted ones.
import { describe, expect, it } from 'vitest'
import { ROOT } from './support/files.ts'
import { type PlantedFiles, withPlanted } from './support/planted.ts'
import { sentenceReport, unsaidReport } from './support/sentence-gate.ts'

const PLANTED: readonly { readonly name: string; readonly files: PlantedFiles }[] = [
  {
    name: 'a sentence in a string',
    files: { 'src/kit/a.ts': `export const NOTE = 'the bag is empty'\n` },
  },
  {
    name: 'a sentence in a template',
    files: { 'src/kit/a.ts': 'export const note = (n: number) => `the bag holds ${n} litres`\n' },
  },
  {
    name: 'a sentence of a DomainError',
    files: { 'src/kit/a.ts': `throw new DomainError('the flow is too high')\n` },
  },
  {
    name: 'a citing field outside the data layers',
    files: { 'src/cli/a.ts': `export const HELP = { source: 'where it came from' }\n` },
  },
  {
    name: 'a note in data',
    files: { 'src/kit/a.ts': `export const ROW = { note: 'ask before using this' }\n` },
  },
  {
    name: 'help of the command line',
    files: { 'src/cli/main.ts': `console.log('usage: give a case file')\n` },
  },
  {
    name: 'a label in a page',
    files: { 'src/web/a.tsx': `export const A = () => <b>Body weight</b>\n` },
  },
  {
    name: 'a label in an attribute',
    files: { 'src/web/a.tsx': `export const A = () => <b title="Body weight">x</b>\n` },
  },
  {
    name: 'a label in a computed attribute',
    files: { 'src/web/a.tsx': `export const A = () => <b title={'ask for body weight'}>x</b>\n` },
  },
]

const FREE: PlantedFiles = {
  'src/words/a.ts': `export const NOTE = 'the bag is empty'\n`,
  'src/kit/a.test.ts': `export const NOTE = 'the bag is empty'\n`,
  'src/kit/a.ts': `assert(x > 0, 'the bag must hold gas')\nthrow new Error('this case was handled above')\n`,
  'src/kit/b.ts': `export const ROW = { source: 'Key2014 table 2 and its footnote', code: 'FLOW_OUT_OF_RANGE', unit: 'L/min' }\n`,
  'src/evidence/c.ts': `export const ROW = { condition: 'at rest and mouth closed', sources: ['one or two words'] }\n`,
  'src/pictures/d.ts':
    'export const d = (x: number) => `<path d="M 0 ${x} L 1 2" fill="none" stroke="black" />`\n',
  'src/web/e.tsx': `export const E = () => <p className="plan row wide">kPa</p>\n`,
}

describe('sentences', () => {
  it('stand in src/words alone', () => {
    const report = sentenceReport(ROOT)
    expect(report.violations).toEqual([])
    expect(report.examined).toBeGreaterThan(0)
  })

  it.each(PLANTED)('the gate fails on $name', ({ files }) => {
    const { violations } = withPlanted(files, sentenceReport)
    expect(violations).toHaveLength(1)
    expect(violations[0]).toMatch(/^src\/\w+\/\w+\.tsx?:1: sentence outside src\/words/)
  })

  it('the gate lets codes, citations, bug reports, pictures and class lists pass', () => {
    expect(withPlanted(FREE, sentenceReport)).toEqual({ examined: 5, violations: [] })
  })

  it('the gate fails when it examined no file', () => {
    const report = withPlanted({ 'src/words/a.ts': `export const A = 'a b c'\n` }, sentenceReport)
    expect(report).toEqual({ examined: 0, violations: ['src: no file was examined'] })
  })
})

describe('texts in src/words', () => {
  it('stand in say(), so that they can be translated', () => {
    const report = unsaidReport(ROOT)
    expect(report.violations).toEqual([])
    expect(report.examined).toBeGreaterThan(20)
  })

  it.each([
    { name: 'a label', line: `export const NOTE = { fit: 'loose fit' }` },
    {
      name: 'a template',
      line: 'export const note = (n: string) => `the bag holds ${n}`',
    },
    { name: 'a half sentence', line: `export const f = (x: boolean) => (x ? ' or more' : '')` },
  ])('the gate fails on $name outside say()', ({ line }) => {
    const { violations } = withPlanted({ 'src/words/a.ts': `${line}\n` }, unsaidReport)
    expect(violations).toHaveLength(1)
    expect(violations[0]).toMatch(/^src\/words\/a\.ts:1: not in say\(\): /)
  })

  it('the gate lets what is said, units, codes and commands pass', () => {
    const line = `export const A = [say('the bag is empty'), { usage: 'plan CASE now' }, 'L/min', 'VALUE_OUT_OF_RANGE']`
    const report = withPlanted({ 'src/words/a.ts': `${line}\n` }, unsaidReport)
    expect(report).toEqual({ examined: 1, violations: [] })
  })

  it('the gate fails when it examined no file', () => {
    const report = withPlanted({ 'src/kit/a.ts': `export const A = 1\n` }, unsaidReport)
    expect(report.violations).toEqual(['src/words: no file was examined'])
  })
})
