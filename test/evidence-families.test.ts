// Each interface family against its nearest neighbour: the answers differ where physics says so, and in that direction. Leaves out sizes of difference, which evidence rows judge.
import { describe, expect, it } from 'vitest'
import {
  breathOf,
  DISTRESSED_ADULT,
  infantBreath,
  RESTING_ADULT,
} from '../src/evidence/breathings.ts'
import { runEngine } from '../src/evidence/engine-case.ts'
import type { EngineCase } from '../src/evidence/engine-case.ts'
import { peopleStatistic } from '../src/evidence/people.ts'
import type { FamilyId } from '../src/kit/family-id.ts'

const CUFFED = {
  route: 'tracheostomy',
  nose: 'open',
  tube: { cuff: 'up', speakingValve: false, capped: false, heatMoistureExchanger: false },
} as const

/** Peak inspiratory flow about 94 L/min. */
const HIGH_DEMAND = breathOf({
  tidalVolumeL: 0.8,
  ratePerMin: 30,
  dutyFraction: 0.4,
  timeConstantS: 0.4,
})

function on(family: FamilyId, flowLpm: number, more: Partial<EngineCase> = {}): EngineCase {
  return { family, flowLpm, breath: RESTING_ADULT, gas: 'btps-from-meter', ...more }
}

function effective(engine: EngineCase): number {
  return runEngine(engine).effectiveO2Fraction
}

const INFANT = {
  size: 'infant',
  infantKg: 7,
  breath: infantBreath({ weightKg: 7, tidalMlPerKg: 6.5, ratePerMin: 35 }),
} as const

