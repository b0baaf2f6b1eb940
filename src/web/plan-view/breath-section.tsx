// The breath ribbon of the chosen set-up, beside what is on now if asked. Leaves out the numbers of the plan.
import { useCallback, useState } from 'react'
import type { Case } from '../../patient/case.ts'
import type { Plan, RankedSetUp } from '../../planning/plan-types.ts'
import { compareRibbonsSvg, ribbonSvg, ribbonText } from '../../pictures/breath-ribbon.ts'
import type { Ribbon } from '../../pictures/ribbon-shape.ts'
import { setUpHeadingText } from '../../words/web-answer-text.ts'
import { PAGE_WORDS, RIBBON_SECTION } from '../../words/web-page-text.ts'
import { CheckField } from '../parts/check-field.tsx'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'
import { Picture } from '../parts/picture.tsx'
import { useBreath } from '../worker/use-breath.ts'

export interface BreathSectionProps {
  readonly about: Case
  readonly plan: Plan
  readonly chosen: RankedSetUp
}

const ID = 'breath-ribbon'

export function BreathSection({ about, plan, chosen }: BreathSectionProps) {
  const [isBeside, setBeside] = useState(false)
  const { onNow } = plan
  const ribbon = useRibbon(about, chosen)
  const before = useRibbon(about, isBeside ? onNow : null)
  return (
    <section className="section" aria-labelledby="breath-heading">
      <h2 id="breath-heading">{RIBBON_SECTION.heading}</h2>
      <p className="section-help">{RIBBON_SECTION.help}</p>
      {onNow === null ? null : (
        <CheckField
          field="beside"
          label={RIBBON_SECTION.beside}
          isChecked={isBeside}
          onCheck={setBeside}
        />
      )}
      <Drawn ribbon={ribbon} before={isBeside && onNow !== null ? before : undefined} />
    </section>
  )
}

type MaybeRibbon = Ribbon | 'failed' | null

function useRibbon(about: Case, ranked: RankedSetUp | null): MaybeRibbon {
  const breath = useBreath(about, ranked?.setUp ?? null)
  if (ranked === null || breath === null) return null
  if (breath === 'failed') return breath
  return {
    breath,
    printedO2Fraction: ranked.printedO2Fraction,
    isChecked: ranked.isChecked,
    title: setUpHeadingText(ranked),
  }
}

function Drawn(props: { readonly ribbon: MaybeRibbon; readonly before: MaybeRibbon | undefined }) {
  const { ribbon, before } = props
  const draw = useCallback(
    (widthPx: number) => {
      if (!isThere(ribbon)) return ''
      return isThere(before)
        ? compareRibbonsSvg({ before, after: ribbon, widthPx, id: ID })
        : ribbonSvg({ ...ribbon, widthPx, id: ID })
    },
    [ribbon, before],
  )
  if (ribbon === 'failed' || before === 'failed')
    return <p role="alert">{PAGE_WORDS.failedHeading}</p>
  if (ribbon === null || before === null) {
    return <p className="picture-waiting">{RIBBON_SECTION.working}</p>
  }
  return (
    <>
      <Picture draw={draw} />
      <Fold heading={RIBBON_SECTION.inWords}>
        <Lines lines={ribbonText(ribbon)} />
      </Fold>
    </>
  )
}

function isThere(ribbon: MaybeRibbon | undefined): ribbon is Ribbon {
  return ribbon !== null && ribbon !== undefined && ribbon !== 'failed'
}
