// Divides one breath into steps whose volumes are exact, with a boundary wherever a flow changes its path. No gas here.
import { assert } from '../errors.ts'
import {
  breathPeriodS,
  expiredFlowPerS,
  expiredShare,
  expiredShareTimeS,
  inspirationS,
  inspiredFlowRelative,
  inspiredShare,
} from './breath.ts'
import type { BreathPattern, InspiratoryShape } from './breath.ts'
import { expiratorySteps, inspiratorySteps } from './grid-resolution.ts'
import type { Network } from './network.ts'

export interface Grid {
  steps: number
  /** The first so many steps are inspiration. */
  inspiratorySteps: number
  readonly durationS: Float64Array
  /** Volume that passes the airway in the step, L, positive in both phases. */
  readonly volumeL: Float64Array
  /** Flow through the airway at the end of the step less that at its start, L/s. */
  readonly flowRiseLps: Float64Array
  /** Time from the start of inspiration to the start of the step, s. */
  readonly startS: Float64Array
  /** Bounds of the steps of one phase while they are being gathered. */
  readonly nodes: Float64Array
}

export type Phase = 'inspiration' | 'expiration'

export const MAX_STEPS = 256

export function createGrid(): Grid {
  return {
    steps: 0,
    inspiratorySteps: 0,
    durationS: new Float64Array(MAX_STEPS),
    volumeL: new Float64Array(MAX_STEPS),
    flowRiseLps: new Float64Array(MAX_STEPS),
    startS: new Float64Array(MAX_STEPS),
    nodes: new Float64Array(MAX_STEPS + 1),
  }
}

/**
 * Fills the grid for one breath. `resolution` is the number of basic steps in each phase (grid-resolution.ts adds some where gas
 * changes quickly); DEFAULT_RESOLUTION of periodic.ts keeps the effective fraction within 0.001 of the adaptive integrator
 * (test/delivery-agreement.test.ts).
 */
export function fillGrid(
  grid: Grid,
  breath: BreathPattern,
  network: Network,
  resolution: number,
): void {
  const inside = inspiratorySteps(network, breath, resolution)
  const outside = expiratorySteps(network, breath, resolution)
  grid.steps = 0
  pushInspiration(grid, breath, gatherInspiration(grid.nodes, breath, network, inside))
  grid.inspiratorySteps = grid.steps
  pushExpiration(grid, breath, gatherExpiration(grid.nodes, breath, network, outside))
}

/** Divides step k at a time from the start of inspiration. */
export function splitStep(
  grid: Grid,
  breath: BreathPattern,
  { k, atS }: { k: number; atS: number },
): void {
  assert(grid.steps < MAX_STEPS, 'grid has room for one more step')
  const { durationS, volumeL, flowRiseLps, startS } = grid
  const phase = k < grid.inspiratorySteps ? 'inspiration' : 'expiration'
  const fromS = startS[k] as number // k < grid.steps
  const beforeL = passedL(breath, phase, atS) - passedL(breath, phase, fromS)
  const beforeLps = flowLps(breath, phase, atS) - flowLps(breath, phase, fromS)
  durationS.copyWithin(k + 1, k, grid.steps)
  volumeL.copyWithin(k + 1, k, grid.steps)
  flowRiseLps.copyWithin(k + 1, k, grid.steps)
  startS.copyWithin(k + 1, k, grid.steps)
  grid.steps++
  if (phase === 'inspiration') grid.inspiratorySteps++
  startS[k + 1] = atS
  durationS[k] = atS - fromS
  volumeL[k] = beforeL
  flowRiseLps[k] = beforeLps
  // k + 1 < grid.steps: these hold what the whole step had.
  durationS[k + 1] = (durationS[k + 1] as number) - (atS - fromS)
  volumeL[k + 1] = (volumeL[k + 1] as number) - beforeL
  flowRiseLps[k + 1] = (flowRiseLps[k + 1] as number) - beforeLps
}

// Nodes are counted in seconds from the start of inspiration; indexes stay below MAX_STEPS, as prepareNodes asserts.

