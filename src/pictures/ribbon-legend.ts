// The legend of a breath ribbon: each origin with its pattern and share, each line with its value, in as many columns as fit. Leaves out the panels.
import {
  effectiveLabelText,
  openingLabelText,
  ORIGIN_ORDER,
  originText,
  printedText,
  streamLabelText,
} from '../words/breath-text.ts'
import { UNCHECKED_NOTE } from '../words/caution-texts.ts'
import { textWidthPx } from './measure.ts'
import { originFill } from './origin-patterns.ts'
import { EFFECTIVE_LINE, PRINTED_LINE, STREAM_LINE, streamFits } from './ribbon-panels.ts'
import type { PanelsOptions } from './ribbon-panels.ts'
import { element, text } from './svg.ts'
import type { Paint } from './svg.ts'

const ROW_PX = 24
const SWATCH_PX = 26
const SWATCH_HEIGHT_PX = 14
const GAP_PX = 10
const TEXT_PX = 14
const FOOT_PX = 8

type LegendOptions = Omit<PanelsOptions, 'paints' | 'id'>

type Entry =
  | { readonly kind: 'note'; readonly label: string }
  | {
      readonly kind: 'area'
      readonly origin: (typeof ORIGIN_ORDER)[number]
      readonly label: string
    }
  | { readonly kind: 'line'; readonly paint: Paint; readonly dash: string; readonly label: string }

export function legendHeightPx(options: LegendOptions): number {
  const entries = entriesOf(options)
  return Math.ceil(entries.length / columnsFor(entries, options.widthPx)) * ROW_PX + FOOT_PX
}

export function legend(options: PanelsOptions): string {
  const { widthPx, paints } = options
  const entries = entriesOf(options)
  const columns = columnsFor(entries, widthPx)
  const rows = Math.ceil(entries.length / columns)
  return entries
    .map((entry, i) => {
      const x = Math.floor(i / rows) * (widthPx / columns)
      const y = (i % rows) * ROW_PX
      return [
        swatch(entry, { x, y }, options),
        text(entry.label, {
          x: entry.kind === 'note' ? x : x + SWATCH_PX + GAP_PX,
          y: y + SWATCH_HEIGHT_PX - 1,
          'font-size': String(TEXT_PX),
          fill: paints.ink,
        }),
      ].join('')
    })
    .join('')
}

function entriesOf(options: LegendOptions): readonly Entry[] {
  const { ribbon, shape, axes } = options
  const { breath, printedO2Fraction: printed } = ribbon
  return [
    ...ORIGIN_ORDER.map((origin) => ({
      kind: 'area' as const,
      origin,
      label: originText(origin, breath.origins[origin]),
    })),
    { kind: 'line', paint: 'accent', dash: '', label: openingLabelText() },
    {
      kind: 'line',
      ...EFFECTIVE_LINE,
      label: effectiveLabelText(breath.effectiveO2Fraction, ribbon.isChecked),
    },
    ...(printed === null
      ? []
      : [{ kind: 'line' as const, ...PRINTED_LINE, label: printedText(printed) }]),
    ...(streamFits(axes, shape.streamLpm)
      ? [{ kind: 'line' as const, ...STREAM_LINE, label: streamLabelText(shape.streamLpm) }]
      : []),
    ...uncheckedEntry(ribbon.isChecked),
  ]
}

/** Stands by itself, in words only. */
function uncheckedEntry(isChecked: boolean): readonly Entry[] {
  return isChecked ? [] : [{ kind: 'note', label: UNCHECKED_NOTE }]
}

function columnsFor(entries: readonly Entry[], widthPx: number): number {
  const widest = Math.max(...entries.map(({ label }) => textWidthPx(label, TEXT_PX)))
  return Math.max(1, Math.min(3, Math.floor(widthPx / (SWATCH_PX + GAP_PX + widest + GAP_PX))))
}

function swatch(
  entry: Entry,
  at: { readonly x: number; readonly y: number },
  options: PanelsOptions,
): string {
  const { paints, id } = options
  const middle = at.y + SWATCH_HEIGHT_PX / 2
  if (entry.kind === 'note') return ''
  if (entry.kind === 'area') {
    return element('rect', {
      x: at.x,
      y: at.y,
      width: SWATCH_PX,
      height: SWATCH_HEIGHT_PX,
      fill: originFill(id, entry.origin),
      stroke: paints.muted,
      'stroke-width': '0.5',
    })
  }
  return element('line', {
    x1: at.x,
    x2: at.x + SWATCH_PX,
    y1: middle,
    y2: middle,
    stroke: paints[entry.paint],
    'stroke-width': '2.5',
    ...(entry.dash === '' ? {} : { 'stroke-dasharray': entry.dash }),
  })
}
