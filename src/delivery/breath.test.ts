// Breaths outside what the model knows are refused. Leaves out delivery.
import { describe, expect, it } from 'vitest'
import { effectiveO2Fraction } from './delivered-breath.ts'
import { BARE_NETWORK } from './network.ts'
import { createPeriodicSolver } from './periodic.ts'
import { checkBreath } from './breath.ts'
import type { BreathPattern } from './breath.ts'

const BREATH: BreathPattern = {
  tidalVolumeL: 0.5,
  ratePerMin: 15,
  dutyFraction: 0.4,
  inspiration: { kind: 'half-sine' },
  expiration: { kind: 'passive', timeConstantS: 0.4 },
}

describe('a breath', () => {
  it('outside its limits is refused, never moved inside', () => {
    expect(() => checkBreath({ ...BREATH, ratePerMin: 200 })).toThrow('RATE_OUT_OF_RANGE')
    expect(() => checkBreath({ ...BREATH, tidalVolumeL: Number.NaN })).toThrow(
      'VOLUME_OUT_OF_RANGE',
    )
    expect(() => checkBreath(BREATH)).not.toThrow()
  })

  it('of a shape that nobody knows is refused instead of giving NaN', () => {
    // What a caller without types may send.
    const unknown: BreathPattern = JSON.parse(
      JSON.stringify({ ...BREATH, inspiration: { kind: 'sine' } }),
    )
    const question = { network: BARE_NETWORK, breath: unknown, sourceO2Fraction: 1 }
    expect(() => effectiveO2Fraction(createPeriodicSolver(), question)).toThrow('UNKNOWN_CHOICE')
  })
})
