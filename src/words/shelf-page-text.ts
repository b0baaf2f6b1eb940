// What the Shelf page says: browsing, counting, adding, editing. Leaves out names of fields and of what lies on the shelf.
import type { SizeId } from '../kit/family-id.ts'
import type { InterfaceSize } from '../kit/interface-family.ts'
import type { LabelWeight } from '../kit/shelf-row.ts'
import { SIZE_NAMES } from './names.ts'
import { numberText, plainNumberText, withUnit } from './number-text.ts'
import { say } from './say.ts'

export const SHELF_PAGE = {
  heading: () => say('Shelf'),
  demoEdit: () => say('The first change makes a copy of your own; the demo shelf stays as it is.'),
  own: () => say('Plans, chains and sheets are worked out with this shelf.'),
  notKept: () => say('This browser keeps nothing: save the shelf as a file before you leave.'),
  search: () => say('Search'),
  searchHelp: () => say('name, kind, size or marking'),
  ward: () => say('Lies in'),
  anyPlace: () => say('any place'),
  everywhere: () => say('everywhere'),
  list: () => say('Show'),
  allLists: () => say('everything'),
  noneLeft: () => say('Only what has run out'),
  nothingFound: () => say('Nothing on the shelf is like that.'),
  out: () => say('none left'),
  edit: () => say('Edit'),
  remove: () => say('Remove'),
  removeSure: () => say('Take it off the shelf?'),
  yesRemove: () => say('Yes, remove'),
  keep: () => say('Keep it'),
  add: () => say('Add'),
  addRow: () => say('Add to the shelf'),
  addWhat: () => say('What to add'),
  save: () => say('Put on the shelf'),
  cancel: () => say('Leave without saving'),
  undo: () => say('Undo'),
  toDemo: () => say('Back to the demo shelf'),
  toDemoSure: () =>
    say('Your own shelf is then gone from this browser. Save it as a file first, if you need it.'),
  yesToDemo: () => say('Yes, back to the demo'),
  details: () => say('All that is known'),
  fromLabel: () => say('from its label'),
  ours: () => say('usual'),
  notStated: () => say('not stated'),
  addSize: () => say('Add a size'),
  addSetting: () => say('Add a setting'),
  addMode: () => say('Add a mode'),
  removeEntry: () => say('Take away'),
  toMend: () => say('This cannot stand on the shelf yet. Nothing typed is lost.'),
  wards: () => say('Wards'),
  addWard: () => say('Add a ward'),
  toChain: () => say('Show its chain'),
  editHospital: () => say('Hospital and altitude'),
  draftKept: () => say('Typed and not yet put on the shelf:'),
  draftFirst: () => say('First go on with what was typed before, or forget it: see above.'),
  goOn: () => say('Go on with it'),
  forget: () => say('Forget it'),
} as const

export const GROUP_TITLES = {
  what: say('What it is'),
  stock: say('Where it lies'),
  sizes: say('Sizes'),
  label: say('From its own label'),
  scale: say('What it can do'),
  use: say('What is used of it here'),
  ends: say('Ends, where they differ from the usual'),
  failure: say('If a supply fails, gas it uses besides, its filter'),
} as const

/** Beside the number, for those who do not see where the buttons stand. */
export function oneMoreText(label: string): string {
  return say('One more: {label}', { label })
}

export function oneFewerText(label: string): string {
  return say('One fewer: {label}', { label })
}

export function countLabelText(label: string, size: SizeId | undefined): string {
  return size === undefined ? label : say('{label}, {size}', { label, size: SIZE_NAMES[size] })
}

export function rowsText(shown: number, all: number): string {
  return shown === all
    ? say('{all, plural, one {# row} other {# rows}}', { all })
    : say('{shown} of {all, plural, one {# row} other {# rows}}', { shown, all })
}

export function changedText(label: string): string {
  return say('Changed: {label}', { label })
}

export function addedText(label: string): string {
  return say('Added: {label}', { label })
}

export function removedText(label: string): string {
  return say('Removed: {label}', { label })
}

export function editingText(label: string): string {
  return label === '' ? say('A new row') : say('Edit: {label}', { label })
}

export function wardHoldsText(name: string, labels: readonly string[]): string {
  return say('{name} cannot go while this lies there: {labels}', {
    name,
    labels: labels.join(', '),
  })
}

export function bedsText(beds: number): string {
  return say('{beds, plural, one {# bed} other {# beds}}', { beds })
}

export function entryText(what: string, place: number): string {
  return say('{what} {place}', { what, place })
}

export function altitudeText(altitudeM: number): string {
  return say('It lies at {altitude}.', { altitude: withUnit(plainNumberText(altitudeM), 'm') })
}

/** Older than anybody: no upper age is said. */
const AGE_YEARS_OPEN = 100
const DAYS_PER_YEAR = 365.25
const MONTHS_PER_YEAR = 12

/** Whom a size fits: "fits 1–13 years", "fits up to 6 months and up to 2 kg". */
export function fitsText(size: InterfaceSize): string {
  const { ageYearsMin, ageYearsMax, weightKgMin, weightKgMax } = size
  const from = ageOf(ageYearsMin)
  const to = ageOf(ageYearsMax)
  if (weightKgMax !== undefined)
    return say('fits up to {age} and up to {weight}', {
      age: withUnit(to.number, to.unit),
      weight: withUnit(plainNumberText(weightKgMax), 'kg'),
    })
  if (ageYearsMax >= AGE_YEARS_OPEN)
    return say('fits from {age}', { age: withUnit(from.number, from.unit) })
  if (ageYearsMin === 0 && weightKgMin === undefined)
    return say('fits up to {age}', { age: withUnit(to.number, to.unit) })
  const low = from.unit === to.unit ? from.number : withUnit(from.number, from.unit)
  const ages = `${low}–${withUnit(to.number, to.unit)}`
  if (weightKgMin === undefined) return say('fits {ages}', { ages })
  const weight = withUnit(plainNumberText(weightKgMin), 'kg')
  return say('fits {ages}, from {weight}', { ages, weight })
}

/** The same by age alone. */
export function fitsAgesText({
  weightKgMin: _least,
  weightKgMax: _most,
  ...size
}: InterfaceSize): string {
  return fitsText(size)
}

/** "10–25 kg", "from 10 kg", "up to 25 kg"; as typed, never rounded. */
export function labelWeightText({ fitsMinKg, fitsMaxKg }: LabelWeight): string {
  const kg = (value: number): string => withUnit(plainNumberText(value), 'kg')
  if (fitsMinKg === undefined)
    return fitsMaxKg === undefined ? '' : say('up to {weight}', { weight: kg(fitsMaxKg) })
  if (fitsMaxKg === undefined) return say('from {weight}', { weight: kg(fitsMinKg) })
  return `${plainNumberText(fitsMinKg)}–${kg(fitsMaxKg)}`
}

/** In the unit people count a life of that length in; days and months are whole. */
function ageOf(ageYears: number): { readonly number: string; readonly unit: string } {
  const months = ageYears * MONTHS_PER_YEAR
  if (months < 1) return { number: numberText(ageYears * DAYS_PER_YEAR, 1), unit: 'd' }
  return months < MONTHS_PER_YEAR
    ? { number: numberText(months, 1), unit: 'mo' }
    : { number: plainNumberText(ageYears), unit: 'a' }
}
