// Which readings a sheet rests on, as codes with their numbers. Leaves out what was assumed, which the plan lists.
import type { Case } from '../patient/case.ts'
import type { Plan, Remark } from '../planning/plan-types.ts'

/** Saturation and what it was read on, breathing rate, blood gas; and that there is none where there is none. */
export function restsOn(about: Case, plan: Pick<Plan, 'reading'>): readonly Remark[] {
  return [...saturation(about, plan), ...rate(about), ...bloodGas(about)]
}

function saturation(about: Case, { reading }: Pick<Plan, 'reading'>): readonly Remark[] {
  const { onNow } = about
  if (onNow?.saturationPercent === undefined)
    return [{ code: 'RESTS_ON_NO_SATURATION', values: {} }]
  const values = { saturationPercent: onNow.saturationPercent }
  return [
    { code: reading.isUsed ? 'RESTS_ON_SATURATION' : 'RESTS_ON_SATURATION_PUT_ASIDE', values },
  ]
}

function rate(about: Case): readonly Remark[] {
  const ratePerMin = about.breathing.ratePerMin ?? about.onNow?.ratePerMin
  return ratePerMin === undefined
    ? [{ code: 'RESTS_ON_NO_RATE', values: {} }]
    : [{ code: 'RESTS_ON_RATE', values: { ratePerMin } }]
}

function bloodGas(about: Case): readonly Remark[] {
  const gas = about.patient.bloodGas
  if (gas === undefined) return []
  const { arterialPco2Kpa, ph, minutesAgo } = gas
  return [
    {
      code: 'RESTS_ON_BLOOD_GAS',
      values: {
        arterialPco2Kpa,
        ...(ph === undefined ? {} : { ph }),
        ...(minutesAgo === undefined ? {} : { minutesAgo }),
      },
    },
  ]
}
