// Candidate set-ups of the demo shelf: ids, marks, rated flows, counts by body, rules of feeding. Leaves out what a plan makes of them.
import { describe, expect, it } from 'vitest'
import { candidatesForBody, candidateSetUps } from './build-set-ups.ts'
import type { CandidateSetUp } from './build-set-ups.ts'
import { DEMO_SHELF } from './demo-shelf/demo-shelf.ts'
import { FAMILY_IDS } from './family-id.ts'
import { FLUSH_FAMILIES } from './feeds.ts'
import { isStepOf, meterOf, metersOf, nominalLpm } from './flow-steps.ts'
import { INTERFACE_FAMILIES } from './interface-families.ts'
import type { InterfaceRow, Shelf, ShelfSource } from './shelf.ts'

const ALL = candidateSetUps(DEMO_SHELF)
const BODIES = {
  adult: { ageYears: 60, weightKg: 70 },
  child: { ageYears: 6, weightKg: 20 },
  infant: { ageYears: 0.7, weightKg: 8 },
  newborn: { ageYears: 0.01, weightKg: 3.2 },
  preterm: { ageYears: 0.02, weightKg: 1.2 },
} as const

function openingOf(candidate: CandidateSetUp) {
  return INTERFACE_FAMILIES[candidate.setUp.family].opening
}

/** Flow compared with the rated one: the whole stream on a wide-bore hose, else the metered flow. */
function comparedLpm(candidate: CandidateSetUp): number {
  const { setUp } = candidate
  if (setUp.source.kind === 'jet-nebuliser') return candidate.streamLpm
  return setUp.flow.kind === 'scale' ? setUp.flow.flowLpm : Number.POSITIVE_INFINITY
}

function shelfOf(parts: { readonly row: InterfaceRow; readonly source: ShelfSource }): Shelf {
  return { ...DEMO_SHELF, interfaces: [parts.row], sources: [parts.source] }
}

function interfaceRow(id: string): InterfaceRow {
  const found = DEMO_SHELF.interfaces.find((row) => row.id === id)
  if (found === undefined) throw new Error(`no row ${id}`)
  return found
}

function sourceRow(id: string): ShelfSource {
  const found = DEMO_SHELF.sources.find((row) => row.id === id)
  if (found === undefined) throw new Error(`no row ${id}`)
  return found
}