function pushInspiration(grid: Grid, breath: BreathPattern, count: number): void {
  prepareNodes(grid, count)
  const { inspiration, tidalVolumeL } = breath
  const turnS = inspirationS(breath)
  const meanLps = tidalVolumeL / turnS
  let fromShare = 0
  let fromFlow = inspiredFlowRelative(inspiration, 0)
  let k = grid.steps
  let fromS = 0
  for (let i = 1; i < count; i++) {
    const toS = grid.nodes[i] as number
    if (isSliver(fromS, toS, i < count - 1 ? turnS : Infinity)) continue
    const toShare = inspiredShare(inspiration, toS / turnS)
    const toFlow = inspiredFlowRelative(inspiration, toS / turnS)
    grid.startS[k] = fromS
    grid.durationS[k] = toS - fromS
    grid.volumeL[k] = tidalVolumeL * (toShare - fromShare)
    grid.flowRiseLps[k] = meanLps * (toFlow - fromFlow)
    fromS = toS
    fromShare = toShare
    fromFlow = toFlow
    k++
  }
  grid.steps = k
}

function pushExpiration(grid: Grid, breath: BreathPattern, count: number): void {
  prepareNodes(grid, count)
  const { expiration, tidalVolumeL } = breath
  const turnS = inspirationS(breath)
  const endS = breathPeriodS(breath)
  const tau = expiration.kind === 'passive' ? expiration.timeConstantS : 0
  // A passive expiration lets volume and flow fall together, so one exponential tells both.
  const wholeShare = tau > 0 ? -Math.expm1((turnS - endS) / tau) : 1
  let k = grid.steps
  let fromS = turnS
  let fromL = 0
  let fromLps = tau > 0 ? tidalVolumeL / wholeShare / tau : 0
  for (let i = 1; i < count; i++) {
    const toS = grid.nodes[i] as number
    if (isSliver(fromS, toS, i < count - 1 ? endS : Infinity)) continue
    const left = tau > 0 ? Math.exp((turnS - toS) / tau) : 0
    const toL =
      tau > 0 ? (tidalVolumeL * (1 - left)) / wholeShare : passedL(breath, 'expiration', toS)
    const toLps = tau > 0 ? (tidalVolumeL * left) / wholeShare / tau : 0
    grid.startS[k] = fromS
    grid.durationS[k] = toS - fromS
    grid.volumeL[k] = toL - fromL
    grid.flowRiseLps[k] = toLps - fromLps
    fromS = toS
    fromL = toL
    fromLps = toLps
    k++
  }
  grid.steps = k
}

/** A sliver is left to the next step, unless its end is the end of the phase. */
function isSliver(fromS: number, toS: number, endS: number): boolean {
  const tiny = 1e-9 * toS
  return toS - fromS <= tiny || endS - toS <= tiny
}

/** Volume through the airway from the start of the phase to a time from the start of inspiration, L. */
export function passedL(breath: BreathPattern, phase: Phase, atS: number): number {
  const turnS = inspirationS(breath)
  if (phase === 'inspiration') {
    return breath.tidalVolumeL * inspiredShare(breath.inspiration, atS / turnS)
  }
  const durationS = breathPeriodS(breath) - turnS
  return breath.tidalVolumeL * expiredShare(breath.expiration, { t: atS - turnS, durationS })
}

/** Smooth part of the flow; the jump of a constant expiration lies on a node and is left out. */
function flowLps(breath: BreathPattern, phase: Phase, atS: number): number {
  const turnS = inspirationS(breath)
  if (phase === 'inspiration') {
    return (breath.tidalVolumeL / turnS) * inspiredFlowRelative(breath.inspiration, atS / turnS)
  }
  if (breath.expiration.kind === 'constant') return 0
  const durationS = breathPeriodS(breath) - turnS
  return breath.tidalVolumeL * expiredFlowPerS(breath.expiration, { t: atS - turnS, durationS })
}

function gatherInspiration(
  nodes: Float64Array,
  breath: BreathPattern,
  network: Network,
  resolution: number,
): number {
  const turnS = inspirationS(breath)
  let n = 0
  const cells = inspiratoryCells(breath.inspiration, resolution)
  for (let i = 0; i < cells; i++) nodes[n++] = (i / cells) * turnS
  nodes[n++] = turnS
  const { deviceFlowLps, outerDeviceFlowLps, innerShareIn, bag } = network
  // Where the inner pocket turns from overflowing to drawing in.
  if (deviceFlowLps > 0 && innerShareIn > 0) {
    n = addCrossings(nodes, n, breath, deviceFlowLps / innerShareIn)
  }
  if (!network.hasOuter) return n
  // Where the outer pocket does. With a bag, only a share of what is missing, or of what is over, passes the outer pocket.
  const sideShare = network.sideFromOuter ? 1 - innerShareIn : 0
  const passedShares =
    bag === null ? [1] : [1, bag.leakRatio / (1 + bag.leakRatio), bag.forwardLoss]
  for (const passedShare of passedShares) {
    const perLps = innerShareIn * passedShare + sideShare
    const levelLps = (outerDeviceFlowLps + passedShare * deviceFlowLps) / perLps
    if (perLps > 0) n = addCrossings(nodes, n, breath, levelLps)
  }
  return n
}

