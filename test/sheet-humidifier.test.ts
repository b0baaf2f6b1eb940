// The humidifier chosen for a sheet: its steps, its parts and its water where the set-up takes it, and why there is no sheet where it does not. Leaves out how chains are found.
import { describe, expect, it } from 'vitest'
import type { Humidification } from '../src/kit/shelf.ts'
import type { Case } from '../src/patient/case.ts'
import { answerFor, requestFor } from './support/printed-sheets.ts'
import { noSheetLines } from '../src/words/sheet-refusal.ts'
import type { SheetRequest } from '../src/sheet/fragment.ts'
import type { Sheet } from '../src/sheet/sheet.ts'

function chosen(
  request: SheetRequest,
  humidification?: Humidification,
): ReturnType<typeof answerFor> {
  return answerFor(humidification === undefined ? request : { ...request, humidification })
}

function sheetWith(request: SheetRequest, humidification?: Humidification): Sheet {
  const answer = chosen(request, humidification)
  if (!answer.ok) throw new Error(noSheetLines(answer).join('; '))
  return answer.sheet
}

function whyNot(request: SheetRequest, humidification: Humidification): readonly string[] {
  const answer = chosen(request, humidification)
  if (answer.ok) throw new Error('a sheet was made')
  return noSheetLines(answer)
}

const codesOf = (sheet: Sheet): readonly string[] => sheet.steps.map(({ code }) => code)
const partsOf = (sheet: Sheet): string => (sheet.chain ?? []).flat().join(' – ')

const CANNULA = requestFor('nasal-cannula', 'nasal-cannula/adult@wall-15#6')
const ENTRAINMENT = requestFor('entrainment-mask', 'entrainment-mask/adult@wall-15#4:0.28')
const CATHETER = requestFor('nasal-catheter', 'nasal-catheter/infant@wall-1#0.5')
const T_PIECE = requestFor('t-piece', 't-piece/adult@ventilator#40:0.4')

/** A child of seven with an old tube and thin secretions: an exchanger will do at a low flow. */
function childWithTube(change: Partial<Case['patient']> = {}): SheetRequest {
  const request = requestFor('t-piece', 't-piece/child@ventilator#6:0.4')
  const { patient } = request.case
  return {
    ...request,
    case: {
      ...request.case,
      patient: {
        ...patient,
        ageYears: 7,
        weightKg: 23,
        tracheostomyAgeDays: 90,
        secretions: 'thin',
        ...change,
      },
    },
  }
}