describe('families differ from their neighbours', () => {
  it('nasal cannula: loses more of its flow than a catheter in the nasopharynx', () => {
    expect(effective(on('nasal-cannula', 1, INFANT))).toBeLessThan(
      effective(on('nasal-catheter', 1, INFANT)) - 0.01,
    )
  })

  it('nasopharyngeal catheter: still flushes the pharynx of a child who breathes by mouth', () => {
    const gain = (family: FamilyId): number =>
      effective(on(family, 1, { ...INFANT, mouthShare: 0.4 })) - effective(on(family, 1, INFANT))
    expect(gain('nasal-catheter')).toBeGreaterThan(gain('nasal-cannula'))
  })

  it('simple mask: has no store, so gives less than a partial rebreather', () => {
    expect(effective(on('simple-mask', 8))).toBeLessThan(
      effective(on('partial-rebreather-mask', 8)) - 0.05,
    )
  })

  it('partial rebreather: lets the patient breathe expired gas again, which a non-rebreather does not', () => {
    const deep = { breath: DISTRESSED_ADULT }
    const partial = runEngine(on('partial-rebreather-mask', 8, deep))
    const full = runEngine(on('non-rebreather-mask', 8, deep))
    expect(partial.inspiredCo2Fraction).toBeGreaterThan(1.2 * full.inspiredCo2Fraction)
    expect(partial.origins.expired).toBeGreaterThan(full.origins.expired)
  })

  it('non-rebreather: gives more than a simple mask at any flow, most where the bag counts', () => {
    for (const flowLpm of [8, 10, 15])
      expect(effective(on('non-rebreather-mask', flowLpm))).toBeGreaterThan(
        effective(on('simple-mask', flowLpm)) + 0.1,
      )
  })

  it('entrainment mask: holds in fast breathing where a simple mask of the same fraction falls', () => {
    const fall = (engine: EngineCase): number =>
      effective(engine) - effective({ ...engine, breath: DISTRESSED_ADULT })
    const valve = on('entrainment-mask', 10, { setO2Fraction: 0.4 })
    expect(fall(valve)).toBeLessThan(0.03)
    expect(fall(on('simple-mask', 5))).toBeGreaterThan(3 * fall(valve))
  })

  it('adjustable entrainment mask: the same middle, a wider spread', () => {
    const width = (family: FamilyId): number =>
      peopleStatistic(
        {
          engine: on(family, 8, { setO2Fraction: 0.35 }),
          people: {
            tidalVolumeCv: 0,
            rateCv: 0,
            dutyCv: 0,
            deadSpaceCv: 0,
            devicesDiffer: true,
            addsUnexplained: false,
          },
          statistic: 'width',
        },
        'effective',
      )
    const setting = { setO2Fraction: 0.35 }
    expect(effective(on('adjustable-entrainment-mask', 8, setting))).toBeCloseTo(
      effective(on('entrainment-mask', 8, setting)),
      6,
    )
    expect(width('adjustable-entrainment-mask')).toBeGreaterThan(1.2 * width('entrainment-mask'))
  })

  it('aerosol mask: loses more through its large ports than an entrainment mask at the same stream', () => {
    const setting = { setO2Fraction: 0.5 }
    expect(effective(on('aerosol-mask', 12, setting))).toBeLessThan(
      effective(on('entrainment-mask', 12, setting)) - 0.005,
    )
  })

  it('face tent: gives less than an aerosol mask, and a draught costs it more', () => {
    const setting = { setO2Fraction: 0.5 }
    const tent = on('face-tent', 12, setting)
    expect(effective(tent)).toBeLessThan(effective(on('aerosol-mask', 12, setting)) - 0.01)
    const still = { ...STILL, draught: 0.02 }
    const draughty = { ...STILL, draught: 0.98 }
    const cost = (family: FamilyId): number =>
      effective(on(family, 12, { ...setting, interfaceDraw: still })) -
      effective(on(family, 12, { ...setting, interfaceDraw: draughty }))
    expect(cost('face-tent')).toBeGreaterThan(cost('aerosol-mask') + 0.01)
  })

  it('tracheostomy mask: bypasses the store of the upper airway, so it falls further at high demand than an aerosol mask', () => {
    const setting = { setO2Fraction: 0.6, breath: HIGH_DEMAND }
    const neck = runEngine(on('tracheostomy-mask', 15, { ...setting, airway: CUFFED }))
    const face = runEngine(on('aerosol-mask', 15, setting))
    expect(neck.effectiveO2Fraction).toBeLessThan(face.effectiveO2Fraction)
    expect(neck.alveolarVentilationLpm).toBeGreaterThan(face.alveolarVentilationLpm)
  })

  it('t-piece: closed to the room but for its open end, so at rest it gives more than a tracheostomy mask', () => {
    const setting = { setO2Fraction: 0.5, airway: CUFFED }
    expect(effective(on('t-piece', 12, setting))).toBeGreaterThan(
      effective(on('tracheostomy-mask', 12, setting)) + 0.005,
    )
  })

  it('t-piece with limb: the limb stores stream for the peak of inspiration, so it gives more at high demand', () => {
    const setting = { setO2Fraction: 0.6, airway: CUFFED, breath: HIGH_DEMAND }
    expect(effective(on('t-piece-with-limb', 12, setting))).toBeGreaterThan(
      effective(on('t-piece', 12, setting)) + 0.01,
    )
  })

  it('head box: holds what is fed into it whatever the breathing, but carbon dioxide gathers at low flow', () => {
    const box = (flowLpm: number, ratePerMin: number): EngineCase =>
      on('head-box', flowLpm, {
        size: 'newborn',
        setO2Fraction: 0.4,
        infantKg: 3.5,
        breath: infantBreath({ weightKg: 3.5, tidalMlPerKg: 6, ratePerMin }),
      })
    expect(effective(box(8, 40)) - effective(box(8, 70))).toBeLessThan(0.01)
    expect(runEngine(box(2, 50)).inspiredCo2Fraction).toBeGreaterThan(
      1.8 * runEngine(box(8, 50)).inspiredCo2Fraction,
    )
  })

  it('nasal high flow: covers a peak flow that a 60 % valve does not, and frees dead space that a cannula does not', () => {
    const fast = { breath: DISTRESSED_ADULT, setO2Fraction: 0.6 }
    expect(effective(on('nasal-high-flow', 50, fast))).toBeGreaterThan(
      effective(on('entrainment-mask', 15, fast)) + 0.05,
    )
    expect(runEngine(on('nasal-high-flow', 40, fast)).alveolarVentilationLpm).toBeGreaterThan(
      runEngine(on('nasal-cannula', 6, { breath: DISTRESSED_ADULT })).alveolarVentilationLpm,
    )
  })

  it('cannula under a mask: gives more than either alone', () => {
    const both = effective(on('cannula-under-mask', 4, { overFlowLpm: 8 }))
    expect(both).toBeGreaterThan(effective(on('simple-mask', 8)) + 0.05)
    expect(both).toBeGreaterThan(effective(on('nasal-cannula', 4)) + 0.05)
  })
})

const STILL = {
  pocket: 0.5,
  exchange: 0.5,
  jet: 0.5,
  draught: 0.5,
  leak: 0.5,
  forwardLoss: 0.5,
  bag: 0.5,
  capture: 0.5,
  flush: 0.5,
} as const
