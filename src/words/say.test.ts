// Messages are filled, counted and translated; what has no translation shows in English.
import { afterEach, describe, expect, it } from 'vitest'
import { say, speak } from './say.ts'

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
  ])('chooses the plural form of %d', (count, expected) => {
    expect(say('{count, plural, one {# value} other {# values}}', { count })).toBe(expected)
  })

  it('speaks another language, and English where a translation is missing', () => {
    speak('de', { 'not known: {what}': 'nicht bekannt: {what}' })
    expect(say('not known: {what}', { what: 'x' })).toBe('nicht bekannt: x')
    expect(say('known: {what}', { what: 'x' })).toBe('known: x')
  })
})
