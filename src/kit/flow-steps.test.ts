// Steps of the demo sources: marks, used steps, neighbours. Leaves out what really flows.
import { describe, expect, it } from 'vitest'
import { DEMO_SHELF } from './demo-shelf/demo-shelf.ts'
import { flowSteps, isStepOf, marksLpm, nextStep, nominalLpm, stepCode } from './flow-steps.ts'
import type { ShelfSource } from './shelf.ts'
import type { FlowStep } from './source-row.ts'

function source(id: string): ShelfSource {
  const found = DEMO_SHELF.sources.find((row) => row.id === id)
  if (found === undefined) throw new Error(`no source ${id}`)
  return found
}

const scale = (flowLpm: number): FlowStep => ({ kind: 'scale', flowLpm })
const FLUSH: FlowStep = { kind: 'flush' }

describe('steps of a source', () => {
  it('prints each mark as the decimal on the scale', () => {
    for (const row of DEMO_SHELF.sources) {
      for (const lpm of marksLpm(row))
        expect(String(lpm), row.id).toMatch(/^\d{1,2}(?:\.\d{1,2})?$/)
    }
  })

  it('holds the used steps, rising, flush last', () => {
    expect(flowSteps(source('wall-15')).map(stepCode)).toEqual([
      '1',
      '2',
      '3',
      '4',
      '5',
      '6',
      '8',
      '10',
      '12',
      '15',
      'flush',
    ])
    const bare = { ...source('wall-15') }
    delete bare.usedStepsLpm
    expect(flowSteps(bare)).toHaveLength(16)
  })

  it('marks 10 to 200 mL/min in hundredths of a litre', () => {
    const low = source('wall-200-ml')
    expect(marksLpm(low)).toHaveLength(20)
    expect(isStepOf(low, scale(0.03))).toBe(true)
    expect(isStepOf(low, scale(0.025))).toBe(false)
    expect(isStepOf(low, FLUSH)).toBe(false)
  })

  it('doubles the marks where two meters join', () => {
    expect(flowSteps(source('two-15')).map(stepCode)).toEqual(['20', '24', '30'])
    expect(isStepOf(source('two-15'), scale(15))).toBe(false)
    expect(flowSteps(source('nebuliser-double')).map(stepCode)).toEqual(['20', '30'])
  })

  it('stops at the highest drive of a nebuliser', () => {
    const nebuliser = source('nebuliser')
    if (nebuliser.kind !== 'jet-nebuliser') throw new Error('not a nebuliser')
    expect(marksLpm({ ...nebuliser, driveLpmMax: 10 }).at(-1)).toBe(10)
  })

  it('finds the next step up and down, from between two as well', () => {
    const wall = source('wall-15')
    expect(nextStep(wall, scale(6), 'up')).toEqual(scale(8))
    expect(nextStep(wall, scale(6), 'down')).toEqual(scale(5))
    expect(nextStep(wall, scale(7), 'up')).toEqual(scale(8))
    expect(nextStep(wall, scale(7), 'down')).toEqual(scale(6))
    expect(nextStep(wall, scale(15), 'up')).toEqual(FLUSH)
    expect(nextStep(wall, FLUSH, 'down')).toEqual(scale(15))
    expect(nextStep(wall, FLUSH, 'up')).toBeNull()
    expect(nextStep(wall, scale(1), 'down')).toBeNull()
  })

  it('takes flush for the middle of what is known of it', () => {
    expect(nominalLpm(source('wall-15'), FLUSH)).toBe(50)
    expect(nominalLpm(source('wall-5'), FLUSH)).toBeNull()
    expect(nominalLpm(source('blender-60'), scale(40))).toBe(40)
  })
})
