// The name of each choice of a shelf field, by the field's path. Leaves out the choices themselves (row-fields.ts).
import { EVERYWHERE } from '../../kit/shelf.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { AFTER_NAMES, END_NAMES, HUMIDIFIER_NAMES } from '../../words/joining-names.ts'
import { FAMILY_NAMES, SIZE_NAMES, SOURCE_NAMES } from '../../words/names.ts'
import {
  FITTING_NAMES,
  GAS_KIND_NAMES,
  METER_CLASS_NAMES,
  METER_NAMES,
  MODE_NAMES,
  OUTLET_NAMES,
  PURITY_NAMES,
  TUBE_NAMES,
  YES_NO_NAMES,
} from '../../words/shelf-names.ts'
import { SHELF_PAGE } from '../../words/shelf-page-text.ts'

type Names = Readonly<Record<string, string>>

/** Kinds of all lists; no two lists share a name for different things. */
const KIND_NAMES: Names = {
  ...SOURCE_NAMES,
  ...HUMIDIFIER_NAMES,
  ...TUBE_NAMES,
  ...FITTING_NAMES,
  ...OUTLET_NAMES,
}

const NAMES: Readonly<Record<string, Names>> = {
  kind: KIND_NAMES,
  family: FAMILY_NAMES,
  usedFor: FAMILY_NAMES,
  gas: GAS_KIND_NAMES,
  'sizes[].size': SIZE_NAMES,
  'meter.kind': METER_NAMES,
  'meter.meterClass': METER_CLASS_NAMES,
  purity: PURITY_NAMES,
  'modes[].kind': MODE_NAMES,
  'failure.air': AFTER_NAMES,
  'failure.oxygen': AFTER_NAMES,
  'failure.mains': AFTER_NAMES,
  biasFlowAddsToUse: YES_NO_NAMES,
  leakCompensationAddsToUse: YES_NO_NAMES,
  hasOwnFilter: YES_NO_NAMES,
  'inletEnds[]': END_NAMES,
  inletEnd: END_NAMES,
  outletEnd: END_NAMES,
  'openEnds[]': END_NAMES,
}

/** A choice without a name, such as a unit, stands for itself. */
export function choiceName(path: string, value: string): string {
  return NAMES[path]?.[value] ?? value
}

/** A ward by its name. */
export function placeName(shelf: Shelf, place: string): string {
  if (place === EVERYWHERE) return SHELF_PAGE.everywhere()
  return shelf.wards.find(({ id }) => id === place)?.name ?? place
}
