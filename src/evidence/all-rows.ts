// Every outside check in one list. Holds no row itself.
import type { EvidenceRow } from './evidence-row.ts'
import { BLOOD_ROWS } from './rows/blood.ts'
import { BODY_ROWS } from './rows/bodies.ts'
import { CANNULA_ROWS } from './rows/cannula-measured.ts'
import { DILUTION_ROWS } from './rows/dilution-bound.ts'
import { ENTRAINMENT_ROWS } from './rows/entrainment-measured.ts'
import { GAS_ROWS } from './rows/gas-physics.ts'
import { HANDBOOK_CANNULA_ROWS } from './rows/handbook-cannula.ts'
import { HIGH_FLOW_ROWS } from './rows/high-flow-measured.ts'
import { HUMIDITY_ROWS } from './rows/humidity-measured.ts'
import { INFANT_TABLE_ROWS } from './rows/infant-tables.ts'
import { LOW_FLOW_ROWS } from './rows/low-flow-formula.ts'
import { SUPPLY_ROWS } from './rows/gas-supply.ts'
import { MASK_ROWS } from './rows/reservoir-measured.ts'
import { TREND_ROWS } from './rows/trends.ts'
import { PRACTICE_ROWS } from './rows/usual-practice.ts'

export const EVIDENCE_ROWS: readonly EvidenceRow[] = [
  ...GAS_ROWS,
  ...SUPPLY_ROWS,
  ...BLOOD_ROWS,
  ...BODY_ROWS,
  ...HANDBOOK_CANNULA_ROWS,
  ...LOW_FLOW_ROWS,
  ...DILUTION_ROWS,
  ...INFANT_TABLE_ROWS,
  ...CANNULA_ROWS,
  ...MASK_ROWS,
  ...ENTRAINMENT_ROWS,
  ...HIGH_FLOW_ROWS,
  ...HUMIDITY_ROWS,
  ...PRACTICE_ROWS,
  ...TREND_ROWS,
]
