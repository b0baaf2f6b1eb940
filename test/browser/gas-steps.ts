// The steps a person takes on the Gas page, for the browser tests. Leaves out what is expected of them.
import type { BrowserContextOptions, Locator, Page } from 'playwright-core'
import type { OpenedApp } from '../support/browser.ts'
import { watchForErrors } from '../support/browser.ts'

const ANSWER_MS = 20_000

/** The wall clock of every test: a Wednesday at ten to two. */
export const TEN_TO_TWO = new Date(2026, 10, 25, 13, 50, 0)

/** A page of its own at an address of Gas, its clock standing still, watched from the start. */
export async function openGas(
  app: OpenedApp,
  path: string,
  options: BrowserContextOptions = {},
): Promise<{ readonly page: Page; readonly errors: readonly string[] }> {
  const context = await app.browser.newContext({
    viewport: { width: 1440, height: 900 },
    ...options,
  })
  const page = await context.newPage()
  page.setDefaultTimeout(ANSWER_MS)
  const errors = watchForErrors(page)
  await page.clock.setFixedTime(TEN_TO_TWO)
  await page.goto(app.url.replace(/\/$/, '') + path)
  await page.getByRole('heading', { level: 1, name: 'Gas' }).waitFor()
  return { page, errors }
}

export function fieldIn(scope: Page | Locator, label: string | RegExp): Locator {
  return scope.getByRole('textbox', { name: label })
}

/** The clock of the page moves on by so many minutes, as while the device slept, and the page is taken up again. */
export async function letMinutesPass(page: Page, minutes: number): Promise<void> {
  await page.clock.setFixedTime(new Date(TEN_TO_TWO.getTime() + minutes * 60_000))
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')))
}