describe('candidate set-ups of the demo shelf', () => {
  it('gives every candidate its own id', () => {
    expect(new Set(ALL.map(({ id }) => id)).size).toBe(ALL.length)
  })

  it('sets every flow to a mark of its meter', () => {
    expect(ALL.length).toBeGreaterThan(900)
    for (const { id, setUp } of ALL) {
      expect(isStepOf(setUp.source, setUp.flow), id).toBe(true)
      expect(setUp.over === null || isStepOf(setUp.source, setUp.over.flow), id).toBe(true)
    }
  })

  it('sets each of two meters that join to the same mark', () => {
    const joined = ALL.filter(
      ({ setUp }) => metersOf(setUp.source) === 2 && setUp.flow.kind === 'scale',
    )
    expect(joined.length).toBeGreaterThan(5)
    for (const { id, setUp } of joined) {
      expect(meterOf(setUp.source)?.stepsLpm, id).toContain(
        (nominalLpm(setUp.source, setUp.flow) ?? 0) / 2,
      )
    }
  })

  it('keeps every step within the rated flow', () => {
    const onScale = ALL.filter(({ setUp }) => setUp.flow.kind === 'scale')
    expect(onScale.length).toBeGreaterThan(900)
    for (const candidate of onScale) {
      const { rated, id } = candidate
      expect(comparedLpm(candidate), id).toBeGreaterThanOrEqual(rated.minLpm)
      expect(comparedLpm(candidate), id).toBeLessThanOrEqual(rated.maxLpm)
      expect(candidate.isBeyondRated, id).toBe(false)
    }
  })

  it('offers flush only on the masks and the size it was measured on, and says it is beyond the rated flow', () => {
    const flush = ALL.filter(({ setUp }) => setUp.flow.kind === 'flush')
    expect(flush.length).toBeGreaterThan(3)
    for (const { id, setUp, isBeyondRated } of flush) {
      expect(FLUSH_FAMILIES, id).toContain(setUp.family)
      expect(setUp.size, id).toBe('adult')
      expect(isBeyondRated, id).toBe(true)
    }
  })

  it('builds at least one set-up of every family', () => {
    const built = new Set(ALL.map(({ setUp }) => setUp.family))
    for (const id of FAMILY_IDS) expect(built.has(id), id).toBe(true)
  })

  it('builds at least one set-up on every source', () => {
    const used = new Set(ALL.map(({ setUp }) => setUp.source.id))
    for (const source of DEMO_SHELF.sources) expect(used.has(source.id), source.id).toBe(true)
  })

  it('offers about 200 set-ups for the face of an adult', () => {
    const adult = candidatesForBody(ALL, BODIES.adult).filter((c) => openingOf(c) !== 'neck')
    expect(adult.length).toBeGreaterThanOrEqual(180)
    expect(adult.length).toBeLessThanOrEqual(240)
    expect(new Set(adult.map(({ setUp }) => setUp.size))).toEqual(new Set(['adult']))
  })

  it.each([
    ['child', 150],
    ['infant', 100],
    ['newborn', 80],
    ['preterm', 100],
  ] as const)('offers enough set-ups for a %s', (body, least) => {
    expect(candidatesForBody(ALL, BODIES[body]).length).toBeGreaterThanOrEqual(least)
  })

  it('offers neck interfaces for a tracheostomy at every age from infancy', () => {
    for (const body of [BODIES.adult, BODIES.child, BODIES.infant]) {
      const neck = candidatesForBody(ALL, body).filter((c) => openingOf(c) === 'neck')
      expect(neck.length).toBeGreaterThan(20)
    }
  })

  it('gives newborns and preterm infants no mask and no valve', () => {
    for (const body of [BODIES.newborn, BODIES.preterm]) {
      for (const candidate of candidatesForBody(ALL, body)) {
        expect(['nose', 'head'], candidate.id).toContain(openingOf(candidate))
      }
    }
  })

  it('writes ids a person can read', () => {
    const ids = new Set(ALL.map(({ id }) => id))
    for (const id of [
      'simple-mask/adult@wall-15#6',
      'simple-mask/adult@wall-15#flush',
      'entrainment-mask/adult@wall-15#4:0.28',
      'cannula-under-mask/adult@wall-15#4+5',
      'nasal-cannula/preterm@wall-200-ml#0.03',
      'non-rebreather-30/adult@two-15#30',
    ])
      expect(ids, id).toContain(id)
  })

  it('takes for a ward what lies there or everywhere', () => {
    for (const ward of DEMO_SHELF.wards) {
      const atWard = candidateSetUps(DEMO_SHELF, ward.id)
      expect(atWard.length).toBeGreaterThan(50)
      expect(atWard.length).toBeLessThan(ALL.length)
      for (const { setUp, id } of atWard) {
        expect(['everywhere', ward.id], id).toContain(setUp.source.place)
      }
    }
  })

  it('refuses a ward that is not on the shelf', () => {
    expect(() => candidateSetUps(DEMO_SHELF, 'osprey')).toThrow('UNKNOWN_ID wardId osprey')
  })
})

