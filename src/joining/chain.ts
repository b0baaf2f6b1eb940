// A chain of parts from gas outlets to the patient: the parts in order, what is set on them, and the joins. Leaves out whether it is right (check-chain.ts).
import { assert } from '../errors.ts'
import type { ModeKind } from '../kit/shelf.ts'
import type { HumidifierKind } from '../kit/shelf.ts'
import type { SourceKind } from '../kit/source-row.ts'
import type { Part } from './part.ts'

export interface PartSetting {
  /** What is set on a meter, blender or ventilator, L/min. */
  readonly flowLpm?: number
  /** Blended fraction, dial of a jet, setting of a valve. */
  readonly o2Fraction?: number
  /** The meter opened beyond its scale; flowLpm is then the most that may come. */
  readonly isFlush?: boolean
  /** Ventilators. */
  readonly mode?: ModeKind
}

export interface PlacedPart {
  readonly part: Part
  readonly setting: PartSetting
}

/** The outlet of one part on an inlet, or on an open end, of another; numbers count within the chain's parts and the part's ends. */
export interface Join {
  readonly from: number
  readonly to: number
  readonly at: 'inlet' | 'open-end'
  readonly index: number
}

/** Parts in order from the gas outlets to the patient: whatever feeds a part stands before it, its first inlet's branch first. */
export interface Chain {
  readonly parts: readonly PlacedPart[]
  readonly joins: readonly Join[]
}

export function placed(chain: Chain, index: number): PlacedPart {
  const found = chain.parts[index]
  assert(found !== undefined, 'part of chain')
  return found
}

/** The part that feeds an inlet, by its place in the chain; undefined where nothing is joined. */
export function feederOf(chain: Chain, to: number, index: number): number | undefined {
  return chain.joins.find((join) => join.to === to && join.at === 'inlet' && join.index === index)
    ?.from
}

/** Places of the parts of one line, from its gas outlet to the patient, along the first inlets; the line that carries the source's own stream. */
export function mainLine(chain: Chain): readonly number[] {
  const line: number[] = []
  let at: number | undefined = chain.parts.length - 1
  while (at !== undefined && at >= 0 && !line.includes(at)) {
    line.unshift(at)
    at = feederOf(chain, at, 0)
  }
  return line
}

const SOURCE_KINDS: readonly string[] = [
  'wall-flowmeter',
  'two-flowmeters',
  'cylinder-regulator',
  'concentrator',
  'jet-nebuliser',
  'blender',
  'ventilator',
] satisfies readonly SourceKind[]

/** The part that sets what reaches the patient: the last source on the main line, so a jet nebuliser rather than its meter. */
export function sourceOf(chain: Chain): PlacedPart | undefined {
  return mainLine(chain)
    .map((at) => placed(chain, at))
    .findLast(({ part }) => SOURCE_KINDS.includes(part.kind))
}

const HUMIDIFIERS: readonly string[] = [
  'bubble',
  'collar',
  'heated',
  'pass-over',
  'exchanger',
] satisfies readonly HumidifierKind[]

/** Humidifiers anywhere in the chain, collar and exchanger included. */
export function humidifiersOf(chain: Chain): readonly PlacedPart[] {
  return chain.parts.filter(({ part }) => HUMIDIFIERS.includes(part.kind))
}
