// What a chain's pressure and length do, in numbers worked by hand: a meter that reads low, a jet held back, water in a hanging hose. Leaves out their words.
import { describe, expect, it } from 'vitest'
import type { Chain } from '../src/joining/chain.ts'
import { checkChain } from '../src/joining/check-chain.ts'
import { demoPart, inLine } from '../src/joining/hand-chain.ts'
import type { HandPart } from '../src/joining/hand-chain.ts'
import type { Part } from '../src/joining/part.ts'
import { patientPart } from '../src/joining/patient-part.ts'
import type { ChainPatient } from '../src/joining/patient-part.ts'
import type { ChainRemark, ChainRemarkCode } from '../src/joining/remarks.ts'

const ADULT: ChainPatient = {
  ageYears: 60,
  weightKg: 70,
  airway: { route: 'natural', nose: 'open' },
}

function remarks(chain: Chain, code: ChainRemarkCode): readonly ChainRemark[] {
  return checkChain({ chain, patient: ADULT }).remarks.filter((one) => one.code === code)
}

function valueOf(remark: ChainRemark | undefined, key: string): number {
  const value = remark?.values[key]
  if (typeof value !== 'number') throw new Error(`no number ${key} in ${JSON.stringify(remark)}`)
  return value
}

function longTubing(meter: HandPart, between: HandPart = demoPart('nipple')): Chain {
  return inLine([
    demoPart('outlet-oxygen'),
    meter,
    between,
    demoPart('tubing-10'),
    demoPart('simple-mask/adult'),
    patientPart('face'),
  ])
}

describe('a meter with its valve before the tube', () => {
  const uncompensated: HandPart = [demoPart('wall-uncompensated'), { flowLpm: 10 }]

  it('lets through more than it shows, as the root of the pressure in it', () => {
    // 10 m of 4.8 mm at 10 L/min of oxygen: v 9.21 m/s, Re 2 882, f 0.0316 between laminar and turbulent, L/d 2 083, ½ρv² 56.4 Pa:
    // 3.71 kPa, 3.64 kPa as the gas expands. True flow 10·√((101.3 + 3.64)/101.3) = 10.18 L/min.
    const [low, ...more] = remarks(longTubing(uncompensated), 'METER_READS_LOW')
    expect(more).toEqual([])
    expect(Math.abs(valueOf(low, 'pressureKpa') - 3.64)).toBeLessThan(0.15)
    expect(Math.abs(valueOf(low, 'trueLpm') - 10.18)).toBeLessThan(0.01)
    expect(valueOf(low, 'flowLpm')).toBe(10)
  })

  it('tells it at the air pressure of the place', () => {
    // The same tube at 87.9 kPa: the thinner gas loses more, about 4.1 kPa; 10·√((87.9 + 4.1)/101.3) = 9.53 L/min.
    const question = { chain: longTubing(uncompensated), patient: ADULT, barometricKpa: 87.9 }
    const here = checkChain(question).remarks.find(({ code }) => code === 'METER_READS_LOW')
    const behindKpa = valueOf(here, 'pressureKpa')
    expect(behindKpa).toBeGreaterThan(3.64)
    expect(valueOf(here, 'trueLpm')).toBeCloseTo(10 * Math.sqrt((87.9 + behindKpa) / 101.325), 1)
    expect(valueOf(here, 'trueLpm')).toBeLessThan(10)
  })

  it('reads low by more than can be worked out before a bubble bottle', () => {
    const chain = longTubing(uncompensated, demoPart('bubble'))
    expect(remarks(chain, 'METER_READS_LOW')).toEqual([])
    expect(remarks(chain, 'METER_READS_LOW_UNKNOWN')).toHaveLength(1)
  })

  it('is no matter with the valve behind the tube', () => {
    const chain = longTubing([demoPart('wall-15'), { flowLpm: 10 }])
    expect(remarks(chain, 'METER_READS_LOW')).toEqual([])
  })
})

