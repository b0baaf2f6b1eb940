// Steady breaths of the real engine on simple pockets, for pictures and words of a breath. Leaves out interface families.
import type { DeliveredBreath } from '../../src/delivery/delivered-breath.ts'
import { deliveredBreath } from '../../src/delivery/delivered-breath.ts'
import { BARE_NETWORK } from '../../src/delivery/network.ts'
import { lpsFromLpm } from '../../src/units/flow.ts'

/** A mask of 0.12 L on an adult at rest, or breathing faster. */
export function maskBreath(options: {
  readonly flowLpm: number
  readonly ratePerMin: number
}): DeliveredBreath {
  const deviceFlowLps = lpsFromLpm(options.flowLpm)
  return deliveredBreath({
    network: { ...BARE_NETWORK, innerL: 0.12, deviceFlowLps, exchangeLps: 0.8 * deviceFlowLps },
    breath: {
      tidalVolumeL: 0.5,
      ratePerMin: options.ratePerMin,
      dutyFraction: 0.36,
      inspiration: { kind: 'half-sine' },
      expiration: { kind: 'passive', timeConstantS: 0.5 },
    },
    sourceO2Fraction: 1,
    metabolism: { oxygenUptakeLpmBtps: 0.3, carbonDioxideOutputLpmBtps: 0.25 },
  })
}
