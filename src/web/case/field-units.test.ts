// What is typed in a chosen unit: read exactly, never changed by choosing another, refused in the words of its own unit.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { parsedExample } from '../../../test/support/examples.ts'
import { seeded } from '../../../test/support/seed.ts'
import { NUMBERS } from '../../patient/case-fields.ts'
import { readCase } from '../../patient/read-case.ts'
import { CHOOSABLE_UNITS, fromInside, toInside } from '../../units/choosable.ts'
import type { ChoosableUnit } from '../../units/choosable.ts'
import { readDraft } from './case-input.ts'
import { keepDraft, keptDraft } from './draft-store.ts'
import { draftOfFile, textOf, withText } from './draft.ts'
import type { Draft } from './draft.ts'
import { shownEntry, typedInside, typedUnit, withEntry } from './field-units.ts'

const WEIGHT = 'patient.weightKg'
const PCO2 = 'patient.bloodGas.arterialPco2Kpa'
const HEIGHT = 'patient.heightCm'
const NAMES = { [WEIGHT]: 'weightKg', [PCO2]: 'arterialPco2Kpa', [HEIGHT]: 'heightCm' } as const
const UNITS = {
  [WEIGHT]: CHOOSABLE_UNITS.weight,
  [PCO2]: CHOOSABLE_UNITS.pressure,
  [HEIGHT]: CHOOSABLE_UNITS.height,
} as const

const start = exampleDraft('nasal-cannula')

function exampleDraft(id: string): Draft {
  const parsed = parsedExample(id)
  const read = readCase(parsed)
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return draftOfFile(parsed, { id, about: read.case })
}

function typed(field: string, text: string, unit: ChoosableUnit): Draft {
  return withEntry(start, { field, text, unit })
}

function problemOf(draft: Draft) {
  const read = readDraft(draft)
  return read.ok ? undefined : read.problems[0]
}

