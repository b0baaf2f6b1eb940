// A chain as lines for a terminal: parts in order with each join and its ends, ways out, pressure, remarks; what is missing; why not. Leaves out its words.
import type { HumidityAnswer } from '../humidity/humidity-of-path.ts'
import type { ChainAnswer, CheckedChain } from '../joining/solve-chains.ts'
import { placed } from '../joining/chain.ts'
import type { Shelf } from '../kit/shelf.ts'
import { humidityFlushText } from '../words/humidity-text.ts'
import { mendText, refusalText } from '../words/joining-refusals.ts'
import { jointSizeLines, leakPointLines, pressureLines } from '../words/chain-facts-text.ts'
import {
  CHAIN_WORDS,
  chainRemarkText,
  joinText,
  missingPartText,
  partText,
} from '../words/joining-text.ts'
import { waterLines } from './humidity-lines.ts'
import { bulleted, indented, section } from './table.ts'

export interface ChainToPrint {
  readonly answer: ChainAnswer
  /** Null where no chain is found, and at flush, whose flow nobody knows. */
  readonly water: HumidityAnswer | null
  readonly shelf: Shelf
  /** The set-up in words. */
  readonly title: string
}

export function chainLines(print: ChainToPrint): readonly string[] {
  const { answer, water } = print
  if (answer.kind === 'refused') return answerLines(print)
  const said = water === null ? bulleted([humidityFlushText()]) : waterLines(water)
  return [...answerLines(print), ...section(CHAIN_WORDS.water, said)]
}

function answerLines({ answer, shelf, title }: ChainToPrint): readonly string[] {
  const head = indented(title, 0)
  switch (answer.kind) {
    case 'chains':
      return [
        ...head,
        ...bestLines(answer.best),
        ...section(CHAIN_WORDS.alternatives, bulleted(answer.alternatives.map(shortText))),
      ]
    case 'missing':
      return [
        ...head,
        ...section(
          CHAIN_WORDS.missing,
          bulleted(answer.missing.map((one) => missingPartText(one, shelf.wards))),
        ),
        ...section(
          CHAIN_WORDS.orElse,
          bulleted(
            answer.orElse.map((set) =>
              set.map((one) => missingPartText(one, shelf.wards)).join('; '),
            ),
          ),
        ),
        ...section(CHAIN_WORDS.withThem, bulleted([shortText(answer.withThem)])),
      ]
    case 'refused':
      return [
        ...head,
        ...section(
          CHAIN_WORDS.refused,
          answer.refusals.flatMap((refusal) => [
            ...bulleted([refusalText(refusal)]),
            ...indented(`${CHAIN_WORDS.mend}: ${mendText(refusal)}`, MEND_INDENT),
          ]),
        ),
      ]
  }
}

const MEND_INDENT = 6

function bestLines(best: CheckedChain): readonly string[] {
  const { chain, check } = best
  return [
    ...section(CHAIN_WORDS.chain, partLines(best)),
    ...section(
      CHAIN_WORDS.waysOut,
      bulleted(check.waysOut.map(({ part }) => partText(placed(chain, part)))),
    ),
    ...section(CHAIN_WORDS.pressure, bulleted(pressureLines(best))),
    ...section(CHAIN_WORDS.leakPoints, bulleted(leakPointLines(best))),
    ...section(CHAIN_WORDS.sizes, bulleted(jointSizeLines(chain))),
    ...section(CHAIN_WORDS.remarks, bulleted(check.remarks.map(chainRemarkText))),
  ]
}

/** Each part, and under it how it joins the next. */
function partLines(best: CheckedChain): readonly string[] {
  const { chain } = best
  return chain.parts.flatMap((one, at) => {
    const join = chain.joins.findIndex(({ from }) => from === at)
    const next = chain.joins[join]
    const target = next === undefined || next.to === at + 1 ? '' : ` → ${placedText(best, next.to)}`
    return [
      ...indented(`${at + 1}. ${partText(one)}`),
      ...(join < 0 ? [] : indented(`${joinText(chain, join)}${target}`, MEND_INDENT)),
    ]
  })
}

function placedText({ chain }: CheckedChain, at: number): string {
  return `${at + 1}. ${partText(placed(chain, at))}`
}

function shortText({ chain }: CheckedChain): string {
  return chain.parts.map(partText).join(' → ')
}
