// Chains that must come out right and chains that must be refused, one test each, on the demo shelf. Leaves out random shelves (joining-brute-force.test.ts).
import { describe, expect, it } from 'vitest'
import { candidateSetUps } from '../src/kit/build-set-ups.ts'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'
import type { Shelf, ShelfSource } from '../src/kit/shelf.ts'
import { humidifiersOf } from '../src/joining/chain.ts'
import type { Chain } from '../src/joining/chain.ts'
import { checkChain } from '../src/joining/check-chain.ts'
import { demoPart, inLine, joinedOn } from '../src/joining/hand-chain.ts'
import { patientPart } from '../src/joining/patient-part.ts'
import type { ChainPatient } from '../src/joining/patient-part.ts'
import { solveChains } from '../src/joining/solve-chains.ts'
import type { ChainAnswer, CheckedChain } from '../src/joining/solve-chains.ts'
import type { Wanted } from '../src/joining/wanted.ts'
import { WRONG_ON_PURPOSE } from '../src/joining/wrong-on-purpose.ts'

const NATURAL = { route: 'natural', nose: 'open' } as const
const TUBED = {
  route: 'tracheostomy',
  nose: 'open',
  tube: { cuff: 'up', speakingValve: false, capped: false, heatMoistureExchanger: false },
} as const
const ADULT: ChainPatient = { ageYears: 60, weightKg: 70, airway: NATURAL }
const CHILD: ChainPatient = { ageYears: 6, weightKg: 20, airway: NATURAL }
const TUBE: ChainPatient = { ...ADULT, airway: TUBED }

const ON_WALL: Wanted = {
  interfaceId: 'simple-mask',
  size: 'adult',
  sourceId: 'wall-15',
  humidification: 'none',
  flowLpm: 6,
}
const LIMB: Pick<Wanted, 'sourceId' | 'humidification' | 'o2Fraction'> = {
  sourceId: 'ventilator',
  humidification: 'heated',
  o2Fraction: 0.4,
}

const ON_LIMB: Wanted = { ...LIMB, interfaceId: 'aerosol-mask', size: 'adult', flowLpm: 40 }

/** The demo shelf with what is known of its ventilator put in place of what it says. */
function withMachine(known: Pick<ShelfSource, 'hasOwnFilter' | 'modes'>): Shelf {
  const sources = DEMO_SHELF.sources.map((row): ShelfSource => {
    if (row.kind !== 'ventilator') return row
    const { hasOwnFilter: _filter, modes: _modes, ...rest } = row
    return { ...rest, ...known }
  })
  return { ...DEMO_SHELF, sources }
}

function solved(wanted: Wanted, patient: ChainPatient = ADULT, wardId = 'plover'): ChainAnswer {
  return solveChains({ shelf: DEMO_SHELF, wardId, wanted, patient })
}

function best(wanted: Wanted, patient?: ChainPatient, wardId?: string): CheckedChain {
  const answer = solved(wanted, patient, wardId)
  if (answer.kind !== 'chains') throw new Error(JSON.stringify(answer))
  return answer.best
}

function ids(chain: Chain): readonly string[] {
  return chain.parts.map(({ part }) => part.id)
}

function refusedFor(answer: ChainAnswer): readonly string[] {
  return answer.kind === 'refused' ? answer.refusals.map(({ code }) => code) : [answer.kind]
}

