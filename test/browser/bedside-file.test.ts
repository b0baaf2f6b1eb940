// Files, time and paper on Bedside: open and save, every refusal of a file, a plan that runs out, a lost server, print, and what the first load weighs.
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { gzipSync } from 'node:zlib'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { stringify } from 'yaml'
import { writeShelfCsv } from '../../src/files/shelf-csv/write-shelf-csv.ts'
import { DEMO_SHELF } from '../../src/kit/demo-shelf/demo-shelf.ts'
import type { Shelf } from '../../src/kit/shelf.ts'
import { readCase } from '../../src/patient/read-case.ts'
import { problemLineText } from '../../src/words/web-form-text.ts'
import { BAD_CASES, edited } from '../support/bad-cases.ts'
import { openApp } from '../support/browser.ts'
import type { OpenedApp } from '../support/browser.ts'
import { parsedExample } from '../support/examples.ts'
import { ROOT } from '../support/files.ts'
import {
  answered,
  brokenByPages,
  faultsInBothLooks,
  openBedside,
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

async function openText(name: string, text: string): Promise<void> {
  await page
    .locator('.file-open input')
    .setInputFiles({ name, mimeType: 'text/plain', buffer: Buffer.from(text) })
}

/** What stands in every field of the form. */
async function typedEverywhere(): Promise<string> {
  return await page
    .locator('.case-form :is(input, select)')
    .evaluateAll((all) =>
      JSON.stringify(
        all.map((one) =>
          one instanceof HTMLInputElement || one instanceof HTMLSelectElement ? one.value : '',
        ),
      ),
    )
}

const said = () => page.locator('.file-said')

describe('bedside, files', () => {
  it('opens a case file, YAML like JSON, and works it out', async () => {
    await openText('case.yaml', stringify(parsedExample('heart-failure')))
    await said().getByText('Case opened from case.yaml.').waitFor()
    await answered(page)
    expect(await page.locator('.case-line').innerText()).toMatch(/^78 years, 82 kg/)
    expect(await page.getByLabel('Example case').inputValue()).toBe('')
  })

  it('saves the case as a file that reads as the same case', async () => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save this case as a file' }).click(),
    ])
    expect(download.suggestedFilename()).toMatch(/^case-[A-Za-z0-9-]+\.json$/)
    const saved: unknown = JSON.parse(readFileSync(await download.path(), 'utf8'))
    const [was, is] = [readCase(parsedExample('heart-failure')), readCase(saved)]
    expect(is.ok).toBe(true)
    expect(is.ok && is.case).toEqual(was.ok && was.case)
  })

  it('lists every problem of a refused file and changes nothing, for every refusal there is', async () => {
    const before = await typedEverywhere()
    for (const bad of BAD_CASES) {
      const input = edited(bad)
      const read = readCase(input)
      if (read.ok) throw new Error(`${bad.what} is read`)
      await openText('bad.yaml', stringify(input))
      // Each is told beside the one before it: what is shown must become what this one is.
      const lines = read.problems.map(problemLineText)
      await page.waitForFunction(
        (wanted) =>
          JSON.stringify(
            [...document.querySelectorAll('.file-said li')].map((one) => one.textContent),
          ) === wanted,
        JSON.stringify(lines),
      )
    }
    expect(BAD_CASES.length).toBeGreaterThan(60)
    expect(await said().innerText()).toMatch(
      /bad\.yaml: The file was not opened; nothing here was changed\./,
    )
    expect(await typedEverywhere()).toBe(before)
    expect(await faultsInBothLooks(page, '.case')).toEqual([])
  })

  it.each([
    ['broken.json', '{"version": 1,', /^broken\.json is neither JSON nor YAML: /],
    ['twice.json', '{"version": 1, "version": 1}', /^twice\.json is neither .*unique/i],
  ])('says where %s is no JSON and no YAML, or names a field twice', async (name, text, told) => {
    await openText(name, text)
    await said().getByText(told).waitFor()
    expect(await said().locator('li').count()).toBe(0)
  })

  it('opens a dropped file too', async () => {
    const text = JSON.stringify(parsedExample('simple-mask'))
    await page.evaluate((json) => {
      const files = new DataTransfer()
      files.items.add(new File([json], 'dropped.json'))
      document
        .querySelector('.file-drop')
        ?.dispatchEvent(
          new DragEvent('drop', { dataTransfer: files, bubbles: true, cancelable: true }),
        )
    }, text)
    await said().getByText('Case opened from dropped.json.').waitFor()
    await answered(page)
    expect(await page.locator('.case-line').innerText()).toMatch(/^34 years/)
  })

  it('works with a shelf file from then on, over a reload, and goes back to the demo shelf', async () => {
    const small: Shelf = {
      ...DEMO_SHELF,
      hospital: 'Small shelf',
      interfaces: DEMO_SHELF.interfaces.filter(({ id }) =>
        ['nasal-cannula', 'simple-mask'].includes(id),
      ),
    }
    const csv = writeShelfCsv(small)
    await openText('refused.csv', csv.replace('24,nasal-cannula,', '24,nasal-canula,'))
    await said()
      .getByText(/refused\.csv: The file was not opened.* The Shelf page takes the rows/)
      .waitFor()
    expect(await said().locator('li').first().innerText()).toMatch(/^\[\d+\] kind/)
    await openText('shelf.csv', csv)
    await said()
      .getByText(/Shelf of Small shelf opened from shelf\.csv/)
      .waitFor()
    await answered(page)
    const startsOf = async (): Promise<readonly string[]> => {
      const names = await page.locator('.ranked .ranked-name').allInnerTexts()
      return [...new Set(names.map((name) => name.split(',')[0] ?? ''))].toSorted()
    }
    await page.waitForFunction(() =>
      [...document.querySelectorAll('.ranked .ranked-name')].every((one) =>
        /^(?:Nasal cannula|Simple mask),/.test(one.textContent ?? ''),
      ),
    )
    expect(await startsOf()).toEqual(['Nasal cannula', 'Simple mask'])
    await page.getByRole('link', { name: 'Shelf', exact: true }).click()
    await page.getByRole('textbox', { name: 'Simple mask, adult', exact: true }).fill('0')
    await page.getByRole('link', { name: 'Bedside', exact: true }).click()
    await answered(page)
    expect(await startsOf()).toEqual(['Nasal cannula'])
    await page.reload()
    await answered(page)
    expect(await startsOf()).toEqual(['Nasal cannula'])
    expect(await page.locator('.plan-rest').innerText()).not.toMatch(/demo shelf of an invented/i)
    await page.getByRole('button', { name: 'Back to the demo shelf' }).click()
    await answered(page)
    await page.locator('.plan-rest', { hasText: /demo shelf of an invented/i }).waitFor()
  })

  it('refuses a bad shelf and keeps the one in use', async () => {
    await openText('shelf.json', JSON.stringify({ ...DEMO_SHELF, sources: [{}] }))
    await said()
      .getByText(/shelf\.json: The file was not opened/)
      .waitFor()
    expect(await said().locator('li').count()).toBeGreaterThan(0)
    await answered(page)
    expect(await page.locator('.ranked .ranked-row').count()).toBeGreaterThan(0)
  })
})

