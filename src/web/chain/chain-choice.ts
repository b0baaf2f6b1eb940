// What can be picked on the Chain page, from the shelf: interfaces by size, sources with their marks, humidifiers, and for whom. Leaves out solving.
import { settingsOf } from '../../kit/feeds.ts'
import { flushOf, marksLpm, stepCode } from '../../kit/flow-steps.ts'
import type { SizeId } from '../../kit/family-id.ts'
import { HUMIDIFICATIONS } from '../../kit/shelf.ts'
import type { InterfaceRow, Shelf, ShelfSource } from '../../kit/shelf.ts'
import { sizesFor } from '../../kit/sizes-for.ts'
import type { FlowStep } from '../../kit/source-row.ts'
import { flowWanted } from '../../joining/wanted.ts'
import type { Wanted } from '../../joining/wanted.ts'
import type { Case } from '../../patient/case.ts'

/** All as typed, so that a change of one loses no other. */
export interface ChainChoice {
  readonly wardId: string
  readonly interfaceKey: string
  readonly sourceId: string
  readonly humidification: string
  readonly flow: string
  /** Of a mask over a cannula. */
  readonly overFlow: string
  readonly fraction: string
  /** The patient on Bedside, where one is kept, or one of the usual age for the size. */
  readonly patient: string
  /** Of the usual patient. */
  readonly airway: string
  /** The set-up in sight on Bedside from which these picks began; empty where they did not. */
  readonly begunFrom: string
}

export const FIRST_CHOICE: ChainChoice = {
  wardId: '',
  interfaceKey: 'simple-mask/adult',
  sourceId: 'wall-15',
  humidification: 'none',
  flow: '6',
  overFlow: '',
  fraction: '',
  patient: 'bedside',
  airway: 'natural',
  begunFrom: '',
}

export const PATIENTS = ['bedside', 'usual'] as const
export const AIRWAYS = ['natural', 'tube'] as const

/** Usual age and weight of each size. */
const BODIES: Readonly<Record<SizeId, { ageYears: number; weightKg: number }>> = {
  preterm: { ageYears: 0.01, weightKg: 1.5 },
  newborn: { ageYears: 0.04, weightKg: 3 },
  infant: { ageYears: 0.8, weightKg: 8 },
  child: { ageYears: 6, weightKg: 20 },
  adult: { ageYears: 60, weightKg: 70 },
}

/** Whoever the chain is for. */
export type ChainSubject = Pick<Case, 'patient' | 'breathing'>

export interface Picked {
  /** Fitted to the shelf. */
  readonly choice: ChainChoice
  readonly wanted: Wanted
  readonly about: ChainSubject
  readonly flows: readonly FlowStep[]
  /** Empty where the interface takes one flow. */
  readonly overFlows: readonly FlowStep[]
  readonly fractions: readonly number[]
}

/** The choice fitted to the shelf: what the shelf has not is replaced by the first it has, and shown so. `bedside`: null where no case is kept. */
export function pickedFrom(
  shelf: Shelf,
  choice: ChainChoice,
  bedside: ChainSubject | null,
): Picked | null {
  const forBedside = choice.patient === 'usual' ? null : bedside
  const worn = wornFrom(shelf, choice.interfaceKey, forBedside)
  const source = shelf.sources.find(({ id }) => id === choice.sourceId) ?? shelf.sources[0]
  if (worn === undefined || source === undefined) return null
  const { row, size } = worn
  const flows = stepsOf(source)
  const overFlows = row.family === 'cannula-under-mask' ? flows : []
  const fractions = fractionsOf(source) ?? settingsOf(row).map((one) => one.o2Fraction)
  const flow = stepAt(flows, choice.flow)
  const over = stepAt(overFlows, choice.overFlow)
  const fraction =
    fractions.find((one) => String(one) === choice.fraction) ?? firstFraction(source, fractions)
  const humidification =
    HUMIDIFICATIONS.find((one) => one === choice.humidification) ?? FIRST_CHOICE_HUMIDIFIER
  return {
    choice: {
      ...choice,
      wardId: shelf.wards.some(({ id }) => id === choice.wardId) ? choice.wardId : '',
      interfaceKey: `${row.id}/${size}`,
      sourceId: source.id,
      humidification,
      flow: codeOf(flow),
      overFlow: codeOf(over),
      fraction: fraction === undefined ? '' : String(fraction),
    },
    flows,
    overFlows,
    fractions,
    wanted: {
      interfaceId: row.id,
      size,
      sourceId: source.id,
      humidification,
      ...(flow === undefined ? { flowLpm: 0 } : flowWanted(source, flow)),
      ...(over === undefined ? {} : { overFlowLpm: flowWanted(source, over).flowLpm }),
      ...(fraction === undefined ? {} : { o2Fraction: fraction }),
    },
    about: forBedside ?? usualFor(size, choice.airway),
  }
}

