// The whole way by keyboard alone, at 200 % zoom: a case, its refusal, the answer, dials, pins, reasons, the honest line, the measurement behind a number, then Evidence and Settings.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { openApp } from '../support/browser.ts'
import type { OpenedApp } from '../support/browser.ts'
import {
  answered,
  focusedLabel,
  openBedside,
  overlaps,
  pickExample,
  refused,
  sidewaysPx,
  tabTo,
  typedIn,
} from './bedside-steps.ts'

let app: OpenedApp
let page: Page
let errors: readonly string[]

beforeAll(async () => {
  app = await openApp()
  // A window of 1440 × 900 pixels at 200 %.
  ;({ page, errors } = await openBedside(app, { viewport: { width: 720, height: 450 } }))
})

afterAll(async () => {
  await app.close()
})

const press = async (key: string): Promise<void> => await page.keyboard.press(key)

async function typeOver(text: string): Promise<void> {
  await press('Control+A')
  await page.keyboard.type(text)
}

/** Back to the top of the page, where a reader begins anew. */
async function fromTheTop(): Promise<void> {
  await page.evaluate(() => {
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur()
    window.getSelection()?.collapse(document.body, 0)
  })
}

/** What has the focus is on the screen and marked. */
async function focusIsSeen(): Promise<void> {
  const seen = await page.evaluate(() => {
    const at = document.activeElement
    if (at === null || at === document.body) return 'nothing has the focus'
    const marked = at.closest('label, .field-box, .dial') ?? at
    const box = at.getBoundingClientRect()
    const outlines = [at, marked].map((one) => getComputedStyle(one).outlineStyle)
    if (box.bottom < 0 || box.top > innerHeight) return `out of sight: ${at.textContent}`
    return outlines.every((style) => style === 'none') ? `not marked: ${at.textContent}` : ''
  })
  expect(seen).toBe('')
}

describe('by keyboard alone, at 200 % zoom', () => {
  it('a case is opened, changed, refused where it cannot be, and mended', async () => {
    await tabTo(page, 'Change the case')
    await focusIsSeen()
    await press('Enter')
    await tabTo(page, 'Example case')
    await press('ArrowDown')
    await answered(page)
    await tabTo(page, 'age')
    await focusIsSeen()
    await typeOver('500')
    await refused(page)
    await typeOver('60')
    await answered(page)
    expect(await typedIn(page, 'age')).toBe('60')
    await pickExample(page, 'nasal-cannula')
  })

  it('what is on really is told and copied', async () => {
    await fromTheTop()
    await tabTo(page, 'What is on really?')
    await press('Enter')
    await page.locator('.really').waitFor()
    await tabTo(page, 'interface', '.really select')
    await press('ArrowDown')
    await tabTo(page, 'flow of the meter')
    await typeOver('6')
    await tabTo(page, 'breathing rate counted')
    await typeOver('24')
    await tabTo(page, 'Tell me')
    await press('Enter')
    const line = page.locator('.copied-line')
    await line.waitFor()
    expect(await line.innerText()).toMatch(/, 6.L\/min, breathing 24\/min: inhaled about 0\.\d+/)
    await tabTo(page, 'Copy the line')
    await press('Enter')
    await page.getByText(/^Copied\.|^Copying is not allowed here/).waitFor()
  })

  it('dials are turned, the reader goes back, and two are pinned beside each other', async () => {
    await tabTo(page, 'Flow', 'input[type="range"]')
    await focusIsSeen()
    await press('ArrowLeft')
    await page.locator('.trial').waitFor()
    await tabTo(page, 'Breathing rate', 'input[type="range"]')
    await press('ArrowRight')
    await page.locator('.dial-value', { hasText: 'tried' }).waitFor()
    await fromTheTop()
    await tabTo(page, 'Pin it to compare')
    await press('Enter')
    await page.locator('.compare', { hasText: 'Pinned' }).waitFor()
    await tabTo(page, /./, '.ranked-row input[type="radio"], .on-now input[type="radio"]')
    await press('ArrowDown')
    await page.locator('.ranked .ranked-row[data-chosen="true"]').waitFor()
    await fromTheTop()
    await tabTo(page, 'Pin it to compare')
    await press('Enter')
    await page.locator('.compare svg').waitFor()
    expect(await sidewaysPx(page)).toBe(0)
    expect(await overlaps(page)).toEqual([])
    await tabTo(page, 'Take both away')
    await press('Enter')
    expect(await page.locator('.compare').count()).toBe(0)
  })

  it('why not that one is answered', async () => {
    await tabTo(page, 'Why not this one?')
    await press('Enter')
    const said = page.locator('.ranked .fold[data-expanded] .fold-panel')
    expect(await said.first().innerText()).toMatch(/\d/)
  })

  it('a number leads to the measurement nearest to it, which stands in sight on Evidence', async () => {
    await fromTheTop()
    await tabTo(page, /./, '.ranked-row input[type="radio"], .on-now input[type="radio"]')
    await press('ArrowUp')
    await page.locator('.measured').getByRole('link').waitFor()
    const href = (await page.locator('.measured a').getAttribute('href')) ?? ''
    await fromTheTop()
    await tabTo(page, await page.locator('.measured a').innerText(), 'a')
    await press('Enter')
    const row = page.locator('.check-row[aria-current="location"]')
    await row.waitFor()
    expect(`/evidence#${await row.getAttribute('id')}`).toBe(href)
    const box = await row.boundingBox()
    expect(box?.y ?? -1).toBeGreaterThanOrEqual(0)
    expect(box?.y ?? Infinity).toBeLessThan(450)
  })

  it('checks are filtered, found by a word, and shown further', async () => {
    const counted = page.locator('.row-count output')
    const all = await counted.innerText()
    await fromTheTop()
    await tabTo(page, 'result', 'select')
    await focusIsSeen()
    await press('ArrowDown')
    await page.waitForFunction(
      (before) => document.querySelector('.row-count output')?.textContent !== before,
      all,
    )
    await tabTo(page, 'Show all checks again')
    await press('Enter')
    await page.locator('.row-count output', { hasText: all }).waitFor()
    const rows = await page.locator('.check-row').count()
    await tabTo(page, 'Show more')
    await press('Enter')
    await expect.poll(async () => await page.locator('.check-row').count()).toBeGreaterThan(rows)
  })

  it('settings are changed and kept', async () => {
    await fromTheTop()
    await tabTo(page, 'Settings', 'a')
    await press('Enter')
    await page.getByRole('heading', { name: 'Settings' }).waitFor()
    await tabTo(page, /^height/i, 'select')
    await focusIsSeen()
    await press('ArrowDown')
    await tabTo(page, /^altitude of the site/i)
    await typeOver('1200')
    await tabTo(page, /./, '.settings input[type="radio"]')
    await focusIsSeen()
    await press('Tab')
    expect(await focusedLabel(page)).not.toBe('')
    await page.reload()
    expect(await page.getByLabel(/^height/i).inputValue()).toBe('in')
    expect(await page.getByRole('textbox', { name: /^altitude of the site/i }).inputValue()).toBe(
      '1200',
    )
    expect(await sidewaysPx(page)).toBe(0)
  })

  it('has raised no error in the console', () => {
    expect(errors).toEqual([])
  })
})
