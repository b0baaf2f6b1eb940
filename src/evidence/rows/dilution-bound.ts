// Instantaneous dilution of a fixed stream by a half-sine breath, no store: entrainment valves and nasal high flow through the engine.
import { breathWithPeak } from '../breathings.ts'
import type { EvidenceRow } from '../evidence-row.ts'
import { across, limitRow, ONE_CONDITION } from './build.ts'

const VALVE_PEAKS = [30, 40, 50, 60, 80, 100, 120]
/** Setting, total flow L/min, fractions by peak inspiratory flow. */
const VALVES: readonly (readonly [number, number, readonly number[]])[] = [
  [0.24, 51, [0.24, 0.24, 0.24, 0.238, 0.234, 0.23, 0.227]],
  [0.28, 44, [0.28, 0.28, 0.277, 0.271, 0.259, 0.251, 0.245]],
  [0.35, 45, [0.35, 0.35, 0.346, 0.333, 0.311, 0.294, 0.282]],
  [0.4, 41, [0.4, 0.4, 0.386, 0.367, 0.337, 0.316, 0.301]],
  [0.6, 30, [0.6, 0.553, 0.505, 0.466, 0.412, 0.376, 0.351]],
]

const VALVE_ROWS = VALVES.flatMap(([setO2Fraction, flowLpm, values]) =>
  across(VALVE_PEAKS, values).map(([peakLpm, publishedValue]) =>
    limitRow({
      id: `valve-dilution-${setO2Fraction}-${peakLpm}`,
      source: null,
      condition: 'total flow as printed, half-sine inspiration, mask without volume',
      engine: {
        family: 'entrainment-mask',
        flowLpm,
        setO2Fraction,
        breath: breathWithPeak(peakLpm),
        gas: ONE_CONDITION,
        limit: { kind: 'no-pocket' },
      },
      publishedValue,
      known: 'derived',
    }),
  ),
)

const STREAM_PEAKS = [20, 30, 40, 60, 80, 100]
/** Flow L/min, fractions for pure oxygen, fractions for 0.6; blanks where the stream covers the peak and the table prints none. */
const STREAMS: readonly (readonly [
  number,
  readonly (number | null)[],
  readonly (number | null)[],
])[] = [
  [10, [0.73, 0.58, 0.5, 0.41, 0.36, 0.33], [0.47, 0.39, 0.35, 0.31, 0.28, 0.27]],
  [20, [1, 0.85, 0.73, 0.58, 0.5, 0.44], [0.6, 0.53, 0.47, 0.39, 0.35, 0.32]],
  [30, [1, 1, 0.91, 0.73, 0.62, 0.55], [null, 0.6, 0.55, 0.47, 0.41, 0.38]],
  [40, [1, 1, 1, 0.85, 0.73, 0.64], [null, null, 0.6, 0.53, 0.47, 0.42]],
  [50, [1, 1, 1, 0.95, 0.83, 0.73], [null, null, null, 0.57, 0.51, 0.47]],
  [60, [1, 1, 1, 1, 0.91, 0.81], [null, null, null, 0.6, 0.55, 0.5]],
]

const STREAM_ROWS = STREAMS.flatMap(([flowLpm, pure, sixty]) => [
  ...streamRows(flowLpm, 1, pure),
  ...streamRows(flowLpm, 0.6, sixty),
])

function streamRows(
  flowLpm: number,
  setO2Fraction: number,
  values: readonly (number | null)[],
): readonly EvidenceRow[] {
  return across(STREAM_PEAKS, values).map(([peakLpm, publishedValue]) =>
    limitRow({
      id: `high-flow-dilution-${setO2Fraction}-${flowLpm}-${peakLpm}`,
      source: null,
      condition: 'constant stream, half-sine inspiration, no store in the nose',
      engine: {
        family: 'nasal-high-flow',
        flowLpm,
        setO2Fraction,
        breath: breathWithPeak(peakLpm),
        gas: ONE_CONDITION,
        limit: { kind: 'no-pocket' },
      },
      publishedValue,
      known: 'derived',
    }),
  )
}

export const DILUTION_ROWS: readonly EvidenceRow[] = [...VALVE_ROWS, ...STREAM_ROWS]
