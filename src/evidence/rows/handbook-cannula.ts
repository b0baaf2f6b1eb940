// The handbook's cannula example through the engine: a store of 50 mL filled during the expiratory pause. Arithmetic, not measurement.
import { handbookBreath } from '../breathings.ts'
import type { EvidenceRow } from '../evidence-row.ts'
import { across, limitRow, ONE_CONDITION } from './build.ts'

const FLOWS = [1, 2, 3, 4, 5, 6]

/** Tidal volume mL, fraction of room air, fractions at 1–6 L/min. Rule: store = min(50 mL, 0.5 s × flow), plus 1 s × flow, rest air. */
const TABLE: readonly (readonly [number, number, readonly (number | null)[]])[] = [
  [250, 0.2, [0.28, 0.36, 0.44, 0.52, 0.6, 0.68]],
  [300, 0.2, [0.267, 0.333, 0.4, 0.467, 0.533, 0.6]],
  [400, 0.2, [0.25, 0.3, 0.35, 0.4, 0.45, 0.5]],
  [500, 0.2, [0.24, 0.28, 0.32, 0.36, 0.4, 0.44]],
  [750, 0.2, [0.227, 0.253, 0.28, 0.307, 0.333, 0.36]],
  [1000, 0.2, [0.22, 0.24, 0.26, 0.28, 0.3, 0.32]],
  [250, 0.2095, [0.289, 0.368, 0.447, 0.526, 0.605, 0.684]],
  [500, 0.2095, [0.249, 0.289, 0.328, 0.368, 0.407, 0.447]],
  [1000, 0.2095, [0.229, 0.249, 0.269, 0.289, 0.308, 0.328]],
]

export const HANDBOOK_CANNULA_ROWS: readonly EvidenceRow[] = TABLE.flatMap(
  ([tidalMl, airO2Fraction, values]) =>
    across(FLOWS, values).map(([flowLpm, publishedValue]) =>
      limitRow({
        id: `handbook-cannula-${tidalMl}-${airO2Fraction}-${flowLpm}`,
        source: 'Shapiro1991',
        condition:
          'rate 20/min, Ti 1 s, constant flow; the pause of 0.5 s that fills the store stands as a quarter of the flow kept over 2 s of expiration',
        engine: {
          family: 'nasal-cannula',
          flowLpm,
          breath: handbookBreath(tidalMl / 1000),
          gas: ONE_CONDITION,
          airO2Fraction,
          limit: { kind: 'store', storeL: 0.05, lostShare: 0.75 },
        },
        publishedValue,
        known: 'derived',
      }),
    ),
)
