// The one door through which text for people passes: a message in English, its values, and the language it is said in. Leaves out the catalogues.
import { setupI18n } from '@lingui/core'
import { compileMessage } from '@lingui/message-utils/compileMessage'

const SOURCE_LANGUAGE = 'en'

/** What may stand in a message: text, or a number that chooses a plural form. */
export type SaidValues = Readonly<Record<string, string | number>>

const catalogue = setupI18n({ locale: SOURCE_LANGUAGE, messages: { [SOURCE_LANGUAGE]: {} } })
catalogue.setMessagesCompiler(compileMessage)

/**
 * The message in the language chosen, its holes filled: `say('{count} of {total} set-ups', { count, total })`.
 * Plural forms as ICU writes them: `{count, plural, one {# value} other {# values}}`. Numbers are put in as text,
 * already rounded and with their units (words/number-text.ts), so that no library rounds or groups them.
 */
export function say(message: string, values?: SaidValues): string {
  return values === undefined ? catalogue._(message) : catalogue._(message, values)
}

/** Chooses the language for all that is said from now on; `messages` maps each English message to its translation. */
export function speak(language: string, messages: Readonly<Record<string, string>>): void {
  catalogue.load(language, messages)
  catalogue.activate(language)
}
