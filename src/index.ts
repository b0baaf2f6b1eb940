// The public library, written by hand: what other programs may rely on. Leaves out everything they should not depend on.
export { DomainError, isDomainError, problemOf } from './errors.ts'
export type { ErrorCode, Limit, Problem } from './errors.ts'
export {
  entrainedO2Fraction,
  entrainmentRatio,
  entrainmentTotalFlowLpm,
  mixedStream,
} from './physics/gas-mixing.ts'
