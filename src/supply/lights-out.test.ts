// The lights-out drill on the demo wards: what works, what fails, what nobody knows, and who comes first. Leaves out the patients' course.
import { describe, expect, it } from 'vitest'
import { DEMO_SHELF } from '../kit/demo-shelf/demo-shelf.ts'
import { FAILURES, type Failure } from './bed-outage.ts'
import { DEMO_WARDS, DEMO_WARD_IDS } from './demo-wards/demo-wards.ts'
import { lightsOut } from './lights-out.ts'
import type { Bed, WardFile } from './ward.ts'

const drill = (ward: WardFile) => lightsOut(ward, DEMO_SHELF)

function outage(
  bed: Partial<Bed>,
  failure: Failure,
  supply: WardFile['supply'] = { area: 'ward' },
) {
  const beds = [{ bed: '1', ...bed }]
  const found = drill({ ...DEMO_WARDS.heron, supply, beds }).beds[0]?.outages[failure]
  if (found === undefined) throw new Error('no bed')
  return { ...found, codes: [...found.remarks, ...found.actions].map(({ code }) => code) }
}

const CANNULA = { family: 'nasal-cannula', sourceKind: 'wall-flowmeter', flowLpm: 2 } as const
const RESERVOIR = {
  family: 'non-rebreather-mask',
  sourceKind: 'wall-flowmeter',
  flowLpm: 15,
} as const
const HIGH_FLOW = {
  family: 'nasal-high-flow',
  sourceKind: 'blender',
  flowLpm: 40,
  setO2Fraction: 0.4,
} as const
const HOME = { family: 'nasal-cannula', sourceKind: 'concentrator', flowLpm: 2 } as const
const CYLINDERS = [{ waterVolumeL: 2, gaugeKpa: 13_700, isValveOpen: false }]

describe('lights-out drill', () => {
  it.each(DEMO_WARD_IDS)('answers for every bed and failure of %s, most endangered first', (id) => {
    const { beds, byFailure, remarks } = drill(DEMO_WARDS[id])
    expect(beds).toHaveLength(DEMO_WARDS[id].beds.length)
    const order = ['fails', 'unknown', 'minutes', 'other-gas', 'works']
    for (const failure of FAILURES) {
      const places = byFailure[failure].map(({ outages }) => order.indexOf(outages[failure].state))
      expect(places).toEqual(places.toSorted((a, b) => a - b))
      for (const { outages } of byFailure[failure]) {
        expect(outages[failure].remarks.length).toBeGreaterThan(0)
        expect(outages[failure].actions.length).toBeGreaterThan(0)
        expect(outages[failure].saturationPath).toBeNull()
      }
    }
    expect(remarks.map(({ code }) => code)).toContain('NOT_COMPUTED_YET')
  })

  it('takes a wall set-up without a cylinder for lost when the pipeline fails, and its mask off', () => {
    const lost = outage({ setUp: RESERVOIR }, 'pipeline-oxygen')
    expect(lost).toMatchObject({ state: 'fails', minutes: 0 })
    expect(lost.codes).toEqual(
      expect.arrayContaining(['NO_GAS_AT_ALL', 'DO_TAKE_MASK_OFF', 'DO_FETCH_CYLINDER']),
    )
    expect(outage({ setUp: CANNULA }, 'pipeline-oxygen').codes).not.toContain('DO_TAKE_MASK_OFF')
  })

  it('counts the minutes of cylinders at the bed, and says that a closed one must be opened', () => {
    const held = outage({ setUp: CANNULA, cylinders: CYLINDERS }, 'pipeline-oxygen')
    expect(held.state).toBe('minutes')
    // 2 L at 137 bar hold 292 L at 15 °C; 2 L/min at 1180 m are a little less by its meter.
    expect(Math.abs((held.minutes ?? 0) / (292 / 2) - 1)).toBeLessThan(0.06)
    expect(held.codes).toEqual(expect.arrayContaining(['DO_OPEN_CYLINDER', 'DO_MOVE_TO_CYLINDER']))
  })

  it('lets a blend turn to air without oxygen, to oxygen without air, to nothing without blender', () => {
    const pneumatic = { setUp: HIGH_FLOW, mixerDrive: 'pneumatic' } as const
    expect(outage(pneumatic, 'pipeline-oxygen').codes).toContain('GIVES_AIR_ONLY')
    expect(outage(pneumatic, 'medical-air')).toMatchObject({ state: 'other-gas' })
    expect(outage(pneumatic, 'medical-air').codes).not.toContain('DO_WATCH_FOR_TOO_MUCH_OXYGEN')
    const retainer = { ...pneumatic, retentionRisk: 'known-retainer' } as const
    expect(outage(retainer, 'medical-air').codes).toContain('DO_WATCH_FOR_TOO_MUCH_OXYGEN')
    expect(outage(pneumatic, 'blender')).toMatchObject({ state: 'fails', minutes: 0 })
    expect(outage({ setUp: CANNULA }, 'blender').state).toBe('works')
  })

  it('says that it does not know, never guesses: plant, drive, battery, set-up, cylinder', () => {
    const ask = [
      [{ setUp: CANNULA }, 'mains', 'PLANT_NOT_STATED'],
      [{ setUp: HIGH_FLOW }, 'medical-air', 'MIXER_DRIVE_NOT_STATED'],
      [{ setUp: HIGH_FLOW, mixerDrive: 'mains' }, 'mains', 'BATTERY_NOT_STATED'],
      [{ setUp: HOME }, 'mains', 'BATTERY_NOT_STATED'],
      [{}, 'pipeline-oxygen', 'SET_UP_NOT_KNOWN'],
      [{ setUp: { ...CANNULA, sourceKind: 'cylinder-regulator' } }, 'mains', 'CYLINDER_NOT_STATED'],
    ] as const
    for (const [bed, failure, code] of ask) {
      const answer = outage(bed, failure)
      expect(answer).toMatchObject({ state: 'unknown', minutes: null })
      expect(answer.codes).toEqual(expect.arrayContaining([code, 'DO_FIND_OUT']))
    }
  })

  it('lets a concentrator stop at mains failure and live on battery and cylinder', () => {
    expect(outage({ setUp: HOME, batteryMinutes: 0 }, 'mains').state).toBe('fails')
    const saved = outage({ setUp: HOME, batteryMinutes: 30, cylinders: CYLINDERS }, 'mains')
    expect(saved.minutes).toBeGreaterThan(30)
    expect(outage({ setUp: HOME }, 'pipeline-oxygen').state).toBe('works')
  })

  it('leaves room air and empty beds alone, and names a heater that stops', () => {
    expect(outage({ setUp: null }, 'mains').state).toBe('works')
    expect(outage({ isEmpty: true }, 'mains').state).toBe('works')
    const wet = { setUp: HIGH_FLOW, mixerDrive: 'pneumatic', hasHeatedHumidifier: true } as const
    const supply = { area: 'ward', plantsHaveGenerator: true } as const
    expect(outage(wet, 'mains', supply).codes).toContain('HEATER_STOPS')
  })
})
