// A fixed, stratified sample of people and devices behind one published mean or spread. Leaves out chance: the same question gives the same people.
import type { BreathPattern } from '../delivery/breath.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import { AIR_O2_FRACTION } from '../units/constants.ts'
import { normalQuantile } from '../units/normal.ts'
import type { EngineCase } from './engine-case.ts'
import type { Quantity } from './evidence-row.ts'
import { quantityIn } from './quantities.ts'

/** How much people differ, as coefficients of variation. */
export interface PeopleSpread {
  readonly tidalVolumeCv: number
  readonly rateCv: number
  readonly dutyCv: number
  readonly deadSpaceCv: number
  /** Whether mask, fit and meter differ from person to person too. */
  readonly devicesDiffer: boolean
  /** Whether the spread that the model leaves unexplained is added. Not where it was taken from the very source. */
  readonly addsUnexplained: boolean
}

export interface PeopleQuestion {
  readonly engine: EngineCase
  readonly people: PeopleSpread
  /** `width`: from the 10th to the 90th centile. */
  readonly statistic: 'mean' | 'width' | 'share-above'
  /** Bound for `share-above`. */
  readonly above?: number
}

/** A prime, so that each of the numbers below runs once through all strata. */
const PEOPLE = 127
/** Multiplier of the lattice: a root of 127 that keeps neighbouring columns apart. */
const LATTICE = 43
const COLUMNS = 17

/** The statistic over the fixed sample, in the quantity's unit (a share for `share-above`). */
export function peopleStatistic(question: PeopleQuestion, quantity: Quantity): number {
  const values = peopleValues(question, quantity)
  switch (question.statistic) {
    case 'mean':
      return values.reduce((sum, value) => sum + value, 0) / values.length
    case 'width':
      return centile(values, 0.9) - centile(values, 0.1)
    case 'share-above':
      return values.filter((value) => value > (question.above ?? 0)).length / values.length
  }
}

/** The quantity for every person, sorted upwards. */
export function peopleValues(question: PeopleQuestion, quantity: Quantity): readonly number[] {
  return Array.from({ length: PEOPLE }, (_, i) => onePerson(question, quantity, i)).toSorted(
    (a, b) => a - b,
  )
}

function onePerson(question: PeopleQuestion, quantity: Quantity, i: number): number {
  const u = (column: number): number => stratum(i, column)
  const { people, engine } = question
  const value = quantityIn(personCase(question, u), quantity)
  if (!people.addsUnexplained) return value
  const sd = INTERFACE_FAMILIES[engine.family].modelSd.value
  return Math.min(1, AIR_O2_FRACTION + (value - AIR_O2_FRACTION) * (1 + sd * normalQuantile(u(16))))
}

function personCase(question: PeopleQuestion, u: (column: number) => number): EngineCase {
  const { people, engine } = question
  const person: EngineCase = {
    ...engine,
    breath: personBreath(engine.breath, people, u),
    deadSpaceFactor: lognormal(people.deadSpaceCv, u(3)),
  }
  if (!people.devicesDiffer) return person
  return {
    ...person,
    interfaceDraw: {
      pocket: u(4),
      exchange: u(5),
      jet: u(6),
      draught: u(7),
      leak: u(8),
      forwardLoss: u(9),
      bag: u(10),
      capture: u(11),
      flush: u(12),
    },
    streamDraw: { meter: u(13), purity: u(14), entrainment: u(15) },
  }
}

function personBreath(
  breath: BreathPattern,
  people: PeopleSpread,
  u: (column: number) => number,
): BreathPattern {
  return {
    ...breath,
    tidalVolumeL: breath.tidalVolumeL * lognormal(people.tidalVolumeCv, u(0)),
    ratePerMin: breath.ratePerMin * lognormal(people.rateCv, u(1)),
    dutyFraction: breath.dutyFraction * lognormal(people.dutyCv, u(2)),
  }
}

/** Median 1; CV taken as the standard deviation of the logarithm. */
function lognormal(cv: number, u: number): number {
  return Math.exp(cv * normalQuantile(u))
}

/** Column of a rank-1 lattice: middle of one of 127 strata, each used once. */
function stratum(i: number, column: number): number {
  let multiplier = 1
  for (let k = 0; k < column % COLUMNS; k++) multiplier = (multiplier * LATTICE) % PEOPLE
  return (((i + 1) * multiplier) % PEOPLE) / PEOPLE + 1 / (2 * PEOPLE)
}

/** Linear between order statistics. */
function centile(sorted: readonly number[], p: number): number {
  const position = p * (sorted.length - 1)
  const left = Math.floor(position)
  const a = sorted[left] ?? 0
  const b = sorted[Math.min(left + 1, sorted.length - 1)] ?? a
  return a + (b - a) * (position - left)
}
