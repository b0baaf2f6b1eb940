// Facts of a chain in words: pressure worked by hand, pushed-on joints, sizes with how they are known. Leaves out the chain's making.
import { describe, expect, it } from 'vitest'
import { checkChain } from '../joining/check-chain.ts'
import { demoPart, inLine } from '../joining/hand-chain.ts'
import { patientPart } from '../joining/patient-part.ts'
import { jointSizeLines, leakPointLines, pressureLines } from './chain-facts-text.ts'

const ADULT = { ageYears: 60, weightKg: 70, airway: { route: 'natural', nose: 'open' } } as const

function onMeter(between: 'nipple' | 'bubble') {
  const chain = inLine([
    demoPart('outlet-oxygen'),
    [demoPart('wall-15'), { flowLpm: 10 }],
    demoPart(between),
    demoPart('tubing-10'),
    demoPart('simple-mask/adult'),
    patientPart('face'),
  ])
  return { chain, check: checkChain({ chain, patient: ADULT }) }
}

/** With plain spaces for those that do not break. */
const plain = (lines: readonly string[]): readonly string[] =>
  lines.map((line) => line.replaceAll(/\s+/g, ' '))

describe('the facts of a chain in words', () => {
  it('give the pressure behind what sets the flow, and no other', () => {
    // 10 m of 4.8 mm at 10 L/min of oxygen: v 9.21 m/s, Re 2 882, f 0.0316, L/d 2 083, ½ρv² 56.4 Pa: 3.71 kPa, 3.64 kPa as the gas expands.
    const [line, ...more] = plain(pressureLines(onMeter('nipple')))
    expect(more).toEqual([])
    const kPa = /^Flowmeter 1–15 L\/min: ([\d.]+) kPa$/.exec(line ?? '')?.[1]
    expect(Math.abs(Number(kPa) - 3.64)).toBeLessThan(0.15)
  })

  it('say of a pressure that a part hides some of it', () => {
    expect(plain(pressureLines(onMeter('bubble')))[0]).toMatch(
      /kPa and what is lost in parts that are not known$/,
    )
  })

  it('name pushed-on joints, not screwed, latched or worn ones', () => {
    expect(plain(leakPointLines(onMeter('nipple')))).toEqual([
      'pushed on: tubing nipple to end of oxygen tubing',
      'pushed on: end of oxygen tubing to tubing nipple',
    ])
  })

  it('give sizes with how they are known, and none where the connector has no one number', () => {
    const unsure = '(from memory, to be confirmed)'
    expect(plain(jointSizeLines(onMeter('nipple').chain))).toEqual([
      `oxygen thread, outside to oxygen thread, inside: 14.3 mm ${unsure}`,
      `tubing nipple to end of oxygen tubing: 6 mm ${unsure}`,
      `end of oxygen tubing to tubing nipple: 6 mm ${unsure}`,
    ])
  })
})
