// A cylinder card read with the set-up of Bedside: what that set-up says of its draw comes along. Leaves out fields and looks, which the browser tests.
import { describe, expect, it } from 'vitest'
import { DEMO_SHELF } from '../../kit/demo-shelf/demo-shelf.ts'
import type { Case, SetUpOnNow } from '../../patient/case.ts'
import { setUpOfOnNow } from '../../planning/on-now.ts'
import { gasDrawn } from '../../supply/gas-drawn.ts'
import type { BedsideDraw } from './bedside-draw.ts'
import { EXAMPLE_CYLINDER, readCylinder } from './cylinder-form.ts'

const VENTILATOR: SetUpOnNow = {
  family: 'nasal-high-flow',
  sourceKind: 'ventilator',
  flowLpm: 40,
  setO2Fraction: 0.6,
}
const SEA_KPA = 101.325

function bedsideWith(setUp: SetUpOnNow): BedsideDraw {
  const whole = setUpOfOnNow(setUp, DEMO_SHELF, { ageYears: 60 })
  return {
    kind: 'drawn',
    about: {} as Case, // Safe: the card reads the draw alone.
    setUp,
    drawn: gasDrawn({ setUp: whole, barometricKpa: SEA_KPA }),
    barometricKpa: SEA_KPA,
    isExample: false,
  }
}

describe('a cylinder card', () => {
  it('says of a ventilator at Bedside that its bias flow is not in the draw, and of a typed flow nothing', () => {
    const codesFor = (draw: string): readonly string[] => {
      const read = readCylinder(
        { ...EXAMPLE_CYLINDER, draw },
        {
          prefix: 'cylinder-0',
          now: new Date(2026, 10, 25, 13, 50),
          bedside: bedsideWith(VENTILATOR),
          siteAltitudeM: undefined,
        },
      )
      return read.ok ? read.value.drawnRemarks.map(({ code }) => code) : ['refused']
    }
    expect(codesFor('bedside')).toContain('BIAS_FLOW_UNKNOWN')
    expect(codesFor('meter')).toEqual([])
  })
})
