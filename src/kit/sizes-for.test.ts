// Sizes by age and weight, and cannula ceilings by age. Leaves out the fit on a face.
import { describe, expect, it } from 'vitest'
import { FAMILY_IDS } from './family-id.ts'
import { cannulaCeiling, sizesFor, usualSize } from './sizes-for.ts'

describe('size for a body', () => {
  it.each([
    [60, 70, 'adult'],
    [12, 40, 'adult'],
    [6, 20, 'child'],
    [2, 12, 'child'],
    [0.7, 8, 'infant'],
    [0.02, 3.2, 'newborn'],
    [0.02, 1.2, 'preterm'],
  ] as const)('at %f years and %f kg is usually %s', (ageYears, weightKg, size) => {
    const body = { ageYears, weightKg }
    expect(usualSize(body)).toBe(size)
    expect(sizesFor('nasal-cannula', body)[0]).toEqual({ size, suits: 'preferred' })
  })

  it('leaves both sizes open where ages overlap, the usual one first', () => {
    expect(sizesFor('simple-mask', { ageYears: 11, weightKg: 35 })).toEqual([
      { size: 'child', suits: 'preferred' },
      { size: 'adult', suits: 'acceptable' },
    ])
  })

  it('offers what is acceptable where the usual size is not made', () => {
    // No preterm prongs for high flow: the newborn size is the smallest.
    expect(sizesFor('nasal-high-flow', { ageYears: 0.02, weightKg: 1.2 })).toEqual([
      { size: 'newborn', suits: 'acceptable' },
    ])
    expect(sizesFor('entrainment-mask', { ageYears: 0.02, weightKg: 3 })).toEqual([])
  })

  it('offers no preterm size when the weight is not known', () => {
    const sizes = sizesFor('nasal-cannula', { ageYears: 0.01 }).map(({ size }) => size)
    expect(sizes).toEqual(['newborn'])
  })

  it('gives an adult the adult size of every family made for one', () => {
    for (const family of FAMILY_IDS) {
      const sizes = sizesFor(family, { ageYears: 60, weightKg: 70 }).map(({ size }) => size)
      const isForInfants = family === 'head-box' || family === 'nasal-catheter'
      expect(sizes, family).toEqual(isForInfants ? [] : ['adult'])
    }
  })

  it('refuses ages and weights outside life', () => {
    expect(() => sizesFor('simple-mask', { ageYears: -1 })).toThrow('AGE_OUT_OF_RANGE')
    expect(() => sizesFor('simple-mask', { ageYears: Number.NaN })).toThrow('NOT_A_NUMBER')
    expect(() => usualSize({ ageYears: 1, weightKg: 0.1 })).toThrow('WEIGHT_OUT_OF_RANGE')
  })
})

describe('ceiling of cannula flow', () => {
  // Newborn 1 L/min unblended [WhoSari2023]; below two years 2, above 4 [NswProngs2019]; adults 6 (common practice).
  it.each([
    [0.01, 1],
    [0.2, 2],
    [1.9, 2],
    [2, 4],
    [11, 4],
    [12, 6],
    [80, 6],
  ])('at %f years is %f L/min', (ageYears, maxLpm) => {
    expect(cannulaCeiling({ ageYears }).maxLpm).toBe(maxLpm)
  })

  it('names its source where there is one', () => {
    expect(cannulaCeiling({ ageYears: 1 })).toEqual({
      maxLpm: 2,
      known: 'seen',
      source: 'NswProngs2019',
    })
  })
})
