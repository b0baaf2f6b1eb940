// Signs of the chain picture: one for each way a joint holds, and the broken one. Leaves out where they stand.
import type { Hold } from '../joining/mating-rules.ts'
import { element } from './svg.ts'
import type { Paints } from './svg.ts'

/** Height of a joint between two boxes, and half the width of its sign. */
export const JOINT_PX = 40
const HALF_PX = 12

/** Gas runs downward through the sign at x, from y to y + JOINT_PX. */
export function jointSign(options: {
  readonly hold: Hold | null
  readonly x: number
  readonly y: number
  readonly paints: Paints
}): string {
  const { hold, x, y, paints } = options
  if (hold === null) return brokenSign(x, y, paints)
  const stroke = { stroke: paints.ink, 'stroke-width': 2, fill: 'none' } as const
  return element('g', stroke, [
    element('path', { d: `M${x} ${y}V${y + 10}M${x} ${y + 30}V${y + JOINT_PX}` }),
    element('path', { d: SIGN_PATHS[hold](x, y + 10) }),
  ])
}

/** Outlines, twenty high, told apart without colour: latch, yoke, thread, barbs, cone, clip, brim. */
const SIGN_PATHS: Readonly<Record<Hold, (x: number, y: number) => string>> = {
  'quick-connector': (x, y) =>
    `M${x - HALF_PX} ${y}H${x + HALF_PX}V${y + 20}H${x - HALF_PX}ZM${x - HALF_PX} ${y + 10}H${x + HALF_PX}`,
  yoke: (x, y) =>
    `M${x - HALF_PX} ${y + 20}V${y}H${x + HALF_PX}V${y + 20}M${x - 4} ${y + 14}a4 4 0 1 0 8 0a4 4 0 1 0 -8 0`,
  thread: (x, y) =>
    `M${x - 8} ${y}L${x + 8} ${y + 5}L${x - 8} ${y + 10}L${x + 8} ${y + 15}L${x - 8} ${y + 20}`,
  'push-fit': (x, y) =>
    `M${x - 4} ${y}L${x - 9} ${y + 6}H${x + 9}L${x + 4} ${y}M${x - 4} ${y + 8}L${x - 9} ${y + 14}H${x + 9}L${x + 4} ${y + 8}M${x} ${y + 14}V${y + 20}`,
  taper: (x, y) => `M${x - HALF_PX} ${y}H${x + HALF_PX}L${x + 6} ${y + 20}H${x - 6}Z`,
  clip: (x, y) =>
    `M${x - HALF_PX} ${y + 4}a12 8 0 1 0 24 0M${x - HALF_PX} ${y + 12}a12 8 0 1 0 24 0`,
  worn: (x, y) => `M${x - HALF_PX} ${y + 20}a12 20 0 0 1 24 0Z`,
}

/** Two ends that do not meet, and a cross between. */
function brokenSign(x: number, y: number, paints: Paints): string {
  const stroke = { stroke: paints.ink, 'stroke-width': 3, fill: 'none' } as const
  return element('g', stroke, [
    element('path', {
      d: `M${x} ${y}V${y + 8}M${x} ${y + 32}V${y + JOINT_PX}`,
      'stroke-dasharray': '3 3',
    }),
    element('path', {
      d: `M${x - 9} ${y + 11}L${x + 9} ${y + 29}M${x + 9} ${y + 11}L${x - 9} ${y + 29}`,
    }),
  ])
}
