// Draws the icons of the installed page from src/web/public/icon.svg: `node scripts/icons.mjs`. The PNG files are committed.
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { chromium } from 'playwright-core'
import { findChromium } from './lib/install.mjs'
import { ROOT } from './lib/paths.mjs'

const FOLDER = join(ROOT, 'src', 'web', 'public')
/** A maskable icon may be cut to a circle of four fifths of its width, so its ground fills the square and its figure is smaller. */
const ICONS = [
  { name: 'icon-180.png', sizePx: 180 },
  { name: 'icon-192.png', sizePx: 192 },
  { name: 'icon-512.png', sizePx: 512 },
  { name: 'icon-maskable-512.png', sizePx: 512, figureShare: 0.7 },
]
const GROUND = '#0b5c8a'

const svg = readFileSync(join(FOLDER, 'icon.svg'), 'utf8')
const browser = await chromium.launch({
  executablePath: findChromium(),
  args: ['--no-sandbox', '--disable-gpu'],
})
try {
  const page = await browser.newPage()
  for (const { name, sizePx, figureShare } of ICONS) {
    await page.setViewportSize({ width: sizePx, height: sizePx })
    const figurePx = Math.round(sizePx * (figureShare ?? 1))
    const ground = figureShare === undefined ? 'transparent' : GROUND
    await page.setContent(
      `<body style="margin:0;display:grid;place-items:center;height:100vh;background:${ground}"><img width="${figurePx}" height="${figurePx}" src="data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')}"></body>`,
    )
    const png = await page.screenshot({ omitBackground: true })
    writeFileSync(join(FOLDER, name), png)
    console.log(`${name} ${png.length} bytes`)
  }
} finally {
  await browser.close()
}
