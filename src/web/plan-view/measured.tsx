// The published measurement nearest to the set-up in sight, and how far ours lies from it. Leaves out the other rows, which Evidence holds.
import { memo, useEffect, useMemo, useState } from 'react'
import { Link } from 'wouter'
import { nominalLpm } from '../../kit/flow-steps.ts'
import type { SetUp } from '../../kit/set-up.ts'
import { MEASURED_WORDS, measuredLines } from '../../words/web-bedside-text.ts'
import { Lines } from '../parts/lines.tsx'
import { useBench } from '../worker/bench.tsx'
import type { MeasuredBeside, MeasuredQuestion } from '../worker/measured-beside.ts'
import { useSettled } from '../pages/use-settled.ts'

export interface MeasuredProps {
  readonly setUp: SetUp
  readonly oursO2Fraction: number
}

type Got = { readonly question: string; readonly found: MeasuredBeside | null }

/** Asked only when the dials stand still, so that a drag never waits for it. */
export const Measured = memo(function Measured({ setUp, oursO2Fraction }: MeasuredProps) {
  const bench = useBench()
  const question = useSettled(useMemo(() => JSON.stringify(questionOf(setUp)), [setUp]))
  const [got, setGot] = useState<Got | null>(null)
  useEffect(() => {
    // Safe: the text was written from a question just above.
    const asked = JSON.parse(question) as MeasuredQuestion
    const ask = async (): Promise<void> => {
      const answer = await bench.ask('measured', async (core) => ({
        found: await core.measured(asked),
      }))
      if (answer !== undefined) setGot({ question, found: answer.found })
    }
    ask().catch(() => setGot(null))
  }, [bench, question])
  const found = got !== null && got.question === question ? got.found : undefined
  return (
    <section className="measured" aria-labelledby="measured-heading">
      <h4 id="measured-heading">{MEASURED_WORDS.heading}</h4>
      {found === undefined ? <p>{MEASURED_WORDS.working}</p> : null}
      {found === null ? <p>{MEASURED_WORDS.none}</p> : null}
      {found === undefined || found === null ? null : (
        <>
          <Lines lines={measuredLines(found, oursO2Fraction)} />
          <p>
            <Link className="row-link" href={`/evidence#${found.rowId}`}>
              {MEASURED_WORDS.toRow}
            </Link>{' '}
            <span className="citation" lang="en">
              {found.citation}
            </span>
          </p>
        </>
      )}
    </section>
  )
})

function questionOf(setUp: SetUp): MeasuredQuestion {
  return {
    family: setUp.family,
    flowLpm: nominalLpm(setUp.source, setUp.flow) ?? 0,
    setO2Fraction: setUp.setO2Fraction,
  }
}
