// How the interface lies on this face, as shares: seen, or assumed from what changes the interface. Leaves out what a fit does to gas.
import type { FitId } from '../kit/family-id.ts'
import type { Case, InterfaceChange } from './case.ts'
import type { FitSpread } from './patient-spread.ts'

type Shares = Readonly<Record<FitId, number>>

/** An ordinary face and ordinary care, and a face on which nothing seals (common practice). A mask over a mask is seen, never assumed. */
const ORDINARY: Shares = { tight: 0.2, gentle: 0.55, loose: 0.25, 'over-surgical-mask': 0 }
const LEAKING: Shares = { tight: 0.05, gentle: 0.35, loose: 0.6, 'over-surgical-mask': 0 }

/** Changes that keep an interface from sealing (common practice). */
const LEAKS: readonly InterfaceChange[] = [
  'beard',
  'no-teeth',
  'facial-burn-or-injury',
  'feeding-tube',
  'glasses-or-hearing-aids',
  'confused-and-pulling',
]

export function fitSpread(about: Case): FitSpread {
  const seen = about.onNow?.setUp?.fit ?? about.breathing.fit
  if (seen !== undefined) {
    const shares = { tight: 0, gentle: 0, loose: 0, 'over-surgical-mask': 0, [seen]: 1 }
    return { origin: 'typed', shares, known: 'common-practice' }
  }
  const leaks = about.patient.changes.some((change) => LEAKS.includes(change))
  return { origin: 'assumed', shares: leaks ? LEAKING : ORDINARY, known: 'common-practice' }
}

/** The fit at a number between 0 and 1, from tight to loose. */
export function fitAt(spread: FitSpread, u: number): FitId {
  let sum = 0
  for (const fit of ORDER) {
    sum += spread.shares[fit]
    if (u < sum) return fit
  }
  // Rounding may leave the sum of shares a trifle below one.
  return ORDER.findLast((fit) => spread.shares[fit] > 0) ?? 'gentle'
}

const ORDER: readonly FitId[] = ['tight', 'gentle', 'loose', 'over-surgical-mask']
