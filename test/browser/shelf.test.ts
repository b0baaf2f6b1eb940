// The Shelf page as people use it: browse, search, count, add, edit, remove, undo; a refusal loses nothing; clean at every size and look. Leaves out files in and out (shelf-import.test.ts).
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Locator, Page } from 'playwright-core'
import { accessibilityFaults, openApp, watchForErrors } from '../support/browser.ts'
import type { OpenedApp } from '../support/browser.ts'
import { pageTexts } from '../support/page-texts.ts'
import { brokenByPages, focusedLabel, sidewaysPx } from './bedside-steps.ts'

/** Two shared cores may be slow; no test is judged by its speed. */
const WAIT_MS = 20_000
let app: OpenedApp
let page: Page
let errors: readonly string[]

beforeAll(async () => {
  app = await openApp()
  const context = await app.browser.newContext({
    viewport: { width: 1024, height: 768 },
    serviceWorkers: 'block',
  })
  page = await context.newPage()
  page.setDefaultTimeout(WAIT_MS)
  errors = watchForErrors(page)
  await page.goto(`${app.url}shelf`)
  await page.getByRole('heading', { name: 'Shelf', exact: true }).waitFor()
})

afterAll(async () => {
  await app.close()
})

const card = (label: string): Locator => page.getByRole('article', { name: label, exact: true })
const box = (label: string): Locator => page.getByRole('textbox', { name: label, exact: true })
/** A number with its unit in the name. */
const numberBox = (label: string): Locator =>
  page.getByRole('textbox', { name: new RegExp(String.raw`^${label} ?,`) })
