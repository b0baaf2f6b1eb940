// A linear axis: value to pixel, and round values for its ticks. Leaves out drawing.

export interface Scale {
  readonly min: number
  readonly max: number
  readonly at: (value: number) => number
}

export function scaleOf(options: {
  readonly min: number
  readonly max: number
  readonly fromPx: number
  readonly toPx: number
}): Scale {
  const { min, max, fromPx, toPx } = options
  return { min, max, at: (value) => fromPx + ((value - min) / (max - min)) * (toPx - fromPx) }
}

const NICE = [1, 2, 2.5, 5, 10]

/** The smallest step of 1, 2, 2.5 or 5 × 10^k that makes at most `most` steps. */
export function niceStep(width: number, most: number): number {
  const raw = width / most
  const power = 10 ** Math.floor(Math.log10(raw))
  const nice = NICE.find((factor) => factor * power >= raw - 1e-12) ?? 10
  return nice * power
}

/** Multiples of the step within the limits, without the dust of floating point. */
export function ticksOf(
  limits: { readonly min: number; readonly max: number },
  step: number,
): number[] {
  const first = Math.ceil(limits.min / step - 1e-9)
  const last = Math.floor(limits.max / step + 1e-9)
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) =>
    Number(((first + i) * step).toPrecision(12)),
  )
}
