// `npm run build` and `prepack`: builds every part of dist/ that is stale.
import { build } from './lib/build.mjs'
import { ensurePackages } from './lib/install.mjs'

try {
  await ensurePackages()
  await build()
} catch (error) {
  console.error(error.message)
  process.exitCode = 1
}
