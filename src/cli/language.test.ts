// The language of a run: from the option, else the variable, never of JSON. Leaves out how it sounds.
import { describe, expect, it } from 'vitest'
import { chosenLanguage } from './language.ts'

describe('language of a run', () => {
  it('is English unless the option or the variable says otherwise', () => {
    expect(chosenLanguage(['plan', 'a.json'], undefined).language).toBe('en')
    expect(chosenLanguage(['plan', 'a.json'], '').language).toBe('en')
    expect(chosenLanguage(['plan', 'a.json'], 'de').language).toBe('de')
    expect(chosenLanguage(['plan', '--language', 'en', 'a.json'], 'de').language).toBe('en')
  })

  it.each([
    [['plan', '--language', 'de', 'a.json']],
    [['plan', 'a.json', '--language=de']],
    [['--language', 'de-AT', 'plan', 'a.json']],
  ])('is taken out of %j', (words) => {
    const chosen = chosenLanguage(words, undefined)
    expect(chosen).toEqual({
      language: 'de',
      words: ['plan', 'a.json'],
      unknownVariable: undefined,
    })
  })

  it('is English for JSON, which is never translated', () => {
    const words = ['plan', 'a.json', '--json', '--language', 'de']
    expect(chosenLanguage(words, 'de').language).toBe('en')
  })

  it.each([
    [['plan', '--language', 'xx']],
    [['plan', '--language']],
    [['plan', '--language', 'de', '--language', 'en']],
  ])('leaves %j to be refused', (words) => {
    expect(chosenLanguage(words, undefined)).toEqual({
      language: 'en',
      words,
      unknownVariable: undefined,
    })
  })

  it('names a variable that holds no language at hand', () => {
    expect(chosenLanguage(['evidence'], 'xx').unknownVariable).toBe('xx')
  })
})
