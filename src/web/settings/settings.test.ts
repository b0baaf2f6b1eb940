// Settings read back from what was kept, told to every listener, and an altitude judged like that of a case.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../../test/support/seed.ts'
import { CHOOSABLE_UNITS } from '../../units/choosable.ts'
import { createSettingsStore } from './settings-store.ts'
import type { SettingsPlace } from './settings-store.ts'
import { LOOKS, MOTIONS, readSettings, USUAL_SETTINGS } from './settings.ts'
import type { Settings } from './settings.ts'
import { siteAltitude } from './site-altitude.ts'

const settings: fc.Arbitrary<Settings> = fc.record({
  units: fc.record({
    pressure: fc.constantFrom(...CHOOSABLE_UNITS.pressure),
    height: fc.constantFrom(...CHOOSABLE_UNITS.height),
    weight: fc.constantFrom(...CHOOSABLE_UNITS.weight),
    gasPressure: fc.constantFrom(...CHOOSABLE_UNITS.gasPressure),
    gasVolume: fc.constantFrom(...CHOOSABLE_UNITS.gasVolume),
  }),
  altitudeTyped: fc.string({ maxLength: 20 }),
  language: fc.constantFrom('en', 'de', 'pt-BR'),
  look: fc.constantFrom(...LOOKS),
  motion: fc.constantFrom(...MOTIONS),
  isTwoMetre: fc.boolean(),
})

/** A place shared by the stores of several tabs: what one writes, the others hear. */
function sharedPlace(kept: string | null = null) {
  let text = kept
  const tabs: ((text: string | null) => void)[] = []
  const tab = (): SettingsPlace => {
    const own = tabs.length
    tabs.push(() => undefined)
    return {
      read: () => text,
      write: (next) => {
        text = next
        tabs.forEach((hear, i) => (i === own ? undefined : hear(next)))
      },
      onForeignChange: (listener) => {
        tabs[own] = listener
      },
    }
  }
  return { tab, text: () => text }
}

describe('kept settings', () => {
  it('come back as they were', () => {
    fc.assert(
      fc.property(settings, (one) => {
        expect(readSettings(JSON.stringify(one))).toEqual({ settings: one, faults: [] })
      }),
      seeded(200),
    )
  })

  it('are the usual ones where nothing is kept or a setting is new', () => {
    expect(readSettings(null)).toEqual({ settings: USUAL_SETTINGS, faults: [] })
    expect(readSettings('{"look":"dark"}')).toEqual({
      settings: { ...USUAL_SETTINGS, look: 'dark' },
      faults: [],
    })
  })

  it.each(['', '{', '[]', '3', 'null', '"dark"'])('are the usual ones and said for %j', (kept) => {
    expect(readSettings(kept)).toEqual({ settings: USUAL_SETTINGS, faults: ['all'] })
  })

  it('lose only what cannot be read, by name', () => {
    const kept = {
      units: { pressure: 'mmHg', weight: 'stone', height: 3 },
      altitudeTyped: 1180,
      language: '<b>',
      look: 'loud',
      motion: 'still',
      isTwoMetre: 'yes',
    }
    const read = readSettings(JSON.stringify(kept))
    expect(read.settings).toEqual({
      ...USUAL_SETTINGS,
      units: { ...USUAL_SETTINGS.units, pressure: 'mmHg' },
      motion: 'still',
    })
    expect(read.faults.toSorted()).toEqual(
      ['altitudeTyped', 'height', 'isTwoMetre', 'language', 'look', 'weight'].toSorted(),
    )
    expect(readSettings('{"units":"metric"}').faults).toEqual(['units'])
  })

  it('never throw, whatever is kept', () => {
    fc.assert(
      fc.property(fc.json(), (kept) => {
        const { settings: read } = readSettings(kept)
        expect(readSettings(JSON.stringify(read)).faults).toEqual([])
      }),
      seeded(300),
    )
  })
})

describe('store of settings', () => {
  it('keeps a change and tells its listeners and other tabs', () => {
    const place = sharedPlace()
    const here = createSettingsStore(place.tab())
    const there = createSettingsStore(place.tab())
    let heardHere = 0
    let heardThere = 0
    here.listen(() => (heardHere += 1))
    const deafen = there.listen(() => (heardThere += 1))
    here.change({ look: 'dark' })
    expect(there.now().settings.look).toBe('dark')
    deafen()
    there.change({ altitudeTyped: '1180' })
    expect(here.now().settings).toEqual({ ...USUAL_SETTINGS, look: 'dark', altitudeTyped: '1180' })
    expect([heardHere, heardThere]).toEqual([2, 1])
    expect(readSettings(place.text()).settings).toEqual(here.now().settings)
  })

  it('gives the same object until something changes', () => {
    const store = createSettingsStore(sharedPlace('{').tab())
    const first = store.now()
    expect(store.now()).toBe(first)
    expect(first.faults).toEqual(['all'])
    store.change({ look: 'light' })
    expect(store.now().faults).toEqual([])
  })

  it('works for as long as the page lasts where nothing may be kept', () => {
    const blocked = (): never => {
      throw new Error('storage is blocked')
    }
    const store = createSettingsStore({
      read: blocked,
      write: blocked,
      onForeignChange: () => undefined,
    })
    store.change({ motion: 'still' })
    expect(store.now().settings.motion).toBe('still')
  })
})

describe('altitude of the site', () => {
  it('is read strictly and judged by the rules of a case', () => {
    expect(siteAltitude('')).toEqual({ altitudeM: undefined, problems: [] })
    expect(siteAltitude(' 1180 ')).toEqual({ altitudeM: 1180, problems: [] })
    expect(siteAltitude('−12,5')).toEqual({ altitudeM: -12.5, problems: [] })
    expect(siteAltitude('0').altitudeM).toBe(0)
  })

  it('is refused, never guessed', () => {
    expect(siteAltitude('1,180')).toMatchObject({
      altitudeM: undefined,
      problems: [{ code: 'NOT_A_NUMBER', path: 'site.altitudeM', suggestion: 1180 }],
    })
    expect(siteAltitude('1e3').problems[0]?.code).toBe('NOT_A_NUMBER')
    expect(siteAltitude('9000').altitudeM).toBeUndefined()
    expect(siteAltitude('9000').problems).toHaveLength(1)
  })
})
