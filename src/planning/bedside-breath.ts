// One set-up on one patient in full: the middle breath for the ribbon, and the bands over what is not known and from breath to breath.
import { breathSeries } from '../delivery/breath-series.ts'
import { deliveredBreath, effectiveO2Fraction } from '../delivery/delivered-breath.ts'
import type { DeliveredBreath } from '../delivery/delivered-breath.ts'
import { MIDDLE_INTERFACE } from '../delivery/delivery-body.ts'
import type { Network } from '../delivery/network.ts'
import { createPeriodicSolver } from '../delivery/periodic.ts'
import type { PeriodicSolver } from '../delivery/periodic.ts'
import { placeSetUp } from '../inference/delivery-points.ts'
import type { DeliveryPoint, PlacedSetUp } from '../inference/delivery-points.ts'
import { seededUniform } from '../inference/latin-hypercube.ts'
import { deliveryBodyOf } from '../inference/patient-sampler.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { SetUp } from '../kit/set-up.ts'
import type { Case } from '../patient/case.ts'
import { middlePatient } from '../patient/draw.ts'
import type { PatientDraw } from '../patient/draw.ts'
import { btps, conditionFactor, STPD } from '../physics/gas-condition.ts'
import { lpmFromMlPerMin, mlPerSFromLps } from '../units/flow.ts'
import { meanAirwayPressure } from './airway-pressure.ts'
import { atRate } from './holds-until.ts'
import type { Band } from './plan-types.ts'
import { bandOf } from './score.ts'

export interface BedsideBreath {
  readonly breath: DeliveredBreath
  /** Quasi-steady effective fraction over a series of this patient's own varying breaths. */
  readonly breathToBreath: Band
  readonly isChecked: boolean
  /** Nasal high flow only: flow that clears the upper airway while the patient breathes out, mL/s, and mean airway pressure. */
  readonly upperAirwayClearanceMlPerS: number | null
  readonly meanAirwayPressureCmH2o: Band | null
}

export interface BedsideQuestion {
  readonly case: Case
  readonly setUp: SetUp
  readonly seed?: number
}

/** Steps in each phase of the drawn breath: enough for a smooth ribbon. */
const RIBBON_RESOLUTION = 40

/** Breaths of the series: about four minutes at rest. */
const SERIES_BREATHS = 64

interface MiddleBreath {
  readonly patient: PatientDraw
  readonly point: DeliveryPoint
  readonly placed: PlacedSetUp
  readonly solver: PeriodicSolver
  readonly breath: DeliveredBreath
}

function middle(question: BedsideQuestion & { readonly ratePerMin?: number }): MiddleBreath {
  const patient = middlePatient(question.case)
  const typed = middlePoint(patient, question.setUp)
  const point = question.ratePerMin === undefined ? typed : atRate(typed, question.ratePerMin)
  const placed = placeSetUp(question.setUp, point, patient.barometricPressureKpa)
  const solver = createPeriodicSolver()
  const { network, sourceO2Fraction } = placed
  const breath = deliveredBreath(
    {
      network,
      breath: point.body.breath,
      sourceO2Fraction,
      metabolism: metabolismOf(patient),
      resolution: RIBBON_RESOLUTION,
    },
    solver,
  )
  return { patient, point, placed, solver, breath }
}

/** The ribbon alone, at another breathing rate where one is given: volume, duty and lungs stay. */
export function middleBreath(
  question: BedsideQuestion & { readonly ratePerMin?: number },
): DeliveredBreath {
  return middle(question).breath
}

/** The middle patient, face, meter and lungs on a set-up. Rates typed on what is on now count. */
export function bedsideBreath(question: BedsideQuestion): BedsideBreath {
  const { patient, point, placed, solver, breath } = middle(question)
  const { network, sourceO2Fraction } = placed
  const series = breathSeries({
    mean: point.body.breath,
    variability: patient.variability,
    breaths: SERIES_BREATHS,
    uniform: seededUniform(question.seed ?? 1),
  }).map((one) => {
    const varied = placeSetUp(
      question.setUp,
      { ...point, body: { ...point.body, breath: one } },
      patient.barometricPressureKpa,
    )
    return effectiveO2Fraction(solver, { network: varied.network, breath: one, sourceO2Fraction })
  })
  return {
    breath,
    breathToBreath: bandOf(series),
    isChecked: INTERFACE_FAMILIES[question.setUp.family].isChecked,
    upperAirwayClearanceMlPerS: clearanceOf(question.setUp, network),
    meanAirwayPressureCmH2o: meanAirwayPressure(question.setUp),
  }
}

function clearanceOf(setUp: SetUp, network: Network): number | null {
  const isHighFlow = INTERFACE_FAMILIES[setUp.family].behaviour.kind === 'high-flow'
  return isHighFlow ? mlPerSFromLps(network.flushLps) : null
}

function middlePoint(patient: PatientDraw, setUp: SetUp): DeliveryPoint {
  return {
    body: deliveryBodyOf(patient),
    fit: setUp.fit,
    interfaceDraw: MIDDLE_INTERFACE,
    meterU: 0.5,
    secondMeterU: 0.5,
    purityU: 0.5,
    entrainmentU: 0.5,
    modelU: () => 0.5,
  }
}

/** Uptake and output as litres at body conditions. */
function metabolismOf(patient: PatientDraw) {
  const factor = conditionFactor({
    from: STPD,
    to: btps({ barometricKpa: patient.barometricPressureKpa }),
  })
  const oxygenUptakeLpmBtps = lpmFromMlPerMin(patient.gas.oxygenUptakeMlPerMin) * factor
  return {
    oxygenUptakeLpmBtps,
    carbonDioxideOutputLpmBtps: oxygenUptakeLpmBtps * patient.gas.respiratoryQuotient,
  }
}
