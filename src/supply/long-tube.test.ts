// The long tube against Poiseuille's law, and the rule of the scanner room. Leaves out which cylinders are chosen.
import { describe, expect, it } from 'vitest'
import { DomainError } from '../errors.ts'
import { tubeFillMinutes, tubePressureDropKpa, uncompensatedReadsLowFactor } from './long-tube.ts'
import { scannerAnswer } from './scanner-rule.ts'

const READY = { regulator: 'conditional', flowmeter: 'conditional' } as const
const UNCOMPENSATED = {
  kind: 'tube-uncompensated',
  stepsLpm: [10],
  flush: null,
  meterClass: 'ordinary',
} as const

describe('long tube', () => {
  it('loses as much pressure as Poiseuille’s law says while the flow is laminar', () => {
    const viscosity = 2.04e-5
    const flowM3PerS = 2 / 60_000
    const poiseuille = (8 * viscosity * 10 * flowM3PerS) / (Math.PI * 0.0025 ** 4) / 1000
    expect(tubePressureDropKpa({ lengthM: 10, flowLpm: 2 })).toBeCloseTo(poiseuille, 9)
  })

  it('loses more the longer it is and the more flows, nothing at rest', () => {
    const short = tubePressureDropKpa({ lengthM: 5, flowLpm: 15 })
    expect(tubePressureDropKpa({ lengthM: 10, flowLpm: 15 })).toBeCloseTo(2 * short, 9)
    expect(tubePressureDropKpa({ lengthM: 5, flowLpm: 30 })).toBeGreaterThan(2 * short)
    expect(tubePressureDropKpa({ lengthM: 5, flowLpm: 0 })).toBe(0)
    expect(tubeFillMinutes({ lengthM: 5, flowLpm: 0 })).toBeNull()
  })

  it('delays gas by its volume over the flow: 10 m of 5 mm hold 0.196 L', () => {
    expect(tubeFillMinutes({ lengthM: 10, flowLpm: 1 })).toBeCloseTo(0.19635, 5)
  })

  it('makes an uncompensated meter read low as its law says: 20 kPa by 9.4 %', () => {
    expect(uncompensatedReadsLowFactor(20)).toBeCloseTo(1.094, 3)
  })

  it('refuses a length that is none', () => {
    expect(() => tubeFillMinutes({ lengthM: -1, flowLpm: 1 })).toThrow(DomainError)
  })
})

describe('scanner room', () => {
  const ask = (rest: object) =>
    scannerAnswer({
      kit: READY,
      chain: null,
      isCylinderConditional: true,
      flowLpm: 10,
      meter: null,
      ...rest,
    })
  const codes = (rest: object): readonly string[] => ask(rest).remarks.map(({ code }) => code)

  it('lets gas in only where cylinder, regulator and flowmeter are all MR conditional', () => {
    expect(ask({}).gas).toBe('inside')
    expect(ask({ isCylinderConditional: false }).gas).toBe('outside')
    expect(ask({ kit: { ...READY, regulator: 'unknown' } }).gas).toBe('outside')
    expect(ask({ kit: { ...READY, flowmeter: 'not' } }).gas).toBe('outside')
    expect(ask({ kit: undefined }).gas).toBe('outside')
  })

  it('asks for the length of the tube, and says what a long one does', () => {
    const outside = { ...READY, regulator: 'not' }
    expect(codes({ kit: outside })).toEqual(['GAS_STAYS_OUTSIDE', 'TUBE_LENGTH_UNKNOWN'])
    const slow = { kit: { ...outside, tubeLengthM: 15 }, flowLpm: 0.5 }
    expect(codes(slow)).toContain('TUBE_DELAYS_GAS')
    const low = { kit: { ...outside, tubeLengthM: 15 }, flowLpm: 15, meter: UNCOMPENSATED }
    expect(codes(low)).toContain('TUBE_MAKES_METER_READ_LOW')
  })
})
