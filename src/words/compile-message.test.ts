// Our reader of messages beside the library's own, over every message there is and over odd ones. Leaves out what is said with them.
import { compileMessage } from '@lingui/message-utils/compileMessage'
import type { CompiledMessage } from '@lingui/message-utils/compileMessage'
import { describe, expect, it } from 'vitest'
import german from './languages/de.json'
import { compiledMessage } from './compile-message.ts'

const ODD = [
  'plain',
  '',
  'a {hole} b',
  '{a}{b}',
  '{count, plural, one {# value} other {# values}}',
  'x {n, plural, =0 {none} one {{what} of #} other {# of {total}}} y',
  '{kind, select, male {he} other {they}} said',
  "it''s {name}",
  "'{'{name}'}'",
  'rate # of {n}',
]

/** The library's answer with `#` as the number given, which is our one difference. */
function theirs(message: string): unknown {
  const made = compileMessage(message)
  return Array.isArray(made) ? joined(made, null) : made
}

function joined(tokens: CompiledMessage, counted: string | null): unknown {
  const list = tokens.map((token) => {
    if (token === '#' && counted !== null) return [counted]
    if (typeof token === 'string') return token
    const [name, type, forms] = token
    if (type === undefined || typeof forms !== 'object' || forms === null) return [name]
    const of = type === 'plural' ? name : null
    const entries = Object.entries(forms).filter(([form]) => form !== 'offset')
    return [
      name,
      type,
      Object.fromEntries(
        entries.map(([form, inner]) => [form, joined(inner as CompiledMessage, of)]),
      ),
    ]
  })
  // Neighbouring pieces of plain text are one text.
  return list.reduce<unknown[]>((all, one) => {
    const last = all.at(-1)
    return typeof one === 'string' && typeof last === 'string'
      ? [...all.slice(0, -1), last + one]
      : [...all, one]
  }, [])
}

describe('messages', () => {
  const all = [...new Set([...Object.keys(german), ...Object.values(german), ...ODD])]

  it('are read as the library reads them', () => {
    expect(all.length).toBeGreaterThan(500)
    for (const message of all) expect(compiledMessage(message), message).toEqual(theirs(message))
  })

  it.each(['{', '{a', '{a, plural, one {x}', 'a}', '{a, date}'])(
    'of broken form are a bug: %s',
    (message) => {
      expect(() => compiledMessage(message)).toThrow(/words\/message/)
    },
  )
})
