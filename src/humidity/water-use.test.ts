// Water use against the published daily volumes, and when a vessel wants filling.
import { describe, expect, it } from 'vitest'
import { refillOf, saturatingMlPerHour } from './water-use.ts'

const at37 = { temperatureC: 37, barometricKpa: 101.325 }

describe('water use', () => {
  it('is 632 mL a day for each 10 L/min at body conditions, as published from 10 to 60 L/min, within 1 mL for each 10', () => {
    for (const [flowLpmBtps, mlPerDay] of [
      [10, 632],
      [20, 1264],
      [30, 1896],
      [40, 2528],
      [50, 3160],
      [60, 3792],
    ] as const) {
      const ours = 24 * saturatingMlPerHour({ flowLpmBtps, ...at37 })
      expect(Math.abs(ours - mlPerDay)).toBeLessThan(flowLpmBtps / 10)
    }
  })

  it('is less where room air brings about 10 mg/L: 1464 mL a day at 30 L/min', () => {
    const ours = 24 * saturatingMlPerHour({ flowLpmBtps: 30, heldMgPerLBtps: 10, ...at37 })
    expect(Math.abs(ours - 1464)).toBeLessThan(3)
  })

  it('crosses volume and use for the shortest and longest time, and has no time without use', () => {
    const bottle = { kind: 'bubble', partId: 'b', waterMl: 300, labelMgPerL: null } as const
    const use = { low: 5, middle: 6, high: 10 }
    expect(refillOf(bottle, use).afterHours).toEqual({ low: 30, middle: 50, high: 60 })
    expect(refillOf(bottle, { low: 0, middle: 0, high: 0 }).afterHours).toBeNull()
    const usual = refillOf({ ...bottle, waterMl: null }, use)
    expect(usual.isAssumedVolume).toBe(true)
    expect(usual.waterMl.low).toBeLessThan(usual.waterMl.high)
  })
})
