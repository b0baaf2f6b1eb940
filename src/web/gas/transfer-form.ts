// A transfer as typed: start, legs, reserve, and its reading as a question to the core. Leaves out the store of cylinders.
import type { Shelf } from '../../kit/shelf.ts'
import type { SetUpOnNow } from '../../patient/case.ts'
import { ALTITUDE_M_MAX, ALTITUDE_M_MIN } from '../../physics/atmosphere.ts'
import { MR_SAFETIES } from '../../supply/store.ts'
import type { MrSafety } from '../../supply/store.ts'
import type { PlannedLeg } from '../../supply/transfer-leg.ts'
import type { LegKind } from '../../supply/transport.ts'
import { AIR_O2_FRACTION } from '../../units/constants.ts'
import { ON_CHOICES } from '../../words/gas-transfer-choices.ts'
import type { OnChoice } from '../../words/gas-transfer-choices.ts'
import type { AirFrom } from '../../words/gas-cylinder-basis.ts'
import { airAround } from './air-around.ts'
import type { BedsideDraw } from './bedside-draw.ts'
import type { TransferRequest } from './gas-api.ts'
import type { KeptForm, Texts } from './kept-form.ts'
import { formReader, readAll } from './read-form.ts'
import type { FormReader, NumberRule, ReadForm } from './read-form.ts'
import type { StoreGiven } from './store-form.ts'
import { timeOf, typedTime } from './wall-clock.ts'
import type { TimeOfDay } from './wall-clock.ts'

export const LEG_KINDS = [
  'lift',
  'corridor',
  'scanner',
  'ambulance',
  'helicopter',
] as const satisfies readonly LegKind[]

const MINUTES: NumberRule = { min: 0, max: 1440, unit: 'min' }
const FLOW: NumberRule = { min: 0.01, max: 100, unit: 'L/min' }
const ALTITUDE: NumberRule = { min: ALTITUDE_M_MIN, max: ALTITUDE_M_MAX, unit: 'm' }

export const TRANSFER_RULES = {
  setUpLpm: FLOW,
  setO2Fraction: { min: AIR_O2_FRACTION, max: 1 },
  biasFlowLpm: { min: 0, max: 100, unit: 'L/min' },
  minutes: MINUTES,
  delayMinutes: MINUTES,
  legFlowLpm: FLOW,
  legAltitudeM: ALTITUDE,
  altitudeM: ALTITUDE,
  factor: { min: 1, max: 10 },
  extraMinutes: MINUTES,
  tubeLengthM: { min: 0, max: 100, unit: 'm' },
} as const satisfies Readonly<Record<string, NumberRule>>

/** Invented: to the scanner and back, with one lift. */
export const EXAMPLE_TRANSFER: KeptForm = {
  texts: {
    example: 'yes',
    on: 'non-rebreather-mask',
    setUpLpm: '10',
    factor: '2',
    extraMinutes: '30',
  },
  rows: [
    { kind: 'corridor', minutes: '6' },
    { kind: 'lift', minutes: '4' },
    { kind: 'ambulance', minutes: '20' },
  ],
}

export interface TransferGiven {
  readonly question: TransferRequest['question']
  readonly leaveAt: TimeOfDay
  readonly airFrom: AirFrom
}

export function onChoiceOf(texts: Texts): OnChoice {
  return ON_CHOICES.find((choice) => choice === texts['on']) ?? 'bedside'
}

/** Fields that a set-up of this kind asks for. */
export const ON_FIELDS: Readonly<Record<OnChoice, readonly (keyof typeof TRANSFER_RULES)[]>> = {
  bedside: [],
  'nasal-cannula': ['setUpLpm'],
  'simple-mask': ['setUpLpm'],
  'non-rebreather-mask': ['setUpLpm'],
  'entrainment-mask': ['setUpLpm', 'setO2Fraction'],
  'blended-high-flow': ['setUpLpm', 'setO2Fraction'],
  'ventilator-high-flow': ['setUpLpm', 'setO2Fraction', 'biasFlowLpm'],
}

export function hasScanner(form: KeptForm): boolean {
  return form.rows.some((row) => row['kind'] === 'scanner')
}

export function legKindOf(row: Texts): LegKind {
  return LEG_KINDS.find((kind) => kind === row['kind']) ?? 'corridor'
}

