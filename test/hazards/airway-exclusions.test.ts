// Hazards of joining an interface to an airway it must not serve: each set-up is ruled out with a reason and what would change it.
import { describe, expect, it } from 'vitest'
import { DEMO_SHELF } from '../../src/kit/demo-shelf/demo-shelf.ts'
import { FAMILY_IDS } from '../../src/kit/family-id.ts'
import type { FamilyId } from '../../src/kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../../src/kit/interface-families.ts'
import type { SetUp } from '../../src/kit/set-up.ts'
import { exclusionsOf } from '../../src/planning/exclusions.ts'
import type { PlanSubject } from '../../src/planning/exclusion-rule.ts'
import type { AirwayState } from '../../src/physiology/airway-state.ts'
import { CUFF_UP, LARYNGECTOMY, NATURAL, setUpOf, tubeWith } from './bedside.ts'

const ADULT: PlanSubject = {
  ageYears: 60,
  weightKg: 70,
  airway: NATURAL,
  changes: [],
  retentionRisk: 'none',
  goal: { kind: 'saturation', lowPercent: 94, highPercent: 98 },
  ratePerMin: 18,
}

const FLOWS: Readonly<Partial<Record<FamilyId, number>>> = {
  'nasal-cannula': 2,
  'nasal-catheter': 1,
  'cannula-under-mask': 4,
  'simple-mask': 6,
  'head-box': 8,
}

function codes(options: {
  readonly subject?: Partial<PlanSubject>
  readonly family: FamilyId
  readonly flowLpm?: number
  readonly humidification?: 'none' | 'heated'
}): readonly string[] {
  const { family } = options
  const flowLpm = options.flowLpm ?? FLOWS[family] ?? 10
  const size = INTERFACE_FAMILIES[family].sizes.at(-1)?.id ?? 'adult'
  const setUp = {
    ...setUpOf({ family, flowLpm, size, overFlowLpm: 6 }),
    humidification: options.humidification ?? 'heated',
  }
  return reasonsFor({ ...ADULT, ...options.subject }, setUp).map(({ code }) => code)
}

/** Reasons against a set-up whose device prints nothing, so that the family's own flows count. */
function reasonsFor(subject: PlanSubject, setUp: SetUp): ReturnType<typeof exclusionsOf> {
  const rated = INTERFACE_FAMILIES[setUp.family].sizes.find(({ id }) => id === setUp.size)?.rated
  if (rated === undefined) throw new Error(`no such size of ${setUp.family}`)
  return exclusionsOf(subject, { setUp, rated: { ...rated, isFromLabel: false, fits: {} } })
}

const MIST = (() => {
  const found = DEMO_SHELF.sources.find(({ kind }) => kind === 'jet-nebuliser')
  if (found === undefined) throw new Error('the demo shelf has a jet nebuliser')
  return found
})()

const FACE_OR_NOSE = FAMILY_IDS.filter((id) => INTERFACE_FAMILIES[id].opening !== 'neck')
const NECK = FAMILY_IDS.filter((id) => INTERFACE_FAMILIES[id].opening === 'neck')

/** The families that the rule rules out at an airway. */
function ruledOut(options: {
  readonly families: readonly FamilyId[]
  readonly airway: AirwayState
  readonly code: string
}): readonly FamilyId[] {
  const { families, airway, code } = options
  return families.filter((family) => codes({ family, subject: { airway } }).includes(code))
}

describe('ruled out by the airway', () => {
  it('families of both kinds are there to be ruled out', () => {
    expect(FACE_OR_NOSE.length).toBeGreaterThan(8)
    expect(NECK).toHaveLength(3)
  })

  it('every interface of face, nose and head on a laryngectomy', () => {
    const rule = { airway: LARYNGECTOMY, code: 'FACE_DOES_NOT_REACH_LUNGS' }
    expect(ruledOut({ families: FACE_OR_NOSE, ...rule })).toEqual(FACE_OR_NOSE)
  })

  it('every interface of face and nose while the cuff is up', () => {
    const rule = { airway: CUFF_UP, code: 'FACE_DOES_NOT_REACH_LUNGS' }
    expect(ruledOut({ families: FACE_OR_NOSE, ...rule })).toEqual(FACE_OR_NOSE)
  })

  it('every interface on a stoma whose tube is capped', () => {
    const airway = tubeWith({ cuff: 'down', capped: true })
    expect(ruledOut({ families: NECK, airway, code: 'NO_NECK_OPENING_IN_USE' })).toEqual(NECK)
  })

  it('every neck interface where there is no neck opening', () => {
    const rule = { airway: NATURAL, code: 'NO_NECK_OPENING_IN_USE' }
    expect(ruledOut({ families: NECK, ...rule })).toEqual(NECK)
  })

  it('a face mask while a speaking valve draws from the tube', () => {
    const families: readonly FamilyId[] = ['simple-mask', 'non-rebreather-mask']
    const airway = tubeWith({ cuff: 'down', speakingValve: true })
    expect(ruledOut({ families, airway, code: 'VALVE_DRAWS_FROM_TUBE' })).toEqual(families)
  })

  it('every nasal interface when both nostrils are packed', () => {
    const families: readonly FamilyId[] = [
      'nasal-cannula',
      'nasal-catheter',
      'nasal-high-flow',
      'cannula-under-mask',
    ]
    const airway = { route: 'natural', nose: 'blocked' } as const
    expect(ruledOut({ families, airway, code: 'NOSE_BLOCKED' })).toEqual(families)
  })

  it('nothing of the face for an open natural airway', () => {
    expect(codes({ family: 'simple-mask' })).toEqual([])
  })
})

