// What is known of a row, as named values: what stands on its own label told from what is usual, and the unknown said. Leaves out sizes and counts, which have a place of their own.
import { INTERFACE_FAMILIES } from '../../kit/interface-families.ts'
import type { AnyRow, RowList } from '../../kit/edit-shelf.ts'
import type { InterfaceSize } from '../../kit/interface-family.ts'
import type { InterfaceRow, Shelf, ShelfSource, SizeStock } from '../../kit/shelf.ts'
import { SOURCE_KINDS } from '../../kit/shelf-rules.ts'
import { USUAL_SOURCE_ENDS } from '../../kit/usual-ends.ts'
import { hasLabelWeight } from '../../kit/weight-fit.ts'
import { plainNumberText, withUnit } from '../../words/number-text.ts'
import { shelfLabel } from '../../words/shelf-field-labels.ts'
import { YES_NO_NAMES } from '../../words/shelf-names.ts'
import {
  SHELF_PAGE,
  entryText,
  fitsAgesText,
  fitsText,
  labelWeightText,
} from '../../words/shelf-page-text.ts'
import type { Fact } from '../parts/facts.tsx'
import { choiceName, placeName } from './choice-names.ts'
import { NO, YES, draftOf, entriesOf, entryCount } from './row-draft.ts'
import type { RowDraft } from './row-draft.ts'
import { groupsOf, listOf } from './row-fields.ts'
import type { GroupId, RowField } from './row-fields.ts'

const SHOWN_APART = ['label', 'count', 'kind', 'family', 'place', 'wardMarking']
const FROM_LABEL = ['ratedMinLpm', 'ratedMaxLpm', 'fitsMinKg', 'fitsMaxKg']

/** Every field that is given; of sources also the end gas leaves by, and what nobody has said of failures, filter and modes. */
export function factsOf(shelf: Shelf, list: RowList, row: AnyRow): readonly Fact[] {
  const draft = draftOf(row)
  const groups = groupsOf(list, draft)
  const entries = entryFacts(
    shelf,
    draft,
    groups.flatMap(({ fields }) => fields),
  )
  const single = groups.flatMap(({ id, fields }) =>
    fields.flatMap((field): readonly Fact[] => {
      if (SHOWN_APART.includes(field.path) || field.path.includes('[]')) return []
      const text = draft[field.path]
      if (text !== undefined) return [fact(shelfLabel(field.path), valueText(shelf, field, text))]
      const said = saidUnstated(row, id, field)
      return said === null ? [] : [fact(shelfLabel(field.path), said)]
    }),
  )
  return [...single, ...entries, ...unstatedModes(row)]
}

/** What is said of a field that nobody filled in: unknown, or the end that is usual; most are passed over. */
function saidUnstated(row: AnyRow, group: GroupId, { path }: RowField): string | null {
  if (group === 'failure') return YES_NO_NAMES.unknown
  if (path !== 'outletEnd' || !isSource(row)) return null
  const end = USUAL_SOURCE_ENDS[row.kind].outletEnd
  return `${choiceName(path, end)} (${SHELF_PAGE.ours()})`
}

function unstatedModes(row: AnyRow): readonly Fact[] {
  if (!isSource(row) || row.kind !== 'ventilator' || row.modes !== undefined) return []
  return [fact(shelfLabel('modes[].label'), YES_NO_NAMES.unknown)]
}

function isSource(row: AnyRow): row is ShelfSource {
  return 'kind' in row && SOURCE_KINDS.some((kind) => kind === row.kind)
}

/** A list entry by entry, what belongs to one together: a mode with what it does, a printed fraction with its flows. */
function entryFacts(shelf: Shelf, draft: RowDraft, fields: readonly RowField[]): readonly Fact[] {
  const lists = [...new Set(fields.map(listOf).filter((list) => list !== null))]
  return lists
    .filter((list) => list !== 'sizes')
    .flatMap((list) => {
      const own = fields.filter((field) => listOf(field) === list)
      const count = entryCount(draft, list)
      return Array.from({ length: count }, (_, place) => {
        const values = own.flatMap((field) => {
          const text = draft[field.path.replace('[]', `[${place}]`)]
          return text === undefined ? [] : [valueText(shelf, field, text)]
        })
        const name = shelfLabel(own[0]?.path ?? list)
        return fact(count === 1 ? name : entryText(name, place + 1), values.join(' · '))
      })
    })
}

function fact(name: string, value: string): Fact {
  return { name, value, isWide: value.length > LONG }
}

const LONG = 24

function valueText(shelf: Shelf, field: RowField, text: string): string {
  const value = plainValueText(shelf, field, text)
  return FROM_LABEL.includes(field.path) ? `${value} (${SHELF_PAGE.fromLabel()})` : value
}

function plainValueText(shelf: Shelf, field: RowField, text: string): string {
  if (field.path === 'place') return placeName(shelf, text)
  switch (field.kind) {
    case 'text':
      return text
    case 'choice':
      return choiceName(field.path, text)
    case 'number':
      return withUnit(numberShown(text), field.unit)
    case 'numbers':
      return withUnit(numbersText(entriesOf(text).map(numberShown)), field.unit)
    case 'choices':
      return entriesOf(text)
        .map((one) => choiceName(field.path, one))
        .join(', ')
    case 'switch':
      return text === YES ? YES_NO_NAMES.yes : text === NO ? YES_NO_NAMES.no : text
  }
}

/** A number as it stands in a draft, rounded as people read it. */
function numberShown(text: string): string {
  const value = Number(text.replace(',', '.'))
  return Number.isFinite(value) ? plainNumberText(value) : text
}

const SHOWN_NUMBERS_MAX = 12

/** Long scales by their ends. */
function numbersText(texts: readonly string[]): string {
  if (texts.length <= SHOWN_NUMBERS_MAX) return texts.join(', ')
  return `${texts.slice(0, 3).join(', ')} … ${texts.slice(-2).join(', ')}`
}

/** "fits 1–13 years (usual)", and the weights of its label; a size its family does not come in fits nobody we know of. */
export function whomText(row: InterfaceRow, stock: SizeStock): string {
  const size = sizeOfRow(row, stock)
  if (size === undefined) return ''
  if (!hasLabelWeight(stock)) return `${fitsText(size)} (${SHELF_PAGE.ours()})`
  return `${fitsAgesText(size)} (${SHELF_PAGE.ours()}), ${labelWeightText(stock)} (${SHELF_PAGE.fromLabel()})`
}

function sizeOfRow(row: InterfaceRow, stock: SizeStock): InterfaceSize | undefined {
  return INTERFACE_FAMILIES[row.family].sizes.find(({ id }) => id === stock.size)
}

/** "1–6 L/min (usual)", or what its label says. */
export function ratedText(row: InterfaceRow, stock: SizeStock): string {
  const usual = sizeOfRow(row, stock)?.rated
  const isOwn = stock.ratedMinLpm !== undefined || stock.ratedMaxLpm !== undefined
  const low = stock.ratedMinLpm ?? usual?.minLpm
  const high = stock.ratedMaxLpm ?? usual?.maxLpm
  if (low === undefined || high === undefined) return SHELF_PAGE.notStated()
  // As it stands in the row: a rated flow is never rounded.
  const ends = low === high ? [low] : [low, high]
  const range = withUnit(ends.map(plainNumberText).join('–'), 'L/min')
  return `${range} (${isOwn ? SHELF_PAGE.fromLabel() : SHELF_PAGE.ours()})`
}
