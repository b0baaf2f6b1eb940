// The languages the program speaks, each by its own name, and loading one before any text is said. Leaves out choosing, which page and command line do.
import { speak } from './say.ts'

/** English is the source; the others have a catalogue in languages/. */
export const LANGUAGES = ['en', 'de'] as const
export type Language = (typeof LANGUAGES)[number]

/** Names as their own readers write them, the same in every language. */
export const LANGUAGE_NAMES: Readonly<Record<Language, string>> = { en: 'English', de: 'Deutsch' }

/** The language at hand that a tag such as de-AT means, else undefined. */
export function languageOf(tag: string): Language | undefined {
  const [primary = ''] = tag.toLowerCase().split(/[-_.]/)
  return LANGUAGES.find((language) => language === primary)
}

/** Loads the catalogue and speaks the language. Before this no module that holds text may be loaded: it would say its text in English. */
export async function speakLanguage(language: Language): Promise<void> {
  if (language === 'de') speak('de', (await import('./languages/de.json')).default)
}
