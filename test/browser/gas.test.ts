// The Gas page as a person uses it: type, read the time, be refused, mend, reload, switch units. The real core answers.
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Locator, Page } from 'playwright-core'
import { DEMO_SHELF } from '../../src/kit/demo-shelf/demo-shelf.ts'
import type { ShelfSource } from '../../src/kit/shelf.ts'
import { accessibilityFaults, openApp } from '../support/browser.ts'
import type { OpenedApp } from '../support/browser.ts'
import { faultsInBothLooks, sidewaysPx } from './bedside-steps.ts'
import { fieldIn, letMinutesPass, openGas } from './gas-steps.ts'

let app: OpenedApp

beforeAll(async () => {
  app = await openApp()
})

afterAll(async () => {
  await app.close()
})

/** Each look at one size: the elements are the same in all of them; 1440 pixels give the columns of 1024 more room. */
const SHOWN = [
  { width: 1024, height: 768, look: 'Light' },
  { width: 390, height: 844, look: 'Dark' },
] as const
const WIDE = { width: 1440, height: 900 }

/** Until it is so: the page looks at its clock every few seconds, and two cores are shared. */
const expectSoon = (look: () => Promise<string>) => expect.poll(look, { timeout: 20_000 })

/** A refusal in both looks, where it stands and at its field. */
async function refusalFaults(page: Page): Promise<readonly string[]> {
  await page.locator('.refused').first().waitFor()
  return await faultsInBothLooks(page, '.refused, .field:has([aria-invalid="true"])')
}

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
  // 200 % zoom of a tablet held across: the page has half the pixels.
  for (const size of [{ width: 512, height: 384 }, WIDE]) {
    await page.setViewportSize(size)
    const px = await sidewaysPx(page)
    if (px > 0) faults.push(`${size.width}: ${px} px sideways`)
  }
  return faults
}

/** Size of the smallest letters in sight, in points. */
async function smallestPt(page: Page): Promise<number> {
  return await page.locator('main').evaluate((main) => {
    const sizes: number[] = []
    const texts = document.createTreeWalker(main, NodeFilter.SHOW_TEXT)
    while (texts.nextNode()) {
      const { parentElement: box, textContent } = texts.currentNode
      if (box === null || box.getClientRects().length === 0 || textContent?.trim() === '') continue
      sizes.push(parseFloat(getComputedStyle(box).fontSize) * 0.75)
    }
    return Math.min(...sizes)
  })
}

/** Chooses units that nobody starts with: psi, cubic feet, and millimetres of mercury for the air. */
async function chooseOtherUnits(page: Page): Promise<void> {
  await page.evaluate(() => {
    const key = 'oxwright.settings.1'
    // Safe: whatever is kept there is an object written by the page, or nothing.
    const kept = JSON.parse(localStorage.getItem(key) ?? '{}') as Record<string, object>
    const units = { ...kept['units'], pressure: 'mmHg', gasPressure: 'psi', gasVolume: 'ft³' }
    localStorage.setItem(key, JSON.stringify({ ...kept, units }))
  })
  await page.reload()
}

async function speak(page: Page, language: string): Promise<void> {
  await page.evaluate((tag) => {
    const key = 'oxwright.settings.1'
    // Safe: whatever is kept there is an object written by the page, or nothing.
    const kept = JSON.parse(localStorage.getItem(key) ?? '{}') as object
    localStorage.setItem(key, JSON.stringify({ ...kept, language: tag }))
  }, language)
  await page.reload()
}

/** What answers say in a unit of gas that was not chosen. Water volumes name a cylinder, a litre for each minute is a flow. */
function otherUnitsIn(text: string): readonly string[] {
  const withoutSizes = text.replaceAll(/\d L at \d/g, '')
  return [...withoutSizes.matchAll(/.{0,30}\d\s(?:bar|kPa|Torr|L)(?![\w/]).{0,30}/g)].map(
    ([found]) => found,
  )
}

/** The shelf that the Shelf page would have kept; null: back to the one of the program. */
async function keepShelf(page: Page, shelf: object | null): Promise<void> {
  await page.evaluate(
    (text) => {
      if (text === null) localStorage.removeItem('oxwright.shelf.1')
      else localStorage.setItem('oxwright.shelf.1', text)
    },
    shelf === null ? null : JSON.stringify(shelf),
  )
  await page.reload()
}

interface KeptTransfer {
  readonly texts: object
  readonly rows: readonly object[]
}

