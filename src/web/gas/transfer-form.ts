// A transfer as typed: start, legs, reserve, and its reading as a question to the core. Leaves out the store of cylinders.
import type { Shelf } from '../../kit/shelf.ts'
import { ALTITUDE_M_MAX, ALTITUDE_M_MIN } from '../../physics/atmosphere.ts'
import { LONG_TUBE_BORE_MM_MAX } from '../../supply/long-tube.ts'
import { MR_SAFETIES } from '../../supply/store.ts'
import type { MrSafety } from '../../supply/store.ts'
import type { PlannedLeg } from '../../supply/transfer-leg.ts'
import type { LegKind } from '../../supply/transport.ts'
import type { AirFrom } from '../../words/gas-cylinder-basis.ts'
import { airAround } from './air-around.ts'
import type { BedsideDraw } from './bedside-draw.ts'
import type { TransferRequest } from './gas-api.ts'
import type { KeptForm, Texts } from './kept-form.ts'
import { FLOW, legOnOf, ON_RULES, onChoiceOf, startRead, typedRead } from './on-form.ts'
import type { OnRead } from './on-form.ts'
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
const ALTITUDE: NumberRule = { min: ALTITUDE_M_MIN, max: ALTITUDE_M_MAX, unit: 'm' }

export const TRANSFER_RULES = {
  ...ON_RULES,
  minutes: MINUTES,
  delayMinutes: MINUTES,
  legFlowLpm: FLOW,
  legAltitudeM: ALTITUDE,
  altitudeM: ALTITUDE,
  factor: { min: 1, max: 10 },
  extraMinutes: MINUTES,
  tubeLengthM: { min: 0, max: 100, unit: 'm' },
  tubeBoreMm: { min: 2, max: LONG_TUBE_BORE_MM_MAX, unit: 'mm' },
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
  const start = startRead(reader, form.texts, given.bedside)
  const factor = reader.number('factor', TRANSFER_RULES.factor)
  const extraMinutes = reader.number('extraMinutes', TRANSFER_RULES.extraMinutes)
  const air = airAround({
    typedAltitudeM: reader.optional('altitudeM', ALTITUDE),
    isBedsideTaken: onChoiceOf(form.texts) === 'bedside',
    ...given,
  })
  const leaveAt = leaveRead(reader, given.now)
  const scanner = hasScanner(form) ? scannerRead(reader, form.texts) : undefined
  const legs = legsRead(form.rows, start, reader)
  if (form.rows.length === 0)
    reader.report({ code: 'MISSING_FIELD', path: 'gas.kind', value: null }, 'addLeg')
  if (!given.store.ok) reader.problems.push(...given.store.problems)
  const store = given.store.ok ? given.store.value : undefined
  return readAll(reader, () => ({
    leaveAt,
    airFrom: air.from,
    question: {
      shelf: given.shelf,
      setUp: start.setUp,
      beside: start.beside,
      legs,
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
  const tubeBoreMm = reader.optional('tubeBoreMm', TRANSFER_RULES.tubeBoreMm)
  return {
    regulator: safety('regulator'),
    flowmeter: safety('flowmeter'),
    ...(tubeLengthM === undefined ? {} : { tubeLengthM }),
    ...(tubeBoreMm === undefined ? {} : { tubeBoreMm }),
  }
}

/** A flow alone changes the set-up that is on then, be it of the start or of a leg before. */
function legsRead(rows: readonly Texts[], start: OnRead, all: FormReader): readonly PlannedLeg[] {
  let on = start
  return rows.map((row, position) => {
    const reader = formReader(row, legPrefix(position))
    const leg = legRead(row, reader)
    const chosen = legOnOf(row)
    const flowLpm = chosen === null ? reader.optional('legFlowLpm', FLOW) : undefined
    const isChanged = chosen !== null || (flowLpm !== undefined && on.setUp !== null)
    if (chosen !== null) on = typedRead(reader, chosen)
    else if (flowLpm !== undefined && on.setUp !== null)
      on = { ...on, setUp: { ...on.setUp, flowLpm } }
    all.problems.push(...reader.problems)
    return isChanged ? { ...leg, ...on } : leg
  })
}

function legRead(row: Texts, reader: FormReader): PlannedLeg {
  const minutes = reader.number('minutes', MINUTES)
  const delayMinutes = reader.optional('delayMinutes', MINUTES)
  const altitudeM = reader.optional('legAltitudeM', ALTITUDE)
  return {
    kind: legKindOf(row),
    minutes,
    ...(delayMinutes === undefined ? {} : { delayMinutes }),
    ...(altitudeM === undefined ? {} : { altitudeM }),
    ...(row['feed'] === 'place' ? { feed: 'place' as const } : {}),
  }
}

export function legPrefix(position: number): string {
  return `leg-${position}`
}
