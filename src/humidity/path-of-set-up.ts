// The water path of a set-up whose chain of parts is not chosen yet: usual hoses stand in, and that is told. Leaves out what parts the ward has.
import { entrainmentRatio } from '../physics/gas-mixing.ts'
import { nominalLpm } from '../kit/flow-steps.ts'
import type { SetUp } from '../kit/set-up.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { AirwayFacts } from './facts.ts'
import type { Stage, WaterPath } from './water-path.ts'

/** A breathing hose where no chain names one (common practice). */
export const USUAL_HOSE = { lengthM: 1.5, boreMm: 22 } as const

/** Stages from source to patient. A worn exchanger counts where the set-up sits at the neck. */
export function pathOfSetUp(setUp: SetUp, airway: AirwayFacts): WaterPath {
  return { stages: [...sourceStages(setUp), ...interfaceStages(setUp), ...worn(setUp, airway)] }
}

/** Flow that leaves the meter, as metered; null at flush, which nobody can meter. */
export function flowOfSetUp(setUp: SetUp): number | null {
  return setUp.flow.kind === 'flush' ? null : nominalLpm(setUp.source, setUp.flow)
}

/** Litres of room air for each litre of gas at a dial or valve setting; 0 where nothing is set. */
export function airPerGas(setO2Fraction: number | null): number {
  return setO2Fraction === null ? 0 : entrainmentRatio({ targetO2Fraction: setO2Fraction })
}

function sourceStages(setUp: SetUp): readonly Stage[] {
  const { source, humidification } = setUp
  if (source.kind === 'jet-nebuliser') {
    return [
      { kind: 'entrainment', airPerGas: airPerGas(setUp.setO2Fraction), hasCollar: false },
      {
        kind: 'nebuliser',
        partId: source.id,
        isHeated: humidification === 'heated',
        waterMl: null,
        labelMgPerL: null,
      },
      hose(false),
    ]
  }
  const vessel = { partId: humidification, waterMl: null, labelMgPerL: null }
  switch (humidification) {
    case 'heated':
      return [{ kind: 'heated-chamber', ...vessel }, hose(true)]
    case 'bubble':
      return [{ kind: 'bubble', ...vessel }]
    case 'none':
    case 'collar':
      return []
  }
}

function hose(isHeated: boolean): Stage {
  return { kind: 'hose', partId: 'hose', ...USUAL_HOSE, isHeated, hasWaterTrap: false }
}

function interfaceStages(setUp: SetUp): readonly Stage[] {
  if (INTERFACE_FAMILIES[setUp.family].entrainsAir === 'no') return []
  return [
    {
      kind: 'entrainment',
      airPerGas: airPerGas(setUp.setO2Fraction),
      hasCollar: setUp.humidification === 'collar',
    },
  ]
}

function worn(setUp: SetUp, airway: AirwayFacts): readonly Stage[] {
  const sitsAtNeck = INTERFACE_FAMILIES[setUp.family].opening === 'neck'
  if (!airway.wearsExchanger || !sitsAtNeck) return []
  return [{ kind: 'exchanger', partId: 'exchanger', labelMgPerL: null }]
}
