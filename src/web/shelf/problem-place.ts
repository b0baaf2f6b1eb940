// Beside which field of a row a problem is said. Leaves out the problems, which the shelf reader finds.
/** Whether a problem of the row belongs to a field: its own path, an entry of its list, or the parent that is missing whole. */
export function isAbout(problemPath: string, path: string): boolean {
  if (problemPath === path || problemPath.replaceAll(/\[\d+\]/g, '[]') === path) return true
  if (problemPath.startsWith(`${path}[`)) return true
  return FIRST_OF[problemPath.replaceAll(/\[\d+\]/g, '[]')] === path.replaceAll(/\[\d+\]/g, '[]')
}

/** Where what is missing as a whole is said. */
const FIRST_OF: Readonly<Record<string, string>> = {
  meter: 'meter.kind',
  sizes: 'sizes[].size',
  'sizes[]': 'sizes[].size',
  'settings[]': 'settings[].o2Fraction',
  'modes[]': 'modes[].label',
  tubing: 'tubing.lengthM',
  inletEnds: 'inletEnds[]',
  'meter.flush': 'meter.flush.lowLpm',
}
