// Which interface sizes suit a body, and how much a cannula of that age may carry. Leaves out faces: a mask that does not fit is the wrong size.
import { requireWithin } from '../errors.ts'
import type { Provenance } from '../units/provenance.ts'
import { INTERFACE_FAMILIES } from './interface-families.ts'
import type { FamilyId, SizeId } from './family-id.ts'
import type { InterfaceSize } from './interface-family.ts'
import type { LabelWeight } from './shelf-row.ts'
import { brokenWeight } from './weight-fit.ts'

export interface BodySize {
  readonly ageYears: number
  /** Where absent, sizes that weight decides (preterm) are not offered. */
  readonly weightKg?: number
}

export interface SuitableSize {
  readonly size: SizeId
  readonly suits: 'preferred' | 'acceptable'
}

/** Upper ages of newborn, infant and child as the usual size, years (28 days, 2 and 12 years; common practice). */
const USUAL_UNTIL_YEARS = { newborn: 28 / 365.25, infant: 2, child: 12 } as const
/** Below this weight in the first months the preterm size is the usual one, kg (common practice). */
const PRETERM_KG = 2
const AGE_YEARS_MAX = 120

/** Sizes of a family for a body, preferred first; empty when none is made for it. Ages and weights as in the size table. */
export function sizesFor(family: FamilyId, body: BodySize): readonly SuitableSize[] {
  requireBody(body)
  const usual = usualSize(body)
  return INTERFACE_FAMILIES[family].sizes
    .filter((size) => isAcceptable(size, body, {}))
    .map(({ id }) => ({
      size: id,
      suits: id === usual ? ('preferred' as const) : ('acceptable' as const),
    }))
    .toSorted((a, b) => Number(b.suits === 'preferred') - Number(a.suits === 'preferred'))
}

/** Whether one size suits a body; weights typed from its label take the place of the usual ones where the weight is known. */
export function sizeSuits(options: {
  readonly family: FamilyId
  readonly size: SizeId
  readonly body: BodySize
  readonly label: LabelWeight
}): boolean {
  const { family, size: id, body, label } = options
  requireBody(body)
  const size = INTERFACE_FAMILIES[family].sizes.find((one) => one.id === id)
  return size !== undefined && isAcceptable(size, body, label)
}

/** The size a body of this age and weight usually wears. */
export function usualSize(body: BodySize): SizeId {
  requireBody(body)
  const { ageYears, weightKg } = body
  if (ageYears < USUAL_UNTIL_YEARS.infant) {
    if (weightKg !== undefined && weightKg <= PRETERM_KG) return 'preterm'
    return ageYears < USUAL_UNTIL_YEARS.newborn ? 'newborn' : 'infant'
  }
  return ageYears < USUAL_UNTIL_YEARS.child ? 'child' : 'adult'
}

function isAcceptable(size: InterfaceSize, body: BodySize, label: LabelWeight): boolean {
  const { ageYears, weightKg } = body
  if (ageYears < size.ageYearsMin || ageYears > size.ageYearsMax) return false
  if (weightKg === undefined) return size.id !== 'preterm'
  return brokenWeight({ size, label, weightKg }) === null
}

export interface CannulaCeiling extends Provenance {
  readonly maxLpm: number
}

const CEILINGS: readonly (CannulaCeiling & { readonly belowYears: number })[] = [
  { belowYears: USUAL_UNTIL_YEARS.newborn, maxLpm: 1, known: 'seen', source: 'WhoSari2023' },
  { belowYears: 2, maxLpm: 2, known: 'seen', source: 'NswProngs2019' },
  { belowYears: USUAL_UNTIL_YEARS.child, maxLpm: 4, known: 'seen', source: 'NswProngs2019' },
]
const ADULT_CEILING: CannulaCeiling = { maxLpm: 6, known: 'common-practice' }

/** Highest unblended flow by nasal cannula at an age: 1 L/min in the first 28 days, 2 below two years, 4 below twelve, then 6. */
export function cannulaCeiling(body: { readonly ageYears: number }): CannulaCeiling {
  requireBody(body)
  const found = CEILINGS.find(({ belowYears }) => body.ageYears < belowYears)
  if (found === undefined) return ADULT_CEILING
  const { belowYears: _, ...ceiling } = found
  return ceiling
}

function requireBody(body: BodySize): void {
  const { ageYears, weightKg } = body
  requireWithin({
    code: 'AGE_OUT_OF_RANGE',
    path: 'ageYears',
    value: ageYears,
    min: 0,
    max: AGE_YEARS_MAX,
    unit: 'a',
  })
  if (weightKg === undefined) return
  requireWithin({
    code: 'WEIGHT_OUT_OF_RANGE',
    path: 'weightKg',
    value: weightKg,
    min: 0.3,
    max: 400,
    unit: 'kg',
  })
}
