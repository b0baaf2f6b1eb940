// The altitude of the site as set: judged by the rules of a case, a stand-in for cases that give none. Leaves out pressure, which the case reader takes from it.
import type { Problem } from '../../errors.ts'
import { NUMBERS } from '../../patient/case-fields.ts'
import { newReading, readNumber } from '../../patient/field.ts'
import { typedNumber } from '../case/typed-number.ts'

export const ALTITUDE_PATH = 'site.altitudeM'

export interface SiteAltitude {
  /** Metres, or undefined where none is set or what is typed is refused. */
  readonly altitudeM: number | undefined
  readonly problems: readonly Problem[]
}

export function siteAltitude(typed: string): SiteAltitude {
  const rule = NUMBERS.altitudeM
  const read = typedNumber(typed, rule)
  if (read.kind === 'empty') return { altitudeM: undefined, problems: [] }
  const reading = newReading()
  const value = read.kind === 'number' ? read.value : read.text
  const node = { reading, path: 'site', fields: new Map<string, unknown>([['altitudeM', value]]) }
  const altitudeM = readNumber(node, 'altitudeM', rule)
  const meant = read.kind === 'refused' ? read.suggestion : undefined
  const problems = reading.problems.map((problem) =>
    meant === undefined ? problem : { ...problem, suggestion: meant },
  )
  return { altitudeM, problems }
}
