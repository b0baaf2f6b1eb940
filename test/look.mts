import { openApp } from './support/browser.ts'
import { openBedside } from './browser/bedside-steps.ts'
const app = await openApp()
const { page } = await openBedside(app)
for (const [n, w, h] of [
  ['t', 1024, 768],
  ['p', 390, 844],
  ['z', 512, 384],
] as const) {
  await page.setViewportSize({ width: w, height: h })
  await page.screenshot({ path: `/tmp/ox/l-${n}.png`, fullPage: n === 'z' })
}
const o = await page.locator('p, dt, dd, label, h2, h3, button, .field-help').evaluateAll((all) => {
  const shown = all
    .filter((one) => one.closest('svg, .unseen, .skip') === null && one.getClientRects().length > 0)
    .filter(
      (one) => one.textContent?.trim() !== '' && getComputedStyle(one).visibility === 'visible',
    )
    .map((one) => ({ one, box: one.getBoundingClientRect() }))
    .filter(({ box }) => box.width > 0 && box.height > 0)
  const found: string[] = []
  shown.forEach((a, i) => {
    for (const b of shown.slice(i + 1)) {
      if (a.one.contains(b.one) || b.one.contains(a.one)) continue
      const across = Math.min(a.box.right, b.box.right) - Math.max(a.box.left, b.box.left)
      const down = Math.min(a.box.bottom, b.box.bottom) - Math.max(a.box.top, b.box.top)
      if (across > 2 && down > 2) found.push(`${a.one.textContent} / ${b.one.textContent}`)
    }
  })
  return found
})
console.log(o)
await app.close()
