// The chain that was found, what is missing and who has it, or why not; and its water. Leaves out looking for it.
import { Fragment } from 'react'
import type { ReactNode } from 'react'
import type { ChainAnswer, CheckedChain } from '../../joining/solve-chains.ts'
import type { HumidityAnswer } from '../../humidity/humidity-of-path.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { chainSvg } from '../../pictures/chain-picture.ts'
import { jointSizeLines, leakPointLines, pressureLines } from '../../words/chain-facts-text.ts'
import { CHAIN_PAGE, chainResultText, waterHeadingText } from '../../words/chain-page-text.ts'
import { assumptionText, humidityFactLines } from '../../words/humidity-text.ts'
import { mendText, refusalText } from '../../words/joining-refusals.ts'
import {
  CHAIN_WORDS,
  chainRemarkText,
  missingPartText,
  partText,
} from '../../words/joining-text.ts'
import { remarkText } from '../../words/remark-text.ts'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'
import { Picture } from '../parts/picture.tsx'
import type { SolvedChain } from '../worker/chain-api.ts'

/** While another is looked for, the one before stays, told as such. */
export function ChainResult(props: {
  readonly shelf: Shelf
  readonly solved: SolvedChain
  readonly isStale: boolean
  /** What can be done with a chain that is not refused. */
  readonly door: ReactNode
}) {
  const { shelf, solved, isStale, door } = props
  const { answer, water } = solved
  const others = answer.kind === 'chains' ? answer.alternatives.length : 0
  return (
    <section className="chain-answer" aria-live="polite" aria-busy={isStale}>
      <h2>{isStale ? CHAIN_PAGE.workingStale() : chainResultText(answer.kind, others)}</h2>
      <div className="chain-solved" data-stale={isStale}>
        <Missing answer={answer} shelf={shelf} />
        <Refusals answer={answer} />
        <Picture draw={(widthPx) => drawn(solved, widthPx)} />
        {answer.kind === 'refused' ? null : door}
        <Details answer={answer} />
        {water === null ? null : <Water water={water} />}
      </div>
    </section>
  )
}

interface MissingProps {
  readonly answer: ChainAnswer
  readonly shelf: Shelf
}

/** What is missing stands above the picture, with who has it; other sets of as many parts below. */
function Missing({ answer, shelf }: MissingProps) {
  if (answer.kind !== 'missing') return null
  const setText = (set: (typeof answer)['missing']): string =>
    set.map((one) => missingPartText(one, shelf.wards)).join('; ')
  return (
    <>
      <Lines lines={answer.missing.map((one) => missingPartText(one, shelf.wards))} />
      {answer.orElse.length === 0 ? null : (
        <section>
          <h3>{CHAIN_WORDS.orElse}</h3>
          <Lines lines={answer.orElse.map(setText)} />
        </section>
      )}
    </>
  )
}

function Refusals({ answer }: { readonly answer: ChainAnswer }) {
  if (answer.kind !== 'refused') return null
  return (
    <ul className="lines">
      {answer.refusals.map((refusal) => (
        <li key={JSON.stringify(refusal)}>
          {refusalText(refusal)}
          <span className="chain-mend">
            {CHAIN_WORDS.mend}: {mendText(refusal)}
          </span>
        </li>
      ))}
    </ul>
  )
}

function drawn({ answer, nearestCheck }: SolvedChain, widthPx: number): string {
  if (answer.kind === 'chains') return chainSvg({ ...answer.best, widthPx })
  if (answer.kind === 'missing') return chainSvg({ ...answer.withThem, widthPx })
  if (answer.nearest === null || nearestCheck === null) return ''
  return chainSvg({ chain: answer.nearest, check: nearestCheck, widthPx })
}

function Details({ answer }: { readonly answer: ChainAnswer }) {
  if (answer.kind !== 'chains') return null
  const remarks = answer.best.check.remarks.map(chainRemarkText)
  return (
    <>
      {remarks.length === 0 ? null : (
        <section>
          <h3>{CHAIN_WORDS.remarks}</h3>
          <Lines lines={remarks} />
        </section>
      )}
      <Facts checked={answer.best} />
      {answer.alternatives.length === 0 ? null : (
        <Fold heading={CHAIN_WORDS.alternatives}>
          <Lines
            lines={answer.alternatives.map(({ chain }) => chain.parts.map(partText).join(' → '))}
          />
        </Fold>
      )}
    </>
  )
}

function Facts({ checked }: { readonly checked: CheckedChain }) {
  const facts = [
    { heading: CHAIN_WORDS.pressure, lines: pressureLines(checked) },
    { heading: CHAIN_WORDS.leakPoints, lines: leakPointLines(checked) },
    { heading: CHAIN_WORDS.sizes, lines: jointSizeLines(checked.chain) },
  ]
  return facts.map(({ heading, lines }) =>
    lines.length === 0 ? null : (
      <Fold key={heading} heading={heading}>
        <Lines lines={lines} />
      </Fold>
    ),
  )
}

const WEIGHTS = ['breach', 'ask', 'do', 'note'] as const

function Water({ water }: { readonly water: HumidityAnswer }) {
  return (
    <section className="chain-water">
      <h3>{CHAIN_PAGE.water()}</h3>
      <Lines lines={humidityFactLines(water)} />
      {WEIGHTS.map((weight) => {
        const rules = water.rules.filter((rule) => rule.weight === weight)
        return rules.length === 0 ? null : (
          <Fragment key={weight}>
            <h4>{waterHeadingText(weight)}</h4>
            <Lines lines={rules.map(remarkText)} />
          </Fragment>
        )
      })}
      <Fold heading={waterHeadingText('assumed')} level={4}>
        <Lines lines={water.assumptions.map(assumptionText)} />
      </Fold>
    </section>
  )
}
