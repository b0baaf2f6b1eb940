// Takes the pictures of docs/screenshots: every place at three sizes, light and dark. `--place NAME` takes one, `--full` whole pages, `--case ID` another example, `--out FOLDER` elsewhere.
import { mkdirSync, statSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { chromium } from 'playwright-core'
import { build } from './lib/build.mjs'
import { findChromium } from './lib/install.mjs'
import { ROOT, WEB_DIST } from './lib/paths.mjs'
import { serve } from './lib/static-server.mjs'

const SIZES = [
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
  { width: 1440, height: 900 },
]
const LOOKS = ['light', 'dark']
const ARGS = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run']
const WAIT_MS = 240_000

/** Each place by its name, its address, and what must be there before it is taken. A new place is one line here. */
const PLACES = [
  { name: 'bedside', path: '', ready: '.result[aria-busy="false"] .picture svg' },
  { name: 'sheet', path: '', ready: '.sheet-paper', open: openSheet },
  { name: 'gas', path: 'gas', ready: 'main h1' },
  { name: 'chain', path: 'chain', ready: '.chain .picture svg' },
  { name: 'shelf', path: 'shelf', ready: '.shelf article' },
  { name: 'evidence', path: 'evidence', ready: '.evidence .picture svg' },
  { name: 'settings', path: 'settings', ready: '.settings h1' },
]

/** The sheet of the set-up in sight, by its button: its address holds the case and the time. */
async function openSheet(page) {
  await page.locator('.result[aria-busy="false"] .plan').waitFor({ timeout: WAIT_MS })
  await page.getByRole('button', { name: 'Bedside sheet' }).click()
}

const { values } = parseArgs({
  options: {
    full: { type: 'boolean', default: false },
    case: { type: 'string' },
    place: { type: 'string' },
    out: { type: 'string', default: join(ROOT, 'docs', 'screenshots') },
  },
})

await build(['web'])
const executablePath = findChromium()
if (executablePath === undefined) {
  console.error('chromium is missing: apt-get install chromium')
  process.exit(1)
}
mkdirSync(values.out, { recursive: true })
const { server, url } = await serve({ folder: WEB_DIST, host: '127.0.0.1', port: 0 })
const browser = await chromium.launch({ executablePath, args: ARGS })
try {
  const context = await browser.newContext({ viewport: SIZES[0], serviceWorkers: 'block' })
  const wanted = PLACES.filter(({ name }) => values.place === undefined || values.place === name)
  for (const place of wanted) {
    // The answer is computed once a page; sizes and looks are changed on the same page.
    const page = await context.newPage()
    await page.goto(url + place.path)
    if (place.open !== undefined) await place.open(page)
    if (place.name === 'bedside' && values.case !== undefined)
      await page.locator('#field-example').selectOption(values.case)
    for (const size of SIZES) {
      await page.setViewportSize(size)
      for (const look of LOOKS) {
        await page.locator(`.header .look-choice input[value="${look}"]`).check({ force: true })
        await page.locator(place.ready).first().waitFor({ timeout: WAIT_MS })
        await page.evaluate(() => window.scrollTo(0, 0))
        const path = join(values.out, `${place.name}-${size.width}x${size.height}-${look}.png`)
        await page.screenshot({ path, fullPage: values.full })
        console.log(`${path} ${Math.round(statSync(path).size / 1024)} kB`)
      }
    }
    await page.close()
  }
} finally {
  await browser.close()
  server.closeAllConnections()
  server.close()
}
