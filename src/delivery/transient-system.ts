// The judge's equations: all gases in all pockets, the bag and two alveolar compartments as one system of rates. Shares no step scheme with the fast solver; leaves out blood and tissue stores.
import type { BreathPattern } from './breath.ts'
import { breathPeriodS } from './breath.ts'
import type { Network } from './network.ts'
import { airwayFlowLps, createFlows, setFlows } from './transient-flows.ts'
import type { BagEnds, Flows, Stretch } from './transient-flows.ts'

/** What the patient's lungs do in the judge. Uptake and output are constant in time. */
export interface TransientLungs {
  /** Oxygen fraction of the source gas and of the room, dry. */
  readonly sourceO2Fraction: number
  readonly roomO2Fraction: number
  /** Oxygen taken up in one breath over tidal volume. */
  readonly uptakeShare: number
  readonly respiratoryExchangeRatio: number
  /** Functional residual capacity over tidal volume. */
  readonly residualRatio: number
}

export const TRANSIENT_LUNGS: TransientLungs = {
  sourceO2Fraction: 1,
  roomO2Fraction: 0.2095,
  uptakeShare: 0.03,
  respiratoryExchangeRatio: 0.8,
  residualRatio: 4,
}

/** Two alveolar compartments of different turnover: shares of ventilation, volume and uptake. No measured values: any would do. */
const COMPARTMENTS = [
  { ventilation: 0.7, volume: 0.5, uptake: 0.6 },
  { ventilation: 0.3, volume: 0.5, uptake: 0.4 },
] as const

/** Columns of the state: O2, CO2 and N2, then (if asked for) source gas, room air and expired gas, carried alike. */
const GASES = 3
const ORIGINS = 3

const OUTER = 0
const SIDE = 1
const INNER = 2
const MIXED = 3
const BAG = 4
const SERIAL = 5

/** Where tracer amounts are counted, L over the tidal volume. */
export const COUNTERS = ['opening', 'trachea', 'alveoli'] as const

export interface TransientSystem {
  readonly network: Network
  readonly breath: BreathPattern
  readonly lungs: TransientLungs
  readonly size: number
  /** Three gases, or three gases and three origins. */
  readonly columns: number
  readonly pockets: number
  /** Position of the bag's filling (share of its volume), of the alveoli and of the counters. */
  readonly bagAt: number
  readonly alveoliAt: number
  readonly countersAt: number
  readonly volumesL: Float64Array
  readonly flows: Flows
  /** Concentrations and inflows at one instant, per pocket and column. */
  readonly now: Float64Array
  readonly gasIn: Float64Array
  readonly flowIn: Float64Array
  readonly device: Float64Array
  readonly ownDevice: Float64Array
  readonly room: Float64Array
  readonly alveolar: Float64Array
}

export function createTransientSystem(
  network: Network,
  breath: BreathPattern,
  {
    lungs = TRANSIENT_LUNGS,
    withOrigins = true,
  }: { lungs?: TransientLungs; withOrigins?: boolean } = {},
): TransientSystem {
  const columns = withOrigins ? GASES + ORIGINS : GASES
  const pockets = SERIAL + network.serialTanks
  const bagAt = pockets * columns
  const alveoliAt = bagAt + 1
  const countersAt = alveoliAt + COMPARTMENTS.length * (GASES + 1)
  const volumesL = new Float64Array(pockets).fill(network.serialL / network.serialTanks)
  volumesL.set([
    network.hasOuter ? network.outerL : 0,
    network.sideL,
    network.innerL,
    network.mixedL,
    0,
  ])
  return {
    network,
    breath,
    lungs,
    size: countersAt + (withOrigins ? COUNTERS.length * ORIGINS : 0),
    columns,
    pockets,
    bagAt,
    alveoliAt,
    countersAt,
    volumesL,
    flows: createFlows(),
    now: new Float64Array(pockets * columns),
    gasIn: new Float64Array(pockets * columns),
    flowIn: new Float64Array(pockets),
    device: gasOf(lungs, network.sourceShare).subarray(0, columns),
    ownDevice: gasOf(lungs, network.outerSourceShare).subarray(0, columns),
    room: gasOf(lungs, 0).subarray(0, columns),
    alveolar: new Float64Array(columns),
  }
}

