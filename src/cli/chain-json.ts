// The answer of `oxwright chain` as JSON (schema/chain.schema.json): codes and numbers, and each code in words beside it. Leaves out shelf rows.
import type { HumidityAnswer } from '../humidity/humidity-of-path.ts'
import type { Chain } from '../joining/chain.ts'
import { endsOf } from '../joining/check-joins.ts'
import { matingRule } from '../joining/mating-rules.ts'
import type { Refusal } from '../joining/refusal.ts'
import type { ChainAnswer, CheckedChain, MissingPart } from '../joining/solve-chains.ts'
import { mendText, refusalText } from '../words/joining-refusals.ts'
import { chainRemarkText } from '../words/joining-text.ts'
import { toldHumidity } from './humidity-json.ts'
import { jsonText } from './json-output.ts'
import { toldHead } from './json-parts.ts'
import type { PlanWords } from './plan-question.ts'

export const CHAIN_JSON_FORMAT = 'oxwright-chain-1'

export function chainJson(options: {
  readonly given: PlanWords
  readonly version: string
  readonly setUpId: string
  readonly answer: ChainAnswer
  readonly water: HumidityAnswer | null
}): string {
  const { water } = options
  return jsonText({
    format: CHAIN_JSON_FORMAT,
    ...toldHead(options),
    setUpId: options.setUpId,
    answer: toldAnswer(options.answer),
    water: water === null ? null : toldHumidity(water),
  })
}

function toldAnswer(answer: ChainAnswer): object {
  switch (answer.kind) {
    case 'chains':
      return {
        kind: answer.kind,
        best: toldChecked(answer.best),
        alternatives: answer.alternatives.map(toldChecked),
      }
    case 'missing':
      return {
        kind: answer.kind,
        missing: answer.missing.map(toldMissing),
        withThem: toldChecked(answer.withThem),
        orElse: answer.orElse.map((set) => set.map(toldMissing)),
      }
    case 'refused':
      return {
        kind: answer.kind,
        refusals: answer.refusals.map(toldRefusal),
        nearest: answer.nearest === null ? null : toldChain(answer.nearest),
      }
  }
}

function toldRefusal(refusal: Refusal): object {
  return { ...refusal, text: refusalText(refusal), mend: mendText(refusal) }
}

function toldMissing({ part, count, wardIds }: MissingPart): object {
  return { id: part.id, kind: part.kind, label: part.label, count, wardIds }
}

function toldChecked({ chain, check }: CheckedChain): object {
  return {
    ...toldChain(chain),
    waysOut: check.waysOut,
    flows: check.flows,
    pressures: check.pressures,
    leakPoints: check.leakPoints,
    remarks: check.remarks.map((remark) => ({ ...remark, text: chainRemarkText(remark) })),
  }
}

function toldChain(chain: Chain): object {
  return {
    parts: chain.parts.map(({ part, setting }) => ({
      id: part.id,
      kind: part.kind,
      label: part.label,
      setting,
    })),
    joins: chain.joins.map((join) => {
      const { from, to } = endsOf(chain, join)
      const rule = from === null || to === null ? undefined : matingRule(from, to)
      return { ...join, ends: { from, to }, heldBy: rule?.heldBy ?? null }
    }),
  }
}
