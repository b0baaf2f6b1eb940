// What can be picked on the Chain page, from the shelf: interfaces by size, sources with their marks, humidifiers. Leaves out solving.
import { settingsOf } from '../../kit/feeds.ts'
import { marksLpm } from '../../kit/flow-steps.ts'
import type { SizeId } from '../../kit/family-id.ts'
import { HUMIDIFIER_KINDS } from '../../kit/shelf.ts'
import type { Shelf, ShelfSource } from '../../kit/shelf.ts'
import type { ChainPatient } from '../../joining/patient-part.ts'
import type { Wanted } from '../../joining/wanted.ts'

/** All as typed, so that a change of one loses no other. */
export interface ChainChoice {
  readonly wardId: string
  readonly interfaceKey: string
  readonly sourceId: string
  readonly humidification: Wanted['humidification']
  readonly flow: string
  readonly fraction: string
  readonly airway: 'natural' | 'tube'
}

export const FIRST_CHOICE: ChainChoice = {
  wardId: '',
  interfaceKey: 'simple-mask/adult',
  sourceId: 'wall-15',
  humidification: 'none',
  flow: '6',
  fraction: '',
  airway: 'natural',
}

export const HUMIDIFICATIONS: readonly Wanted['humidification'][] = ['none', ...HUMIDIFIER_KINDS]

/** Usual age and weight of each size. */
const BODIES: Readonly<Record<SizeId, Pick<ChainPatient, 'ageYears' | 'weightKg'>>> = {
  preterm: { ageYears: 0.01, weightKg: 1.5 },
  newborn: { ageYears: 0.04, weightKg: 3 },
  infant: { ageYears: 0.8, weightKg: 8 },
  child: { ageYears: 6, weightKg: 20 },
  adult: { ageYears: 60, weightKg: 70 },
}

export interface Picked {
  readonly choice: ChainChoice
  readonly wanted: Wanted
  readonly patient: ChainPatient
  readonly flows: readonly number[]
  readonly fractions: readonly number[]
}

/** The choice fitted to the shelf: what the shelf has not is replaced by the first it has, and shown so. */
export function pickedFrom(shelf: Shelf, choice: ChainChoice): Picked | null {
  const interfaces = shelf.interfaces.flatMap((row) => row.sizes.map((stock) => ({ row, stock })))
  const keyOf = (one: (typeof interfaces)[number]) => `${one.row.id}/${one.stock.size}`
  const worn = interfaces.find((one) => keyOf(one) === choice.interfaceKey) ?? interfaces[0]
  const source = shelf.sources.find(({ id }) => id === choice.sourceId) ?? shelf.sources[0]
  if (worn === undefined || source === undefined) return null
  const flows = marksLpm(source)
  const fractions = fractionsOf(source) ?? settingsOf(worn.row).map((one) => one.o2Fraction)
  const flow = String(flows.find((mark) => String(mark) === choice.flow) ?? flows[0])
  const fraction = String(
    fractions.find((one) => String(one) === choice.fraction) ??
      firstFraction(source, fractions) ??
      '',
  )
  const wardId = shelf.wards.some(({ id }) => id === choice.wardId) ? choice.wardId : ''
  const fitted = {
    ...choice,
    wardId,
    interfaceKey: keyOf(worn),
    sourceId: source.id,
    flow,
    fraction,
  }
  const { size } = worn.stock
  return {
    choice: fitted,
    flows,
    fractions,
    wanted: {
      interfaceId: worn.row.id,
      size,
      sourceId: source.id,
      humidification: choice.humidification,
      flowLpm: Number(flow),
      ...(fraction === '' ? {} : { o2Fraction: Number(fraction) }),
    },
    patient: { ...BODIES[size], airway: airwayOf(choice.airway) },
  }
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

function airwayOf(airway: ChainChoice['airway']): ChainPatient['airway'] {
  if (airway === 'natural') return { route: 'natural', nose: 'open' }
  return {
    route: 'tracheostomy',
    nose: 'open',
    tube: { cuff: 'up', speakingValve: false, capped: false, heatMoistureExchanger: false },
  }
}
