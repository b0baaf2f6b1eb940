// The part of an address behind # that holds a whole sheet: case, set-up, times. Short, checked by a sum, no server needed. Leaves out the address before it.
import { DomainError } from '../errors.ts'
import type { Problem } from '../errors.ts'
import { HUMIDIFICATIONS, humidificationOf } from '../kit/shelf.ts'
import type { Humidification } from '../kit/shelf.ts'
import type { Case } from '../patient/case.ts'
import { readCase } from '../patient/read-case.ts'
import { writeCase } from '../patient/write-case.ts'
import { FRAGMENT_FIELDS, ON_AIR_KEY } from './fragment-fields.ts'
import { readValue, sumOf, written } from './fragment-values.ts'

/** What a sheet is made from. */
export interface SheetRequest {
  readonly case: Case
  /** Of the shelf's candidate. */
  readonly setUpId: string
  readonly wardId?: string
  /** When the sheet was made, and when what it rests on was read: wall times. */
  readonly madeAt: string
  readonly readAt: string
  readonly modelVersion: string
  readonly cylinder?: SheetCylinderInput
  /** What wets the gas, as chosen; absent: what the set-up usually has (sheetChain). */
  readonly humidification?: Humidification
}

export interface SheetCylinderInput {
  readonly waterVolumeL: number
  readonly gaugeKpa: number
  /** Gauge pressure at which it is changed. */
  readonly leftGaugeKpa: number
}

/** The most that still makes a code that a telephone reads from a sheet of paper. */
export const FRAGMENT_BYTES_MAX = 600

const VERSION = '1'
const SEPARATOR = ';'
const SUM_KEY = 'z'

/**
 * Writes a request as text of at most 600 plain characters. The bed is the only thing in it that tells one patient from another: code
 * and note are left out (LEFT_OUT_OF_FRAGMENT). Longer than 600 is refused as SIZE_OUT_OF_RANGE: nothing is dropped to make it fit.
 */
export function writeFragment(request: SheetRequest): string {
  const plain = { ...request, case: writeCase(request.case) }
  const parts = FRAGMENT_FIELDS.flatMap((field) => {
    const value = valueAt(plain, field.path)
    return value === undefined ? [] : [`${field.key}=${written(field, value)}`]
  })
  const air = request.case.onNow?.setUp === null ? [`${ON_AIR_KEY}=1`] : []
  const body = [VERSION, ...parts, ...air].join(SEPARATOR)
  const text = `${body}${SEPARATOR}${SUM_KEY}=${sumOf(body)}`
  if (text.length > FRAGMENT_BYTES_MAX) {
    throw new DomainError({
      code: 'SIZE_OUT_OF_RANGE',
      path: 'fragment',
      value: text.length,
      limit: { max: FRAGMENT_BYTES_MAX },
    })
  }
  return text
}

/** Fields of a case that never enter an address. */
export const LEFT_OUT_OF_FRAGMENT = ['code', 'note'] as const

export type ReadFragment =
  | { readonly ok: true; readonly request: SheetRequest }
  | { readonly ok: false; readonly problems: readonly Problem[] }

/** Reads what writeFragment wrote. Anything cut, changed or of another version is refused; the case passes the case reader. */
export function readFragment(text: string): ReadFragment {
  const cut = text.lastIndexOf(`${SEPARATOR}${SUM_KEY}=`)
  const body = text.slice(0, Math.max(0, cut))
  const isWhole = cut > 0 && text.slice(cut + SUM_KEY.length + 2) === sumOf(body)
  if (!isWhole) return refused({ code: 'UNREADABLE_TEXT', path: 'fragment', value: SUM_KEY })
  const [version = '', ...parts] = body.split(SEPARATOR)
  if (version !== VERSION) {
    const limit = { oneOf: [VERSION] }
    return refused({ code: 'UNKNOWN_CHOICE', path: 'fragment', value: version, limit })
  }
  try {
    return requestOf(plainOf(parts))
  } catch (thrown) {
    if (!(thrown instanceof DomainError)) throw thrown
    return refused(thrown)
  }
}

function refused(problem: Problem): ReadFragment {
  return { ok: false, problems: [problem] }
}

type Plain = { [key: string]: unknown }

function requestOf(plain: Plain): ReadFragment {
  const read = readCase({ ...(plain['case'] as Plain | undefined), version: 1 })
  if (!read.ok) return read
  const text = (key: string): string => {
    const value = plain[key]
    if (typeof value === 'string') return value
    throw new DomainError({ code: 'MISSING_FIELD', path: key, value: null })
  }
  const { cylinder, wardId, humidification } = plain
  return {
    ok: true,
    request: {
      case: read.case,
      setUpId: text('setUpId'),
      madeAt: text('madeAt'),
      readAt: text('readAt'),
      modelVersion: text('modelVersion'),
      ...(typeof wardId === 'string' ? { wardId } : {}),
      ...(cylinder === undefined ? {} : { cylinder: cylinderOf(cylinder) }),
      ...(humidification === undefined
        ? {}
        : { humidification: readHumidification(humidification) }),
    },
  }
}

function readHumidification(plain: unknown): Humidification {
  const found = humidificationOf(plain)
  if (found !== undefined) return found
  throw new DomainError({
    code: 'UNKNOWN_CHOICE',
    path: 'humidification',
    value: String(plain),
    limit: { oneOf: HUMIDIFICATIONS },
  })
}

/** Its numbers are judged where they are used. */
function cylinderOf(plain: unknown): SheetCylinderInput {
  const number = (key: string): number => {
    const value = valueAt(plain, key)
    if (typeof value === 'number') return value
    throw new DomainError({ code: 'MISSING_FIELD', path: `cylinder.${key}`, value: null })
  }
  return {
    waterVolumeL: number('waterVolumeL'),
    gaugeKpa: number('gaugeKpa'),
    leftGaugeKpa: number('leftGaugeKpa'),
  }
}

function plainOf(parts: readonly string[]): Plain {
  const plain: Plain = {}
  for (const part of parts) {
    const [key = '', value = ''] = part.split('=')
    const field = FRAGMENT_FIELDS.find((one) => one.key === key)
    if (key === ON_AIR_KEY) place(plain, 'case.onNow.setUp', null)
    else if (field === undefined) {
      throw new DomainError({ code: 'UNKNOWN_FIELD', path: 'fragment', value: key })
    } else place(plain, field.path, readValue(field, value))
  }
  return plain
}

function valueAt(plain: unknown, path: string): unknown {
  let value = plain
  for (const key of path.split('.')) {
    if (typeof value !== 'object' || value === null) return undefined
    // Safe: any object may be asked for any key; what is not there is undefined.
    value = (value as Plain)[key]
  }
  return value
}

function place(plain: Plain, path: string, value: unknown): void {
  const keys = path.split('.')
  const last = keys.pop() ?? ''
  let at = plain
  for (const key of keys) {
    at[key] ??= {}
    // Safe: paths of the table never run through a single value.
    at = at[key] as Plain
  }
  at[last] = value
}