const FIRST_CHOICE_HUMIDIFIER = 'none'

/** The row and size of this key; of a row alone or a size it has not, the size that fits the patient. */
function wornFrom(
  shelf: Shelf,
  key: string,
  about: ChainSubject | null,
): { readonly row: InterfaceRow; readonly size: SizeId } | undefined {
  const sizes = shelf.interfaces.flatMap((row) => row.sizes.map(({ size }) => ({ row, size })))
  const exact = sizes.find(({ row, size }) => `${row.id}/${size}` === key)
  const ofRow = sizes.filter(({ row }) => row.id === key.split('/')[0])
  const suitable = about === null ? ['adult'] : suitableFor(ofRow[0]?.row, about)
  const fitting = suitable
    .map((suits) => ofRow.find(({ size }) => size === suits))
    .find((one) => one !== undefined)
  return exact ?? fitting ?? ofRow[0] ?? sizes[0]
}

function suitableFor(row: InterfaceRow | undefined, { patient }: ChainSubject): readonly string[] {
  return row === undefined ? [] : sizesFor(row.family, patient).map(({ size }) => size)
}

function stepsOf(source: ShelfSource): readonly FlowStep[] {
  const marks = marksLpm(source).map((flowLpm): FlowStep => ({ kind: 'scale', flowLpm }))
  return flushOf(source) === null ? marks : [...marks, { kind: 'flush' }]
}

function stepAt(steps: readonly FlowStep[], code: string): FlowStep | undefined {
  return steps.find((step) => stepCode(step) === code) ?? steps[0]
}

function codeOf(step: FlowStep | undefined): string {
  return step === undefined ? '' : stepCode(step)
}

function usualFor(size: SizeId, airway: string): ChainSubject {
  return {
    patient: { ...BODIES[size], airway: airwayOf(airway), retentionRisk: 'none', changes: [] },
    breathing: { state: 'rest' },
  }
}

/** What was asked for by an address and is not among the picks, as it was asked. */
export function notTaken(asked: Partial<ChainChoice>, { choice }: Picked): readonly string[] {
  return Object.entries(asked).flatMap(([key, value]) => {
    // Safe: the keys are those of a choice.
    const taken = choice[key as keyof ChainChoice]
    const isRowAlone = key === 'interfaceKey' && taken.startsWith(`${value}/`)
    return value === '' || taken === value || isRowAlone ? [] : [value]
  })
}

/** Mixers and jets begin at 0.4, so that nobody starts on air. */
function firstFraction(source: ShelfSource, fractions: readonly number[]): number | undefined {
  if (fractionsOf(source) === undefined) return fractions[0]
  return fractions.find((one) => one >= FIRST_FRACTION) ?? fractions[0]
}

const FIRST_FRACTION = 0.4

function fractionsOf(source: ShelfSource): readonly number[] | undefined {
  if (source.kind === 'jet-nebuliser') return source.settings
  return 'fractionSteps' in source ? source.fractionSteps : undefined
}

function airwayOf(airway: string): ChainSubject['patient']['airway'] {
  if (airway !== 'tube') return { route: 'natural', nose: 'open' }
  return {
    route: 'tracheostomy',
    nose: 'open',
    tube: { cuff: 'up', speakingValve: false, capped: false, heatMoistureExchanger: false },
  }
}