describe('bedside, a lost server', () => {
  it('goes on working and keeps what is typed', async () => {
    await page.context().setOffline(true)
    await typeInto(page, 'age', '71')
    await answered(page)
    expect(await page.locator('.case-line').innerText()).toMatch(/^71 years/)
    await typeInto(page, 'age', '7x')
    await refused(page)
    expect(await typedIn(page, 'age')).toBe('7x')
    await page.context().setOffline(false)
    await page.reload()
    await refused(page)
    expect(await typedIn(page, 'age')).toBe('7x')
    await typeInto(page, 'age', '71')
    await answered(page)
  })

  it('has raised no error in the console', () => {
    expect(
      errors.filter((error) => !/ERR_INTERNET_DISCONNECTED|failed request/.test(error)),
    ).toEqual([])
  })
})

describe('bedside, time', () => {
  it('greys a plan past its time, says why, and works it out anew by one press', async () => {
    const context = await app.browser.newContext({
      viewport: { width: 1440, height: 900 },
      timezoneId: 'UTC',
    })
    const timed = await context.newPage()
    await timed.clock.install({ time: new Date('2026-03-01T12:00:00Z') })
    await timed.goto(app.url)
    await timed.clock.runFor(1_000)
    await answered(timed)
    expect(await timed.locator('.validity').innerText()).toMatch(
      /^Valid until 13:00: look at the patient again within 1 h/,
    )
    expect(await timed.locator('.plan').getAttribute('data-old')).toBe('false')
    await timed.clock.fastForward('01:00:30')
    await timed.locator('.plan[data-old="true"]').waitFor()
    const told = await timed.getByRole('alert').innerText()
    expect(told).toMatch(/Out of date: not valid any more/)
    expect(told).toMatch(/typed or confirmed at 12:00; its plan was valid until 13:00/)
    expect(await faultsInBothLooks(timed, '.result')).toEqual([])
    await timed.emulateMedia({ media: 'print' })
    expect(await timed.getByRole('alert').isVisible()).toBe(true)
    await timed.emulateMedia({ media: 'screen' })
    // A reload makes an old reading no newer.
    await timed.reload()
    await timed.clock.runFor(1_000)
    await timed.locator('.plan[data-old="true"]').waitFor()
    await timed.getByRole('button', { name: 'Work it out anew' }).click()
    await timed.clock.runFor(1_000)
    await timed.locator('.result[aria-busy="false"] .plan[data-old="false"]').waitFor()
    expect(await timed.locator('.validity').innerText()).toMatch(/^Valid until 14:0\d/)
    await context.close()
  })
})

