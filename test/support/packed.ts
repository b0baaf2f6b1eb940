// Packs the package as a registry would and unpacks it into an empty folder. Leaves out publishing.
import { execFileSync } from 'node:child_process'
import { mkdtempSync, readdirSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from '../../scripts/lib/build.mjs'
import { ROOT } from './files.ts'

/** An unpacked package: `folder` holds nothing else, `host` is the empty folder around it. */
export interface UnpackedPackage {
  readonly host: string
  readonly folder: string
  /** Paths inside the package. */
  readonly files: readonly string[]
}

/** Builds what is stale, runs `npm pack` and unpacks the result. The caller removes `host`. */
export async function unpackPackage(): Promise<UnpackedPackage> {
  await build()
  const host = mkdtempSync(join(tmpdir(), 'oxwright-packed-'))
  const packArguments = ['pack', '--ignore-scripts', '--silent', '--pack-destination', host]
  const tarball = execFileSync('npm', packArguments, { cwd: ROOT, encoding: 'utf8' }).trim()
  execFileSync('tar', ['-xzf', tarball], { cwd: host })
  const folder = join(host, 'package')
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  return { host, folder, files }
}
