// The Evidence page as people use it: summary, plot, filters, misses first, each check at its address, paper. Leaves out the checks' numbers, which test/evidence.test.ts judges.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { EVIDENCE_ROWS } from '../../src/evidence/all-rows.ts'
import { INTERFACE_FAMILIES } from '../../src/kit/interface-families.ts'
import { accessibilityFaults, openApp, watchForErrors } from '../support/browser.ts'
import type { OpenedApp } from '../support/browser.ts'
import { brokenByPages, sidewaysPx } from './bedside-steps.ts'

let app: OpenedApp
let page: Page
let errors: readonly string[]

beforeAll(async () => {
  app = await openApp()
  const context = await app.browser.newContext({
    viewport: { width: 1024, height: 768 },
    serviceWorkers: 'block',
  })
  page = await context.newPage()
  page.setDefaultTimeout(120_000)
  errors = watchForErrors(page)
  await page.goto(`${app.url}evidence`)
  await page.getByText('Running the checks').waitFor()
  await page.locator('.check-row').first().waitFor()
})

afterAll(async () => {
  await app.close()
})

const SIZES = [
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
  { width: 1440, height: 900 },
  // A window of 1024 pixels at 200 %.
  { width: 512, height: 384 },
] as const
const LOOKS = ['Light', 'Dark'] as const

const rowIds = async (): Promise<readonly string[]> =>
  await page.locator('.check-row[id]').evaluateAll((all) => all.map(({ id }) => id))
const counted = async (): Promise<string> => await page.locator('.row-count output').innerText()