/** The way as the planner keeps it in this browser. */
async function keptTransfer(page: Page): Promise<KeptTransfer> {
  const kept = await page.evaluate(() => localStorage.getItem('oxwright.gas.transfer.1') ?? '')
  // Safe: the planner wrote it.
  return JSON.parse(kept) as KeptTransfer
}

async function keepTransfer(page: Page, kept: KeptTransfer): Promise<void> {
  await page.evaluate(
    (text) => localStorage.setItem('oxwright.gas.transfer.1', text),
    JSON.stringify(kept),
  )
  await page.reload()
}

/** Above 10 L/min these go to 12 and no further; the demo shelf's go to 15. */
const REGULATORS_TO_12 = DEMO_SHELF.sources.map((row): ShelfSource => {
  return row.kind === 'cylinder-regulator'
    ? { ...row, usedStepsLpm: [10, 12], meter: { ...row.meter, stepsLpm: [8, 10, 12] } }
    : row
})

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
      /From Bedside, an invented example: nasal cannula/,
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
  })

  it('print the answers without the forms', async () => {
    await page.emulateMedia({ media: 'print' })
    expect(await card.locator('.gas-times').isVisible()).toBe(true)
    expect(await card.locator('.gas-form').isVisible()).toBe(false)
    await page.emulateMedia({ media: 'screen' })
  })

  it('say nothing in a unit that was not chosen', async () => {
    await chooseOtherUnits(page)
    await expectSoon(async () => await card.locator('.eyebrow').innerText()).toMatch(/psi read at/)
    await openFolds(page)
    expect(await card.locator('.gas-result').innerText()).toMatch(/760 mmHg/)
    expect(otherUnitsIn(await card.locator('.gas-result').innerText())).toEqual([])
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

  it('lets a leg have another set-up, says from when, and takes it back', async () => {
    await openFolds(page)
    await leg(2).getByLabel('set-up from here on').selectOption('simple-mask')
    await page.locator('.refused').waitFor()
    await fieldIn(leg(2), 'flow').fill('6')
    // 10 min at 10, 20 min at 6, and 30 min of reserve at the highest draw of any leg.
    await expectSoon(answer).toMatch(/520 L wanted/)
    expect(await answer()).toMatch(/From 13:50, leg 1, corridor: non-rebreather mask.* 10 L\/min/)
    expect(await answer()).toMatch(/From 14:00, leg 3, ambulance: simple mask.* 6 L\/min/)
    await leg(2).getByLabel('set-up from here on').selectOption('ventilator-high-flow')
    await fieldIn(leg(2), 'flow').first().fill('40')
    await fieldIn(leg(2), 'fraction set').fill('0.6')
    await expectSoon(answer).toMatch(/bias flow is not given: it really draws more/)
    await fieldIn(leg(2), 'bias flow').fill('5')
    await expectSoon(answer).not.toMatch(/bias flow is not given/)
    await leg(2).getByLabel('set-up from here on').selectOption('same')
    await fieldIn(leg(2), 'flow from here on').fill('15')
    await expectSoon(answer).toMatch(/850 L wanted/)
    await fieldIn(leg(2), 'flow from here on').fill('')
    await expectSoon(answer).toMatch(/600 L wanted/)
    expect(await answer()).not.toMatch(/From 14:00/)
  })

  it('tells the worst case at the next step of flow', async () => {
    expect(await answer()).toMatch(/If the flow must rise to the next step\s+900 L wanted/)
  })

  it('is worked out with the shelf in use, and says which', async () => {
    await keepShelf(page, { ...DEMO_SHELF, hospital: 'Saltmarsh', sources: REGULATORS_TO_12 })
    await expectSoon(answer).toMatch(/If the flow must rise to the next step\s+720 L wanted/)
    expect(await page.locator('.gas-form').innerText()).toMatch(/shelf in use: Saltmarsh/)
    await keepShelf(page, null)
    await expectSoon(answer).toMatch(/If the flow must rise to the next step\s+900 L wanted/)
    expect(await page.locator('.gas-form').innerText()).toMatch(/demo shelf, which is invented/)
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
      .getByRole('button', { name: /Set-up, delay/ })
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
      .getByRole('button', { name: /^Set-up, delay/ })
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
    const tube = page.locator('fieldset', { hasText: 'At the scanner' })
    await expectSoon(async () => await tube.innerText()).toMatch(
      /Tube counted: from the chain: 2\.1 m of tube, 4\.8 mm wide; a typed length wins/,
    )
    expect(await rest()).toMatch(/Counted with the 2\.1 m of tube of the chain/)
    await fieldIn(tube, 'length of the tube').fill('12')
    await expectSoon(async () => await tube.innerText()).toMatch(
      /Tube counted: typed: 12(\.0)? m; from the chain: 4\.8 mm wide/,
    )
    expect(await rest()).not.toMatch(/of the chain, /)
    await fieldIn(tube, 'its inner width').fill('3')
    await expectSoon(async () => await tube.innerText()).toMatch(
      /typed: 12(\.0)? m, 3(\.0)? mm wide/,
    )
    await page.getByLabel('regulator', { exact: true }).selectOption('conditional')
    await page.getByLabel('flowmeter', { exact: true }).selectOption('conditional')
    await expectSoon(rest).toMatch(/are MR conditional/)
    await leg(1).getByLabel('kind of leg').selectOption('lift')
  })

  it('refuses, keeps what is typed over a reload, and answers when mended', async () => {
    await fieldIn(page, 'flow').first().fill('ten')
    expect(await refusalFaults(page)).toEqual([])
    await page.reload()
    await page.locator('.refused').waitFor()
    expect(await fieldIn(page, 'flow').first().inputValue()).toBe('ten')
    await fieldIn(page, 'flow').first().fill('10')
    await expectSoon(answer).toMatch(/600 L wanted/)
  })

  it('prints twelve legs in words, not as a picture too small to read, and leaves no page empty', async () => {
    const before = await keptTransfer(page)
    await keepTransfer(page, {
      ...before,
      rows: [
        ...before.rows,
        ...Array.from({ length: 9 }, () => ({ kind: 'corridor', minutes: '7' })),
      ],
    })
    await expectSoon(answer).toMatch(/the way takes 1 h 33 min/)
    // Two lifts have a button each, told apart by their leg.
    await leg(3).getByLabel('kind of leg').selectOption('lift')
    for (const name of ['Lift (leg 2) stands still', 'Lift (leg 4) stands still'])
      await page.getByRole('button', { name }).waitFor()
    await leg(3).getByLabel('kind of leg').selectOption('corridor')
    await page.getByRole('button', { name: 'Lift stands still' }).waitFor()
    const pdf = await page.pdf({ format: 'A4' })
    expect(pdf.toString('latin1').match(/\/Type \/Page\b/g)?.length).toBeLessThanOrEqual(2)
    await page.emulateMedia({ media: 'print' })
    expect(await smallestPt(page)).toBeGreaterThanOrEqual(8)
    expect(await page.locator('.gas-timeline svg').isVisible()).toBe(false)
    expect(await page.locator('.gas-timeline .gas-print-only').innerText()).toMatch(
      /Corridor: 15:16 to 15:23/,
    )
    await page.emulateMedia({ media: null })
    await keepTransfer(page, before)
    await expectSoon(answer).toMatch(/600 L wanted/)
  })

  it('prints one sheet with boxes to tick', async () => {
    const pdf = await page.pdf({ format: 'A4' })
    expect(pdf.toString('latin1').match(/\/Type \/Page\b/g)).toHaveLength(1)
    await page.emulateMedia({ media: 'print' })
    const sheet = await page.locator('main').innerText()
    expect(sheet).toMatch(/Transfer sheet/)
    expect(await page.locator('.gas-boxes li').first().innerText()).toMatch(/^Valve open/)
    expect(sheet).toMatch(/Cylinder secured/)
    expect(sheet).toMatch(/If the gas fails/)
    expect(await page.locator('.gas-form').isVisible()).toBe(false)
    await page.emulateMedia({ media: 'screen' })
  })

  it('has no accessibility fault at any size and look, folds open', async () => {
    await openFolds(page)
    expect(await faultsEverywhere(page)).toEqual([])
  })

  it('says nothing in a unit that was not chosen, on the sheet neither, when oxygen runs out', async () => {
    await page.setViewportSize({ width: 1440, height: 900 })
    await fieldIn(leg(2), 'time').fill('600')
    await chooseOtherUnits(page)
    await expectSoon(answer).toMatch(/Oxygen runs out on the way: [\d ]+(\.\d)? ft³ are missing/)
    await openFolds(page)
    for (const media of ['screen', 'print'] as const) {
      await page.emulateMedia({ media })
      const said = await page.locator('.gas-card .gas-sheet').allInnerTexts()
      expect(said.join('\n')).toMatch(/psi/)
      expect(otherUnitsIn(said.join('\n'))).toEqual([])
    }
    await page.emulateMedia({ media: 'screen' })
  })

  it('raised no error in the console', () => {
    expect(errors).toEqual([])
  })
})

