import { openApp } from './support/browser.ts'
import { openBedside } from './browser/bedside-steps.ts'
const app = await openApp()
const { page } = await openBedside(app)
await page.setViewportSize({ width: 512, height: 384 })
console.log(
  await page
    .locator('.case > *')
    .evaluateAll((all) =>
      all.map((x) => [
        x.className,
        JSON.stringify(x.getBoundingClientRect()),
        getComputedStyle(x).gridArea,
      ]),
    ),
)
await page.setViewportSize({ width: 1024, height: 768 })
console.log(
  await page
    .locator('.page, .page > *, .case > *')
    .evaluateAll((all) =>
      all.map((x) => [
        x.className,
        JSON.stringify(x.getBoundingClientRect()),
        getComputedStyle(x).gridArea,
      ]),
    ),
)
await page.setViewportSize({ width: 512, height: 384 })
await page.screenshot({ path: '/tmp/ox/l-z.png' })
await app.close()
