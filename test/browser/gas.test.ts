// The Gas page as a person uses it: type, read the time, be refused, mend, reload, switch units. The real core answers.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Locator, Page } from 'playwright-core'
import { accessibilityFaults, openApp } from '../support/browser.ts'
import type { OpenedApp } from '../support/browser.ts'
import { sidewaysPx } from './bedside-steps.ts'
import { fieldIn, letMinutesPass, openGas } from './gas-steps.ts'

let app: OpenedApp

beforeAll(async () => {
  app = await openApp()
})

afterAll(async () => {
  await app.close()
})

const SIZES = [
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
  { width: 1440, height: 900 },
] as const
const LOOKS = ['Light', 'Dark'] as const
const SHOWN = SIZES.flatMap((size) => LOOKS.map((look) => ({ ...size, look })))

/** Until it is so: the page looks at its clock every few seconds, and two cores are shared. */
const expectSoon = (look: () => Promise<string>) => expect.poll(look, { timeout: 20_000 })

async function openFolds(page: Page): Promise<void> {
  const shut = page.locator('.fold-button[aria-expanded="false"]:visible')
  while ((await shut.count()) > 0) await shut.first().click()
}

async function faultsEverywhere(page: Page): Promise<readonly string[]> {
  const faults: string[] = []
  for (const shown of SHOWN) {
    await page.setViewportSize(shown)
    await page.locator('.header .look').getByText(shown.look, { exact: true }).click()
    const found = await accessibilityFaults(page)
    const sideways = await sidewaysPx(page)
    faults.push(...found.map((fault) => `${shown.width} ${shown.look}: ${fault}`))
    if (sideways > 0) faults.push(`${shown.width}: ${sideways} px sideways`)
  }
  return faults
}

