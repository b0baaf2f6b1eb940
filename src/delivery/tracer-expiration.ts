// Expiration step by step: serial tanks give, mixed airway, inner pocket, side path, outer pocket, for all tracers of a block.
import { AT, POCKET, STRIDE } from './program-layout.ts'
import type { Program } from './program-layout.ts'
import { STATE } from './tracer-block.ts'
import type { TracerBlock, TracerTrace } from './tracer-block.ts'

// Every index below lies within its array by construction (STRIDE × steps, STATE_SIZE × capacity); the casts only say so.

export function passExpiration(
  program: Program,
  block: TracerBlock,
  trace: TracerTrace | null,
): void {
  const A = AT
  const P = POCKET
  const c = program.coefficients
  const { hasOuter, serialTanks, inspiratorySteps, steps, hasBag } = program
  const { state: z, width, capacity, innerDevice, outerDevice, room, alveolar } = block
  const { openingOutL, leavingAirway, leavingFixed } = block
  const side0 = STATE.side * capacity
  const inner0 = STATE.inner * capacity
  const mixed0 = STATE.mixed * capacity
  const bag0 = STATE.bag * capacity
  const serial0 = STATE.serial * capacity
  openingOutL.fill(0)
  for (let k = inspiratorySteps; k < steps; k++) {
    const at = k * STRIDE
    const flushes = (c[at + A.reverse] as number) > 0
    const outerAt = at + A.outer
    const sideAt = at + A.side
    const innerAt = at + A.inner
    const mixedAt = at + A.mixed
    for (let j = 0; j < width; j++) {
      let through = (c[at + A.alveolar] as number) * (alveolar[j] as number)
      let throughRise = (c[at + A.alveolarRise] as number) * (alveolar[j] as number)
      for (let i = 0; i < serialTanks; i++) {
        const tank = z[serial0 + i * capacity + j] as number
        through += (c[at + A.tank + i] as number) * tank
        throughRise += (c[at + A.tankRise + i] as number) * tank
      }
      const device = innerDevice[j] as number
      const roomGas = room[j] as number
      const inner = z[inner0 + j] as number
      let innerIn =
        (c[at + A.innerDevice] as number) * device + (c[at + A.innerRoom] as number) * roomGas
      let innerInRise =
        (c[at + A.innerDeviceRise] as number) * device +
        (c[at + A.innerRoomRise] as number) * roomGas
      let flushed = 0
      let mixedIn = through
      let mixedInRise = throughRise
      if (flushes) {
        const gap = inner - innerIn
        flushed =
          innerIn +
          (c[innerAt + P.stay] as number) * gap -
          (c[innerAt + P.lag] as number) * innerInRise
        const flushedRise =
          (c[innerAt + P.rise] as number) * gap + (c[innerAt + P.pass] as number) * innerInRise
        flushed += (c[at + A.innerToMixedSkew] as number) * flushedRise
        const fromLung = c[at + A.mixedOther] as number
        const fromInner = c[at + A.mixedInner] as number
        mixedIn = fromLung * through + fromInner * flushed
        mixedInRise =
          fromLung * throughRise +
          (c[at + A.mixedOtherRise] as number) * through +
          fromInner * flushedRise +
          (c[at + A.mixedInnerRise] as number) * flushed
      }
      const mixedGap = (z[mixed0 + j] as number) - mixedIn
      let leaving =
        mixedIn +
        (c[mixedAt + P.stay] as number) * mixedGap -
        (c[mixedAt + P.lag] as number) * mixedInRise
      let leavingRise =
        (c[mixedAt + P.rise] as number) * mixedGap + (c[mixedAt + P.pass] as number) * mixedInRise
      z[mixed0 + j] =
        mixedIn +
        (c[mixedAt + P.keep] as number) * mixedGap +
        (c[mixedAt + P.gain] as number) * mixedInRise
      if (leavingFixed) {
        leaving = leavingAirway[j] as number
        leavingRise = 0
      }
      if (!flushes) {
        const fromMixed = c[at + A.innerMixed] as number
        const expired = leaving + (c[at + A.mixedToInnerSkew] as number) * leavingRise
        innerIn += fromMixed * expired
        innerInRise += fromMixed * leavingRise + (c[at + A.innerMixedRise] as number) * expired
      }
      const innerGap = inner - innerIn
      const innerMean =
        innerIn +
        (c[innerAt + P.stay] as number) * innerGap -
        (c[innerAt + P.lag] as number) * innerInRise
      const innerRise =
        (c[innerAt + P.rise] as number) * innerGap + (c[innerAt + P.pass] as number) * innerInRise
      z[inner0 + j] =
        innerIn +
        (c[innerAt + P.keep] as number) * innerGap +
        (c[innerAt + P.gain] as number) * innerInRise
      openingOutL[j] =
        (openingOutL[j] as number) +
        (c[at + A.leavesL] as number) * leaving -
        (c[at + A.flushedL] as number) * flushed
      const sideIn = leaving + (c[at + A.mixedToSideSkew] as number) * leavingRise
      const sideGap = (z[side0 + j] as number) - sideIn
      z[side0 + j] =
        sideIn +
        (c[sideAt + P.keep] as number) * sideGap +
        (c[sideAt + P.gain] as number) * leavingRise
      if (hasOuter) {
        const own = outerDevice[j] as number
        const sideMean =
          sideIn +
          (c[sideAt + P.stay] as number) * sideGap -
          (c[sideAt + P.lag] as number) * leavingRise
        const sideRise =
          (c[sideAt + P.rise] as number) * sideGap + (c[sideAt + P.pass] as number) * leavingRise
        const fromInner = c[at + A.outerInner] as number
        const overflow = innerMean + (c[at + A.innerToOuterSkew] as number) * innerRise
        const fromSide = c[at + A.outerSide] as number
        const outerIn =
          (c[at + A.outerRoom] as number) * roomGas +
          (c[at + A.outerDevice] as number) * own +
          (c[at + A.outerInnerDevice] as number) * device +
          fromInner * overflow +
          fromSide * sideMean
        const outerInRise =
          (c[at + A.outerRoomRise] as number) * roomGas +
          (c[at + A.outerDeviceRise] as number) * own +
          (c[at + A.outerInnerDeviceRise] as number) * device +
          (c[at + A.outerInnerRise] as number) * overflow +
          fromInner * innerRise +
          (c[at + A.outerSideRise] as number) * sideMean +
          fromSide * sideRise
        const gap = (z[j] as number) - outerIn
        z[j] =
          outerIn +
          (c[outerAt + P.keep] as number) * gap +
          (c[outerAt + P.gain] as number) * outerInRise
      }
      if (hasBag) {
        const toBag = innerMean + (c[at + A.innerToBagSkew] as number) * innerRise
        z[bag0 + j] =
          (c[at + A.bagKeep] as number) * (z[bag0 + j] as number) +
          (c[at + A.bagDevice] as number) * device +
          (c[at + A.bagInner] as number) * toBag
      }
      if (trace !== null && j === 0) trace.inner[k] = innerMean
    }
  }
}