const press = async (name: string): Promise<void> => {
  const exact = name.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`).replaceAll(',', ' ?,')
  await page.getByRole('button', { name: new RegExp(`^${exact}$`) }).click()
}

/** Every size and every look: the elements are the same in all of them. */
const SHOWN = [
  { width: 390, height: 844, look: 'Dark' },
  { width: 1024, height: 768, look: 'Light' },
  { width: 1440, height: 900, look: 'Dark' },
] as const

/** No fault, nothing out to the side; as it stood at the end. */
async function isCleanEverywhere(): Promise<void> {
  for (const { look, ...size } of SHOWN) {
    await page.setViewportSize(size)
    expect(await sidewaysPx(page)).toBe(0)
    await page.locator('.look').getByText(look, { exact: true }).click()
    expect(await accessibilityFaults(page)).toEqual([])
  }
  await page.setViewportSize({ width: 1024, height: 768 })
}

describe('the Shelf page', () => {
  it('shows every list, and is found by name, ward and list', async () => {
    expect(await page.locator('.shelf-list h2').count()).toBe(8)
    await page.setViewportSize({ width: 390, height: 844 })
    const first = await card('Nasal cannula').boundingBox()
    expect(first?.y).toBeLessThan(844 - 44)
    await page.setViewportSize({ width: 1024, height: 768 })
    await box('Search').fill('wide inlet')
    expect(await page.getByRole('article').count()).toBe(1)
    expect(await card('Reservoir mask (wide inlet, 15–30 L/min)').innerText()).toContain(
      '15–30 L/min (from its label)',
    )
    await box('Search').fill('no such thing')
    await page.getByText('Nothing on the shelf is like that.').waitFor()
    await box('Search').fill('')
    await page.getByLabel('Show').selectOption('airMeters')
    expect(await page.getByRole('article').count()).toBe(1)
    await page.getByLabel('Show').selectOption('')
  })

  it('has no fault as it opens', isCleanEverywhere)

  it('neither overlaps nor needs sideways scrolling at 200 % zoom', async () => {
    // Zooming a 1024 pixel wide window to 200 % leaves 512 pixels of layout.
    await page.setViewportSize({ width: 512, height: 384 })
    expect(await sidewaysPx(page)).toBe(0)
    const { overlaps, cut } = await pageTexts(page)
    expect({ overlaps, cut }).toEqual({ overlaps: [], cut: [] })
    await page.setViewportSize({ width: 1024, height: 768 })
  })

  it('shows whom each size fits, and a rated flow as it stands, never rounded', async () => {
    // The child's cannula begins at 0.125 L/min.
    const said = await card('Nasal cannula').innerText()
    expect(said.replaceAll(/\s+/g, ' ')).toMatch(/child fits 1–13 years \(usual\) 0\.125–4 L\/min/i)
    expect(said).toMatch(/fits up to 6 months and up to 2 kg \(usual\)/i)
  })

  it('says what happens when a supply fails, the unknown too', async () => {
    const one = card('Blender 5–60 L/min')
    await one.getByRole('button', { name: 'All that is known' }).click()
    const facts = await one.locator('.fact').allInnerTexts()
    expect(facts.map((fact) => fact.replaceAll(/\s+/g, ' '))).toEqual(
      expect.arrayContaining([
        'If air fails Oxygen alone',
        'If mains power fails Unknown',
        'Bias flow adds to the gas used Unknown',
      ]),
    )
    const limb = card('Ventilator (constant flow)')
    await limb.getByRole('button', { name: 'All that is known' }).click()
    const known = (await limb.locator('.fact').allInnerTexts()).join(' ').replaceAll(/\s+/g, ' ')
    for (const said of [
      /Flows that can be set 2, 3, 4 … .* L\/min/,
      /Fractions that can be set 0\.21, /,
      /Filter of its own on the inspiratory limb No/,
      /If oxygen fails Unknown/,
      /Leak compensation adds to the gas used Unknown/,
      /End where gas goes out 22 mm cone, outside \(usual\)/,
    ])
      expect(known).toMatch(said)
  })

  it('counts by taps and typing, down to none, and refuses what is no count', async () => {
    const label = 'Nasopharyngeal catheter, newborn'
    await press(`One fewer: ${label}`)
    expect(await box(label).inputValue()).toBe('7')
    await box(label).fill('0')
    await card('Nasopharyngeal catheter').getByText('none left').waitFor()
    expect(await page.getByRole('button', { name: `One fewer: ${label}` }).isDisabled()).toBe(true)
    await box(label).fill('1.5')
    await card('Nasopharyngeal catheter')
      .getByText(/not a number/)
      .waitFor()
    expect(await box(label).inputValue()).toBe('1.5')
    await box(label).fill('0')
    await page.getByLabel('Only what has run out').check()
    expect(await page.getByRole('article').count()).toBe(1)
    await page.getByLabel('Only what has run out').uncheck()
  })

  it('holds through a reload', async () => {
    await page.reload()
    await page.getByRole('heading', { name: 'Shelf', exact: true }).waitFor()
    expect(await box('Nasopharyngeal catheter, newborn').inputValue()).toBe('0')
  })

  it('keeps what is refused, over a reload too, and takes it once mended', async () => {
    await press('Add to the shelf')
    await page.getByLabel('What to add').selectOption('tubes')
    await press('Add')
    await page.getByLabel('kind', { exact: true }).selectOption('oxygen-tubing')
    await box('name on the shelf').fill('Green drawer tubing')
    await numberBox('length').fill('210')
    await press('Put on the shelf')
    await page.getByText('This cannot stand on the shelf yet.').waitFor()
    expect(await page.locator('.field-problem').allInnerTexts()).toEqual(
      expect.arrayContaining([expect.stringMatching(/length 210 m/i)]),
    )
    await isCleanEverywhere()
    await page.reload()
    await press('Add to the shelf')
    await press('Add')
    await page.getByText('First go on with what was typed before').waitFor()
    await press('Go on with it')
    expect(await numberBox('length').inputValue()).toBe('210')
    await numberBox('length').fill('2.1')
    await numberBox('bore').fill('4.8')
    await page.getByLabel('where it lies').selectOption('everywhere')
    await box('how many').fill('12')
    await press('Put on the shelf')
    await page.getByText('Added: Green drawer tubing').waitFor()
    expect(await box('Green drawer tubing').inputValue()).toBe('12')
  })

  it('edits a row, undoes it, and removes one after asking', async () => {
    const label = 'Green drawer tubing'
    await card(label).getByRole('button', { name: 'All that is known' }).click()
    await press(`Edit, ${label}`)
    expect(await numberBox('bore').inputValue()).toBe('4.8')
    await box('name on the shelf').fill('Blue drawer tubing')
    await press('Put on the shelf')
    await page.getByText('Changed: Blue drawer tubing').waitFor()
    await press('Undo')
    await card(label).waitFor()
    await card(label).getByRole('button', { name: 'All that is known' }).click()
    await press(`Remove, ${label}`)
    await press(`Yes, remove, ${label}`)
    await page.getByText(`Removed: ${label}`).waitFor()
    expect(await card(label).count()).toBe(0)
  })

  it('opens every row of the demo shelf in its form and puts it back unchanged', async () => {
    const kept = async (): Promise<unknown> =>
      JSON.parse((await page.evaluate(() => localStorage.getItem('oxwright.shelf.1'))) ?? '')
    const before = await kept()
    for (const label of [
      'Nasal cannula',
      'Entrainment mask',
      'Jet nebuliser (two jets)',
      'Blender 1–30 L/min',
      'Ventilator (constant flow)',
      'Oxygen outlet',
      'Air flowmeter 2–15 L/min',
    ]) {
      await card(label).getByRole('button', { name: 'All that is known' }).click()
      await press(`Edit, ${label}`)
      await press('Put on the shelf')
      await page.getByText(`Changed: ${label}`).waitFor()
    }
    expect(await kept()).toEqual(before)
  })

  it('is used by keyboard alone: search, count, add, give up', async () => {
    await page.reload()
    await card('Nasal cannula').waitFor()
    const tabTo = async (isThere: () => Promise<boolean>): Promise<void> => {
      for (let presses = 0; presses < 60; presses += 1) {
        if (await isThere()) return
        await page.keyboard.press('Tab')
      }
      throw new Error('not reached by Tab')
    }
    const focusedName = async (): Promise<string> =>
      await page.evaluate(
        () =>
          document.activeElement?.getAttribute('aria-label') ??
          document.activeElement?.textContent ??
          '',
      )
    await tabTo(async () => (await focusedLabel(page)) === 'Search')
    await page.keyboard.type('face tent')
    await tabTo(async () => (await focusedName()).startsWith('One more: Face tent'))
    const count = card('Face tent').getByRole('textbox').first()
    const before = Number(await count.inputValue())
    await page.keyboard.press('Enter')
    expect(Number(await count.inputValue())).toBe(before + 1)
    await page.keyboard.press('Shift+Tab')
    await page.keyboard.press('Shift+Tab')
    await page.keyboard.press('Enter')
    expect(Number(await count.inputValue())).toBe(before)
    await page.getByRole('button', { name: 'Add to the shelf' }).focus()
    for (const key of ['Enter', 'Tab', 'Tab', 'Enter']) await page.keyboard.press(key)
    await page.locator('#shelf-form-heading:focus').waitFor()
    await tabTo(async () => (await focusedName()) === 'Leave without saving')
    await page.keyboard.press('Enter')
    await box('Search').fill('')
  })

  it('keeps a ward in which something lies, and adds one', async () => {
    await press('Remove, Heron')
    await page.getByText(/Heron cannot go while this lies there/).waitFor()
    await press('Add a ward')
    await box('name of the ward').fill('Lark 2')
    await press('Put on the shelf')
    await page.getByText('This cannot stand on the shelf yet.').waitFor()
    await box('beds').fill('8')
    await press('Put on the shelf')
    await page.getByText('Added: Lark 2').waitFor()
    await press('Remove, Lark 2')
    await page.getByText('Removed: Lark 2').waitFor()
    expect(await page.getByLabel('Lies in').locator('option').allInnerTexts()).toEqual([
      'any place',
      'Heron',
      'Plover',
      'Wren',
    ])
  })

  it('adds an interface and a source by hand, with what they must have alone', async () => {
    await press('Add to the shelf')
    await page.getByLabel('What to add').selectOption('interfaces')
    await press('Add')
    await page.getByLabel('kind of interface', { exact: true }).selectOption('face-tent')
    await box('name on the shelf').fill('Tent by hand')
    await page.getByLabel('where it lies').selectOption('plover')
    await page.getByLabel('size', { exact: true }).selectOption('adult')
    await box('how many of this size').fill('2')
    await press('Put on the shelf')
    await page.getByText('Added: Tent by hand').waitFor()
    await press('Add to the shelf')
    await page.getByLabel('What to add').selectOption('sources')
    await press('Add')
    await page.getByLabel('kind', { exact: true }).selectOption('blender')
    await box('name on the shelf').fill('Blender by hand')
    await press('Put on the shelf')
    await page.getByText('This cannot stand on the shelf yet.').waitFor()
    expect(await page.locator('.field-problem').count()).toBe(5)
    await page.getByLabel('where it lies').selectOption('everywhere')
    await box('how many').fill('1')
    await box('flows that can be set').fill('5; 10; 20')
    await box('fractions that can be set').fill('0,21; 0,5; 1')
    await box('error of the flow').fill('0,03')
    await press('Put on the shelf')
    await page.getByText('Added: Blender by hand').waitFor()
  })

  it('leads from a row to its chain', async () => {
    const label = 'Tent by hand'
    await card(label).getByRole('button', { name: 'All that is known' }).click()
    await card(label).getByRole('link', { name: 'Show its chain' }).click()
    await page.getByRole('heading', { name: 'Chain', exact: true }).waitFor()
    expect(await page.getByLabel('Interface and size', { exact: true }).inputValue()).toBe(
      'tent-by-hand/adult',
    )
    await page.goBack()
    await card(label).waitFor()
  })

  it('says where the hospital lies, and changes its name and altitude', async () => {
    await press('Hospital and altitude')
    await box('hospital').fill('Sallowmere Hospital')
    await numberBox('altitude').fill('99999')
    await press('Put on the shelf')
    await page.getByText('This cannot stand on the shelf yet.').waitFor()
    await numberBox('altitude').fill('12')
    await press('Put on the shelf')
    await page.getByText('Changed: Sallowmere Hospital').waitFor()
    const said = page.getByText(/^In use: the shelf of Sallowmere Hospital/)
    await said.waitFor()
    expect(await said.innerText()).toMatch(/It lies at 12 m\.$/)
  })

  it('goes back to the demo shelf after asking', async () => {
    await press('Back to the demo shelf')
    await press('Yes, back to the demo')
    expect(await box('Nasopharyngeal catheter, newborn').inputValue()).toBe('8')
    expect(await page.evaluate(() => localStorage.getItem('oxwright.shelf.1'))).toBeNull()
  })

  it('breaks over printed pages without laying anything over anything', async () => {
    expect(await brokenByPages(page)).toEqual([])
  })

  it('has targets of at least 44 pixels and no error in the console', async () => {
    await page.setViewportSize({ width: 390, height: 844 })
    const small = await page
      .locator('.shelf button, .shelf select, .shelf .field-box, .shelf .check-label')
      .evaluateAll((all) =>
        all
          .map((one) => ({ name: one.textContent ?? '', box: one.getBoundingClientRect() }))
          .filter(({ box: at }) => at.width > 0 && (at.height < 44 || at.width < 44))
          .map(({ name, box: at }) => `${name} ${at.width} × ${at.height}`),
      )
    expect(small).toEqual([])
    expect(errors).toEqual([])
  })
})
