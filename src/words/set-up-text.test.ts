// A set-up as it would be said at the bed. Leaves out what it delivers.
import { describe, expect, it } from 'vitest'
import type { SetUp } from '../kit/set-up.ts'
import { speak } from './say.ts'
import { setUpOnNowText, setUpShortText, setUpText, sourceText } from './set-up-text.ts'

const CANNULA: SetUp = {
  family: 'nasal-cannula',
  size: 'adult',
  fit: 'gentle',
  source: {
    id: 'wall-15',
    label: 'Flowmeter 1–15 L/min',
    count: 1,
    place: 'everywhere',
    kind: 'wall-flowmeter',
    meter: {
      kind: 'tube-compensated',
      stepsLpm: [1, 2],
      flush: null,
      meterClass: 'ordinary',
    },
    purity: 'pipeline',
  },
  flow: { kind: 'scale', flowLpm: 2 },
  setO2Fraction: null,
  humidification: 'none',
  over: null,
}

describe('set-ups in words', () => {
  it('name interface, size, setting, flow and source', () => {
    expect(setUpShortText(CANNULA)).toBe('nasal cannula, adult, 2 L/min')
    expect(setUpText(CANNULA)).toBe('nasal cannula, adult, 2 L/min (Flowmeter 1–15 L/min)')
    const valve: SetUp = { ...CANNULA, family: 'entrainment-mask', setO2Fraction: 0.28 }
    expect(setUpShortText(valve)).toBe('air-entrainment mask, adult, set to 0.28, 2 L/min')
  })

  it('parts two numbers by more than a decimal comma', () => {
    const valve: SetUp = { ...CANNULA, family: 'entrainment-mask', setO2Fraction: 0.28 }
    speak('de', { 'set to {fraction}': 'eingestellt auf {fraction}' })
    const german = setUpShortText(valve)
    speak('en', {})
    expect(german).toContain(', eingestellt auf 0,28; 2 L/min')
  })

  it('name what is out of the ordinary', () => {
    const loose: SetUp = {
      ...CANNULA,
      family: 'simple-mask',
      fit: 'loose',
      humidification: 'bubble',
      flow: { kind: 'flush' },
    }
    expect(setUpText(loose)).toBe(
      'simple mask, adult, flush, meter fully open (Flowmeter 1–15 L/min), bubble humidifier, loose fit',
    )
    const under: SetUp = {
      ...CANNULA,
      family: 'cannula-under-mask',
      over: { family: 'simple-mask', flow: { kind: 'scale', flowLpm: 5 } },
    }
    expect(setUpShortText(under)).toBe(
      'nasal cannula under a mask, adult, 2 L/min, simple mask over it at 5 L/min',
    )
  })

  it('tell two interfaces of one family apart by the shelf’s own labels', () => {
    const row = { family: 'nasal-cannula', place: 'everywhere', sizes: [] } as const
    const soft = { ...row, id: 'soft', label: 'Soft prongs' }
    const firm = { ...row, id: 'firm', label: 'Firm prongs' }
    const setUp: SetUp = { ...CANNULA, interfaceId: 'soft' }
    expect(setUpText(setUp, { interfaces: [soft, firm] })).toContain('Soft prongs')
    expect(setUpText(setUp, { interfaces: [soft] })).not.toContain('Soft prongs')
    expect(sourceText({ ...CANNULA.source, label: '' })).toBe('wall flowmeter')
  })

  it('name what is on now as typed, room air too', () => {
    expect(setUpOnNowText(null)).toBe('room air')
    expect(
      setUpOnNowText({
        family: 'nasal-high-flow',
        sourceKind: 'blender',
        flowLpm: 40,
        setO2Fraction: 0.5,
      }),
    ).toBe('nasal high flow, set to 0.5, 40 L/min, blender')
  })
})
