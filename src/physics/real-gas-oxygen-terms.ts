// The 32 terms of the published equation of state of oxygen, as data. Leaves out the ideal-gas part, which pressure does not need.

/** One term n·δ^d·τ^t·exp(−δ^l); l 0: without the exponential. */
export interface OxygenTerm {
  readonly n: number
  readonly d: number
  readonly t: number
  readonly l: number
}

/** Coefficients. Source: Stewart1991, seen in a public fluid-data file; test/reference/stewart-1991/coefficients.csv is the same list. */
export const OXYGEN_TERMS: readonly OxygenTerm[] = [
  { n: 0.3983768749, d: 1, t: 0, l: 0 },
  { n: -1.846157454, d: 1, t: 1.5, l: 0 },
  { n: 0.4183473197, d: 1, t: 2.5, l: 0 },
  { n: 0.02370620711, d: 2, t: -0.5, l: 0 },
  { n: 0.09771730573, d: 2, t: 1.5, l: 0 },
  { n: 0.03017891294, d: 2, t: 2, l: 0 },
  { n: 0.02273353212, d: 3, t: 0, l: 0 },
  { n: 0.01357254086, d: 3, t: 1, l: 0 },
  { n: -0.04052698943, d: 3, t: 2.5, l: 0 },
  { n: 0.0005454628515, d: 6, t: 0, l: 0 },
  { n: 0.0005113182277, d: 7, t: 2, l: 0 },
  { n: 2.953466883e-7, d: 7, t: 5, l: 0 },
  { n: -8.687645072e-5, d: 8, t: 2, l: 0 },
  { n: -0.2127082589, d: 1, t: 5, l: 2 },
  { n: 0.08735941958, d: 1, t: 6, l: 2 },
  { n: 0.127550919, d: 2, t: 3.5, l: 2 },
  { n: -0.09067701064, d: 2, t: 5.5, l: 2 },
  { n: -0.03540084206, d: 3, t: 3, l: 2 },
  { n: -0.03623278059, d: 3, t: 7, l: 2 },
  { n: 0.0132769929, d: 5, t: 6, l: 2 },
  { n: -0.0003254111865, d: 6, t: 8.5, l: 2 },
  { n: -0.008313582932, d: 7, t: 4, l: 2 },
  { n: 0.002124570559, d: 8, t: 6.5, l: 2 },
  { n: -0.0008325206232, d: 10, t: 5.5, l: 2 },
  { n: -2.626173276e-5, d: 2, t: 22, l: 4 },
  { n: 0.002599581482, d: 3, t: 11, l: 4 },
  { n: 0.009984649663, d: 3, t: 18, l: 4 },
  { n: 0.002199923153, d: 4, t: 11, l: 4 },
  { n: -0.02591350486, d: 4, t: 23, l: 4 },
  { n: -0.1259630848, d: 5, t: 17, l: 4 },
  { n: 0.1478355637, d: 5, t: 18, l: 4 },
  { n: -0.01011251078, d: 5, t: 23, l: 4 },
]