describe('bedside, on paper', () => {
  it('holds answer, set-up, cautions, model version, date and until when it is valid, and no controls', async () => {
    await page.emulateMedia({ media: 'print' })
    for (const part of [
      '.case-line',
      '.first-name',
      '.primary-value',
      '.answer-name',
      '.validity',
      '.paper-only',
    ])
      expect(await page.locator(part).first().isVisible(), part).toBe(true)
    expect(await page.locator('.paper-only').innerText()).toMatch(
      /Worked out \d{4}-\d\d-\d\d \d\d:\d\d, model \d+\.\d+\.\d+/,
    )
    expect(await page.locator('.plan-rest').innerText()).toMatch(/Not a monitor and not an alarm/)
    for (const part of ['.case-form', '.dials', '.file-drop', '.buttons'])
      expect(await page.locator(part).first().isVisible(), part).toBe(false)
    const pdf = await page.pdf({ format: 'A4' })
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-')
    await page.emulateMedia({ media: 'screen' })
  })

  it('breaks over pages without laying anything over anything', async () => {
    expect(await brokenByPages(page)).toEqual([])
  })
})

const KB = 1000
/** What comes beside or after the answer and holds nothing up: examples to choose from, files, published
 *  measurements, water at the airway and its worker, the ways to the sheet and to the chain and what they look up, the keeper of the page. */
const LATER =
  /\/(?:examples|case-file|write-case|save-file|measured-beside|verdict|humidity-|chain-worker|chain-address|use-chain-answer|doors|sheet-|web-sheet-text|build-set-ups|feeds|gas-mixing|in-sight|update-bar|set-up-settings)/

describe('bedside, first load', () => {
  it('weighs at most 250 kB of compressed script: all that is loaded until the answer stands, page and worker', async () => {
    // What the service worker stores for later, with nobody waiting, is no part of it.
    const context = await app.browser.newContext({ serviceWorkers: 'block' })
    const fresh = await context.newPage()
    const loaded = new Set<string>()
    // The worker asks for its own script by itself, so the whole context is watched.
    context.on('request', (request) => loaded.add(new URL(request.url()).pathname))
    await fresh.goto(app.url)
    await answered(fresh)
    const scripts = [...loaded].filter((path) => path.endsWith('.js') && !LATER.test(path))
    expect(scripts.filter((path) => path.includes('core-worker'))).toHaveLength(1)
    const web = join(ROOT, 'dist', 'web')
    const bytes = scripts.map(
      (path) => gzipSync(readFileSync(join(web, path)), { level: 9 }).length,
    )
    const total = bytes.reduce((sum, one) => sum + one, 0)
    console.log(`first load of Bedside: ${Math.round(total / KB)} kB of compressed script`)
    expect(total).toBeLessThanOrEqual(250 * KB)
    await context.close()
  })
})
