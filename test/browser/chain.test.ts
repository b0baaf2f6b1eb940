// The Chain page as a person uses it: pick, read the chain, be refused, borrow, reload, practise. The real core answers.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { accessibilityFaults, openApp, watchForErrors } from '../support/browser.ts'
import type { OpenedApp } from '../support/browser.ts'
import { brokenByPages, faultsInBothLooks, sidewaysPx } from './bedside-steps.ts'

let app: OpenedApp
let page: Page
let errors: readonly string[]

const SIZES = [
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
  { width: 1440, height: 900 },
] as const

beforeAll(async () => {
  app = await openApp()
  const context = await app.browser.newContext({ viewport: SIZES[2] })
  page = await context.newPage()
  page.setDefaultTimeout(20_000)
  errors = watchForErrors(page)
  await open('/chain')
})

afterAll(async () => {
  await app.close()
})

async function open(path: string): Promise<void> {
  await page.goto(app.url.replace(/\/$/, '') + path)
  await page.getByRole('heading', { level: 1, name: 'Chain' }).waitFor()
}

async function faultsEverywhere(): Promise<readonly string[]> {
  const faults: string[] = []
  for (const size of SIZES) {
    await page.setViewportSize(size)
    for (const look of ['Light', 'Dark']) {
      await page.locator('.header .look').getByText(look, { exact: true }).click()
      const found = await accessibilityFaults(page)
      faults.push(...found.map((fault) => `${size.width} ${look}: ${fault}`))
    }
    const sideways = await sidewaysPx(page)
    if (sideways > 0) faults.push(`${size.width}: ${sideways} px sideways`)
  }
  return faults
}

const picture = (): Promise<string> => page.locator('.picture desc').innerHTML()