export function readTransfer(
  form: KeptForm,
  given: {
    readonly bedside: BedsideDraw
    readonly store: ReadForm<StoreGiven>
    readonly now: Date
    readonly siteAltitudeM: number | undefined
    readonly shelf: Shelf
  },
): ReadForm<TransferGiven> {
  const reader = formReader(form.texts, 'transfer')
  const setUp = setUpRead(reader, form.texts, given.bedside)
  const bias = onChoiceOf(form.texts) === 'ventilator-high-flow'
  const biasFlowLpm = bias ? reader.optional('biasFlowLpm', TRANSFER_RULES.biasFlowLpm) : undefined
  const factor = reader.number('factor', TRANSFER_RULES.factor)
  const extraMinutes = reader.number('extraMinutes', TRANSFER_RULES.extraMinutes)
  const air = airAround({
    typedAltitudeM: reader.optional('altitudeM', ALTITUDE),
    isBedsideTaken: onChoiceOf(form.texts) === 'bedside',
    ...given,
  })
  const leaveAt = leaveRead(reader, given.now)
  const scanner = hasScanner(form) ? scannerRead(reader, form.texts) : undefined
  const legs = form.rows.map((row, i) => legRead(row, i, setUp, reader))
  if (form.rows.length === 0)
    reader.report({ code: 'MISSING_FIELD', path: 'gas.kind', value: null }, 'addLeg')
  if (!given.store.ok) reader.problems.push(...given.store.problems)
  const store = given.store.ok ? given.store.value : undefined
  return readAll(reader, () => ({
    leaveAt,
    airFrom: air.from,
    question: {
      shelf: given.shelf,
      setUp,
      legs,
      ...(biasFlowLpm === undefined ? {} : { beside: { biasFlowLpm } }),
      reserve: { factor, extraMinutes },
      barometricKpa: air.barometricKpa,
      store: store?.rows ?? [],
      leftGaugeKpa: store?.leftGaugeKpa ?? 0,
      readAtC: store?.temperatureC ?? 0,
      ...(store?.gaugeErrorKpa === undefined ? {} : { gaugeErrorKpa: store.gaugeErrorKpa }),
      ...(scanner === undefined ? {} : { scanner }),
      ...patientOf(form.texts, given.bedside),
    },
  }))
}

function setUpRead(reader: FormReader, texts: Texts, bedside: BedsideDraw): SetUpOnNow | null {
  const on = onChoiceOf(texts)
  if (on === 'bedside') {
    if (bedside.kind === 'drawn') return bedside.setUp
    reader.report({ code: 'MISSING_FIELD', path: 'onNow.setUp', value: null }, 'on')
    return null
  }
  const flowLpm = reader.number('setUpLpm', FLOW)
  const setO2Fraction = ON_FIELDS[on].includes('setO2Fraction')
    ? { setO2Fraction: reader.number('setO2Fraction', TRANSFER_RULES.setO2Fraction) }
    : {}
  switch (on) {
    case 'blended-high-flow':
      return { family: 'nasal-high-flow', sourceKind: 'blender', flowLpm, ...setO2Fraction }
    case 'ventilator-high-flow':
      return { family: 'nasal-high-flow', sourceKind: 'ventilator', flowLpm, ...setO2Fraction }
    case 'nasal-cannula':
    case 'simple-mask':
    case 'non-rebreather-mask':
    case 'entrainment-mask':
      return { family: on, sourceKind: 'cylinder-regulator', flowLpm, ...setO2Fraction }
  }
}

/** With the case at Bedside what is inhaled on each leg is modelled. Without it the age only chooses a size, which draws no other flow. */
function patientOf(
  texts: Texts,
  bedside: BedsideDraw,
): Pick<TransferRequest['question'], 'body' | 'case'> {
  if (onChoiceOf(texts) !== 'bedside' || bedside.kind !== 'drawn') return { body: { ageYears: 40 } }
  const { about } = bedside
  return { body: about.patient, case: about }
}

function leaveRead(reader: FormReader, now: Date): TimeOfDay {
  const typed = reader.text('leaveAt')
  if (typed.trim() === '') return timeOf(now)
  const time = typedTime(typed)
  if (time !== undefined) return time
  reader.report({ code: 'UNREADABLE_DATE', path: 'gas.leaveAt', value: typed }, 'leaveAt')
  return timeOf(now)
}

function scannerRead(reader: FormReader, texts: Texts) {
  const safety = (name: string): MrSafety =>
    MR_SAFETIES.find((one) => one === texts[name]) ?? 'unknown'
  const tubeLengthM = reader.optional('tubeLengthM', TRANSFER_RULES.tubeLengthM)
  return {
    regulator: safety('regulator'),
    flowmeter: safety('flowmeter'),
    ...(tubeLengthM === undefined ? {} : { tubeLengthM }),
  }
}

function legRead(
  row: Texts,
  position: number,
  setUp: SetUpOnNow | null,
  all: FormReader,
): PlannedLeg {
  const reader = formReader(row, legPrefix(position))
  const minutes = reader.number('minutes', MINUTES)
  const delayMinutes = reader.optional('delayMinutes', MINUTES)
  const flowLpm = reader.optional('legFlowLpm', FLOW)
  const altitudeM = reader.optional('legAltitudeM', ALTITUDE)
  all.problems.push(...reader.problems)
  return {
    kind: legKindOf(row),
    minutes,
    ...(delayMinutes === undefined ? {} : { delayMinutes }),
    ...(flowLpm === undefined || setUp === null ? {} : { setUp: { ...setUp, flowLpm } }),
    ...(altitudeM === undefined ? {} : { altitudeM }),
    ...(row['feed'] === 'place' ? { feed: 'place' as const } : {}),
  }
}

export function legPrefix(position: number): string {
  return `leg-${position}`
}
