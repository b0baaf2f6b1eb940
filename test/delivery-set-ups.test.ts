// Every family as it is really built: all candidates of the demo shelf on random patients of every example, with the laws of the breath.
import { describe, expect, it } from 'vitest'
import { checkBreath, minuteVentilationLpmBtps } from '../src/delivery/breath.ts'
import { deliveredBreath } from '../src/delivery/delivered-breath.ts'
import { createPeriodicSolver } from '../src/delivery/periodic.ts'
import { placeSetUp } from '../src/inference/delivery-points.ts'
import type { DeliveryPoint } from '../src/inference/delivery-points.ts'
import { patientSampler } from '../src/inference/patient-sampler.ts'
import { candidateSetUps } from '../src/kit/build-set-ups.ts'
import type { CandidateSetUp } from '../src/kit/build-set-ups.ts'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'
import { FAMILY_IDS } from '../src/kit/family-id.ts'
import type { FamilyId } from '../src/kit/family-id.ts'
import { readCase } from '../src/patient/read-case.ts'
import type { Case } from '../src/patient/case.ts'
import { AIR_O2_FRACTION } from '../src/units/constants.ts'
import { AGREEMENT_TOLERANCE, fastFraction, judgeCase } from './support/agreement.ts'
import { EXAMPLE_FILES, parsedFile } from './support/examples.ts'
import { randomStream } from './support/seed.ts'

const CASES: readonly Case[] = EXAMPLE_FILES.flatMap((file) => {
  const read = readCase(parsedFile(file))
  return read.ok ? [read.case] : []
})
const CANDIDATES = candidateSetUps(DEMO_SHELF)
const PLACES_KPA = [101.325, 88, 55]

interface Placed {
  readonly candidate: CandidateSetUp
  readonly point: DeliveryPoint
  readonly barometricKpa: number
}

/** `count` random pairs of a set-up of the family and a patient whose size it is made for. */
function randomPlacements(family: FamilyId, count: number): readonly Placed[] {
  const random = randomStream()
  const u = (): number => Math.min(0.999_999, Math.max(1e-6, random()))
  const pick = <T>(list: readonly T[]): T => {
    const found = list[Math.floor(random() * list.length)]
    if (found === undefined) throw new Error('nothing to pick from')
    return found
  }
  const ofFamily = CANDIDATES.filter(({ setUp }) => setUp.family === family)
  return Array.from({ length: count }, () => {
    const candidate = pick(ofFamily)
    const drawn = patientSampler(pick(CASES)).drawDelivery(u)
    const modelU = u()
    const point: DeliveryPoint = {
      ...drawn,
      interfaceDraw: {
        pocket: u(),
        exchange: u(),
        jet: u(),
        draught: u(),
        leak: u(),
        forwardLoss: u(),
        bag: u(),
        capture: u(),
        flush: u(),
      },
      meterU: u(),
      secondMeterU: u(),
      purityU: u(),
      entrainmentU: u(),
      modelU: () => modelU,
    }
    return { candidate, point, barometricKpa: pick(PLACES_KPA) }
  })
}

const METABOLISM = { oxygenUptakeLpmBtps: 0.02, carbonDioxideOutputLpmBtps: 0.016 }
const PER_FAMILY = 40
const JUDGED_PER_FAMILY = 6

describe.each(FAMILY_IDS)('%s', (family) => {
  const solver = createPeriodicSolver()

  it('keeps the laws of the breath on random patients', () => {
    for (const { candidate, point, barometricKpa } of randomPlacements(family, PER_FAMILY)) {
      const { network, sourceO2Fraction } = placeSetUp(candidate.setUp, point, barometricKpa)
      const { breath } = point.body
      checkBreath(breath)
      const result = deliveredBreath(
        { network, breath, sourceO2Fraction, metabolism: METABOLISM },
        solver,
      )
      const { device, stored, room, expired } = result.origins
      expect(device + stored + room + expired).toBeCloseTo(1, 9)
      for (const share of [device, stored, room, expired])
        expect(share).toBeGreaterThanOrEqual(-1e-9)
      expect(result.wastedShare).toBeGreaterThanOrEqual(-1e-9)
      expect(result.wastedShare).toBeLessThanOrEqual(1 + 1e-9)
      const low = Math.min(AIR_O2_FRACTION, sourceO2Fraction)
      expect(result.effectiveO2Fraction).toBeGreaterThanOrEqual(low - 1e-9)
      expect(result.effectiveO2Fraction).toBeLessThanOrEqual(
        Math.max(AIR_O2_FRACTION, sourceO2Fraction) + 1e-9,
      )
      // What is breathed in for the first time cannot hold more source gas than the device gave in the breath.
      const givenLpm =
        60 *
        (network.deviceFlowLps * network.sourceShare +
          network.outerDeviceFlowLps * network.outerSourceShare)
      const bound =
        AIR_O2_FRACTION +
        Math.max(0, sourceO2Fraction - AIR_O2_FRACTION) *
          Math.min(1, givenLpm / minuteVentilationLpmBtps(breath))
      expect(result.freshO2Fraction).toBeLessThanOrEqual(bound + 1e-6)
      for (const value of [
        result.tracheaO2Fraction,
        result.openingO2Fraction,
        result.inspiredCo2Fraction,
        result.pocketO2Fraction,
      ]) {
        expect(Number.isFinite(value)).toBe(true)
      }
    }
  })

  it('agrees with the adaptive integrator', () => {
    for (const { candidate, point, barometricKpa } of randomPlacements(family, JUDGED_PER_FAMILY)) {
      const { network } = placeSetUp(candidate.setUp, point, barometricKpa)
      const pair = { network, breath: point.body.breath }
      const fast = fastFraction(solver, pair)
      const judged = judgeCase(pair, solver.bag.startL)
      expect(Math.abs(fast - judged.effectiveO2Fraction), candidate.id).toBeLessThan(
        AGREEMENT_TOLERANCE,
      )
    }
  })
})
