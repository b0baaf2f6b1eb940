// The one door through which text for people passes: a message in English, its values, and the language it is said in. Leaves out the catalogues.
import { setupI18n } from '@lingui/core'
import type { CompiledMessage } from '@lingui/message-utils/compileMessage'
import { compiledMessage } from './compile-message.ts'

const SOURCE_LANGUAGE = 'en'

/** What may stand in a message: text, or a number that chooses a plural form. */
export type SaidValues = Readonly<Record<string, string | number>>

const catalogue = setupI18n({ locale: SOURCE_LANGUAGE, messages: { [SOURCE_LANGUAGE]: {} } })
catalogue.setMessagesCompiler(compiledOnce)

const compiled = new Map<string, CompiledMessage>()

/** Each message is read once: a list of hundreds of set-ups says the same few sentences. */
function compiledOnce(message: string): CompiledMessage {
  const known = compiled.get(message)
  if (known !== undefined) return known
  const made = compiledMessage(message)
  compiled.set(message, made)
  return made
}

/**
 * The message in the language chosen, its holes filled: `say('{count} of {total} set-ups', { count, total })`.
 * Plural forms as ICU writes them: `{count, plural, one {# value} other {# values}}`. Numbers are put in as text,
 * already rounded and with their units (words/number-text.ts), so that no library rounds or groups them.
 */
export function say(message: string, values?: SaidValues): string {
  return values === undefined ? catalogue._(message) : catalogue._(message, values)
}

/** A name that data hold in English, such as a label of the demo shelf; any other text stands as it is, signs and all. */
export function translated(name: string): string {
  const found: unknown = catalogue.messages[name]
  return typeof found === 'string' ? found : name
}

/** Chooses the language for all that is said from now on; `messages` maps each English message to its translation. */
export function speak(language: string, messages: Readonly<Record<string, string>>): void {
  catalogue.loadAndActivate({ locale: language, messages: { ...messages } })
  decimal = decimalSignOf(language)
}

/** The tag of the language spoken. */
export function spokenLanguage(): string {
  return catalogue.locale
}

let decimal = '.'

/** Between whole and parts of a number, as the language spoken writes it. */
export function decimalSign(): string {
  return decimal
}

function decimalSignOf(language: string): string {
  const parts = new Intl.NumberFormat(language).formatToParts(0.5)
  return parts.find(({ type }) => type === 'decimal')?.value ?? '.'
}
