// Remarks on the humidity of a set-up, as codes with their source. Leaves out the water balance of the chain.
import type { Provenance } from '../units/provenance.ts'
import { INTERFACE_FAMILIES } from './interface-families.ts'
import { nominalLpm } from './flow-steps.ts'
import type { SetUp } from './set-up.ts'

export type HumidityCode =
  /** Low flow into a working nose: no humidifier is called for. */
  | 'DRY_LOW_FLOW_USUALLY_FINE'
  /** One guideline considers humidification above 4 L/min ... */
  | 'CONSIDER_ABOVE_4_LPM'
  /** ... another advises against bubble bottles: both are shown. */
  | 'BUBBLE_ADVISED_AGAINST'
  /** No agreed threshold for children: the ward's policy counts. */
  | 'CHILD_POLICY_COUNTS'
  /** The tip lies beyond the nose: small flows too are humidified. */
  | 'CATHETER_NEEDS_HUMIDITY'
  /** Gas reaches the windpipe past mouth and nose. */
  | 'BYPASSED_NEVER_DRY'
  | 'HEATED_REQUIRED'
  /** Blended gas from pipelines is dry; a heated humidifier stands in the stream. */
  | 'HEATED_EXPECTED'
  | 'AEROSOL_FROM_NEBULISER'
  | 'ENTRAINED_ROOM_AIR_BRINGS_WATER'
  | 'COLLAR_POSSIBLE'

export interface HumidityRemark extends Provenance {
  readonly code: HumidityCode
}

/** Flow up to which dry oxygen by nose or mask is held to be fine, L/min. */
const DRY_LPM_MAX = 4

const REMARKS = {
  DRY_LOW_FLOW_USUALLY_FINE: { known: 'seen', source: 'ODriscoll2017' },
  CONSIDER_ABOVE_4_LPM: { known: 'seen', source: 'Piraino2022' },
  BUBBLE_ADVISED_AGAINST: { known: 'seen', source: 'ODriscoll2017' },
  CHILD_POLICY_COUNTS: { known: 'secondary', source: 'FreyShann2003' },
  CATHETER_NEEDS_HUMIDITY: { known: 'secondary', source: 'FreyShann2003' },
  BYPASSED_NEVER_DRY: { known: 'common-practice' },
  HEATED_REQUIRED: { known: 'common-practice' },
  HEATED_EXPECTED: { known: 'common-practice' },
  AEROSOL_FROM_NEBULISER: { known: 'common-practice' },
  ENTRAINED_ROOM_AIR_BRINGS_WATER: { known: 'derived' },
  COLLAR_POSSIBLE: { known: 'common-practice' },
} as const satisfies Readonly<Record<HumidityCode, Provenance>>

export interface HumidityCircumstances {
  /** A collar for the air ports is on the shelf. */
  readonly hasCollar?: boolean
  /** Whether the gas reaches the windpipe past mouth and nose; where absent, whatever sits at the neck does. */
  readonly isBypassed?: boolean
}

/** What to say about humidity, most pressing first. */
export function humidityRemarks(
  setUp: SetUp,
  circumstances: HumidityCircumstances = {},
): readonly HumidityRemark[] {
  return codesFor(setUp, circumstances).map((code) => ({ code, ...REMARKS[code] }))
}

function codesFor(setUp: SetUp, circumstances: HumidityCircumstances): readonly HumidityCode[] {
  const family = INTERFACE_FAMILIES[setUp.family]
  const isBypassed = circumstances.isBypassed ?? family.opening === 'neck'
  return [
    ...(isBypassed ? (['BYPASSED_NEVER_DRY'] as const) : []),
    ...streamCodes(setUp, isBypassed),
    ...(circumstances.hasCollar === true ? (['COLLAR_POSSIBLE'] as const) : []),
  ]
}

function streamCodes(setUp: SetUp, isBypassed: boolean): readonly HumidityCode[] {
  const family = INTERFACE_FAMILIES[setUp.family]
  if (family.id === 'nasal-high-flow') return ['HEATED_REQUIRED']
  if (setUp.source.kind === 'jet-nebuliser') return ['AEROSOL_FROM_NEBULISER']
  if (setUp.source.kind === 'blender' || setUp.source.kind === 'ventilator')
    return ['HEATED_EXPECTED']
  if (family.entrainsAir !== 'no') return ['ENTRAINED_ROOM_AIR_BRINGS_WATER']
  if (family.id === 'nasal-catheter') return ['CATHETER_NEEDS_HUMIDITY', 'CHILD_POLICY_COUNTS']
  if (isBypassed) return []
  if (setUp.size !== 'adult') return ['CHILD_POLICY_COUNTS']
  return isLowFlow(setUp)
    ? ['DRY_LOW_FLOW_USUALLY_FINE']
    : ['CONSIDER_ABOVE_4_LPM', 'BUBBLE_ADVISED_AGAINST']
}

function isLowFlow(setUp: SetUp): boolean {
  const throughNoseLpm = nominalLpm(setUp.source, setUp.flow)
  const throughMaskLpm = setUp.over === null ? 0 : nominalLpm(setUp.source, setUp.over.flow)
  if (throughNoseLpm === null || throughMaskLpm === null) return false
  return Math.max(throughNoseLpm, throughMaskLpm) <= DRY_LPM_MAX
}