describe('evidence page', () => {
  it('keeps answering while the checks run elsewhere', async () => {
    await page.reload()
    await page.getByText(/^\d+ of \d+ checks$/).waitFor()
    await page.locator('.header').getByText('Dark', { exact: true }).click()
    expect(await page.evaluate(() => document.documentElement.dataset['look'])).toBe('dark')
    expect(await page.locator('main').getAttribute('aria-busy')).toBe('true')
    await page.locator('.check-row').first().waitFor()
  })

  it('counts every check and begins with those that miss, each with its explanation', async () => {
    expect(await counted()).toContain(`${EVIDENCE_ROWS.length} checks`)
    const results = await page
      .locator('.check-row[id]')
      .evaluateAll((all) => all.map((one) => one.dataset['result']))
    const misses = results.filter((result) => result === 'miss').length
    expect(misses).toBeGreaterThan(0)
    expect(results.slice(0, misses).every((result) => result === 'miss')).toBe(true)
    expect(await page.locator('.check-row[data-result="miss"] .check-why').count()).toBe(misses)
  })

  it('says of each row its condition, quantity, both values, how it is known and its source', async () => {
    const row = page.locator('#over-mask-gentle-8')
    const said = await row.innerText()
    expect(said).toMatch(/simple mask: 5 healthy people; site not seen, in the mask assumed/)
    expect(said).toMatch(/Fraction in the mask: published 0\.73, ours 0\.\d+ \(±0\.08/)
    expect(said).toMatch(/measured; read in the source/)
    expect(said).toMatch(/Oxygen mask over another mask, 2024/)
  })

  it('says where no measurement exists, for every unchecked interface', async () => {
    const unchecked = Object.values(INTERFACE_FAMILIES).filter(({ isChecked }) => !isChecked)
    expect(unchecked.length).toBeGreaterThan(0)
    const told = page.locator('.check-row', { hasText: 'No measurement exists' })
    expect(await told.count()).toBe(unchecked.length)
    expect(await page.locator('.family', { hasText: 'No measurement exists' }).count()).toBe(
      unchecked.length,
    )
  })

  it('narrows by interface, result, source and words, and widens again', async () => {
    await page.getByLabel('interface', { exact: true }).selectOption('simple-mask')
    const own = EVIDENCE_ROWS.filter(({ family }) => family === 'simple-mask')
    await page.waitForFunction(
      (text) => document.querySelector('.row-count output')?.textContent?.startsWith(text),
      `${own.length} check`,
    )
    await page.getByLabel('result').selectOption('pass')
    await page.waitForFunction(
      () => document.querySelectorAll('.check-row[data-result="miss"]').length === 0,
    )
    await page.getByRole('button', { name: 'Show all checks again' }).click()
    await page.getByLabel('source').selectOption('Yorozu2014')
    const cited = EVIDENCE_ROWS.filter(({ source }) => source === 'Yorozu2014')
    await page.waitForFunction(
      (text) => document.querySelector('.row-count output')?.textContent?.startsWith(text),
      `${cited.length} check`,
    )
    await page.getByRole('button', { name: 'Show all checks again' }).click()
    await page.getByLabel('words in it').fill('no such words stand anywhere')
    await page.getByText('No check fits this choice').waitFor()
    await page.getByRole('button', { name: 'Show all checks again' }).click()
    await page.locator('.check-row[id]').first().waitFor()
    expect(await page.getByLabel('words in it').inputValue()).toBe('')
  })

  it('shows more on demand', async () => {
    const before = (await rowIds()).length
    await page.getByRole('button', { name: 'Show more' }).click()
    expect((await rowIds()).length).toBeGreaterThan(before)
  })

  it('leads to a check by its address, however far down it stands', async () => {
    const last = EVIDENCE_ROWS.at(-1)?.id ?? ''
    await page.evaluate((id) => {
      location.hash = id
    }, last)
    const row = page.locator(`.check-row[aria-current="location"]`)
    await row.waitFor()
    expect(await row.getAttribute('id')).toBe(last)
    expect(await page.evaluate(() => document.activeElement?.id)).toBe(last)
    const box = await row.boundingBox()
    expect(box?.y ?? -1).toBeGreaterThanOrEqual(0)
    expect(box?.y ?? Infinity).toBeLessThan(768)
  })

  it('links a source by its DOI, as text', async () => {
    const link = page.locator('.check-link[href^="https://doi.org/"]').first()
    const href = (await link.getAttribute('href')) ?? ''
    expect(await link.innerText()).toBe(`doi ${href.replace('https://doi.org/', '')}`)
  })

  it('tells its plot in words', async () => {
    const described = await page.locator('.picture svg desc').textContent()
    expect(described).toContain('RMS')
    await page.getByRole('button', { name: 'The same in words' }).click()
    const said = await page.locator('.fold-panel .lines li').allTextContents()
    expect(said.join(' ')).toBe(described)
  })

  it.each(SIZES.flatMap((size) => LOOKS.map((look) => ({ ...size, look }))))(
    'has no accessibility fault at $width × $height, $look',
    async ({ look, ...size }) => {
      await page.getByLabel('result').selectOption('miss')
      await page.setViewportSize(size)
      await page.locator('.header').getByText(look, { exact: true }).click()
      await page.locator('.picture svg').waitFor()
      expect(await accessibilityFaults(page)).toEqual([])
      expect(await sidewaysPx(page)).toBe(0)
    },
  )

  it('has targets of at least 44 pixels', async () => {
    const small = await page
      .locator('main :is(button, select, .field-box, .check-link)')
      .evaluateAll((all) =>
        all
          .map((one) => ({ name: one.textContent ?? '', box: one.getBoundingClientRect() }))
          .filter(({ box }) => box.width > 0 && (box.height < 44 || box.width < 44))
          .map(({ name }) => name),
      )
    expect(small).toEqual([])
  })

  it('prints summary, plot and checks, but no filters', async () => {
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.picture svg').isVisible()).toBe(true)
    expect(await page.locator('.family').first().isVisible()).toBe(true)
    expect(await page.locator('.check-row').first().isVisible()).toBe(true)
    expect(await page.locator('.filters').isVisible()).toBe(false)
    expect(await brokenByPages(page)).toEqual([])
  })

  it('has raised no error in the console', () => {
    expect(errors).toEqual([])
  })
})
