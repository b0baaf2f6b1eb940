// The steps a person takes on the first page, for the browser tests. Leaves out what is expected of them.
import type { BrowserContextOptions, Locator, Page } from 'playwright-core'
import type { OpenedApp } from '../support/browser.ts'
import { accessibilityFaults, watchForErrors } from '../support/browser.ts'

/** A page of its own, watched from the start, with an answer on it. */
export async function openBedside(
  app: OpenedApp,
  options: BrowserContextOptions = {},
): Promise<{ readonly page: Page; readonly errors: readonly string[] }> {
  const context = await app.browser.newContext({
    viewport: { width: 1440, height: 900 },
    // Keeping the page on the device is tried in offline.test.ts; elsewhere it would only cost time.
    serviceWorkers: 'block',
    ...options,
  })
  const page = await context.newPage()
  page.setDefaultTimeout(ANSWER_MS)
  const errors = watchForErrors(page)
  await page.goto(app.url)
  await answered(page)
  return { page, errors }
}

/** Two shared cores may be slow; no test is judged by its speed. */
const ANSWER_MS = 60_000

/** The answer to what stands in the form is there. */
export async function answered(page: Page): Promise<void> {
  await page.locator('.result[aria-busy="false"] .plan').waitFor()
}

/** In place of an answer stands what is to be mended. */
export async function refused(page: Page): Promise<void> {
  await page
    .locator('.result[aria-busy="false"]')
    .getByRole('heading', { name: 'Not worked out' })
    .waitFor()
}

export async function pickExample(page: Page, id: string): Promise<void> {
  await page.getByLabel('Example case').selectOption(id)
  await answered(page)
}

/** Types over what stands in a number field. */
export async function typeInto(page: Page, label: string, text: string): Promise<void> {
  await page.getByRole('textbox', { name: label }).fill(text)
}

export async function typedIn(page: Page, label: string): Promise<string> {
  return await page.getByRole('textbox', { name: label }).inputValue()
}

/** The big number of the set-up in sight. */
export async function primaryNumber(page: Page): Promise<number> {
  return Number(await page.locator('.primary-value').innerText())
}

/** The set-up in sight. */
export async function shownName(page: Page): Promise<string> {
  return await page.locator('.answer-name').innerText()
}

/** The set-up that stands first. */
export async function firstName(page: Page): Promise<string> {
  return await page.locator('.first-name').innerText()
}

/** The fraction that the first gives. */
export async function firstNumber(page: Page): Promise<number> {
  const said = /[01](?:\.\d+)?/.exec(await page.locator('.first-gives').innerText())
  return Number(said?.[0])
}

/** Puts a ranked set-up in sight, counted from 1. */
export async function chooseRow(page: Page, nth: number): Promise<void> {
  await page
    .locator('.ranked .ranked-row')
    .nth(nth - 1)
    .getByRole('radio')
    .check()
}

/** Label of the field that has the focus, empty where none has. */
export async function focusedLabel(page: Page): Promise<string> {
  return await page.evaluate(() => {
    const { activeElement } = document
    const isControl =
      activeElement instanceof HTMLInputElement || activeElement instanceof HTMLSelectElement
    const label = isControl ? activeElement.labels?.[0] : undefined
    return label?.textContent ?? activeElement?.textContent ?? ''
  })
}

/** The problem told at a field, empty where there is none. */
export async function problemAt(page: Page, label: string): Promise<string> {
  const field = page.locator('.field').filter({ has: page.getByRole('textbox', { name: label }) })
  const told = field.locator('.field-problem')
  return (await told.count()) === 0 ? '' : await told.innerText()
}

/** Whether anything sticks out to the side. */
export async function sidewaysPx(page: Page): Promise<number> {
  return await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  )
}

/** The part of the answer under this heading. */
export function sectionOf(page: Page, heading: string): Locator {
  return page.locator('.section').filter({ has: page.getByRole('heading', { name: heading }) })
}

/** Tabs until the control with this label has the focus; a page on which it cannot be reached fails. */
export async function tabTo(page: Page, label: string | RegExp, kind = '*'): Promise<void> {
  for (let presses = 0; presses < 250; presses += 1) {
    const isKind = await page.evaluate((of) => document.activeElement?.matches(of) === true, kind)
    if (isKind) {
      const at = await focusedLabel(page)
      if (typeof label === 'string' ? at.startsWith(label) : label.test(at)) return
    }
    await page.keyboard.press('Tab')
  }
  throw new Error(`${String(label)} not reached by Tab`)
}

/** Accessibility faults of a part in light and in dark. */
export async function faultsInBothLooks(page: Page, part?: string): Promise<readonly string[]> {
  const faults: string[] = []
  for (const look of ['Light', 'Dark']) {
    await page.locator('.header .look').getByText(look, { exact: true }).click()
    const found = await accessibilityFaults(page, part)
    faults.push(...found.map((fault) => `${look}: ${fault}`))
  }
  return faults
}

/** Pairs of texts that lie over each other. */
export async function overlaps(page: Page): Promise<readonly string[]> {
  return await page.locator('p, dt, dd, label, h2, h3, button, .field-help').evaluateAll((all) => {
    const shown = all
      .filter(
        (one) => one.closest('svg, .unseen, .skip') === null && one.getClientRects().length > 0,
      )
      .filter(
        (one) => one.textContent?.trim() !== '' && getComputedStyle(one).visibility === 'visible',
      )
      .map((one) => ({ one, box: one.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && box.height > 0)
    const found: string[] = []
    shown.forEach((a, i) => {
      for (const b of shown.slice(i + 1)) {
        if (a.one.contains(b.one) || b.one.contains(a.one)) continue
        const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left)
        const down = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top)
        if (across > 2 && down > 2) found.push(`${a.one.textContent} / ${b.one.textContent}`)
      }
    })
    return found
  })
}

/** A4 less its margins, at the 96 pixels an inch that browsers print by. */
const PAPER = { width: 703, height: 1031 } as const

/** Grids and rows of boxes that a page break may go through, as they would be printed: browsers then lay their parts
 *  over each other. What stands on one line, or may not be broken and is no longer than a page, is no danger. */
export async function brokenByPages(page: Page): Promise<readonly string[]> {
  await page.setViewportSize(PAPER)
  await page.emulateMedia({ media: 'print' })
  const found = await page.locator('main, main *').evaluateAll((all, pagePx) => {
    const LINE_PX = 48
    const mayBreak = (one: Element): boolean => {
      for (let at: Element | null = one; at !== null; at = at.parentElement) {
        const { breakInside } = getComputedStyle(at)
        if (breakInside === 'avoid') return at.getBoundingClientRect().height > pagePx
      }
      return true
    }
    return all
      .filter((one) => /^(?:inline-)?(?:grid|flex)$/.test(getComputedStyle(one).display))
      .filter((one) => one.getBoundingClientRect().height > LINE_PX && mayBreak(one))
      .map((one) => `${one.tagName} ${one.className}`)
  }, PAPER.height)
  await page.emulateMedia({ media: null })
  return found
}
