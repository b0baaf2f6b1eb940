// The import part of the Shelf page as people use it: nothing changes until taken, refused rows say why and can be had back, an import can be undone. Leaves out the rules for rows (test/shelf-csv.test.ts).
import { readFileSync } from 'node:fs'
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest'
import type { Download, Page } from 'playwright-core'
import { writeShelfCsv } from '../../src/files/shelf-csv/write-shelf-csv.ts'
import { DEMO_SHELF } from '../../src/kit/demo-shelf/demo-shelf.ts'
import { accessibilityFaults, openApp, watchForErrors } from '../support/browser.ts'
import type { OpenedApp } from '../support/browser.ts'
import { sidewaysPx } from './bedside-steps.ts'

let app: OpenedApp
let page: Page
let errors: readonly string[]

beforeAll(async () => {
  app = await openApp()
})

afterAll(async () => {
  await app.close()
})

beforeEach(async () => {
  const context = await app.browser.newContext({
    viewport: { width: 1024, height: 768 },
    acceptDownloads: true,
  })
  page = await context.newPage()
  errors = watchForErrors(page)
  await page.goto(`${app.url}shelf`)
  await page.getByRole('heading', { name: 'Out to a file and in from one' }).waitFor()
  return async () => {
    await context.close()
    if (errors.length > 0) throw new Error(errors.join('; '))
  }
})

async function choose(name: string, text: string): Promise<void> {
  const file = { name, mimeType: 'text/csv', buffer: Buffer.from(text) }
  await page.getByLabel('Open a shelf file').setInputFiles(file)
}

async function savedBy(button: string): Promise<{ readonly name: string; readonly text: string }> {
  const [download]: readonly [Download, void] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button, exact: true }).click(),
  ])
  return {
    name: download.suggestedFilename(),
    text: readFileSync(await download.path(), 'utf8'),
  }
}

const kept = async (): Promise<string | null> =>
  await page.evaluate(() => localStorage.getItem('oxwright.shelf.1'))
const report = () => page.getByRole('region', { name: /refused,/ })
const rowText = (text: string) => page.locator('.import-rows').getByText(text)

/** The rest of the page, and this part before a file is chosen, are judged in shelf.test.ts. */
const PART = '.shelf-import'
const COUNTED = 'list;id;count\ntubes;hose-22;3\nhumidifiers;bubble;4\nfittings;nipple;many\n'

describe('the import part of the shelf', () => {
  it('saves the shelf as a spreadsheet and as JSON', async () => {
    const csv = await savedBy('Save as a spreadsheet (CSV)')
    expect(csv).toEqual({ name: 'shelf.csv', text: writeShelfCsv(DEMO_SHELF) })
    const json = await savedBy('Save as JSON')
    expect(json.name).toBe('shelf.json')
    expect(JSON.parse(json.text)).toEqual(DEMO_SHELF)
  })

  it('shows refused rows first and changes nothing until told to, then undoes it', async () => {
    await choose('counted.csv', COUNTED)
    await page
      .getByRole('heading', { name: /counted.csv: 1 refused, 0 added, 2 changed/ })
      .waitFor()
    expect(await page.evaluate(() => document.activeElement?.textContent)).toContain('1 refused')
    await rowText('count “many” is not a number (allowed: 0–100000)').waitFor()
    expect(await kept()).toBeNull()
    await report().getByText('changed (2)').click()
    await rowText('count: 24 → 3').waitFor()
    await page.getByRole('button', { name: 'Take 2 rows' }).click()
    await page.getByText('Taken from counted.csv: 0 added, 2 changed. 1 row was refused.').waitFor()
    expect(JSON.parse((await kept()) ?? '')).toEqual({
      ...DEMO_SHELF,
      humidifiers: DEMO_SHELF.humidifiers.map((row) =>
        row.id === 'bubble' ? { ...row, count: 4 } : row,
      ),
      tubes: DEMO_SHELF.tubes?.map((row) => (row.id === 'hose-22' ? { ...row, count: 3 } : row)),
    })
    await page.getByRole('button', { name: 'Undo: back to the shelf' }).click()
    await page.getByText('Undone.').waitFor()
    expect(await kept()).toBeNull()
  })

  it('gives refused rows back with the reason; mended, they are taken', async () => {
    await choose('counted.csv', COUNTED)
    const refused = await savedBy('Save the refused rows')
    expect(refused.name).toBe('refused.csv')
    expect(refused.text).toMatch(
      /^\u{FEFF}reason,list,id,count\r\n.*many.*fittings,nipple,many\r\n$/su,
    )
    await choose('mended.csv', refused.text.replace(',many\r\n', ',9\r\n'))
    await page.getByRole('button', { name: 'Take 1 row' }).waitFor()
  })

  it('leaves the shelf alone when the file is put aside', async () => {
    await choose('counted.csv', COUNTED)
    await page.getByRole('button', { name: 'Put the file aside' }).click()
    await page.getByText('the shelf is unchanged').waitFor()
    expect(await kept()).toBeNull()
    expect(await page.getByRole('button', { name: /^Undo/ }).count()).toBe(0)
  })

  it('offers the place of the invented shelf to a file of another hospital', async () => {
    await choose('lapwing.csv', readFileSync('examples/shelves/lapwing.csv', 'utf8'))
    await page.getByRole('heading', { name: /0 refused, 11 added, 0 changed/ }).waitFor()
    expect(await page.getByRole('radio', { name: 'in its place' }).isChecked()).toBe(true)
    await page.getByRole('button', { name: 'Take 11 rows' }).click()
    await page.getByText('In use: the shelf of Sallowmere Hospital, invented.').waitFor()
    await page.reload()
    await page.getByText('In use: the shelf of Sallowmere Hospital, invented.').waitFor()
  })

  it('reads JSON row by row and says of a broken file why', async () => {
    await choose(
      'shelf.json',
      JSON.stringify({ version: 1, wards: [{ id: 'x', name: 'X', beds: -1 }] }),
    )
    await rowText('−1 outside 0–1000').waitFor()
    await page.getByText('There is nothing to take from this file.').waitFor()
    await choose('broken.json', '{ "version": 1,, }')
    await page.getByText('broken.json cannot be read').waitFor()
    expect(await kept()).toBeNull()
  })

  it.each([
    { width: 1024, height: 768, look: 'Light' },
    { width: 390, height: 844, look: 'Dark' },
    { width: 512, height: 384, look: 'Light' },
  ])('has no accessibility fault at $width × $height, $look', async ({ look, ...size }) => {
    await page.setViewportSize(size)
    await page.locator('.header').getByText(look, { exact: true }).click()
    await choose('counted.csv', `${COUNTED}tubes;cuont;1\n`)
    await report().waitFor()
    expect(await accessibilityFaults(page, PART)).toEqual([])
    expect(await sidewaysPx(page)).toBe(0)
    const small = await page
      .locator('main button, main .file-open, main .look-choice')
      .evaluateAll((all) => all.filter((one) => one.getBoundingClientRect().height < 44).length)
    expect(small).toBe(0)
    await page.getByText('changed (2)').click()
    expect(await accessibilityFaults(page, PART)).toEqual([])
  })
})
