// A patient and a set-up in one call for the tests of the hazard list: the real stream, network and breath. Leaves out spreads: everything at its middle.
import type { BreathPattern } from '../../src/delivery/breath.ts'
import { deliveredBreath } from '../../src/delivery/delivered-breath.ts'
import type { DeliveredBreath } from '../../src/delivery/delivered-breath.ts'
import { MIDDLE_INTERFACE } from '../../src/delivery/delivery-body.ts'
import type { DeliveryBody } from '../../src/delivery/delivery-body.ts'
import { setUpNetwork } from '../../src/delivery/set-up-network.ts'
import { deliveredStream, MIDDLE_STREAM } from '../../src/kit/delivered-stream.ts'
import type { DeliveredStream } from '../../src/kit/delivered-stream.ts'
import type { FamilyId, FitId, SizeId } from '../../src/kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../../src/kit/interface-families.ts'
import type { SetUp } from '../../src/kit/set-up.ts'
import type { SourceRow } from '../../src/kit/source-row.ts'
import type { FlowmeterClass } from '../../src/physics/flowmeter-accuracy.ts'
import type { PurityClass } from '../../src/physics/source-purity.ts'
import type { AirwayState } from '../../src/physiology/airway-state.ts'

export const NATURAL: AirwayState = { route: 'natural', nose: 'open' }
export const CUFF_UP: AirwayState = tubeWith({ cuff: 'up' })
export const LARYNGECTOMY: AirwayState = { route: 'laryngectomy', heatMoistureExchanger: false }

export function tubeWith(tube: {
  readonly cuff: 'up' | 'down' | 'none'
  readonly speakingValve?: boolean
  readonly capped?: boolean
  readonly heatMoistureExchanger?: boolean
}): AirwayState {
  const { cuff, speakingValve = false, capped = false, heatMoistureExchanger = false } = tube
  return {
    route: 'tracheostomy',
    tube: { cuff, speakingValve, capped, heatMoistureExchanger },
    nose: 'open',
  }
}

/** 500 mL at 15/min, Ti/Ttot 0.4: handbook rest. */
export const REST: BreathPattern = {
  tidalVolumeL: 0.5,
  ratePerMin: 15,
  dutyFraction: 0.4,
  inspiration: { kind: 'half-sine' },
  expiration: { kind: 'passive', timeConstantS: 0.5 },
}

/** 600 mL at 35/min: peak inspiratory flow of about 80 L/min. */
export const DISTRESS: BreathPattern = { ...REST, tidalVolumeL: 0.6, ratePerMin: 35 }

export function meterSource(
  options: {
    readonly purity?: PurityClass
    readonly meterClass?: FlowmeterClass
  } = {},
): SourceRow {
  return {
    id: 'meter',
    label: 'invented',
    count: 1,
    place: 'everywhere',
    kind: 'wall-flowmeter',
    meter: {
      kind: 'tube-compensated',
      stepsLpm: [0.25, 0.5, 1, 2, 3, 4, 5, 6, 8, 10, 12, 15],
      flush: { lowLpm: 40, medianLpm: 50, highLpm: 60, source: 'invented' },
      meterClass: options.meterClass ?? 'ordinary',
    },
    purity: options.purity ?? 'pipeline',
  }
}

export const BLENDER: SourceRow = {
  id: 'blender',
  label: 'invented',
  count: 1,
  place: 'everywhere',
  kind: 'blender',
  stepsLpm: [10, 20, 30, 40, 50, 60],
  fractionSteps: [0.21, 0.4, 0.6, 1],
  errorRelative: 0.1,
}

export const VENTILATOR: SourceRow = { ...BLENDER, id: 'ventilator', kind: 'ventilator' }

export interface Bedside {
  readonly family: FamilyId
  readonly flowLpm: number | 'flush'
  readonly size?: SizeId
  readonly fit?: FitId
  readonly source?: SourceRow
  readonly setO2Fraction?: number
  readonly overFlowLpm?: number
  readonly airway?: AirwayState
  readonly breath?: BreathPattern
  readonly barometricKpa?: number
  readonly mouthShare?: number
  readonly deadSpaceL?: number
}

export function setUpOf(bedside: Bedside): SetUp {
  const { family, flowLpm, size = 'adult', fit = 'gentle', source = meterSource() } = bedside
  return {
    family,
    size,
    fit,
    source,
    flow: flowLpm === 'flush' ? { kind: 'flush' } : { kind: 'scale', flowLpm },
    setO2Fraction: bedside.setO2Fraction ?? null,
    humidification: 'none',
    over:
      bedside.overFlowLpm === undefined
        ? null
        : { family: 'simple-mask', flow: { kind: 'scale', flowLpm: bedside.overFlowLpm } },
  }
}

/** `meter`: where the true flow lies within what is not known of it, 0–1. */
export function streamOf(bedside: Bedside, meter = 0.5): DeliveredStream {
  const { source, flow, setO2Fraction } = setUpOf(bedside)
  return deliveredStream(
    {
      source,
      flow,
      setO2Fraction,
      entrainsAir: INTERFACE_FAMILIES[bedside.family].entrainsAir,
      barometricKpa: bedside.barometricKpa ?? 101.325,
    },
    { ...MIDDLE_STREAM, meter },
  )
}

export function deliveredAt(bedside: Bedside): DeliveredBreath {
  const family = INTERFACE_FAMILIES[bedside.family]
  const size = family.sizes.find(({ id }) => id === (bedside.size ?? 'adult'))
  if (size === undefined) throw new Error(`no such size of ${bedside.family}`)
  const over =
    bedside.overFlowLpm === undefined
      ? null
      : {
          family: INTERFACE_FAMILIES['simple-mask'],
          stream: streamOf({ family: 'simple-mask', flowLpm: bedside.overFlowLpm }),
        }
  const stream = streamOf(bedside)
  const network = setUpNetwork({
    family,
    size,
    fit: bedside.fit ?? 'gentle',
    stream,
    over,
    body: bodyOf(bedside),
    draw: MIDDLE_INTERFACE,
  })
  return deliveredBreath({
    network,
    breath: bedside.breath ?? REST,
    sourceO2Fraction: stream.sourceO2Fraction,
    metabolism: { oxygenUptakeLpmBtps: 0.3, carbonDioxideOutputLpmBtps: 0.24 },
  })
}

function bodyOf(bedside: Bedside): DeliveryBody {
  const deadSpaceL = bedside.deadSpaceL ?? 0.138
  return {
    airway: bedside.airway ?? NATURAL,
    breath: bedside.breath ?? REST,
    extrathoracicL: deadSpaceL * 0.52,
    intrathoracicL: deadSpaceL * 0.48,
    mouthShare: bedside.mouthShare ?? 0,
    tubeShare: 0.8,
  }
}
