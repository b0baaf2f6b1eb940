// Stated draws against mass balance worked by hand. Leaves out how long a cylinder then lasts.
import { describe, expect, it } from 'vitest'
import { DomainError } from '../errors.ts'
import { statedDraw } from './stated-draw.ts'

describe('stated draw', () => {
  it('is the flow of a meter, with the band of an ordinary meter on either side', () => {
    expect(statedDraw({ kind: 'meter', flowLpm: 10 })).toMatchObject({
      oxygenLpm: 10,
      lowLpm: 9,
      highLpm: 11,
    })
    const low = statedDraw({ kind: 'meter', flowLpm: 1 })
    expect([low.lowLpm, low.highLpm]).toEqual([0.5, 1.5])
  })

  it('is the driving flow alone where air is entrained', () => {
    expect(statedDraw({ kind: 'driving', flowLpm: 8 }).oxygenLpm).toBe(8)
  })

  it('is the oxygen share of a blend: 60 L/min at 0.6 draw 29.6, air draws none', () => {
    const blend = { kind: 'blend', flowLpm: 60 } as const
    expect(statedDraw({ ...blend, setO2Fraction: 0.6 }).oxygenLpm).toBeCloseTo(29.64, 2)
    expect(statedDraw({ ...blend, setO2Fraction: 0.2095 })).toMatchObject({
      oxygenLpm: 0,
      parts: [],
    })
  })

  it('adds bias flow, driving gas, a jet and a leak', () => {
    const all = statedDraw(
      { kind: 'ventilator', flowLpm: 6, setO2Fraction: 1, biasFlowLpm: 2, drivingGasLpm: 0.5 },
      { jetLpm: 6, leakLpm: 1 },
    )
    expect(all.oxygenLpm).toBeCloseTo(15.5, 9)
    expect(all.parts.map(({ part }) => part)).toEqual([
      'SET_UP',
      'BIAS_FLOW',
      'DRIVING_GAS',
      'JET',
      'LEAK',
    ])
  })

  it('refuses what no meter shows', () => {
    expect(() => statedDraw({ kind: 'meter', flowLpm: -1 })).toThrow(DomainError)
    expect(() => statedDraw({ kind: 'blend', flowLpm: 30, setO2Fraction: 28 })).toThrow(DomainError)
  })
})
