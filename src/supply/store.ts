// A store of cylinders as it stands: water volume, pressure, count, place, and whether a row may go near a scanner. Leaves out choosing from it.

/** As printed on the thing itself. `unknown` is treated as not allowed near the scanner. */
export const MR_SAFETIES = ['conditional', 'not', 'unknown'] as const
export type MrSafety = (typeof MR_SAFETIES)[number]

export interface StoreRow {
  readonly id: string
  readonly label: string
  readonly waterVolumeL: number
  /** Gauge pressure of each when full, or as read. */
  readonly gaugeKpa: number
  readonly count: number
  readonly mrSafety: MrSafety
  readonly place: string
  /** Below this its regulator no longer keeps the flow; 0 where absent. */
  readonly regulatorMinimumGaugeKpa?: number
  /** Highest flow of its regulator; not judged where absent. */
  readonly flowLpmMax?: number
  /** The ward's own marking, read by nobody. */
  readonly marking?: string
}
