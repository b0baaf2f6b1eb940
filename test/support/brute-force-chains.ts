// Chains by brute force, to judge the solver: every subset of the parts, every way to match outlets with inlets, judged by rules written a second time. Leaves out speed.
import type { EndId } from '../../src/kit/ends.ts'
import { sizesFor } from '../../src/kit/sizes-for.ts'
import { MATING_RULES } from '../../src/joining/mating-rules.ts'
import type { Part } from '../../src/joining/part.ts'
import type { ChainPatient } from '../../src/joining/patient-part.ts'
import type { Wanted } from '../../src/joining/wanted.ts'

/** One piece that can be used once. */
export interface Piece {
  readonly part: Part
  readonly isAtHand: boolean
}

/** What feeds each inlet of a piece. */
interface Node {
  readonly piece: Piece
  readonly feeds: readonly Node[]
}

export interface BruteChain {
  /** Canonical: like inlets may be swapped. */
  readonly key: string
  readonly parts: ReadonlyMap<string, number>
  readonly missing: number
  readonly lengthMm: number
  readonly misplacedMm: number
  readonly count: number
}

export interface BruteQuestion {
  readonly pieces: readonly Piece[]
  readonly opening: EndId
  readonly wanted: Wanted
  readonly patient: ChainPatient
}

const MATES = new Set(
  MATING_RULES.flatMap(({ male, female }) => [`${male}+${female}`, `${female}+${male}`]),
)

/** Accepted chains with the fewest missing parts, those with a part to spare left out. */
export function bruteForce(question: BruteQuestion): readonly BruteChain[] {
  const found = new Map<string, BruteChain>()
  const { pieces } = question
  const subsets = 2 ** pieces.length
  for (let bits = 1; bits < subsets; bits += 1) {
    const chosen = pieces.filter((_, i) => Math.floor(bits / 2 ** i) % 2 === 1)
    if (!couldJoin(chosen)) continue
    for (const root of treesOf(chosen, question.opening)) {
      if (!isGood(root, question)) continue
      const chain = summary(root)
      if (!found.has(chain.key)) found.set(chain.key, chain)
    }
  }
  const all = [...found.values()]
  const fewest = Math.min(...all.map(({ missing }) => missing))
  const near = all.filter(({ missing }) => missing === fewest)
  return near.filter((chain) => !near.some((other) => isPartOf(other, chain)))
}

/** Each piece gives once; inlets of all pieces and the patient's one must come out even. */
function couldJoin(chosen: readonly Piece[]): boolean {
  const inlets = chosen.reduce((sum, { part }) => sum + part.inlets.length, 1)
  return inlets === chosen.length && chosen.every(({ part }) => part.outlet !== null)
}

function* treesOf(chosen: readonly Piece[], opening: EndId): Generator<Node> {
  for (const [root, rest] of subtrees(opening, chosen)) if (rest.length === 0) yield root
}

/** Every tree that gives into an end, with the pieces it leaves. */
function* subtrees(
  end: EndId,
  pieces: readonly Piece[],
): Generator<readonly [Node, readonly Piece[]]> {
  for (const [i, piece] of pieces.entries()) {
    if (!MATES.has(`${piece.part.outlet ?? ''}+${end}`)) continue
    const others = pieces.filter((_, k) => k !== i)
    for (const [feeds, rest] of feedings(piece.part.inlets, others)) yield [{ piece, feeds }, rest]
  }
}

function* feedings(
  inlets: readonly EndId[],
  pieces: readonly Piece[],
): Generator<readonly [readonly Node[], readonly Piece[]]> {
  const [first, ...more] = inlets
  if (first === undefined) {
    yield [[], pieces]
    return
  }
  for (const [one, rest] of subtrees(first, pieces))
    for (const [others, left] of feedings(more, rest)) yield [[one, ...others], left]
}

/** From the patient back: the parts passed on the way to each outlet. */
function pathsOf(node: Node): readonly (readonly Part[])[] {
  const { part } = node.piece
  if (node.feeds.length === 0) return [[part]]
  return node.feeds.flatMap((feed) => pathsOf(feed).map((path) => [part, ...path]))
}

