// Water along real chains of the demo shelf: stages in order, flow of the right meters, label and trap of the parts. Leaves out joining itself.
import { describe, expect, it } from 'vitest'
import type { AirwayFacts } from '../src/humidity/facts.ts'
import { humidityOf } from '../src/humidity/humidity-of.ts'
import { flowOfChain, pathOfChain } from '../src/humidity/path-of-chain.ts'
import type { Chain } from '../src/joining/chain.ts'
import { solveChains } from '../src/joining/solve-chains.ts'
import type { Wanted } from '../src/joining/wanted.ts'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'

const NATURAL = { route: 'natural', nose: 'open' } as const
const TUBED = {
  route: 'tracheostomy',
  nose: 'open',
  tube: { cuff: 'up', speakingValve: false, capped: false, heatMoistureExchanger: false },
} as const
const NOSE: AirwayFacts = {
  isBypassed: false,
  hasNeckOpening: false,
  ageYears: 60,
  secretions: null,
  isNewOpening: false,
  tracheostomyAgeDays: null,
  wearsExchanger: false,
  returnsThroughNeck: false,
  nebulisesDrug: null,
  tidalVolumeMl: null,
}
const NECK: AirwayFacts = { ...NOSE, isBypassed: true, hasNeckOpening: true }

function chainFor(wanted: Wanted, wardId: string): Chain {
  const airway = wanted.interfaceId?.startsWith('t') === true ? TUBED : NATURAL
  const patient = { ageYears: 60, weightKg: 70, airway }
  const answer = solveChains({ shelf: DEMO_SHELF, wardId, wanted, patient })
  if (answer.kind !== 'chains') throw new Error(JSON.stringify(answer))
  return answer.best.chain
}

function kinds(chain: Chain, airway: AirwayFacts): readonly string[] {
  return pathOfChain(chain, airway).stages.map(({ kind }) => kind)
}

const BUBBLED: Wanted = {
  interfaceId: 'nasal-cannula',
  size: 'adult',
  sourceId: 'wall-15',
  humidification: 'bubble',
  flowLpm: 4,
}
const LIMB: Wanted = {
  interfaceId: 'tracheostomy-mask',
  size: 'adult',
  sourceId: 'ventilator',
  humidification: 'heated',
  flowLpm: 30,
  o2Fraction: 0.4,
}

describe('water along a chain of parts', () => {
  it('meets bottle and tubing of a cannula in this order, and the flow of its meter', () => {
    const chain = chainFor(BUBBLED, 'heron')
    expect(kinds(chain, NOSE)[0]).toBe('bubble')
    expect(
      kinds(chain, NOSE)
        .slice(1)
        .every((kind) => kind === 'hose'),
    ).toBe(true)
    expect(flowOfChain(chain)).toBe(4)
    const answer = humidityOf({ chain, barometricKpa: 87.9, roomTemperatureC: 22, airway: NOSE })
    expect(answer.vapourMgPerLBtps.middle).toBeGreaterThan(10)
    expect(answer.vapourMgPerLBtps.middle).toBeLessThan(17)
    expect(answer.vessels[0]?.refill).toMatchObject({ isAssumedVolume: false })
  })

  it('meets chamber and heated hose behind a ventilator, warm enough to be enough', () => {
    const chain = chainFor(LIMB, 'plover')
    expect(kinds(chain, NECK)).toContain('heated-chamber')
    const answer = humidityOf({
      chain,
      barometricKpa: 87.9,
      roomTemperatureC: 22,
      heaterTemperatureC: 37,
      airway: NECK,
    })
    expect(answer.requirement.leastMgPerL).toBe(33)
    expect(answer.vapourMgPerLBtps.middle).toBeGreaterThan(33)
  })

  it('asks for the flow where the chain does not tell it', () => {
    const chain = chainFor(BUBBLED, 'heron')
    const parts = chain.parts.map((one) => ({ ...one, setting: {} }))
    const unset = { ...chain, parts }
    expect(flowOfChain(unset)).toBeNull()
    expect(() => humidityOf({ chain: unset, barometricKpa: 100, airway: NOSE })).toThrow(
      'MISSING_FIELD',
    )
  })

  it('counts an exchanger worn on the tube where the chain ends at the neck', () => {
    const chain = chainFor(LIMB, 'plover')
    const answer = humidityOf({
      chain,
      barometricKpa: 87.9,
      airway: { ...NECK, wearsExchanger: true },
    })
    expect(answer.rules.map(({ code }) => code)).toContain('NEVER_BOTH_HUMIDIFIERS')
  })
})
