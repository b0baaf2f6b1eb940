// Faults of order on the lines of a chain: rows of order-rules.ts that a line breaks. Leaves out ends and flows.
import { placed } from './chain.ts'
import type { Chain } from './chain.ts'
import { entersByAirPorts, linesToPatients } from './lines.ts'
import { NEED_RULES, ORDER_RULES } from './order-rules.ts'
import type { NeedRule, OrderRule } from './order-rules.ts'
import { toldOnce } from './refusal.ts'
import type { Refusal } from './refusal.ts'
import { traitsOf } from './traits.ts'
import type { Trait } from './traits.ts'

export function orderFaults(chain: Chain): readonly Refusal[] {
  const faults = linesToPatients(chain).flatMap((line) => [
    ...ORDER_RULES.flatMap((rule) => orderFault(chain, line, rule)),
    ...NEED_RULES.flatMap((rule) => needFault(chain, line, rule)),
  ])
  return toldOnce(faults)
}

function has(chain: Chain, at: number, trait: Trait): boolean {
  return traitsOf(placed(chain, at).part).includes(trait)
}

function orderFault(chain: Chain, line: readonly number[], rule: OrderRule): readonly Refusal[] {
  if (entersByAirPorts(chain, line)) return []
  const before = line.findIndex((at) => has(chain, at, rule.before))
  if (before < 0) return []
  const after = line.slice(before + 1).find((at) => has(chain, at, rule.after))
  const first = line[before]
  if (after === undefined || first === undefined) return []
  const values = {
    before: placed(chain, first).part.label,
    after: placed(chain, after).part.label,
  }
  return [{ code: rule.code, values, part: after }]
}

function needFault(chain: Chain, line: readonly number[], rule: NeedRule): readonly Refusal[] {
  const found = line.findIndex((at) => has(chain, at, rule.part))
  const at = line[found]
  if (at === undefined) return []
  const side = rule.side === 'after' ? line.slice(found + 1) : line.slice(0, found)
  if (side.some((other) => has(chain, other, rule.needs))) return []
  return [{ code: rule.code, values: { part: placed(chain, at).part.label }, part: at }]
}
