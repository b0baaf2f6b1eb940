// Sheets written into an address and read back, cut, changed, too long. Leaves out the code that a telephone reads.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { randomCase } from '../../test/support/random-case.ts'
import { seeded } from '../../test/support/seed.ts'
import { candidateSetUps } from '../kit/build-set-ups.ts'
import { DEMO_SHELF } from '../kit/demo-shelf/demo-shelf.ts'
import { HUMIDIFICATIONS } from '../kit/shelf.ts'
import type { Case } from '../patient/case.ts'
import { KEYS } from '../patient/case-fields.ts'
import { FRAGMENT_BYTES_MAX, readFragment, writeFragment } from './fragment.ts'
import type { SheetRequest } from './fragment.ts'
import { FRAGMENT_FIELDS } from './fragment-fields.ts'
import { sumOf } from './fragment-values.ts'

const IDS = candidateSetUps(DEMO_SHELF).map(({ id }) => id)

const CASE: Case = {
  version: 1,
  note: 'Mrs Example, born 1950',
  bed: 'Heron 4',
  code: 'H-1042',
  patient: {
    ageYears: 67,
    airway: { route: 'natural', nose: 'open' },
    retentionRisk: 'at-risk',
    changes: ['beard', 'new-tracheostomy'],
  },
  breathing: { state: 'rest', ratePerMin: 24 },
  site: {},
  goal: { kind: 'saturation', lowPercent: 88, highPercent: 92, reason: 'risk-of-hypercapnia' },
  onNow: { setUp: null, saturationPercent: 85 },
}

const REQUEST: SheetRequest = {
  case: CASE,
  setUpId: 'simple-mask/adult@wall-15#6',
  wardId: 'heron',
  madeAt: '2026-11-25T13:05',
  readAt: '2026-11-25T12:50',
  modelVersion: '0.1.0',
  cylinder: { waterVolumeL: 2, gaugeKpa: 13_700, leftGaugeKpa: 3400 },
  humidification: 'bubble',
}

/** Of a patient that the case reader takes. */
const READABLE: SheetRequest = {
  ...REQUEST,
  case: withoutIdentity({ ...CASE, patient: { ...CASE.patient, changes: [] } }),
}

/** What a reader of the address gets to know. */
function withoutIdentity({ code: _code, note: _note, ...kept }: Case): Case {
  return kept
}