describe('cylinder cards', () => {
  let page: Page
  let errors: readonly string[]
  let card: Locator

  beforeAll(async () => {
    ;({ page, errors } = await openGas(app, '/gas'))
    card = page.locator('.gas-card').first()
  })

  const times = async (): Promise<string> => await card.locator('.gas-times').innerText()

  it('answer an invented example as clock times, and say that it is one', async () => {
    expect(await card.locator('.badge-line').innerText()).toMatch(/invented example/i)
    expect(await times()).toMatch(/change at\s+14:\d\d\s+empty at\s+14:\d\d/i)
    expect(await card.locator('.why').innerText()).toMatch(/^\d+ min from now$/)
  })

  it('say when to change: 2 L from 137 to 14 bar at 10 L/min is the 26 min of the worked example', async () => {
    await fieldIn(card, 'water volume').fill('2')
    await fieldIn(card, 'gauge reads').fill('137')
    await openFolds(page)
    await fieldIn(card, 'gas temperature when read').fill('15')
    await expectSoon(times).toMatch(/change at\s+14:16/i)
    expect(await card.locator('.badge-line').count()).toBe(0)
    expect(await card.innerText()).toMatch(/Water volume × pressure, as often taught: 25 min/)
    expect(await card.innerText()).toMatch(/Ours is 2 min longer/)
  })

  it('count from the reading, not from now: time that passes is time gone', async () => {
    await letMinutesPass(page, 20)
    await expectSoon(async () => await card.locator('.why').innerText()).toMatch(/^\d min from now/)
    expect(await times()).toMatch(/change at\s+14:16/i)
    await letMinutesPass(page, 40)
    await expectSoon(async () => await card.innerText()).toMatch(/Change it now/)
    await letMinutesPass(page, 0)
    await expectSoon(async () => await card.innerText()).not.toMatch(/Change it now/)
  })

  it('compare with a handbook factor and say by how much ours differs', async () => {
    await fieldIn(card, 'handbook factor').fill('0.16')
    await expectSoon(async () => await card.innerText()).toMatch(
      /With 0\.16 L for each psi: 29 min\. Ours is 2 min shorter/,
    )
    await fieldIn(card, 'handbook factor').fill('')
  })

  it('give nothing while the valve is closed, and say so', async () => {
    await card.getByLabel('the valve is open').uncheck()
    await expectSoon(async () => await card.innerText()).toMatch(/0 minutes: the valve is closed/)
    expect(await card.locator('.gas-times').count()).toBe(0)
    await card.getByLabel('the valve is open').check()
  })

  it('mark what is extrapolated above 27 °C', async () => {
    await fieldIn(card, 'gas temperature when read').fill('35')
    await expectSoon(async () => await card.locator('.badges').innerText()).toMatch(/extrapolated/)
    await fieldIn(card, 'gas temperature when read').fill('15')
    await card.locator('.badges').waitFor({ state: 'detached' })
  })

  it.each([
    { kind: 'driving', fields: { 'driving flow': '8' }, drawn: /8 L\/min of oxygen/ },
    {
      kind: 'blend',
      fields: { 'total flow': '60', 'fraction set': '0.6' },
      drawn: /29\.6 L\/min of oxygen/,
    },
    {
      kind: 'ventilator',
      fields: {
        'flow or minute volume': '6',
        'fraction set': '0.6',
        'bias flow': '2',
        'oxygen that drives the machine': '0.5',
      },
      drawn: /4\.5 L\/min of oxygen/,
    },
  ])('count what is really drawn: $kind', async ({ kind, fields, drawn }) => {
    await card.getByLabel('what is drawn').selectOption(kind)
    for (const [label, text] of Object.entries(fields)) await fieldIn(card, label).fill(text)
    await expectSoon(async () => await card.innerText()).toMatch(drawn)
  })

  it('take what is on now from Bedside', async () => {
    await card.getByLabel('what is drawn').selectOption('bedside')
    await expectSoon(async () => await card.locator('.gas-form').innerText()).toMatch(
      /nasal cannula/i,
    )
    await expectSoon(times).toMatch(/change at/i)
    await card.getByLabel('what is drawn').selectOption('meter')
  })

  it.each(['1e1', '1.2.3', '-5', '200'])('refuse %j as a flow and keep it', async (text) => {
    await fieldIn(card, 'flow on the meter').fill(text)
    await card.locator('.refused').waitFor()
    expect(await fieldIn(card, 'flow on the meter').inputValue()).toBe(text)
    expect(await card.locator('.field-problem').innerText()).toMatch(/Flow on the meter/)
    expect(await card.locator('.gas-times').count()).toBe(0)
  })

  it('keep everything typed over a reload, refused text too', async () => {
    await fieldIn(card, 'flow on the meter').fill('1.2.3')
    await page.reload()
    await card.locator('.refused').waitFor()
    expect(await fieldIn(card, 'flow on the meter').inputValue()).toBe('1.2.3')
    expect(await fieldIn(card, 'gauge reads').inputValue()).toBe('137')
    await card.locator('.refused').getByRole('button').first().click()
    expect(
      await fieldIn(card, 'flow on the meter').evaluate((one) => one === document.activeElement),
    ).toBe(true)
    await fieldIn(card, 'flow on the meter').fill('10')
    await expectSoon(times).toMatch(/change at/i)
  })

  it('show other units for the same answer, and never turn a typed number into another', async () => {
    const before = await times()
    await page.locator('.gas-units').getByText('psi', { exact: true }).click()
    await page.locator('.gas-units').getByText('ft³', { exact: true }).click()
    await expectSoon(async () => await card.locator('.eyebrow').innerText()).toMatch(/^1990 psi/)
    expect(await card.innerText()).toMatch(/9\.4\d? ft³/)
    expect(await times()).toBe(before)
    expect(await fieldIn(card, 'gauge reads').inputValue()).toBe('137')
    await card.getByLabel('gauge marked in').selectOption('psi')
    await fieldIn(card, 'gauge reads').fill('1987')
    await fieldIn(card, 'pressure to leave').fill('203')
    await expectSoon(times).toBe(before)
    await page.locator('.gas-units').getByText('bar', { exact: true }).click()
  })

  it('take a second cylinder, and bring a removed one back', async () => {
    await page.getByRole('button', { name: 'Add another cylinder' }).click()
    const second = page.locator('.gas-card').nth(1)
    await second.locator('.refused').waitFor()
    await fieldIn(second, 'water volume').fill('10')
    await second.getByRole('button', { name: /^Remove/ }).click()
    await second.waitFor({ state: 'detached' })
    await page.getByRole('button', { name: 'Bring it back' }).click()
    expect(await fieldIn(second, 'water volume').inputValue()).toBe('10')
  })

  it('have no accessibility fault at any size and look, folds open, one card refused', async () => {
    await openFolds(page)
    expect(await faultsEverywhere(page)).toEqual([])
    await page.setViewportSize({ width: 512, height: 384 })
    expect(await sidewaysPx(page)).toBe(0)
  })

  it('print the answers without the forms', async () => {
    await page.emulateMedia({ media: 'print' })
    expect(await card.locator('.gas-times').isVisible()).toBe(true)
    expect(await card.locator('.gas-form').isVisible()).toBe(false)
    await page.emulateMedia({ media: 'screen' })
  })

  it('raised no error in the console', () => {
    expect(errors).toEqual([])
  })
})