const METERS = ['wall-flowmeter', 'two-flowmeters', 'cylinder-regulator', 'concentrator']
const SOURCES = [...METERS, 'jet-nebuliser', 'blender', 'ventilator', 'air-flowmeter']
const HUMIDIFIERS = ['bubble', 'heated', 'pass-over', 'exchanger', 'collar']
const NEVER_TAKEN = [
  'one-way-valve',
  'relief-valve',
  'reservoir',
  'cap',
  'cuffed-mask',
  'patient',
  'other-line',
]

function isGood(root: Node, question: BruteQuestion): boolean {
  const paths = pathsOf(root)
  return (
    paths.every((path) => isWantedPath(path, question) && isSoundPath(path, question)) &&
    countOf(root, (part) => part.id === question.wanted.sourceId) === 1 &&
    isWellSet(root, question)
  )
}

function countOf(node: Node, test: (part: Part) => boolean): number {
  return (
    Number(test(node.piece.part)) + node.feeds.reduce((sum, one) => sum + countOf(one, test), 0)
  )
}

/** Sources, humidifiers and interface on a path are those asked for, in their order. */
function isWantedPath(path: readonly Part[], { wanted }: BruteQuestion): boolean {
  if (path.some(({ kind }) => NEVER_TAKEN.includes(kind))) return false
  const interfaces = path.filter(({ kind }) => kind === 'interface').map(({ id }) => id)
  const asked = wanted.interfaceId === null ? [] : [`${wanted.interfaceId}/${wanted.size ?? ''}`]
  if (interfaces.join() !== asked.join()) return false
  const humidifiers = path.filter(({ kind }) => HUMIDIFIERS.includes(kind)).map(({ kind }) => kind)
  const moist = wanted.humidification === 'none' ? [] : [wanted.humidification]
  if (humidifiers.join() !== moist.join()) return false
  const sources = path.filter(({ kind }) => SOURCES.includes(kind))
  const [first, second, third] = sources
  if (first === undefined || first.id !== wanted.sourceId || third !== undefined) return false
  const order = [...asked, ...moist]
  const lastAsked = Math.max(
    -1,
    ...path.map((part, i) => (order.includes(part.id) || order.includes(part.kind) ? i : -1)),
  )
  if (path.indexOf(first) < lastAsked) return false
  if (first.kind === 'jet-nebuliser') return second !== undefined && METERS.includes(second.kind)
  return second === undefined
}

/** Gas, openings, order, moisture, size and reach of one path, patient first. */
function isSoundPath(path: readonly Part[], { wanted, patient, opening }: BruteQuestion): boolean {
  const kinds = path.map(({ kind }) => kind)
  const outlet = path.at(-1)
  if (outlet === undefined || outlet.gas === undefined) {
    if (outlet === undefined || !METERS.includes(outlet.kind)) return false
  } else if (!kinds.includes('blender') && !kinds.includes('ventilator') && outlet.gas !== 'oxygen')
    return false
  const tube = path.findIndex((part) => part.tube !== null && part.kind !== 'interface')
  const opens = path.flatMap((part, i) => (part.isOpen || part.openEnds.length > 0 ? [i] : []))
  if (opens.length === 0 || (tube >= 0 && opens.some((i) => i > tube))) return false
  if (lengthOf(path) < 1000) return false
  const mask = path.find(({ kind }) => kind === 'interface')
  const isReservoir = mask?.family?.includes('rebreather') === true
  const isValve = mask?.family?.includes('entrainment') === true
  if (kinds.includes('bubble') && (isReservoir || isValve)) return false
  const wet = ['bubble', 'heated', 'pass-over', 'jet-nebuliser']
  if (kinds.filter((kind) => wet.includes(kind)).length > 1) return false
  if (kinds.some((kind, i) => kind === 'filter' && kinds.slice(i).some((one) => wet.includes(one))))
    return false
  if (kinds.includes('exchanger') && kinds.some((kind) => wet.includes(kind))) return false
  const machine = path.find(({ kind }) => kind === 'ventilator')
  if (
    machine !== undefined &&
    machine.source?.hasOwnFilter !== 'yes' &&
    !kinds.slice(0, kinds.indexOf('ventilator')).includes('filter')
  )
    return false
  if (kinds.filter((kind) => kind === 'y-piece').length > 1) return false
  if (mask?.family === 'nasal-high-flow' && !kinds.includes('heated')) return false
  const isNeck = opening === 'neck' || opening === 'conical-15-male'
  if (isNeck && !kinds.some((kind) => wet.includes(kind) || kind === 'exchanger')) return false
  if (isNeck !== (patient.airway.route === 'tracheostomy')) return false
  if (wanted.mode === 'cycles-pressure' && kinds.includes('ventilator')) return false
  if (mask?.family === undefined) return true
  return sizesFor(mask.family, patient).some(({ size }) => size === mask.size)
}

