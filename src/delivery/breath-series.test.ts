// Series of breaths keep the measured variation and memory. Leaves out delivery.
import { describe, expect, it } from 'vitest'
import type { BreathPattern } from './breath.ts'
import { breathSeries } from './breath-series.ts'

const mean: BreathPattern = {
  tidalVolumeL: 0.5,
  ratePerMin: 15,
  dutyFraction: 0.4,
  inspiration: { kind: 'half-sine' },
  expiration: { kind: 'passive', timeConstantS: 0.4 },
}
/** Healthy people at rest: Tobin1988 (coefficients of variation), Tobin1995 (lag 1). */
const variability = { rateCv: 0.208, tidalVolumeCv: 0.33, dutyCv: 0.179, tidalVolumeLag1: 0.295 }

/** A fixed, evenly spread stand-in for chance: the golden-ratio sequence, shuffled by a second irrational step. */
function evenUniform(): () => number {
  let i = 0
  return () => {
    i += 1
    return (
      (((i * 0.6180339887498949) % 1) * 0.7548776662466927 + ((i * i * 0.5698402909980532) % 1)) %
        1 || 0.5
    )
  }
}

function moments(values: readonly number[]) {
  const average = values.reduce((sum, one) => sum + one, 0) / values.length
  const variance = values.reduce((sum, one) => sum + (one - average) ** 2, 0) / values.length
  return { average, cv: Math.sqrt(variance) / average, variance }
}

describe('breath series', () => {
  const series = breathSeries({ mean, variability, breaths: 6000, uniform: evenUniform() })

  it('keeps the mean and the coefficients of variation [Tobin1988]', () => {
    const volume = moments(series.map((one) => one.tidalVolumeL))
    const rate = moments(series.map((one) => one.ratePerMin))
    const duty = moments(series.map((one) => one.dutyFraction))
    expect(Math.abs(volume.average / 0.5 - 1)).toBeLessThan(0.03)
    expect(Math.abs(volume.cv - 0.33)).toBeLessThan(0.05)
    expect(Math.abs(rate.cv - 0.208)).toBeLessThan(0.03)
    expect(Math.abs(duty.cv - 0.179)).toBeLessThan(0.04)
  })

  it('remembers the last breath as measured [Tobin1995]', () => {
    const volumes = series.map((one) => Math.log(one.tidalVolumeL))
    const { average, variance } = moments(volumes)
    let covariance = 0
    for (let i = 1; i < volumes.length; i++) {
      covariance += ((volumes[i] ?? 0) - average) * ((volumes[i - 1] ?? 0) - average)
    }
    expect(Math.abs(covariance / (volumes.length - 1) / variance - 0.295)).toBeLessThan(0.06)
  })

  it('gives only breaths that the model takes', () => {
    expect(
      series.every(
        (one) => one.tidalVolumeL > 0.1 && one.dutyFraction > 0.1 && one.dutyFraction < 0.8,
      ),
    ).toBe(true)
  })
})
