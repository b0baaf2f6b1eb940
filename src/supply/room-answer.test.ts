// The course of a room and what its mean does not tell. Leaves out steady states, which cylinder.test.ts judges.
import { describe, expect, it } from 'vitest'
import { DEMO_SHELF } from '../kit/demo-shelf/demo-shelf.ts'
import { asideFlowLpm, ROOM_EXAMPLES, roomCourse } from './room-answer.ts'

const codes = (question: Parameters<typeof roomCourse>[0]): readonly string[] =>
  roomCourse(question).remarks.map(({ code }) => code)

describe('room over time', () => {
  const room = { ...ROOM_EXAMPLES['side-room'], airChangesPerHour: 1, oxygenLpm: 60, minutes: 240 }

  it('rises from air towards its steady share and passes the limit when it says so', () => {
    const { points, steadyO2Fraction, minutesToLimit } = roomCourse(room)
    expect(points[0]).toEqual({ minute: 0, o2Fraction: 0.2095 })
    points.slice(1).forEach(({ o2Fraction }, i) => {
      expect(o2Fraction).toBeGreaterThan(points[i]?.o2Fraction ?? 1)
      expect(o2Fraction).toBeLessThan(steadyO2Fraction)
    })
    const first = points.find(({ o2Fraction }) => o2Fraction > 0.235)?.minute ?? 0
    expect(Math.abs(first - (minutesToLimit ?? 0))).toBeLessThanOrEqual(4)
    expect(codes(room)).toEqual(expect.arrayContaining(['ABOVE_ENRICHED_LIMIT', 'REACHES_LIMIT']))
  })

  it('always says that it is a mean and that it is higher near the mask', () => {
    const small = { ...room, oxygenLpm: 2, airChangesPerHour: 6 }
    expect(codes(small)).toEqual(
      expect.arrayContaining(['STAYS_BELOW_LIMIT', 'ROOM_IS_A_MEAN', 'NEAR_FIELD_HIGHER']),
    )
    expect(codes({ ...room, airChangesPerHour: 0 })).toContain('NO_VENTILATION')
    expect(codes({ ...room, isExample: true })).toContain('ROOM_DEFAULTS_ASSUMED')
  })

  it('takes a mask laid aside running as a case: all that it draws', () => {
    const source = DEMO_SHELF.sources.find(({ id }) => id === 'wall-15')
    if (source === undefined) throw new Error('no source')
    const setUp = {
      family: 'simple-mask',
      size: 'adult',
      fit: 'gentle',
      source,
      flow: { kind: 'scale', flowLpm: 10 },
      setO2Fraction: null,
      humidification: 'none',
      over: null,
    } as const
    const asideLpm = asideFlowLpm({ setUp, barometricKpa: 101.325 })
    expect(asideLpm).toBeCloseTo(10, 1)
    expect(codes({ ...room, oxygenLpm: asideLpm, asideLpm })).toContain('ASIDE_RUNNING')
  })
})
