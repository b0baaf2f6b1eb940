// Opens the built page in Debian's chromium for the browser tests. Leaves out other browsers.
import { join } from 'node:path'
import axe from 'axe-core'
import { type Browser, type Page, chromium } from 'playwright-core'
// Plain Node scripts, which `npm test` and `npm start` share with the tests.
import { findChromium } from '../../scripts/lib/install.mjs'
import { serve } from '../../scripts/lib/static-server.mjs'
import { ROOT } from './files.ts'

const CHROMIUM_ARGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]
const AXE_TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice']

/** The served build and a browser; `close` ends both. */
export interface OpenedApp {
  readonly url: string
  readonly browser: Browser
  readonly close: () => Promise<void>
}

export async function launchChromium(): Promise<Browser> {
  const executablePath = findChromium()
  if (executablePath === undefined)
    throw new Error('chromium is missing: run npm test, which installs it')
  return await chromium.launch({ executablePath, args: CHROMIUM_ARGS })
}

/** Serves dist/web on a free port, with the same headers as `npm start`, and opens a browser. */
export async function openApp(): Promise<OpenedApp> {
  const { server, url } = await serve({
    folder: join(ROOT, 'dist', 'web'),
    host: '127.0.0.1',
    port: 0,
  })
  const browser = await launchChromium()
  const close = async (): Promise<void> => {
    await browser.close()
    server.closeAllConnections()
    await new Promise((resolve) => server.close(resolve))
  }
  return { url, browser, close }
}

/** Accessibility faults of the page as it stands, or of the parts of it that a selector names: rule, impact and the elements concerned. The page has no frames, so
 *  that axe runs in it directly: carrying what passed out of the page and in again took as long as judging it. */
export async function accessibilityFaults(page: Page, part = 'html'): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axe.source)
  const asked = { tags: AXE_TAGS, part }
  return await page.evaluate(async ({ tags, part: within }) => {
    // Put there by the line above.
    const judge = (globalThis as unknown as { readonly axe: typeof axe }).axe
    const { violations } = await judge.run(within, { runOnly: tags, resultTypes: ['violations'] })
    return violations.map(({ id, impact, nodes }) => {
      const targets = nodes.map((node) => node.target.join(' ')).join(', ')
      return `${id} (${impact ?? 'unrated'}): ${targets}`
    })
  }, asked)
}

/** Collects what must not happen on a page: script errors, console errors, policy violations, failed requests. */
export function watchForErrors(page: Page): readonly string[] {
  const errors: string[] = []
  page.on('pageerror', (error) => errors.push(`page error: ${error.message}`))
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(`console: ${message.text()}`)
  })
  page.on('requestfailed', (request) => {
    // A place left while its worker still loads something ends both: nothing failed.
    if (request.failure()?.errorText === 'net::ERR_ABORTED') return
    errors.push(`failed request: ${request.url()}`)
  })
  return errors
}
