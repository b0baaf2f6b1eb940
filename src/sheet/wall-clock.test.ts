// Wall times read strictly and counted on, against the language's own calendar. Leaves out zones.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import { laterBy, minutesBetween, wallText, wallTime } from './wall-clock.ts'

const utcText = (ms: number): string => new Date(ms).toISOString().slice(0, 16)

describe('wall clock', () => {
  it('counts minutes as the calendar does', () => {
    const start = fc.integer({ min: 0, max: 4_102_444_800 })
    fc.assert(
      fc.property(start, fc.integer({ min: 0, max: 2_000_000 }), (seconds, minutes) => {
        const from = wallTime(utcText(seconds * 1000))
        const later = laterBy(from, minutes)
        expect(wallText(later)).toBe(utcText((seconds + minutes * 60) * 1000))
        expect(minutesBetween(from, later)).toBe(minutes)
      }),
      seeded(500),
    )
  })

  it('goes over midnight, month, leap day and year', () => {
    expect(wallText(laterBy(wallTime('2027-12-31T23:30'), 60))).toBe('2028-01-01T00:30')
    expect(wallText(laterBy(wallTime('2028-02-28T23:59'), 1))).toBe('2028-02-29T00:00')
    expect(wallText(laterBy(wallTime('2100-02-28T23:59'), 1))).toBe('2100-03-01T00:00')
  })

  it.each([
    '',
    '2026-11-25',
    '2026-11-25 13:05',
    '2026-02-30T10:00',
    '2026-13-01T10:00',
    '2026-11-25T24:00',
    '2026-11-25T10:60',
    '2026-11-25T13:05Z',
    '1890-01-01T00:00',
  ])('refuses %j', (text) => {
    expect(() => wallTime(text, 'at')).toThrow(
      expect.objectContaining({ code: 'UNREADABLE_DATE', path: 'at' }),
    )
  })
})