describe('the address of a sheet', () => {
  it('holds every case there can be, and gives it back but for code and note, in 600 bytes', () => {
    let longest = 0
    const property = fc.property(randomCase, fc.constantFrom(...IDS), (about, setUpId) => {
      const text = writeFragment({ ...REQUEST, case: about, setUpId })
      longest = Math.max(longest, new TextEncoder().encode(text).length)
      const read = readFragment(text)
      expect(read).toEqual({
        ok: true,
        request: { ...REQUEST, case: withoutIdentity(about), setUpId },
      })
    })
    fc.assert(property, seeded(1000))
    expect(longest).toBeLessThanOrEqual(FRAGMENT_BYTES_MAX)
    expect(longest).toBeGreaterThan(300)
  })

  it('is made of signs that stand in an address as they are', () => {
    fc.assert(
      fc.property(randomCase, (about) => {
        const text = writeFragment({ ...REQUEST, case: about })
        expect(text).toMatch(/^[\w.~%;=:/@+-]+$/)
        expect(new URL(`https://ward.invalid/sheet#${text}`).hash.slice(1)).toBe(text)
      }),
      seeded(200),
    )
  })

  it('tells nothing of the patient but the bed', () => {
    const text = decodeURIComponent(writeFragment(REQUEST))
    expect(text).toContain('Heron 4')
    expect(text).not.toMatch(/1042|Example|1950/)
    expect(FRAGMENT_FIELDS.map(({ path }) => path)).not.toContain('case.code')
    expect(FRAGMENT_FIELDS.map(({ path }) => path)).not.toContain('case.note')
  })

  it('is refused when it would be longer, never shortened', () => {
    const about: Case = { ...CASE, bed: 'ä'.repeat(120) }
    expect(() => writeFragment({ ...REQUEST, case: about })).toThrow(
      expect.objectContaining({ code: 'SIZE_OUT_OF_RANGE', limit: { max: 600 } }),
    )
  })

  it('is refused when any sign of it is lost or changed', () => {
    const text = writeFragment(REQUEST)
    for (let at = 0; at < text.length; at++) {
      const changed = text.slice(0, at) + (text[at] === '1' ? '2' : '1') + text.slice(at + 1)
      const cut = text.slice(0, at) + text.slice(at + 1)
      for (const broken of [changed, cut, text.slice(0, at)]) {
        expect({ at, ok: readFragment(broken).ok }).toEqual({ at, ok: false })
      }
    }
  })

  it('is refused with a humidifier that there is none of', () => {
    const body = writeFragment(READABLE).replace(/;z=.*/, '').replace(';u=1', ';u=9')
    expect(readFragment(`${body};z=${sumOf(body)}`)).toMatchObject({
      ok: false,
      problems: [{ code: 'UNKNOWN_CHOICE', path: 'humidification' }],
    })
  })

  it('never throws on what anybody types', () => {
    fc.assert(
      fc.property(fc.string(), (typed) => {
        expect(readFragment(typed).ok).toBe(false)
      }),
      seeded(300),
    )
  })

  it('has a key for every field that a case can have', () => {
    const paths = [
      ...KEYS.patient.map((key) => `patient.${key}`),
      ...[...KEYS.tracheostomyAirway, ...KEYS.laryngectomyAirway].map(
        (key) => `patient.airway.${key}`,
      ),
      ...KEYS.tube.map((key) => `patient.airway.tube.${key}`),
      ...KEYS.bloodGas.map((key) => `patient.bloodGas.${key}`),
      ...KEYS.breathing.map((key) => `breathing.${key}`),
      ...KEYS.site.map((key) => `site.${key}`),
      ...[...KEYS.saturationGoal, ...KEYS.fractionGoal].map((key) => `goal.${key}`),
      ...KEYS.onNow.map((key) => `onNow.${key}`),
      ...KEYS.setUp.map((key) => `onNow.setUp.${key}`),
      ...KEYS.over.map((key) => `onNow.setUp.over.${key}`),
    ]
    const held = FRAGMENT_FIELDS.map(({ path }) => path)
    // Ages are kept in years.
    const missing = paths.filter(
      (path) =>
        !/age(Months|Days)$/.test(path) && !held.some((one) => one.startsWith(`case.${path}`)),
    )
    expect(missing).toEqual([])
  })

  it('keeps the meaning of its keys and letters for good', () => {
    const { humidification: _humidification, ...before } = REQUEST
    // An address of before a humidifier could be chosen; it is read as it was.
    expect(writeFragment(before)).toBe(
      '1;s=simple-mask/adult@wall-15%236;w=heron;m=202611251305;r=202611251250;v=0.1.0;cv=2;cg=13700;cl=3400;b=Heron%204;a=67;A=0;N=0;R=1;C=0c;S=0;f=24;G=0;Gl=88;Gh=92;Gr=risk-of-hypercapnia;ns=85;na=1;z=0qz04qt',
    )
    const { humidification: _chosen, ...old } = READABLE
    expect(readFragment(writeFragment(old))).toEqual({ ok: true, request: old })
    const letters = HUMIDIFICATIONS.map((humidification) => {
      const text = writeFragment({ ...REQUEST, humidification })
      return [/;u=(.);/.exec(text)?.[1], humidification]
    })
    expect(letters).toEqual([
      ['0', 'none'],
      ['1', 'bubble'],
      ['2', 'collar'],
      ['3', 'heated'],
      ['4', 'pass-over'],
      ['5', 'exchanger'],
    ])
    const keys = FRAGMENT_FIELDS.map(({ key }) => key)
    expect(new Set(keys).size).toBe(keys.length)
  })
})
