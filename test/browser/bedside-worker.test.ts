// The core computes beside the page: the main thread keeps answering, and the newest case wins. Leaves out how fast it is.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { openApp } from '../support/browser.ts'
import type { OpenedApp } from '../support/browser.ts'
import { answered, faultsInBothLooks, openBedside, typedIn, typeInto } from './bedside-steps.ts'

let app: OpenedApp

beforeAll(async () => {
  app = await openApp()
})

afterAll(async () => {
  await app.close()
})

describe('bedside page, computing', () => {
  it('takes typing and shows progress while the core computes', async () => {
    const { page, errors } = await openBedside(app)
    await page.evaluate(() => {
      const seen: number[] = []
      Object.assign(globalThis, { seenLongTasks: seen })
      new PerformanceObserver((list) => {
        seen.push(...list.getEntries().map(({ duration }) => Math.round(duration)))
      }).observe({ type: 'longtask' })
    })
    await page.getByLabel('Example case').selectOption('heart-failure')
    await page.getByRole('progressbar').waitFor()
    // The older answer stays in sight, told as such, while the page goes on taking input.
    expect(await page.locator('.plan').getAttribute('data-stale')).toBe('true')
    await typeInto(page, 'age', '77')
    expect(await page.getByRole('progressbar').count()).toBe(1)
    expect(await typedIn(page, 'age')).toBe('77')
    await answered(page)
    expect(await page.locator('.case-line').innerText()).toMatch(/^77 years/)
    const longTasks = await page.evaluate(() => Reflect.get(globalThis, 'seenLongTasks'))
    // Told, not judged: two shared cores may stretch anything.
    console.log(`main thread: long tasks over 50 ms while computing: ${JSON.stringify(longTasks)}`)
    expect(errors).toEqual([])
    await page.context().close()
  })

  it('answers the newest case when several are typed in a row', async () => {
    const { page, errors } = await openBedside(app)
    for (const age of ['70', '71', '72']) {
      await typeInto(page, 'age', age)
      await page.getByRole('progressbar').waitFor()
      await page.waitForTimeout(500)
    }
    await answered(page)
    expect(await page.locator('.case-line').innerText()).toMatch(/^72 years/)
    expect(errors).toEqual([])
    await page.context().close()
  })

  it('says when the calculation breaks off, in either look, and works it out when asked again', async () => {
    const context = await app.browser.newContext({ serviceWorkers: 'block' })
    const page = await context.newPage()
    await page.route(/core-worker/, async (route) => await route.abort())
    await page.goto(app.url)
    const failed = page.locator('.result .refused[role="alert"]')
    await failed.waitFor()
    expect(await faultsInBothLooks(page, '.result')).toEqual([])
    await page.unroute(/core-worker/)
    await failed.getByRole('button').click()
    await answered(page)
    await context.close()
  })

  it('starts afresh where the kept draft is broken', async () => {
    const { page, errors } = await openBedside(app)
    await page.evaluate(() => localStorage.setItem('oxwright.draft.1', '{"texts":'))
    await page.reload()
    await answered(page)
    expect(await page.getByLabel('Example case').inputValue()).toBe('nasal-cannula')
    expect(errors).toEqual([])
    await page.context().close()
  })

  it('asks nothing of any other machine', async () => {
    const context = await app.browser.newContext()
    const page = await context.newPage()
    const asked: string[] = []
    page.on('request', (request) => asked.push(request.url()))
    await page.goto(app.url)
    await answered(page)
    expect(asked.length).toBeGreaterThan(0)
    expect(asked.filter((url) => !url.startsWith(app.url))).toEqual([])
    await context.close()
  })
})
