// One run along a water path with one number for every uncertain parameter: gas at the airway, water given off, what drops out where. Leaves out spread.
import { dewPointC, saturatedMgPerLBtps } from './body-litre.ts'
import { throughHose } from './hose.ts'
import {
  coldBottle,
  entrained,
  heatedChamber,
  nebulised,
  roomAir,
  type Room,
} from './humidifiers.ts'
import { mixedGas } from './moist-gas.ts'
import type { MoistGas } from './moist-gas.ts'
import type { ParameterValues } from './parameters.ts'
import type { Stage, VesselStage, WaterPath } from './water-path.ts'

export interface PathQuestion {
  readonly path: WaterPath
  /** Gas into the first stage, litres at body conditions. */
  readonly flowLpmBtps: number
  readonly barometricKpa: number
  /** Share of what is inhaled that the patient draws from the room beside the stream; null where it is not counted. */
  readonly roomAirShare: number | null
  /** Whether all of the breath returns through an exchanger: cuff up, or the neck alone. */
  readonly returnsThroughExchanger: boolean
}

export interface Amount {
  readonly partId: string
  readonly mgPerMin: number
}

export interface PathRun {
  /** The stream as it reaches the interface. */
  readonly stream: MoistGas
  /** What is inhaled: the stream, with the room's share where that is counted, or what an exchanger returns. */
  readonly inhaled: MoistGas
  readonly waterUse: readonly Amount[]
  readonly condensate: readonly Amount[]
}

interface Walk {
  readonly gas: MoistGas
  readonly waterUse: readonly Amount[]
  readonly condensate: readonly Amount[]
}

interface Surroundings {
  readonly question: PathQuestion
  readonly values: ParameterValues
  readonly room: Room
}

/** Source gas enters dry and at room temperature. */
export function runPath(question: PathQuestion, values: ParameterValues): PathRun {
  const room: Room = {
    temperatureC: values.roomTemperatureC,
    relativeHumidityFraction: values.roomRelativeHumidityFraction,
    barometricKpa: question.barometricKpa,
  }
  const around = { question, values, room }
  const start: Walk = {
    gas: {
      flowLpmBtps: question.flowLpmBtps,
      temperatureC: room.temperatureC,
      vapourMgPerLBtps: 0,
      aerosolMgPerLBtps: 0,
    },
    waterUse: [],
    condensate: [],
  }
  const end = question.path.stages.reduce<Walk>((walk, stage) => step(walk, stage, around), start)
  const { gas: stream, waterUse, condensate } = end
  return { stream, inhaled: inhaledOf(stream, around), waterUse, condensate }
}

function step(walk: Walk, stage: Stage, around: Surroundings): Walk {
  const { gas } = walk
  const { values, room } = around
  switch (stage.kind) {
    case 'bubble':
    case 'pass-over':
    case 'heated-chamber':
    case 'nebuliser':
      return throughVessel(walk, stage, around)
    case 'entrainment': {
      const saturation = stage.hasCollar ? values.collarSaturation : 0
      return { ...walk, gas: entrained(gas, { airPerGas: stage.airPerGas, room, saturation }) }
    }
    case 'hose':
      return along(walk, stage, around)
    case 'exchanger':
      return walk
  }
}

function throughVessel(walk: Walk, stage: VesselStage, around: Surroundings): Walk {
  const gas = fromVessel(walk.gas, stage, around)
  const given = waterMgPerMin(gas) - waterMgPerMin(walk.gas)
  const waterUse = [...walk.waterUse, { partId: stage.partId, mgPerMin: Math.max(0, given) }]
  return { ...walk, gas, waterUse }
}

function fromVessel(gas: MoistGas, stage: VesselStage, around: Surroundings): MoistGas {
  const { values, room } = around
  const { barometricKpa } = room
  if (stage.labelMgPerL !== null) return asLabelled(gas, stage, around)
  switch (stage.kind) {
    case 'bubble':
    case 'pass-over': {
      const saturation =
        stage.kind === 'bubble' ? values.bubbleSaturation : values.passOverSaturation
      return coldBottle(gas, { room, saturation, heatWPerK: values.bubbleHeatWPerK })
    }
    case 'heated-chamber':
      return heatedChamber(gas, { outletTemperatureC: outletC(values), barometricKpa })
    case 'nebuliser':
      return nebulised(gas, {
        waterMgPerLBtps: stage.isHeated ? values.nebuliserHeatedMgPerL : values.nebuliserColdMgPerL,
        outletTemperatureC: stage.isHeated ? outletC(values) : null,
        room,
      })
  }
}

