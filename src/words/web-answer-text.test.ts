// The page's answer in words, on real plans of each kind of goal. Leaves out layout.
import { describe, expect, it } from 'vitest'
import { parsedExample } from '../../test/support/examples.ts'
import { DEMO_SHELF } from '../kit/demo-shelf/demo-shelf.ts'
import { readCase } from '../patient/read-case.ts'
import { makePlan } from '../planning/plan.ts'
import {
  announcedText,
  caseLineText,
  chanceSplitText,
  exampleText,
  feedText,
  fractionSpreadText,
  oxygenText,
  printedBesideText,
  rankText,
  saturationText,
  setUpHeadingText,
  startText,
  whyText,
} from './web-answer-text.ts'

/** Enough to speak, few enough to be quick. */
const DRAWS = 64

function planOf(name: string) {
  const read = readCase(parsedExample(name))
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  const plan = makePlan({ case: read.case, shelf: DEMO_SHELF, wardId: 'plover', draws: DRAWS })
  const first = plan.ranked[0]
  if (first === undefined) throw new Error('nothing ranked')
  return { about: read.case, plan, first }
}

describe('web answer', () => {
  it.each(['nasal-cannula', 'carbon-monoxide', 'comfort', 'fraction-goal', 'no-reading'])(
    'says every row of %s without a gap',
    (name) => {
      const { plan } = planOf(name)
      const said = plan.ranked.flatMap((ranked) => [
        rankText(ranked, plan),
        setUpHeadingText(ranked),
        feedText(ranked),
        fractionSpreadText(ranked),
        printedBesideText(ranked),
        whyText(ranked, plan),
        saturationText(ranked, plan.goal),
        chanceSplitText(ranked),
        oxygenText(ranked),
        startText(ranked),
      ])
      expect(said.length).toBeGreaterThan(0)
      expect(said.filter((line) => line === '' || /undefined|NaN|null/.test(line))).toEqual([])
    },
  )

  it('names the first as first and says why in one sentence', () => {
    const { plan, first } = planOf('nasal-cannula')
    expect(rankText(first, plan)).toMatch(/^First of \d+ set-ups for saturation 94–98.%/)
    expect(whyText(first, plan)).toMatch(/^The best chance of staying in the goal: .*\.$/)
    const second = plan.ranked[1]
    expect(second === undefined ? '' : whyText(second, plan)).toMatch(/^Not first: /)
  })

  it('says that chances come from averages only where nothing was read', () => {
    const { plan, first } = planOf('no-reading')
    expect(whyText(first, plan)).toMatch(/no reading: from averages only/)
  })

  it('forecasts no saturation where the oximeter is not trusted, and none where comfort is the goal', () => {
    const poisoned = planOf('carbon-monoxide')
    expect(saturationText(poisoned.first, poisoned.plan.goal)).toBe('oximeter put aside')
    const comfort = planOf('comfort')
    expect(saturationText(comfort.first, comfort.plan.goal)).toBe('no goal here')
  })

  it('keeps a number and its unit on one line', () => {
    const { plan, first } = planOf('nasal-cannula')
    expect(announcedText(plan)).not.toMatch(/\d (%|L\/min)/)
    expect(setUpHeadingText(first)).not.toMatch(/\d L\/min/)
  })

  it('tells a case and an example in one line', () => {
    const { about } = planOf('nasal-cannula')
    expect(caseLineText(about)).toMatch(/^67 years, 62 kg, pneumonia, 24\/min, nasal cannula/)
    expect(exampleText(about)).toBe('Heron 4 · H-1042: 67 years, pneumonia, nasal cannula')
  })
})
