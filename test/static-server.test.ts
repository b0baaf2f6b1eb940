// The server of `npm start`: right types, safe headers, no way out of its folder.
import { readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { fileFor, serve } from '../scripts/lib/static-server.mjs'
import { ROOT } from './support/files.ts'
import { plant, withPlanted } from './support/planted.ts'

const FOLDER = join(ROOT, 'docs')
let served: Awaited<ReturnType<typeof serve>>

beforeAll(async () => {
  served = await serve({ folder: FOLDER, host: '127.0.0.1', port: 0 })
})

afterAll(() => {
  served.server.close()
  served.server.closeAllConnections()
})

describe('static server', () => {
  it('sends a file as it is, under a strict policy', async () => {
    const response = await fetch(`${served.url}decisions/0002-toolchain.md`)
    expect(response.status).toBe(200)
    expect(await response.text()).toBe(
      readFileSync(join(FOLDER, 'decisions/0002-toolchain.md'), 'utf8'),
    )
    expect(response.headers.get('content-security-policy')).toContain("script-src 'self'")
    expect(response.headers.get('x-content-type-options')).toBe('nosniff')
  })

  it('lets no one keep the service worker, and everyone keep what is named by its content', async () => {
    const planted = { 'sw.js': '', 'index.html': '', 'assets/a-1.js': '' }
    const root = plant(planted)
    const { server, url } = await serve({ folder: root, host: '127.0.0.1', port: 0 })
    try {
      const kept = async (path: string): Promise<string | null> =>
        (await fetch(url + path)).headers.get('cache-control')
      expect(await kept('sw.js')).toBe('no-store')
      expect(await kept('')).toBe('no-cache')
      expect(await kept('assets/a-1.js')).toContain('immutable')
      const worker = await fetch(`${url}sw.js`)
      expect(worker.headers.get('content-type')).toContain('text/javascript')
      expect(worker.headers.get('content-security-policy')).toContain("worker-src 'self'")
    } finally {
      server.closeAllConnections()
      server.close()
      rmSync(root, { recursive: true })
    }
  })

  it('refuses other methods and unknown files', async () => {
    const posted = await fetch(served.url, { method: 'POST' })
    expect(posted.status).toBe(405)
    const unknown = await fetch(`${served.url}gone.js`)
    expect(unknown.status).toBe(404)
  })

  it.each(['/../package.json', '/%2e%2e/package.json', '/..%2fpackage.json', '/%00', '/%E0%A4%A'])(
    'finds no file outside its folder for %s',
    (requestPath) => {
      expect(fileFor({ folder: FOLDER, requestPath })).toBeUndefined()
    },
  )

  it('takes a folder for its index page', () => {
    withPlanted({ 'web/index.html': 'page' }, (root) => {
      expect(fileFor({ folder: join(root, 'web'), requestPath: '/' })).toBe(
        join(root, 'web', 'index.html'),
      )
    })
  })
})