describe('number typed in a chosen unit', () => {
  it('is the value its definition says', () => {
    const weighed = readDraft(typed(WEIGHT, '154', 'lb'))
    expect(weighed.ok && weighed.case.patient.weightKg).toBeCloseTo(154 * 0.45359237, 12)
    const tall = readDraft(typed(HEIGHT, '70,5', 'in'))
    expect(tall.ok && tall.case.patient.heightCm).toBeCloseTo(70.5 * 2.54, 12)
    const low = readDraft(
      withText(typed('site.barometricPressureKpa', '660', 'mmHg'), 'site.altitudeM', ''),
    )
    expect(low.ok && low.case.site.barometricPressureKpa).toBeCloseTo(660 * 0.133322387415, 12)
  })

  it('keeps its digits and its unit, whichever unit is shown', () => {
    const draft = typed(WEIGHT, '154', 'lb')
    expect(textOf(draft, WEIGHT)).toBe('154')
    expect(typedUnit(draft, WEIGHT)).toBe('lb')
    const entry = { text: '154', unit: 'lb', isRefused: false } as const
    expect(shownEntry({ ...entry, chosen: 'lb' })).toEqual({ text: '154', unit: 'lb' })
    expect(shownEntry({ ...entry, chosen: 'kg' })).toEqual({
      text: '69.85',
      unit: 'kg',
      typedAs: { text: '154', unit: 'lb' },
    })
  })

  it('shows in any unit what reads back as nearly the same and never as thousands', () => {
    const field = fc.constantFrom(WEIGHT, PCO2, HEIGHT)
    fc.assert(
      fc.property(
        field,
        fc.nat(),
        fc.nat(),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (at, i, j, share) => {
          const units = UNITS[at]
          const rule = NUMBERS[NAMES[at]]
          const from = units[i % units.length] ?? units[0]
          const to = units[j % units.length] ?? units[0]
          const inside = rule.min + share * (rule.max - rule.min)
          const text = fromInside(inside, from).toFixed(2)
          const shown = shownEntry({ text, unit: from, chosen: to, isRefused: false })
          const read = typedInside(shown.text, { unit: shown.unit, bounds: { min: 0, max: 1e4 } })
          const meant = toInside(Number(text), from)
          // What was typed in the unit shown is read to its last digit.
          const missMost = from === to ? 0 : 1e-3 * Math.abs(meant) + 1e-9
          const value = read.kind === 'number' ? read.value : Number.NaN
          expect(Math.abs(value - meant) <= missMost, `${text} ${from}, ${shown.text} ${to}`).toBe(
            true,
          )
        },
      ),
      seeded(300),
    )
  })

  it('stands as typed, in its unit, while it is refused or is no number', () => {
    const entry = { unit: 'lb', chosen: 'kg' } as const
    expect(shownEntry({ ...entry, text: '1.2.3', isRefused: true })).toEqual({
      text: '1.2.3',
      unit: 'lb',
    })
    expect(shownEntry({ ...entry, text: '9999', isRefused: true })).toEqual({
      text: '9999',
      unit: 'lb',
    })
    expect(shownEntry({ ...entry, text: '', isRefused: false })).toEqual({ text: '', unit: 'kg' })
  })

  it('is refused with value, limits and unit of its own, the limits being allowed', () => {
    const problem = problemOf(typed(PCO2, '400', 'mmHg'))
    expect(problem).toMatchObject({ path: PCO2, value: 400, unit: 'mmHg' })
    const limit = problem?.limit
    if (limit === undefined || 'oneOf' in limit) throw new Error('a range is expected')
    for (const end of [limit.min, limit.max]) {
      expect(problemOf(typed(PCO2, String(end), 'mmHg'))).toBeUndefined()
    }
  })

  it('offers what was meant where the number belongs to another unit of the quantity', () => {
    // 5.3 kPa is 39.8 mmHg; 170 cm is 66.9 in.
    expect(problemOf(typed(PCO2, '5.3', 'mmHg'))).toMatchObject({ unit: 'mmHg', suggestion: 39.8 })
    expect(problemOf(typed(HEIGHT, '170', 'in'))).toMatchObject({ unit: 'in', suggestion: 66.9 })
  })

  it('loses its unit with its text', () => {
    const emptied = withEntry(typed(WEIGHT, '154', 'lb'), { field: WEIGHT, text: '', unit: 'lb' })
    expect(emptied.units).toBeUndefined()
    expect(
      withEntry(typed(WEIGHT, '154', 'lb'), { field: WEIGHT, text: '70', unit: 'kg' }).units,
    ).toBeUndefined()
  })

  it('comes back from the browser with its unit, or not at all', () => {
    let kept = ''
    const storage = {
      getItem: () => kept,
      setItem: (_: string, text: string) => {
        kept = text
      },
    }
    const draft = typed(WEIGHT, '154', 'lb')
    keepDraft(storage, draft, 1_000)
    expect(keptDraft(storage)).toEqual(draft)
    kept = kept.replace('"lb"', '"stone"')
    expect(keptDraft(storage)).toBeUndefined()
  })
})

describe('altitude from settings', () => {
  const unplaced = withText(withText(start, 'site.altitudeM', ''), 'site.barometricPressureKpa', '')

  it('stands in where the case gives none, and only there', () => {
    const read = readDraft(unplaced, { altitudeM: 1180 })
    expect(read.ok && read.case.site).toEqual({ altitudeM: 1180 })
    const own = readDraft(withText(unplaced, 'site.altitudeM', '0'), { altitudeM: 1180 })
    expect(own.ok && own.case.site).toEqual({ altitudeM: 0 })
    const measured = readDraft(withText(unplaced, 'site.barometricPressureKpa', '88'), {
      altitudeM: 1180,
    })
    expect(measured.ok && measured.case.site).toEqual({ barometricPressureKpa: 88 })
  })
})
