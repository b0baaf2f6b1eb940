// Reads the humidifiers of a shelf file: kind, count, ends, flow, relief pressure, water, breath sizes. Leaves out how much water reaches the patient.
import { given, openFields, readChoice, readCount, readNumber } from './read-fields.ts'
import type { Opened } from './read-fields.ts'
import { readLabelFlow, readOwnEnds, reportSwapped } from './read-ends.ts'
import { readRow } from './read-row.ts'
import { HUMIDIFIER_KINDS } from './shelf.ts'
import type { HumidifierRow } from './shelf.ts'
import { KEYS, RULES } from './shelf-rules.ts'

export function readHumidifier(options: {
  readonly problems: Opened['problems']
  readonly path: string
  readonly value: unknown
  readonly places: readonly string[]
}): HumidifierRow | undefined {
  const node = openFields({ ...options, keys: KEYS.humidifier })
  if (node === undefined) return undefined
  const kind = readChoice(node, 'kind', HUMIDIFIER_KINDS)
  const head = readRow(node, options.places)
  const count = readCount(node, 'count', RULES.count)
  const facts = given({
    reliefKpa: readNumber(node, 'reliefKpa', RULES.pressureKpa),
    waterMl: readNumber(node, 'waterMl', RULES.waterMl),
    outputMgPerL: readNumber(node, 'outputMgPerL', RULES.outputMgPerL),
    tidalMinMl: readNumber(node, 'tidalMinMl', RULES.tidalMl),
    tidalMaxMl: readNumber(node, 'tidalMaxMl', RULES.tidalMl),
  })
  reportSwapped(node, { lower: 'tidalMinMl', higher: 'tidalMaxMl', unit: 'mL' })
  const ends = readOwnEnds(node)
  const label = readLabelFlow(node)
  if (kind === undefined || head === undefined || count === undefined) return undefined
  return { ...head, kind, count, ...ends, ...label, ...facts }
}
