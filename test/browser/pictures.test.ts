// The same data drawn in Node, as the command line does, and in a browser: the same bytes. Leaves out how pictures look.
import { join } from 'node:path'
import { build } from 'esbuild'
import { describe, expect, it } from 'vitest'
import { launchChromium } from '../support/browser.ts'
import { drawnPictures } from '../support/drawn-pictures.ts'
import { ROOT } from '../support/files.ts'

describe('pictures', () => {
  it('are the same bytes in browser and command line', async () => {
    const entry = `import { drawnPictures } from './drawn-pictures.ts'; globalThis.drawn = drawnPictures()`
    const bundled = await build({
      stdin: { contents: entry, resolveDir: join(ROOT, 'test/support'), loader: 'ts' },
      bundle: true,
      write: false,
      platform: 'browser',
      format: 'iife',
    })
    const browser = await launchChromium()
    try {
      const page = await browser.newPage()
      await page.addScriptTag({ content: bundled.outputFiles[0]?.text ?? '' })
      const drawn = drawnPictures()
      expect(drawn.every((svg) => svg.startsWith('<svg') && svg.length > 2000)).toBe(true)
      expect(await page.evaluate('globalThis.drawn')).toEqual(drawn)
    } finally {
      await browser.close()
    }
  })
})