/** Source gas and room air mixed by a device. */
function gasOf(
  { sourceO2Fraction, roomO2Fraction }: TransientLungs,
  sourceShare: number,
): Float64Array {
  const o2 = sourceShare * sourceO2Fraction + (1 - sourceShare) * roomO2Fraction
  return Float64Array.of(o2, 0, 1 - o2, sourceShare, 1 - sourceShare, 0)
}

/** Everything holds room air, a bag without valve too; the alveoli are about those of a patient on room air. */
export function startOnRoomAir(system: TransientSystem, bagShare = 1): Float64Array {
  const { columns } = system
  const y = new Float64Array(system.size)
  for (let p = 0; p < system.pockets; p++) y.set(system.room, p * columns)
  for (let j = BAG * columns; j < (BAG + 1) * columns; j++) y[j] = bagShare * (y[j] as number) // within the state
  y[system.bagAt] = bagShare
  const { roomO2Fraction, uptakeShare, respiratoryExchangeRatio } = system.lungs
  const taken = uptakeShare / (1 - deadShare(system))
  COMPARTMENTS.forEach((_, i) => {
    const at = system.alveoliAt + i * (GASES + 1)
    y.set([roomO2Fraction - taken, respiratoryExchangeRatio * taken, 1 - roomO2Fraction, 1], at)
  })
  return y
}

function deadShare({ network, breath }: TransientSystem): number {
  return Math.min(0.5, (network.mixedL + network.serialL) / breath.tidalVolumeL)
}

/** Writes dy/dt at time t of a stretch. */
export function transientRates(
  system: TransientSystem,
  { stretch, bagEnds }: { stretch: Stretch; bagEnds: BagEnds },
  tS: number,
  y: Float64Array,
  rates: Float64Array,
): void {
  const { network, breath, flows } = system
  const lungLps = airwayFlowLps(breath, stretch, tS)
  setFlows(flows, { network, phase: stretch.phase, lungLps, bagEnds })
  readAlveolar(system, y)
  system.gasIn.fill(0)
  system.flowIn.fill(0)
  rates.fill(0)
  if (stretch.phase === 'inspiration') mixInspiration(system, y)
  else mixExpiration(system, y)
  for (let p = 0; p < system.pockets; p++) if (p !== BAG) pocketRates(system, rates, p)
  bagRates(system, rates)
  alveolarRates(system, stretch, y, rates)
  if (stretch.phase === 'inspiration' && system.columns > GASES) countInspired(system, rates)
}

function mixInspiration(system: TransientSystem, y: Float64Array): void {
  const { flows, room, device, ownDevice, pockets } = system
  readBag(system, y)
  const overflows = flows.innerToOuter > 0
  const feedOuter = (): void => {
    feed(system, OUTER, flows.roomToOuter, room)
    feed(system, OUTER, flows.ownToOuter, ownDevice)
    if (overflows) feedFrom(system, OUTER, flows.innerToOuter, INNER)
    settle(system, y, OUTER)
  }
  if (!overflows) feedOuter()
  feed(system, INNER, flows.deviceToInner, device)
  feed(system, INNER, flows.roomToInner, room)
  feedFrom(system, INNER, flows.bagToInner, BAG)
  feedFrom(system, INNER, flows.outerToInner, OUTER)
  settle(system, y, INNER)
  if (overflows) feedOuter()
  feed(system, SIDE, flows.roomToSide, room)
  feedFrom(system, SIDE, flows.outerToSide, OUTER)
  settle(system, y, SIDE)
  feedFrom(system, MIXED, flows.innerToMixed, INNER)
  feedFrom(system, MIXED, flows.sideToMixed, SIDE)
  settle(system, y, MIXED)
  for (let p = SERIAL; p < pockets; p++) {
    feedFrom(system, p, flows.lungLps, p === SERIAL ? MIXED : p - 1)
    settle(system, y, p)
  }
}

