// Ten miswired chains: look, say where the fault is, then see it with its reason and mend. Leaves out keeping a score.
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { checkChain } from '../../joining/check-chain.ts'
import type { ChainCheck } from '../../joining/check-chain.ts'
import { WRONG_ON_PURPOSE } from '../../joining/wrong-on-purpose.ts'
import type { WrongChain } from '../../joining/wrong-on-purpose.ts'
import { chainSvg } from '../../pictures/chain-picture.ts'
import { CHAIN_PAGE, practiceNumberText } from '../../words/chain-page-text.ts'
import { mendText, refusalText } from '../../words/joining-refusals.ts'
import { CHAIN_WORDS, partText } from '../../words/joining-text.ts'
import { ChoiceField } from '../parts/choice-field.tsx'
import { Picture } from '../parts/picture.tsx'

export function PracticePart() {
  const [at, setAt] = useState(0)
  const [guess, setGuess] = useState('')
  const [isShown, setShown] = useState(false)
  const wrong = WRONG_ON_PURPOSE[at]
  if (wrong === undefined) return null
  const check = checkChain(wrong)
  return (
    <section className="chain-practice">
      <p>{CHAIN_PAGE.practiceLead()}</p>
      <h2>{practiceNumberText(at + 1, WRONG_ON_PURPOSE.length)}</h2>
      <Picture
        draw={(widthPx) =>
          chainSvg({ chain: wrong.chain, check, showsFaults: isShown, widthPx, id: wrong.id })
        }
      />
      <div className="chain-judge">
        <ChoiceField
          field="chain-guess"
          label={CHAIN_PAGE.where()}
          value={guess}
          empty={CHAIN_PAGE.choose()}
          onChoose={setGuess}
          choices={wrong.chain.parts.map((one, i) => ({
            value: String(i),
            text: `${i + 1}. ${partText(one)}`,
          }))}
        />
        <Button className="button" onPress={() => setShown(true)}>
          {CHAIN_PAGE.reveal()}
        </Button>
        <Button
          className="button"
          onPress={() => {
            setAt((at + 1) % WRONG_ON_PURPOSE.length)
            setGuess('')
            setShown(false)
          }}
        >
          {CHAIN_PAGE.next()}
        </Button>
      </div>
      <div aria-live="polite">
        {isShown ? <Reason wrong={wrong} check={check} guess={guess} /> : null}
      </div>
    </section>
  )
}

function Reason(props: {
  readonly wrong: WrongChain
  readonly check: ChainCheck
  readonly guess: string
}) {
  const { wrong, check, guess } = props
  const places = placesOf(wrong, check)
  const verdict = places.includes(Number(guess)) ? CHAIN_PAGE.found() : CHAIN_PAGE.elsewhere()
  return (
    <>
      {guess === '' ? null : <p className="chain-verdict">{verdict}</p>}
      <ul className="lines">
        {check.refusals.map((refusal) => (
          <li key={refusal.code}>
            {refusalText(refusal)}
            <span className="chain-mend">
              {CHAIN_WORDS.mend}: {mendText(refusal)}
            </span>
          </li>
        ))}
      </ul>
    </>
  )
}

/** Where a fault can be seen: its part, both parts of its join, or, where it is of the whole chain, any part. */
function placesOf({ chain }: WrongChain, { refusals }: ChainCheck): readonly number[] {
  return refusals.flatMap(({ part, join }) => {
    const at = join === undefined ? undefined : chain.joins[join]
    if (at !== undefined) return [at.from, at.to]
    return part === undefined ? chain.parts.map((_, i) => i) : [part]
  })
}
