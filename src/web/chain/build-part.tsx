// Picks interface, source and humidifier and shows the chain, what to borrow, or why not. Leaves out the practice.
import type { Remote } from 'comlink'
import { useMemo, useState } from 'react'
import type { ChainAnswer, SolveQuestion } from '../../joining/solve-chains.ts'
import type { Shelf } from '../../kit/shelf.ts'
import { barometricPressureKpa } from '../../physics/atmosphere.ts'
import { chainSvg } from '../../pictures/chain-picture.ts'
import { CHAIN_PAGE, chainResultText } from '../../words/chain-page-text.ts'
import { mendText, refusalText } from '../../words/joining-refusals.ts'
import {
  CHAIN_WORDS,
  chainRemarkText,
  missingPartText,
  partText,
} from '../../words/joining-text.ts'
import { problemLineText } from '../../words/web-form-text.ts'
import { BrokeOff } from '../parts/broke-off.tsx'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'
import { Picture } from '../parts/picture.tsx'
import { useShelf } from '../shelf/shelf-store.ts'
import type { ChainApi, SolvedChain } from '../worker/chain-api.ts'
import { useChainAnswer } from '../worker/use-chain-answer.ts'
import { BuildForm } from './build-form.tsx'
import { pickedFrom } from './chain-choice.ts'
import type { Picked } from './chain-choice.ts'
import { keepChoice, keptChoice } from './chain-store.ts'

export function BuildPart() {
  const { shelf } = useShelf()
  const [choice, setChoice] = useState(() => keptChoice(localStorage))
  const picked = useMemo(() => pickedFrom(shelf, choice), [shelf, choice])
  if (picked === null) return null
  return (
    <div className="chain-build">
      <BuildForm
        shelf={shelf}
        picked={picked}
        onChoose={(chosen) => {
          setChoice(chosen)
          keepChoice(localStorage, chosen)
        }}
      />
      <Answer shelf={shelf} picked={picked} />
    </div>
  )
}

function Answer({ shelf, picked }: { readonly shelf: Shelf; readonly picked: Picked }) {
  const question = useMemo(() => questionOf(shelf, picked), [shelf, picked])
  const waited = useChainAnswer({ slot: 'chain', question, ask })
  switch (waited.kind) {
    case 'failed':
      return <BrokeOff said={waited.failure} onRetry={waited.retry} />
    case 'refused':
      return <p role="alert">{problemLineText(waited.problem)}</p>
    case 'waiting':
      return <output>{CHAIN_PAGE.working()}</output>
    case 'answered':
      return <Solved shelf={shelf} solved={waited.value} isStale={waited.isStale} />
  }
}

const ask = async (core: Remote<ChainApi>, question: SolveQuestion) => await core.solve(question)

function questionOf(shelf: Shelf, { wanted, patient, choice }: Picked): SolveQuestion {
  return {
    shelf,
    wanted,
    patient,
    barometricKpa: barometricPressureKpa(shelf.altitudeM ?? 0),
    ...(choice.wardId === '' ? {} : { wardId: choice.wardId }),
  }
}

function Solved(props: {
  readonly shelf: Shelf
  readonly solved: SolvedChain
  readonly isStale: boolean
}) {
  const { shelf, solved, isStale } = props
  const { answer } = solved
  const others = answer.kind === 'chains' ? answer.alternatives.length : 0
  return (
    <section className="chain-answer" aria-live="polite" aria-busy={isStale}>
      <h2>{isStale ? CHAIN_PAGE.workingStale() : chainResultText(answer.kind, others)}</h2>
      <div className="chain-solved" data-stale={isStale}>
        <Reasons answer={answer} shelf={shelf} />
        <Picture draw={(widthPx) => drawn(solved, widthPx)} />
        <Details answer={answer} />
      </div>
    </section>
  )
}

/** What is missing or wrong stands above the picture. */
function Reasons({ answer, shelf }: { readonly answer: ChainAnswer; readonly shelf: Shelf }) {
  if (answer.kind === 'missing')
    return <Lines lines={answer.missing.map((one) => missingPartText(one, shelf.wards))} />
  if (answer.kind !== 'refused') return null
  return (
    <ul className="lines">
      {answer.refusals.map((refusal) => (
        <li key={refusal.code}>
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