describe('ruled out by what changes the interface', () => {
  it('nasal high flow after a base-of-skull fracture', () => {
    expect(
      codes({ family: 'nasal-high-flow', subject: { changes: ['base-of-skull-fracture'] } }),
    ).toContain('HIGH_FLOW_AFTER_SKULL_BASE_FRACTURE')
    expect(codes({ family: 'nasal-high-flow', flowLpm: 40 })).not.toContain(
      'HIGH_FLOW_AFTER_SKULL_BASE_FRACTURE',
    )
  })

  it('a catheter pushed blindly through the nose after a base-of-skull fracture', () => {
    const changes = ['base-of-skull-fracture'] as const
    const code = 'CATHETER_AFTER_SKULL_BASE_FRACTURE'
    expect(codes({ family: 'nasal-catheter', subject: { changes } })).toContain(code)
    expect(codes({ family: 'nasal-cannula', subject: { changes } })).not.toContain(code)
  })

  it('what presses on a burnt or injured face', () => {
    const subject = { changes: ['facial-burn-or-injury'] } as const
    expect(codes({ family: 'simple-mask', subject })).toContain('CONTACT_ON_BURN_OR_INJURY')
    expect(codes({ family: 'face-tent', subject })).not.toContain('CONTACT_ON_BURN_OR_INJURY')
  })
})

describe('ruled out by humidity', () => {
  it('dry gas to a bypassed upper airway', () => {
    for (const airway of [CUFF_UP, LARYNGECTOMY])
      for (const family of NECK)
        expect(codes({ family, humidification: 'none', subject: { airway } })).toContain(
          'NEVER_DRY_TO_NECK',
        )
  })

  it('a heated stream onto a heat and moisture exchanger', () => {
    const airway = tubeWith({ cuff: 'up', heatMoistureExchanger: true })
    expect(codes({ family: 't-piece', subject: { airway } })).toContain('EXCHANGER_UNDER_WET_GAS')
  })

  it('the mist of a jet nebuliser onto a heat and moisture exchanger, on tube and stoma', () => {
    const stoma = { ...LARYNGECTOMY, heatMoistureExchanger: true } as const
    for (const airway of [tubeWith({ cuff: 'up', heatMoistureExchanger: true }), stoma]) {
      const mist = { ...setUpOf({ family: 'tracheostomy-mask', flowLpm: 10 }), source: MIST }
      const found = reasonsFor({ ...ADULT, airway }, mist)
      const wet = found.find(({ code }) => code === 'EXCHANGER_UNDER_WET_GAS')
      expect(wet?.flip?.path).toBe(
        airway === stoma
          ? 'patient.airway.heatMoistureExchanger'
          : 'patient.airway.tube.heatMoistureExchanger',
      )
    }
  })
})

describe('ruled out by size and flow', () => {
  it('a simple mask below the flow that keeps carbon dioxide out', () => {
    expect(codes({ family: 'simple-mask', flowLpm: 3 })).toContain('BELOW_RATED_FLOW')
    expect(codes({ family: 'simple-mask', flowLpm: 5 })).not.toContain('BELOW_RATED_FLOW')
  })

  it('an adult mask on an infant', () => {
    expect(codes({ family: 'simple-mask', subject: { ageYears: 0.5, weightKg: 7 } })).toContain(
      'SIZE_FOR_OTHER_AGE',
    )
  })

  it('high flow above 2 L/min for each kilogram in a small child', () => {
    const subject = { ageYears: 0.5, weightKg: 6 }
    expect(codes({ family: 'nasal-high-flow', flowLpm: 20, subject })).toContain(
      'HIGH_FLOW_ABOVE_CHILD_CEILING',
    )
  })

  it('flush flow where less than everything is wanted', () => {
    const flush = setUpOf({ family: 'non-rebreather-mask', flowLpm: 'flush' })
    const reasons = reasonsFor(ADULT, flush)
    expect(reasons.map(({ code }) => code)).toContain('FLUSH_ONLY_WHEN_ALL_IS_WANTED')
  })
})

it('every exclusion says what would change it', () => {
  const airways = [NATURAL, CUFF_UP, LARYNGECTOMY, tubeWith({ cuff: 'none' })]
  const seen = airways.flatMap((airway) =>
    FAMILY_IDS.flatMap((family) => {
      const size = INTERFACE_FAMILIES[family].sizes.at(-1)?.id ?? 'adult'
      return reasonsFor({ ...ADULT, airway }, setUpOf({ family, size, flowLpm: 3 }))
    }),
  )
  expect(seen.length).toBeGreaterThan(20)
  for (const { code, flip } of seen)
    expect({ code, flips: flip !== null }).toEqual({ code, flips: true })
})
