// Humidity remarks of demo set-ups, by code and source. Leaves out water content.
import { describe, expect, it } from 'vitest'
import { candidateSetUps } from './build-set-ups.ts'
import { DEMO_SHELF } from './demo-shelf/demo-shelf.ts'
import { humidityRemarks } from './humidity-remark.ts'

const ALL = candidateSetUps(DEMO_SHELF)

function candidate(id: string) {
  const found = ALL.find((one) => one.id === id)
  if (found === undefined) throw new Error(`no candidate ${id}`)
  return found
}

function codes(id: string): readonly string[] {
  return candidate(id).humidity.map(({ code }) => code)
}

describe('humidity remark', () => {
  it.each([
    ['nasal-cannula/adult@wall-15#2', ['DRY_LOW_FLOW_USUALLY_FINE']],
    ['nasal-cannula/adult@wall-15#4', ['DRY_LOW_FLOW_USUALLY_FINE']],
    ['nasal-cannula/adult@wall-15#5', ['CONSIDER_ABOVE_4_LPM', 'BUBBLE_ADVISED_AGAINST']],
    ['cannula-under-mask/adult@wall-15#1+5', ['CONSIDER_ABOVE_4_LPM', 'BUBBLE_ADVISED_AGAINST']],
    ['non-rebreather/adult@wall-15#flush', ['CONSIDER_ABOVE_4_LPM', 'BUBBLE_ADVISED_AGAINST']],
    ['nasal-cannula/infant@wall-3#1', ['CHILD_POLICY_COUNTS']],
    ['nasal-catheter/infant@wall-3#1', ['CATHETER_NEEDS_HUMIDITY', 'CHILD_POLICY_COUNTS']],
    [
      'entrainment-mask/adult@wall-15#4:0.28',
      ['ENTRAINED_ROOM_AIR_BRINGS_WATER', 'COLLAR_POSSIBLE'],
    ],
    ['nasal-high-flow/adult@blender-60#40:0.6', ['HEATED_REQUIRED']],
    ['aerosol-mask/adult@nebuliser#10:0.4', ['AEROSOL_FROM_NEBULISER']],
    ['t-piece/adult@nebuliser#10:0.4', ['BYPASSED_NEVER_DRY', 'AEROSOL_FROM_NEBULISER']],
    ['t-piece/adult@ventilator#20:0.4', ['BYPASSED_NEVER_DRY', 'HEATED_EXPECTED']],
  ])('of %s', (id, expected) => {
    expect(codes(id)).toEqual(expected)
  })

  it('shows both guidelines that disagree, each with its source', () => {
    const remarks = candidate('nasal-cannula/adult@wall-15#6').humidity
    expect(remarks).toEqual([
      { code: 'CONSIDER_ABOVE_4_LPM', known: 'seen', source: 'Piraino2022' },
      { code: 'BUBBLE_ADVISED_AGAINST', known: 'seen', source: 'ODriscoll2017' },
    ])
  })

  it('lets every gas at the neck be never dry, whatever the source', () => {
    const neck = ALL.filter(({ setUp }) =>
      ['tracheostomy-mask', 't-piece', 't-piece-with-limb'].includes(setUp.family),
    )
    expect(neck.length).toBeGreaterThan(100)
    for (const { id, humidity } of neck) expect(humidity[0]?.code, id).toBe('BYPASSED_NEVER_DRY')
  })

  it('says dry is fine to nobody whose upper airway is bypassed', () => {
    const { setUp } = candidate('nasal-cannula/adult@wall-15#2')
    const remarks = humidityRemarks(setUp, { isBypassed: true }).map(({ code }) => code)
    expect(remarks).toEqual(['BYPASSED_NEVER_DRY'])
  })
})
