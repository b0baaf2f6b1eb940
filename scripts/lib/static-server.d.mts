// Types of static-server.mjs for the tests.
import type { Server } from 'node:http'

export function serve(options: {
  readonly folder: string
  readonly host: string
  readonly port: number
}): Promise<{ readonly server: Server; readonly url: string }>
export function fileFor(options: {
  readonly folder: string
  readonly requestPath: string
}): string | undefined
