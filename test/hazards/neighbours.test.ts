// The hazard of showing one interface's number for another: each family differs from its nearest neighbour where physics says so.
import { describe, expect, it } from 'vitest'
import type { BreathPattern } from '../../src/delivery/breath.ts'
import { deliveredStream, MIDDLE_STREAM } from '../../src/kit/delivered-stream.ts'
import { FAMILY_IDS } from '../../src/kit/family-id.ts'
import type { FamilyId } from '../../src/kit/family-id.ts'
import { BLENDER, CUFF_UP, DISTRESS, NATURAL, REST, deliveredAt, meterSource } from './bedside.ts'
import type { Bedside } from './bedside.ts'

const INFANT: BreathPattern = { ...REST, tidalVolumeL: 0.04, ratePerMin: 40 }

function effective(bedside: Bedside): number {
  return deliveredAt(bedside).effectiveO2Fraction
}

/** The same blended stream into a wide-bore interface. */
function onStream(family: FamilyId, options: Partial<Bedside> = {}): Bedside {
  return { family, source: BLENDER, setO2Fraction: 0.6, flowLpm: 20, ...options }
}

function fallInDistress(bedside: Bedside): number {
  return effective({ ...bedside, breath: REST }) - effective({ ...bedside, breath: DISTRESS })
}

function entrainedWidth(entrainsAir: 'fixed-settings' | 'adjustable'): number {
  const setting = {
    source: meterSource(),
    flow: { kind: 'scale', flowLpm: 8 },
    setO2Fraction: 0.35,
    entrainsAir,
    barometricKpa: 101.325,
  } as const
  const at = (entrainment: number): number =>
    deliveredStream(setting, { ...MIDDLE_STREAM, entrainment }).totalLpmBtps
  return at(0.9) - at(0.1)
}

/** Each family stands in one test below; this list is kept beside them. */
const COMPARED: readonly (readonly [FamilyId, FamilyId])[] = [
  ['nasal-catheter', 'nasal-cannula'],
  ['nasal-high-flow', 'nasal-cannula'],
  ['cannula-under-mask', 'simple-mask'],
  ['non-rebreather-mask', 'simple-mask'],
  ['partial-rebreather-mask', 'non-rebreather-mask'],
  ['entrainment-mask', 'simple-mask'],
  ['adjustable-entrainment-mask', 'entrainment-mask'],
  ['aerosol-mask', 'face-tent'],
  ['tracheostomy-mask', 'aerosol-mask'],
  ['t-piece', 'tracheostomy-mask'],
  ['t-piece-with-limb', 't-piece'],
  ['head-box', 'face-tent'],
]

describe('a family and its nearest neighbour', () => {
  it('every family stands beside another', () => {
    expect(new Set(COMPARED.flat())).toEqual(new Set(FAMILY_IDS))
  })

  it('a catheter keeps more of its flow in the airway than prongs', () => {
    const infant = { flowLpm: 0.5, size: 'infant', breath: INFANT, deadSpaceL: 0.02 } as const
    expect(effective({ family: 'nasal-catheter', ...infant })).toBeGreaterThan(
      effective({ family: 'nasal-cannula', ...infant }),
    )
  })

  it('high flow clears the upper airway, which a cannula hardly does', () => {
    const high = deliveredAt(onStream('nasal-high-flow', { flowLpm: 40 }))
    const low = deliveredAt({ family: 'nasal-cannula', flowLpm: 2 })
    expect(high.inspiredCo2Fraction).toBeLessThan(low.inspiredCo2Fraction)
    expect(high.alveolarVentilationLpm).toBeGreaterThan(low.alveolarVentilationLpm * 1.05)
  })

  it('a cannula under a mask gives more than either alone', () => {
    const both = effective({ family: 'cannula-under-mask', flowLpm: 4, overFlowLpm: 8 })
    expect(both).toBeGreaterThan(effective({ family: 'nasal-cannula', flowLpm: 4 }))
    expect(both).toBeGreaterThan(effective({ family: 'simple-mask', flowLpm: 8 }))
  })

  it('a filled bag gives more than open ports at the same flow', () => {
    expect(effective({ family: 'non-rebreather-mask', flowLpm: 15 })).toBeGreaterThan(
      effective({ family: 'simple-mask', flowLpm: 15 }) + 0.1,
    )
  })

  it('a bag without valve takes in expired gas, a valved one does not', () => {
    const partial = deliveredAt({ family: 'partial-rebreather-mask', flowLpm: 10 })
    const non = deliveredAt({ family: 'non-rebreather-mask', flowLpm: 10 })
    expect(partial.origins.expired).toBeGreaterThan(non.origins.expired)
  })

  it('an entrainment mask holds its fraction where a simple mask loses it', () => {
    const valve = { family: 'entrainment-mask', flowLpm: 8, setO2Fraction: 0.35 } as const
    expect(fallInDistress(valve)).toBeLessThan(
      0.7 * fallInDistress({ family: 'simple-mask', flowLpm: 8 }),
    )
  })

  it('an adjustable valve agrees in the middle and is less certain than a fixed one', () => {
    const valve = { flowLpm: 8, setO2Fraction: 0.35 }
    expect(effective({ family: 'adjustable-entrainment-mask', ...valve })).toBeCloseTo(
      effective({ family: 'entrainment-mask', ...valve }),
      4,
    )
    expect(entrainedWidth('adjustable')).toBeGreaterThan(1.2 * entrainedWidth('fixed-settings'))
  })

  it('an open tent loses more to the room than an aerosol mask on the same stream', () => {
    expect(effective(onStream('face-tent'))).toBeLessThan(effective(onStream('aerosol-mask')))
  })

  it('a tracheostomy mask skips the upper airway, an aerosol mask does not', () => {
    const neck = deliveredAt(onStream('tracheostomy-mask', { airway: CUFF_UP }))
    const face = deliveredAt(onStream('aerosol-mask', { airway: NATURAL }))
    expect(neck.alveolarVentilationLpm).toBeGreaterThan(face.alveolarVentilationLpm)
  })

  it('a T-piece above peak flow gives what the stream holds, a tracheostomy mask less', () => {
    const stream = { airway: CUFF_UP, flowLpm: 60 }
    expect(effective(onStream('t-piece', stream))).toBeGreaterThan(
      effective(onStream('tracheostomy-mask', stream)),
    )
    expect(Math.abs(effective(onStream('t-piece', stream)) - 0.6)).toBeLessThan(0.01)
  })

  it('an open limb stores stream for the breath that exceeds it', () => {
    const stream = { airway: CUFF_UP, flowLpm: 20 }
    expect(effective(onStream('t-piece-with-limb', stream))).toBeGreaterThan(
      effective(onStream('t-piece', stream)) + 0.01,
    )
  })

  it('a head box holds its stream for an infant where a tent does not', () => {
    const infant = { breath: INFANT, deadSpaceL: 0.02, flowLpm: 10, setO2Fraction: 0.6 }
    const box = effective(onStream('head-box', { ...infant, size: 'infant' }))
    const tent = effective(onStream('face-tent', { ...infant, size: 'child' }))
    expect(box).toBeGreaterThan(tent)
  })
})
