// The sheet as codes and numbers: what it holds, how long it counts, when there is none. Leaves out its words and steps.
import { describe, expect, it } from 'vitest'
import { reassessment } from '../planning/reassess.ts'
import { answerFor, requestFor, sheetFor } from '../../test/support/printed-sheets.ts'
import { lookAgainAt, sheetState } from './validity.ts'

const REQUEST = requestFor('simple-mask', 'simple-mask/adult@wall-15#6')

describe('a bedside sheet', () => {
  const sheet = sheetFor(REQUEST)

  it('has the fraction with its spread, what it depends on, goal, steps, calls, cautions', () => {
    expect(sheet.effectiveO2Fraction.low).toBeLessThan(sheet.effectiveO2Fraction.high)
    expect(sheet.dependsOn.map(({ code }) => code)).toContain('DEPENDS_FIT')
    expect(sheet.goal).toEqual(REQUEST.case.goal)
    expect(sheet.steps.length).toBeGreaterThan(15)
    expect(sheet.call.length).toBeGreaterThan(3)
    expect(sheet.cautions.map(({ code }) => code)).toContain('NOT_A_MONITOR')
    expect(sheet.setUpId).toBe(REQUEST.setUpId)
  })

  it('counts from its readings, not from its making, and says which row ends it', () => {
    const late = sheetFor({ ...REQUEST, readAt: '2026-11-25T09:00' })
    // Acute asthma is not steady: one hour.
    expect(late.validity).toMatchObject({
      until: '2026-11-25T10:00',
      because: { code: 'VALID_UNSTEADY', known: 'common-practice' },
    })
    expect(sheet.validity.until).toBe('2026-11-25T14:00')
  })

  it('counts an hour where carbon dioxide may be retained, six where all is steady', () => {
    const atRisk = sheetFor(
      requestFor('t-piece-with-limb', 't-piece-with-limb/adult@blender-60#40:0.3'),
    )
    expect(atRisk.validity).toMatchObject({
      until: '2026-11-25T14:00',
      because: { code: 'VALID_UNTIL_BLOOD_GAS', source: 'ODriscoll2017' },
    })
    const steady = sheetFor(requestFor('nasal-cannula', 'nasal-cannula/adult@wall-15#4'))
    expect(steady.validity.until).toBe('2026-11-25T19:00')
  })

  it('has the patient looked at again when the plan in front of it runs out, and not after its own end', () => {
    const steady = requestFor('nasal-cannula', 'nasal-cannula/adult@wall-15#4')
    expect(reassessment(steady.case).withinMin).toBe(60)
    expect(sheetFor(steady).lookAgainAt).toBe('2026-11-25T14:00')
    const sooner = { readAt: '2026-11-25T13:00', validity: sheet.validity }
    expect(lookAgainAt({ ...sooner, reassess: { withinMin: 240 } })).toBe(sheet.validity.until)
  })

  it('is past after its end, and never counts by a clock that lies before its readings', () => {
    expect(sheetState(sheet, sheet.readAt)).toBe('counts')
    expect(sheetState(sheet, sheet.validity.until)).toBe('counts')
    expect(sheetState(sheet, '2026-11-25T14:01')).toBe('past')
    expect(sheetState(sheet, '2026-11-25T12:59')).toBe('clock-before')
  })

  it('names the readings it rests on, and that there is none', () => {
    expect(sheet.restsOn).toEqual([
      { code: 'RESTS_ON_SATURATION', values: { saturationPercent: 93 } },
      { code: 'RESTS_ON_RATE', values: { ratePerMin: 26 } },
    ])
    const none = sheetFor(requestFor('no-reading', 'nasal-cannula/adult@wall-15#2'))
    expect(none.restsOn.map(({ code }) => code)).toContain('RESTS_ON_NO_SATURATION')
    expect(none.isReadingUsed).toBe(false)
  })

  it('tells when a cylinder is changed and empty, on the safe side, or that it was not worked out', () => {
    const id = 'nasal-cannula/adult@cylinder-flush#6'
    const { cylinder } = sheetFor(requestFor('nasal-cannula', id))
    expect(cylinder).toMatchObject({ kind: 'worked-out', isUsable: true })
    // 2 L from 137 to 14 bar give 263 L [worked example in supply/cylinder.test.ts]: at 6 L/min 43 minutes, fewer at the draw a meter may hide.
    expect(cylinder).toMatchObject({ minutesToChange: expect.closeTo(39, -1) })
    const { cylinder: _cylinder, ...without } = requestFor('nasal-cannula', id)
    expect(sheetFor(without).cylinder).toEqual({ kind: 'not-worked-out' })
    expect(sheet.cylinder).toBeNull()
  })

  it('names the parts in order, the water they bring and when the vessel may be empty', () => {
    const request = requestFor('tracheostomy-mask', 'tracheostomy-mask/adult@nebuliser#10:0.35')
    const { chain, water } = sheetFor(request)
    expect(chain?.[0]?.[0]).toBe('Oxygen outlet')
    expect(chain?.at(-1)?.at(-1)).toBe('Tracheostomy mask')
    // A bypassed airway wants 33 mg/L at least [ISOHumidifiers2017]; no measurement judges what a jet brings.
    expect(water).toMatchObject({
      verdict: 'not-measured',
      notMeasured: ['NEBULISER_NOT_MEASURED'],
      leastMgPerL: 33,
    })
    expect(water?.emptyAt).toMatch(/^2026-11-25T1[4-9]:/)
    expect(sheet.water?.emptyAt).toBeNull()
  })

  it('is not made for a set-up that is ruled out, nor for one that the shelf has not', () => {
    const out = answerFor(requestFor('laryngectomy', 'simple-mask/adult@wall-15#6'))
    expect(out).toMatchObject({ ok: false, why: 'ruled-out' })
    const unknown = answerFor({ ...REQUEST, setUpId: 'simple-mask/adult@wall-15#66' })
    expect(unknown).toEqual({ ok: false, why: 'not-on-shelf' })
  })
})
