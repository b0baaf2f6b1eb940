// Which ends mate, and by what they hold, as rows of data. A pair without a row does not mate. Leaves out millimetres: ends are matched by kind.
import { CONNECTORS, ENDS } from '../kit/ends.ts'
import type { EndId } from '../kit/ends.ts'
import type { Provenance } from '../units/provenance.ts'

export const HOLDS = [
  'quick-connector',
  'yoke',
  'thread',
  'push-fit',
  'taper',
  'clip',
  'worn',
] as const
export type Hold = (typeof HOLDS)[number]

export interface MatingRule extends Provenance {
  readonly male: EndId
  readonly female: EndId
  readonly heldBy: Hold
}

const SCOPE = { known: 'secondary' } as const
const TRADE = { known: 'common-practice' } as const

/** Gas-specific ends mate with their own gas alone; both tapers of a coaxial end count. */
export const MATING_RULES: readonly MatingRule[] = [
  { male: 'probe-oxygen', female: 'terminal-oxygen', heldBy: 'quick-connector', ...SCOPE },
  { male: 'probe-air', female: 'terminal-air', heldBy: 'quick-connector', ...SCOPE },
  { male: 'probe-other', female: 'terminal-other', heldBy: 'quick-connector', ...SCOPE },
  { male: 'yoke-oxygen', female: 'cylinder-pin-oxygen', heldBy: 'yoke', ...SCOPE },
  { male: 'yoke-air', female: 'cylinder-pin-air', heldBy: 'yoke', ...SCOPE },
  { male: 'cylinder-screw-oxygen', female: 'nut-oxygen', heldBy: 'thread', ...TRADE },
  { male: 'thread-oxygen-male', female: 'thread-oxygen-female', heldBy: 'thread', ...SCOPE },
  { male: 'thread-air-male', female: 'thread-air-female', heldBy: 'thread', ...TRADE },
  { male: 'nipple', female: 'funnel', heldBy: 'push-fit', ...SCOPE },
  { male: 'conical-8-male', female: 'conical-8-female', heldBy: 'taper', ...SCOPE },
  { male: 'conical-15-male', female: 'conical-15-female', heldBy: 'taper', ...SCOPE },
  { male: 'conical-22-male', female: 'conical-22-female', heldBy: 'taper', ...SCOPE },
  { male: 'conical-22-male-15-female', female: 'conical-22-female', heldBy: 'taper', ...SCOPE },
  { male: 'conical-15-male', female: 'conical-22-male-15-female', heldBy: 'taper', ...SCOPE },
  { male: 'air-ports', female: 'collar', heldBy: 'clip', ...TRADE },
  { male: 'prongs', female: 'nose', heldBy: 'worn', ...TRADE },
  { male: 'face', female: 'mask-rim', heldBy: 'worn', ...TRADE },
  { male: 'neck', female: 'neck-rim', heldBy: 'worn', ...TRADE },
  { male: 'head', female: 'box', heldBy: 'worn', ...TRADE },
]

/** The rule by which two ends mate, whichever way round; undefined where they do not. */
export function matingRule(one: EndId, other: EndId): MatingRule | undefined {
  return MATING_RULES.find(
    ({ male, female }) => (male === one && female === other) || (male === other && female === one),
  )
}

/** A line into the body that is not for gas: oxygen tubing can be forced on it and must never be. */
export function isNeverForGas(end: EndId): boolean {
  return CONNECTORS[ENDS[end].connector].neverForGas === true
}

/** Joints that leak or come off most easily: pushed on, not screwed or latched. */
export const LEAK_POINTS: readonly Hold[] = ['push-fit', 'taper', 'clip']
