// A row of the shelf as it is typed: one text for each field, by its path in the row. Leaves out which fields there are (row-fields.ts) and judging (the shelf reader).
import { textOfNumber, typedNumber } from '../case/typed-number.ts'
import type { RowField } from './row-fields.ts'

/** Texts by path: `label`, `meter.stepsLpm`, `sizes[0].count`. Absent and empty mean not given. */
export type RowDraft = Readonly<Record<string, string>>

export const YES = 'yes'
export const NO = 'no'
const BETWEEN = '; '

/** What stands in a row, as texts. */
export function draftOf(row: object): RowDraft {
  const texts: Record<string, string> = {}
  flatten(row, '', texts)
  return texts
}

function flatten(value: unknown, path: string, texts: Record<string, string>): void {
  if (value === null || value === undefined) return
  if (Array.isArray(value)) {
    if (value.every((one) => typeof one !== 'object') && !isByEntry(path))
      texts[path] = value.map(asTyped).join(BETWEEN)
    else value.forEach((one, i) => flatten(one, `${path}[${i}]`, texts))
  } else if (typeof value === 'object') {
    for (const [key, one] of Object.entries(value))
      flatten(one, path === '' ? key : `${path}.${key}`, texts)
  } else if (typeof value === 'boolean') texts[path] = value ? YES : NO
  else if (typeof value === 'number' || typeof value === 'string') texts[path] = asTyped(value)
}

function asTyped(value: unknown): string {
  return typeof value === 'number' ? textOfNumber(value) : String(value)
}

/** Lists that are chosen entry by entry. */
function isByEntry(path: string): boolean {
  return path === 'inletEnds' || path === 'openEnds'
}

/** The row that is meant, of the fields that belong to it alone: numbers where numbers stand, else the text as typed, which the reader then refuses. */
export function rowOf(draft: RowDraft, fields: readonly RowField[]): Record<string, unknown> {
  const row: Record<string, unknown> = {}
  for (const [path, text] of Object.entries(draft)) {
    const field = fields.find((one) => one.path === patternOf(path))
    if (field === undefined || text.trim() === '') continue
    put(row, stepsOf(path), valueOf(field, text))
  }
  fillHoles(row)
  const { meter } = row
  // A meter without a flush says so.
  if (isRecord(meter)) meter['flush'] ??= null
  return row
}

/** `sizes[2].count` is a field of kind `sizes[].count`. */
export function patternOf(path: string): string {
  return path.replaceAll(/\[\d+\]/g, '[]')
}

function valueOf(field: RowField, text: string): unknown {
  switch (field.kind) {
    case 'text':
    case 'choice':
      return text
    case 'number':
      return numberOr(text)
    case 'switch':
      return text === YES
    case 'numbers':
      return entriesOf(text).map(numberOr)
    case 'choices':
      return entriesOf(text)
  }
}

/** Parted by semicolons or spaces; a comma stays, as it may be a decimal sign to some. */
export function entriesOf(text: string): readonly string[] {
  return text.split(/[;\s]+/).filter((one) => one !== '')
}

/** Any field of a shelf; what a field allows, the shelf reader knows. */
const ANY_NUMBER = { min: -1e6, max: 1e6 }

function numberOr(text: string): number | string {
  const typed = typedNumber(text, ANY_NUMBER)
  return typed.kind === 'number' ? typed.value : text.trim()
}

type Step = string | number

function stepsOf(path: string): readonly Step[] {
  return [...path.matchAll(/([^.[\]]+)|\[(\d+)\]/g)].map(([, key, index]) => key ?? Number(index))
}

function put(root: object, steps: readonly Step[], value: unknown): void {
  let node: Record<Step, unknown> = root as Record<Step, unknown> // Safe: objects and lists take keys.
  steps.forEach((step, i) => {
    if (i === steps.length - 1) node[step] = value
    else {
      node[step] ??= typeof steps[i + 1] === 'number' ? [] : {}
      node = node[step] as Record<Step, unknown> // Safe: made in the line above, or so by an earlier path.
    }
  })
}

/** An entry of which nothing is typed stays as an empty one, so that the reader says what it lacks. */
function fillHoles(row: Record<string, unknown>): void {
  for (const value of Object.values(row)) {
    if (!Array.isArray(value)) continue
    for (let i = 0; i < value.length; i += 1) value[i] ??= {}
  }
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

/** How many entries of a list have anything typed. */
export function entryCount(draft: RowDraft, list: string): number {
  const places = Object.keys(draft)
    .filter((path) => path.startsWith(`${list}[`))
    .map((path) => Number(/\[(\d+)\]/.exec(path)?.[1]))
  return places.length === 0 ? 0 : Math.max(...places) + 1
}

/** Without one entry; those after it move up. */
export function withoutEntry(draft: RowDraft, list: string, entry: number): RowDraft {
  const kept = Object.entries(draft).flatMap(([path, text]) => {
    if (!path.startsWith(`${list}[`)) return [[path, text]]
    const place = Number(/\[(\d+)\]/.exec(path)?.[1])
    if (place === entry) return []
    return [[place < entry ? path : path.replace(`[${place}]`, `[${place - 1}]`), text]]
  })
  return Object.fromEntries(kept) as RowDraft // Safe: pairs of path and text.
}
