// What the numbers of ward, drill, home sources and stock rest on, one sentence each. Leaves out cylinders, transfers and rooms, which have their own.
import { RESERVOIR_MASK_LPM } from '../supply/bed-outage.ts'
import { ROOM_C } from '../supply/lights-out.ts'
import { GAS_PER_LIQUID_AT_20C } from '../supply/liquid-oxygen.ts'
import { AREA_RULES } from '../supply/pipeline.ts'
import type { StockItem } from '../supply/stock.ts'
import type { WardDemand } from '../supply/ward-demand.ts'
import type { WardFile } from '../supply/ward.ts'
import { numberText } from './number-text.ts'
import { say } from './say.ts'
import { airPressureText, drawText, gasPressureText, gasVolumeText } from './supply-value.ts'
import type { GasUnits } from './supply-value.ts'

function roomLine({ roomC }: WardFile): string {
  const temperature = numberText(roomC ?? ROOM_C, 1)
  return roomC === undefined
    ? say('Temperature of the ward not given: {temperature} °C taken for its cylinders.', {
        temperature,
      })
    : say('Cylinders stand at {temperature} °C, as the file says.', { temperature })
}

function wardAirLine(ward: WardFile, barometricKpa: number): string {
  const pressure = airPressureText(barometricKpa)
  if (ward.barometricPressureKpa !== undefined)
    return say('Air pressure {pressure}, as the file says: meters let other flows through there.', {
      pressure,
    })
  return ward.altitudeM === undefined
    ? say('Altitude of the ward not given: sea level taken, {pressure}.', { pressure })
    : say(
        'Air pressure {pressure}, of {altitude} m as the file says: meters let other flows through there.',
        { pressure, altitude: numberText(ward.altitudeM, 1) },
      )
}

export function wardBasisLines(
  ward: WardFile,
  demand: Pick<WardDemand, 'barometricKpa'>,
  units: GasUnits,
): readonly string[] {
  const { firstLpm, eachMoreLpm } = AREA_RULES[ward.supply.area]
  const { manifold, bulk, restOfHospitalLpm } = ward.supply
  return [
    say(
      'Drawn now: what each bed’s set-up takes from the pipeline, with what runs beside it; of a blend its oxygen share. Beds on a cylinder or a concentrator take nothing.',
    ),
    wardAirLine(ward, demand.barometricKpa),
    say(
      'Design flow: {first} for the first of {beds} beds, {each} for each further one; from memory.',
      {
        first: drawText(firstLpm),
        each: drawText(eachMoreLpm),
        beds: String(ward.beds.length),
      },
    ),
    ...(manifold === undefined
      ? []
      : [
          say(
            'Manifold: {count} cylinders of {water} L at {gauge}, down to {left}, as the file says; oxygen as a real gas (Stewart 1991).',
            {
              count: String(manifold.count),
              water: numberText(manifold.waterVolumeL, 0.1),
              gauge: gasPressureText(manifold.gaugeKpa, units),
              left: gasPressureText(manifold.leftGaugeKpa, units),
            },
          ),
          roomLine(ward),
        ]),
    ...(bulk === undefined ? [] : [liquidLine(units)]),
    ...(manifold === undefined && bulk === undefined
      ? []
      : [
          restOfHospitalLpm === undefined
            ? say(
                'What the rest of the hospital draws is not given: the hours are those of this ward alone.',
              )
            : say('The rest of the hospital draws {rest} from the same plant, as the file says.', {
                rest: drawText(restOfHospitalLpm),
              }),
        ]),
  ]
}

export function drillBasisLines(ward: WardFile): readonly string[] {
  return [
    say(
      'Minutes left: all that the cylinders at the bed hold down to nothing, their valves open, over what is drawn now.',
    ),
    say(
      'Off a blend that fails, a reservoir mask at {flow} is reckoned with (O’Driscoll 2017) until more is known.',
      { flow: drawText(RESERVOIR_MASK_LPM) },
    ),
    roomLine(ward),
    say(
      'Batteries, drives, plants and cylinders are as the file says; what it leaves out is not known.',
    ),
    say(
      'Order: fails at once, not known, the shortest time, another gas, works on; of equals the highest draw first.',
    ),
  ]
}

export function machineBasisLines(of: { readonly isPurityTyped: boolean }): readonly string[] {
  return [
    of.isPurityTyped
      ? say('Purity as typed from the label, for this flow alone.')
      : say('Purity not given: 93 % taken, 90 to 96 %, as the pharmacopoeia has it (2010).'),
    say(
      'Inhaled: air + (fraction with pure oxygen − air) × (purity − air) / (1 − air); air is 0.2095.',
    ),
  ]
}

export function liquidLine(units: GasUnits): string {
  return say(
    'A litre of liquid is {gas} of gas at 20 °C, from the equation of state (Stewart 1991).',
    { gas: gasVolumeText(GAS_PER_LIQUID_AT_20C, units) },
  )
}

export function vesselBasisLines(units: GasUnits): readonly string[] {
  return [
    liquidLine(units),
    say('Longest: all that evaporates is drawn. Shortest: all of it is lost beside what is drawn.'),
  ]
}

export function stockBasisLine({ usedEachDay }: StockItem): string {
  return say(
    'Use a day: mean of the {days, plural, one {# day} other {# days}} given. Days left: on hand over that.',
    { days: usedEachDay.length },
  )
}
