// A set-up on a patient as the sources describe it, and one run of the breath engine on it. Leaves out blood, and people who differ.
import { deliveredBreath, effectiveO2Fraction } from '../delivery/delivered-breath.ts'
import type { DeliveredBreath, Metabolism } from '../delivery/delivered-breath.ts'
import type { BreathPattern } from '../delivery/breath.ts'
import { MIDDLE_INTERFACE } from '../delivery/delivery-body.ts'
import type { DeliveryBody, InterfaceDraw } from '../delivery/delivery-body.ts'
import type { Network } from '../delivery/network.ts'
import { createPeriodicSolver } from '../delivery/periodic.ts'
import { setUpNetwork } from '../delivery/set-up-network.ts'
import { deliveredStream, MIDDLE_STREAM } from '../kit/delivered-stream.ts'
import type { DeliveredStream, StreamDraw } from '../kit/delivered-stream.ts'
import type { FamilyId, FitId, SizeId } from '../kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { InterfaceFamily } from '../kit/interface-family.ts'
import { flowmeterToBtpsFactor } from '../physics/gas-condition.ts'
import { entrainmentRatio } from '../physics/gas-mixing.ts'
import type { AirwayState } from '../physiology/airway-state.ts'
import { AIR_O2_FRACTION, STANDARD_PRESSURE_KPA } from '../units/constants.ts'
import { assert } from '../errors.ts'
import type { GasBasis } from './evidence-row.ts'
import { limitingNetwork } from './limiting-case.ts'
import type { LimitingCase } from './limiting-case.ts'
import { familyWith } from './parameters.ts'
import type { Parameters } from './parameters.ts'
import { researchSource } from './research-source.ts'

/** What is absent takes the middle: adult size, gentle fit, natural airway, nose breathing, pure oxygen, sea level. */
export interface EngineCase {
  readonly family: FamilyId
  readonly flowLpm: number
  readonly breath: BreathPattern
  readonly gas: GasBasis
  readonly size?: SizeId
  readonly fit?: FitId
  /** Printed entrainment setting, or the fraction set on a blender. */
  readonly setO2Fraction?: number
  readonly airO2Fraction?: number
  readonly barometricKpa?: number
  readonly airway?: AirwayState
  readonly mouthShare?: number
  /** Flow of the mask over a cannula, L/min. */
  readonly overFlowLpm?: number
  /** Body weight where it is not an adult's: dead space and metabolism follow it. */
  readonly infantKg?: number
  /** A bench lung takes up no oxygen and gives off no carbon dioxide. */
  readonly isBench?: true
  readonly limit?: LimitingCase
  /** Numbers of the interface changed from their stored value. */
  readonly parameters?: Parameters
  readonly interfaceDraw?: InterfaceDraw
  readonly streamDraw?: StreamDraw
  readonly deadSpaceFactor?: number
}

const NATURAL: AirwayState = { route: 'natural', nose: 'open' }

/** Adult dead space above and below the glottis, L [Nunn1959]; infants per kg [Numa1996]. */
const ADULT_L = { extrathoracic: 0.072, intrathoracic: 0.066 } as const
const INFANT_L_PER_KG = { extrathoracic: 0.0023, intrathoracic: 0.00103 } as const

/** Adult oxygen uptake and carbon dioxide output at rest, L/min STPD (common practice), and of infants per kg [Verma2019]. */
const ADULT_METABOLISM = { uptake: 0.25, output: 0.2 } as const
const INFANT_METABOLISM_PER_KG = { uptake: 0.0075, output: 0.006 } as const
/** STPD to BTPS at sea level: 310.15/273.15 × 101.325/(101.325 − 6.282). */
const STPD_TO_BTPS = 1.2105

/** Memory for one run after another; every run overwrites all of it. */
const SOLVER = createPeriodicSolver()

/** Pockets of the case, limiting case and changed parameters included. */
export function caseNetwork(engine: EngineCase): {
  readonly network: Network
  readonly sourceO2Fraction: number
} {
  const family = familyWith(INTERFACE_FAMILIES[engine.family], engine.parameters ?? {})
  const size = family.sizes.find((candidate) => candidate.id === (engine.size ?? 'adult'))
  assert(size !== undefined, 'evidence case names a size the family has')
  const stream = caseStream(family, engine)
  const network = setUpNetwork({
    family,
    size,
    fit: engine.fit ?? 'gentle',
    stream,
    over: overMask(engine),
    body: caseBody(engine),
    draw: engine.interfaceDraw ?? MIDDLE_INTERFACE,
  })
  return {
    network: engine.limit === undefined ? network : limitingNetwork(network, engine.limit),
    sourceO2Fraction: stream.sourceO2Fraction,
  }
}