describe('comes out right', () => {
  it('a simple mask on a wall flowmeter', () => {
    expect(ids(best(ON_WALL).chain)).toEqual([
      'outlet-oxygen',
      'wall-15',
      'nipple',
      'tubing-2',
      'simple-mask/adult',
      'patient/face',
    ])
  })

  it('the same mask on the inspiratory limb of a ventilator, by an adapter between limb and tubing', () => {
    const { chain, check } = best({
      ...ON_WALL,
      sourceId: 'ventilator',
      o2Fraction: 0.4,
    })
    expect(ids(chain)).toEqual([
      'outlet-oxygen',
      'outlet-air',
      'ventilator',
      'filter',
      'hose-short',
      'limb-to-tubing',
      'tubing-2',
      'simple-mask/adult',
      'patient/face',
    ])
    expect(check.remarks.map(({ code }) => code)).toEqual(
      expect.arrayContaining([
        'NO_BREATHS_GIVEN',
        'NO_ALARM_TO_COUNT_ON',
        'INSPIRATORY_LIMB_ONLY',
        'NEEDS_BOTH_GASES',
        'NEEDS_MAINS',
      ]),
    )
  })

  it.each([
    ['yes', 0],
    ['no', 1],
    ['unknown', 1],
    [undefined, 1],
  ] as const)('a limb whose machine has a filter of its own: %s, with %d more', (own, filters) => {
    const shelf = withMachine(own === undefined ? {} : { hasOwnFilter: own })
    const answer = solveChains({ shelf, wanted: ON_LIMB, patient: ADULT })
    if (answer.kind !== 'chains') throw new Error(JSON.stringify(answer))
    const { chain, check } = answer.best
    expect(ids(chain).filter((id) => id === 'filter')).toHaveLength(filters)
    const said = check.remarks.find(({ code }) => code === 'LIMB_FILTER')
    expect(said?.values['own']).toBe(own ?? 'unknown')
  })

  it('a limb with the mode that streams evenly by its own name, or the unknown said', () => {
    const codes = (modes: ShelfSource['modes']): readonly string[] => {
      const shelf = withMachine(modes === undefined ? {} : { modes })
      const answer = solveChains({ shelf, wanted: ON_LIMB, patient: ADULT })
      if (answer.kind !== 'chains') throw new Error(JSON.stringify(answer))
      return answer.best.check.remarks
        .filter(({ code }) => code.startsWith('MODE_'))
        .map(({ code, values }) => `${code} ${values['mode'] ?? ''}`)
    }
    expect(codes([{ label: 'Steady', kind: 'constant-flow' }])).toEqual(['MODE_TO_SET Steady'])
    expect(codes(undefined)).toEqual(['MODE_NOT_STATED '])
  })

  it('an aerosol mask directly on the 22 mm limb', () => {
    const { chain } = best({ ...LIMB, interfaceId: 'aerosol-mask', size: 'adult', flowLpm: 40 })
    expect(ids(chain).slice(-3)).toEqual(['hose-heated', 'aerosol-mask/adult', 'patient/face'])
    expect(ids(chain)).not.toContain('limb-to-tubing')
  })

  it.each([
    ['tracheostomy-mask', TUBE, 10],
    ['face-tent', ADULT, 8],
  ])('%s on a jet fed by a flowmeter', (interfaceId, patient, flowLpm) => {
    const jet = { sourceId: 'nebuliser', humidification: 'none', o2Fraction: 0.4 } as const
    const { chain } = best({ ...jet, interfaceId, size: 'adult', flowLpm }, patient)
    expect(ids(chain)).toEqual(expect.arrayContaining(['wall-15', 'nebuliser']))
  })

  it.each([
    ['tracheostomy-mask', 'blender-60', TUBE],
    ['tracheostomy-mask', 'ventilator', TUBE],
    ['face-tent', 'blender-60', ADULT],
    ['face-tent', 'ventilator', ADULT],
  ])('%s with heated humidifier and heated hose on %s', (interfaceId, sourceId, patient) => {
    const wanted: Wanted = { ...LIMB, sourceId, interfaceId, size: 'adult', flowLpm: 30 }
    const { chain } = best(wanted, patient)
    expect(humidifiersOf(chain).map(({ part }) => part.kind)).toEqual(['heated'])
    expect(ids(chain).indexOf('hose-heated')).toBe(ids(chain).indexOf('heated') + 1)
  })

  it.each([
    ['nasal-cannula', 4],
    ['simple-mask', 6],
  ])('%s through a bubble humidifier', (interfaceId, flowLpm) => {
    const wanted: Wanted = { ...ON_WALL, interfaceId, flowLpm, humidification: 'bubble' }
    const { chain } = best(wanted, ADULT, 'heron')
    expect(ids(chain).slice(1, 3)).toEqual(['wall-15', 'bubble'])
  })

  it('an entrainment mask with a collar, whose mist is driven by air', () => {
    const { chain } = best({
      ...ON_WALL,
      interfaceId: 'entrainment-mask',
      flowLpm: 4,
      o2Fraction: 0.28,
      humidification: 'collar',
    })
    expect(ids(chain)).toEqual(
      expect.arrayContaining(['outlet-oxygen', 'wall-15', 'outlet-air', 'air-15', 'collar']),
    )
  })

  it('an adjustable valve changed without taking the mask off', () => {
    const at = (o2Fraction: number, flowLpm: number) =>
      best(
        { ...ON_WALL, interfaceId: 'adjustable-entrainment-mask', o2Fraction, flowLpm },
        ADULT,
        'heron',
      ).chain
    const low = at(0.3, 5)
    const high = at(0.5, 12)
    expect(high.joins).toEqual(low.joins)
    expect(ids(high)).toEqual(ids(low))
    expect(high.parts).not.toEqual(low.parts)
  })

  it('two flowmeters in parallel for one large-volume jet', () => {
    const { chain } = best({
      interfaceId: 'aerosol-mask',
      size: 'adult',
      sourceId: 'nebuliser-double',
      humidification: 'none',
      flowLpm: 20,
      o2Fraction: 0.6,
    })
    expect(ids(chain).filter((id) => id === 'wall-15')).toHaveLength(2)
    expect(chain.parts.filter(({ setting }) => setting.flowLpm === 10)).toHaveLength(2)
  })

  it('two flowmeters joined by a Y-piece into one jet, as both carry oxygen', () => {
    const meter = [demoPart('wall-15'), { flowLpm: 6 }] as const
    const nipple = demoPart('nipple')
    const tubing = demoPart('tubing-2')
    const jet = { ...demoPart('nebuliser'), inlets: ['nipple'] as const }
    const line = inLine([
      demoPart('outlet-oxygen'),
      meter,
      nipple,
      tubing,
      demoPart('y-tubing'),
      tubing,
      [jet, { o2Fraction: 0.4 }],
      demoPart('hose-22'),
      demoPart('aerosol-mask/adult'),
      patientPart('face'),
    ])
    const both = joinedOn(line, [demoPart('outlet-oxygen'), meter, nipple, tubing], {
      to: 4,
      at: 'inlet',
      index: 1,
    })
    expect(checkChain({ chain: both, patient: ADULT }).refusals).toEqual([])
  })

  it.each(['simple-mask', 'non-rebreather', 'nasal-cannula'])(
    '%s in a child’s size',
    (interfaceId) => {
      const flowLpm =
        { 'simple-mask': 6, 'non-rebreather': 10, 'nasal-cannula': 2 }[interfaceId] ?? 6
      const { chain } = best({ ...ON_WALL, interfaceId, size: 'child', flowLpm }, CHILD)
      expect(ids(chain)).toContain(`${interfaceId}/child`)
    },
  )

  it('gas straight to a tracheostomy tube, as the solver finds the open fitting by itself', () => {
    const { chain } = best({ ...LIMB, interfaceId: null, flowLpm: 30 }, TUBE)
    const fittings = ids(chain).filter((id) => ['open-t', 'port', 'y-circuit'].includes(id))
    expect(fittings).toHaveLength(1)
  })

  it(
    'every candidate of the demo shelf, in the ward that can build it, with a way out',
    { timeout: 300_000 },
    () => {
      const ages = { preterm: 0.01, newborn: 0.04, infant: 0.8, child: 6, adult: 60 } as const
      const kilograms = { preterm: 1.5, newborn: 3, infant: 8, child: 20, adult: 70 } as const
      const seen = new Set<string>()
      let count = 0
      for (const { id } of DEMO_SHELF.wards) {
        for (const { setUp } of candidateSetUps(DEMO_SHELF, id)) {
          const shape = `${setUp.interfaceId}/${setUp.size}@${setUp.source.id}`
          if (seen.has(shape)) continue
          seen.add(shape)
          const isNeck = ['tracheostomy-mask', 't-piece', 't-piece-with-limb'].includes(
            setUp.family,
          )
          const patient = {
            ageYears: ages[setUp.size],
            weightKg: kilograms[setUp.size],
            airway: isNeck ? TUBED : NATURAL,
          }
          const answer = solveChains({ shelf: DEMO_SHELF, wardId: id, wanted: setUp, patient })
          expect(answer.kind, `${id} ${shape} ${JSON.stringify(answer).slice(0, 300)}`).toBe(
            'chains',
          )
          if (answer.kind !== 'chains') continue
          count += 1
          expect(answer.best.check.waysOut.length, shape).toBeGreaterThan(0)
        }
      }
      expect(count).toBeGreaterThan(80)
    },
  )
})

