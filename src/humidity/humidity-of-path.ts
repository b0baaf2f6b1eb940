// The humidity answer for one water path: water at the airway with its spread, requirement, shortfall, water use, condensate, rules, assumptions. Leaves out how the path was found.
import { requireWithin } from '../errors.ts'
import type { FamilyId } from '../kit/family-id.ts'
import { flowmeterToBtpsFactor } from '../physics/gas-condition.ts'
import { requireBarometricKpa } from '../physics/atmosphere.ts'
import { assumptionsOf } from './assumptions.ts'
import type { Assumption } from './assumptions.ts'
import { bandOf, runsOver, spreadsWith } from './band.ts'
import type { HumidityBand, Runs } from './band.ts'
import { saturatedMgPerLBtps } from './body-litre.ts'
import {
  HEATER_TEMPERATURE_C_MAX,
  HEATER_TEMPERATURE_C_MIN,
  ROOM_TEMPERATURE_C_MAX,
  ROOM_TEMPERATURE_C_MIN,
} from './facts.ts'
import type { AirwayFacts, RoomFacts } from './facts.ts'
import { notMeasuredIn } from './not-measured.ts'
import { requirementFor } from './required-content.ts'
import type { Requirement } from './required-content.ts'
import { runPath } from './run-path.ts'
import type { PathRun } from './run-path.ts'
import { appliedRules } from './rules.ts'
import type { AppliedRule } from './rules.ts'
import { shortfallOf } from './shortfall.ts'
import type { Shortfall } from './shortfall.ts'
import { usedParameters } from './used-parameters.ts'
import { airPerGasOf, hasStage, isActivePath, vesselsOf } from './water-path.ts'
import type { WaterPath } from './water-path.ts'
import { mlPerHour, placeOf, refillOf } from './water-use.ts'
import type { CondensatePlace, Refill } from './water-use.ts'

export interface HumidityQuestion {
  readonly path: WaterPath
  readonly family: FamilyId
  /** Gas from the source, as metered: dry, 20 °C, 101.3 kPa. */
  readonly flowLpm: number
  readonly room: RoomFacts
  /** Gas leaving the heater, as set; null: not known, or no heater. */
  readonly heaterTemperatureC: number | null
  readonly airway: AirwayFacts
  /** Share of the inhaled gas drawn from the room beside the stream; null: not counted. */
  readonly roomAirShare?: number | null
}

export interface VesselAnswer {
  readonly partId: string
  readonly useMlPerHour: HumidityBand
  readonly refill: Refill
}

export interface CondensateAnswer {
  readonly partId: string
  readonly place: CondensatePlace
  readonly mlPerHour: HumidityBand
}

export interface HumidityAnswer {
  /** Vapour inhaled, mg for each litre at body conditions (37 °C, saturated). */
  readonly vapourMgPerLBtps: HumidityBand
  /** Droplets beside the vapour; they bring water but are not counted against the requirement. */
  readonly aerosolMgPerLBtps: HumidityBand
  readonly temperatureC: HumidityBand
  /** Stream that reaches the interface, litres at body conditions. */
  readonly streamLpmBtps: number
  readonly requirement: Requirement
  readonly shortfall: Shortfall
  readonly waterUseMlPerHour: HumidityBand
  /** The first vessel to run dry; null where none holds water. */
  readonly refillAfterHours: HumidityBand | null
  readonly vessels: readonly VesselAnswer[]
  readonly condensate: readonly CondensateAnswer[]
  readonly rules: readonly AppliedRule[]
  readonly assumptions: readonly Assumption[]
}

export function humidityOfPath(question: HumidityQuestion): HumidityAnswer {
  requireQuestion(question)
  const { path, room, airway, family } = question
  const spreads = spreadsWith(givenValues(question))
  const used = usedParameters(question)
  const flowLpmBtps =
    question.flowLpm * flowmeterToBtpsFactor({ barometricKpa: room.barometricKpa })
  const pathQuestion = {
    path,
    flowLpmBtps,
    barometricKpa: room.barometricKpa,
    roomAirShare: question.roomAirShare ?? null,
    returnsThroughExchanger: airway.returnsThroughNeck,
  }
  const runs = runsOver({ spreads, used, run: (values) => runPath(pathQuestion, values) })
  const water = inhaledWater(runs, room.barometricKpa)
  const condensate = condensateOf(path, runs)
  const requirement = requirementFor({
    airway,
    family,
    deviceFlowLpm: question.flowLpm,
    airPerGas: airPerGasOf(path),
    isExchangerAlone: hasStage(path, 'exchanger') && !isActivePath(path),
  })
  return {
    ...water,
    streamLpmBtps: runs.middle.stream.flowLpmBtps,
    requirement,
    shortfall: shortfallOf({
      vapour: water.vapourMgPerLBtps,
      requirement,
      notMeasured: notMeasuredIn(used),
    }),
    ...waterUseOf(path, runs),
    condensate,
    rules: appliedRules({
      airway,
      path,
      family,
      deviceFlowLpm: question.flowLpm,
      temperatureC: water.temperatureC,
      condensateMlPerHour: total(condensate.map((one) => one.mlPerHour.middle)),
    }),
    assumptions: assumptionsOf({ question, spreads, used }),
  }
}

