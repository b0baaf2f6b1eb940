// The ends by which parts join, as data: which connector, which half of it, its standard, and how its size is known. Leaves out what mates with what (joining/mating-rules.ts).
import type { Known } from '../units/provenance.ts'

/** Gases a wall outlet can carry. Only oxygen and air have a use here; the others are known so that they can be refused. */
export const GAS_IDS = [
  'oxygen',
  'air',
  'nitrous-oxide',
  'nitrous-oxide-oxygen',
  'carbon-dioxide',
  'vacuum',
] as const
export type GasId = (typeof GAS_IDS)[number]

export const CONNECTOR_IDS = [
  'terminal-oxygen',
  'terminal-air',
  'terminal-other',
  'cylinder-pin-oxygen',
  'cylinder-screw-oxygen',
  'cylinder-pin-air',
  'thread-oxygen',
  'thread-air',
  'small-bore',
  'conical-8',
  'conical-15',
  'conical-22',
  'conical-22-15',
  'collar',
  'worn-nose',
  'worn-face',
  'worn-neck',
  'worn-head',
  'luer',
  'needle-free',
  'enteral',
  'neuraxial',
  'limb-cuff',
  'tube-cuff',
] as const
export type ConnectorId = (typeof CONNECTOR_IDS)[number]

/** One end of a part. `male` goes into `female`. */
export const END_IDS = [
  'terminal-oxygen',
  'probe-oxygen',
  'terminal-air',
  'probe-air',
  'terminal-other',
  'probe-other',
  'cylinder-pin-oxygen',
  'yoke-oxygen',
  'cylinder-screw-oxygen',
  'nut-oxygen',
  'cylinder-pin-air',
  'yoke-air',
  'thread-oxygen-male',
  'thread-oxygen-female',
  'thread-air-male',
  'thread-air-female',
  'nipple',
  'funnel',
  'conical-8-male',
  'conical-8-female',
  'conical-15-male',
  'conical-15-female',
  'conical-22-male',
  'conical-22-female',
  'conical-22-male-15-female',
  'collar',
  'air-ports',
  'prongs',
  'nose',
  'mask-rim',
  'face',
  'neck-rim',
  'neck',
  'box',
  'head',
  'luer-male',
  'luer-female',
  'needle-free-port',
  'enteral-male',
  'enteral-female',
  'neuraxial-female',
  'limb-cuff-line',
  'tube-cuff-line',
] as const
export type EndId = (typeof END_IDS)[number]

export interface EndKind {
  readonly connector: ConnectorId
  readonly side: 'male' | 'female'
}

/** A connector: the standard that describes it, how we know that it does, and its nominal size where there is one number for it. */
export interface ConnectorKind {
  readonly standard: string | null
  readonly known: Known
  readonly sizeMm?: number
  /** How the size is known; a size from memory judges nothing. */
  readonly sizeKnown?: Known
  /** Belongs to another line into the body; oxygen tubing must never meet it. */
  readonly neverForGas?: true
}

