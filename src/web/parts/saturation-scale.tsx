// The saturation forecast on its scale, against the goal. Its numbers stand beside as text.
import type { Band } from '../../planning/plan-types.ts'
import { scaleOf, ticksOf } from '../../pictures/scale.ts'
import { numberText } from '../../words/number-text.ts'

export interface SaturationScaleProps {
  readonly band: Band
  readonly goal: { readonly low: number; readonly high: number } | null
}

const HIGHEST = 100
const TICK = 5
/** The scale reaches at least this far down. */
const SHOWN_FROM = 80

export function SaturationScale({ band, goal }: SaturationScaleProps) {
  const lowest = Math.min(SHOWN_FROM, band.low, goal?.low ?? SHOWN_FROM)
  const axis = { min: Math.floor(lowest / TICK) * TICK, max: HIGHEST }
  const tick = axis.max - axis.min > 8 * TICK ? 2 * TICK : TICK
  const percent = scaleOf({ ...axis, fromPx: 0, toPx: 100 })
  const at = (value: number): string =>
    `${percent.at(Math.min(axis.max, Math.max(axis.min, value)))}%`
  const span = (range: { readonly low: number; readonly high: number }) => ({
    left: at(range.low),
    right: `calc(100% - ${at(range.high)})`,
  })
  return (
    <div className="scale" aria-hidden="true">
      <div className="scale-strip">
        {goal === null ? null : <div className="strip-goal" style={span(goal)} />}
        <div className="scale-line" />
        <div className="strip-band" style={span(band)} />
        <div className="strip-middle" style={{ left: at(band.median) }} />
      </div>
      <div className="scale-ticks">
        {ticksOf(axis, tick).map((one) => (
          <span key={one} style={{ left: at(one) }}>
            {numberText(one, 1)}
          </span>
        ))}
      </div>
    </div>
  )
}
