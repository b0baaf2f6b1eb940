// Oxygen fraction of the gas that a source gives. Leaves out how purity falls with flow above rating, heat and altitude, for which no measured curve was found.
import type { Provenance } from '../units/provenance.ts'
import type { Spread } from '../units/spread.ts'

/**
 * pipeline: hospital pipeline or cylinder of medical oxygen. concentrator: one patient's concentrator at or below
 * its rated flow. oxygen-93: plant-made oxygen 93 per cent. who-floor: lowest purity called medical oxygen by WHO.
 */
export type PurityClass = 'pipeline' | 'concentrator' | 'oxygen-93' | 'who-floor'

export interface SourcePurity extends Provenance {
  readonly o2Fraction: Spread
}

/** Ph. Eur. limits: oxygen at least 99.5 %; oxygen 93 per cent 90.0–96.0 %. Concentrators 93 ± 3 % at rated flow. WHO: medical oxygen at least 82 %. */
export const SOURCE_PURITY: Readonly<Record<PurityClass, SourcePurity>> = {
  pipeline: {
    o2Fraction: { kind: 'uniform', min: 0.995, max: 1 },
    source: 'PhEur2010',
    known: 'secondary',
  },
  concentrator: {
    o2Fraction: { kind: 'triangular', mode: 0.93, min: 0.9, max: 0.96 },
    source: 'PhEur2010',
    known: 'secondary',
  },
  'oxygen-93': {
    o2Fraction: { kind: 'triangular', mode: 0.93, min: 0.9, max: 0.96 },
    source: 'PhEur2010',
    known: 'secondary',
  },
  'who-floor': {
    o2Fraction: { kind: 'uniform', min: 0.82, max: 0.96 },
    source: 'WHO2020',
    known: 'secondary',
  },
}
