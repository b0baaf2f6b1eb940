// Inspiration step by step: outer pocket, inner pocket, side path, mixed airway, for all tracers of a block. The serial tanks only gather.
import { AT, POCKET, STRIDE } from './program-layout.ts'
import type { Program } from './program-layout.ts'
import { STATE } from './tracer-block.ts'
import type { TracerBlock, TracerTrace } from './tracer-block.ts'

// Every index below lies within its array by construction (STRIDE × steps, STATE_SIZE × capacity); the casts only say so.

export function passInspiration(
  program: Program,
  block: TracerBlock,
  trace: TracerTrace | null,
): void {
  const A = AT
  const P = POCKET
  const c = program.coefficients
  const { hasOuter, sideFromOuter, serialTanks, inspiratorySteps, hasBag, bagValved } = program
  const { state: z, upstreamWidth, capacity, innerDevice, outerDevice, room, arriving } = block
  const { openingInL, tracheaInL } = block
  const bagGas = block.bag
  const side0 = STATE.side * capacity
  const inner0 = STATE.inner * capacity
  const mixed0 = STATE.mixed * capacity
  const bag0 = STATE.bag * capacity
  arriving.fill(0)
  openingInL.fill(0)
  tracheaInL.fill(0)
  for (let k = 0; k < inspiratorySteps; k++) {
    const at = k * STRIDE
    const overflows = (c[at + A.reverse] as number) > 0
    const outerAt = at + A.outer
    const sideAt = at + A.side
    const innerAt = at + A.inner
    const mixedAt = at + A.mixed
    const mixedInner = c[at + A.mixedInner] as number
    const mixedSide = c[at + A.mixedOther] as number
    const volumeL = c[at + A.lungL] as number
    for (let j = 0; j < upstreamWidth; j++) {
      const roomGas = room[j] as number
      const device = innerDevice[j] as number
      let outerMean = roomGas
      let outerRise = 0
      let outerIn = 0
      let outerInRise = 0
      if (hasOuter) {
        const own = outerDevice[j] as number
        outerIn =
          (c[at + A.outerRoom] as number) * roomGas + (c[at + A.outerDevice] as number) * own
        outerInRise =
          (c[at + A.outerRoomRise] as number) * roomGas +
          (c[at + A.outerDeviceRise] as number) * own
        if (!overflows) {
          const gap = (z[j] as number) - outerIn
          outerMean =
            outerIn +
            (c[outerAt + P.stay] as number) * gap -
            (c[outerAt + P.lag] as number) * outerInRise
          outerRise =
            (c[outerAt + P.rise] as number) * gap + (c[outerAt + P.pass] as number) * outerInRise
          z[j] =
            outerIn +
            (c[outerAt + P.keep] as number) * gap +
            (c[outerAt + P.gain] as number) * outerInRise
        }
      }
      const fromOuter = c[at + A.innerDraw] as number
      const drawn = outerMean + (c[at + A.outerToInnerSkew] as number) * outerRise
      let innerIn =
        (c[at + A.innerDevice] as number) * device +
        fromOuter * drawn +
        (c[at + A.innerRoom] as number) * roomGas
      let innerInRise =
        (c[at + A.innerDeviceRise] as number) * device +
        (c[at + A.innerDrawRise] as number) * drawn +
        fromOuter * outerRise +
        (c[at + A.innerRoomRise] as number) * roomGas
      if (hasBag) {
        const bag = z[bag0 + j] as number
        const gas = bagValved ? (bagGas[j] as number) : bag
        innerIn += (c[at + A.innerBag] as number) * gas
        innerInRise += (c[at + A.innerBagRise] as number) * gas
        z[bag0 + j] = (c[at + A.bagKeep] as number) * bag + (c[at + A.bagDevice] as number) * device
      }
      const innerGap = (z[inner0 + j] as number) - innerIn
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
      if (hasOuter && overflows) {
        const fromInner = c[at + A.outerInner] as number
        const surplus = innerMean + (c[at + A.innerToOuterSkew] as number) * innerRise
        outerIn += fromInner * surplus
        outerInRise += (c[at + A.outerInnerRise] as number) * surplus + fromInner * innerRise
        const gap = (z[j] as number) - outerIn
        outerMean =
          outerIn +
          (c[outerAt + P.stay] as number) * gap -
          (c[outerAt + P.lag] as number) * outerInRise
        outerRise =
          (c[outerAt + P.rise] as number) * gap + (c[outerAt + P.pass] as number) * outerInRise
        z[j] =
          outerIn +
          (c[outerAt + P.keep] as number) * gap +
          (c[outerAt + P.gain] as number) * outerInRise
      }
      let opening = innerMean + (c[at + A.innerToMixedSkew] as number) * innerRise
      let openingRise = innerRise
      if (mixedSide > 0) {
        const sideIn = sideFromOuter
          ? outerMean + (c[at + A.outerToSideSkew] as number) * outerRise
          : roomGas
        const sideInRise = sideFromOuter ? outerRise : 0
        const gap = (z[side0 + j] as number) - sideIn
        const sideMean =
          sideIn + (c[sideAt + P.stay] as number) * gap - (c[sideAt + P.lag] as number) * sideInRise
        const sideRise =
          (c[sideAt + P.rise] as number) * gap + (c[sideAt + P.pass] as number) * sideInRise
        z[side0 + j] =
          sideIn +
          (c[sideAt + P.keep] as number) * gap +
          (c[sideAt + P.gain] as number) * sideInRise
        opening = mixedInner * opening + mixedSide * sideMean
        openingRise = mixedInner * innerRise + mixedSide * sideRise
      }
      const mixedGap = (z[mixed0 + j] as number) - opening
      const through =
        opening +
        (c[mixedAt + P.stay] as number) * mixedGap -
        (c[mixedAt + P.lag] as number) * openingRise
      const throughRise =
        (c[mixedAt + P.rise] as number) * mixedGap + (c[mixedAt + P.pass] as number) * openingRise
      z[mixed0 + j] =
        opening +
        (c[mixedAt + P.keep] as number) * mixedGap +
        (c[mixedAt + P.gain] as number) * openingRise
      openingInL[j] = (openingInL[j] as number) + volumeL * opening
      tracheaInL[j] = (tracheaInL[j] as number) + volumeL * through
      for (let i = 0; i < serialTanks; i++) {
        const slot = i * capacity + j
        arriving[slot] =
          (arriving[slot] as number) +
          (c[at + A.tank + i] as number) * through +
          (c[at + A.tankRise + i] as number) * throughRise
      }
      if (trace !== null && j === 0) {
        trace.opening[k] = opening
        trace.trachea[k] = through
        trace.inner[k] = innerMean
      }
    }
  }
}