function mixExpiration(system: TransientSystem, y: Float64Array): void {
  const { flows, room, device, ownDevice, pockets, alveolar } = system
  readBag(system, y)
  for (let p = pockets - 1; p >= SERIAL; p--) {
    if (p === pockets - 1) feed(system, p, flows.lungLps, alveolar)
    else feedFrom(system, p, flows.lungLps, p + 1)
    settle(system, y, p)
  }
  const flushes = flows.innerToMixed > 0
  const feedInner = (): void => {
    feed(system, INNER, flows.deviceToInner, device)
    feed(system, INNER, flows.roomToInner, room)
    if (!flushes) feedFrom(system, INNER, flows.mixedToInner, MIXED)
    settle(system, y, INNER)
  }
  if (flushes) feedInner()
  feedFrom(system, MIXED, flows.lungLps, SERIAL)
  if (flushes) feedFrom(system, MIXED, flows.innerToMixed, INNER)
  settle(system, y, MIXED)
  if (!flushes) feedInner()
  feedFrom(system, SIDE, flows.mixedToSide, MIXED)
  settle(system, y, SIDE)
  feed(system, OUTER, flows.roomToOuter, room)
  feed(system, OUTER, flows.ownToOuter, ownDevice)
  feed(system, OUTER, flows.deviceToOuter, device)
  feedFrom(system, OUTER, flows.innerToOuter, INNER)
  feedFrom(system, OUTER, flows.sideToOuter, SIDE)
  settle(system, y, OUTER)
}

function feed(
  system: TransientSystem,
  pocket: number,
  lps: number,
  gas: Float64Array,
  offset = 0,
): void {
  const { columns, gasIn, flowIn } = system
  if (lps === 0) return
  flowIn[pocket] = (flowIn[pocket] as number) + lps // indexes are pockets of this system
  const at = pocket * columns
  for (let j = 0; j < columns; j++) {
    gasIn[at + j] = (gasIn[at + j] as number) + lps * (gas[offset + j] as number)
  }
}

function feedFrom(system: TransientSystem, pocket: number, lps: number, from: number): void {
  feed(system, pocket, lps, system.now, from * system.columns)
}

/** Present concentration: the state of a pocket with volume; the mean of what flows in for one without. */
function settle(system: TransientSystem, y: Float64Array, pocket: number): void {
  const { now, gasIn, flowIn, volumesL, room, columns } = system
  const at = pocket * columns
  const lps = flowIn[pocket] as number // a pocket of this system
  for (let j = 0; j < columns; j++) {
    if ((volumesL[pocket] as number) > 0) now[at + j] = y[at + j] as number
    else now[at + j] = lps > 0 ? (gasIn[at + j] as number) / lps : (room[j] as number)
  }
}

/** Volume × dc/dt = what flows in × (its concentration − c). */
function pocketRates(
  { now, gasIn, flowIn, volumesL, columns }: TransientSystem,
  rates: Float64Array,
  pocket: number,
): void {
  const volumeL = volumesL[pocket] as number // a pocket of this system
  if (volumeL <= 0) return
  for (let j = pocket * columns; j < (pocket + 1) * columns; j++) {
    rates[j] = ((gasIn[j] as number) - (flowIn[pocket] as number) * (now[j] as number)) / volumeL
  }
}

/** The bag's state holds amounts over its full volume, so that it may run empty. A valve keeps it at device gas. */
function readBag({ network, now, device, bagAt, columns }: TransientSystem, y: Float64Array): void {
  if (network.bag === null) return
  const filling = y[bagAt] as number // within the state
  for (let j = 0; j < columns; j++) {
    const amount = y[BAG * columns + j] as number // within the state
    now[BAG * columns + j] = network.bag.hasInletValve
      ? (device[j] as number)
      : filling > 1e-12
        ? amount / filling
        : 0
  }
}

/** Removes the rounding that is left when the bag has run empty. */
export function emptyBag({ bagAt, columns }: TransientSystem, y: Float64Array): void {
  y.fill(0, BAG * columns, (BAG + 1) * columns)
  y[bagAt] = 0
}

