// Which uncertain parameters a path touches, so that only those are varied and told. Leaves out their values.
import type { ParameterId } from './parameters.ts'
import type { Stage } from './water-path.ts'
import type { HumidityQuestion } from './humidity-of-path.ts'

const ROOM = ['roomTemperatureC', 'roomRelativeHumidityFraction'] as const

export function usedParameters(question: HumidityQuestion): readonly ParameterId[] {
  const ofStages = question.path.stages.flatMap((stage) => parametersOf(stage, question))
  const ofRoom = (question.roomAirShare ?? 0) > 0 ? ROOM : []
  return [...new Set<ParameterId>(['roomTemperatureC', ...ofStages, ...ofRoom])]
}

function parametersOf(stage: Stage, question: HumidityQuestion): readonly ParameterId[] {
  switch (stage.kind) {
    case 'bubble':
      return stage.labelMgPerL === null ? ['bubbleSaturation', 'bubbleHeatWPerK'] : ['labelFactor']
    case 'pass-over':
      return stage.labelMgPerL === null
        ? ['passOverSaturation', 'bubbleHeatWPerK']
        : ['labelFactor']
    case 'heated-chamber':
      return stage.labelMgPerL === null ? HEATER : [...HEATER, 'labelFactor']
    case 'nebuliser': {
      const water = stage.isHeated ? 'nebuliserHeatedMgPerL' : 'nebuliserColdMgPerL'
      const given = stage.labelMgPerL === null ? water : 'labelFactor'
      return stage.isHeated ? [given, ...HEATER] : [given]
    }
    case 'entrainment':
      return stage.hasCollar ? [...ROOM, 'collarSaturation'] : ROOM
    case 'hose':
      return [
        'hoseHeatWPerM2K',
        ...(stage.isHeated ? (['heatedWallAboveC'] as const) : []),
        ...(hasMist(question) ? (['dropletLossShare'] as const) : []),
      ]
    case 'exchanger':
      return [
        stage.labelMgPerL === null ? 'exchangerMgPerL' : 'exchangerOverstatedMgPerL',
        ...(question.airway.returnsThroughNeck ? [] : (['exchangerReturnShare'] as const)),
      ]
  }
}

const HEATER = ['heaterTemperatureC', 'chamberErrorC'] as const

function hasMist(question: HumidityQuestion): boolean {
  return question.path.stages.some(({ kind }) => kind === 'nebuliser')
}
