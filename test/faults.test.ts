// Planted faults must turn named checks red: a part of `npm run check:faults`, which plants them all.
import { describe, expect, it } from 'vitest'
import { FAULTS } from './faults/fault-list.ts'
import { faulty, judgeFault, runPlanted } from './faults/plant.ts'

describe('planted faults', () => {
  it('are at least fourteen, each with a named check', () => {
    expect(FAULTS.length).toBeGreaterThanOrEqual(14)
    expect(FAULTS.filter(({ red }) => red.length === 0)).toEqual([])
  })

  it('still match the source they change', () => {
    for (const fault of FAULTS) expect(faulty(fault)).toContain(fault.replace)
  })

  it('turn their named checks red', async () => {
    const planted = FAULTS.filter(({ inTests }) => inTests)
    expect(planted.length).toBeGreaterThanOrEqual(8)
    const healthy = await runPlanted(
      null,
      planted.flatMap(({ red }) => red),
    )
    for (const fault of planted) {
      const { undetected, notGreenBefore } = await judgeFault(fault, healthy, fault.red)
      expect({ id: fault.id, undetected, notGreenBefore }).toEqual({
        id: fault.id,
        undetected: [],
        notGreenBefore: [],
      })
    }
  })

  it('go unseen when nothing is planted', async () => {
    const [fault] = FAULTS
    const healthy = await runPlanted(null, fault?.red)
    expect(Object.values(healthy)).toEqual(fault?.red.map(() => true))
  })
})
