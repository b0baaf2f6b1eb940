// The first page for everyone: no accessibility fault in any state, size or look; by keyboard alone; at 200 % zoom; large targets.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { accessibilityFaults, openApp } from '../support/browser.ts'
import type { OpenedApp } from '../support/browser.ts'
import {
  answered,
  faultsInBothLooks,
  focusedLabel,
  openBedside,
  overlaps,
  refused,
  sidewaysPx,
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

const SIZES = [
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
  { width: 1440, height: 900 },
] as const
const LOOKS = ['Light', 'Dark'] as const
const SHOWN = SIZES.flatMap((size) => LOOKS.map((look) => ({ ...size, look })))
/** Each size and each look, both on a tablet: what is folded away stands alike in all of them. */
const SHOWN_OPEN = SHOWN.filter(
  ({ width, look }) => width === 1024 || (width === 390) === (look === 'Dark'),
)

async function show(shown: (typeof SHOWN)[number]): Promise<void> {
  await page.setViewportSize(shown)
  await page.locator('.look').getByText(shown.look, { exact: true }).click()
  await page.locator('.picture svg').waitFor()
}

/** Opens every fold there is, the form on a narrow page too. */
async function openEverything(): Promise<void> {
  const form = page.getByRole('button', { name: 'Change the case' })
  if (await form.isVisible()) await form.click()
  const shut = page.locator('.fold-button[aria-expanded="false"]:visible')
  while ((await shut.count()) > 0) await shut.first().click()
}

describe('bedside page, accessible', () => {
  it.each(SHOWN)('has no fault at $width × $height, $look', async (shown) => {
    await show(shown)
    expect(await accessibilityFaults(page)).toEqual([])
    expect(await sidewaysPx(page)).toBe(0)
  })

  it.each(SHOWN_OPEN)(
    'has no fault with everything open at $width × $height, $look',
    async (shown) => {
      await show(shown)
      await openEverything()
      expect(await accessibilityFaults(page)).toEqual([])
      expect(await sidewaysPx(page)).toBe(0)
    },
  )

  it.each(SHOWN)(
    'shows set-up and number without scrolling at $width × $height, $look',
    async (shown) => {
      // Once for all: what was opened before is shut again.
      if (shown === SHOWN[0]) await page.reload()
      await answered(page)
      await show(shown)
      for (const part of ['.first-name', '.first-gives']) {
        const box = await page.locator(part).boundingBox()
        expect((box?.y ?? Infinity) + (box?.height ?? 0)).toBeLessThanOrEqual(shown.height)
      }
    },
  )

  it('keeps headings in order and one of the first level', async () => {
    const levels = await page
      .locator('h1, h2, h3, h4')
      .evaluateAll((all) => all.map(({ tagName }) => Number(tagName.slice(1))))
    expect(levels[0]).toBe(1)
    expect(levels.filter((level) => level === 1)).toHaveLength(1)
    levels.slice(1).forEach((level, i) => expect(level).toBeLessThanOrEqual((levels[i] ?? 0) + 1))
  })

  it('has no text below 16 pixels but in pictures', async () => {
    const small = await page.locator('body *').evaluateAll((all) =>
      all
        .filter((one) => one.closest('svg, .unseen') === null)
        .filter((one) =>
          [...one.childNodes].some((node) => node.nodeType === 3 && node.nodeValue?.trim() !== ''),
        )
        .filter((one) => Number.parseFloat(getComputedStyle(one).fontSize) < 16)
        .map((one) => `${one.className}: ${one.textContent}`),
    )
    expect(small).toEqual([])
  })

  it('has targets of at least 44 pixels', async () => {
    await page.setViewportSize({ width: 390, height: 844 })
    await openEverything()
    const small = await page
      .locator(
        'button, select, .field-box, .check-label, .ranked-label, .look-choice, input[type="range"], main a',
      )
      .evaluateAll((all) =>
        all
          .map((one) => ({ name: one.textContent ?? '', box: one.getBoundingClientRect() }))
          .filter(({ box }) => box.width > 0 && (box.height < 44 || box.width < 44))
          .map(({ name, box }) => `${name} ${box.width} × ${box.height}`),
      )
    expect(small).toEqual([])
  })

  it('neither overlaps nor needs sideways scrolling at 200 % zoom', async () => {
    // Zooming a 1024 pixel wide window to 200 % leaves 512 pixels of layout.
    await page.setViewportSize({ width: 512, height: 384 })
    expect(await sidewaysPx(page)).toBe(0)
    expect(await overlaps(page)).toEqual([])
  })

  it('neither overlaps nor needs sideways scrolling with text twice as large', async () => {
    await page.setViewportSize({ width: 1024, height: 768 })
    await page.addStyleTag({ content: 'html { font-size: 200% !important }' })
    expect(await sidewaysPx(page)).toBe(0)
    expect(await overlaps(page)).toEqual([])
  })

  it('has no fault where input is refused', async () => {
    await page.setViewportSize({ width: 1440, height: 900 })
    await page.reload()
    await answered(page)
    await typeInto(page, 'age', '1.2.3')
    await refused(page)
    for (const look of LOOKS) {
      await page.locator('.look').getByText(look, { exact: true }).click()
      expect(await accessibilityFaults(page)).toEqual([])
    }
    expect(await page.getByRole('textbox', { name: 'age' }).getAttribute('aria-invalid')).toBe(
      'true',
    )
    await typeInto(page, 'age', '67')
    await answered(page)
  })

  it('has no fault while an older answer stands grey for the next', async () => {
    // The state itself passes too soon to be judged: its mark is set on the page that is there.
    await page.locator('.plan').evaluate((plan) => plan.setAttribute('data-stale', 'true'))
    expect(await faultsInBothLooks(page, '.result')).toEqual([])
    await page.reload()
    await answered(page)
  })

  it('leads past the form to the answer', async () => {
    await page.reload()
    await answered(page)
    await page.keyboard.press('Tab')
    expect(await focusedLabel(page)).toBe('Skip to the answer')
    await page.keyboard.press('Enter')
    await page.keyboard.press('Tab')
    expect(await page.evaluate(() => document.activeElement?.closest('.result') !== null)).toBe(
      true,
    )
  })

  it('stands still for readers who prefer so', async () => {
    await page.emulateMedia({ reducedMotion: 'reduce' })
    const moving = async (): Promise<readonly string[]> =>
      await page.locator('body *').evaluateAll((all) =>
        all.flatMap((one) => {
          const { transitionDuration, animationName } = getComputedStyle(one)
          const isMoving = animationName !== 'none' || /[1-9]/.test(transitionDuration)
          return isMoving ? [`${one.tagName} ${one.getAttribute('class')}`] : []
        }),
      )
    // Once the page has heard of it.
    await expect.poll(moving, { timeout: 10_000 }).toEqual([])
  })

  it('prints the case, the answer and the ranking, but no form', async () => {
    await page.emulateMedia({ media: 'print' })
    expect(await page.locator('.case-line').isVisible()).toBe(true)
    expect(await page.locator('.primary-value').isVisible()).toBe(true)
    expect(await page.locator('.ranked-row').first().isVisible()).toBe(true)
    expect(await page.locator('.case-form').isVisible()).toBe(false)
    await page.emulateMedia({ media: 'screen' })
  })

  it('has raised no error in the console', () => {
    expect(errors).toEqual([])
  })
})
