// A cylinder card as typed: its fields, its example, and its reading as a question to the core. Leaves out how it looks.
import { ALTITUDE_M_MAX, ALTITUDE_M_MIN } from '../../physics/atmosphere.ts'
import type { Cylinder, CylinderUse } from '../../supply/cylinder.ts'
import type { SupplyRemark } from '../../supply/supply-remark.ts'
import { statedDraw } from '../../supply/stated-draw.ts'
import type { StatedGas } from '../../supply/stated-draw.ts'
import { AIR_O2_FRACTION } from '../../units/constants.ts'
import { CHOOSABLE_UNITS, toInside } from '../../units/choosable.ts'
import type { UnitOf } from '../../units/choosable.ts'
import { DRAW_KINDS } from '../../words/gas-cylinder-text.ts'
import type { DrawKind } from '../../words/gas-cylinder-text.ts'
import type { AirFrom } from '../../words/gas-cylinder-basis.ts'
import { airAround } from './air-around.ts'
import type { BedsideDraw } from './bedside-draw.ts'
import type { Texts } from './kept-form.ts'
import { formReader, readAll } from './read-form.ts'
import type { FormReader, NumberRule, ReadForm } from './read-form.ts'
import { minutesBefore, minutesSince, timeText, typedTime } from './wall-clock.ts'

export interface CylinderQuestion {
  readonly cylinder: Cylinder
  readonly use: CylinderUse
  readonly drawn: StatedGas
  /** What the set-up of Bedside says of its draw, where that is taken. */
  readonly drawnRemarks: readonly SupplyRemark[]
  readonly drawKind: DrawKind
  /** When the gauge was read. */
  readonly readAt: Date
  readonly isReadAtCGiven: boolean
  readonly isUsedAtCGiven: boolean
  readonly airFrom: AirFrom
  readonly handbookFactorLPerPsi: number | undefined
}

const FLOW: NumberRule = { min: 0, max: 150, unit: 'L/min' }
const FRACTION: NumberRule = { min: AIR_O2_FRACTION, max: 1 }
const TEMPERATURE: NumberRule = { min: -40, max: 50, unit: '°C' }
const GAUGE_KPA_MAX = 35_000
/** Taken where no temperature is given: a ward's (common practice). */
const INDOORS_C = 20

export const CYLINDER_RULES = {
  waterVolume: { min: 0.1, max: 150, unit: 'L' },
  flowLpm: FLOW,
  drivingLpm: FLOW,
  totalLpm: FLOW,
  setO2Fraction: FRACTION,
  ventilatorLpm: FLOW,
  biasFlowLpm: FLOW,
  drivingGasLpm: FLOW,
  jetLpm: FLOW,
  leakLpm: FLOW,
  readAtC: TEMPERATURE,
  usedAtC: TEMPERATURE,
  altitudeM: { min: ALTITUDE_M_MIN, max: ALTITUDE_M_MAX, unit: 'm' },
  handbookFactor: { min: 0.01, max: 20, unit: 'L/psi' },
} as const satisfies Readonly<Record<string, NumberRule>>

/** Fields of each way of drawing. */
export const DRAW_FIELDS: Readonly<Record<DrawKind, readonly (keyof typeof CYLINDER_RULES)[]>> = {
  meter: ['flowLpm'],
  driving: ['drivingLpm'],
  blend: ['totalLpm', 'setO2Fraction'],
  ventilator: ['ventilatorLpm', 'setO2Fraction', 'biasFlowLpm', 'drivingGasLpm'],
  bedside: [],
}

/** Invented: a portable cylinder, two thirds full, with a mask. Stands until something is typed over it. */
export const EXAMPLE_CYLINDER: Texts = {
  example: 'yes',
  waterVolume: '3',
  pressureUnit: 'bar',
  gauge: '140',
  valve: 'open',
  draw: 'meter',
  flowLpm: '10',
  left: '14',
}

/** An empty card. */
export function newCylinder(unit: UnitOf<'gasPressure'>): Texts {
  return { pressureUnit: unit, valve: 'open', draw: 'meter' }
}

export function pressureUnitOf(texts: Texts): UnitOf<'gasPressure'> {
  return CHOOSABLE_UNITS.gasPressure.find((unit) => unit === texts['pressureUnit']) ?? 'bar'
}

export function drawKindOf(texts: Texts): DrawKind {
  return DRAW_KINDS.find((kind) => kind === texts['draw']) ?? 'meter'
}

/** Bounds of a gauge in its own unit, on whole numbers inside what the core takes. */
export function gaugeRule(unit: UnitOf<'gasPressure'>): NumberRule {
  return { min: 0, max: Math.floor(GAUGE_KPA_MAX / toInside(1, unit)), unit }
}

/** The card after something was typed: no longer the example; a new pressure was read now. */
export function withTyped(
  texts: Texts,
  typed: { readonly name: string; readonly text: string },
  now: Date,
): Texts {
  const next = { ...withReadingKept(texts, now), [typed.name]: typed.text }
  if (typed.name === 'gauge') return withReadingNow(next, now)
  return typed.name === 'readAt' ? { ...next, readNotedMs: String(now.getTime()) } : next
}

export function withReadingNow(texts: Texts, now: Date): Texts {
  return { ...texts, readAt: timeText(now), readNotedMs: String(now.getTime()) }
}

/** The example counts as read at any moment; once it is changed, at that moment. */
function withReadingKept(texts: Texts, now: Date): Texts {
  const { example, ...own } = texts
  return example === undefined ? own : withReadingNow(own, now)
}

