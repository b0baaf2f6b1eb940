// The catalogues fit the sources: what is said is what is translated, nothing is lost on the way. Leaves out whether a translation is good.
import { describe, expect, it } from 'vitest'
import { messagesIn } from '../scripts/said-messages.ts'
import {
  compiledText,
  readCompiled,
  saidMessages,
  TRANSLATED,
  translationsIn,
} from '../scripts/word-catalogues.ts'
import { EVIDENCE_ROWS } from '../src/evidence/all-rows.ts'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'
import { parseFile } from './support/ast.ts'
import { holesOf, numbersOf, pluralFormsOf, pluralsOf, unitsOf } from './support/message-parts.ts'
import { withPlanted } from './support/planted.ts'

const SAID = saidMessages()

describe('messages of the sources', () => {
  it('get exactly the values their holes name', () => {
    expect(SAID.length).toBeGreaterThan(800)
    const faults = SAID.filter(
      ({ message, given }) =>
        given !== undefined && given.toSorted().join() !== holesOf(message).join(),
    )
    expect(faults).toEqual([])
  })

  it('write out their values at the call, so that this can be judged', () => {
    const unjudged = SAID.filter(({ given }) => given === undefined)
    expect(unjudged.map(({ path, line }) => `${path}:${line}`)).toEqual([])
  })

  it('begin and end with a sign, never with a blank to be glued', () => {
    expect(SAID.map(({ message }) => message).filter((one) => one !== one.trim())).toEqual([])
  })

  it('are found in calls and in named fields of data, and must be plain text', () => {
    const found = withPlanted(
      {
        'src/words/a.ts': `say('{n} of {total}', { n, total: 3 })\nsay(\`plain\`)\n`,
        'src/kit/demo-shelf/b.ts': `export const ROW = { label: 'Face tent', id: 'face tent' }\n`,
        'src/words/c.ts': 'say(`the ${x}`)\n',
      },
      (root) => ({
        calls: messagesIn(parseFile({ root, path: 'src/words/a.ts' })),
        names: messagesIn(parseFile({ root, path: 'src/kit/demo-shelf/b.ts' })),
        thrown: thrownBy(() => messagesIn(parseFile({ root, path: 'src/words/c.ts' }))),
      }),
    )
    expect(found.calls).toEqual([
      { message: '{n} of {total}', path: 'src/words/a.ts', line: 1, given: ['n', 'total'] },
      { message: 'plain', path: 'src/words/a.ts', line: 2, given: [] },
    ])
    expect(found.names.map(({ message }) => message)).toEqual(['Face tent'])
    expect(found.thrown).toContain('src/words/c.ts:1')
  })
})

function thrownBy(run: () => unknown): string {
  try {
    run()
    return ''
  } catch (thrown) {
    return String(thrown)
  }
}

describe('parts of a message', () => {
  it('are told apart from its words', () => {
    const message = '{text}: 1.5 L/min, {n, plural, one {one of # %} other {{n} of {all} %}}'
    expect(holesOf(message)).toEqual(['all', 'n', 'text'])
    expect(pluralsOf(message)).toEqual(['n plural'])
    expect(pluralFormsOf(message)).toEqual([['one', 'other']])
    expect(numbersOf('von 1,5 bis {b2} 30–60')).toEqual(['1.5', '30', '60'])
    expect(unitsOf(message)).toEqual(['%', '%', 'L/min'])
    expect(() => holesOf('{open')).toThrow(/invalid|expected|end/i)
  })
})

describe.each(TRANSLATED)('catalogue %s', async (language) => {
  const translations = await translationsIn(language)
  const translated = [...translations].filter(([, text]) => text !== '')
  const differing = (parts: (message: string) => readonly string[]): readonly string[] =>
    translated.filter(([from, to]) => parts(from).join() !== parts(to).join()).map(([from]) => from)

  it('is compiled as it stands (npm run words:compile)', async () => {
    expect(readCompiled(language)).toBe(await compiledText(language))
    expect(translated.length).toBeGreaterThan(800)
  })

  it('has exactly the messages of the sources, each translated (npm run words:extract)', () => {
    const said = new Set(SAID.map(({ message }) => message))
    expect([...said].filter((message) => translations.get(message) === undefined)).toEqual([])
    expect([...translations.keys()].filter((message) => !said.has(message))).toEqual([])
    expect([...translations].filter(([, text]) => text === '').map(([from]) => from)).toEqual([])
  })

  it('holds the names in data as they are at run time', () => {
    const names = [
      ...EVIDENCE_ROWS.map(({ condition }) => condition),
      ...DEMO_SHELF.interfaces.map(({ label }) => label),
      ...DEMO_SHELF.sources.map(({ label }) => label),
    ].filter((name) => /\p{L}{3}/u.test(name))
    expect(names.length).toBeGreaterThan(500)
    expect([...new Set(names)].filter((name) => !translations.has(name))).toEqual([])
  })

  it('keeps every hole and every plural choice', () => {
    expect(differing(holesOf)).toEqual([])
    expect(differing(pluralsOf)).toEqual([])
  })

  it('has the plural forms of its language', () => {
    const { pluralCategories } = new Intl.PluralRules(language).resolvedOptions()
    const lacking = translated.filter(([, to]) =>
      pluralFormsOf(to).some((forms) => pluralCategories.some((form) => !forms.includes(form))),
    )
    expect(lacking.map(([from]) => from)).toEqual([])
  })

  it('keeps every number and every unit', () => {
    expect(differing(numbersOf)).toEqual([])
    expect(differing(unitsOf)).toEqual([])
  })

  it('writes decimals with the sign of its language', () => {
    const sign = new Intl.NumberFormat(language).format(0.5).charAt(1)
    const other = sign === ',' ? /\d\.\d/ : /\d,\d/
    expect(translated.map(([, to]) => to).filter((to) => other.test(to))).toEqual([])
  })
})
