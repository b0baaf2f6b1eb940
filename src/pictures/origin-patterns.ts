// How each origin of inhaled gas is painted: a pattern of its own on a colour-blind-safe ground, so that it reads without colour. Leaves out shapes.
import type { Origins } from '../delivery/origins.ts'
import { element } from './svg.ts'
import type { Attributes, Paints } from './svg.ts'

type Origin = keyof Origins

const TILE_PX = 8
const GROUND_OPACITY = 0.35

/** One <defs> with the four patterns, named by the picture's id. */
export function originPatterns(id: string, paints: Paints): string {
  const patterns = (Object.keys(MARKS) as readonly Origin[]).map((origin) =>
    element(
      'pattern',
      {
        id: `${id}-${origin}`,
        width: TILE_PX,
        height: TILE_PX,
        patternUnits: 'userSpaceOnUse',
      },
      [
        element('rect', {
          width: TILE_PX,
          height: TILE_PX,
          fill: paints[origin],
          ...(origin === 'device' ? {} : { 'fill-opacity': String(GROUND_OPACITY) }),
        }),
        ...MARKS[origin].map(([name, attributes]) =>
          element(name, { ...attributes, [name === 'circle' ? 'fill' : 'stroke']: paints[origin] }),
        ),
      ],
    ),
  )
  return element('defs', {}, patterns)
}

export function originFill(id: string, origin: Origin): string {
  return `url(#${id}-${origin})`
}

type Mark = readonly [name: 'path' | 'circle', attributes: Attributes]

/** Device: plain. Stored: slanted lines. Room: dots. Expired: crossed lines. */
const MARKS: Readonly<Record<Origin, readonly Mark[]>> = {
  device: [],
  stored: [['path', { d: 'M-2 2L2 -2M0 8L8 0M6 10L10 6', 'stroke-width': '2', fill: 'none' }]],
  room: [
    ['circle', { cx: 2, cy: 2, r: 1.4 }],
    ['circle', { cx: 6, cy: 6, r: 1.4 }],
  ],
  expired: [['path', { d: 'M0 0L8 8M0 8L8 0', 'stroke-width': '1.4', fill: 'none' }]],
}
