// Reads the goal of four kinds. Leaves out which goal suits which reason, which is a sourced table in planning/.
import type { Goal } from './case.ts'
import {
  FIELD_ALIASES,
  FRACTION_GOAL_ALIASES,
  GOAL_ALIASES,
  SATURATION_GOAL_ALIASES,
} from './aliases.ts'
import { KEYS, NUMBERS } from './case-fields.ts'
import {
  given,
  isGiven,
  openObject,
  pathOf,
  problemValue,
  readChoice,
  readNumber,
  readText,
  report,
  reportMissing,
  type Node,
  type NumberRule,
} from './field.ts'

export const GOAL_KINDS = [
  'saturation',
  'fraction',
  'as-much-as-possible',
  'comfort',
] as const satisfies readonly Goal['kind'][]

const SHAPES = {
  saturation: { keys: KEYS.saturationGoal, aliases: SATURATION_GOAL_ALIASES },
  fraction: { keys: KEYS.fractionGoal, aliases: FRACTION_GOAL_ALIASES },
  'as-much-as-possible': { keys: KEYS.otherGoal, aliases: {} },
  comfort: { keys: KEYS.otherGoal, aliases: {} },
} as const

export function readGoal(root: Node): Goal | undefined {
  if (!isGiven(root, 'goal')) return reportMissing(root, 'goal')
  const { reading } = root
  const value = root.fields.get('goal')
  const path = pathOf(root, 'goal')
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return report(reading, { code: 'NOT_AN_OBJECT', path, value: problemValue(value) })
  }
  const peek = { reading, path, fields: new Map<string, unknown>(Object.entries(value)) }
  const kind = readChoice(peek, 'kind', {
    choices: GOAL_KINDS,
    aliases: GOAL_ALIASES,
    isRequired: true,
  })
  if (kind === undefined) return undefined
  const shape = SHAPES[kind]
  const node = openObject({
    reading,
    path,
    value,
    keys: shape.keys,
    aliases: { ...FIELD_ALIASES, ...shape.aliases },
  })
  return node === undefined ? undefined : goalOfKind(node, kind)
}

function goalOfKind(node: Node, kind: Goal['kind']): Goal | undefined {
  const reason = readText(node, 'reason')
  switch (kind) {
    case 'saturation': {
      const ends = readEnds(node, {
        low: 'lowPercent',
        high: 'highPercent',
        rule: NUMBERS.goalPercent,
      })
      if (ends === undefined) return undefined
      return { kind, lowPercent: ends.low, highPercent: ends.high, ...given({ reason }) }
    }
    case 'fraction': {
      const ends = readEnds(node, { low: 'low', high: 'high', rule: NUMBERS.inspiredFraction })
      return ends === undefined ? undefined : { kind, ...ends, ...given({ reason }) }
    }
    case 'as-much-as-possible':
      return reason === undefined ? missingReason(node) : { kind, reason }
    case 'comfort':
      return { kind, ...given({ reason }) }
  }
}

/** A goal that puts the oximeter aside must say why. A reason of the wrong type has been reported already. */
function missingReason(node: Node): undefined {
  if (!isGiven(node, 'reason')) reportMissing(node, 'reason')
}

function readEnds(
  node: Node,
  ends: { readonly low: string; readonly high: string; readonly rule: NumberRule },
): { readonly low: number; readonly high: number } | undefined {
  const limit = { min: ends.rule.min, max: ends.rule.max }
  for (const key of [ends.low, ends.high]) if (!isGiven(node, key)) reportMissing(node, key, limit)
  const low = readNumber(node, ends.low, ends.rule)
  const high = readNumber(node, ends.high, ends.rule)
  if (low === undefined || high === undefined) return undefined
  if (low < high) return { low, high }
  return report(node.reading, {
    code: 'RANGE_REVERSED',
    path: pathOf(node, ends.high),
    value: high,
    limit: { min: low },
    unit: ends.rule.unit,
    ...(low === high ? {} : { suggestion: low }),
  })
}
