// Which language a run speaks: the option --language, else OXWRIGHT_LANGUAGE, else English. Leaves out loading it, which must come before any text.
import type { Language } from '../words/languages.ts'
import { languageOf } from '../words/languages.ts'

const OPTION = '--language'
export const LANGUAGE_VARIABLE = 'OXWRIGHT_LANGUAGE'

export interface ChosenLanguage {
  readonly language: Language
  /** The words without the option; with it where it names no language at hand, so that it is refused like any other wrong value. */
  readonly words: readonly string[]
  /** What the variable says where that is no language at hand. */
  readonly unknownVariable: string | undefined
}

/**
 * The system's own LANG is not asked: an answer is read by scripts and pasted into records, so it must not change with the
 * machine it ran on. JSON is never translated.
 */
export function chosenLanguage(
  words: readonly string[],
  variable: string | undefined,
): ChosenLanguage {
  const { value, rest } = withoutOption(words)
  const named = value === undefined ? undefined : languageOf(value)
  const usual = variable === undefined || variable === '' ? 'en' : languageOf(variable)
  const language = words.includes('--json') ? 'en' : (named ?? usual ?? 'en')
  return {
    language,
    words: named === undefined ? words : rest,
    unknownVariable: usual === undefined ? variable : undefined,
  }
}

/** The option's value where it is given once, and the other words. */
function withoutOption(words: readonly string[]): {
  readonly value: string | undefined
  readonly rest: readonly string[]
} {
  const places = words.flatMap((word, i) =>
    word === OPTION || word.startsWith(`${OPTION}=`) ? [i] : [],
  )
  const [place] = places
  if (place === undefined || places.length > 1) return { value: undefined, rest: words }
  const word = words[place] ?? ''
  const isTwoWords = word === OPTION
  return {
    value: isTwoWords ? words[place + 1] : word.slice(OPTION.length + 1),
    rest: words.toSpliced(place, isTwoWords ? 2 : 1),
  }
}
