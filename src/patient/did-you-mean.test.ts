// What a misspelling may have meant, and what means nothing.
import { describe, expect, it } from 'vitest'
import { closest, editDistance } from './did-you-mean.ts'

describe('editDistance', () => {
  it.each([
    ['', '', 0],
    ['abc', '', 3],
    ['kitten', 'sitting', 3],
    ['flaw', 'lawn', 2],
    ['weight', 'wieght', 1],
    ['asthma', 'astma', 1],
  ])('%s to %s takes %d', (a, b, distance) => {
    expect(editDistance(a, b)).toBe(distance)
    expect(editDistance(b, a)).toBe(distance)
  })
})

describe('closest', () => {
  const choices = ['weightKg', 'heightCm', 'sex', 'airway']

  it.each([
    ['wieghtKg', 'weightKg'],
    ['WEIGHT_KG', 'weightKg'],
    ['weight', 'weightKg'],
    ['height-cm', 'heightCm'],
    ['airwayState', 'airway'],
    ['sexx', 'sex'],
  ])('%s may mean %s', (typed, choice) => {
    expect(closest({ typed, choices })).toBe(choice)
  })

  it.each(['shoeSize', '', '???', 'constructor', '__proto__', 'toString'])(
    '%s means nothing',
    (typed) => {
      expect(closest({ typed, choices, aliases: { mass: 'weightKg' } })).toBeUndefined()
    },
  )

  it('knows other names, and only those that stand for a choice here', () => {
    const aliases = { mass: 'weightKg', spo2: 'saturationPercent' }
    expect(closest({ typed: 'Mass', choices, aliases })).toBe('weightKg')
    expect(closest({ typed: 'SpO2', choices, aliases })).toBeUndefined()
  })
})