describe('a sheet with the humidifier chosen', () => {
  it('has bottle, water and relief valve of a bubble humidifier, which it has not without', () => {
    const sheet = sheetWith(CANNULA, 'bubble')
    expect(codesOf(sheet)).toEqual(
      expect.arrayContaining(['BUBBLE_WATER', 'BUBBLE_RELIEF', 'WATER_LEVEL', 'DRAIN_WATER']),
    )
    expect(partsOf(sheet)).toMatch(/Flowmeter .* – Bubble humidifier – /)
    // A full bottle lasts for days at 6 L/min, and its water is changed before.
    expect(sheet.water?.emptyAt).toBeNull()
    // Both guidelines are told, as they differ [Piraino2022, ODriscoll2017].
    expect(sheet.humidity.map(({ code }) => code)).toEqual([
      'CONSIDER_ABOVE_4_LPM',
      'BUBBLE_ADVISED_AGAINST',
    ])
    const dry = sheetWith(CANNULA)
    expect(codesOf(dry)).not.toContain('BUBBLE_WATER')
    expect(partsOf(dry)).not.toMatch(/humidifier/)
  })

  it('has the steps of a collar, its two lines told apart', () => {
    const sheet = sheetWith(ENTRAINMENT, 'collar')
    expect(codesOf(sheet)).toContain('COLLAR_ON_PORTS')
    const [oxygen, air] = sheet.chain ?? []
    expect([oxygen?.[0], oxygen?.at(-1)]).toEqual(['Oxygen outlet', 'Entrainment mask'])
    expect(air?.[0]).toBe('Air outlet')
    expect(air?.slice(-2)).toEqual(['Humidification collar', 'Entrainment mask'])
    expect(codesOf(sheetWith(ENTRAINMENT))).not.toContain('COLLAR_ON_PORTS')
  })

  it('has the steps of an exchanger in place of those of a heater', () => {
    const sheet = sheetWith(childWithTube(), 'exchanger')
    expect(codesOf(sheet)).toEqual(expect.arrayContaining(['EXCHANGER_ON', 'EXCHANGER_CHANGED']))
    const told = [...sheet.steps, ...sheet.cautions].map(({ code }) => code)
    expect(told.filter((code) => /HEATE[DR]_|HEATER|WARM_GAS|MAINS_FAILS$/.test(code))).toEqual([])
    expect(partsOf(sheet)).toMatch(/T-piece – Heat–moisture exchanger/)
    expect(sheet.humidity.map(({ code }) => code)).toContain('EXCHANGER_WILL_DO')
    const heated = sheetWith(childWithTube())
    expect(codesOf(heated)).toContain('HEATED_READY')
    expect(codesOf(heated)).not.toContain('EXCHANGER_ON')
  })

  it('wets a catheter behind the nose unless dry gas was chosen', () => {
    const wet = sheetWith(CATHETER)
    expect(codesOf(wet)).toContain('BUBBLE_WATER')
    expect(wet.humidity.map(({ code }) => code)).toContain('CATHETER_NEEDS_HUMIDITY')
    const dry = sheetWith(CATHETER, 'none')
    expect(codesOf(dry)).not.toContain('BUBBLE_WATER')
    expect(dry.humidity.map(({ code }) => code)).toContain('CATHETER_NEEDS_HUMIDITY')
  })

  it('names what is not at hand on the ward', () => {
    const sheet = sheetWith({ ...CANNULA, wardId: 'wren' }, 'bubble')
    expect(sheet.missing).toEqual(['Bubble humidifier'])
    expect(codesOf(sheet)).toContain('BUBBLE_WATER')
  })
})

describe('no sheet is made, and it is said why,', () => {
  it('for a bubble humidifier before a reservoir or a jet', () => {
    const bag = requestFor('non-rebreather-mask', 'non-rebreather/adult@wall-15#15')
    expect(whyNot(bag, 'bubble').join('\n')).toMatch(
      /does not go with.*bubble humidifier[^]*leave the bubble humidifier out/,
    )
    expect(whyNot(ENTRAINMENT, 'bubble').join('\n')).toMatch(/moisten with a collar/)
  })

  it('for a collar where there are no air ports, and an exchanger where there is no tube', () => {
    const mask = requestFor('simple-mask', 'simple-mask/adult@wall-15#6')
    expect(whyNot(mask, 'collar').join('\n')).toMatch(
      /collar sits on air ports.*Simple mask.* none/,
    )
    expect(whyNot(mask, 'exchanger').at(-1)).toMatch(/^No parts lead .* through it/)
  })

  it('for an exchanger alone where active humidification is needed', () => {
    expect(whyNot(T_PIECE, 'exchanger').join('\n')).toMatch(/^High flow \(40 L\/min\): active/m)
    const thick = childWithTube({ secretions: 'thick' })
    expect(whyNot(thick, 'exchanger').join('\n')).toMatch(/^Secretions are thick/m)
    const fresh = childWithTube({ tracheostomyAgeDays: 2 })
    expect(whyNot(fresh, 'exchanger').join('\n')).toMatch(/^A new opening at the neck/m)
  })

  it('for dry gas into a tube', () => {
    expect(whyNot(T_PIECE, 'none')[0]).toMatch(/not used without a humidifier/)
    expect(whyNot(T_PIECE, 'none').join('\n')).toMatch(/heated humidifier, or an exchanger/i)
  })
})
