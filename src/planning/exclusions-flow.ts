// Exclusions that follow from size, rated flow and the kind of goal.
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { InterfaceSize } from '../kit/interface-family.ts'
import type { SetUp } from '../kit/set-up.ts'
import { cannulaCeiling } from '../kit/sizes-for.ts'
import { brokenWeight } from '../kit/weight-fit.ts'
import type { ExclusionRule, Found, PlanSubject } from './exclusion-rule.ts'

/** High flow in small children: 2 L/min for each kg up to this weight (local policy decides; common practice). */
const CHILD_HIGH_FLOW_LPM_PER_KG = 2
const CHILD_HIGH_FLOW_KG_MAX = 12

export function sizeOfSetUp(setUp: SetUp): InterfaceSize | null {
  return INTERFACE_FAMILIES[setUp.family].sizes.find((size) => size.id === setUp.size) ?? null
}

/** Flow on the meter; the flush step has none. */
function meteredLpm(setUp: SetUp): number | null {
  return setUp.flow.kind === 'scale' ? setUp.flow.flowLpm : null
}

function flowFound(setUp: SetUp, limitLpm: number): Found {
  return {
    values: { flowLpm: meteredLpm(setUp) ?? 0, limitLpm, family: setUp.family },
    flip: { path: 'setUp.flowLpm', value: limitLpm, unit: 'L/min' },
  }
}

function isWithinAge(size: InterfaceSize, subject: PlanSubject): boolean {
  return subject.ageYears >= size.ageYearsMin && subject.ageYears <= size.ageYearsMax
}

export const exclusionsByFlow: readonly ExclusionRule[] = [
  {
    code: 'SIZE_FOR_OTHER_AGE',
    known: 'common-practice',
    applies: (subject, setUp) => {
      const size = sizeOfSetUp(setUp)
      if (size === null)
        return { values: { size: setUp.size, ageYears: subject.ageYears }, flip: null }
      if (isWithinAge(size, subject)) return null
      const bound = subject.ageYears < size.ageYearsMin ? size.ageYearsMin : size.ageYearsMax
      return {
        values: { size: size.id, ageYears: subject.ageYears, boundYears: bound },
        flip: { path: 'patient.ageYears', value: bound, unit: 'a' },
      }
    },
  },
  {
    code: 'SIZE_FOR_OTHER_WEIGHT',
    known: 'common-practice',
    applies: (subject, setUp, { fits }) => {
      const size = sizeOfSetUp(setUp)
      if (size === null || !isWithinAge(size, subject)) return null
      const { weightKg } = subject
      const broken = brokenWeight({ size, label: fits, weightKg })
      if (broken === null) return null
      const { limitKg, isTooHeavy } = broken
      return {
        values: { size: setUp.size, weightKg, limitKg, end: isTooHeavy ? 'most' : 'least' },
        flip: { path: 'patient.weightKg', value: limitKg, unit: 'kg' },
      }
    },
  },
  {
    code: 'BELOW_RATED_FLOW',
    known: 'seen',
    source: 'ODriscoll2017',
    applies: (_subject, setUp, rated) => {
      const flowLpm = meteredLpm(setUp)
      if (flowLpm === null || setUp.source.kind === 'jet-nebuliser') return null
      return flowLpm < rated.minLpm - 1e-9 ? flowFound(setUp, rated.minLpm) : null
    },
  },
  {
    code: 'ABOVE_RATED_FLOW',
    known: 'common-practice',
    applies: (_subject, setUp, rated) => {
      const flowLpm = meteredLpm(setUp)
      if (flowLpm === null || setUp.source.kind === 'jet-nebuliser') return null
      return flowLpm > rated.maxLpm + 1e-9 ? flowFound(setUp, rated.maxLpm) : null
    },
  },
  {
    code: 'ABOVE_CANNULA_CEILING',
    known: 'seen',
    source: 'NswProngs2019',
    applies: (subject, setUp) => {
      if (setUp.family !== 'nasal-cannula') return null
      const { maxLpm } = cannulaCeiling({ ageYears: subject.ageYears })
      return (meteredLpm(setUp) ?? 0) > maxLpm + 1e-9 ? flowFound(setUp, maxLpm) : null
    },
  },
  {
    code: 'HIGH_FLOW_ABOVE_CHILD_CEILING',
    known: 'common-practice',
    applies: (subject, setUp) => {
      if (setUp.family !== 'nasal-high-flow' || subject.weightKg > CHILD_HIGH_FLOW_KG_MAX)
        return null
      const ceilingLpm = CHILD_HIGH_FLOW_LPM_PER_KG * subject.weightKg
      const flowLpm = meteredLpm(setUp) ?? 0
      if (flowLpm <= ceilingLpm) return null
      return {
        values: { flowLpm, ceilingLpm, weightKg: subject.weightKg },
        flip: { path: 'patient.weightKg', value: flowLpm / CHILD_HIGH_FLOW_LPM_PER_KG, unit: 'kg' },
      }
    },
  },
  {
    code: 'FLUSH_ONLY_WHEN_ALL_IS_WANTED',
    known: 'common-practice',
    applies: (subject, setUp) =>
      setUp.flow.kind === 'flush' && subject.goal.kind !== 'as-much-as-possible'
        ? {
            values: { goal: subject.goal.kind },
            flip: { path: 'goal.kind', value: 'as-much-as-possible' },
          }
        : null,
  },
  {
    code: 'BELOW_CLUSTER_FLOW',
    known: 'seen',
    source: 'ODriscoll2017',
    applies: (subject, setUp) => {
      if (subject.goal.kind !== 'as-much-as-possible' || subject.goal.reason !== 'cluster-headache')
        return null
      const flowLpm = meteredLpm(setUp)
      return flowLpm !== null && flowLpm < CLUSTER_LPM_MIN
        ? flowFound(setUp, CLUSTER_LPM_MIN)
        : null
    },
  },
]

/** Cluster headache: at least 12 L/min by reservoir mask. Source: ODriscoll2017. */
const CLUSTER_LPM_MIN = 12