/** The effective fraction alone, as the planner asks for it. */
export function runEffective(engine: EngineCase): number {
  const { network, sourceO2Fraction } = caseNetwork(engine)
  return effectiveO2Fraction(SOLVER, {
    network,
    breath: engine.breath,
    sourceO2Fraction,
    airO2Fraction: engine.airO2Fraction ?? AIR_O2_FRACTION,
  })
}

/** One steady breath of the case. */
export function runEngine(engine: EngineCase): DeliveredBreath {
  const { network, sourceO2Fraction } = caseNetwork(engine)
  const question = {
    network,
    breath: engine.breath,
    sourceO2Fraction,
    airO2Fraction: engine.airO2Fraction ?? AIR_O2_FRACTION,
    metabolism: caseMetabolism(engine),
  }
  return deliveredBreath(question, SOLVER)
}

function caseMetabolism(engine: EngineCase): Metabolism {
  if (engine.isBench === true) return { oxygenUptakeLpmBtps: 0, carbonDioxideOutputLpmBtps: 0 }
  const perKg = engine.infantKg
  const rest = perKg === undefined ? ADULT_METABOLISM : INFANT_METABOLISM_PER_KG
  const factor = STPD_TO_BTPS * (perKg ?? 1)
  return {
    oxygenUptakeLpmBtps: rest.uptake * factor,
    carbonDioxideOutputLpmBtps: rest.output * factor,
  }
}

function caseBody(engine: EngineCase): DeliveryBody {
  const perKg = engine.infantKg
  const factor = engine.deadSpaceFactor ?? 1
  const extrathoracicL =
    perKg === undefined ? ADULT_L.extrathoracic : INFANT_L_PER_KG.extrathoracic * perKg
  const intrathoracicL =
    perKg === undefined ? ADULT_L.intrathoracic : INFANT_L_PER_KG.intrathoracic * perKg
  return {
    airway: engine.airway ?? NATURAL,
    breath: engine.breath,
    extrathoracicL: extrathoracicL * factor,
    intrathoracicL: intrathoracicL * factor,
    mouthShare: engine.mouthShare ?? 0,
    tubeShare: 0.7,
  }
}

/** At one condition the stream is taken as given. A study's own meter reads right; where devices differ it errs as at the bedside. */
function caseStream(family: InterfaceFamily, engine: EngineCase): DeliveredStream {
  if (engine.gas === 'one-condition') return plainStream(family, engine)
  const barometricKpa = engine.barometricKpa ?? STANDARD_PRESSURE_KPA
  const setO2Fraction = engine.setO2Fraction ?? null
  if (engine.streamDraw === undefined && family.feeds.includes('small-bore'))
    return meteredStream(family, { flowLpm: engine.flowLpm, setO2Fraction, barometricKpa })
  return deliveredStream(
    {
      source: researchSource(family),
      flow: { kind: 'scale', flowLpm: engine.flowLpm },
      setO2Fraction,
      entrainsAir: family.entrainsAir,
      barometricKpa,
    },
    engine.streamDraw ?? MIDDLE_STREAM,
  )
}

/** Pure oxygen through an exact meter, with the air that an entrainment valve adds. */
function meteredStream(
  family: InterfaceFamily,
  setting: {
    readonly flowLpm: number
    readonly setO2Fraction: number | null
    readonly barometricKpa: number
  },
): DeliveredStream {
  const { flowLpm, setO2Fraction } = setting
  const ratio =
    family.entrainsAir === 'no' || setO2Fraction === null
      ? 0
      : entrainmentRatio({ targetO2Fraction: setO2Fraction })
  return {
    totalLpmBtps: flowLpm * (1 + ratio) * flowmeterToBtpsFactor(setting),
    sourceShare: 1 / (1 + ratio),
    sourceO2Fraction: 1,
    oxygenUsedLpm: flowLpm,
  }
}

/** `flowLpm` is all gas at the interface, already mixed to the set fraction. */
function plainStream(family: InterfaceFamily, engine: EngineCase): DeliveredStream {
  const air = engine.airO2Fraction ?? AIR_O2_FRACTION
  const setO2Fraction = engine.setO2Fraction ?? 1
  const mixesAir = family.entrainsAir !== 'no'
  return {
    totalLpmBtps: engine.flowLpm,
    sourceShare: mixesAir ? (setO2Fraction - air) / (1 - air) : 1,
    sourceO2Fraction: mixesAir ? 1 : setO2Fraction,
    oxygenUsedLpm: engine.flowLpm * ((setO2Fraction - air) / (1 - air)),
  }
}

function overMask(engine: EngineCase): {
  readonly family: InterfaceFamily
  readonly stream: DeliveredStream
} | null {
  if (engine.overFlowLpm === undefined) return null
  const family = INTERFACE_FAMILIES['simple-mask']
  return {
    family,
    stream: caseStream(family, { ...engine, family: 'simple-mask', flowLpm: engine.overFlowLpm }),
  }
}