export function readCylinder(
  texts: Texts,
  given: {
    readonly prefix: string
    readonly now: Date
    readonly bedside: BedsideDraw
    /** Of the settings; counts where the card gives none. */
    readonly siteAltitudeM: number | undefined
  },
): ReadForm<CylinderQuestion> {
  const reader = formReader(texts, given.prefix)
  const unit = pressureUnitOf(texts)
  const rule = gaugeRule(unit)
  const pressure = (name: string): number | undefined => {
    const value = reader.optional(name, rule)
    return value === undefined ? undefined : toInside(value, unit)
  }
  const waterVolumeL = reader.number('waterVolume', CYLINDER_RULES.waterVolume)
  const gaugeKpa = toInside(reader.number('gauge', rule), unit)
  const readAt = readingTime(reader, texts, given.now)
  const readDrawn = drawReader(reader, texts, given.bedside)
  const leftGaugeKpa = toInside(reader.number('left', rule), unit)
  const regulatorMinimumGaugeKpa = pressure('regulatorMinimum')
  const gaugeErrorKpa = pressure('gaugeError')
  const readAtC = reader.optional('readAtC', TEMPERATURE)
  const usedAtC = reader.optional('usedAtC', TEMPERATURE)
  const air = airAround({
    typedAltitudeM: reader.optional('altitudeM', CYLINDER_RULES.altitudeM),
    isBedsideTaken: drawKindOf(texts) === 'bedside',
    ...given,
  })
  const handbookFactorLPerPsi = reader.optional('handbookFactor', CYLINDER_RULES.handbookFactor)
  return readAll(reader, () => ({
    cylinder: {
      waterVolumeL,
      gaugeKpa,
      readAtC: readAtC ?? INDOORS_C,
      isValveOpen: texts['valve'] !== 'closed',
    },
    use: {
      barometricKpa: air.barometricKpa,
      leftGaugeKpa,
      ...(usedAtC === undefined ? {} : { usedAtC }),
      ...(regulatorMinimumGaugeKpa === undefined ? {} : { regulatorMinimumGaugeKpa }),
      ...(gaugeErrorKpa === undefined ? {} : { gaugeErrorKpa }),
    },
    drawn: readDrawn(),
    drawnRemarks:
      drawKindOf(texts) === 'bedside' && given.bedside.kind === 'drawn'
        ? given.bedside.drawn.remarks
        : [],
    drawKind: drawKindOf(texts),
    readAt,
    isReadAtCGiven: readAtC !== undefined,
    isUsedAtCGiven: usedAtC !== undefined,
    airFrom: air.from,
    handbookFactorLPerPsi,
  }))
}

function readingTime(reader: FormReader, texts: Texts, now: Date): Date {
  if (texts['example'] !== undefined) return now
  const time = typedTime(reader.text('readAt'))
  const noted = new Date(Number(texts['readNotedMs']))
  if (time === undefined || Number.isNaN(noted.getTime())) {
    const value = reader.text('readAt')
    const code = value.trim() === '' ? 'MISSING_FIELD' : 'UNREADABLE_DATE'
    reader.report({ code, path: 'gas.readAt', value: value === '' ? null : value }, 'readAt')
    return now
  }
  return minutesBefore(noted, minutesSince(time, noted))
}

/** Reads the fields of the way of drawing chosen; what comes back works the draw out once all is read. */
function drawReader(reader: FormReader, texts: Texts, bedside: BedsideDraw): () => StatedGas {
  const jetLpm = reader.optional('jetLpm', FLOW) ?? 0
  const leakLpm = reader.optional('leakLpm', FLOW) ?? 0
  const beside = { jetLpm, leakLpm }
  const kind = drawKindOf(texts)
  switch (kind) {
    case 'meter': {
      const flowLpm = reader.number('flowLpm', FLOW)
      return () => statedDraw({ kind, flowLpm }, beside)
    }
    case 'driving': {
      const flowLpm = reader.number('drivingLpm', FLOW)
      return () => statedDraw({ kind, flowLpm }, beside)
    }
    case 'blend': {
      const flowLpm = reader.number('totalLpm', FLOW)
      const setO2Fraction = reader.number('setO2Fraction', FRACTION)
      return () => statedDraw({ kind, flowLpm, setO2Fraction }, beside)
    }
    case 'ventilator': {
      const flowLpm = reader.number('ventilatorLpm', FLOW)
      const setO2Fraction = reader.number('setO2Fraction', FRACTION)
      const biasFlowLpm = reader.number('biasFlowLpm', FLOW)
      const drivingGasLpm = reader.number('drivingGasLpm', FLOW)
      return () => statedDraw({ kind, flowLpm, setO2Fraction, biasFlowLpm, drivingGasLpm }, beside)
    }
    case 'bedside':
      return bedsideReader(reader, bedside, beside)
  }
}

function bedsideReader(
  reader: FormReader,
  bedside: BedsideDraw,
  beside: { readonly jetLpm: number; readonly leakLpm: number },
): () => StatedGas {
  if (bedside.kind !== 'drawn') {
    reader.report({ code: 'MISSING_FIELD', path: 'onNow.setUp', value: null }, 'draw')
    return () => statedDraw({ kind: 'meter', flowLpm: 0 })
  }
  const { drawn } = bedside
  return () => {
    const more = statedDraw({ kind: 'meter', flowLpm: 0 }, beside)
    return {
      oxygenLpm: drawn.oxygenLpm + more.oxygenLpm,
      lowLpm: drawn.lowLpm + more.lowLpm,
      highLpm: drawn.highLpm + more.highLpm,
      parts: [...drawn.parts, ...more.parts],
    }
  }
}