function lengthOf(path: readonly Part[]): number {
  return path.reduce((sum, { tube }) => sum + Math.round((tube?.lengthM ?? 0) * 1000), 0)
}

/** Flows that can be set and carried: demand goes back from the patient, a jet draws air, a Y-piece halves. Random shelves hold no part that pressure would rule out. */
function isWellSet(root: Node, { wanted }: BruteQuestion): boolean {
  const source = wanted.sourceId
  const jet = findPart(root, (part) => part.kind === 'jet-nebuliser')
  const f = wanted.o2Fraction ?? 1
  const stream = jet === undefined ? wanted.flowLpm : (wanted.flowLpm * (1 - 0.2095)) / (f - 0.2095)
  const carried = (part: Part): boolean =>
    (part.flow.minLpm ?? 0) <= stream && stream <= (part.flow.maxLpm ?? Infinity)
  const walk = (node: Node, demandLpm: number, isBefore: boolean): boolean => {
    const { part } = node.piece
    if (isBefore && !carried(part)) return false
    if (part.fractions !== undefined && part.kind !== 'interface' && !part.fractions.includes(f))
      return false
    if (METERS.includes(part.kind) || part.kind === 'blender' || part.kind === 'ventilator') {
      if (!(part.marksLpm ?? []).some((mark) => Math.abs(mark - demandLpm) < 1e-9)) return false
    }
    const share = ['jet-nebuliser', 'y-piece'].includes(part.kind)
      ? demandLpm / part.inlets.length
      : demandLpm
    if (part.source?.kind === 'jet-nebuliser' && share > part.source.driveLpmMax) return false
    const after = isBefore && part.id !== source
    return node.feeds.every((one) => walk(one, share, after))
  }
  return walk(root, wanted.flowLpm, true)
}

function findPart(node: Node, test: (part: Part) => boolean): Part | undefined {
  if (test(node.piece.part)) return node.piece.part
  return node.feeds.map((one) => findPart(one, test)).find((part) => part !== undefined)
}

function summary(root: Node): BruteChain {
  const parts = new Map<string, number>()
  const pieces: Piece[] = []
  const collect = (node: Node): void => {
    pieces.push(node.piece)
    parts.set(node.piece.part.id, (parts.get(node.piece.part.id) ?? 0) + 1)
    node.feeds.forEach(collect)
  }
  collect(root)
  return {
    key: keyOf(root),
    parts,
    missing: pieces.filter(({ isAtHand }) => !isAtHand).length,
    lengthMm: pathsOf(root).reduce((sum, path) => sum + lengthOf(path), 0),
    misplacedMm: misplaced(root),
    count: pieces.length,
  }
}

function keyOf({ piece, feeds }: Node): string {
  return `${piece.part.id}(${feeds.map(keyOf).toSorted().join()})`
}

function misplaced(node: Node): number {
  const { part } = node.piece
  const warm = countOf({ ...node, feeds: node.feeds }, ({ kind }) => kind === 'heated') > 0
  const own = part.kind === 'breathing-hose' && part.tube !== null && part.tube.isHeated !== warm
  const mm = own ? Math.round((part.tube?.lengthM ?? 0) * 1000) : 0
  return mm + node.feeds.reduce((sum, one) => sum + misplaced(one), 0)
}

function isPartOf(small: BruteChain, large: BruteChain): boolean {
  if (small.count >= large.count) return false
  return [...small.parts].every(([id, count]) => count <= (large.parts.get(id) ?? 0))
}