/** The figure on the label, as vapour no further than the gas can carry at its temperature. */
function asLabelled(gas: MoistGas, stage: VesselStage, around: Surroundings): MoistGas {
  const { values, room } = around
  const isWarm = stage.kind === 'heated-chamber' || (stage.kind === 'nebuliser' && stage.isHeated)
  const temperatureC = isWarm ? outletC(values) : room.temperatureC
  const { barometricKpa } = room
  const most = saturatedMgPerLBtps({ temperatureC, barometricKpa })
  const labelled = (stage.labelMgPerL ?? 0) * values.labelFactor
  const vapourMgPerLBtps = Math.max(gas.vapourMgPerLBtps, Math.min(most, labelled))
  const mist = stage.kind === 'nebuliser' ? Math.max(0, labelled - vapourMgPerLBtps) : 0
  return { ...gas, temperatureC, vapourMgPerLBtps, aerosolMgPerLBtps: gas.aerosolMgPerLBtps + mist }
}

function outletC(values: ParameterValues): number {
  return values.heaterTemperatureC + values.chamberErrorC
}

function along(
  walk: Walk,
  stage: Extract<Stage, { readonly kind: 'hose' }>,
  around: Surroundings,
): Walk {
  const { values, room } = around
  const wallTemperatureC = stage.isHeated
    ? Math.max(walk.gas.temperatureC, room.temperatureC) + values.heatedWallAboveC
    : room.temperatureC
  const end = throughHose(
    walk.gas,
    { ...stage, wallTemperatureC, heatTransferWPerM2K: values.hoseHeatWPerM2K },
    room.barometricKpa,
  )
  const settledMgPerL = end.gas.aerosolMgPerLBtps * values.dropletLossShare
  const mgPerMin = end.condensateMgPerMin + settledMgPerL * end.gas.flowLpmBtps
  const aerosolMgPerLBtps = end.gas.aerosolMgPerLBtps - settledMgPerL
  const condensate = [...walk.condensate, { partId: stage.partId, mgPerMin }]
  return { ...walk, gas: { ...end.gas, aerosolMgPerLBtps }, condensate }
}

function inhaledOf(stream: MoistGas, around: Surroundings): MoistGas {
  const { question, room } = around
  const exchanger = question.path.stages.find((stage) => stage.kind === 'exchanger')
  if (exchanger !== undefined) return returned(stream, exchanger.labelMgPerL, around)
  const share = question.roomAirShare ?? 0
  if (share === 0) return stream
  const { flowLpmBtps } = stream
  if (share === 1) return roomAir({ flowLpmBtps, room })
  const air = roomAir({ flowLpmBtps: (flowLpmBtps * share) / (1 - share), room })
  return { ...mixedGas([stream, air], room.barometricKpa), flowLpmBtps }
}

/** What an exchanger gives back of the breath before, whatever comes towards it: gas just saturated with that much. */
function returned(stream: MoistGas, labelMgPerL: number | null, around: Surroundings): MoistGas {
  const { question, values, room } = around
  const measured =
    labelMgPerL === null ? values.exchangerMgPerL : labelMgPerL - values.exchangerOverstatedMgPerL
  const share = question.returnsThroughExchanger ? 1 : values.exchangerReturnShare
  const vapourMgPerLBtps = Math.max(stream.vapourMgPerLBtps, measured * share, 0)
  const { barometricKpa } = room
  const dewC = dewPointC({ vapourMgPerLBtps, barometricKpa })
  const temperatureC = Math.max(stream.temperatureC, dewC ?? stream.temperatureC)
  return { ...stream, temperatureC, vapourMgPerLBtps, aerosolMgPerLBtps: 0 }
}

function waterMgPerMin(gas: MoistGas): number {
  return gas.flowLpmBtps * (gas.vapourMgPerLBtps + gas.aerosolMgPerLBtps)
}
