// How the patient breathes and the air spaces of the airway, as spreads for one body: typed values with their error, the rest from the state. Leaves out breath-to-breath change.
import { airwayKind, type AirwayState } from '../physiology/airway-state.ts'
import type { Body } from '../physiology/body.ts'
import { breathingPreset, type BreathingPreset } from '../physiology/breathing-states.ts'
import { anatomicalDeadSpace, DEAD_SPACE_FACTOR } from '../physiology/dead-space.ts'
import { functionalResidualCapacityMl } from '../physiology/frc.ts'
import { COUNTING_ERROR } from '../physiology/respiratory-rate.ts'
import type { Provenance } from '../units/provenance.ts'
import { fixed, scaled, type Spread } from '../units/spread.ts'
import type { Case } from './case.ts'
import { NUMBERS } from './case-fields.ts'
import { deadSpaceWeightKg } from './dead-space-in-use.ts'
import { around, assumed, typed, type PatientSpread, type ValueKey } from './patient-spread.ts'
import { presetState } from './preset-state.ts'

/** A single counter's part of the difference between two who count at once. */
const COUNT_SD_PER_MIN = COUNTING_ERROR.simultaneousSdPerMin / Math.SQRT2
/** Bedside volumes and times read off a screen (common practice). */
const VOLUME_ERROR_RELATIVE = 0.08
const DUTY_ERROR = 0.03
const MOUTH_SHARE_ERROR = 0.1
/** Share of the nose's part that one open side still carries (common practice). */
const ONE_SIDE_NASAL_SHARE = 0.7
/** Functional residual capacity between people of one size (common practice: normal within ±35 %). */
const CAPACITY_FACTOR: Spread = { kind: 'lognormal', median: 1, logSd: 0.18, min: 0.55, max: 1.8 }

type BreathingKey = Extract<
  ValueKey,
  | 'ratePerMin'
  | 'tidalVolumeMl'
  | 'dutyFraction'
  | 'expiratoryTimeConstantS'
  | 'mouthShare'
  | 'tubeShare'
  | 'extrathoracicMl'
  | 'intrathoracicMl'
  | 'functionalResidualCapacityMl'
>

export interface BreathingSpreads {
  readonly preset: BreathingPreset
  readonly values: Readonly<Record<BreathingKey, PatientSpread>>
}

/** Spreads for a body. The tidal volume is that at the state's middle rate; a drawn breath follows its own rate (draw.ts). */
export function breathingSpreads(about: Case, body: Body): BreathingSpreads {
  const { breathing, patient } = about
  const preset = breathingPreset({ state: presetState(breathing.state), body })
  const [first] = preset.sources
  const how: Provenance = first ?? { known: 'common-practice' }
  const fromState = (spread: Spread): PatientSpread =>
    assumed({ spread, ...how, code: 'FROM_STATE' })
  return {
    preset,
    values: {
      ratePerMin: rateSpread(about) ?? fromState(preset.ratePerMin),
      tidalVolumeMl: volumeSpread(about) ?? fromState(preset.tidalVolumeMl),
      dutyFraction: dutySpread(about) ?? fromState(preset.dutyFraction),
      expiratoryTimeConstantS: fromState(preset.expiratoryTimeConstantS),
      mouthShare: mouthSpread(about, preset),
      tubeShare: tubeSpread(patient.airway),
      ...airSpaces(body, patient.airway),
    },
  }
}

/** The rate counted, or the mean of the two when it was counted twice. */
export function countedRatePerMin(about: Case): number | undefined {
  const counts = [about.breathing.ratePerMin, about.onNow?.ratePerMin].filter(
    (count) => count !== undefined,
  )
  return counts.length === 0
    ? undefined
    : counts.reduce((sum, count) => sum + count, 0) / counts.length
}

function rateSpread(about: Case): PatientSpread | undefined {
  const value = countedRatePerMin(about)
  if (value === undefined) return undefined
  const { min, max } = NUMBERS.ratePerMin
  const { known, source } = COUNTING_ERROR
  return typed(around({ value, sd: COUNT_SD_PER_MIN, min, max }), { known, source })
}

function volumeSpread(about: Case): PatientSpread | undefined {
  const { tidalVolumeMl } = about.breathing
  if (tidalVolumeMl === undefined) return undefined
  const { min, max } = NUMBERS.tidalVolumeMl
  const sd = VOLUME_ERROR_RELATIVE * tidalVolumeMl
  return typed(around({ value: tidalVolumeMl, sd, min, max }))
}

function dutySpread(about: Case): PatientSpread | undefined {
  const { dutyFraction } = about.breathing
  if (dutyFraction === undefined) return undefined
  const { min, max } = NUMBERS.dutyFraction
  return typed(around({ value: dutyFraction, sd: DUTY_ERROR, min, max }))
}

