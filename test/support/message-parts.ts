// What a message holds besides its words: holes, plural forms, numbers. Leaves out the words.
import type { CompiledMessage } from '@lingui/message-utils/compileMessage'
import { compileMessageOrThrow } from '@lingui/message-utils/compileMessage'

/** Names of the holes and of the numbers that choose a plural, each once, in order of the alphabet; throws where braces do not match. */
export function holesOf(message: string): readonly string[] {
  return [...new Set(namesIn(compileMessageOrThrow(message)))].toSorted()
}

/** Plural choices as "count: one other"; forms are those of the language, so only that there is `other` and what it counts. */
export function pluralsOf(message: string): readonly string[] {
  return tokensIn(compileMessageOrThrow(message))
    .flatMap((token) => (isChoice(token) ? [`${token[0]} ${token[1]}`] : []))
    .toSorted()
}

/** The forms each plural choice has. */
export function pluralFormsOf(message: string): readonly (readonly string[])[] {
  return tokensIn(compileMessageOrThrow(message)).flatMap((token) =>
    isChoice(token) ? [Object.keys(token[2]).filter((form) => form !== 'offset')] : [],
  )
}

const NUMBER = /\d+(?:[.,]\d+)*/g

/** Numbers written in the words, with a dot for the decimal sign, in order of size. */
export function numbersOf(message: string): readonly string[] {
  const words = message.replaceAll(/\{(\w+)\}/g, '')
  return [...words.matchAll(NUMBER)].map(([found]) => found.replace(',', '.')).toSorted()
}

const UNIT =
  /(?<![\p{L}])(?:L\/min|mL\/min|mL\/kg\/min|mL\/kg|mL\/dL|mL\/s|mL|kPa|mmHg|cmH₂O|bar|psi|kg|mm|cm|m²|°C|g\/L|mg\/L|min|kWh)(?![\p{L}])|%|\/min/gu

/** Units written in the words, in order of the alphabet. */
export function unitsOf(message: string): readonly string[] {
  return [...message.matchAll(UNIT)].map(([found]) => found).toSorted()
}

type Token = CompiledMessage[number]
type Choice = [name: string, type: string, forms: Readonly<Record<string, CompiledMessage>>]

function isChoice(token: Token): token is Choice {
  return Array.isArray(token) && typeof token[2] === 'object' && token[2] !== null
}

/** Every token, those inside plural forms too. */
function tokensIn(message: CompiledMessage): readonly Token[] {
  return message.flatMap((token) =>
    isChoice(token)
      ? [
          token,
          ...Object.values(token[2]).flatMap((form) => (Array.isArray(form) ? tokensIn(form) : [])),
        ]
      : [token],
  )
}

function namesIn(message: CompiledMessage): readonly string[] {
  return tokensIn(message).flatMap((token) => (typeof token === 'string' ? [] : [token[0]]))
}
