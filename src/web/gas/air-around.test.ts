// Where the air pressure of gas is from: typed before Bedside before settings before sea level, against the law of the atmosphere. Leaves out the fields.
import { describe, expect, it } from 'vitest'
import { DEMO_SHELF } from '../../kit/demo-shelf/demo-shelf.ts'
import { airAround } from './air-around.ts'
import { bedsideDraw, type BedsideDraw } from './bedside-draw.ts'

const EMPTY = { getItem: () => null }

/** The invented example on now, at an altitude of its own or none. */
function bedsideAt(altitudeM: number | undefined): BedsideDraw {
  return bedsideDraw(EMPTY, { shelf: DEMO_SHELF, siteAltitudeM: altitudeM })
}

const around = (rest: Partial<Parameters<typeof airAround>[0]>) =>
  airAround({
    typedAltitudeM: undefined,
    isBedsideTaken: false,
    bedside: { kind: 'nothing' },
    siteAltitudeM: undefined,
    ...rest,
  })

describe('air around', () => {
  it('is that of the altitude typed, whatever else is known: 2000 m have 604 mmHg', () => {
    const known = { isBedsideTaken: true, bedside: bedsideAt(300), siteAltitudeM: 700 }
    const typed = around({ typedAltitudeM: 2000, ...known })
    expect(typed.from).toBe('typed')
    // 604.4 mmHg, West1996 by hand.
    expect(typed.barometricKpa).toBeCloseTo(80.59, 1)
  })

  it('mends by an altitude in the settings where nothing is typed, else is of sea level and says so', () => {
    // 678.6 mmHg, West1996 by hand.
    expect(around({ siteAltitudeM: 1000 }).barometricKpa).toBeCloseTo(90.47, 1)
    expect(around({ siteAltitudeM: 700 }).from).toBe('settings')
    expect(around({})).toEqual({ barometricKpa: 101.325, from: 'nowhere' })
  })

  it('is that of Bedside only where its set-up is taken', () => {
    const bedside = bedsideAt(700)
    expect(bedside.kind).toBe('drawn')
    expect(around({ isBedsideTaken: true, bedside }).from).toBe('bedside')
    expect(around({ isBedsideTaken: false, bedside }).from).toBe('nowhere')
  })
})
