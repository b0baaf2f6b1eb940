// Transfers against worked examples from outside, and the laws of reserve and change-over.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import { DomainError } from '../errors.ts'
import { changeOvers, transportNeed, withDelay, type TransportLeg } from './transport.ts'

const LEG = fc.record({
  kind: fc.constantFrom('lift', 'corridor', 'ambulance') satisfies fc.Arbitrary<
    TransportLeg['kind']
  >,
  minutes: fc.double({ min: 0, max: 120, noNaN: true }),
  drawLpm: fc.double({ min: 0, max: 40, noNaN: true }),
})
const LEGS = fc.array(LEG, { minLength: 1, maxLength: 5 })

describe('transport', () => {
  it('needs 320 L for 16 min at 10 L/min by the rule of twice, and 460 L with 30 min more', () => {
    const legs: readonly TransportLeg[] = [{ kind: 'corridor', minutes: 16, drawLpm: 10 }]
    expect(transportNeed(legs, { factor: 2, extraMinutes: 0 }).neededL).toBeCloseTo(320, 9)
    expect(transportNeed(legs).neededL).toBeCloseTo(460, 9)
  })

  it('needs 492 L for 60 min of a machine that uses 6 L/min at 0.6 and 0.5 L/min to drive it', () => {
    const legs: readonly TransportLeg[] = [
      { kind: 'ambulance', minutes: 60, drawLpm: 6 * 0.6 + 0.5 },
    ]
    expect(transportNeed(legs, { factor: 2, extraMinutes: 0 }).neededL).toBeCloseTo(492, 9)
  })

  it('respects the reserve, never needs less for the worst case, and more when a lift stops', () => {
    fc.assert(
      fc.property(LEGS, (legs) => {
        const need = transportNeed(legs)
        expect(need.reservedMinutes).toBeGreaterThanOrEqual(need.plannedMinutes + 30 - 1e-9)
        expect(need.neededL).toBeGreaterThanOrEqual(2 * need.plannedL - 1e-6)
        expect(need.worstNeededL).toBeGreaterThanOrEqual(need.neededL)
        const stuck = transportNeed(withDelay(legs, { legIndex: 0 }))
        expect(stuck.plannedMinutes - need.plannedMinutes).toBeCloseTo(20, 9)
        // Rounding of sums in another order.
        expect(stuck.neededL).toBeGreaterThanOrEqual(need.neededL - 1e-9)
      }),
      seeded(200),
    )
  })

  it('asks for no less oxygen when more is drawn, and cylinders last no longer', () => {
    const grown = fc.double({ min: 1, max: 3, noNaN: true })
    fc.assert(
      fc.property(
        LEGS,
        grown,
        fc.double({ min: 0, max: 2000, noNaN: true }),
        (legs, by, usableL) => {
          const more = legs.map((leg) => ({ ...leg, drawLpm: leg.drawLpm * by }))
          const before = transportNeed(legs).neededL
          expect(before).toBeGreaterThanOrEqual(0)
          expect(transportNeed(more).neededL).toBeGreaterThanOrEqual(before - 1e-9)
          const lasts = (way: readonly TransportLeg[]): number =>
            changeOvers(way, [usableL]).uses[0]?.untilMinute ?? 0
          expect(lasts(more)).toBeLessThanOrEqual(lasts(legs) + 1e-9)
          expect(lasts(more)).toBeGreaterThanOrEqual(0)
        },
      ),
      seeded(200),
    )
  })

  it('changes over without losing or inventing a litre', () => {
    const held = fc.array(fc.double({ min: 0, max: 2000, noNaN: true }), { maxLength: 4 })
    fc.assert(
      fc.property(LEGS, held, (legs, usableL) => {
        const { plannedL } = transportNeed(legs)
        const total = usableL.reduce((sum, litres) => sum + litres, 0)
        const { missingL, uses } = changeOvers(legs, usableL)
        expect(missingL).toBeCloseTo(Math.max(0, plannedL - total), 6)
        for (const one of uses) expect(one.untilMinute).toBeGreaterThanOrEqual(one.fromMinute)
      }),
      seeded(200),
    )
  })

  it('refuses a way without legs, a negative time and a leg that is not there', () => {
    expect(() => transportNeed([])).toThrow(DomainError)
    const back: readonly TransportLeg[] = [{ kind: 'lift', minutes: -1, drawLpm: 2 }]
    expect(() => transportNeed(back)).toThrow(DomainError)
    expect(() => withDelay(back, { legIndex: 1 })).toThrow(DomainError)
  })
})
