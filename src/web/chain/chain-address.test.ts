// Addresses of Chain: every set-up of the demo shelf comes back as it was; half an address is made whole. Leaves out the page.
import { describe, expect, it } from 'vitest'
import { candidateSetUps } from '../../kit/build-set-ups.ts'
import { DEMO_SHELF } from '../../kit/demo-shelf/demo-shelf.ts'
import { wantedOf } from '../../joining/wanted.ts'
import { namedBy, readSearch, searchOf } from './chain-address.ts'
import { FIRST_CHOICE, notTaken, pickedFrom } from './chain-choice.ts'
import { wholePicks } from './whole-picks.ts'

function picked(search: string) {
  const named = wholePicks({
    shelf: DEMO_SHELF,
    named: readSearch(search),
    before: FIRST_CHOICE,
    about: null,
  })
  const found = pickedFrom(DEMO_SHELF, { ...FIRST_CHOICE, ...named }, null)
  if (found === null) throw new Error('the demo shelf is not empty')
  return { found, missed: notTaken(readSearch(search), found) }
}

describe('an address of Chain', () => {
  it('names every set-up of the shelf so that the same parts are asked for', () => {
    const setUps = candidateSetUps(DEMO_SHELF).map(({ setUp }) => setUp)
    expect(setUps.length).toBeGreaterThan(900)
    const wrong = setUps.filter((setUp) => {
      const { found, missed } = picked(searchOf(namedBy(setUp, undefined) ?? {}))
      expect(found.wanted).toEqual(wantedOf(setUp))
      return missed.length > 0
    })
    expect(wrong).toEqual([])
  })

  it('that names an interface alone is given a source that feeds it', () => {
    const { found, missed } = picked('interface=tracheostomy-mask')
    expect(found.wanted.interfaceId).toBe('tracheostomy-mask')
    expect(['nebuliser', 'nebuliser-double', 'blender-60', 'ventilator']).toContain(
      found.wanted.sourceId,
    )
    expect(missed).toEqual([])
  })

  it('keeps what it names and the shelf has not in sight', () => {
    expect(picked('source=gone&humidifier=steam').missed).toEqual(['gone', 'steam'])
  })
})
