// A small server for the built page: files of one folder, safe headers, one page for every path. Leaves out TLS and compression: it serves the own machine.
import { createReadStream, existsSync, statSync } from 'node:fs'
import { createServer } from 'node:http'
import { extname, join, normalize, sep } from 'node:path'

const MIME_TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.map': 'application/json; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.yaml': 'application/yaml; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
}

// Inline styles are allowed because pictures are inline SVG and the component library sets positions; scripts never are.
const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self' 'unsafe-inline'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ')

const SAFE_HEADERS = {
  'content-security-policy': CONTENT_SECURITY_POLICY,
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
}

/** The file a request path means inside `folder`, or undefined (also for paths that would leave it). */
export function fileFor({ folder, requestPath }) {
  let decoded
  try {
    decoded = decodeURIComponent(requestPath)
  } catch {
    return undefined
  }
  const file = normalize(join(folder, decoded.endsWith('/') ? `${decoded}index.html` : decoded))
  if (!file.startsWith(folder + sep) || decoded.includes('\0')) return undefined
  return existsSync(file) && statSync(file).isFile() ? file : undefined
}

/** The service worker is never kept: an old one would hide every newer version of the page. */
function cacheControl({ requestPath, hashed }) {
  if (requestPath === '/sw.js') return 'no-store'
  return hashed ? 'public, max-age=31536000, immutable' : 'no-cache'
}

function answer({ folder, request, response }) {
  const head = request.method === 'HEAD'
  if (request.method !== 'GET' && !head) {
    response.writeHead(405, { ...SAFE_HEADERS, allow: 'GET, HEAD' }).end()
    return
  }
  const requestPath = new URL(request.url ?? '/', 'http://localhost').pathname
  const asset = fileFor({ folder, requestPath })
  // A path without an extension is a place inside the page, which the page itself resolves.
  const file = asset ?? (extname(requestPath) === '' ? join(folder, 'index.html') : undefined)
  if (file === undefined || !existsSync(file)) {
    response
      .writeHead(404, { ...SAFE_HEADERS, 'content-type': 'text/plain; charset=utf-8' })
      .end('not found\n')
    return
  }
  const hashed = requestPath.startsWith('/assets/') && asset !== undefined
  response.writeHead(200, {
    ...SAFE_HEADERS,
    'content-type': MIME_TYPES[extname(file)] ?? 'application/octet-stream',
    'content-length': statSync(file).size,
    'cache-control': cacheControl({ requestPath, hashed }),
  })
  if (head) response.end()
  else
    createReadStream(file)
      .on('error', () => response.destroy())
      .pipe(response)
}

/** Listens and resolves to { server, url }; rejects with Node's error (EADDRINUSE …) when it cannot. Port 0 takes a free one. */
export function serve({ folder, host, port }) {
  const root = normalize(folder)
  const server = createServer((request, response) => answer({ folder: root, request, response }))
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, host, () => {
      const shownHost = host.includes(':') ? `[${host}]` : host
      resolve({ server, url: `http://${shownHost}:${server.address().port}/` })
    })
  })
}
