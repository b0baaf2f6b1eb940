// Humidifiers, water use and condensate as formulas of rows, worked by the functions the product uses. Leaves out the rows.
import { assert } from '../errors.ts'
import { perOwnLitreMg } from '../humidity/body-litre.ts'
import { coldBottle, heatedChamber } from '../humidity/humidifiers.ts'
import { PARAMETERS } from '../humidity/parameters.ts'
import { mlPerHour, saturatingMlPerHour } from '../humidity/water-use.ts'
import { flowmeterToBtpsFactor } from '../physics/gas-condition.ts'
import { condensateMgPerL } from '../physics/water-vapour.ts'
import { STANDARD_PRESSURE_KPA } from '../units/constants.ts'
import { normalProbability } from '../units/normal.ts'
import { medianOf } from '../units/spread.ts'

type Given = Readonly<Record<string, number>>

const BAROMETRIC = { barometricKpa: STANDARD_PRESSURE_KPA }
const HOURS_PER_DAY = 24
const PER_CENT = 100

export const HUMIDITY_FORMULAS = {
  /** As a hygrometer reads it, mg per litre of the gas at room temperature. */
  'bubble-humidity': (g: Given) =>
    bubbleMgPerL({
      flowLpm: of(g, 'flowLpm'),
      temperatureC: of(g, 'roomC'),
      saturation: g['saturation'],
    }),
  'bubble-humidity-change': (g: Given) =>
    bubbleMgPerL({ flowLpm: of(g, 'toLpm'), temperatureC: of(g, 'roomC') }) -
    bubbleMgPerL({ flowLpm: of(g, 'fromLpm'), temperatureC: of(g, 'roomC') }),
  /** Mean over the flows 3, 6, 9, 12 and 15 L/min. */
  'bubble-humidity-mean': (g: Given) => {
    const values = [3, 6, 9, 12, 15].map((flowLpm) =>
      bubbleMgPerL({ flowLpm, temperatureC: of(g, 'roomC') }),
    )
    return values.reduce((sum, value) => sum + value, 0) / values.length
  },
  'chamber-humidity': (g: Given) => {
    const chamber = { outletTemperatureC: of(g, 'outletC') + (g['errorC'] ?? 0), ...BAROMETRIC }
    return perOwnLitreMg({ ...heatedChamber(dryGas(of(g, 'flowLpm')), chamber), ...BAROMETRIC })
  },
  'exchangers-above-percent': (g: Given) => {
    const { spread } = PARAMETERS.exchangerMgPerL
    assert(spread.kind === 'normal', 'evidence/exchangers normal')
    return (
      PER_CENT * normalProbability(((g['meanMgPerL'] ?? spread.mean) - of(g, 'mgPerL')) / spread.sd)
    )
  },
  'water-per-day': (g: Given) =>
    HOURS_PER_DAY *
    saturatingMlPerHour({
      flowLpmBtps: of(g, 'flowLpmBtps'),
      temperatureC: of(g, 'temperatureC'),
      heldMgPerLBtps: of(g, 'heldMgPerL'),
      ...BAROMETRIC,
    }),
  'condensate-per-hour': (g: Given) =>
    mlPerHour(
      condensateMgPerL({ fromTemperatureC: of(g, 'fromC'), toTemperatureC: of(g, 'toC') }) *
        of(g, 'flowLpm'),
    ),
} as const satisfies Readonly<Record<string, (given: Given) => number>>

function bubbleMgPerL(bottle: {
  readonly flowLpm: number
  readonly temperatureC: number
  readonly saturation?: number | undefined
}): number {
  const { flowLpm, temperatureC } = bottle
  const room = { temperatureC, relativeHumidityFraction: 0.5, ...BAROMETRIC }
  const gas = coldBottle(
    { ...dryGas(flowLpm), temperatureC },
    {
      room,
      saturation: bottle.saturation ?? medianOf(PARAMETERS.bubbleSaturation.spread),
      heatWPerK: medianOf(PARAMETERS.bubbleHeatWPerK.spread),
    },
  )
  return perOwnLitreMg({ ...gas, ...BAROMETRIC })
}

function dryGas(flowLpm: number) {
  return {
    flowLpmBtps: flowLpm * flowmeterToBtpsFactor(BAROMETRIC),
    temperatureC: 20,
    vapourMgPerLBtps: 0,
    aerosolMgPerLBtps: 0,
  }
}

function of(given: Given, name: string): number {
  const value = given[name]
  assert(value !== undefined, 'formula gets every number it names')
  return value
}
