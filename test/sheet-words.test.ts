// Bedside sheets as they are read: whole sentences, nothing said twice, nothing that does not belong to this set-up. Leaves out which steps there must be, and paper.
import { describe, expect, it } from 'vitest'
import { DEMO_SHELF } from '../src/kit/demo-shelf/demo-shelf.ts'
import { sheetPage } from '../src/words/sheet-text.ts'
import type { SheetPage } from '../src/words/sheet-text.ts'
import { PRINTED, requestFor, sheetFor } from './support/printed-sheets.ts'

const PAGES = PRINTED.map(([example, setUpId, humidification]) => {
  const request = requestFor(example, setUpId, humidification)
  return {
    setUpId,
    page: sheetPage({ sheet: sheetFor(request), shelf: DEMO_SHELF, state: 'counts' }),
  }
})

function linesOf({ phases, watch, call, cautions }: SheetPage): readonly string[] {
  return [...phases, watch, call, cautions].flatMap(({ lines }) => lines)
}

describe.each(PAGES)('the sheet of $setUpId', ({ page }) => {
  const lines = linesOf(page)

  it('says each thing in a whole sentence, and once', () => {
    expect(lines.filter((line) => !/^\p{Lu}.*[.?]$/u.test(line))).toEqual([])
    expect(lines.length).toBe(new Set(lines).size)
    expect(page.watch.lines.length).toBeGreaterThan(0)
  })

  it('calls for a blood gas once, beside the line of when to call', () => {
    const gas = lines.filter((line) => /blood gas/i.test(line) && !page.call.lines.includes(line))
    expect(gas.length).toBeLessThanOrEqual(1)
    expect(gas.filter((line) => !/cannot be predicted: .*30–60 minutes/.test(line))).toEqual([])
  })

  it('warns of nothing that is not there', () => {
    expect(lines.filter((line) => /held in front of the face/i.test(line))).toEqual([])
  })

  it('names the interface in few words, begun large', () => {
    const [worn] = page.settings
    expect(worn?.value).not.toMatch(/rebreath.*rebreath/i)
    for (const { value } of page.settings) expect(value).toMatch(/^[\p{Lu}\d]|^flush/u)
  })
})

describe('a reservoir mask', () => {
  it('is named by its label alone where that tells the family, else by both', () => {
    const named = (setUpId: string): string =>
      PAGES.find((one) => one.setUpId === setUpId)?.page.settings[0]?.value ?? ''
    expect(named('non-rebreather/adult@wall-15#15')).toBe('Reservoir mask (non-rebreather)')
    expect(named('simple-mask/adult@wall-15#6')).toBe('Simple mask')
  })
})
