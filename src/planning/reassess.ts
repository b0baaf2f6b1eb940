// How long a plan may stand before the patient is looked at again. Leaves out the clock, which the edges hold.
import type { Case } from '../patient/case.ts'
import type { Reassessment, Remark } from './plan-types.ts'

interface ReassessRule extends Pick<Remark, 'code' | 'known' | 'source'> {
  readonly withinMin: number
  readonly holds: (about: Case) => boolean
}

/** The first that holds counts; where none does, HOURLY. */
const RULES: readonly ReassessRule[] = [
  {
    code: 'REASSESS_CRITICAL',
    withinMin: 15,
    known: 'common-practice',
    holds: ({ goal }) => goal.kind === 'as-much-as-possible',
  },
  {
    // Blood gas within 30–60 minutes of a change: the plan stands no longer than until then.
    code: 'REASSESS_BLOOD_GAS',
    withinMin: 60,
    known: 'seen',
    source: 'ODriscoll2017',
    holds: ({ patient }) => patient.retentionRisk !== 'none',
  },
  {
    code: 'REASSESS_NO_READING',
    withinMin: 30,
    known: 'common-practice',
    holds: ({ goal, onNow }) => goal.kind !== 'comfort' && onNow?.saturationPercent === undefined,
  },
  {
    code: 'REASSESS_COMFORT',
    withinMin: 240,
    known: 'common-practice',
    holds: ({ goal }) => goal.kind === 'comfort',
  },
]

const HOURLY: Omit<ReassessRule, 'holds'> = {
  code: 'REASSESS_HOURLY',
  withinMin: 60,
  known: 'common-practice',
}

/** Minutes from the observations in the case. Sources stand with each rule; those without one are common practice. */
export function reassessment(about: Case): Reassessment {
  const found = RULES.find(({ holds }) => holds(about))
  const { code, withinMin, known, source } = found ?? HOURLY
  return {
    withinMin,
    why: {
      code,
      values: { withinMin },
      ...(known === undefined ? {} : { known }),
      ...(source === undefined ? {} : { source }),
    },
  }
}
