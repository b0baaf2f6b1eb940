// The command line in German and in a language nobody speaks: no answer holds text that went past say(), numbers are the same, JSON stays as it is. Leaves out the pages.
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest'
import type { Language } from '../src/words/languages.ts'
import { VERB_HELP } from '../src/words/cli-text.ts'
import { buildCli, cliProcess } from './support/cli.ts'
import { pseudoCatalogue, unsaidIn } from './support/pseudo.ts'

const CASE = 'examples/nasal-cannula.json'
const PLAN = ['plan', CASE, '--draws', '64', '--top', '12']

interface Said {
  readonly code: number
  readonly out: string
  readonly err: string
}

/** A run after the language was chosen, as main.ts does it: every module that holds text is loaded anew. */
async function spoken(
  words: readonly string[],
  language: string,
  catalogue: Readonly<Record<string, string>>,
): Promise<Said> {
  vi.resetModules()
  const { speak } = await import('../src/words/say.ts')
  speak(language, catalogue)
  const { runCli } = await import('../src/cli/run.ts')
  const out: string[] = []
  const err: string[] = []
  const code = await runCli(words, {
    out: (text) => void out.push(`${text}\n`),
    err: (text) => void err.push(text),
    errIsTty: false,
  })
  return { code, out: out.join(''), err: err.join('') }
}

afterAll(() => vi.resetModules())

/** What the command line prints as typed: verbs, options, files, formats. */
const AS_TYPED: readonly RegExp[] = [
  /--[a-z-]+(?:[ =][A-Z:]+)?/g,
  // Ids of rows, families and set-ups.
  /\b[a-z0-9]+(?:-[A-Za-z0-9]+)+\b/g,
  /\b[\w-]+(?:\/[\w.-]+)*\.(?:json|yaml|svg|csv|pdf)\b/g,
  // Columns and ids of a spreadsheet.
  /\b(?:count|tubing)\b/g,
  /\bnpm run -s oxwright --(?: \S+)*/g,
  /^ {2}oxwright .*$/gm,
  new RegExp(
    `\\b(?:${[...Object.keys(VERB_HELP), 'CASE', 'JSON', 'YAML', 'FILE'].join('|')})\\b`,
    'g',
  ),
]

describe('the command line in a language nobody speaks', () => {
  it('plans without a word that went past say()', async () => {
    const { code, out, err } = await spoken(PLAN, 'en-XA', pseudoCatalogue())
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(out.length).toBeGreaterThan(2000)
    expect(unsaidIn(out, AS_TYPED)).toEqual([])
  })

  it.each([
    [['breath', 'examples/simple-mask.json', '--draws', '64']],
    [['evidence', '--misses']],
    [['cylinder', '--water', '5', '--gauge', '137bar', '--flow', '4', '--now', '14:00']],
    [['sheet', 'examples/tracheostomy-mask.json', '--draws', '64']],
    [['shelf', 'examples/shelves/lapwing-counted.csv', '--into', 'examples/shelves/lapwing.csv']],
    [['--help']],
    ...Object.keys(VERB_HELP).map((verb) => [[verb, '--help']]),
  ])('answers %j without a word that went past say()', async (words) => {
    const { code, out, err } = await spoken(words, 'en-XA', pseudoCatalogue())
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(out.length).toBeGreaterThan(200)
    expect(unsaidIn(out, AS_TYPED)).toEqual([])
  })

  it('refuses without a word that went past say()', async () => {
    const { code, err } = await spoken(['plan'], 'en-XA', pseudoCatalogue())
    expect(code).toBe(2)
    expect(unsaidIn(err, AS_TYPED)).toEqual([])
  })
})

describe('the command line in German', () => {
  beforeAll(buildCli)

  const said = (language: Language, words: readonly string[]) =>
    cliProcess([...words, '--language', language])

  it('says the same numbers, with a comma', () => {
    const english = said('en', PLAN)
    const german = said('de', PLAN)
    expect(german.code).toBe(english.code)
    expect(german.out).toContain('Im Notfall zuerst Sauerstoff geben, später rechnen.')
    const numbers = (text: string): readonly string[] =>
      [...text.matchAll(/\d+(?:[.,]\d+)?/g)].map(([one]) => one.replace(',', '.')).toSorted()
    expect(numbers(german.out)).toEqual(numbers(english.out))
    expect(german.out).not.toMatch(/\d\.\d/)
  })

  it('leaves JSON as it is', () => {
    const english = said('en', [...PLAN, '--json'])
    expect(english.code).toBe(0)
    expect(said('de', [...PLAN, '--json'])).toEqual(english)
  })

  it('refuses a language that is not at hand', () => {
    const { code, err } = cliProcess([...PLAN, '--language', 'xx'])
    expect(code).toBe(2)
    expect(err).toContain('--language: unknown choice “xx” (allowed: en, de)')
  })
})