describe('building a chain', () => {
  it('shows the parts of the mask picked first, from outlet to patient', async () => {
    await page.getByRole('heading', { name: /It can be joined/ }).waitFor()
    expect(await picture()).toMatch(
      /1\. Oxygen outlet.*2\. Flowmeter.*Simple mask \(way out\).*Patient: face/,
    )
  })

  it('folds away the pressure, the weak joints and the sizes, and shows them when wanted', async () => {
    const said = page.locator('.chain-answer')
    expect(await said.innerText()).not.toMatch(/6\smm \(from memory/)
    for (const name of [/^Pressure behind/, /^Joints that come apart/, /^Nominal sizes/])
      await said.getByRole('button', { name }).click()
    const told = await said.locator('.fold-panel').allInnerTexts()
    const text = told.join(' ').replaceAll(/\s+/g, ' ')
    expect(text).toMatch(/Flowmeter [^:]*: [\d.]+ kPa/)
    expect(text).toMatch(/pushed on: tubing nipple to end of oxygen tubing/i)
    expect(text).toMatch(/tubing nipple to end of oxygen tubing: 6 mm \(from memory/i)
  })

  it('is read without a fault in every size and look', async () => {
    expect(await faultsEverywhere()).toEqual([])
  })

  it('names the ward that lends what is missing, and keeps the picks over a reload', async () => {
    await page.getByLabel('Ward', { exact: true }).selectOption('wren')
    await page.getByLabel('Humidifier', { exact: true }).selectOption('bubble')
    await page.getByRole('heading', { name: 'Parts are missing here' }).waitFor()
    // The fewest parts, each with who has it; which fewest is proved by joining-brute-force.test.ts.
    expect(await page.locator('.chain-solved > .lines').first().innerText()).toMatch(
      /^1 × Bubble humidifier[^\n]*: borrow it from Heron$/,
    )
    await page.reload()
    await page.getByRole('heading', { name: 'Parts are missing here' }).waitFor()
    expect(await page.getByLabel('Humidifier', { exact: true }).inputValue()).toBe('bubble')
  })

  it('refuses with the reason and what mends it', async () => {
    await page.getByLabel('Ward', { exact: true }).selectOption('heron')
    await page.getByLabel('Interface and size').selectOption('non-rebreather/adult')
    await page.getByLabel('Flow', { exact: true }).selectOption('10')
    await page.getByRole('heading', { name: 'This cannot be joined' }).waitFor()
    const said = await page.locator('.chain-answer').innerText()
    expect(said).toContain('bubble humidifier before Reservoir mask')
    expect(said).toContain('Mend: leave the bubble humidifier out')
    expect(await faultsEverywhere()).toEqual([])
  })
})

describe('looking for a chain, beside the page', () => {
  it('says that it looks, takes the next pick meanwhile, and answers the newest', async () => {
    await page.getByRole('heading', { name: /joined|missing/ }).waitFor()
    // It may stand there for a moment only, so that all that stood there is kept.
    await page.evaluate(() => {
      const seen: string[] = []
      Object.assign(globalThis, { seenHeadings: seen })
      new MutationObserver(() => {
        seen.push(document.querySelector('.chain-answer h2')?.textContent ?? '')
      }).observe(document.body, { childList: true, subtree: true, characterData: true })
    })
    await page.getByLabel('Humidifier', { exact: true }).selectOption('none')
    await page.getByLabel('Interface and size').selectOption('t-piece-with-limb/adult')
    await page.getByLabel('Gas source').selectOption('nebuliser-double')
    await page.getByLabel('Interface and size').selectOption('simple-mask/adult')
    await page.getByLabel('Gas source').selectOption('wall-15')
    await page.getByRole('heading', { name: /It can be joined/ }).waitFor()
    expect(await picture()).toContain('Simple mask')
    const seen = await page.evaluate(() => Reflect.get(globalThis, 'seenHeadings'))
    expect(seen).toContain('Looking for the chain; below is still the one before.')
    // How it looks meanwhile, kept for as long as it is judged.
    await page.locator('.chain-solved').evaluate((one) => {
      one.setAttribute('data-stale', 'true')
    })
    expect(await faultsInBothLooks(page, '.chain-answer')).toEqual([])
    await page.locator('.chain-solved').evaluate((one) => {
      one.setAttribute('data-stale', 'false')
    })
  })

  it('says when its worker cannot start, keeps the picks, and tries again when asked', async () => {
    const context = await app.browser.newContext({ serviceWorkers: 'block' })
    const fresh = await context.newPage()
    await fresh.route(/chain-worker/, async (route) => await route.abort())
    await fresh.goto(`${app.url.replace(/\/$/, '')}/chain`)
    await fresh.getByLabel('Humidifier', { exact: true }).selectOption('bubble')
    await fresh.getByText('The calculation broke off').waitFor()
    await fresh.unroute(/chain-worker/)
    await fresh.getByRole('button', { name: 'Try again' }).click()
    await fresh.getByRole('heading', { name: /joined|missing/ }).waitFor()
    expect(await fresh.getByLabel('Humidifier', { exact: true }).inputValue()).toBe('bubble')
    await context.close()
  })
})

describe('from the set-up in sight on Bedside', () => {
  it('begins with its parts, its patient and its ward, and can be left for a usual patient', async () => {
    await page.goto(app.url)
    await page.getByRole('link', { name: 'Chain of parts' }).click()
    await page.getByRole('heading', { name: /It can be joined/ }).waitFor()
    expect(await page.locator('.chain-patient').innerText()).toMatch(
      /^For the patient on Bedside: 67 years, .*mouth and nose\.$/,
    )
    expect(await page.getByLabel('Ward', { exact: true }).inputValue()).toBe('heron')
    expect(await page.getByLabel('Flow', { exact: true }).inputValue()).toBe('3')
    expect(await picture()).toMatch(/Nasal cannula.*Patient: nose/)
    expect(await page.locator('.chain-water').innerText()).toMatch(/Water at the airway about \d/)
    expect(await accessibilityFaults(page)).toEqual([])
    await page.getByText('a usual one').click()
    expect(await page.getByRole('radiogroup', { name: 'Airway' }).count()).toBe(1)
    expect(new URL(page.url()).search).toBe('')
    // A sheet is for the patient on Bedside alone, with the humidifier of the chain in sight.
    expect(await page.getByRole('button', { name: 'Bedside sheet' }).count()).toBe(0)
    await page.getByText('as on Bedside', { exact: true }).click()
    await page.getByLabel('Humidifier').selectOption('bubble')
    await page.getByRole('button', { name: 'Bedside sheet' }).click()
    const sheet = page.locator('article.sheet-paper')
    await sheet.getByText('Bubble bottle: sterile water').waitFor()
    expect(await sheet.locator('.sheet-settings').innerText()).toMatch(/bubble humidifier/i)
  })

  it('opens with the interface an address names, on whatever feeds it, and says what the shelf has not', async () => {
    await open('/chain?interface=tracheostomy-mask')
    await page.getByLabel('Airway').or(page.locator('.chain-form')).first().waitFor()
    expect(await page.getByLabel('Interface and size').inputValue()).toBe('tracheostomy-mask/adult')
    expect(await page.getByLabel('Gas source').inputValue()).toMatch(/nebuliser|blender|ventilator/)
    await open('/chain?source=no-such-thing')
    await page.getByText(/The address asks for no-such-thing/).waitFor()
  })
})

describe('a chain on the page', () => {
  it('breaks over printed pages without laying anything over anything, and has targets of at least 44 pixels', async () => {
    await open('/chain')
    await picture()
    expect(await brokenByPages(page)).toEqual([])
    const small = await page
      .locator('main :is(button, select, .look-choice, nav a)')
      .evaluateAll((all) =>
        all
          .map((one) => ({ name: one.textContent ?? '', box: one.getBoundingClientRect() }))
          .filter(({ box }) => box.width > 0 && (box.height < 44 || box.width < 44))
          .map(({ name, box }) => `${name} ${box.width} × ${box.height}`),
      )
    expect(small).toEqual([])
  })
})

describe('wrong on purpose', () => {
  it('keeps the fault back until it is asked for, then says whether it was found', async () => {
    await open('/chain/practice')
    expect(await picture()).not.toContain('✗')
    await page.getByLabel('Where is the fault?').selectOption({ index: 1 })
    await page.getByRole('button', { name: 'Show what is wrong' }).click()
    expect(await page.locator('.chain-practice').innerText()).toContain('the patient gets air')
    expect(await picture()).toContain('✗')
  })

  it('goes on to the next of ten', async () => {
    await page.getByRole('button', { name: 'Next chain' }).click()
    await page.getByRole('heading', { name: 'Chain 2 of 10' }).waitFor()
    expect(await picture()).not.toContain('✗')
  })

  it('is read without a fault in every size and look', async () => {
    expect(await faultsEverywhere()).toEqual([])
    expect(errors).toEqual([])
  })
})
