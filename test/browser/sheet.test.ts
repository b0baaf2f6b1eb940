// The sheet page as a person uses it: from the set-up in sight, by a scanned address without a network, on paper. Leaves out the words of each step.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { writeFragment } from '../../src/sheet/fragment.ts'
import type { SheetRequest } from '../../src/sheet/fragment.ts'
import { accessibilityFaults, openApp, watchForErrors } from '../support/browser.ts'
import type { OpenedApp } from '../support/browser.ts'
import { ROOT } from '../support/files.ts'
import { FULLEST, PRINTED, requestFor } from '../support/printed-sheets.ts'
import { faultsInBothLooks, openBedside, sidewaysPx } from './bedside-steps.ts'

let app: OpenedApp
let page: Page
let errors: readonly string[]

beforeAll(async () => {
  app = await openApp()
  const context = await app.browser.newContext({ viewport: { width: 1440, height: 900 } })
  page = await context.newPage()
  page.setDefaultTimeout(60_000)
  errors = watchForErrors(page)
})

afterAll(async () => {
  await app.close()
})

/** As if made now, so that it counts. */
function now(): string {
  const shifted = new Date(Date.now() - new Date().getTimezoneOffset() * 60_000)
  return shifted.toISOString().slice(0, 16)
}

function addressOf(request: SheetRequest): string {
  return `${app.url}/sheet#${writeFragment(request)}`.replace('//sheet', '/sheet')
}

async function openSheet(example: string, setUpId: string, times: Partial<SheetRequest> = {}) {
  const request = { ...requestFor(example, setUpId), madeAt: now(), readAt: now(), ...times }
  await page.goto('about:blank')
  await page.goto(addressOf(request))
  await page.locator('article.sheet-paper').waitFor()
}

const PAPERS = ['A4', 'Letter'] as const

/** Every second sheet, and the fullest; test/sheet-pdf.test.ts prints the same words of all. */
const ON_PAPER = PRINTED.filter(([, setUpId], at) => at % 2 === 0 || FULLEST.includes(setUpId))

