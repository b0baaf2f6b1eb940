// What is known of a row, as named values: what stands on its own label told from what is usual, and the unknown said. Leaves out sizes and counts, which have a place of their own.
import { INTERFACE_FAMILIES } from '../../kit/interface-families.ts'
import type { AnyRow, RowList } from '../../kit/edit-shelf.ts'
import type { InterfaceRow, Shelf, SizeStock } from '../../kit/shelf.ts'
import { plainNumberText, rangeText, withUnit } from '../../words/number-text.ts'
import { shelfLabel } from '../../words/shelf-field-labels.ts'
import { YES_NO_NAMES } from '../../words/shelf-names.ts'
import { SHELF_PAGE, entryText } from '../../words/shelf-page-text.ts'
import type { Fact } from '../parts/facts.tsx'
import { choiceName, placeName } from './choice-names.ts'
import { NO, YES, draftOf, entriesOf, patternOf } from './row-draft.ts'
import { groupsOf } from './row-fields.ts'
import type { RowField } from './row-fields.ts'

const SHOWN_APART = ['label', 'count', 'kind', 'family']
const FROM_LABEL = ['ratedMinLpm', 'ratedMaxLpm']

/** Every field that is given, and those of a failing supply even where nobody has said. */
export function factsOf(shelf: Shelf, list: RowList, row: AnyRow): readonly Fact[] {
  const draft = draftOf(row)
  const facts = groupsOf(list, draft).flatMap(({ id, fields }) =>
    fields.flatMap((field) => {
      if (SHOWN_APART.includes(field.path) || field.path.startsWith('sizes[]')) return []
      const found = Object.entries(draft).filter(([path]) => patternOf(path) === field.path)
      if (found.length === 0)
        return id === 'failure'
          ? [{ name: shelfLabel(field.path), value: YES_NO_NAMES.unknown }]
          : []
      return found.map(([path, text]) => ({
        name: nameOf(path, found.length),
        value: valueText(shelf, field, text),
        isWide: text.length > LONG,
      }))
    }),
  )
  return facts
}

const LONG = 24

/** Entries of a list are told apart by their place. */
function nameOf(path: string, entries: number): string {
  const place = /\[(\d+)\]/.exec(path)?.[1]
  if (place === undefined || entries === 1) return shelfLabel(path)
  return entryText(shelfLabel(path), Number(place) + 1)
}

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

/** "1–6 L/min (usual for its kind)", or what its label says. */
export function ratedText(row: InterfaceRow, stock: SizeStock): string {
  const usual = INTERFACE_FAMILIES[row.family].sizes.find(({ id }) => id === stock.size)?.rated
  const isOwn = stock.ratedMinLpm !== undefined || stock.ratedMaxLpm !== undefined
  const low = stock.ratedMinLpm ?? usual?.minLpm
  const high = stock.ratedMaxLpm ?? usual?.maxLpm
  if (low === undefined || high === undefined) return SHELF_PAGE.notStated()
  const range = rangeText({ low, high, step: RATED_STEP_LPM, unit: 'L/min' })
  return `${range} (${isOwn ? SHELF_PAGE.fromLabel() : SHELF_PAGE.ours()})`
}

const RATED_STEP_LPM = 0.01