/** A part that answers by itself when opened: its answer, reload, accessibility, console. */
interface PartTest {
  readonly page: () => Page
  readonly errors: () => readonly string[]
}

/** The parts that answer by themselves, one after the other on one page, as a person goes through them. */
let parts: Awaited<ReturnType<typeof openGas>> | undefined

function opened(path: string): PartTest {
  let page: Page
  let errors: readonly string[]
  beforeAll(async () => {
    if (parts === undefined) parts = await openGas(app, path)
    else await parts.page.locator(`.gas-top a[href$="${path}"]`).click()
    ;({ page, errors } = parts)
    await page.locator('.answer').first().waitFor()
  })
  return { page: () => page, errors: () => errors }
}

const textOf = async (page: Page): Promise<string> =>
  await page.locator('.gas-card').first().innerText()

describe('ward demand', () => {
  const { page, errors } = opened('/gas/ward')

  it('sets the draw of a demo ward beside the formula and the simulation, and says it is invented', async () => {
    const text = await textOf(page())
    expect(text).toMatch(/Heron/)
    expect(text).toMatch(/L\/min\s+drawn now/i)
    expect(text).toMatch(/simulated: 95 of 100 times at most/i)
    expect(text).toMatch(/from memory/)
    expect(await page().locator('.badge-line').innerText()).toMatch(/invented/)
  })

  it('shows what one more high-flow patient does, and takes it back', async () => {
    await page().getByRole('button', { name: 'One more high-flow patient' }).click()
    await expectSoon(async () => await textOf(page())).toMatch(
      /One more at 60 L\/min of pure oxygen draws/,
    )
    expect(await textOf(page())).toMatch(/above what the branch carries/)
    await page().getByRole('button', { name: 'Without that patient again' }).click()
    await expectSoon(async () => await textOf(page())).not.toMatch(/One more at 60/)
  })

  it('reads a ward file, keeps it over a reload, and says what is wrong with another', async () => {
    const ward = {
      version: 1,
      hospital: 'Test',
      ward: 'Two beds',
      supply: { area: 'ward' },
      beds: [
        { bed: '1', setUp: { family: 'nasal-cannula', sourceKind: 'wall-flowmeter', flowLpm: 2 } },
        { bed: '2', setUp: { family: 'simple-mask', sourceKind: 'wall-flowmeter', flowLpm: 6 } },
      ],
    }
    const read = async (text: string): Promise<void> =>
      await page()
        .locator('input[type="file"]')
        .setInputFiles({
          name: 'own.json',
          mimeType: 'application/json',
          buffer: Buffer.from(text),
        })
    await page().getByRole('button', { name: 'Read a ward file' }).click()
    await read(JSON.stringify(ward))
    await expectSoon(async () => await textOf(page())).toMatch(/8 L\/min\s+drawn now/i)
    await page().reload()
    await expectSoon(async () => await textOf(page())).toMatch(/Two beds/)
    await page().getByRole('button', { name: 'Read a ward file' }).click()
    await read(JSON.stringify({ ...ward, beds: [{ bed: '1', setUp: { family: 'hood' } }] }))
    expect(await refusalFaults(page())).toEqual([])
    expect(await page().locator('.problems').innerText()).toMatch(/hood/)
    await page().getByLabel('Ward', { exact: true }).selectOption('heron')
    await expectSoon(async () => await textOf(page())).toMatch(/Heron/)
  })

  it('says what each number rests on, and what a bed’s draw is made up of', async () => {
    await openFolds(page())
    const text = await textOf(page())
    expect(text).toMatch(/Design flow: 10 L\/min for the first of 18 beds, 1\.5 L\/min for each/)
    expect(text).toMatch(/of 1180 m as the file says/)
    expect(text).toMatch(/Bed 15, nasal cannula.*: 9 L\/min \(set-up: 3 .*; jet nebuliser: 6 /)
  })

  it('has no accessibility fault, folds open, and no error in the console', async () => {
    expect(await faultsEverywhere(page())).toEqual([])
    expect(errors()).toEqual([])
  })
})

describe('lights-out drill', () => {
  const { page, errors } = opened('/gas/drill')
  const rank: Readonly<Record<string, number>> = {
    fails: 0,
    unknown: 1,
    minutes: 2,
    'other-gas': 3,
    works: 4,
  }

  it.each(['mains', 'pipeline-oxygen', 'medical-air', 'blender'])(
    'puts the most endangered bed first when this fails: %s',
    async (failure) => {
      await page().getByLabel('What fails').selectOption(failure)
      await page().locator('.gas-drill-row').first().waitFor()
      const states = await page()
        .locator('.gas-drill-row')
        .evaluateAll((rows) => rows.map((row) => row.getAttribute('data-state') ?? ''))
      const ranks = states.map((state) => rank[state] ?? -1)
      expect(ranks.length).toBeGreaterThan(5)
      expect(ranks).toEqual(ranks.toSorted((a, b) => a - b))
    },
  )

  it('says what to do at every bed, and that the saturation is not computed yet', async () => {
    await page().getByLabel('What fails').selectOption('pipeline-oxygen')
    const rows = await page().locator('.gas-drill-row').count()
    expect(await page().locator('.gas-drill-row .gas-boxes').count()).toBe(rows)
    expect(await textOf(page())).toMatch(/minute by minute is not computed yet/)
  })

  it.each(['heron', 'plover', 'wren'])(
    'prints on one page, in letters of 8 pt at least: %s',
    async (ward) => {
      await page().getByLabel('Ward', { exact: true }).selectOption(ward)
      await page().locator('.plan[data-stale="false"]').waitFor()
      const pdf = await page().pdf({ format: 'A4' })
      expect(pdf.toString('latin1').match(/\/Type \/Page\b/g)).toHaveLength(1)
      await page().emulateMedia({ media: 'print' })
      expect(await smallestPt(page())).toBeGreaterThanOrEqual(8)
      await page().emulateMedia({ media: null })
    },
  )

  it('prints on one page in German too, whose words are longer', async () => {
    await page().getByLabel('Ward', { exact: true }).selectOption('heron')
    await page().getByLabel('What fails').selectOption('pipeline-oxygen')
    await speak(page(), 'de')
    await page()
      .getByRole('heading', { name: /^Heron: was bei diesem Ausfall/ })
      .waitFor()
    const pdf = await page().pdf({ format: 'A4' })
    expect(pdf.toString('latin1').match(/\/Type \/Page\b/g)).toHaveLength(1)
    await speak(page(), 'en')
    await page().getByLabel('Ward', { exact: true }).selectOption('wren')
  })

  it('keeps what was chosen over a reload', async () => {
    await page().getByLabel('What fails').selectOption('mains')
    await page().reload()
    await page().locator('.gas-drill-row').first().waitFor()
    expect(await page().getByLabel('What fails').inputValue()).toBe('mains')
    expect(await page().getByLabel('Ward', { exact: true }).inputValue()).toBe('wren')
  })

  it('has no accessibility fault and no error in the console', async () => {
    expect(await faultsEverywhere(page())).toEqual([])
    expect(errors()).toEqual([])
  })
})

describe('room', () => {
  const { page, errors } = opened('/gas/room')

  it('stays below the limit with 6 air changes and reaches it with 1, as the worked figures', async () => {
    expect(await textOf(page())).toMatch(/stays below the limit/)
    expect(await page().locator('.badge-line').innerText()).toMatch(/invented example/i)
    expect(await textOf(page())).toMatch(/settles at\s+22\.5 %/i)
    await fieldIn(page(), 'air changes').fill('1')
    await expectSoon(async () => await textOf(page())).toMatch(/reaches the limit after\s+\d+ min/i)
    expect(await textOf(page())).toMatch(/settles at\s+29\.4 %/i)
    expect(await textOf(page())).toMatch(/air changes that hold the limit\s+3\.6 an hour/i)
    expect(await textOf(page())).toMatch(/108 m³ an hour/)
  })

  it('says that it is a mean, and counts a mask laid aside', async () => {
    expect(await textOf(page())).toMatch(/half a metre/)
    await fieldIn(page(), 'a mask laid aside').fill('15')
    await expectSoon(async () => await textOf(page())).toMatch(/laid aside with 15 L\/min running/)
    expect(await textOf(page())).toMatch(/oxygen set free\s+75 L\/min/i)
  })

  it('refuses, keeps what is typed over a reload', async () => {
    await fieldIn(page(), 'volume').fill('0')
    expect(await refusalFaults(page())).toEqual([])
    await page().reload()
    await page().locator('.refused').waitFor()
    expect(await fieldIn(page(), 'volume').inputValue()).toBe('0')
    await page().getByLabel('example of a place').selectOption('bay')
    expect(await fieldIn(page(), 'volume').inputValue()).toBe('180')
  })

  it('has no accessibility fault, folds open, and no error in the console', async () => {
    await openFolds(page())
    expect(await faultsEverywhere(page())).toEqual([])
    expect(errors()).toEqual([])
  })
})

describe('home sources', () => {
  const { page, errors } = opened('/gas/home')

  it('carries the purity of a concentrator through to what is inhaled', async () => {
    expect(await page().locator('.badge-line').innerText()).toMatch(/invented example/i)
    await openFolds(page())
    expect(await textOf(page())).toMatch(/Purity not given: 93 % taken/)
    await fieldIn(page(), 'purity at this flow').fill('93')
    await fieldIn(page(), 'fraction inhaled with pure oxygen').fill('0.32')
    // 0.2095 + (0.32 - 0.2095)(0.93 - 0.2095)/0.7905 = 0.310
    await expectSoon(async () => await textOf(page())).toMatch(/0\.31 in place of 0\.32/)
    expect(await page().locator('.badge-line').count()).toBe(0)
    await fieldIn(page(), 'flow set').fill('6')
    await expectSoon(async () => await textOf(page())).toMatch(/Purity not known/)
    await fieldIn(page(), 'flow set').fill('99')
    expect(await refusalFaults(page())).toEqual([])
    await fieldIn(page(), 'flow set').fill('3')
  })

  it('never converts a pulse setting', async () => {
    await page().getByLabel('what is set').selectOption('pulse')
    await expectSoon(async () => await textOf(page())).toMatch(/it is not converted/)
    await page().getByLabel('what is set').selectOption('flow')
  })

  it('says how long liquid oxygen lasts with and without what evaporates', async () => {
    const liquid = page().locator('.gas-card').nth(1)
    expect(await liquid.innerText()).toMatch(/lasts at most\s+8 days 22 h/i)
    await fieldIn(liquid, 'evaporates').fill('1')
    // 30 L × 857.3 over 2 L/min is 214 h; with 857.3 L a day lost beside it 165 h.
    await expectSoon(async () => await liquid.innerText()).toMatch(/6 days 21 h to 8 days 22 h/)
    expect(await liquid.innerText()).toMatch(/holds without use\s+30 days/i)
  })

  it('says nothing in a unit that was not chosen', async () => {
    await chooseOtherUnits(page())
    const liquid = page().locator('.gas-card').nth(1).locator('.gas-result')
    // 30 L × 857.3 are 25 719 L, 908.3 cubic feet.
    await expectSoon(async () => await liquid.innerText()).toMatch(/908\.\d ft³/)
    expect(otherUnitsIn(await liquid.innerText())).toEqual([])
  })

  it('has no accessibility fault, folds open, and no error in the console', async () => {
    await openFolds(page())
    expect(await faultsEverywhere(page())).toEqual([])
    expect(errors()).toEqual([])
  })
})

describe('stock', () => {
  const { page, errors } = opened('/gas/stock')

  it('says use a day, days left and when to order, the scarcest first', async () => {
    // 36 used in 7 days, 42 on hand; then 400.
    expect(await textOf(page())).toMatch(/use a day\s+5\.1/i)
    expect(await textOf(page())).toMatch(/mean of the 7 days given/)
    expect(await textOf(page())).toMatch(/days left\s+8\.2 days/i)
    await fieldIn(page(), 'on hand').first().fill('400')
    await expectSoon(async () => await textOf(page())).toMatch(/days left\s+77\.8 days/i)
    const names = await page().locator('.answer h2').allInnerTexts()
    expect(names[0]).toMatch(/non-rebreather/i)
  })

  it('refuses what is no list of whole numbers and keeps it', async () => {
    await fieldIn(page(), 'used on each').first().fill('3 4 x')
    expect(await refusalFaults(page())).toEqual([])
    await page().reload()
    await page().locator('.refused').waitFor()
    expect(await fieldIn(page(), 'used on each').first().inputValue()).toBe('3 4 x')
  })

  it('has no accessibility fault and no error in the console', async () => {
    expect(await faultsEverywhere(page())).toEqual([])
    expect(errors()).toEqual([])
  })
})