function bagRates(
  { network, now, device, bagAt, flows, columns }: TransientSystem,
  rates: Float64Array,
): void {
  if (network.bag === null) return
  const { volumeL } = network.bag
  const { deviceToBag, innerToBag, bagToInner } = flows
  rates[bagAt] = (deviceToBag + innerToBag - bagToInner) / volumeL
  for (let j = 0; j < columns; j++) {
    // All three lie within the state: columns columns of two pockets.
    const inflow =
      deviceToBag * (device[j] as number) + innerToBag * (now[INNER * columns + j] as number)
    rates[BAG * columns + j] = (inflow - bagToInner * (now[BAG * columns + j] as number)) / volumeL
  }
}

/** Mixed alveolar gas: real gases by ventilation; by origin all of it is the patient's own. */
function readAlveolar({ alveolar, alveoliAt, columns }: TransientSystem, y: Float64Array): void {
  alveolar.fill(0)
  if (columns > GASES) alveolar[GASES + 2] = 1
  COMPARTMENTS.forEach(({ ventilation }, i) => {
    const at = alveoliAt + i * (GASES + 1)
    for (let j = 0; j < GASES; j++) {
      // Within the state: amount and volume of compartment i.
      alveolar[j] =
        (alveolar[j] as number) + (ventilation * (y[at + j] as number)) / (y[at + GASES] as number)
    }
  })
}

/** Amounts and volumes over the compartment's residual volume: gas in or out, constant uptake and output. */
function alveolarRates(
  system: TransientSystem,
  { phase }: Stretch,
  y: Float64Array,
  rates: Float64Array,
): void {
  const { lungs, breath, flows, now, pockets, alveoliAt, columns } = system
  const uptakeLps = (lungs.uptakeShare * breath.tidalVolumeL) / breathPeriodS(breath)
  const breathesIn = phase === 'inspiration'
  for (let i = 0; i < COMPARTMENTS.length; i++) {
    const { ventilation, volume, uptake } = COMPARTMENTS[i] as (typeof COMPARTMENTS)[number] // i stays within
    const at = alveoliAt + i * (GASES + 1)
    const residualL = volume * lungs.residualRatio * breath.tidalVolumeL
    const lps = (breathesIn ? ventilation : -ventilation) * flows.lungLps
    for (let j = 0; j < GASES; j++) {
      // Within the state: the last tank, and amount and volume of compartment i.
      const own = (y[at + j] as number) / (y[at + GASES] as number)
      const moved = breathesIn ? (now[(pockets - 1) * columns + j] as number) : own
      rates[at + j] = (lps * moved) / residualL
    }
    const takenLps = uptakeLps * uptake
    // O2 and CO2, the first two amounts of the compartment.
    rates[at] = (rates[at] as number) - takenLps / residualL
    rates[at + 1] =
      (rates[at + 1] as number) + (takenLps * lungs.respiratoryExchangeRatio) / residualL
    rates[at + GASES] = lps / residualL
  }
}

/** Adds up the three origins at the opening, past the mixed airway and into the alveoli, over the tidal volume. */
function countInspired(system: TransientSystem, rates: Float64Array): void {
  const { now, gasIn, flows, breath, pockets, countersAt, columns } = system
  const perBreath = flows.lungLps / breath.tidalVolumeL
  for (let j = 0; j < GASES; j++) {
    // Within the state and the pockets.
    rates[countersAt + j] = (gasIn[MIXED * columns + GASES + j] as number) / breath.tidalVolumeL
    rates[countersAt + GASES + j] = perBreath * (now[MIXED * columns + GASES + j] as number)
    rates[countersAt + 2 * GASES + j] =
      perBreath * (now[(pockets - 1) * columns + GASES + j] as number)
  }
}

/**
 * The constant inspired fraction that would give the same alveolar gas. From N2: I(1−F) = E(1−A−C); O2: I·F = E·A + U; CO2: E·C = R·U,
 * hence F/(1−F) = (A + C/R)/(1−A−C) and F = (A + C/R)/(1 − C + C/R), with A and C the dry alveolar fractions.
 */
export function effectiveO2Fraction(system: TransientSystem, y: Float64Array): number {
  readAlveolar(system, y)
  const [o2 = 0, co2 = 0, n2 = 0] = system.alveolar
  const total = o2 + co2 + n2
  const co2OverR = co2 / total / system.lungs.respiratoryExchangeRatio
  return (o2 / total + co2OverR) / (1 - co2 / total + co2OverR)
}
