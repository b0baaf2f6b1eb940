// The page without its server: after one load it opens, in every place, and computes; a newer version is offered, never forced.
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Browser, Page } from 'playwright-core'
import { serve } from '../../scripts/lib/static-server.mjs'
import { writeFragment } from '../../src/sheet/fragment.ts'
import { launchChromium } from '../support/browser.ts'
import { ROOT } from '../support/files.ts'
import { requestFor } from '../support/printed-sheets.ts'
import { answered, faultsInBothLooks, pickExample, typedIn, typeInto } from './bedside-steps.ts'

const BUILT = join(ROOT, 'dist', 'web')
const SLOW_MS = 60_000
let browser: Browser

beforeAll(async () => {
  browser = await launchChromium()
})

afterAll(async () => {
  await browser.close()
})

/** Opened once and kept: the service worker controls the page. */
async function openKept(url: string): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } })
  const page = await context.newPage()
  page.setDefaultTimeout(SLOW_MS)
  await page.goto(url)
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null)
  return page
}

async function end(server: Awaited<ReturnType<typeof serve>>['server']): Promise<void> {
  server.closeAllConnections()
  await new Promise((resolve) => server.close(resolve))
}

describe('page without its server', () => {
  let page: Page
  let url: string

  beforeAll(async () => {
    const served = await serve({ folder: BUILT, host: '127.0.0.1', port: 0 })
    ;({ url } = served)
    page = await openKept(url)
    await end(served.server)
  })

  it('really has none', async () => {
    await expect(fetch(url)).rejects.toThrow('fetch failed')
  })

  it('enters a place never entered before', async () => {
    await page.getByRole('link', { name: 'Settings', exact: true }).click()
    const heading = page.getByRole('heading', { name: 'Settings', level: 1 })
    await heading.waitFor()
    expect(await heading.isVisible()).toBe(true)
  })

  it.each([
    ['evidence', 'main h1'],
    ['settings', 'main h1'],
    ['gas', 'main h1'],
    ['shelf', '.shelf article'],
    // Solved by a worker of its own.
    ['chain', '.chain .picture svg'],
  ])('opens at /%s', async (place, shown) => {
    await page.goto(`${url}${place}`)
    await page.locator(shown).first().waitFor()
    expect(await page.locator('.header .place[aria-current="page"]').count()).toBe(1)
  })

  it('opens the sheet of a scanned address in a window that was never open', async () => {
    const request = requestFor('simple-mask', 'simple-mask/adult@wall-15#6')
    const scanned = await page.context().newPage()
    await scanned.goto(`${url}sheet#${writeFragment(request)}`)
    const paper = scanned.locator('article.sheet-paper')
    await paper.waitFor({ timeout: SLOW_MS })
    expect(await paper.innerText()).toContain('6 L/min')
    await scanned.close()
  })

  it('opens anew and computes the plan of another case', async () => {
    await page.goto(url)
    await page.reload()
    await answered(page)
    const before = await page.locator('.case-line').innerText()
    await pickExample(page, 'heart-failure')
    await page.waitForFunction(
      (text) => document.querySelector('.case-line')?.textContent !== text,
      before,
    )
    await answered(page)
    expect(Number(await page.locator('.primary-value').innerText())).toBeGreaterThan(0.2)
  })
})

describe('newer version', () => {
  it('is offered, waits while one types, and is taken with all that was typed', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'oxwright-build-'))
    cpSync(BUILT, folder, { recursive: true })
    const { server, url } = await serve({ folder, host: '127.0.0.1', port: 0 })
    try {
      const page = await openKept(url)
      await answered(page)
      expect(await page.getByRole('button', { name: 'Take it now' }).count()).toBe(0)
      buildAnew(folder)
      await page.evaluate(async () => {
        await (await navigator.serviceWorker.getRegistration())?.update()
      })
      const take = page.getByRole('button', { name: 'Take it now' })
      await take.waitFor()
      expect(await faultsInBothLooks(page, '.update')).toEqual([])
      await typeInto(page, 'age', '71')
      await answered(page)
      expect(await page.locator('meta[name="build"]').count()).toBe(0)
      await take.click()
      await page.waitForFunction(() => document.querySelector('meta[name="build"]') !== null)
      await answered(page)
      expect(await typedIn(page, 'age')).toBe('71')
      expect(await take.count()).toBe(0)
      await page.context().close()
    } finally {
      await end(server)
      rmSync(folder, { recursive: true })
    }
  })
})

/** Another build of the page: its document differs, and so does what the service worker keeps of it. */
function buildAnew(folder: string): void {
  const document = join(folder, 'index.html')
  const worker = join(folder, 'sw.js')
  const page = readFileSync(document, 'utf8')
  writeFileSync(document, page.replace('</head>', '<meta name="build" content="newer"></head>'))
  const script = readFileSync(worker, 'utf8')
  const changed = script.replace(/(url:"index\.html",revision:")\w+/, '$1newer')
  expect(changed).not.toBe(script)
  writeFileSync(worker, changed)
}
