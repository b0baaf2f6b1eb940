// Which language the page speaks: the one set, else the first of the device's own that is at hand. Leaves out loading it.
import type { Language } from '../../words/languages.ts'
import { languageOf } from '../../words/languages.ts'
import { settingsStore } from './settings-store.ts'
import { DEVICE_LANGUAGE } from './settings.ts'

/** Tags of the document; British English, as its words are spelt. */
const DOCUMENT_TAGS: Readonly<Record<Language, string>> = { en: 'en-GB', de: 'de' }

/** English where neither the setting nor the device names a language at hand. */
export function chosenLanguage(set: string, ofDevice: readonly string[]): Language {
  const tags = set === DEVICE_LANGUAGE ? ofDevice : [set]
  return tags.map(languageOf).find((language) => language !== undefined) ?? 'en'
}

export function languageNow(): Language {
  return chosenLanguage(settingsStore().now().settings.language, navigator.languages)
}

/**
 * Tells the document its language and, when another is chosen here or in another tab, starts the page anew: texts are said
 * while modules load. What was typed is kept by each place as it is typed.
 */
export function followLanguage(spoken: Language): void {
  document.documentElement.lang = DOCUMENT_TAGS[spoken]
  settingsStore().listen(() => {
    if (languageNow() !== spoken) location.reload()
  })
}
