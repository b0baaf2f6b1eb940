// The best checked set-up beside a first that none checks.
import { describe, expect, it } from 'vitest'
import { DEMO_SHELF } from '../kit/demo-shelf/demo-shelf.ts'
import { readCase } from '../patient/read-case.ts'
import parsed from '../../examples/nasal-cannula.json' with { type: 'json' }
import { firstChecked } from './first-checked.ts'
import { makePlan } from './plan.ts'

describe('the first that measurements check', () => {
  const read = readCase(parsed)
  if (!read.ok) throw new Error('the example reads')
  const plan = makePlan({ case: read.case, shelf: DEMO_SHELF, wardId: 'heron' })

  it('stands beside a first that none does, and is no worse than any other checked one', () => {
    const checked = firstChecked(plan)
    expect(plan.ranked[0]?.isChecked).toBe(false)
    expect(checked?.isChecked).toBe(true)
    const ranks = plan.ranked.filter(({ isChecked }) => isChecked).map(({ rank }) => rank)
    expect(checked?.rank).toBe(Math.min(...ranks))
  })

  it('is not named where the first is one, or where there is none', () => {
    const only = (isChecked: boolean) => ({
      ranked: plan.ranked.filter((one) => one.isChecked === isChecked),
    })
    expect(firstChecked(only(true))).toBeNull()
    expect(firstChecked(only(false))).toBeNull()
    expect(firstChecked({ ranked: [] })).toBeNull()
  })
})