describe('a jet that draws in room air', () => {
  function jetInto(boreMm: number, { set, drive } = { set: 0.35, drive: 10 }): Chain {
    const hose = demoPart('hose-22')
    return inLine([
      demoPart('outlet-oxygen'),
      [demoPart('wall-15'), { flowLpm: drive }],
      [demoPart('nebuliser'), { o2Fraction: set }],
      { ...hose, tube: { ...tubeOf(hose), lengthM: 1.8, boreMm } },
      demoPart('aerosol-mask/adult'),
      patientPart('face'),
    ])
  }

  it('is held back above 0.05 kPa, with the pressure', () => {
    // 10 L/min at 0.35 draw 46.3 L/min of air: 56.3 L/min in 1.8 m of 15 mm: v 5.31 m/s, Re 5 250, f 0.0372, L/d 120, ½ρv² 17.3 Pa: 77 Pa.
    const [held] = remarks(jetInto(15), 'ENTRAINMENT_DISTURBED')
    expect(Math.abs(valueOf(held, 'pressureKpa') - 0.077)).toBeLessThan(0.003)
  })

  it.each([
    // Set to, drive: total flow by the table of the guideline, 45 at 8 L/min and 24 at 12 L/min [ODriscoll2017].
    [0.35, 8, 45, 13],
    [0.6, 12, 24, 8],
  ])(
    'set to %f and driven with %f L/min gives between %f L/min and its drive',
    (set, drive, total, boreMm) => {
      const [held] = remarks(jetInto(boreMm, { set, drive }), 'ENTRAINMENT_DISTURBED')
      expect(Math.abs(valueOf(held, 'setLpm') - total)).toBeLessThan(0.5)
      expect(held?.values).toMatchObject({ leastLpm: drive, o2Fraction: set, mostO2Fraction: 1 })
      expect(valueOf(held, 'pressureKpa')).toBeGreaterThan(valueOf(held, 'limitKpa'))
    },
  )

  it('draws as set into the usual wide hose', () => {
    // In 20 mm: v 2.98 m/s, Re 3 940, f 0.040, L/d 90, ½ρv² 5.5 Pa: 20 Pa.
    expect(remarks(jetInto(20), 'ENTRAINMENT_DISTURBED')).toEqual([])
  })
})

describe('water in a hanging hose', () => {
  interface Hose {
    readonly lengthM: number
    readonly isHeated?: boolean
    readonly hasWaterTrap?: boolean
  }

  function behind(humidifier: readonly HandPart[], hose: Hose): Chain {
    const part = demoPart('hose-22')
    return inLine([
      demoPart('outlet-oxygen'),
      [demoPart('wall-15'), { flowLpm: 10 }],
      ...humidifier,
      { ...part, tube: { ...tubeOf(part), isHeated: false, hasWaterTrap: false, ...hose } },
      demoPart('aerosol-mask/adult'),
      patientPart('face'),
    ])
  }
  const mist: readonly HandPart[] = [[demoPart('nebuliser'), { o2Fraction: 0.4 }]]

  it('gathers from 1 m of unheated hose on, and says where and whether a trap takes it', () => {
    const [water, ...more] = remarks(behind(mist, { lengthM: 1 }), 'WATER_IN_LOOP')
    expect(more).toEqual([])
    expect(water?.part).toBe(3)
    expect(water?.values).toMatchObject({ trap: 'no', lengthM: 1 })
    const trapped = remarks(behind(mist, { lengthM: 1.8, hasWaterTrap: true }), 'WATER_IN_LOOP')
    expect(trapped[0]?.values).toMatchObject({ trap: 'yes', lengthM: 1.8 })
  })

  it('does not in a shorter, a heated or a dry one', () => {
    expect(remarks(behind(mist, { lengthM: 0.9 }), 'WATER_IN_LOOP')).toEqual([])
    expect(remarks(behind(mist, { lengthM: 1.8, isHeated: true }), 'WATER_IN_LOOP')).toEqual([])
    expect(remarks(behind([], { lengthM: 1.8 }), 'WATER_IN_LOOP')).toEqual([])
  })
})

function tubeOf({ tube }: Part): NonNullable<Part['tube']> {
  if (tube === null) throw new Error('no tube')
  return tube
}
