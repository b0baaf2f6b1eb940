// Divides one breath into steps whose volumes are exact, with a boundary wherever a flow changes its path. No gas here.
import {
  breathPeriodS,
  expiredFlowPerS,
  expiredShare,
  expiredShareTimeS,
  inspirationS,
  inspiredFlowRelative,
  inspiredShare,
} from './breath.ts'
import type { BreathPattern } from './breath.ts'
import type { Network } from './network.ts'

export interface Grid {
  steps: number
  /** The first so many steps are inspiration. */
  inspiratorySteps: number
  readonly durationS: Float64Array
  /** Volume that passes the airway in the step, L, positive in both phases. */
  readonly volumeL: Float64Array
  /** Time from the start of inspiration to the start of the step, s. */
  readonly startS: Float64Array
}

export const MAX_STEPS = 256

export function createGrid(): Grid {
  return {
    steps: 0,
    inspiratorySteps: 0,
    durationS: new Float64Array(MAX_STEPS),
    volumeL: new Float64Array(MAX_STEPS),
    startS: new Float64Array(MAX_STEPS),
  }
}

/**
 * Fills the grid for one breath. `resolution` is the number of basic steps in each phase; 20 keeps the effective fraction
 * within 0.001 of the adaptive integrator (test/delivery-agreement.test.ts).
 */
export function fillGrid(
  grid: Grid,
  breath: BreathPattern,
  network: Network,
  resolution: number,
): void {
  grid.steps = 0
  const inspiration = inspiratoryNodes(breath, network, resolution)
  for (let i = 1; i < inspiration.length; i++)
    pushInspiratory(grid, breath, inspiration[i - 1] ?? 0, inspiration[i] ?? 1)
  grid.inspiratorySteps = grid.steps
  const expiration = expiratoryNodes(breath, network, resolution)
  for (let i = 1; i < expiration.length; i++)
    pushExpiratory(grid, breath, expiration[i - 1] ?? 0, expiration[i] ?? 0)
}

function pushInspiratory(grid: Grid, breath: BreathPattern, from: number, to: number): void {
  const durationS = inspirationS(breath)
  const k = grid.steps++
  grid.durationS[k] = (to - from) * durationS
  grid.volumeL[k] =
    breath.tidalVolumeL *
    (inspiredShare(breath.inspiration, to) - inspiredShare(breath.inspiration, from))
  grid.startS[k] = from * durationS
}

function pushExpiratory(grid: Grid, breath: BreathPattern, from: number, to: number): void {
  const durationS = breathPeriodS(breath) - inspirationS(breath)
  const k = grid.steps++
  const share = (t: number): number => expiredShare(breath.expiration, { t, durationS })
  grid.durationS[k] = to - from
  grid.volumeL[k] = breath.tidalVolumeL * (share(to) - share(from))
  grid.startS[k] = inspirationS(breath) + from
}

/** Shares of inspiration (0–1) that bound the steps. */
function inspiratoryNodes(breath: BreathPattern, network: Network, resolution: number): number[] {
  const nodes: number[] = []
  for (let i = 0; i <= resolution; i++) nodes.push(i / resolution)
  const meanLps = breath.tidalVolumeL / inspirationS(breath)
  for (const thresholdLps of pathThresholdsLps(network))
    addCrossings(nodes, breath, thresholdLps / meanLps)
  return sortedDistinct(nodes)
}

/** Inspiratory flows at which a pocket turns from overflowing to drawing in. */
function pathThresholdsLps(network: Network): number[] {
  const thresholds =
    network.deviceFlowLps > 0 && network.innerShareIn > 0
      ? [network.deviceFlowLps / network.innerShareIn]
      : []
  if (network.hasOuter) thresholds.push(network.deviceFlowLps + network.outerDeviceFlowLps)
  return thresholds
}

function addCrossings(nodes: number[], breath: BreathPattern, level: number): void {
  const shape = breath.inspiration
  const basic = nodes.length
  if (shape.kind === 'half-sine') {
    const height = (2 / Math.PI) * level
    if (height >= 1) return
    const s = Math.asin(height) / Math.PI
    nodes.push(s, 1 - s)
    return
  }
  for (let i = 1; i < basic; i++) {
    let low = nodes[i - 1] ?? 0
    let high = nodes[i] ?? 1
    const sign = inspiredFlowRelative(shape, low) > level
    if (inspiredFlowRelative(shape, high) > level === sign) continue
    for (let k = 0; k < 40; k++) {
      const middle = (low + high) / 2
      if (inspiredFlowRelative(shape, middle) > level === sign) low = middle
      else high = middle
    }
    nodes.push((low + high) / 2)
  }
}

/** Seconds into expiration that bound the steps: equal volumes while gas flows, equal times through the pause. */
function expiratoryNodes(breath: BreathPattern, network: Network, resolution: number): number[] {
  const durationS = breathPeriodS(breath) - inspirationS(breath)
  const shape = breath.expiration
  const nodes: number[] = [0, durationS]
  const half = Math.ceil(resolution / 2)
  for (let i = 1; i < half; i++) {
    nodes.push(expiredShareTimeS(shape, { share: i / half, durationS }))
    nodes.push((i / half) * durationS)
  }
  if (shape.kind === 'constant') nodes.push(durationS * shape.shareOfExpiration)
  else if (network.flushLps > 0 && network.innerShareOut > 0) {
    const startLps =
      expiredFlowPerS(shape, { t: 0, durationS }) * breath.tidalVolumeL * network.innerShareOut
    const turnS = shape.timeConstantS * Math.log(startLps / network.flushLps)
    if (turnS > 0 && turnS < durationS) nodes.push(turnS)
  }
  return sortedDistinct(nodes)
}

function sortedDistinct(nodes: number[]): number[] {
  nodes.sort((a, b) => a - b)
  const tiny = 1e-9 * (nodes[nodes.length - 1] ?? 1)
  return nodes.filter((node, i) => i === 0 || node - (nodes[i - 1] ?? 0) > tiny)
}
