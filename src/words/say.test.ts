// Messages are filled, counted and translated; what has no translation shows in English. Leaves out the catalogues.
import { afterEach, describe, expect, it } from 'vitest'
import { numberText, plainNumberText, rangeText } from './number-text.ts'
import { say, speak, spokenLanguage, translated } from './say.ts'

afterEach(() => speak('en', {}))

describe('say', () => {
  it('fills holes with text as given and leaves signs alone', () => {
    expect(say("the device's 50 % of {what} <or> #1", { what: '0.5' })).toBe(
      "the device's 50 % of 0.5 <or> #1",
    )
  })

  it.each([
    [1, '1 value'],
    [2, '2 values'],
    [1180, '1180 values'],
  ])('chooses the plural form of %d and parts no thousands', (count, expected) => {
    expect(say('{count, plural, one {# value} other {# values}}', { count })).toBe(expected)
    speak('de', {})
    expect(say('{count, plural, one {# value} other {# values}}', { count })).toBe(expected)
  })

  it('speaks another language, and English where a translation is missing', () => {
    speak('de', { 'not known: {what}': 'nicht bekannt: {what}' })
    expect(spokenLanguage()).toBe('de')
    expect(say('not known: {what}', { what: 'x' })).toBe('nicht bekannt: x')
    expect(say('known: {what}', { what: 'x' })).toBe('known: x')
  })

  it('forgets a language that is no longer spoken', () => {
    speak('de', { fever: 'Fieber' })
    speak('en', {})
    expect(say('fever')).toBe('fever')
  })

  it('translates names in data and leaves other names as they are, signs and all', () => {
    speak('de', { 'Face tent': 'Gesichtszelt' })
    expect(translated('Face tent')).toBe('Gesichtszelt')
    expect(translated("Ward's {own} # label")).toBe("Ward's {own} # label")
  })

  it('writes numbers with the decimal sign of the language', () => {
    speak('de', {})
    expect(numberText(0.5, 0.01)).toBe('0,5')
    expect(numberText(-1.25, 0.01)).toBe('−1,25')
    expect(plainNumberText(1200)).toBe('1200')
    expect(rangeText({ low: 0.38, high: 0.54, step: 0.01 })).toBe('0,38–0,54')
  })
})
