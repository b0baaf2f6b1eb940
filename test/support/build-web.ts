// Builds the page before the browser tests when its sources changed since the last build.
import { build } from '../../scripts/lib/build.mjs'

export async function setup(): Promise<void> {
  await build(['web'])
}