function givenValues(question: HumidityQuestion): Parameters<typeof spreadsWith>[0] {
  const { room, heaterTemperatureC } = question
  return {
    ...(room.temperatureC === null ? {} : { roomTemperatureC: room.temperatureC }),
    ...(room.relativeHumidityFraction === null
      ? {}
      : { roomRelativeHumidityFraction: room.relativeHumidityFraction }),
    ...(heaterTemperatureC === null ? {} : { heaterTemperatureC }),
  }
}

/** The band of vapour ends where the warmest gas of the band is saturated. */
function inhaledWater(
  runs: Runs<PathRun>,
  barometricKpa: number,
): Pick<HumidityAnswer, 'vapourMgPerLBtps' | 'aerosolMgPerLBtps' | 'temperatureC'> {
  const temperatureC = bandOf(runs, (run) => run.inhaled.temperatureC)
  const vapour = bandOf(runs, (run) => run.inhaled.vapourMgPerLBtps)
  const most = saturatedMgPerLBtps({ temperatureC: temperatureC.high, barometricKpa })
  return {
    vapourMgPerLBtps: { ...vapour, high: Math.min(vapour.high, Math.max(most, vapour.middle)) },
    aerosolMgPerLBtps: bandOf(runs, (run) => run.inhaled.aerosolMgPerLBtps),
    temperatureC,
  }
}

function condensateOf(path: WaterPath, runs: Runs<PathRun>): readonly CondensateAnswer[] {
  return path.stages
    .filter((stage) => stage.kind === 'hose')
    .map((hose) => ({
      partId: hose.partId,
      place: placeOf(hose),
      mlPerHour: bandOf(runs, (run) => mlPerHour(amountAt(run.condensate, hose.partId))),
    }))
    .filter((one) => one.mlPerHour.high > 0)
}

function waterUseOf(
  path: WaterPath,
  runs: Runs<PathRun>,
): Pick<HumidityAnswer, 'waterUseMlPerHour' | 'refillAfterHours' | 'vessels'> {
  const vessels = vesselsOf(path).map((stage) => {
    const useMlPerHour = bandOf(runs, (run) => mlPerHour(amountAt(run.waterUse, stage.partId)))
    return { partId: stage.partId, useMlPerHour, refill: refillOf(stage, useMlPerHour) }
  })
  const waterUseMlPerHour = bandOf(runs, (run) =>
    mlPerHour(total(run.waterUse.map(({ mgPerMin }) => mgPerMin))),
  )
  const soonest = vessels
    .map(({ refill }) => refill.afterHours)
    .filter((hours) => hours !== null)
    .toSorted((a, b) => a.middle - b.middle)[0]
  return { vessels, waterUseMlPerHour, refillAfterHours: soonest ?? null }
}

function amountAt(
  amounts: readonly { readonly partId: string; readonly mgPerMin: number }[],
  partId: string,
): number {
  return total(amounts.filter((one) => one.partId === partId).map(({ mgPerMin }) => mgPerMin))
}

function total(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0)
}

const FLOW_LPM_MIN = 0.01
const FLOW_LPM_MAX = 150

function requireQuestion(question: HumidityQuestion): void {
  const { room, heaterTemperatureC, flowLpm, roomAirShare } = question
  requireBarometricKpa(room.barometricKpa, 'room.barometricKpa')
  requireWithin({
    code: 'FLOW_OUT_OF_RANGE',
    path: 'flowLpm',
    value: flowLpm,
    min: FLOW_LPM_MIN,
    max: FLOW_LPM_MAX,
    unit: 'L/min',
  })
  const temperature = { code: 'TEMPERATURE_OUT_OF_RANGE', unit: '°C' } as const
  if (room.temperatureC !== null)
    requireWithin({
      ...temperature,
      path: 'roomTemperatureC',
      value: room.temperatureC,
      min: ROOM_TEMPERATURE_C_MIN,
      max: ROOM_TEMPERATURE_C_MAX,
    })
  if (heaterTemperatureC !== null)
    requireWithin({
      ...temperature,
      path: 'heaterTemperatureC',
      value: heaterTemperatureC,
      min: HEATER_TEMPERATURE_C_MIN,
      max: HEATER_TEMPERATURE_C_MAX,
    })
  requireFraction('roomRelativeHumidityFraction', room.relativeHumidityFraction)
  requireFraction('roomAirShare', roomAirShare ?? null)
}

function requireFraction(path: string, value: number | null): void {
  if (value !== null) requireWithin({ code: 'FRACTION_OUT_OF_RANGE', path, value, min: 0, max: 1 })
}