describe('transfer planner', () => {
  let page: Page
  let errors: readonly string[]

  beforeAll(async () => {
    ;({ page, errors } = await openGas(app, '/gas/transfer'))
    await page.locator('.gas-times').waitFor()
  })

  const answer = async (): Promise<string> => await page.locator('.answer').innerText()
  const leg = (position: number): Locator =>
    page.locator('.gas-form .gas-rows').first().locator('.gas-row').nth(position)

  it('names cylinders, when to change and when they are down to the reserve', async () => {
    expect(await answer()).toMatch(/Leave at 13:50; the way takes 30 min, the oxygen is for 1 h/)
    expect(await answer()).toMatch(/2 × 2 L at 200 bar/)
    expect(await answer()).toMatch(/change at\s+14:\d\d\s+down to the reserve at\s+1[45]:\d\d/i)
    expect(await page.locator('.badge-line').innerText()).toMatch(/invented example/i)
  })

  it('wants more when a leg is longer, keeps the rule of the reserve, and says what is short', async () => {
    await fieldIn(leg(2), 'time').fill('90')
    await expectSoon(answer).toMatch(/the way takes 1 h 40 min, the oxygen is for 3 h 20 min/)
    expect(await answer()).toMatch(/2000 L wanted/)
    await fieldIn(leg(2), 'time').fill('600')
    await expectSoon(answer).toMatch(/Oxygen runs out on the way/)
    await fieldIn(leg(2), 'time').fill('20')
    await expectSoon(answer).toMatch(/600 L wanted/)
  })

  it('tells the worst case at the next step of flow', async () => {
    expect(await answer()).toMatch(/If the flow must rise to the next step\s+900 L wanted/)
  })

  it('shows new times at once when the lift stands still, and takes them back', async () => {
    const before = await page.locator('.gas-times').innerText()
    await page.getByRole('button', { name: 'Lift stands still: 20 minutes more' }).click()
    await expectSoon(answer).toMatch(
      /Lift stands still for 20 minutes: arrive at 14:40; change at 14:\d\d/,
    )
    expect(await page.locator('.gas-times').innerText()).toBe(before)
    expect(await page.locator('.gas-timeline desc').textContent()).toMatch(/arrive at 14:40/)
    await page.getByRole('button', { name: 'It moves again' }).click()
    await expectSoon(answer).not.toMatch(/arrive at/)
  })

  it('adds, moves and removes legs, and brings a removed one back', async () => {
    await page.getByRole('button', { name: 'Add a leg' }).click()
    await page.locator('.refused').waitFor()
    await leg(3).getByLabel('kind of leg').selectOption('helicopter')
    await fieldIn(leg(3), 'time').fill('15')
    await leg(3)
      .getByRole('button', { name: /Delay, flow/ })
      .click()
    await fieldIn(leg(3), 'altitude here').fill('2000')
    await expectSoon(async () => await page.locator('.gas-rest').innerText()).toMatch(
      /80\.\d kPa|8\d \w+/,
    )
    await leg(3)
      .getByRole('button', { name: /^Move up/ })
      .click()
    await expectSoon(async () => await leg(2).getByLabel('kind of leg').inputValue()).toBe(
      'helicopter',
    )
    await leg(2)
      .getByRole('button', { name: /^Delay, flow/ })
      .first()
      .click()
      .catch(() => undefined)
    await openFolds(page)
    await leg(2)
      .getByRole('button', { name: /^Remove/ })
      .click()
    await expectSoon(answer).toMatch(/the way takes 30 min/)
    await page.getByRole('button', { name: 'Bring it back' }).click()
    await expectSoon(answer).toMatch(/the way takes 45 min/)
    await leg(2)
      .getByRole('button', { name: /^Remove/ })
      .click()
  })

  it('keeps gas outside a scanner room unless everything is MR conditional', async () => {
    await leg(1).getByLabel('kind of leg').selectOption('scanner')
    const rest = async (): Promise<string> => await page.locator('.gas-rest').innerText()
    await expectSoon(rest).toMatch(/stays outside the scanner room/)
    expect(await rest()).toMatch(/length of the tube/)
    await page.getByLabel('regulator', { exact: true }).selectOption('conditional')
    await page.getByLabel('flowmeter', { exact: true }).selectOption('conditional')
    await expectSoon(rest).toMatch(/are MR conditional/)
    await leg(1).getByLabel('kind of leg').selectOption('lift')
  })

  it('refuses, keeps what is typed over a reload, and answers when mended', async () => {
    await fieldIn(page, 'flow').first().fill('ten')
    await page.locator('.refused').waitFor()
    await page.reload()
    await page.locator('.refused').waitFor()
    expect(await fieldIn(page, 'flow').first().inputValue()).toBe('ten')
    await fieldIn(page, 'flow').first().fill('10')
    await expectSoon(answer).toMatch(/600 L wanted/)
  })

  it('prints one sheet with boxes to tick', async () => {
    const pdf = await page.pdf({ format: 'A4' })
    expect(pdf.toString('latin1').match(/\/Type \/Page\b/g)).toHaveLength(1)
    await page.emulateMedia({ media: 'print' })
    const sheet = await page.locator('main').innerText()
    expect(sheet).toMatch(/Transfer sheet/)
    expect(sheet).toMatch(/Valve open/)
    expect(sheet).toMatch(/Cylinder secured/)
    expect(sheet).toMatch(/If the gas fails/)
    expect(await page.locator('.gas-form').isVisible()).toBe(false)
    await page.emulateMedia({ media: 'screen' })
  })

  it('has no accessibility fault at any size and look, folds open', async () => {
    await openFolds(page)
    expect(await faultsEverywhere(page)).toEqual([])
  })

  it('raised no error in the console', () => {
    expect(errors).toEqual([])
  })
})
