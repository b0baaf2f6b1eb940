// Writes SVG text: elements, escaped text, finite numbers, paint names. Leaves out layout.
import { assert } from '../errors.ts'

export type Attributes = Readonly<Record<string, string | number>>

/** One element; children are SVG text already. */
export function element(
  name: string,
  attributes: Attributes = {},
  children: readonly string[] = [],
): string {
  const written = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${attributeText(value)}"`)
    .join('')
  return children.length === 0
    ? `<${name}${written}/>`
    : `<${name}${written}>${children.join('')}</${name}>`
}

export function text(content: string, attributes: Attributes): string {
  return element('text', attributes, [escaped(content)])
}

/** At most two decimals: a hundredth of a pixel. A number that is none is a bug. */
export function px(value: number): string {
  assert(Number.isFinite(value), 'pictures/number finite')
  const rounded = Math.round(value * 100) / 100
  return String(Object.is(rounded, -0) ? 0 : rounded)
}

export function escaped(content: string): string {
  return content
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
}

function attributeText(value: string | number): string {
  return typeof value === 'number' ? px(value) : escaped(value)
}

export interface Point {
  readonly x: number
  readonly y: number
}

export function linePath(points: readonly Point[]): string {
  return points.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${px(x)} ${px(y)}`).join('')
}

/** The area between two lines over the same x. */
export function areaPath(upper: readonly Point[], lower: readonly Point[]): string {
  return `${linePath([...upper, ...lower.toReversed()])}Z`
}

/** `page`: colours by CSS variable, so that the page's light or dark wins. `file`: plain colours on paper, for any viewer and print. */
export type PaintMode = 'page' | 'file'

/** Colour-blind-safe on paper; each origin has a pattern besides. */
const PAINTS = {
  ink: '#1b1b1b',
  muted: '#565b61',
  line: '#c3c8cd',
  paper: '#ffffff',
  accent: '#0b5c8a',
  band: '#dcebdf',
  device: '#0072b2',
  stored: '#009e73',
  room: '#e69f00',
  expired: '#cc79a7',
} as const

export type Paint = keyof typeof PAINTS
export type Paints = Readonly<Record<Paint, string>>

export function paintsFor(mode: PaintMode): Paints {
  const entries = Object.entries(PAINTS).map(([name, colour]) => [
    name,
    mode === 'file' ? colour : `var(--ox-${name}, ${colour})`,
  ])
  // Safe: the entries have exactly the keys of PAINTS.
  return Object.fromEntries(entries) as Paints
}

export const FONT = 'system-ui, sans-serif'

/** Paper around a picture in a file of its own. */
const FILE_EDGE_PX = 16

/** A whole picture with its name and text equivalent for those who do not see it. */
export function picture(options: {
  readonly widthPx: number
  readonly heightPx: number
  readonly title: string
  readonly description: string
  readonly id: string
  readonly mode: PaintMode
  readonly children: readonly string[]
}): string {
  const { widthPx, heightPx, id } = options
  const paints = paintsFor(options.mode)
  const edgePx = options.mode === 'file' ? FILE_EDGE_PX : 0
  const box = { width: widthPx + 2 * edgePx, height: heightPx + 2 * edgePx }
  const paper =
    options.mode === 'file'
      ? [element('rect', { x: -edgePx, y: -edgePx, ...box, fill: paints.paper })]
      : []
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      ...box,
      viewBox: [-edgePx, -edgePx, box.width, box.height].map(px).join(' '),
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
      'font-family': FONT,
      'font-size': '14',
      'font-variant-numeric': 'tabular-nums',
    },
    [
      element('title', { id: `${id}-title` }, [escaped(options.title)]),
      element('desc', { id: `${id}-desc` }, [escaped(options.description)]),
      ...paper,
      ...options.children,
    ],
  )
}
