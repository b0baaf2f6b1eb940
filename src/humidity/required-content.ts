// How much water the gas must bring, by airway, interface and flow, as rows with their source. Leaves out how much it does bring.
import type { FamilyId } from '../kit/family-id.ts'
import type { Provenance } from '../units/provenance.ts'
import { INFANT_AGE_YEARS_MAX } from './facts.ts'
import type { AirwayFacts } from './facts.ts'

export type RequirementCode =
  /** Active humidification of a bypassed airway. */
  | 'BYPASSED_ACTIVE'
  /** An exchanger on a bypassed airway. */
  | 'BYPASSED_EXCHANGER'
  /** High flow into the nose. */
  | 'HIGH_FLOW_NOSE'
  /** More than a nose is held to cope with for long. */
  | 'MORE_THAN_LOW_FLOW'
  /** The tip lies behind the nose. */
  | 'BEHIND_THE_NOSE'
  /** Most of the stream is room air, which brings its own water. */
  | 'MOSTLY_ROOM_AIR'
  /** Low flow into a working nose: nothing is required. */
  | 'NOTHING_REQUIRED'

export interface Requirement extends Provenance {
  readonly code: RequirementCode
  /** Least water, mg per body litre; null where nothing is required. */
  readonly leastMgPerL: number | null
  /** What is recommended, where a source gives a range. */
  readonly recommended: (Provenance & { readonly low: number; readonly high: number }) | null
  /** True where guidelines or local policies differ, so that the number is one of several views. */
  readonly isDisputed: boolean
}

export const REQUIREMENTS: Readonly<Record<RequirementCode, Requirement>> = {
  BYPASSED_ACTIVE: {
    code: 'BYPASSED_ACTIVE',
    leastMgPerL: 33,
    known: 'secondary',
    source: 'ISOHumidifiers2017',
    recommended: { low: 33, high: 44, known: 'seen', source: 'Restrepo2012' },
    isDisputed: false,
  },
  BYPASSED_EXCHANGER: {
    code: 'BYPASSED_EXCHANGER',
    leastMgPerL: 30,
    known: 'seen',
    source: 'Restrepo2012',
    recommended: null,
    isDisputed: false,
  },
  HIGH_FLOW_NOSE: {
    code: 'HIGH_FLOW_NOSE',
    leastMgPerL: 12,
    known: 'memory',
    source: 'ISOHumidifiers2017',
    // Saturated at the dew points commonly set, 31–37 °C.
    recommended: { low: 32, high: 43.9, known: 'seen', source: 'Ni2023' },
    isDisputed: false,
  },
  MORE_THAN_LOW_FLOW: {
    code: 'MORE_THAN_LOW_FLOW',
    leastMgPerL: 12,
    known: 'memory',
    source: 'ISOHumidifiers2017',
    recommended: null,
    isDisputed: true,
  },
  BEHIND_THE_NOSE: {
    code: 'BEHIND_THE_NOSE',
    leastMgPerL: 12,
    known: 'memory',
    source: 'ISOHumidifiers2017',
    recommended: null,
    isDisputed: true,
  },
  MOSTLY_ROOM_AIR: {
    code: 'MOSTLY_ROOM_AIR',
    leastMgPerL: null,
    known: 'common-practice',
    recommended: null,
    isDisputed: false,
  },
  NOTHING_REQUIRED: {
    code: 'NOTHING_REQUIRED',
    leastMgPerL: null,
    known: 'seen',
    source: 'ODriscoll2017',
    recommended: null,
    isDisputed: false,
  },
}

/** Flow up to which dry oxygen by nose or mask is held to be fine, L/min: above it one guideline considers a humidifier [Piraino2022]. */
export const DRY_LPM_MAX = 4

/** The row that applies; flow of device gas as metered. A bypassed airway counts first, then high flow, then where the gas enters. */
export function requirementFor(options: {
  readonly airway: AirwayFacts
  readonly family: FamilyId
  readonly deviceFlowLpm: number
  /** Room air for each litre of gas, as drawn in by a jet. */
  readonly airPerGas: number
  readonly isExchangerAlone: boolean
}): Requirement {
  return REQUIREMENTS[codeFor(options)]
}

function codeFor(options: Parameters<typeof requirementFor>[0]): RequirementCode {
  const { airway, family, deviceFlowLpm } = options
  if (airway.isBypassed) return options.isExchangerAlone ? 'BYPASSED_EXCHANGER' : 'BYPASSED_ACTIVE'
  if (family === 'nasal-high-flow') return 'HIGH_FLOW_NOSE'
  if (family === 'nasal-catheter') return 'BEHIND_THE_NOSE'
  if (options.airPerGas >= 1) return 'MOSTLY_ROOM_AIR'
  return deviceFlowLpm > DRY_LPM_MAX ? 'MORE_THAN_LOW_FLOW' : 'NOTHING_REQUIRED'
}

export function isInfant(airway: AirwayFacts): boolean {
  return airway.ageYears < INFANT_AGE_YEARS_MAX
}
