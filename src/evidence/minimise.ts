// Small deterministic minimisers for calibration: golden section for one number, Nelder–Mead for two. No derivatives, no chance.

const GOLDEN = (Math.sqrt(5) - 1) / 2
const STEPS = 60

/** Position of the smallest value of a function with one valley between the bounds, to 1e-9 of their distance. */
export function minimiseOne(
  bounds: { readonly min: number; readonly max: number },
  cost: (x: number) => number,
): number {
  let low = bounds.min
  let high = bounds.max
  let a = high - GOLDEN * (high - low)
  let b = low + GOLDEN * (high - low)
  let costA = cost(a)
  let costB = cost(b)
  for (let i = 0; i < STEPS; i++) {
    if (costA <= costB) {
      high = b
      b = a
      costB = costA
      a = high - GOLDEN * (high - low)
      costA = cost(a)
    } else {
      low = a
      a = b
      costA = costB
      b = low + GOLDEN * (high - low)
      costB = cost(b)
    }
  }
  return (low + high) / 2
}

export interface Point {
  readonly x: number
  readonly y: number
}

const SIMPLEX_STEPS = 200
const EDGE = 0.1
/** Sum of two edges at which the triangle counts as a point. */
const SMALLEST = 1e-6

/** Nelder–Mead in the plane from a start, with an initial edge of a tenth of the start. */
export function minimiseTwo(start: Point, cost: (point: Point) => number): Point {
  const scored = (point: Point) => ({ point, cost: cost(point) })
  let simplex = [
    scored(start),
    scored({ x: start.x * (1 + EDGE), y: start.y }),
    scored({ x: start.x, y: start.y * (1 + EDGE) }),
  ]
  for (let i = 0; i < SIMPLEX_STEPS; i++) {
    simplex = simplex.toSorted((p, q) => p.cost - q.cost)
    const [best, middle, worst] = simplex
    if (best === undefined || middle === undefined || worst === undefined) break
    if (size(best.point, middle.point) + size(best.point, worst.point) < SMALLEST) break
    const centre = {
      x: (best.point.x + middle.point.x) / 2,
      y: (best.point.y + middle.point.y) / 2,
    }
    const along = (t: number) =>
      scored({
        x: centre.x + t * (centre.x - worst.point.x),
        y: centre.y + t * (centre.y - worst.point.y),
      })
    const reflected = along(1)
    if (reflected.cost < best.cost) {
      const expanded = along(2)
      simplex = [best, middle, expanded.cost < reflected.cost ? expanded : reflected]
    } else if (reflected.cost < middle.cost) {
      simplex = [best, middle, reflected]
    } else {
      const contracted = along(reflected.cost < worst.cost ? 0.5 : -0.5)
      simplex =
        contracted.cost < worst.cost
          ? [best, middle, contracted]
          : [
              best,
              scored(halfway(best.point, middle.point)),
              scored(halfway(best.point, worst.point)),
            ]
    }
  }
  return (simplex.toSorted((p, q) => p.cost - q.cost)[0] ?? scored(start)).point
}

function size(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y)
}

function halfway(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }
}
