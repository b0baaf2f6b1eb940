// Design flows against the check figures, and hours of manifold and tank. Leaves out pressure in pipes.
import { describe, expect, it } from 'vitest'
import { DomainError } from '../errors.ts'
import { kpaFromBar } from '../units/pressure.ts'
import {
  AREA_RULES,
  departmentFlowLpm,
  designFlowLpm,
  manifoldHours,
  tankHours,
} from './pipeline.ts'
import { usableContents } from './cylinder.ts'

describe('pipeline', () => {
  it.each([
    ['ward', 1, 10],
    ['ward', 4, 14.5],
    ['ward', 6, 17.5],
    ['resuscitation', 3, 103],
    ['theatre', 3, 120],
    ['recovery', 4, 28],
    ['critical-care', 6, 32.5],
    ['neonatal', 5, 34],
    ['mask-pressure', 4, 225],
  ] as const)('is designed for %s, %i places, with %f L/min', (area, places, lpm) => {
    expect(designFlowLpm({ area, places })).toBeCloseTo(lpm, 9)
  })

  it('says that its formulas are from memory', () => {
    for (const rule of Object.values(AREA_RULES)) expect(rule.known).toBe('memory')
  })

  it('counts half of each further ward, and refuses no place', () => {
    expect(departmentFlowLpm({ wardFlowLpm: 20, wards: 3 })).toBe(40)
    expect(() => designFlowLpm({ area: 'ward', places: 0 })).toThrow(DomainError)
  })

  it('lasts as many hours as its cylinders hold, and shorter the more is drawn', () => {
    const manifold = { waterVolumeL: 47.2, gaugeKpa: kpaFromBar(137), count: 10, leftGaugeKpa: 0 }
    const place = { manifold, barometricKpa: 101.325, temperatureC: 15 }
    const { usableL } = usableContents(
      { waterVolumeL: 47.2, gaugeKpa: kpaFromBar(137), readAtC: 15, isValveOpen: true },
      { barometricKpa: 101.325, leftGaugeKpa: 0 },
    )
    expect(manifoldHours({ ...place, drawLpm: 100 })).toBeCloseTo((10 * usableL) / 6000, 9)
    expect(manifoldHours({ ...place, drawLpm: 0 })).toBeNull()
    const tank = { liquidL: 1000, evaporationLPerDay: 5 }
    const { longestHours, shortestHours } = tankHours({ tank, drawLpm: 200 })
    expect(longestHours).toBeCloseTo((1000 * 857.3) / 200 / 60, 6)
    expect(shortestHours).toBeLessThan(longestHours ?? 0)
  })
})
