// The Settings page as people use it: every setting kept, told to other tabs, and seen to work. Leaves out units in the case form.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { accessibilityFaults, openApp, watchForErrors } from '../support/browser.ts'
import type { OpenedApp } from '../support/browser.ts'
import { sidewaysPx } from './bedside-steps.ts'

let app: OpenedApp
let page: Page
let errors: readonly string[]

beforeAll(async () => {
  app = await openApp()
  const context = await app.browser.newContext({ viewport: { width: 1024, height: 768 } })
  page = await context.newPage()
  errors = watchForErrors(page)
  await page.goto(`${app.url}settings`)
  await page.getByRole('heading', { name: 'Settings', level: 1 }).waitFor()
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

async function settle(): Promise<void> {
  await page.reload()
  await page.getByRole('heading', { name: 'Settings', level: 1 }).waitFor()
}

const lookOf = async (one: Page): Promise<string | undefined> =>
  await one.evaluate(() => document.documentElement.dataset['look'])

describe('settings page', () => {
  it.each(SIZES.flatMap((size) => LOOKS.map((look) => ({ ...size, look }))))(
    'has no accessibility fault at $width × $height, $look',
    async ({ look, ...size }) => {
      await page.setViewportSize(size)
      await page.locator('.header').getByText(look, { exact: true }).click()
      expect(await accessibilityFaults(page)).toEqual([])
      expect(await sidewaysPx(page)).toBe(0)
    },
  )

  it('has targets of at least 44 pixels', async () => {
    const small = await page
      .locator('button, select, .field-box, .check-label, .look-choice, .place')
      .evaluateAll((all) =>
        all
          .map((one) => ({ name: one.textContent ?? '', box: one.getBoundingClientRect() }))
          .filter(({ box }) => box.height < 44 || box.width < 44)
          .map(({ name }) => name),
      )
    expect(small).toEqual([])
  })

  it('keeps every unit through a reload', async () => {
    await page.setViewportSize({ width: 1024, height: 768 })
    await page.getByLabel('pressure in blood and air').selectOption('mmHg')
    await page.getByLabel('weight').selectOption('lb')
    await settle()
    expect(await page.getByLabel('pressure in blood and air').inputValue()).toBe('mmHg')
    expect(await page.getByLabel('weight').inputValue()).toBe('lb')
    expect(await page.getByLabel('height').inputValue()).toBe('cm')
  })

  it('keeps an altitude as typed and says what is wrong with it', async () => {
    const field = page.getByRole('textbox', { name: 'altitude of the site' })
    await field.fill('1,180')
    await settle()
    expect(await field.inputValue()).toBe('1,180')
    expect(await page.locator('.field-problem').innerText()).not.toBe('')
    expect(await accessibilityFaults(page)).toEqual([])
    await page.getByRole('button', { name: 'Use 1180' }).click()
    expect(await field.inputValue()).toBe('1180')
    expect(await page.locator('.field-problem').count()).toBe(0)
  })

  it('reaches other tabs at once', async () => {
    const other = await page.context().newPage()
    await other.goto(`${app.url}settings`)
    await other.getByRole('radio', { name: 'dark', exact: true }).waitFor({ state: 'attached' })
    await page.locator('.settings').getByText('light', { exact: true }).click()
    await other.waitForFunction(() => document.documentElement.dataset['look'] === 'light')
    await page.locator('.settings').getByText('dark', { exact: true }).click()
    await other.waitForFunction(() => document.documentElement.dataset['look'] === 'dark')
    expect(await lookOf(page)).toBe('dark')
    await other.close()
  })

  it('stands still when set so', async () => {
    await page.emulateMedia({ reducedMotion: 'no-preference' })
    await page.locator('.settings').getByText('always still', { exact: true }).click()
    const moving = await page.locator('body *').evaluateAll(
      (all) =>
        all.filter((one) => {
          const { transitionDuration, animationName } = getComputedStyle(one)
          return animationName !== 'none' || /[1-9]/.test(transitionDuration)
        }).length,
    )
    expect(moving).toBe(0)
  })

  it('says what it could not read and goes on with the usual', async () => {
    await page.evaluate(() => {
      const kept = JSON.stringify({ look: 'loud', units: { weight: 'lb' } })
      localStorage.setItem('oxwright.settings.1', kept)
    })
    await settle()
    expect(await page.locator('.settings-faults').innerText()).toContain('look')
    expect(await page.getByLabel('weight').inputValue()).toBe('lb')
    expect(await accessibilityFaults(page)).toEqual([])
    await page.evaluate(() => localStorage.setItem('oxwright.settings.1', '{'))
    await settle()
    expect(await page.locator('.settings-faults').innerText()).toContain('could not be read')
    await page.getByRole('button', { name: 'Back to the usual settings' }).click()
    expect(await page.locator('.settings-faults').count()).toBe(0)
  })

  it('has raised no error in the console', () => {
    expect(errors).toEqual([])
  })
})
