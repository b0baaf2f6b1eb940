// Reads the words of a command line strictly: an unknown option, a missing value or a number that is none is refused. Leaves out what verbs do.
import { parseArgs } from 'node:util'
import { closest } from '../patient/did-you-mean.ts'
import { UsageError } from './failure.ts'

/** `switch`: there or not. `text`: one value. */
export type OptionKind = 'switch' | 'text'
export type OptionKinds = Readonly<Record<string, OptionKind>>

export interface ParsedWords {
  readonly switches: ReadonlySet<string>
  readonly texts: ReadonlyMap<string, string>
  readonly positionals: readonly string[]
}

export function parseWords(
  verb: string,
  words: readonly string[],
  kinds: OptionKinds,
): ParsedWords {
  const { tokens, positionals } = parseArgs({
    args: [...words],
    options: Object.fromEntries(
      Object.entries(kinds).map(([name, kind]) => [
        name,
        { type: kind === 'switch' ? 'boolean' : 'string' } as const,
      ]),
    ),
    strict: false,
    allowPositionals: true,
    tokens: true,
  })
  const switches = new Set<string>()
  const texts = new Map<string, string>()
  for (const token of tokens) {
    if (token.kind !== 'option') continue
    const { name, rawName, value, inlineValue } = token
    const kind = Object.hasOwn(kinds, name) ? kinds[name] : undefined
    if (kind === undefined) throw unknownOption(verb, rawName, kinds)
    if (switches.has(name) || texts.has(name)) {
      throw new UsageError({ kind: 'given-twice', option: rawName })
    }
    if (kind === 'switch') {
      if (value !== undefined) {
        throw new UsageError({ kind: 'value-not-wanted', option: rawName, got: value })
      }
      switches.add(name)
    } else {
      if (value === undefined || value === '' || (inlineValue !== true && looksLikeOption(value))) {
        throw new UsageError({ kind: 'value-missing', option: rawName })
      }
      texts.set(name, value)
    }
  }
  return { switches, texts, positionals }
}

/** A lone dash is standard input, a value like any other. */
function looksLikeOption(value: string): boolean {
  return value.startsWith('-') && value !== '-'
}

function unknownOption(verb: string, rawName: string, kinds: OptionKinds): UsageError {
  const near = closest({ typed: rawName, choices: Object.keys(kinds) })
  const meant = near === undefined ? undefined : `--${near}`
  return new UsageError({ kind: 'unknown-option', verb, got: rawName, meant })
}

/** A whole number as typed, or undefined where the option is absent. */
export function wholeNumber(
  words: ParsedWords,
  option: string,
  bounds: { readonly min: number; readonly max: number },
): number | undefined {
  const got = words.texts.get(option)
  if (got === undefined) return undefined
  const value = /^\d+$/.test(got) ? Number(got) : Number.NaN
  if (value >= bounds.min && value <= bounds.max) return value
  throw new UsageError({ kind: 'not-a-whole-number', option: `--${option}`, got, ...bounds })
}

/** One of the choices, or undefined where the option is absent. */
export function oneOf<C extends string>(
  words: ParsedWords,
  option: string,
  choices: readonly C[],
): C | undefined {
  const got = words.texts.get(option)
  if (got === undefined) return undefined
  const found = choices.find((choice) => choice === got)
  if (found !== undefined) return found
  const meant = closest({ typed: got, choices })
  throw new UsageError({
    kind: 'unknown-value',
    option: `--${option}`,
    got,
    allowed: choices,
    meant,
  })
}
