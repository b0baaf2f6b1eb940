// The first page as a person uses it: pick, edit, refuse, mend, choose, reload. The real core runs in a real worker.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Page } from 'playwright-core'
import { openApp } from '../support/browser.ts'
import type { OpenedApp } from '../support/browser.ts'
import {
  answered,
  chooseRow,
  firstName,
  firstNumber,
  focusedLabel,
  openBedside,
  pickExample,
  primaryNumber,
  problemAt,
  refused,
  sectionOf,
  shownName,
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

describe('bedside page', () => {
  it('opens with an example answered: set-up, one number with its spread and the printed one, one sentence why', async () => {
    expect(await page.getByLabel('Example case').inputValue()).toBe('nasal-cannula')
    expect(await firstName(page)).toMatch(/L\/min|flush/)
    expect(await page.locator('.first-gives').innerText()).toMatch(/inhaled about [01]/i)
    expect(await page.locator('.first-why').innerText()).toMatch(/^The best chance .* \d+\s%/)
    const number = await primaryNumber(page)
    expect(number).toBeGreaterThan(0.21)
    expect(number).toBeLessThanOrEqual(1)
    const spread = await page.locator('.spread-text').innerText()
    expect(spread).toMatch(/0\.\d+–[01](\.\d+)? for 8 of 10 patients/)
    expect(spread).toMatch(/printed/)
    expect(await page.locator('.answer .eyebrow').innerText()).toMatch(/^On now, against/)
    expect(await shownName(page)).toMatch(/^Nasal cannula, adult, 3.L\/min$/)
    expect(await page.locator('.forecast-text').innerText()).toMatch(/\d+.%; goal 94–98.%/)
    expect(await page.locator('.why').innerText()).toMatch(/^Likely below the goal: about \d+.%/)
  })

  it('says of what is on and of each set-up until which breathing rate it holds', async () => {
    const onNow = await page.locator('.on-now').innerText()
    expect(onNow).toMatch(/holds |below the goal already|above the goal already/)
    const rows = await page.locator('.ranked .ranked-row').allInnerTexts()
    expect(rows.length).toBeGreaterThan(5)
    for (const row of rows)
      expect(row).toMatch(/holds (until \d+\/min|at every breathing rate)|the goal already/)
    expect(await page.locator('.answer .facts').innerText()).toMatch(/Holds until/i)
  })

  it('has the emergency lines on top', async () => {
    const box = await page.locator('.emergency').boundingBox()
    const answer = await page.locator('.first-choice').boundingBox()
    expect(await page.locator('.emergency').innerText()).toMatch(/give oxygen first/)
    expect(box?.y).toBeLessThan(answer?.y ?? 0)
  })

  it('ranks another example when it is picked', async () => {
    await pickExample(page, 'entrainment-mask')
    expect(await page.locator('.first-choice .eyebrow').innerText()).toMatch(
      /^First of \d+ set-ups for saturation 88–92.%/,
    )
    expect(await page.locator('.case-line').innerText()).toMatch(/^72 years, 66 kg/)
    const ranks = await page.locator('.rank').allInnerTexts()
    expect(ranks[0]).toBe('1')
    expect(ranks.map(Number)).toEqual(ranks.map(Number).toSorted((a, b) => a - b))
  })

  it('draws the breath ribbon with a text equivalent', async () => {
    const ribbon = page.locator('.picture svg')
    await ribbon.waitFor()
    const description = await ribbon.locator('desc').textContent()
    expect(description).toMatch(/Effective inspired oxygen fraction 0\.\d+/)
    expect(description).toMatch(/room air drawn in/)
  })

  it('lets a line move over the ribbon with the breath, and stand still where that is preferred', async () => {
    const line = page.locator('.answer .ribbon-sweep')
    await line.waitFor({ state: 'attached' })
    const leftPx = async (): Promise<number> =>
      await line.evaluate((one) => one.getBoundingClientRect().left)
    const moves = await line.evaluate((one) => {
      const { animationName, animationDuration } = getComputedStyle(one)
      return { animationName, animationDuration }
    })
    const told = await page
      .getByRole('slider', { name: 'Breathing rate' })
      .getAttribute('aria-valuetext')
    const breathS = 60 / Number.parseFloat(told ?? '')
    expect(moves.animationName).toBe('breath-in')
    expect(Number.parseFloat(moves.animationDuration)).toBeCloseTo(breathS, 1)
    const places = new Set<number>()
    for (let look = 0; look < 12; look += 1) {
      places.add(Math.round(await leftPx()))
      await page.waitForTimeout(120)
    }
    expect(places.size).toBeGreaterThan(2)
    const picture = await page.locator('.answer .picture svg').boundingBox()
    expect(Math.max(...places)).toBeLessThanOrEqual((picture?.x ?? 0) + (picture?.width ?? 0) - 8)
    await page.emulateMedia({ reducedMotion: 'reduce' })
    expect(await line.isVisible()).toBe(false)
    await page.emulateMedia({ reducedMotion: null })
  })

  it('lets number and ribbon follow the row that is chosen, and go back to what is on now', async () => {
    const onNow = await shownName(page)
    const third = page.locator('.ranked .ranked-row').nth(2)
    const name = (await third.locator('.ranked-name').innerText()).split('\n')[0] ?? ''
    await chooseRow(page, 3)
    const chosen = await shownName(page)
    expect(name.startsWith(chosen)).toBe(true)
    expect(await page.locator('.why').innerText()).toMatch(/^Not first: /)
    await page
      .locator('.picture svg text', { hasText: chosen.slice(0, 12) })
      .first()
      .waitFor()
    await page.locator('.on-now').getByRole('radio').check()
    expect(await shownName(page)).toBe(onNow)
    await page.getByRole('button', { name: 'Show it', exact: true }).click()
    expect(await shownName(page)).toBe(await firstName(page))
    expect(await page.locator('.why').innerText()).toMatch(/^The best chance/)
  })

  it('says of everything ruled out why, with what would change it', async () => {
    const section = sectionOf(page, 'Ruled out')
    await section.getByRole('button').first().click()
    expect(await section.locator('dd').first().innerText()).toMatch(
      /changes with|changes without|./,
    )
    expect(await section.locator('dt').count()).toBeGreaterThan(0)
  })

  it('stands a guideline, assumptions with sources and cautions beside the ranking', async () => {
    expect(await page.getByRole('heading', { name: 'A guideline would start with' }).count()).toBe(
      1,
    )
    const assumed = sectionOf(page, 'Assumed')
    await assumed.getByRole('button').click()
    expect((await assumed.locator('li').allInnerTexts()).join(' ')).toMatch(/haemoglobin/i)
    const cautions = sectionOf(page, 'Cautions')
    expect(await cautions.innerText()).toMatch(/Not a monitor and not an alarm/)
    expect(await cautions.innerText()).toMatch(/fire/i)
    expect(await cautions.innerText()).toMatch(/clinician decides/)
  })

  it('works a changed age and flow out anew', async () => {
    await pickExample(page, 'nasal-cannula')
    const before = await page.locator('.on-now').innerText()
    await typeInto(page, 'age', '40')
    await typeInto(page, 'flow on now', '1')
    await answered(page)
    expect(await page.locator('.case-line').innerText()).toMatch(/^40 years/)
    const after = await page.locator('.on-now').innerText()
    expect(after).toMatch(/1.L\/min/)
    expect(after).not.toBe(before)
  })

  it('reads a decimal comma as a decimal point', async () => {
    await typeInto(page, 'flow on now', '1,5')
    await answered(page)
    const comma = await page.locator('.on-now').innerText()
    expect(comma).toMatch(/1\.5.L\/min/)
    await typeInto(page, 'flow on now', '1.5')
    await answered(page)
    expect(await page.locator('.on-now').innerText()).toBe(comma)
    expect(await typedIn(page, 'flow on now')).toBe('1.5')
  })

  it('keeps refused text, says why at the field and in sum, and offers what may have been meant', async () => {
    await typeInto(page, 'flow on now', '2000')
    await refused(page)
    expect(await typedIn(page, 'flow on now')).toBe('2000')
    const told = /Flow on now 2000 L\/min outside .*; did you mean 2 L\/min\?/
    expect(await problemAt(page, 'flow on now')).toMatch(told)
    expect(await page.locator('.problems').innerText()).toMatch(told)
    expect(await page.locator('.primary-value').count()).toBe(0)
    await page.locator('.problems').getByRole('button').first().click()
    expect(await focusedLabel(page)).toMatch(/^flow on now/)
    await page.getByRole('button', { name: 'Use 2 L/min' }).click()
    await answered(page)
    expect(await typedIn(page, 'flow on now')).toBe('2')
  })

  it.each(['1e1', '1.2.3', '1 5', '5 L', '٣'])(
    'refuses %j as a flow and keeps it',
    async (text) => {
      await typeInto(page, 'flow on now', text)
      await refused(page)
      expect(await typedIn(page, 'flow on now')).toBe(text)
      expect(await problemAt(page, 'flow on now')).toContain(`“${text}” is not a number`)
      expect(await page.locator('.primary-value').count()).toBe(0)
    },
  )

  it('never moves a flow into range', async () => {
    await typeInto(page, 'flow on now', '150')
    await refused(page)
    expect(await typedIn(page, 'flow on now')).toBe('150')
    expect(await problemAt(page, 'flow on now')).toMatch(/outside 0\.01–70 L\/min/)
  })

  it('keeps typed text over a reload, refused text too', async () => {
    await typeInto(page, 'flow on now', '1.2.3')
    await refused(page)
    await page.reload()
    await refused(page)
    expect(await typedIn(page, 'flow on now')).toBe('1.2.3')
    expect(await typedIn(page, 'age')).toBe('40')
  })

  it('gives back what was typed before another example was picked', async () => {
    await pickExample(page, 'simple-mask')
    await page.getByRole('button', { name: 'Bring back what was typed before' }).click()
    await refused(page)
    expect(await typedIn(page, 'flow on now')).toBe('1.2.3')
    await typeInto(page, 'flow on now', '3')
    await answered(page)
  })

  it('ranks anew when the goal changes, and takes a reason’s range only when pressed', async () => {
    await pickExample(page, 'nasal-cannula')
    const before = await firstNumber(page)
    await page.getByLabel('reason for the goal').selectOption('risk-of-hypercapnia')
    await answered(page)
    expect(await typedIn(page, 'from')).toBe('94')
    await page.locator('.offer').getByRole('button', { name: 'Use' }).click()
    await answered(page)
    expect(await typedIn(page, 'from')).toBe('88')
    expect(await page.locator('.first-choice .eyebrow').innerText()).toMatch(/88–92.%/)
    expect(await firstNumber(page)).toBeLessThan(before)
  })

  it('puts the highest fraction first when as much as possible is wanted, and asks for the reason', async () => {
    await page.getByLabel('reason for the goal').selectOption('')
    await page.getByLabel('kind of goal').selectOption('as-much-as-possible')
    await refused(page)
    expect(await page.locator('.problems').innerText()).toMatch(/Reason for the goal is missing/)
    await page.getByLabel('reason for the goal').selectOption('carbon-monoxide')
    await answered(page)
    expect(await firstNumber(page)).toBeGreaterThan(0.8)
  })

  it('shows what stands in for a field that is left empty, at the field and in the list', async () => {
    await pickExample(page, 'nasal-cannula')
    await typeInto(page, 'weight', '')
    await answered(page)
    const field = page
      .locator('.field')
      .filter({ has: page.getByRole('textbox', { name: 'weight' }) })
    expect(await field.innerText()).toMatch(/not given, assumed about \d+/i)
    const assumed = sectionOf(page, 'Assumed')
    await assumed.getByRole('button').click()
    expect((await assumed.locator('li').allInnerTexts()).join('\n')).toMatch(/weight about \d+/i)
  })

  it('says that chances come from averages only when nothing was read', async () => {
    await pickExample(page, 'no-reading')
    expect(await page.locator('.badges').innerText()).toMatch(/no reading: from averages only/)
    expect(await page.locator('.to-check').innerText()).toMatch(/type what is on now/)
  })

  it('says beside every number that no measurement checks it, where none does', async () => {
    await pickExample(page, 'aerosol-mask')
    await page.getByRole('button', { name: /^Show all/ }).click()
    const row = page.locator('.ranked .ranked-row', { hasText: /aerosol mask/i }).first()
    expect(await row.innerText()).toMatch(/not checked against measurements/i)
    await row.getByRole('radio').check()
    expect(await page.locator('.badges').innerText()).toMatch(/not checked against measurements/)
  })

  it('refuses a speaking valve with the cuff up, at its field', async () => {
    await pickExample(page, 'tracheostomy-speaking-valve')
    await page.getByLabel('cuff').selectOption('up')
    await refused(page)
    expect(await page.locator('.problems').innerText()).toMatch(/cannot breathe out/)
    await page.getByLabel('cuff').selectOption('down')
    await answered(page)
    expect(await page.locator('.emergency').innerText()).toMatch(
      /oxygen to the face and to the neck/,
    )
  })

  it('starts an empty case by asking for what is missing and nothing else', async () => {
    await page.getByLabel('Example case').selectOption('')
    await refused(page)
    expect(await page.locator('.problems li').count()).toBe(5)
    expect(await typedIn(page, 'age')).toBe('')
  })

  it('lists what one ward can build, or the whole hospital', async () => {
    await pickExample(page, 'heart-failure')
    const ofWard = await countOnList(page)
    await page.getByLabel('Shelf of').selectOption('')
    await answered(page)
    expect(await countOnList(page)).toBeGreaterThan(ofWard)
  })

  it('has raised no error in the console', () => {
    expect(errors).toEqual([])
  })
})

async function countOnList(page: Page): Promise<number> {
  const said = /of (\d+) set-ups/.exec(await page.locator('.first-choice .eyebrow').innerText())
  return Number(said?.[1])
}