describe('rules of feeding', () => {
  it('runs a valve only at or above its printed minimum', () => {
    const valves = ALL.filter(({ valveFlow }) => valveFlow !== null)
    expect(valves.length).toBeGreaterThan(40)
    for (const { id, setUp } of valves) {
      const setting = interfaceRow(setUp.interfaceId ?? '').settings?.find(
        ({ o2Fraction }) => o2Fraction === setUp.setO2Fraction,
      )
      const flowLpm = setUp.flow.kind === 'scale' ? setUp.flow.flowLpm : 0
      expect(flowLpm, id).toBeGreaterThanOrEqual(setting?.minimumLpm ?? Number.NaN)
    }
  })

  it('offers the flow for fast breathing beside the minimum', () => {
    const at28 = ALL.filter(({ id }) => id.startsWith('entrainment-mask/adult@wall-15#'))
      .filter(({ setUp }) => setUp.setO2Fraction === 0.28)
      .map(({ id, valveFlow }) => [id.split('#')[1], valveFlow])
    expect(at28).toEqual([
      ['4:0.28', 'minimum'],
      ['6:0.28', 'fast-breathing'],
    ])
  })

  it('drops a setting whose minimum the meter cannot reach', () => {
    const onConcentrator = ALL.filter(
      ({ setUp }) => setUp.source.kind === 'concentrator' && setUp.setO2Fraction !== null,
    )
    expect(onConcentrator.length).toBeGreaterThan(0)
    for (const { setUp } of onConcentrator) expect(setUp.setO2Fraction).toBeLessThanOrEqual(0.28)
  })

  it('uses two meters only above what one gives', () => {
    const pairs = ALL.filter(({ setUp }) => setUp.source.kind === 'two-flowmeters')
    expect(pairs.map(({ id }) => id)).toEqual([
      'non-rebreather-30/adult@two-15#20',
      'non-rebreather-30/adult@two-15#24',
      'non-rebreather-30/adult@two-15#30',
    ])
  })

  it('lets the label on the device win over the usual rated flow', () => {
    const labelled = ALL.filter(({ setUp }) => setUp.interfaceId === 'non-rebreather-30')
    expect(labelled.length).toBeGreaterThan(5)
    for (const { rated, setUp } of labelled) {
      expect(rated).toEqual({ minLpm: 15, maxLpm: 30, isFromLabel: true, fits: {} })
      expect(setUp.flow.kind).toBe('scale')
    }
    const usual = ALL.find(({ id }) => id === 'non-rebreather/adult@wall-15#12')
    expect(usual?.rated).toEqual({ minLpm: 10, maxLpm: 15, isFromLabel: false, fits: {} })
  })

  it('feeds prongs for high flow from blended gas only', () => {
    const highFlow = ALL.filter(({ setUp }) => setUp.family === 'nasal-high-flow')
    expect(new Set(highFlow.map(({ setUp }) => setUp.source.kind))).toEqual(
      new Set(['blender', 'ventilator']),
    )
    for (const { setUp } of highFlow) expect(setUp.humidification).toBe('heated')
  })

  it('needs two meters of a kind for a cannula under a mask', () => {
    const row = interfaceRow('cannula-under-mask')
    const source = sourceRow('wall-15')
    expect(candidateSetUps(shelfOf({ row, source })).length).toBeGreaterThan(0)
    expect(candidateSetUps(shelfOf({ row, source: { ...source, count: 1 } }))).toEqual([])
  })

  it('warns of a small flow on an ordinary meter', () => {
    const small = ALL.filter(({ setUp }) => setUp.family === 'nasal-cannula').filter(
      ({ setUp }) => setUp.flow.kind === 'scale' && setUp.flow.flowLpm === 0.5,
    )
    const warned = (id: string) =>
      small.find((candidate) => candidate.id.includes(id))?.cautions ?? []
    expect(warned('adult@wall-5')).toEqual(['LOW_FLOW_ON_ORDINARY_METER'])
    expect(warned('adult@wall-3')).toEqual([])
  })

  it('builds nothing from what is out of stock', () => {
    const row = interfaceRow('simple-mask')
    const source = sourceRow('wall-15')
    const empty = { ...row, sizes: row.sizes.map((stock) => ({ ...stock, count: 0 })) }
    expect(candidateSetUps(shelfOf({ row, source })).length).toBeGreaterThan(0)
    expect(candidateSetUps(shelfOf({ row: empty, source }))).toEqual([])
    expect(candidateSetUps(shelfOf({ row, source: { ...source, count: 0 } }))).toEqual([])
  })

  it('counts the stream with entrained air and the oxygen without it', () => {
    // Mass balance with air at 0.2095: (1 − 0.28)/(0.28 − 0.2095) = 10.21 litres of air for each of oxygen.
    const valve = ALL.find(({ id }) => id === 'entrainment-mask/adult@wall-15#4:0.28')
    expect(valve?.streamLpm).toBeCloseTo(44.85, 2)
    expect(valve?.oxygenUsedLpm).toBe(4)
    // 40 L/min at 0.60: 40 × (0.60 − 0.2095)/(1 − 0.2095) = 19.76 L/min of oxygen.
    const blend = ALL.find(({ id }) => id === 'nasal-high-flow/adult@blender-60#40:0.6')
    expect(blend?.streamLpm).toBe(40)
    expect(blend?.oxygenUsedLpm).toBeCloseTo(19.76, 2)
    const pair = ALL.find(({ id }) => id === 'cannula-under-mask/adult@wall-15#4+5')
    expect(pair?.oxygenUsedLpm).toBe(9)
  })
})
