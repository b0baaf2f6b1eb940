// Breathing patterns that rows assume or that their sources state. Leaves out how people vary around them.
import type { BreathPattern } from '../delivery/breath.ts'

/** Half-sine inspiration and passive expiration with a time constant. */
export function breathOf(pattern: {
  readonly tidalVolumeL: number
  readonly ratePerMin: number
  readonly dutyFraction: number
  readonly timeConstantS: number
}): BreathPattern {
  const { tidalVolumeL, ratePerMin, dutyFraction, timeConstantS } = pattern
  return {
    tidalVolumeL,
    ratePerMin,
    dutyFraction,
    inspiration: { kind: 'half-sine' },
    expiration: { kind: 'passive', timeConstantS },
  }
}

/** Healthy and quiet, no mask: 383 mL, 16.6/min, Ti/Ttot 0.42 [Tobin1983]. */
export const QUIET_ADULT = breathOf({
  tidalVolumeL: 0.383,
  ratePerMin: 16.6,
  dutyFraction: 0.42,
  timeConstantS: 0.4,
})

/** Resting adult under a mask (common practice). */
export const RESTING_ADULT = breathOf({
  tidalVolumeL: 0.5,
  ratePerMin: 15,
  dutyFraction: 0.4,
  timeConstantS: 0.4,
})

/** Healthy adult asked to breathe fast (assumed). */
export const FAST_ADULT = breathOf({
  tidalVolumeL: 0.4,
  ratePerMin: 30,
  dutyFraction: 0.45,
  timeConstantS: 0.4,
})

/** Acute hypoxaemic failure: middle of the usual ranges 350–1000 mL and 25–40/min, VE 15 L/min (common practice). */
export const DISTRESSED_ADULT = breathOf({
  tidalVolumeL: 0.5,
  ratePerMin: 30,
  dutyFraction: 0.4,
  timeConstantS: 0.4,
})

/** The adult that a guideline's table speaks of: ill in a ward bed, VE 10 L/min (common practice). */
export const ILL_ADULT = breathOf({
  tidalVolumeL: 0.5,
  ratePerMin: 20,
  dutyFraction: 0.4,
  timeConstantS: 0.4,
})

/** Severe stable airflow obstruction: 690 mL, 17.9/min, Ti/Ttot 0.38 (published table, authors unseen); long emptying. */
export const OBSTRUCTED_ADULT = breathOf({
  tidalVolumeL: 0.69,
  ratePerMin: 17.9,
  dutyFraction: 0.38,
  timeConstantS: 0.9,
})

/** The simulator of Yorozu2014: VE 9.8 L/min stated; 0.49 L × 20/min and Ti/Ttot 0.33 assumed. */
export const SIMULATOR_ADULT = breathOf({
  tidalVolumeL: 0.49,
  ratePerMin: 20,
  dutyFraction: 0.33,
  timeConstantS: 0.4,
})

/** The handbook's cannula example: 20/min, Ti 1 s, constant inspiratory flow, no flow in the last quarter of expiration. */
export function handbookBreath(tidalVolumeL: number): BreathPattern {
  return {
    tidalVolumeL,
    ratePerMin: 20,
    dutyFraction: 1 / 3,
    inspiration: { kind: 'square' },
    expiration: { kind: 'constant', shareOfExpiration: 0.75 },
  }
}

/** Constant inspiratory flow at a given ventilation and duty, for bench formulas. */
export function squareBreath(pattern: {
  readonly ventilationLpm: number
  readonly ratePerMin: number
  readonly dutyFraction: number
}): BreathPattern {
  return {
    tidalVolumeL: pattern.ventilationLpm / pattern.ratePerMin,
    ratePerMin: pattern.ratePerMin,
    dutyFraction: pattern.dutyFraction,
    inspiration: { kind: 'square' },
    expiration: { kind: 'passive', timeConstantS: 0.4 },
  }
}

/** Half-sine breath of 1.2 s inspiration that reaches the given peak flow: VT = 2/π × peak × Ti. */
export function breathWithPeak(peakLpm: number): BreathPattern {
  const inspirationS = 1.2
  return breathOf({
    tidalVolumeL: (2 / Math.PI) * (peakLpm / 60) * inspirationS,
    ratePerMin: 20,
    dutyFraction: inspirationS / 3,
    timeConstantS: 0.4,
  })
}

/** Infant per kg: tidal volume mL/kg and rate as stated, Ti/Ttot 0.4, emptying 0.1 s (assumed where silent). */
export function infantBreath(infant: {
  readonly weightKg: number
  readonly tidalMlPerKg: number
  readonly ratePerMin: number
}): BreathPattern {
  return breathOf({
    tidalVolumeL: (infant.tidalMlPerKg * infant.weightKg) / 1000,
    ratePerMin: infant.ratePerMin,
    dutyFraction: 0.4,
    timeConstantS: 0.1,
  })
}
