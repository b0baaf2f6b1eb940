// Limits of our own where no label gives one, each with how it is known. Leaves out labels, which win.
import type { Provenance } from '../units/provenance.ts'

interface Limit extends Provenance {
  readonly value: number
}

/** Pressure a pushed-on tube is trusted to hold, kPa: above it the joint may come off or hiss. */
export const PUSH_FIT_HOLDS_KPA: Limit = { value: 30, known: 'common-practice' }

/** Metres of tube between outlet and patient that a bed needs at least. */
export const REACH_M: Limit = { value: 1, known: 'common-practice' }

/** Above this pressure at its outlet a jet is taken to draw less air and give more oxygen, kPa (0.5 cmH2O). */
export const ENTRAINMENT_DISTURBED_KPA: Limit = { value: 0.05, known: 'common-practice' }

/** A hose of at least this length hangs in a loop where water gathers, m. */
export const LOOP_HANGS_M: Limit = { value: 1, known: 'common-practice' }
