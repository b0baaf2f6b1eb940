// Units chosen in Settings on the first page: values follow, what was typed keeps its meaning. Leaves out the Settings page itself.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { accessibilityFaults, openApp } from '../support/browser.ts'
import type { OpenedApp } from '../support/browser.ts'
import {
  answered,
  openBedside,
  primaryNumber,
  problemAt,
  refused,
  typedIn,
  typeInto,
} from './bedside-steps.ts'

let app: OpenedApp
let page: Page
let errors: readonly string[]

beforeAll(async () => {
  app = await openApp()
  ;({ page, errors } = await openBedside(app))
})

afterAll(async () => {
  await app.close()
})

async function goTo(place: 'Settings' | 'Bedside'): Promise<void> {
  await page.getByRole('link', { name: place, exact: true }).click()
  if (place === 'Bedside') await answered(page)
}

async function choose(quantity: string, unit: string): Promise<void> {
  await goTo('Settings')
  await page.getByLabel(quantity).selectOption(unit)
  await goTo('Bedside')
}

async function openMore(): Promise<void> {
  const fold = page.getByRole('button', { name: /^More that may be known/ })
  if ((await fold.getAttribute('aria-expanded')) === 'false') await fold.click()
}

const caseLine = async (): Promise<string> => await page.locator('.case-line').innerText()
const keptDraft = async (): Promise<string | null> =>
  await page.evaluate(() => localStorage.getItem('oxwright.draft.1'))

describe('units on the first page', () => {
  it('follow, without a change in what was typed or answered', async () => {
    await typeInto(page, 'weight', '70')
    await answered(page)
    const before = { number: await primaryNumber(page), draft: await keptDraft() }
    await choose('weight', 'lb')
    // 70 kg is 154.3 lb by definition.
    expect(await typedIn(page, 'weight')).toBe('154.3')
    expect(await caseLine()).toContain('154 lb')
    expect(await page.locator('.field', { hasText: 'typed as 70 kg' }).count()).toBe(1)
    expect(await primaryNumber(page)).toBe(before.number)
    expect(await keptDraft()).toBe(before.draft)
    await choose('weight', 'kg')
    expect(await typedIn(page, 'weight')).toBe('70')
  })

  it('are those in which is typed, and hold through a reload', async () => {
    await choose('weight', 'lb')
    await typeInto(page, 'weight', '200')
    await answered(page)
    expect(await caseLine()).toContain('200 lb')
    await page.reload()
    await answered(page)
    expect(await typedIn(page, 'weight')).toBe('200')
    await choose('weight', 'kg')
    // 200 lb is 90.718474 kg by definition.
    expect(await typedIn(page, 'weight')).toBe('90.72')
    expect(await caseLine()).toContain('91 kg')
  })

  it('stay as they are while a number is being typed', async () => {
    await page.getByRole('textbox', { name: 'weight' }).fill('')
    await page.getByRole('textbox', { name: 'weight' }).pressSequentially('81.5', { delay: 30 })
    await answered(page)
    expect(await typedIn(page, 'weight')).toBe('81.5')
  })

  it('speak in refusals too, and offer what was meant', async () => {
    await choose('pressure in blood and air', 'mmHg')
    await openMore()
    await typeInto(page, 'arterial PCO2', '5.3')
    await refused(page)
    const told = await problemAt(page, 'arterial PCO2')
    expect(told).toContain('5.3 mmHg')
    expect(told).toContain('39.8 mmHg')
    expect(await accessibilityFaults(page)).toEqual([])
    await page.getByRole('button', { name: 'Use 39.8 mmHg' }).click()
    await answered(page)
    expect(await typedIn(page, 'arterial PCO2')).toBe('39.8')
  })

  it('are said in what is assumed', async () => {
    await typeInto(page, 'arterial PCO2', '')
    await answered(page)
    const field = page.locator('.field', {
      has: page.getByRole('textbox', { name: 'arterial PCO2' }),
    })
    expect(await field.locator('.field-help').innerText()).toMatch(/assumed about \d+ mmHg/)
  })

  it('take the altitude of the site for a case that gives none, and say so', async () => {
    await goTo('Settings')
    await page.getByRole('textbox', { name: 'altitude of the site' }).fill('1180')
    await goTo('Bedside')
    await typeInto(page, 'altitude', '')
    await answered(page)
    const field = page.locator('.field', {
      has: page.getByRole('textbox', { name: 'altitude', exact: false }),
    })
    expect(await field.locator('.field-help').innerText()).toContain('1180 m from settings')
    expect(await caseLine()).toContain('1180 m from settings')
    await typeInto(page, 'altitude', '0')
    await answered(page)
    expect(await caseLine()).not.toContain('from settings')
  })

  it('has raised no error in the console', () => {
    expect(errors).toEqual([])
  })
})