/** Steps of inspiration; as many to each cell of a coarsely sampled flow, so that its bends lie on bounds. */
function inspiratoryCells(shape: InspiratoryShape, resolution: number): number {
  if (shape.kind !== 'sampled') return resolution
  const samples = shape.relativeFlow.length - 1
  return samples > 2 * resolution ? resolution : samples * Math.ceil(resolution / samples)
}

/** Times at which inspiratory flow crosses a level. */
function addCrossings(
  nodes: Float64Array,
  from: number,
  breath: BreathPattern,
  levelLps: number,
): number {
  const turnS = inspirationS(breath)
  const level = levelLps / (breath.tidalVolumeL / turnS)
  const shape = breath.inspiration
  let n = from
  switch (shape.kind) {
    case 'square':
      return n
    case 'half-sine': {
      const height = (2 / Math.PI) * level
      if (height >= 1) return n
      const s = Math.asin(height) / Math.PI
      nodes[n++] = s * turnS
      nodes[n++] = (1 - s) * turnS
      return n
    }
    case 'decelerating':
      if (level < 2) nodes[n++] = (1 - level / 2) * turnS
      return n
    case 'sampled':
      return addSampledCrossings(nodes, n, shape, { level, turnS })
  }
}

function addSampledCrossings(
  nodes: Float64Array,
  from: number,
  shape: InspiratoryShape & { kind: 'sampled' },
  { level, turnS }: { level: number; turnS: number },
): number {
  const cells = shape.relativeFlow.length - 1
  let n = from
  let left = inspiredFlowRelative(shape, 0)
  for (let i = 1; i <= cells; i++) {
    const right = inspiredFlowRelative(shape, i / cells)
    if (left > level !== right > level) {
      assert(n < MAX_STEPS, 'grid has room for the crossings')
      nodes[n++] = ((i - 1 + (level - left) / (right - left)) / cells) * turnS
    }
    left = right
  }
  return n
}

/** Equal volumes while gas flows, equal times through the pause. */
function gatherExpiration(
  nodes: Float64Array,
  breath: BreathPattern,
  network: Network,
  resolution: number,
): number {
  const turnS = inspirationS(breath)
  const endS = breathPeriodS(breath)
  const durationS = endS - turnS
  const shape = breath.expiration
  const half = Math.ceil(resolution / 2)
  let n = 0
  nodes[n++] = turnS
  nodes[n++] = endS
  for (let i = 1; i < half; i++) {
    nodes[n++] = turnS + expiredShareTimeS(shape, { share: i / half, durationS })
    nodes[n++] = turnS + (i / half) * durationS
  }
  if (shape.kind === 'constant') {
    nodes[n++] = turnS + durationS * shape.shareOfExpiration
    return n
  }
  if (network.flushLps <= 0 || network.innerShareOut <= 0) return n
  // Where the flush begins to outdo what is breathed out, and where it also outdoes the device, with the bag filling or full.
  const { flushLps, bag } = network
  const capturedLps = network.captureOut * network.deviceFlowLps
  const levels = [flushLps, flushLps - capturedLps]
  if (bag !== null) levels.push(flushLps - capturedLps * bag.forwardLoss)
  const peakLps =
    expiredFlowPerS(shape, { t: 0, durationS }) * breath.tidalVolumeL * network.innerShareOut
  for (const levelLps of levels) {
    const afterS = levelLps > 0 ? shape.timeConstantS * Math.log(peakLps / levelLps) : 0
    if (afterS > 0 && afterS < durationS) nodes[n++] = turnS + afterS
  }
  return n
}

/** Insertion sort in place: the lists are short and nearly in order. */
function prepareNodes(grid: Grid, count: number): void {
  assert(grid.steps + count <= MAX_STEPS, 'grid has room for the steps')
  const { nodes } = grid
  for (let i = 1; i < count; i++) {
    const node = nodes[i] as number
    let j = i - 1
    while (j >= 0 && (nodes[j] as number) > node) {
      nodes[j + 1] = nodes[j] as number
      j--
    }
    nodes[j + 1] = node
  }
}