export const CONNECTORS: Readonly<Record<ConnectorId, ConnectorKind>> = {
  'terminal-oxygen': { standard: 'ISO 9170-1', known: 'secondary' },
  'terminal-air': { standard: 'ISO 9170-1', known: 'secondary' },
  'terminal-other': { standard: 'ISO 9170-1', known: 'secondary' },
  'cylinder-pin-oxygen': { standard: 'ISO 407', known: 'memory' },
  'cylinder-screw-oxygen': { standard: 'ISO 5145', known: 'memory' },
  'cylinder-pin-air': { standard: 'ISO 407', known: 'memory' },
  'thread-oxygen': {
    standard: 'CGA V-5 (1240)',
    known: 'secondary',
    sizeMm: 14.3,
    sizeKnown: 'memory',
  },
  'thread-air': {
    standard: 'CGA V-5 (1160)',
    known: 'memory',
    sizeMm: 19.1,
    sizeKnown: 'memory',
  },
  'small-bore': { standard: 'ISO 17256', known: 'secondary', sizeMm: 6, sizeKnown: 'memory' },
  'conical-8': { standard: 'ISO 5356-1', known: 'secondary', sizeMm: 8.5, sizeKnown: 'secondary' },
  'conical-15': { standard: 'ISO 5356-1', known: 'secondary', sizeMm: 15, sizeKnown: 'secondary' },
  'conical-22': { standard: 'ISO 5356-1', known: 'secondary', sizeMm: 22, sizeKnown: 'secondary' },
  'conical-22-15': {
    standard: 'ISO 5356-1',
    known: 'secondary',
    sizeMm: 22,
    sizeKnown: 'secondary',
  },
  collar: { standard: null, known: 'common-practice' },
  'worn-nose': { standard: null, known: 'common-practice' },
  'worn-face': { standard: null, known: 'common-practice' },
  'worn-neck': { standard: null, known: 'common-practice' },
  'worn-head': { standard: null, known: 'common-practice' },
  luer: { standard: 'ISO 80369-7', known: 'memory', neverForGas: true },
  'needle-free': { standard: 'ISO 80369-7', known: 'memory', neverForGas: true },
  enteral: { standard: 'ISO 80369-3', known: 'memory', neverForGas: true },
  neuraxial: { standard: 'ISO 80369-6', known: 'memory', neverForGas: true },
  'limb-cuff': { standard: 'ISO 80369-5', known: 'memory', neverForGas: true },
  'tube-cuff': { standard: 'ISO 80369-7', known: 'memory', neverForGas: true },
}

function male(connector: ConnectorId): EndKind {
  return { connector, side: 'male' }
}

function female(connector: ConnectorId): EndKind {
  return { connector, side: 'female' }
}

export const ENDS: Readonly<Record<EndId, EndKind>> = {
  'terminal-oxygen': female('terminal-oxygen'),
  'probe-oxygen': male('terminal-oxygen'),
  'terminal-air': female('terminal-air'),
  'probe-air': male('terminal-air'),
  'terminal-other': female('terminal-other'),
  'probe-other': male('terminal-other'),
  'cylinder-pin-oxygen': female('cylinder-pin-oxygen'),
  'yoke-oxygen': male('cylinder-pin-oxygen'),
  'cylinder-screw-oxygen': male('cylinder-screw-oxygen'),
  'nut-oxygen': female('cylinder-screw-oxygen'),
  'cylinder-pin-air': female('cylinder-pin-air'),
  'yoke-air': male('cylinder-pin-air'),
  'thread-oxygen-male': male('thread-oxygen'),
  'thread-oxygen-female': female('thread-oxygen'),
  'thread-air-male': male('thread-air'),
  'thread-air-female': female('thread-air'),
  nipple: male('small-bore'),
  funnel: female('small-bore'),
  'conical-8-male': male('conical-8'),
  'conical-8-female': female('conical-8'),
  'conical-15-male': male('conical-15'),
  'conical-15-female': female('conical-15'),
  'conical-22-male': male('conical-22'),
  'conical-22-female': female('conical-22'),
  'conical-22-male-15-female': male('conical-22-15'),
  collar: female('collar'),
  'air-ports': male('collar'),
  prongs: male('worn-nose'),
  nose: female('worn-nose'),
  'mask-rim': female('worn-face'),
  face: male('worn-face'),
  'neck-rim': female('worn-neck'),
  neck: male('worn-neck'),
  box: female('worn-head'),
  head: male('worn-head'),
  'luer-male': male('luer'),
  'luer-female': female('luer'),
  'needle-free-port': female('needle-free'),
  'enteral-male': male('enteral'),
  'enteral-female': female('enteral'),
  'neuraxial-female': female('neuraxial'),
  'limb-cuff-line': male('limb-cuff'),
  'tube-cuff-line': female('tube-cuff'),
}
