// The serial airway tanks over a whole phase, exactly: they share one flow, so what passes them depends on volume alone.
import type { Grid } from './grid.ts'
import { AT, STRIDE } from './program-layout.ts'
import type { Program } from './program-layout.ts'

/** Tank volumes below which a step passes nothing: a difference of mere rounding has no profile. */
const NO_FLOW = 1e-9

/**
 * Gas that enters n equal tanks and is followed by x tank volumes has left them but for the Erlang remainder
 * Q(n, x) = exp(-x) Σ x^k/k!, k < n. Differences of Q between the bounds of a step give the exact weights.
 */
export function compileTanks(program: Program, grid: Grid): void {
  const A = AT
  const { coefficients: c, serialTanks, tankL, passed, inspiratorySteps, steps } = program
  if (tankL <= 0) {
    passed.fill(0)
    for (let k = 0; k < steps; k++) c[k * STRIDE + A.alveolar] = 1
    return
  }
  let tidalX = 0
  for (let k = 0; k < inspiratorySteps; k++) tidalX += (grid.volumeL[k] as number) / tankL // k < steps
  let term = Math.exp(-tidalX)
  for (let i = 0; i < serialTanks; i++) {
    passed[i] = term
    term *= tidalX / (i + 1)
  }
  // Inspiration counts back from its end: the last step is followed by nothing.
  writeRemainders(program, grid, { first: inspiratorySteps - 1, end: -1, onward: -1 })
  writeRemainders(program, grid, { first: inspiratorySteps, end: steps, onward: 1 })
  shareOut(program, grid)
}

/**
 * For each step and tank i: ∫ p(i, x) dx over the step, with p(i, x) = exp(-x) x^i/i!, and its first moment about the middle over
 * the step's length, signed by time. From ∫ p(i) = −Q(i+1) and x p(i) = (i+1) p(i+1).
 */
function writeRemainders(
  { coefficients: c, serialTanks, tankL }: Program,
  grid: Grid,
  { first, end, onward }: { first: number; end: number; onward: 1 | -1 },
): void {
  const A = AT
  let nearX = 0
  let nearLeft = 1
  // All indexes stay below grid.steps × STRIDE.
  for (let k = first; k !== end; k += onward) {
    const stepX = (grid.volumeL[k] as number) / tankL
    const farX = nearX + stepX
    const farLeft = Math.exp(-farX)
    if (stepX > NO_FLOW) {
      const at = k * STRIDE
      const middle = nearX + stepX / 2
      const signed = onward / stepX
      let near = nearLeft
      let far = farLeft
      let sum = near - far
      for (let i = 0; i < serialTanks; i++) {
        near *= nearX / (i + 1)
        far *= farX / (i + 1)
        const next = sum + near - far
        c[at + A.tank + i] = sum
        c[at + A.tankRise + i] = signed * ((i + 1) * next - middle * sum)
        sum = next
      }
    }
    nearX = farX
    nearLeft = farLeft
  }
}

/** Expiration: per volume of the step, the rest alveolar gas. */
function shareOut(
  { coefficients: c, serialTanks, tankL, inspiratorySteps, steps }: Program,
  grid: Grid,
): void {
  const A = AT
  for (let k = inspiratorySteps; k < steps; k++) {
    const at = k * STRIDE
    const stepX = (grid.volumeL[k] as number) / tankL // k < steps
    let share = 1
    let allRise = 0
    if (stepX > NO_FLOW) {
      for (let i = 0; i < serialTanks; i++) {
        const tank = (c[at + A.tank + i] as number) / stepX // below STRIDE
        const rise = (12 * (c[at + A.tankRise + i] as number)) / stepX
        c[at + A.tank + i] = tank
        c[at + A.tankRise + i] = rise
        share -= tank
        allRise -= rise
      }
    }
    c[at + A.alveolar] = share
    c[at + A.alveolarRise] = allRise
  }
}
