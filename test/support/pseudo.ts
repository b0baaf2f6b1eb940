// A language nobody speaks: every letter of a message accented, the whole a third longer and in brackets, so that text that did not pass through say() shows. Leaves out real languages.
import type { CompiledMessage } from '@lingui/message-utils/compileMessage'
import { compileMessageOrThrow } from '@lingui/message-utils/compileMessage'
import { saidMessages } from '../../scripts/word-catalogues.ts'

const PLAIN = 'abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ'
const ACCENTED = 'åƀçðéƒĝĥîĵķļɱñøþǫŕšţûṽŵẋýžÅƁÇÐÉƑĜĤÎĴĶĻṀÑØÞǪŔŠŢÛṼŴẊÝŽ'
const LONGER_BY = 0.3
const FILLER = 'øñé ţŵø ţĥŕéé ƒøûŕ ƒîṽé šîẋ šéṽéñ éîĝĥţ ñîñé ţéñ '

/** Message → the same in the language nobody speaks. */
export function pseudoCatalogue(): Readonly<Record<string, string>> {
  return Object.fromEntries(saidMessages().map(({ message }) => [message, pseudo(message)]))
}

export function pseudo(message: string): string {
  const tokens = compileMessageOrThrow(message)
  const letters = message.replaceAll(/\{\w+\}/g, '').length
  const wanted = Math.ceil(letters * LONGER_BY)
  const filler = FILLER.repeat(Math.ceil(wanted / FILLER.length)).slice(0, wanted)
  return `[${written(tokens)} ${filler.trim()}]`
}

function written(message: CompiledMessage): string {
  return message
    .map((token) => {
      if (typeof token === 'string') return accented(token)
      const [name, type, forms] = token
      if (type === undefined || typeof forms !== 'object' || forms === null) return `{${name}}`
      const cases = Object.entries(forms).flatMap(([form, tokens]: [string, unknown]) =>
        // Safe: the forms of a plural hold messages as compiled, beside an offset that is none.
        Array.isArray(tokens) ? [`${form} {${written(tokens as CompiledMessage)}}`] : [],
      )
      return `{${name}, ${type}, ${cases.join(' ')}}`
    })
    .join('')
}

function accented(text: string): string {
  return text
    .replaceAll("'", "''")
    .replaceAll(/[A-Za-z]/g, (letter) => ACCENTED[PLAIN.indexOf(letter)] ?? letter)
}

/** What is shown as it stands in every language: names of units, and codes. */
const UNTOUCHED: readonly RegExp[] = [
  // Units, and names of gases and pressures written with letters and digits.
  /\b(?:L|mL|kg|g|mg|m|cm|mm|h|min|s|kPa|mmHg|cmH|bar|psi|MPa|Torr|lb|in|ft3?|PCO|PO|pH|CO|SpO|FiO)(?:2|₂|3)?(?:O)?(?:\/(?:min|L|s|kg|h))*\b/g,
  // Ids of rows, families and set-ups, with a hyphen between their parts.
  /\b[A-Za-z0-9]+(?:-[A-Za-z0-9]+)+\b/g,
  // Keys of sources: a name and a year.
  /\b[A-Z][A-Za-z]+(?:(?:18|19|20)\d\d[a-z]?|\d{4,5})\b/g,
  // Beds and codes of patients and parts, as the examples invent them.
  /\b(?:Heron|Plover|Wren|Brackwater Fell Hospital)\b/g,
  /\b[A-Z]{1,2}-?\d+\b/g,
  // The program and the languages by their own names.
  /\bOxwright\b|\boxwright\b|\bEnglish\b|\bDeutsch\b/g,
]

/** Runs of plain letters in a text that say() would have accented. */
export function unsaidIn(text: string, alsoUntouched: readonly RegExp[] = []): readonly string[] {
  const rest = [...alsoUntouched, ...UNTOUCHED].reduce(
    (left, pattern) => left.replaceAll(pattern, ' '),
    text,
  )
  return [...rest.matchAll(/[A-Za-z]{2,}(?: [A-Za-z]{2,})*/g)].map(([found]) => found)
}
