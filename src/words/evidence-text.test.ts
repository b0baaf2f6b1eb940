// The numbers beside published ones as written. Leaves out names and sentences, which the catalogue holds.
import { describe, expect, it } from 'vitest'
import { EVIDENCE_ROWS } from '../evidence/all-rows.ts'
import { judgeRow } from '../evidence/verdict.ts'
import { ourValueText } from './evidence-text.ts'

const [anyRow] = EVIDENCE_ROWS.filter(({ compare, unit }) => compare === 'equal' && unit === '1')

function written(ourValue: number, tolerance: number): string {
  if (anyRow === undefined) throw new Error('no row is a fraction')
  const row = { ...anyRow, tolerance: { ...anyRow.tolerance, value: tolerance } }
  return ourValueText({ ...judgeRow(anyRow), row, ourValue })
}

describe('our value beside a published one', () => {
  it('is written to a tenth of the tolerance, with four digits at most', () => {
    expect(written(0.000_080_82, 0.005)).toBe('0.0001')
    expect(written(0.437_81, 0.05)).toBe('0.438')
    expect(written(0.998_049, 0.0001)).toBe('0.998')
    expect(written(5.129_51, 0.0001)).toBe('5.13')
    expect(written(12_345.678, 0.5)).toBe('12350')
  })
})
