// Values said in the units chosen. Leaves out what is typed.
import { afterEach, describe, expect, it } from 'vitest'
import { USUAL_UNITS } from '../units/choosable.ts'
import { kgText } from './remark-exclusions.ts'
import { quantityAt, shownBand, showUnits } from './shown-unit.ts'
import { warningText } from './warning-text.ts'

afterEach(() => showUnits(USUAL_UNITS))

describe('values in the units chosen', () => {
  it('are said in the usual units unless others are chosen', () => {
    expect(kgText(70)).toBe('70 kg')
    const band = { low: 4.8, median: 5.3, high: 6, unit: 'kPa' }
    expect(shownBand('arterialPco2Kpa', band)).toEqual(band)
  })

  it('follow the units chosen', () => {
    showUnits({ ...USUAL_UNITS, weight: 'lb', pressure: 'mmHg', height: 'in' })
    // 70 kg = 154.3 lb, 2.5 kg = 5.5 lb, 5.3 kPa = 39.75 mmHg, 152.4 cm = 60 in by definition.
    expect(kgText(70)).toBe('154 lb')
    expect(kgText(2.5)).toBe('5.5 lb')
    const band = shownBand('arterialPco2Kpa', { low: 5.3, median: 5.3, high: 5.3, unit: 'kPa' })
    expect(band.unit).toBe('mmHg')
    expect(band.median).toBeCloseTo(39.753, 3)
    const code = 'HEIGHT_UNUSUAL_FOR_AGE'
    const warning = { code, path: 'patient.heightCm', value: 152.4, unit: 'cm' } as const
    expect(warningText(warning)).toContain('60 in')
  })

  it('leave alone what has one unit everywhere', () => {
    showUnits({ ...USUAL_UNITS, pressure: 'Torr' })
    const band = { low: 1, median: 2, high: 3, unit: 'g/L' }
    expect(shownBand('haemoglobinGpl', band)).toBe(band)
    expect(quantityAt('patient.haemoglobinGpl')).toBeUndefined()
  })
})
