// Takes the pictures of docs/screenshots: the page at three sizes, light and dark. `--full` takes whole pages, `--case ID` another example, `--out FOLDER` elsewhere.
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
const WAIT_MS = 120_000

const { values } = parseArgs({
  options: {
    full: { type: 'boolean', default: false },
    case: { type: 'string' },
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
  // The answer is computed once a page; sizes and looks are changed on the same page.
  const page = await browser.newPage({ viewport: SIZES[0] })
  await page.goto(url)
  if (values.case !== undefined) await page.locator('#field-example').selectOption(values.case)
  for (const size of SIZES) {
    await page.setViewportSize(size)
    for (const look of LOOKS) {
      await page.locator(`.look-choice input[value="${look}"]`).check({ force: true })
      await page.waitForSelector('.working[data-working="false"]', {
        timeout: WAIT_MS,
        state: 'attached',
      })
      await page.waitForSelector('.picture svg', { timeout: WAIT_MS })
      await page.evaluate(() => window.scrollTo(0, 0))
      const path = join(values.out, `bedside-${size.width}x${size.height}-${look}.png`)
      await page.screenshot({ path, fullPage: values.full })
      console.log(`${path} ${Math.round(statSync(path).size / 1024)} kB`)
    }
  }
} finally {
  await browser.close()
  server.closeAllConnections()
  server.close()
}