/** 1 − nasal share. A blocked nose leaves the mouth; one open side leaves part of the nose's share. */
function mouthSpread(about: Case, preset: BreathingPreset): PatientSpread {
  const { airway } = about.patient
  const { mouthShare } = about.breathing
  const kind = airwayKind(airway)
  if (kind === 'laryngectomy' || kind === 'tracheostomy-cuff-up') {
    return noPart(mouthShare ?? 0)
  }
  if (airway.route !== 'laryngectomy' && airway.nose === 'blocked') {
    return assumed({ spread: fixed(1), known: 'derived' })
  }
  if (mouthShare !== undefined) {
    return typed(around({ value: mouthShare, sd: MOUTH_SHARE_ERROR, min: 0, max: 1 }))
  }
  const isOneSided = airway.route !== 'laryngectomy' && airway.nose === 'one-side-blocked'
  const nasal = isOneSided
    ? scaled(preset.nasalShareFraction, ONE_SIDE_NASAL_SHARE)
    : preset.nasalShareFraction
  const how: Provenance = { known: 'common-practice' }
  return assumed({ spread: complement(nasal), ...how, code: 'FROM_STATE' })
}

/** The spread of 1 − x. */
function complement(spread: Spread): Spread {
  switch (spread.kind) {
    case 'fixed':
      return { kind: 'fixed', value: 1 - spread.value }
    case 'triangular':
      return {
        kind: 'triangular',
        mode: 1 - spread.mode,
        min: 1 - spread.max,
        max: 1 - spread.min,
      }
    case 'uniform':
      return { kind: 'uniform', min: 1 - spread.max, max: 1 - spread.min }
    case 'normal':
      return { ...spread, mean: 1 - spread.mean, min: 1 - spread.max, max: 1 - spread.min }
    case 'lognormal':
    case 'box-cox':
      // A skewed share has no mirrored kind; its limits with the middle as peak come close.
      return {
        kind: 'triangular',
        mode: 1 - spread.median,
        min: 1 - spread.max,
        max: 1 - spread.min,
      }
  }
}

/** Share of the breath through the tube beside which gas also passes (common practice: no measurement; a deflated cuff
 *  fills more of the windpipe than a tube without one). */
const TUBE_SHARES = {
  'tracheostomy-cuff-down': { kind: 'triangular', mode: 0.75, min: 0.4, max: 0.97 },
  'tracheostomy-uncuffed': { kind: 'triangular', mode: 0.65, min: 0.3, max: 0.95 },
} as const satisfies Readonly<Record<string, Spread>>

function tubeSpread(airway: AirwayState): PatientSpread {
  const kind = airwayKind(airway)
  if (kind === 'tracheostomy-cuff-down' || kind === 'tracheostomy-uncuffed') {
    return assumed({ spread: TUBE_SHARES[kind], known: 'common-practice' })
  }
  const isThroughTube =
    kind !== 'natural' && kind !== 'nose-blocked' && kind !== 'tracheostomy-capped'
  return noPart(isThroughTube ? 1 : 0)
}

function noPart(value: number): PatientSpread {
  return assumed({ spread: fixed(value), known: 'derived', code: 'PLAYS_NO_PART' })
}

function airSpaces(
  body: Body,
  airway: AirwayState,
): Pick<
  BreathingSpreads['values'],
  'extrathoracicMl' | 'intrathoracicMl' | 'functionalResidualCapacityMl'
> {
  const weightKg = deadSpaceWeightKg(body)
  const deadSpace = anatomicalDeadSpace({ ageYears: body.ageYears, weightKg })
  const capacityMl = functionalResidualCapacityMl(body)
  const kind = airwayKind(airway)
  const isBypassed = kind === 'laryngectomy' || kind === 'tracheostomy-cuff-up'
  const numa: Provenance = { known: 'seen', source: 'Numa1996' }
  const extrathoracic = scaled(DEAD_SPACE_FACTOR, deadSpace.extrathoracicMl)
  return {
    extrathoracicMl: assumed({
      spread: extrathoracic,
      ...numa,
      code: isBypassed ? 'PLAYS_NO_PART' : 'FROM_SIZE',
    }),
    intrathoracicMl: assumed({
      spread: scaled(DEAD_SPACE_FACTOR, deadSpace.intrathoracicMl),
      ...numa,
      code: 'FROM_SIZE',
    }),
    functionalResidualCapacityMl: assumed({
      spread: scaled(CAPACITY_FACTOR, capacityMl),
      known: 'secondary',
      code: 'FROM_SIZE',
    }),
  }
}
