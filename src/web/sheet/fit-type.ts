// Finds the largest type in which a sheet stands on one page of A4 and of Letter, by laying it out. Leaves out the layout.

/** Height between the margins of the shorter paper, less a hair for rounding, mm. */
const HEIGHT_MM = 262
const PX_PER_MM = 96 / 25.4
/** Below the first nobody could read it at a bed; above the last it looks like a poster. Points. */
const TYPE_PT = { smallest: 6, largest: 10.5, step: 0.1 } as const

/** Sets `--sheet-type` on the copy, which is laid out at the width of the narrower paper. */
export function fitType(copy: HTMLElement): void {
  const fits = (pt: number): boolean => {
    copy.style.setProperty('--sheet-type', `${pt.toFixed(1)}pt`)
    return copy.getBoundingClientRect().height <= HEIGHT_MM * PX_PER_MM
  }
  let low = 0
  let high = Math.round((TYPE_PT.largest - TYPE_PT.smallest) / TYPE_PT.step)
  const typeAt = (steps: number): number => TYPE_PT.smallest + steps * TYPE_PT.step
  while (low < high) {
    const middle = Math.ceil((low + high) / 2)
    if (fits(typeAt(middle))) low = middle
    else high = middle - 1
  }
  fits(typeAt(low))
}
