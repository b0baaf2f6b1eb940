// Two-metre mode from the first page: one tap in and out, the answer very large, everything else folded away and not lost.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { accessibilityFaults, openApp } from '../support/browser.ts'
import type { OpenedApp } from '../support/browser.ts'
import { answered, openBedside, sidewaysPx } from './bedside-steps.ts'

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

const SIZES = [
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
  { width: 1440, height: 900 },
] as const
const enter = button('Two-metre mode')
const leave = button('Leave two-metre mode')

function button(name: string) {
  return () => page.getByRole('button', { name, exact: true })
}

describe('two-metre mode', () => {
  it('shows the answer alone, at night dark, after one tap', async () => {
    const form = page.getByRole('textbox', { name: 'weight' })
    expect(await form.isVisible()).toBe(true)
    await enter().click()
    await leave().waitFor()
    expect(await form.isVisible()).toBe(false)
    expect(await page.locator('.header').isVisible()).toBe(false)
    expect(Number(await page.locator('.far-value').innerText())).toBeGreaterThan(0.2)
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).colorScheme)).toBe(
      'dark',
    )
  })

  it.each(SIZES)('is large, whole and accessible at $width × $height', async (size) => {
    await page.setViewportSize(size)
    // Digits of 2 cm on a usual screen of 38 pixels per centimetre, told apart from more than two metres.
    const box = await page.locator('.far-value').boundingBox()
    expect(box?.height ?? 0).toBeGreaterThan(100)
    // On one line.
    expect(box?.width ?? 0).toBeGreaterThan(box?.height ?? 0)
    expect(await sidewaysPx(page)).toBe(0)
    expect(await accessibilityFaults(page)).toEqual([])
    const box2 = await leave().boundingBox()
    expect(box2?.height ?? 0).toBeGreaterThanOrEqual(44)
  })

  it('holds through a reload and is left by one tap or a key', async () => {
    await page.setViewportSize({ width: 1440, height: 900 })
    await page.reload()
    await leave().waitFor()
    await page.keyboard.press('Escape')
    await enter().waitFor()
    await enter().click()
    await leave().click()
    await answered(page)
    expect(await page.getByRole('textbox', { name: 'weight' }).isVisible()).toBe(true)
    expect(await page.locator('.header').isVisible()).toBe(true)
    expect(errors).toEqual([])
  })
})
