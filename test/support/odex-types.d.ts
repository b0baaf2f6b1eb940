// What the tests and the bench use of the general-purpose integrator odex; tsconfig.json points here, since the package ships source that our strict settings refuse.
export class Solver {
  constructor(size: number)
  absoluteTolerance: number
  relativeTolerance: number
  maxSteps: number
  initialStepSize: number
  solve(
    rates: (t: number, y: number[]) => ArrayLike<number>,
    from: number,
    y: number[],
    to: number,
  ): { y: number[]; outcome: number; nEval: number }
}
