// The line about water on Bedside: with and without a requirement, short, and at flush. Leaves out the amounts, which the humidity tests judge.
import { describe, expect, it } from 'vitest'
import { DEMO_SHELF } from '../kit/demo-shelf/demo-shelf.ts'
import { candidateSetUps } from '../kit/build-set-ups.ts'
import type { SetUp } from '../kit/set-up.ts'
import { readCase } from '../patient/read-case.ts'
import { shelfHumidity } from '../planning/shelf-humidity.ts'
import { humiditySummaryText } from './web-humidity-text.ts'

function setUpWhere(fits: (setUp: SetUp) => boolean): SetUp {
  const found = candidateSetUps(DEMO_SHELF).find(({ setUp }) => fits(setUp))
  if (found === undefined) throw new Error('the demo shelf builds no such set-up')
  return found.setUp
}

function lineOf(setUp: SetUp, airway: object): string {
  const read = readCase({
    version: 1,
    patient: { ageYears: 60, weightKg: 70, airway, retentionRisk: 'none' },
    breathing: { state: 'rest' },
    goal: { kind: 'saturation', lowPercent: 92, highPercent: 96 },
  })
  if (!read.ok) throw new Error(JSON.stringify(read.problems))
  return plain(humiditySummaryText(shelfHumidity({ case: read.case, setUp, shelf: DEMO_SHELF })))
}

/** With plain spaces for those that do not break. */
const plain = (text: string): string => text.replaceAll(/\s/g, ' ')

const NOSE = { route: 'natural', nose: 'open' }
const TUBE = { route: 'tracheostomy', nose: 'open', tube: { cuff: 'up' } }

describe('the line about water', () => {
  it('says what comes, what is asked and the shortfall for dry gas into a tube', () => {
    const dry = setUpWhere(
      ({ family, humidification, flow }) =>
        family === 'nasal-cannula' && humidification === 'none' && flow.kind === 'scale',
    )
    expect(lineOf(dry, TUBE)).toMatch(
      /^Water at the airway [^;]*mg\/L, of 33 mg\/L required; too dry: [^;]*missing\.$/,
    )
  })

  it('gives no verdict on a jet nebuliser, whose water nobody measured, and says so', () => {
    const mist = setUpWhere(
      ({ family, source }) => family === 'tracheostomy-mask' && source.kind === 'jet-nebuliser',
    )
    expect(lineOf(mist, TUBE)).toMatch(
      /^Water [^;]*of 33 mg\/L required; not measured: no measurement judges the water of a jet nebuliser; vapour alone [^;]* below that figure\.$/,
    )
  })

  it('asks for nothing where the nose does the work', () => {
    const cannula = setUpWhere(
      ({ family, humidification, flow }) =>
        family === 'nasal-cannula' &&
        humidification === 'none' &&
        flow.kind === 'scale' &&
        flow.flowLpm === 2,
    )
    expect(lineOf(cannula, NOSE)).toMatch(/^Water at the airway .*; none required\.$/)
  })

  it('says that nobody knows the flow at flush', () => {
    const flushed = setUpWhere(({ flow }) => flow.kind === 'flush')
    expect(lineOf(flushed, NOSE)).toMatch(/^Opened to flush the flow is not known.*\.$/)
  })
})
