// The page in German and in a language nobody speaks, a third longer than English: no text has gone past say(), nothing lies over anything, nothing is cut, nothing typed is lost by choosing. Leaves out the command line.
import type { BrowserContext, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { DEMO_SHELF } from '../../src/kit/demo-shelf/demo-shelf.ts'
import { ROW_LISTS, rowsOf } from '../../src/kit/edit-shelf.ts'
import type { AnyRow } from '../../src/kit/edit-shelf.ts'
import { writeFragment } from '../../src/sheet/fragment.ts'
import { requestFor } from '../support/printed-sheets.ts'
import type { OpenedApp } from '../support/browser.ts'
import { accessibilityFaults, openApp, watchForErrors } from '../support/browser.ts'
import type { PageTexts } from '../support/page-texts.ts'
import { pageTexts, unfold } from '../support/page-texts.ts'
import { pseudoCatalogue, unsaidIn } from '../support/pseudo.ts'
import { answered, openBedside } from './bedside-steps.ts'

let app: OpenedApp
const WAIT_MS = 60_000
/** Where room is scarce: a desktop has more of it than either. */
const SIZES = [
  { width: 390, height: 844 },
  { width: 1024, height: 768 },
]
/** German runs less far than the language of the other test, so that the narrowest size judges it. */
const NARROWEST = SIZES.slice(0, 1)
const CATALOGUE_FILE = /\/assets\/de-[^/]*\.js$/

beforeAll(async () => {
  app = await openApp()
})
afterAll(async () => {
  await app.close()
})

/** Set to German; with a catalogue of our own in place of the German one where one is given. */
async function germanContext(
  catalogue?: Readonly<Record<string, string>>,
): Promise<BrowserContext> {
  const context = await app.browser.newContext({ serviceWorkers: 'block' })
  await context.addInitScript(() => {
    localStorage.setItem('oxwright.settings.1', JSON.stringify({ language: 'de' }))
  })
  if (catalogue !== undefined) {
    const body = `export default ${JSON.stringify(catalogue)}`
    await context.route(CATALOGUE_FILE, async (route) => {
      await route.fulfill({ contentType: 'text/javascript', body })
    })
  }
  return context
}

async function settled(page: Page): Promise<void> {
  await page.locator('main').first().waitFor()
  await page.waitForFunction(
    () =>
      document.querySelector('[aria-busy="true"], .place-loading') === null &&
      (location.pathname !== '/' || document.querySelector('.plan svg text') !== null) &&
      (location.pathname !== '/sheet' || document.querySelector('article.sheet-paper') !== null),
  )
}

async function open(page: Page, path: string): Promise<void> {
  page.setDefaultTimeout(WAIT_MS)
  await page.goto(app.url + path.slice(1))
  await settled(page)
  await unfold(page)
}

/** As a link of the page does: without loading it anew. */
async function goTo(page: Page, path: string): Promise<void> {
  await page.evaluate((to) => {
    history.pushState(null, '', to)
  }, path)
  await settled(page)
}

/** With two lines of parts, a humidifier and the steps of both. */
const SHEET = `/sheet#${writeFragment(requestFor('entrainment-mask', 'entrainment-mask/adult@wall-15#4:0.28', 'collar'))}`

type Found = PageTexts & { readonly where: string; readonly errors: readonly string[] }

/** What stands on every place and part that links of the page lead to, beginning at the first, at each size of window. */
async function everyPlace(context: BrowserContext, sizes: typeof SIZES): Promise<readonly Found[]> {
  const found: Found[] = []
  const known = new Set(['/', '/sheet'])
  // No link leads to a sheet: its button makes the address.
  const ahead = ['/', SHEET]
  const page = await context.newPage()
  const errors = watchForErrors(page)
  await open(page, '/')
  for (let path = ahead.shift(); path !== undefined; path = ahead.shift()) {
    await goTo(page, path)
    for (const size of sizes) {
      await page.setViewportSize(size)
      await settled(page)
      await unfold(page)
      const where = `${pathnameOf(path)} at ${size.width} × ${size.height}`
      found.push({ where, errors: [...errors], ...(await pageTexts(page)) })
    }
    const links = await page
      .locator('a[href^="/"]')
      .evaluateAll((anchors) => anchors.map((anchor) => anchor.getAttribute('href') ?? ''))
    for (const link of links) {
      if (known.has(pathnameOf(link))) continue
      known.add(pathnameOf(link))
      ahead.push(link)
    }
  }
  await context.close()
  return found
}

function pathnameOf(link: string): string {
  return new URL(link, 'http://a').pathname
}

/** Names that people typed for what lies on their shelf stand as typed; the longest first, as some hold others. */
const TYPED_BY_THE_WARD = ROW_LISTS.flatMap((list) => rowsOf(DEMO_SHELF, list))
  .flatMap((row) => [row.label, row.wardMarking ?? '', ...sourceTexts(row)])
  .filter((text) => text !== '')
  .toSorted((a, b) => b.length - a.length)
  .map((text) => new RegExp(text.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`), 'g'))

/** Names of modes, and how a flush is known, as written in the row. */
function sourceTexts(row: AnyRow): readonly string[] {
  const modes = 'modes' in row ? (row.modes ?? []).map(({ label }) => label) : []
  const flush = 'meter' in row ? (row.meter.flush?.source ?? '') : ''
  return [...modes, flush]
}

describe('in a language nobody speaks', () => {
  it('shows no text that was not said, lays none over another and cuts none', async () => {
    const places = await everyPlace(await germanContext(pseudoCatalogue()), SIZES)
    expect(places.length).toBeGreaterThanOrEqual(3 * SIZES.length)
    expect(places.map(({ where }) => where).join()).toContain('/sheet at 390')
    for (const { where, texts, overlaps, cut, errors } of places) {
      expect(texts.filter((text) => /[åéîøûñŕšţ]/.test(text)).length, where).toBeGreaterThan(15)
      const unsaid = texts.flatMap((text) => unsaidIn(text, TYPED_BY_THE_WARD))
      expect({ where, unsaid, overlaps, cut, errors }).toEqual({
        where,
        unsaid: [],
        overlaps: [],
        cut: [],
        errors: [],
      })
    }
  })
})

describe('in German', () => {
  it('lays no text over another and cuts none', async () => {
    const places = await everyPlace(await germanContext(), NARROWEST)
    expect(places[0]?.texts).toContain('Gereihte Aufbauten')
    for (const { where, overlaps, cut, errors } of places) {
      expect({ where, overlaps, cut, errors }).toEqual({ where, overlaps: [], cut: [], errors: [] })
    }
  })
})

describe('the judge of unsaid text', () => {
  it('finds plain English and lets units, keys of sources and names pass', () => {
    expect(unsaidIn('[Ĝøåļ øñé]: below 88 %')).toEqual(['below'])
    expect(unsaidIn('15 L/min, 9.2 kPa, ODriscoll2017, Heron 4, H-1042, Oxwright')).toEqual([])
  })
})

describe('choosing a language', () => {
  it('speaks as the device prefers until one is set', async () => {
    const { page } = await openBedside(app, { locale: 'de-AT' })
    expect(await page.locator('html').getAttribute('lang')).toBe('de')
    expect(await page.title()).toContain('vom Patienten und Ziel')
    expect(await accessibilityFaults(page)).toEqual([])
    await page.context().close()
  })

  it('opens the page anew, keeps what was typed, and writes numbers with a comma', async () => {
    const { page, errors } = await openBedside(app)
    await page.getByRole('textbox', { name: /^weight/i }).fill('71.5')
    await answered(page)
    await page.goto(`${app.url}settings`)
    await page.getByRole('radio', { name: 'Deutsch' }).check({ force: true })
    await page.waitForFunction(() => document.documentElement.lang === 'de')
    await page.getByRole('heading', { name: 'Vorgaben' }).waitFor()
    const menuRows = async (): Promise<number> =>
      await page
        .locator('.header .place')
        .evaluateAll((all) => new Set(all.map((one) => one.getBoundingClientRect().top)).size)
    await page.setViewportSize({ width: 390, height: 844 })
    expect(await menuRows(), 'menu on a phone').toBe(1)
    await page.setViewportSize({ width: 1440, height: 900 })
    await page.goto(app.url)
    await answered(page)
    expect(await page.getByRole('textbox', { name: /^Gewicht/ }).inputValue()).toBe('71.5')
    expect(await page.locator('.primary-value').innerText()).toMatch(/^(?:0,\d+|1)$/)
    await page.goto(`${app.url}settings`)
    await page.getByRole('radio', { name: 'English' }).check({ force: true })
    await page.waitForFunction(() => document.documentElement.lang === 'en-GB')
    await page.setViewportSize({ width: 390, height: 844 })
    expect(await menuRows(), 'menu on a phone').toBe(1)
    expect(errors).toEqual([])
    await page.context().close()
  })
})
