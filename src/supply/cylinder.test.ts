// Cylinders, their clock and the room against worked examples from outside, and the laws they keep.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import { DomainError } from '../errors.ts'
import { kpaFromBar, kpaFromPsi } from '../units/pressure.ts'
import { usableContents, type Cylinder } from './cylinder.ts'
import { clockAfter, cylinderClock, handbookMinutes } from './duration.ts'
import { roomEnrichment, roomO2Fraction } from './room-enrichment.ts'

const SEA = 101.325
const now = { hour: 13, minute: 50 }
const full = (waterVolumeL: number, gaugeBar: number): Cylinder => ({
  waterVolumeL,
  gaugeKpa: kpaFromBar(gaugeBar),
  readAtC: 15,
  isValveOpen: true,
})
const downTo = (bar: number) => ({
  barometricKpa: SEA,
  leftGaugeKpa: kpaFromBar(bar),
  litresAtC: 15,
})

describe('cylinder', () => {
  it.each([
    { cylinder: full(2, 137), bar: 14, drawLpm: 10, minutes: 26.3 },
    { cylinder: full(10, 150), bar: 10, drawLpm: 5, minutes: 298.7 },
  ])('lasts $minutes min as the worked example', ({ cylinder, bar, drawLpm, minutes }) => {
    const clock = cylinderClock({ cylinder, use: downTo(bar), drawLpm, now })
    expect(Math.abs((clock.minutesToChange ?? 0) / minutes - 1)).toBeLessThan(0.003)
  })

  it('yields about 0.34 L for each psi from 4.68 L of water volume', () => {
    const cylinder = { ...full(4.68, 1), gaugeKpa: kpaFromPsi(2000) }
    expect(Math.abs(usableContents(cylinder, downTo(0)).usableL / 2000 - 0.34)).toBeLessThan(0.005)
  })

  it.each([
    { gaugePsi: 2000, reservePsi: 200, factorLPerPsi: 0.28, flowLpm: 2, minutes: 252 },
    { gaugePsi: 2200, reservePsi: 200, factorLPerPsi: 0.28, flowLpm: 10, minutes: 56 },
    { gaugePsi: 500, reservePsi: 0, factorLPerPsi: 1.56, flowLpm: 6, minutes: 130 },
    { gaugePsi: 500, reservePsi: 200, factorLPerPsi: 1.56, flowLpm: 6, minutes: 78 },
  ])('repeats the handbook: $minutes min', ({ minutes, ...rule }) => {
    expect(handbookMinutes(rule)).toBeCloseTo(minutes, 6)
  })

  it('gives nothing while the valve is closed, or below the floor, and says which', () => {
    const closed = { ...full(2, 137), isValveOpen: false }
    expect(usableContents(closed, downTo(10))).toMatchObject({
      usableL: 0,
      nothing: 'VALVE_CLOSED',
    })
    expect(usableContents(full(2, 5), downTo(10))).toMatchObject({
      usableL: 0,
      nothing: 'AT_OR_BELOW_FLOOR',
    })
    expect(() => usableContents(full(2, 400), downTo(10))).toThrow(DomainError)
  })

  it('gives less when filled warm and used cold, and marks what is extrapolated', () => {
    const warm = { ...full(10, 150), readAtC: 40 }
    const cold = usableContents(warm, { ...downTo(10), usedAtC: 0 })
    expect(cold.equation).toBe('extrapolated')
    expect(cold.usableL).toBeLessThan(usableContents(full(10, 150), downTo(10)).usableL)
  })

  it('lasts shorter at a higher flow, never a negative time, and keeps the reserve', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 150, noNaN: true }),
        fc.double({ min: 0, max: 300, noNaN: true }),
        fc.double({ min: 0, max: 300, noNaN: true }),
        fc.double({ min: 0.1, max: 100, noNaN: true }),
        (waterVolumeL, gaugeBar, leftBar, drawLpm) => {
          const cylinder = full(waterVolumeL, gaugeBar)
          const use = downTo(leftBar)
          const one = cylinderClock({ cylinder, use, drawLpm, now })
          const more = cylinderClock({ cylinder, use, drawLpm: drawLpm * 2, now })
          const minutes = one.minutesToChange ?? -1
          expect(minutes).toBeGreaterThanOrEqual(0)
          expect(more.minutesToChange).toBeCloseTo(minutes / 2, 6)
          expect(one.minutesToEmpty).toBeGreaterThanOrEqual(minutes)
        },
      ),
      seeded(60),
    )
  })

  it('rounds the clock down and passes midnight', () => {
    expect(clockAfter(now, 30.9)).toEqual({ day: 0, hour: 14, minute: 20 })
    expect(clockAfter({ hour: 23, minute: 50 }, 20)).toEqual({ day: 1, hour: 0, minute: 10 })
    const idle = cylinderClock({ cylinder: full(2, 137), use: downTo(10), drawLpm: 0, now })
    expect(idle.emptyAt).toBeNull()
  })
})

describe('room', () => {
  it.each([
    { volumeM3: 30, airChangesPerHour: 6, oxygenLpm: 15, percent: 21.34 },
    { volumeM3: 30, airChangesPerHour: 6, oxygenLpm: 60, percent: 22.5 },
    { volumeM3: 30, airChangesPerHour: 1, oxygenLpm: 60, percent: 29.4 },
    { volumeM3: 180, airChangesPerHour: 2, oxygenLpm: 360, percent: 25.4 },
  ])('settles at $percent %', ({ percent, ...room }) => {
    expect(Math.abs(100 * roomEnrichment(room).steadyO2Fraction - percent)).toBeLessThan(0.06)
    expect(roomO2Fraction(room, 0)).toBe(0.2095)
  })

  it('is at the limit when it says so', () => {
    const room = { volumeM3: 30, airChangesPerHour: 1, oxygenLpm: 60 }
    const minutes = roomEnrichment(room).minutesToLimit ?? Number.NaN
    expect(roomO2Fraction(room, minutes)).toBeCloseTo(0.235, 9)
  })

  it('needs 1.80 m³/h of outside air for each L/min to hold 23.5 %', () => {
    const room = { volumeM3: 30, airChangesPerHour: 6, oxygenLpm: 10 }
    expect(roomEnrichment(room).outsideAirNeededM3PerH).toBeCloseTo(18, 1)
    expect(roomEnrichment(room).minutesToLimit).toBeNull()
  })
})