describe('the sheet page', () => {
  it('opens with one press from the set-up in sight', async () => {
    const { page: bedside, errors: faults } = await openBedside(app)
    await bedside.locator('.ranked-row').nth(1).getByRole('radio').check()
    await bedside.getByRole('button', { name: 'Bedside sheet' }).click()
    await bedside.locator('article.sheet-paper').waitFor()
    expect(await bedside.locator('article .sheet-who').innerText()).toBe('Bed Heron 4 · H-1042')
    expect(await bedside.locator('article .sheet-state').innerText()).toMatch(
      /^Valid until \d\d:\d\d on/,
    )
    expect(bedside.url()).not.toMatch(/1042/)
    expect(faults).toEqual([])
    await bedside.close()
  })

  it('makes the sheet of a scanned address, bed and all, and gives its case to Bedside', async () => {
    await openSheet('tracheostomy-mask', 'tracheostomy-mask/adult@nebuliser#10:0.35')
    const paper = page.locator('article.sheet-paper')
    expect(await paper.locator('.sheet-who').innerText()).toBe('Bed Plover 3')
    expect(await paper.innerText()).toMatch(/Cuff pressure by gauge/)
    expect(await paper.locator('.sheet-settings').innerText()).toMatch(/10 L\/min/)
    expect(await paper.getByRole('img').getAttribute('aria-label')).toMatch(/without a network/)
    await page.getByRole('button', { name: 'Open its case on Bedside' }).click()
    await page.locator('.case-line').waitFor()
    expect(await page.locator('.case-line').innerText()).toMatch(/^61 years, 79 kg/)
  })

  it('asks no server once the page is there', async () => {
    await openSheet('simple-mask', 'simple-mask/adult@wall-15#6')
    await page.context().setOffline(true)
    const request = {
      ...requestFor('simple-mask', 'simple-mask/adult@wall-15#8'),
      madeAt: now(),
      readAt: now(),
    }
    await page.evaluate((hash) => {
      location.hash = hash
    }, writeFragment(request))
    const settings = page.locator('article .sheet-settings', { hasText: '8 L/min' })
    await settings.waitFor()
    expect(await settings.innerText()).toMatch(/simple mask/i)
    await page.context().setOffline(false)
  })

  it('shows and prints a sheet of yesterday as not valid', async () => {
    const times = { madeAt: '2026-01-02T10:00', readAt: '2026-01-02T10:00' }
    await openSheet('simple-mask', 'simple-mask/adult@wall-15#6', times)
    const state = await page.locator('article .sheet-state').innerText()
    expect(state).toMatch(/^NOT VALID since 11:00 on 2026-01-02/)
    expect(state).toMatch(/Do not use/)
    expect(await faultsInBothLooks(page, 'main')).toEqual([])
    await page.getByLabel('readings taken at').fill(now())
    await page.locator('article.sheet-paper[data-counts="true"]').waitFor()
    expect(await page.locator('article .sheet-state').innerText()).toMatch(/^Valid until/)
  })

  it('works out when the cylinder is changed from volume and gauge, and refuses what is no number', async () => {
    const { cylinder: _cylinder, ...request } = requestFor(
      'nasal-cannula',
      'nasal-cannula/adult@cylinder-flush#6',
    )
    await page.goto('about:blank')
    await page.goto(addressOf({ ...request, madeAt: now(), readAt: now() }))
    const paper = page.locator('article.sheet-paper')
    await paper.getByText('time to change not worked out').waitFor()
    await page.getByRole('textbox', { name: 'water volume of the cylinder' }).fill('2,0')
    await page.getByRole('textbox', { name: 'gauge now' }).fill('13x')
    await page.getByRole('textbox', { name: 'changed at' }).fill('14')
    await page.getByRole('button', { name: 'Work out when to change it' }).click()
    expect(await page.locator('.sheet-cylinder').innerText()).toMatch(/“13x” is not a number/)
    await page.getByRole('textbox', { name: 'gauge now' }).fill('137')
    await page.getByRole('button', { name: 'Work out when to change it' }).click()
    await paper.getByText(/change at \d\d:\d\d on .* or at 14 bar/).waitFor()
  })

  it('says why there is no sheet: nothing named, address cut, set-up unknown or ruled out', async () => {
    await page.goto(`${app.url}/sheet`.replace('//sheet', '/sheet'))
    await page.getByText('No sheet is named in this address').waitFor()
    expect(await faultsInBothLooks(page, 'main')).toEqual([])
    const whole = addressOf({ ...requestFor('simple-mask', 'simple-mask/adult@wall-15#6') })
    await page.goto('about:blank')
    await page.goto(whole.slice(0, -3))
    await page.getByText('This address cannot be read as a sheet').waitFor()
    await page.goto('about:blank')
    await page.goto(addressOf({ ...requestFor('simple-mask', 'simple-mask/adult@wall-99#6') }))
    await page.getByText('is not on the shelf used here').waitFor()
    await page.goto('about:blank')
    await page.goto(addressOf(requestFor('laryngectomy', 'simple-mask/adult@wall-15#6')))
    await page.getByText('the plan rules this set-up out').waitFor()
    expect(await faultsInBothLooks(page, 'main')).toEqual([])
    expect(await page.getByRole('link', { name: 'To Bedside' }).count()).toBe(1)
  })

  it('has no accessibility fault in either look at any size, and targets of at least 44 pixels', async () => {
    await openSheet('t-piece', 't-piece/adult@ventilator#40:0.4')
    // Colours are the same at every size.
    for (const [colorScheme, width, height] of [
      ['light', 1440, 900],
      ['light', 1024, 768],
      ['light', 390, 844],
      ['dark', 390, 844],
    ] as const) {
      await page.emulateMedia({ colorScheme })
      await page.setViewportSize({ width, height })
      expect(await accessibilityFaults(page)).toEqual([])
      expect(await sidewaysPx(page)).toBeLessThanOrEqual(0)
      expect(await smallTargets(page)).toEqual([])
    }
    await page.emulateMedia({ colorScheme: null })
    await page.setViewportSize({ width: 1440, height: 900 })
  })

  it.each(ON_PAPER.map((printed, at) => [...printed, at] as const))(
    'prints on one page of A4 and of Letter, nothing cut: %s on %s',
    async (example, setUpId, humidification, at) => {
      await turnTo(requestFor(example, setUpId, humidification))
      // Type is fitted to the shorter and to the narrower paper at once: one after the other is printed in turn, the fullest sheets on both.
      const papers = FULLEST.includes(setUpId) ? PAPERS : PAPERS.slice(at % 2, (at % 2) + 1)
      for (const format of papers) {
        const pdf = await page.pdf({ format, preferCSSPageSize: false })
        const pages = [...pdf.toString('latin1').matchAll(/\/Type\s*\/Page\b/g)].length
        expect({ format, pages }).toEqual({ format, pages: 1 })
      }
      await page.emulateMedia({ media: 'print' })
      const cut: string[] = []
      // The printable width of A4 and of Letter at 96 dots to the inch, margins taken off.
      for (const width of [718, 740]) {
        await page.setViewportSize({ width, height: 900 })
        cut.push(...(await cutTexts(page)))
      }
      const typePt = await smallestPt(page)
      // Put back before anything is judged, so that a fault here leaves the next sheet to be judged.
      await page.emulateMedia({ media: null })
      await page.setViewportSize({ width: 1440, height: 900 })
      expect(cut).toEqual([])
      expect(typePt).toBeGreaterThanOrEqual(TYPE_PT_MIN)
    },
  )

  it('leaves no error behind', () => {
    // The icon is asked for while the page is offline on purpose.
    expect(errors.filter((error) => !/icon\.svg|INTERNET_DISCONNECTED/.test(error))).toEqual([])
  })

  it('has a stylesheet that names no colour but black and white for paper and code', () => {
    const css = readFileSync(join(ROOT, 'src/web/styles/sheet.css'), 'utf8')
    const colours = [...css.matchAll(/#[0-9a-f]{3,8}\b/gi)].map(([colour]) => colour)
    expect(new Set(colours)).toEqual(new Set(['#ffffff', '#000000']))
  })
})

/** About 2.6 mm, as on the PDF of the command line. */
const TYPE_PT_MIN = 7.5
/** Another sheet without loading the page again; each example has a bed of its own. */
async function turnTo(request: SheetRequest): Promise<void> {
  if (!page.url().includes('/sheet'))
    await page.goto(`${app.url}/sheet`.replace('//sheet', '/sheet'))
  await page.evaluate(
    (hash) => {
      location.hash = hash
    },
    writeFragment({ ...request, madeAt: now(), readAt: now() }),
  )
  await page.locator('article .sheet-who', { hasText: request.case.bed ?? '' }).waitFor()
}

/** Of all texts of the printed copy. */
async function smallestPt(on: Page): Promise<number> {
  return await on.evaluate(() => {
    const texts = document.querySelectorAll('.as-paper :is(p, dt, dd, h2, li, figcaption, strong)')
    const sizes = [...texts].map((one) => Number.parseFloat(getComputedStyle(one).fontSize))
    return sizes.length === 0 ? 0 : (Math.min(...sizes) * 72) / 96
  })
}

async function smallTargets(on: Page): Promise<readonly string[]> {
  return await on.locator('main :is(button, a, input)').evaluateAll((all) =>
    all
      // A field is pressed anywhere in its box.
      .map((one) => ({
        name: one.textContent,
        box: (one.closest('.field-box') ?? one).getBoundingClientRect(),
      }))
      .filter(({ box }) => box.width > 0 && (box.height < 44 || box.width < 44))
      .map(({ name, box }) => `${name} ${box.width} × ${box.height}`),
  )
}

/** Texts that stick out of the paper or of their own box. */
async function cutTexts(on: Page): Promise<readonly string[]> {
  return await on.evaluate(() => {
    const paper = document.querySelector('.as-paper')
    if (paper === null) return ['no paper']
    const edge = paper.getBoundingClientRect()
    const cut: string[] = []
    for (const element of paper.querySelectorAll('p, dt, dd, h2, li, figcaption, strong')) {
      const box = element.getBoundingClientRect()
      const sticksOut = box.left < edge.left - 1 || box.right > edge.right + 1
      const isClipped = element.scrollWidth > element.clientWidth + 1 && element.clientWidth > 0
      if (sticksOut || isClipped) cut.push(element.textContent)
    }
    return cut
  })
}
