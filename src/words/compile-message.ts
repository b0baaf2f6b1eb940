// Reads a message once: holes, plural forms and choices as ICU writes them. Leaves out formats of numbers and dates, which no message here has, and offsets.
import type { CompiledMessage } from '@lingui/message-utils/compileMessage'
import { assert } from '../errors.ts'

type Token = CompiledMessage[number]

/**
 * The message as the library's own compiler gives it (compile-message.test.ts compares both over every message there is), a tenth of
 * its size; but `#` becomes the number as given: the library would part its thousands, 1.180 in German, which reads as one and a bit.
 */
export function compiledMessage(message: string): CompiledMessage {
  const reader: Reader = { text: message, at: 0 }
  const tokens = tokensUntilEnd(reader, null)
  assert(reader.at === message.length, 'words/message closes no brace it did not open')
  return tokens
}

interface Reader {
  readonly text: string
  at: number
}

/** Up to the closing brace or the end; `counted` is the argument that `#` stands for. */
function tokensUntilEnd(reader: Reader, counted: string | null): CompiledMessage {
  const tokens: Token[] = []
  let plain = ''
  const endPlain = (): void => {
    if (plain !== '') tokens.push(plain)
    plain = ''
  }
  while (reader.at < reader.text.length) {
    const sign = reader.text.charAt(reader.at)
    if (sign === '}') break
    if (sign === '{') {
      endPlain()
      tokens.push(argument(reader))
    } else if (sign === '#' && counted !== null) {
      endPlain()
      tokens.push([counted])
      reader.at++
    } else if (sign === "'") {
      plain += quoted(reader)
    } else {
      plain += sign
      reader.at++
    }
  }
  endPlain()
  return tokens
}

/** Two apostrophes are one; one before a brace quotes up to the next; any other stands for itself. */
function quoted(reader: Reader): string {
  const { text, at } = reader
  const next = text.charAt(at + 1)
  if (next === "'") {
    reader.at += 2
    return "'"
  }
  if (next !== '{' && next !== '}') {
    reader.at++
    return "'"
  }
  const end = text.indexOf("'", at + 1)
  reader.at = end < 0 ? text.length : end + 1
  return text.slice(at + 1, end < 0 ? undefined : end)
}

/** `{name}`, or `{name, plural, one {…} other {…}}`, or the same with `select`. */
function argument(reader: Reader): Token {
  skip(reader, '{')
  const name = word(reader)
  if (isAt(reader, '}')) {
    skip(reader, '}')
    return [name]
  }
  skip(reader, ',')
  const type = word(reader)
  assert(type === 'plural' || type === 'select', 'words/message chooses by plural or select')
  skip(reader, ',')
  const forms: Record<string, CompiledMessage> = {}
  while (!isAt(reader, '}')) {
    const form = word(reader)
    skip(reader, '{')
    forms[form.replace(/^=/, '')] = tokensUntilEnd(reader, type === 'plural' ? name : null)
    skip(reader, '}')
  }
  skip(reader, '}')
  return [name, type, forms]
}

function word(reader: Reader): string {
  space(reader)
  const found = /^=?[\w-]+/.exec(reader.text.slice(reader.at))?.[0] ?? ''
  assert(found !== '', 'words/message names what it holds')
  reader.at += found.length
  return found
}

function isAt(reader: Reader, sign: string): boolean {
  space(reader)
  return reader.text.charAt(reader.at) === sign
}

/** Over a sign that must be there, and over space before it. */
function skip(reader: Reader, sign: string): void {
  space(reader)
  assert(reader.text.charAt(reader.at) === sign, 'words/message well formed')
  reader.at++
}

function space(reader: Reader): void {
  while (/\s/.test(reader.text.charAt(reader.at))) reader.at++
}
