// What set-ups draw, against mass balance worked by hand. Leaves out how long a cylinder then lasts.
import { describe, expect, it } from 'vitest'
import { DomainError } from '../errors.ts'
import { DEMO_SHELF } from '../kit/demo-shelf/demo-shelf.ts'
import type { SetUp } from '../kit/set-up.ts'
import { gasDrawn } from './gas-drawn.ts'

const SEA = 101.325

function setUp(sourceId: string, flowLpm: number, rest: Partial<SetUp>): SetUp {
  const source = DEMO_SHELF.sources.find(({ id }) => id === sourceId)
  if (source === undefined) throw new Error(`no source ${sourceId}`)
  return {
    family: 'nasal-cannula',
    size: 'adult',
    fit: 'gentle',
    source,
    flow: { kind: 'scale', flowLpm },
    setO2Fraction: null,
    humidification: 'none',
    over: null,
    ...rest,
  }
}

const drawn = (one: SetUp): number => gasDrawn({ setUp: one, barometricKpa: SEA }).oxygenLpm

describe('gas drawn', () => {
  it('is the flow of a meter at sea level, with its error on either side', () => {
    const one = gasDrawn({ setUp: setUp('wall-15', 10, {}), barometricKpa: SEA })
    expect(one.oxygenLpm).toBeCloseTo(10, 1)
    expect(one.lowLpm).toBeLessThan(one.oxygenLpm)
    expect(one.highLpm).toBeGreaterThan(one.oxygenLpm)
  })

  it('is the driving flow alone where air is entrained', () => {
    const one = setUp('wall-15', 8, { family: 'entrainment-mask', setO2Fraction: 0.35 })
    expect(drawn(one)).toBeCloseTo(8, 1)
  })

  it('is the oxygen share of a blend: 60 L/min at 0.6 draw 29.6', () => {
    const one = setUp('blender-60', 60, { family: 'nasal-high-flow', setO2Fraction: 0.6 })
    expect(Math.abs(drawn(one) / ((60 * (0.6 - 0.2095)) / 0.7905) - 1)).toBeLessThan(0.08)
  })

  it('counts the mask over a cannula, a bias flow, driving gas, a jet and a leak', () => {
    const over = { family: 'simple-mask', flow: { kind: 'scale', flowLpm: 6 } } as const
    const both = setUp('wall-15', 4, { family: 'cannula-under-mask', over })
    expect(drawn(both)).toBeCloseTo(10, 1)
    const source = setUp('ventilator', 20, { family: 'nasal-high-flow', setO2Fraction: 1 })
    const plain = drawn(source)
    const beside = { biasFlowLpm: 4, drivingGasLpm: 0.5, jetLpm: 6, leakLpm: 1 }
    const all = gasDrawn({ setUp: source, barometricKpa: SEA, beside })
    expect(all.oxygenLpm - plain).toBeCloseTo(11.5, 9)
    expect(all.parts.map(({ part }) => part)).toEqual([
      'SET_UP',
      'BIAS_FLOW',
      'DRIVING_GAS',
      'JET',
      'LEAK',
    ])
  })

  it('is a lower bound while the bias flow of a ventilator is not known, and says so', () => {
    const source = setUp('ventilator', 20, { family: 'nasal-high-flow', setO2Fraction: 0.6 })
    const unknown = gasDrawn({ setUp: source, barometricKpa: SEA })
    expect(unknown.isLowerBound).toBe(true)
    expect(unknown.remarks.map(({ code }) => code)).toContain('BIAS_FLOW_UNKNOWN')
    const known = gasDrawn({ setUp: source, barometricKpa: SEA, beside: { biasFlowLpm: 0 } })
    expect(known.isLowerBound).toBe(false)
  })

  it('takes the rest of a blend from air, all of it together the flow', () => {
    const blend = setUp('blender-60', 60, { family: 'nasal-high-flow', setO2Fraction: 0.6 })
    const { oxygenLpm, airLpm } = gasDrawn({ setUp: blend, barometricKpa: SEA })
    expect(Math.abs((oxygenLpm + airLpm) / 60 - 1)).toBeLessThan(0.08)
    expect(gasDrawn({ setUp: setUp('wall-15', 4, {}), barometricKpa: SEA }).airLpm).toBe(0)
  })

  it('takes nothing from pipeline or cylinder where a concentrator makes it', () => {
    const home = setUp('concentrator-5', 2, {})
    expect(gasDrawn({ setUp: home, barometricKpa: SEA }).isFromStore).toBe(false)
    expect(gasDrawn({ setUp: setUp('wall-15', 2, {}), barometricKpa: SEA }).isFromStore).toBe(true)
  })

  it('refuses a negative leak', () => {
    const ask = (): unknown =>
      gasDrawn({ setUp: setUp('wall-15', 2, {}), barometricKpa: SEA, beside: { leakLpm: -1 } })
    expect(ask).toThrow(DomainError)
  })
})
