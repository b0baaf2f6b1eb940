// Whom each size fits, in words that agree with the size table. Leaves out the page around them.
import { describe, expect, it } from 'vitest'
import { FAMILY_IDS } from '../kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import { sizesFor } from '../kit/sizes-for.ts'
import type { BodySize } from '../kit/sizes-for.ts'
import { fitsAgesText, fitsText, labelWeightText } from './shelf-page-text.ts'

const OLDEST_YEARS = 120
const CANNULA = new Map(
  INTERFACE_FAMILIES['nasal-cannula'].sizes.map((size) => [size.id, fitsText(size)]),
)

describe('whom a size fits', () => {
  it.each([
    ['preterm', 'fits up to 6 months and up to 2 kg'],
    ['newborn', 'fits up to 6 months and up to 5 kg'],
    ['infant', 'fits 18 days–2.5 years, from 2.5 kg'],
    ['child', 'fits 1–13 years'],
    ['adult', 'fits from 10 years'],
  ] as const)('%s %s', (size, text) => {
    expect(CANNULA.get(size)).toBe(text)
  })

  it('is said by the weights of its label beside the usual ages, where they are typed', () => {
    const [, newborn] = INTERFACE_FAMILIES['nasal-cannula'].sizes
    expect(newborn && fitsAgesText(newborn)).toBe('fits up to 6 months')
    expect(labelWeightText({ fitsMinKg: 2.5, fitsMaxKg: 10 })).toBe('2.5–10 kg')
    expect(labelWeightText({ fitsMinKg: 40 })).toBe('from 40 kg')
    expect(labelWeightText({ fitsMaxKg: 3.25 })).toBe('up to 3.25 kg')
  })

  it.each(FAMILY_IDS)('is said of every size of %s, and is what the plan goes by', (family) => {
    for (const size of INTERFACE_FAMILIES[family].sizes) {
      const oldest = { ageYears: size.ageYearsMax, weightKg: size.weightKgMax ?? 12 }
      const older = { ...oldest, ageYears: Math.min(size.ageYearsMax + 0.1, OLDEST_YEARS) }
      const isWorn = (body: BodySize): boolean =>
        sizesFor(family, body).some((one) => one.size === size.id)
      expect(fitsText(size)).toMatch(/^fits .*\d/)
      expect(isWorn(oldest)).toBe(true)
      expect(isWorn(older)).toBe(size.ageYearsMax === OLDEST_YEARS)
    }
  })
})
