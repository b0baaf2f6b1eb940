// `npm start`: installs, builds what changed, serves the page on this machine and says where. Uses Node alone until things are installed.
import { build } from './lib/build.mjs'
import { ensurePackages, requireNode } from './lib/install.mjs'
import { WEB_DIST } from './lib/paths.mjs'
import { serve } from './lib/static-server.mjs'

const DEFAULT_PORT = 4173
const PORTS_TRIED = 20
const HOST = process.env.HOST ?? '127.0.0.1'

function wantedPorts() {
  const given = process.env.PORT
  if (given === undefined || given === '') {
    return Array.from({ length: PORTS_TRIED }, (_, step) => DEFAULT_PORT + step)
  }
  const port = Number(given)
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    throw new Error(`PORT ${given} is no port: a whole number from 0 to 65535 is`)
  }
  return [port]
}

async function listen(ports) {
  for (const port of ports) {
    try {
      return await serve({ folder: WEB_DIST, host: HOST, port })
    } catch (error) {
      if (error.code !== 'EADDRINUSE') throw error
      console.log(`port ${port} is in use`)
    }
  }
  throw new Error(`no free port among ${ports.join(', ')}: set PORT to another`)
}

try {
  requireNode()
  const ports = wantedPorts()
  await ensurePackages()
  await build(['web'])
  const { server, url } = await listen(ports)
  console.log(`Oxwright is served at ${url} (Ctrl-C ends it)`)
  console.log(`ready: ${url}`)
  for (const signal of ['SIGINT', 'SIGTERM']) {
    process.once(signal, () => {
      server.close(() => process.exit(0))
      server.closeAllConnections()
    })
  }
} catch (error) {
  console.error(error.message)
  process.exitCode = 1
}
