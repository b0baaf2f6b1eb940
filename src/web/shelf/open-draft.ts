// From the texts of an opened row to the shelf with it, or what is to be mended. Leaves out the form.
import { freeId, putRow, putWard, rowsOf, withHospital } from '../../kit/edit-shelf.ts'
import type { Edited } from '../../kit/edit-shelf.ts'
import type { Shelf } from '../../kit/shelf.ts'
import type { OpenDraft } from './kept-draft.ts'
import { rowOf } from './row-draft.ts'
import { fieldsOf } from './row-fields.ts'
import type { RowField } from './row-fields.ts'

const WARD_FIELDS: readonly RowField[] = [
  { path: 'name', kind: 'text' },
  { path: 'beds', kind: 'number' },
]

const HOSPITAL_FIELDS: readonly RowField[] = [
  { path: 'hospital', kind: 'text' },
  { path: 'altitudeM', kind: 'number' },
  { path: 'isInvented', kind: 'switch' },
]

/** A new row gets a name for the file from its label; one that was opened keeps its own. */
export function putDraft(shelf: Shelf, { list, id, draft }: OpenDraft): Edited {
  if (list === 'hospital') return withHospital(shelf, rowOf(draft, HOSPITAL_FIELDS))
  if (list === 'wards') {
    const taken = shelf.wards.map((ward) => ward.id)
    const ward = rowOf(draft, WARD_FIELDS)
    return putWard(shelf, { id: id ?? freeId(draft['name'] ?? '', taken), ...ward })
  }
  const taken = rowsOf(shelf, list).map((row) => row.id)
  const row = rowOf(draft, fieldsOf(list, draft))
  return putRow(shelf, list, { id: id ?? freeId(draft['label'] ?? '', taken), ...row })
}
