// The long tube against Poiseuille's law, and the rule of the scanner room. Leaves out which cylinders are chosen.
import { describe, expect, it } from 'vitest'
import { DomainError } from '../errors.ts'
import { longTubeDropKpa, tubeFillMinutes, uncompensatedReadsLowFactor } from './long-tube.ts'
import { scannerAnswer } from './scanner-rule.ts'

const READY = { regulator: 'conditional', flowmeter: 'conditional' } as const
const UNCOMPENSATED = {
  kind: 'tube-uncompensated',
  stepsLpm: [10],
  flush: null,
  meterClass: 'ordinary',
} as const

const dropKpa = (lengthM: number, flowLpm: number): number =>
  longTubeDropKpa([{ lengthM, boreMm: 5 }], { flowLpm, barometricKpa: 101.325 })

describe('long tube', () => {
  it('loses as much pressure as Poiseuille’s law says while the flow is laminar, within 1 %', () => {
    const viscosity = 2.04e-5
    const flowM3PerS = 2 / 60_000
    const poiseuille = (8 * viscosity * 10 * flowM3PerS) / (Math.PI * 0.0025 ** 4) / 1000
    expect(Math.abs(dropKpa(10, 2) / poiseuille - 1)).toBeLessThan(0.01)
  })

  it('loses more the longer it is and the more flows, nothing at rest; joined of two as one', () => {
    expect(dropKpa(10, 15)).toBeGreaterThan(1.8 * dropKpa(5, 15))
    expect(dropKpa(5, 30)).toBeGreaterThan(2 * dropKpa(5, 15))
    expect(dropKpa(5, 0)).toBe(0)
    const half = { lengthM: 5, boreMm: 5 }
    const joined = longTubeDropKpa([half, half], { flowLpm: 15, barometricKpa: 101.325 })
    expect(Math.abs(joined / dropKpa(10, 15) - 1)).toBeLessThan(1e-9)
    expect(tubeFillMinutes({ lengthM: 5, flowLpm: 0 })).toBeNull()
  })

  it('delays gas by its volume over the flow: 10 m of 5 mm hold 0.196 L', () => {
    expect(tubeFillMinutes({ lengthM: 10, flowLpm: 1 })).toBeCloseTo(0.19635, 5)
  })

  it('makes an uncompensated meter read low as its law says: 20 kPa by 9.4 %', () => {
    const factorAt = (barometricKpa: number): number =>
      uncompensatedReadsLowFactor({ backPressureKpa: 20, barometricKpa })
    expect(factorAt(101.325)).toBeCloseTo(1.094, 3)
    // √(1 + 20/80) = 1.118: more where the air is thinner.
    expect(factorAt(80)).toBeCloseTo(1.118, 3)
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
      barometricKpa: 101.325,
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
