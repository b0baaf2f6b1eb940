// The language of the page: as set, else as the device prefers. Leaves out loading it.
import { describe, expect, it } from 'vitest'
import { chosenLanguage } from './language.ts'
import { DEVICE_LANGUAGE } from './settings.ts'

describe('language of the page', () => {
  it('is the first of the device’s own that is at hand', () => {
    expect(chosenLanguage(DEVICE_LANGUAGE, ['fr-FR', 'de-AT', 'en'])).toBe('de')
    expect(chosenLanguage(DEVICE_LANGUAGE, ['en-US', 'de'])).toBe('en')
    expect(chosenLanguage(DEVICE_LANGUAGE, ['fr'])).toBe('en')
    expect(chosenLanguage(DEVICE_LANGUAGE, [])).toBe('en')
  })

  it('is the one set, whatever the device prefers', () => {
    expect(chosenLanguage('de', ['en-GB'])).toBe('de')
    expect(chosenLanguage('en', ['de'])).toBe('en')
    expect(chosenLanguage('pt-BR', ['de'])).toBe('en')
  })
})
