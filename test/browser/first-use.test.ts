// Someone who has read nothing but README.md reaches a ranked answer for their own patient: its steps, read from the page itself, one by one.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { openApp, watchForErrors } from '../support/browser.ts'
import type { OpenedApp } from '../support/browser.ts'
import { ROOT } from '../support/files.ts'
import { answered, firstName, refused, typeInto } from './bedside-steps.ts'

let app: OpenedApp

beforeAll(async () => {
  app = await openApp()
})

afterAll(async () => {
  await app.close()
})

/** The numbered steps under the heading. */
function stepsInReadme(): readonly string[] {
  const page = readFileSync(join(ROOT, 'README.md'), 'utf8')
  const part = page.split('## Your own patient, in six steps')[1]?.split('\n## ')[0] ?? ''
  return [...part.matchAll(/^\d\. (.+)$/gm)].map(([, step = '']) => step)
}

/** Every name in italics must be on the page; what is done at each step. */
const DONE: readonly ((page: Page) => Promise<void>)[] = [
  async () => await Promise.resolve(),
  async (page) => {
    await page.getByLabel('Example case').selectOption({ label: 'A case of your own, empty' })
    await refused(page)
  },
  async (page) => {
    await typeInto(page, 'age', '71')
    await page.getByLabel('risk of carbon-dioxide retention').selectOption({ index: 1 })
    await page.getByLabel('breathing state').selectOption({ label: 'pneumonia' })
  },
  async (page) => {
    await page.getByLabel('what is on', { exact: true }).selectOption({ label: 'oxygen set-up' })
    await page.getByLabel('interface on now').selectOption({ label: 'nasal cannula' })
    await page.getByLabel('source on now').selectOption({ label: 'wall flowmeter' })
    await typeInto(page, 'flow on now', '2')
    await typeInto(page, 'saturation read', '90')
  },
  async (page) => {
    await typeInto(page, 'from', '94')
    await typeInto(page, 'to', '98')
  },
  async (page) => await answered(page),
]

/** Page time of a first use, generous: two minutes, the machine's own slowness left aside. */
const PAGE_TIME_MS = 120_000

describe('a first use by README.md alone', () => {
  it('reaches a ranked answer for an own patient by its six steps', async () => {
    const context = await app.browser.newContext({ viewport: { width: 1440, height: 900 } })
    const page = await context.newPage()
    const errors = watchForErrors(page)
    const steps = stepsInReadme()
    expect(steps).toHaveLength(DONE.length)
    await page.goto(app.url)
    await page.locator('.case-form').waitFor()
    const startedAt = await page.evaluate(() => performance.now())
    for (const [i, done] of DONE.entries()) {
      await done(page)
      const shown = (await page.locator('body').innerText()).toLowerCase()
      for (const [, name = ''] of (steps[i] ?? '').replace(/\(.*\)/, '').matchAll(/\*([^*]+)\*/g))
        expect(shown, `step ${i + 1}: ${name}`).toContain(name.toLowerCase())
    }
    await page.locator('.ranked .ranked-row').first().waitFor()
    const spentMs = (await page.evaluate(() => performance.now())) - startedAt
    console.log(`first use: ${DONE.length} steps, ${Math.round(spentMs / 1000)} s of page time`)
    expect(await page.locator('.case-line').innerText()).toMatch(/^71 years, pneumonia/)
    expect(await firstName(page)).not.toBe('')
    expect(await page.locator('.answer .eyebrow').innerText()).toMatch(/^On now/)
    expect(spentMs).toBeLessThan(PAGE_TIME_MS)
    expect(errors).toEqual([])
    await context.close()
  })
})
