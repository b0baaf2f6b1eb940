// Plain text layout: aligned columns, wrapped cells, nothing lost, never wider than allowed. Leaves out what is said.
import * as fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { seeded } from '../../test/support/seed.ts'
import { bulleted, COLUMNS_MOST, indented, section, tableLines, wrapWords } from './table.ts'

const WORDS = fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { minLength: 1, maxLength: 60 })

describe('text layout', () => {
  it('keeps every word and no line longer than asked', () => {
    fc.assert(
      fc.property(WORDS, fc.integer({ min: 12, max: 100 }), (words, width) => {
        const lines = wrapWords(words.join(' '), width)
        expect(lines.join(' ')).toBe(words.join(' '))
        for (const line of lines) expect(line.length).toBeLessThanOrEqual(width)
      }),
      seeded(200),
    )
  })

  it('never parts a number from its unit', () => {
    expect(wrapWords('set to 10 L/min now', 10)).toEqual(['set to', '10 L/min', 'now'])
    expect(wrapWords('about 65 % of', 8)).toEqual(['about', '65 % of'])
  })

  it('sets lists and paragraphs in', () => {
    expect(bulleted(['one', 'two'])).toEqual(['  - one', '  - two'])
    for (const line of [...bulleted(['word '.repeat(80)]), ...indented('word '.repeat(80))]) {
      expect(line.length).toBeLessThanOrEqual(COLUMNS_MOST)
    }
    expect(section('empty', [])).toEqual([])
  })

  it('aligns columns and puts notes under their row', () => {
    expect(
      tableLines(
        [
          { heading: 'name', widthMost: 9 },
          { heading: 'n', align: 'right' },
        ],
        [{ cells: ['long name here', '5'], note: 'why' }, { cells: ['b', '12'] }],
      ),
    ).toEqual([
      'name        n',
      '─────────  ──',
      'long name   5',
      'here',
      '    why',
      'b          12',
    ])
  })
})
