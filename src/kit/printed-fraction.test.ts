// Printed fractions against the rule of thumb and guideline tables. Leaves out what is really inhaled.
import { describe, expect, it } from 'vitest'
import { INTERFACE_FAMILIES } from './interface-families.ts'
import type { FamilyId, SizeId } from './family-id.ts'
import { printedFraction } from './printed-fraction.ts'
import type { FlowStep } from './source-row.ts'

function printed(
  family: FamilyId,
  flowLpm: number | 'flush',
  other: { readonly size?: SizeId; readonly setO2Fraction?: number } = {},
) {
  const flow: FlowStep = flowLpm === 'flush' ? { kind: 'flush' } : { kind: 'scale', flowLpm }
  return printedFraction({
    printed: INTERFACE_FAMILIES[family].printed,
    size: other.size ?? 'adult',
    flow,
    setO2Fraction: other.setO2Fraction ?? null,
  })
}

describe('printed fraction', () => {
  it('is the setting where one is set', () => {
    expect(printed('entrainment-mask', 4, { setO2Fraction: 0.28 })).toMatchObject({
      kind: 'range',
      low: 0.28,
      high: 0.28,
    })
  })

  it.each([
    [1, 0.24],
    [2, 0.28],
    [4, 0.36],
    [6, 0.44],
  ])('of a cannula at %i L/min follows the four-per-cent rule', (flowLpm, o2Fraction) => {
    const answer = printed('nasal-cannula', flowLpm)
    expect(answer).toMatchObject({ kind: 'range', known: 'secondary' })
    expect(answer.kind === 'range' && answer.low).toBeCloseTo(o2Fraction, 9)
    expect(answer.kind === 'range' && answer.high).toBeCloseTo(o2Fraction, 9)
  })

  it('lies between the rows of a table and carries its source', () => {
    // Guideline figures: 0.40–0.60 at 8 and 10 L/min, 0.60–0.80 at 10 and 0.60–0.90 at 15.
    expect(printed('simple-mask', 9)).toMatchObject({
      low: 0.4,
      high: 0.6,
      source: 'ODriscoll2017',
    })
    const between = printed('non-rebreather-mask', 12)
    expect(between.kind === 'range' && between.low).toBeCloseTo(0.6, 9)
    expect(between.kind === 'range' && between.high).toBeCloseTo(0.84, 9)
  })

  it.each([
    ['simple-mask', 4, {}, 'FLOW_OUTSIDE_QUOTED'],
    ['simple-mask', 12, {}, 'FLOW_OUTSIDE_QUOTED'],
    ['nasal-cannula', 0.5, {}, 'FLOW_OUTSIDE_QUOTED'],
    ['nasal-cannula', 7, {}, 'FLOW_OUTSIDE_QUOTED'],
    ['nasal-cannula', 1, { size: 'infant' }, 'QUOTED_FOR_ADULTS_ONLY'],
    ['non-rebreather-mask', 'flush', {}, 'FLUSH_NOT_QUOTED'],
    ['cannula-under-mask', 4, {}, 'NOTHING_QUOTED'],
    ['aerosol-mask', 10, {}, 'NOTHING_QUOTED'],
  ] as const)('of %s at %s is none, with the reason', (family, flowLpm, other, code) => {
    expect(printed(family, flowLpm, other)).toEqual({ kind: 'none', code })
  })
})
