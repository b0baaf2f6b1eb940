// What people at the bedside would say of a set-up: printed setting, 4 % per litre, 0.21 + 0.03 per litre, centre of a printed range. Leaves out breathing.
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { PrintedFraction } from '../kit/interface-family.ts'
import type { EngineCase } from './engine-case.ts'

export type RuleId = 'printed-setting' | 'per-litre' | 'printed-range' | 'mask-three-percent'

export interface RuleOfThumb {
  readonly rule: RuleId
  readonly o2Fraction: number
}

/** Best bedside rule for masks of Coudroy2020: 0.21 + 0.03 × flow. */
const MASK_RULE = { base: 0.21, perLpm: 0.03 } as const

/** The usual rule for the case, or null where none is in use or the flow lies outside the rated range. The 0.21 + 0.03 rule stands for masks without a setting. */
export function ruleOfThumb(engine: EngineCase): RuleOfThumb | null {
  const { printed, behaviour, sizes } = INTERFACE_FAMILIES[engine.family]
  const rated = sizes.find(({ id }) => id === (engine.size ?? 'adult'))?.rated
  if (rated === undefined || engine.flowLpm < rated.minLpm || engine.flowLpm > rated.maxLpm)
    return null
  if (behaviour.kind === 'reservoir' || engine.family === 'simple-mask')
    return {
      rule: 'mask-three-percent',
      o2Fraction: Math.min(1, MASK_RULE.base + MASK_RULE.perLpm * engine.flowLpm),
    }
  return printedRule(printed, engine)
}

function printedRule(printed: PrintedFraction, engine: EngineCase): RuleOfThumb | null {
  switch (printed.kind) {
    case 'setting':
      return engine.setO2Fraction === undefined
        ? null
        : { rule: 'printed-setting', o2Fraction: engine.setO2Fraction }
    case 'per-litre':
      return engine.flowLpm > printed.maxLpm
        ? null
        : { rule: 'per-litre', o2Fraction: printed.base + printed.perLpm * engine.flowLpm }
    case 'table': {
      const nearest = printed.rows.toSorted(
        (a, b) => Math.abs(a.flowLpm - engine.flowLpm) - Math.abs(b.flowLpm - engine.flowLpm),
      )[0]
      return nearest === undefined
        ? null
        : { rule: 'printed-range', o2Fraction: (nearest.low + nearest.high) / 2 }
    }
    case 'none':
      return null
  }
}
