// The table of all interface families by id.
import { ADJUSTABLE_ENTRAINMENT_MASK, ENTRAINMENT_MASK } from './families/entrainment.ts'
import { HEAD_BOX } from './families/head-box.ts'
import { NASAL_HIGH_FLOW } from './families/high-flow.ts'
import { NASAL_CANNULA, NASAL_CATHETER } from './families/nasal.ts'
import { NON_REBREATHER_MASK, PARTIAL_REBREATHER_MASK } from './families/reservoir-mask.ts'
import { SIMPLE_MASK } from './families/simple-mask.ts'
import { CANNULA_UNDER_MASK } from './families/under-mask.ts'
import {
  AEROSOL_MASK,
  FACE_TENT,
  T_PIECE,
  T_PIECE_WITH_LIMB,
  TRACHEOSTOMY_MASK,
} from './families/wide-bore.ts'
import type { FamilyId } from './family-id.ts'
import type { InterfaceFamily } from './interface-family.ts'

export const INTERFACE_FAMILIES: Readonly<Record<FamilyId, InterfaceFamily>> = {
  'nasal-cannula': NASAL_CANNULA,
  'nasal-catheter': NASAL_CATHETER,
  'simple-mask': SIMPLE_MASK,
  'partial-rebreather-mask': PARTIAL_REBREATHER_MASK,
  'non-rebreather-mask': NON_REBREATHER_MASK,
  'entrainment-mask': ENTRAINMENT_MASK,
  'adjustable-entrainment-mask': ADJUSTABLE_ENTRAINMENT_MASK,
  'aerosol-mask': AEROSOL_MASK,
  'face-tent': FACE_TENT,
  'tracheostomy-mask': TRACHEOSTOMY_MASK,
  't-piece': T_PIECE,
  't-piece-with-limb': T_PIECE_WITH_LIMB,
  'head-box': HEAD_BOX,
  'nasal-high-flow': NASAL_HIGH_FLOW,
  'cannula-under-mask': CANNULA_UNDER_MASK,
}