describe('is refused with the reason', () => {
  it('a tracheostomy tube straight on a constant-flow limb', () => {
    expect(codesOf('limb-straight-on-tube')).toEqual(['CLOSED_CIRCUIT'])
  })

  it('a cuffed mask on a limb whose expiratory end is capped', () => {
    expect(codesOf('capped-arm')).toContain('CLOSED_CIRCUIT_CAPPED')
  })

  it('one flowmeter split to two patients', () => {
    expect(codesOf('one-meter-two-patients')).toEqual(['SPLIT_TO_TWO_PATIENTS'])
  })

  it('air and oxygen joined by a Y-piece as a mixture', () => {
    expect(codesOf('gases-by-y')).toEqual(['GASES_MIXED_BY_Y'])
  })

  it('a bubble humidifier before an entrainment jet', () => {
    const wanted: Wanted = {
      ...ON_WALL,
      interfaceId: 'entrainment-mask',
      flowLpm: 4,
      o2Fraction: 0.28,
      humidification: 'bubble',
    }
    expect(refusedFor(solved(wanted, ADULT, 'heron'))).toEqual(['BUBBLE_BEFORE_JET'])
  })

  it('a bubble humidifier before a reservoir mask', () => {
    const wanted: Wanted = {
      ...ON_WALL,
      interfaceId: 'non-rebreather',
      flowLpm: 10,
      humidification: 'bubble',
    }
    expect(refusedFor(solved(wanted, ADULT, 'heron'))).toEqual(['BUBBLE_BEFORE_RESERVOIR'])
  })

  it('an exchanger together with a heated humidifier', () => {
    expect(codesOf('exchanger-with-heated')).toEqual(['EXCHANGER_WITH_HUMIDIFIER'])
  })

  it('small-bore tubing above the flow it can carry, with the pressure', () => {
    const chain = inLine([
      demoPart('outlet-oxygen'),
      [demoPart('wall-70'), { flowLpm: 60, isFlush: true }],
      demoPart('nipple'),
      demoPart('tubing-10'),
      demoPart('non-rebreather/adult'),
      patientPart('face'),
    ])
    const [refusal, ...others] = checkChain({ chain, patient: ADULT }).refusals
    expect(others).toEqual([])
    expect(refusal?.code).toBe('TUBE_ABOVE_ITS_FLOW')
    // Δp = f·(L/d)·½ρv² by hand, gas expanding: v 55.3 m/s, Re 17 300, f 0.0276: 117 kPa, 84 kPa with expansion.
    expect(refusal?.values['pressureKpa']).toBeGreaterThan(75)
    expect(refusal?.values['pressureKpa']).toBeLessThan(95)
  })

  it('a humidifier whose relief valve would open', () => {
    // By hand through 10 m of 4.8 mm at 10 L/min: v 9.2 m/s, Re 2 900, f 0.030 between laminar and turbulent: 3.5 kPa.
    const chain = inLine([
      demoPart('outlet-oxygen'),
      [demoPart('wall-15'), { flowLpm: 10 }],
      { ...demoPart('bubble'), humidifier: { ...HUMIDIFIER, reliefKpa: 3 } },
      demoPart('tubing-10'),
      demoPart('simple-mask/adult'),
      patientPart('face'),
    ])
    expect(checkChain({ chain, patient: ADULT }).refusals.map(({ code }) => code)).toEqual([
      'RELIEF_VALVE_OPENS',
    ])
  })

  it('an air outlet', () => {
    expect(codesOf('air-outlet')).toEqual(['AIR_INSTEAD_OF_OXYGEN'])
  })

  it('a wrong size', () => {
    expect(refusedFor(solved(ON_WALL, { ...ADULT, ageYears: 0.6, weightKg: 7 }))).toEqual([
      'WRONG_SIZE',
    ])
  })

  it('a size whose label names another weight, and not one whose label names this', () => {
    const shelf = (label: { readonly fitsMinKg?: number; readonly fitsMaxKg?: number }): Shelf => ({
      ...DEMO_SHELF,
      interfaces: DEMO_SHELF.interfaces.map((row) => ({
        ...row,
        sizes: row.sizes.map((one) => ({ ...one, ...label })),
      })),
    })
    const at = (weightKg: number, label: object): ChainAnswer =>
      solveChains({ shelf: shelf(label), wanted: ON_WALL, patient: { ...ADULT, weightKg } })
    expect(refusedFor(at(38, { fitsMinKg: 40 }))).toEqual(['WRONG_SIZE'])
    expect(at(42, { fitsMinKg: 40 }).kind).toBe('chains')
  })

  it('a collar on a mask that has no air ports, which would be left out unseen', () => {
    expect(refusedFor(solved({ ...ON_WALL, humidification: 'collar' }))).toEqual(['NO_AIR_PORTS'])
    const pipes: Wanted = { ...ON_WALL, interfaceId: null, humidification: 'collar' }
    expect(refusedFor(solved(pipes, TUBE))).toEqual(['NO_AIR_PORTS'])
  })

  it('a flow that the interface may not have, though its parts go together in a hundred thousand ways', () => {
    // Mask and cannula each on a jet that two meters drive.
    const wanted: Wanted = {
      interfaceId: 'cannula-under-mask',
      size: 'adult',
      sourceId: 'nebuliser-double',
      humidification: 'none',
      flowLpm: 20,
      overFlowLpm: 20,
      o2Fraction: 0.4,
    }
    expect(refusedFor(solved(wanted))).toContain('FLOW_ABOVE_RATED')
  })

  it('a ventilator in a mode that cycles pressure', () => {
    const wanted: Wanted = {
      ...LIMB,
      interfaceId: 'aerosol-mask',
      size: 'adult',
      flowLpm: 40,
      mode: 'cycles-pressure',
    }
    expect(refusedFor(solved(wanted))).toEqual(['MODE_CYCLES_PRESSURE'])
  })

  it('oxygen tubing on a line into a vein', () => {
    expect(codesOf('tubing-on-vein-line')).toContain('NEVER_FOR_GAS')
  })

  it('a ventilator without its filter', () => {
    const chain = WRONG_ON_PURPOSE.find(({ id }) => id === 'ventilator-gives-breaths')?.chain
    const bare = chain?.parts.map((one) =>
      one.part.kind === 'filter'
        ? { ...one, part: { ...one.part, kind: 'adapter' as const } }
        : one,
    )
    const check = checkChain({
      chain: { parts: bare ?? [], joins: chain?.joins ?? [] },
      patient: ADULT,
    })
    expect(check.refusals.map(({ code }) => code)).toContain('VENTILATOR_WITHOUT_FILTER')
  })

  it('a ventilator of which every mode named gives breaths', () => {
    const modes = [{ label: 'Support', kind: 'cycles-pressure' }] as const
    const shelf = withMachine({ modes })
    expect(refusedFor(solveChains({ shelf, wanted: ON_LIMB, patient: ADULT }))).toEqual([
      'NO_EVEN_MODE',
    ])
    const built = candidateSetUps(shelf).filter(({ setUp }) => setUp.source.kind === 'ventilator')
    expect(built).toEqual([])
  })

  it('face oxygen on a patient who breathes by a cuffed tube', () => {
    expect(refusedFor(solved(ON_WALL, TUBE))).toEqual(['OPENING_NOT_IN_USE'])
  })
})

describe('missing parts', () => {
  it('names the ward that can lend them', () => {
    const answer = solved({ ...ON_WALL, humidification: 'bubble' }, ADULT, 'wren')
    if (answer.kind !== 'missing') throw new Error(answer.kind)
    expect(answer.missing.map(({ part, wardIds }) => [part.id, wardIds])).toEqual([
      ['bubble', ['heron']],
    ])
    expect(answer.withThem.check.isAccepted).toBe(true)
  })
})

describe('wrong on purpose', () => {
  it('holds ten chains', () => {
    expect(WRONG_ON_PURPOSE).toHaveLength(10)
  })

  it.each(WRONG_ON_PURPOSE.map(({ id }) => id))('%s is refused by the same checker', (id) => {
    expect(codesOf(id).length).toBeGreaterThan(0)
  })
})

const HUMIDIFIER = {
  id: 'bubble',
  kind: 'bubble',
  label: 'Bubble humidifier',
  place: 'heron',
  count: 1,
} as const

function codesOf(id: string): readonly string[] {
  const wrong = WRONG_ON_PURPOSE.find((one) => one.id === id)
  return wrong === undefined ? [] : checkChain(wrong).refusals.map(({ code }) => code)
}
