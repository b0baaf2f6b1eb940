// The chain picture says in words what it draws, breaks a wrong join, and keeps faults back while somebody looks for them. Leaves out glyph metrics.
import { describe, expect, it } from 'vitest'
import { checkChain } from '../joining/check-chain.ts'
import { WRONG_ON_PURPOSE } from '../joining/wrong-on-purpose.ts'
import { parseXml } from '../../test/support/xml.ts'
import { chainPictureText, chainSvg } from './chain-picture.ts'

function wrong(id: string) {
  const found = WRONG_ON_PURPOSE.find((one) => one.id === id)
  if (found === undefined) throw new Error(id)
  return { chain: found.chain, check: checkChain(found) }
}

describe('chain picture', () => {
  it.each(WRONG_ON_PURPOSE.map(({ id }) => id))('%s is a picture with a text equivalent', (id) => {
    const svg = chainSvg({ ...wrong(id), mode: 'file' })
    expect(() => parseXml(svg)).not.toThrow()
    expect(svg).toContain('<desc id="ox-chain-desc">')
    expect(svg).not.toContain('NaN')
  })

  it('draws a wrong join broken, with the mend in words', () => {
    const shown = wrong('tubing-on-vein-line')
    expect(chainSvg(shown)).toContain('stroke-dasharray="3 3"')
    expect(chainPictureText(shown).join(' ')).toContain(
      'gas must never meet this line – Mend: take it off at once',
    )
  })

  it('marks a faulty part by a broken frame and a cross, without colour', () => {
    const svg = chainSvg(wrong('exchanger-with-heated'))
    expect(svg).toContain('stroke-dasharray="6 4"')
    expect(svg).toContain('✗')
  })

  it('keeps faults back until they are asked for', () => {
    const hidden = { ...wrong('tubing-on-vein-line'), showsFaults: false }
    expect(chainPictureText(hidden).join(' ')).not.toMatch(/✗|does not hold|way out/)
    expect(chainSvg(hidden)).not.toContain('dasharray')
  })

  it('says where gas can leave', () => {
    const shown = wrong('one-meter-two-patients')
    expect(chainPictureText(shown).join(' ')).toContain('Simple mask (way out)')
  })
})
