// What one failure does to one bed: works on, minutes left, fails, gives another gas, or not known; and what to do, by codes. Leaves out the order of beds.
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import { usableContents } from './cylinder.ts'
import { supplyRemark, type SupplyRemark } from './supply-remark.ts'
import type { BedAnswer } from './ward-bed.ts'
import type { BedCylinder, WardSupply } from './ward.ts'

export const FAILURES = ['mains', 'pipeline-oxygen', 'medical-air', 'blender'] as const
export type Failure = (typeof FAILURES)[number]

/** `other-gas`: gas flows, with another fraction than set. */
export type OutageState = 'works' | 'minutes' | 'fails' | 'other-gas' | 'unknown'

export interface BedOutage {
  readonly failure: Failure
  readonly state: OutageState
  /** Until it stops; null where it works on, or where nobody knows. 0 where it fails at once. */
  readonly minutes: number | null
  /** What happens, then what to do. */
  readonly remarks: readonly SupplyRemark[]
  readonly actions: readonly SupplyRemark[]
  /** The course over minutes of the patient's saturation is not computed yet. */
  readonly saturationPath: null
}

export interface OutagePlace {
  readonly supply: WardSupply
  readonly barometricKpa: number
  readonly roomC: number
}

type Outcome = Omit<BedOutage, 'failure' | 'saturationPath'>

/** A patient off a failed blend gets a reservoir mask at this flow until more is known, L/min [ODriscoll2017]. */
export const RESERVOIR_MASK_LPM = 15

/** What becomes of one bed when one thing fails. Minutes are usable litres of the bed's own cylinders down to nothing left, over what is drawn
 *  then (a blend's patient at RESERVOIR_MASK_LPM), or the battery's; what the file does not say is `unknown`, never guessed. Room −40–50 °C,
 *  cylinders and pressure valid as usableContents, else DomainError. Exact arithmetic; lights-out.test.ts. */
export function bedOutage(answer: BedAnswer, failure: Failure, place: OutagePlace): BedOutage {
  const outcome = outcomeOf(answer, failure, place)
  const hasHeater = answer.bed.hasHeatedHumidifier === true && failure === 'mains'
  const remarks = [...outcome.remarks, ...(hasHeater ? [supplyRemark('HEATER_STOPS')] : [])]
  return { failure, ...outcome, remarks, saturationPath: null }
}

function outcomeOf(answer: BedAnswer, failure: Failure, place: OutagePlace): Outcome {
  switch (answer.feed) {
    case 'empty':
    case 'room-air':
      return works('BREATHES_ROOM_AIR')
    case 'unknown':
      return unknown('SET_UP_NOT_KNOWN')
    case 'cylinder':
      return onOwnCylinder(answer, place)
    case 'own-source':
      return failure === 'mains' ? concentratorStops(answer, place) : works('WORKS_ON')
    case 'pipeline':
      return isMixer(answer) ? mixer(answer, failure, place) : wall(answer, failure, place)
  }
}

function isMixer({ setUp }: BedAnswer): boolean {
  return setUp?.source.kind === 'blender' || setUp?.source.kind === 'ventilator'
}

/** Wall flowmeters and the jet nebulisers on them. */
function wall(answer: BedAnswer, failure: Failure, place: OutagePlace): Outcome {
  if (failure === 'pipeline-oxygen') return noOxygen(answer, place, answer.drawn?.oxygenLpm ?? 0)
  return failure === 'mains' ? plantAtMains(answer, place) : works('WORKS_ON')
}

function plantAtMains(answer: BedAnswer, { supply }: OutagePlace): Outcome {
  const { plant, plantsHaveGenerator } = supply
  if (plant === undefined) return unknown('PLANT_NOT_STATED')
  if (plant !== 'concentrator-plant' || plantsHaveGenerator === true) return works('WORKS_ON')
  const remarks = [supplyRemark('PLANT_STOPS')]
  const bring = (answer.bed.cylinders ?? []).length === 0 ? (['DO_FETCH_CYLINDER'] as const) : []
  return { ...unknown('PLANT_STOPS'), remarks, actions: actions(...bring, 'DO_FIND_OUT') }
}

function mixer(answer: BedAnswer, failure: Failure, place: OutagePlace): Outcome {
  switch (failure) {
    case 'blender':
      return {
        state: 'fails',
        minutes: 0,
        remarks: [supplyRemark('NO_GAS_AT_ALL')],
        actions: actions('DO_MOVE_TO_FLOWMETER', 'DO_CALL_FOR_HELP'),
      }
    case 'pipeline-oxygen': {
      const rest = noOxygen(answer, place, RESERVOIR_MASK_LPM)
      const remarks = [
        supplyRemark('GIVES_AIR_ONLY'),
        ...rest.remarks.filter(({ code }) => code !== 'NO_GAS_AT_ALL'),
        ...(rest.state === 'minutes'
          ? [supplyRemark('DRAW_AT_RESERVOIR_MASK', { flowLpm: RESERVOIR_MASK_LPM })]
          : []),
      ]
      return { ...rest, remarks }
    }
    case 'medical-air':
      return withoutAir(answer)
    case 'mains':
      return mixerAtMains(answer, place)
  }
}

/** A pneumatic mixer passes oxygen alone; one with its own turbine makes its air. */
function withoutAir({ bed, setUp }: BedAnswer): Outcome {
  if (bed.mixerDrive === undefined) return unknown('MIXER_DRIVE_NOT_STATED')
  if (bed.mixerDrive === 'mains') return works('WORKS_ON')
  const isHarmed = (bed.retentionRisk ?? 'none') !== 'none' || (bed.ageYears ?? 1) < 1
  const setO2Fraction = setUp?.setO2Fraction ?? 1
  return {
    state: 'other-gas',
    minutes: null,
    remarks: [supplyRemark('GIVES_OXYGEN_ONLY', { setO2Fraction })],
    actions: actions(
      ...(isHarmed ? (['DO_WATCH_FOR_TOO_MUCH_OXYGEN', 'DO_CALL_FOR_HELP'] as const) : []),
      'DO_MOVE_TO_FLOWMETER',
    ),
  }
}

function mixerAtMains(answer: BedAnswer, { supply }: OutagePlace): Outcome {
  const { mixerDrive, batteryMinutes } = answer.bed
  if (mixerDrive === undefined) return unknown('MIXER_DRIVE_NOT_STATED')
  if (mixerDrive === 'mains') {
    if (batteryMinutes === undefined) return unknown('BATTERY_NOT_STATED')
    return {
      state: batteryMinutes > 0 ? 'minutes' : 'fails',
      minutes: batteryMinutes,
      remarks: [supplyRemark('ON_BATTERY', { minutes: batteryMinutes })],
      actions: actions('DO_BRING_POWER', 'DO_MOVE_TO_FLOWMETER'),
    }
  }
  // Gas pressure alone drives it: as long as the plants of both gases run.
  if (supply.plantsHaveGenerator === undefined) return unknown('PLANT_NOT_STATED')
  return supply.plantsHaveGenerator ? works('WORKS_ON') : withoutAir(answer)
}

function concentratorStops(answer: BedAnswer, place: OutagePlace): Outcome {
  const { batteryMinutes } = answer.bed
  const onCylinders = cylinderMinutes(answer, place, answer.drawn?.oxygenLpm ?? 0)
  if (batteryMinutes === undefined && onCylinders === 0) return unknown('BATTERY_NOT_STATED')
  const minutes = (batteryMinutes ?? 0) + onCylinders
  return {
    state: minutes > 0 ? 'minutes' : 'fails',
    minutes,
    remarks: [
      batteryMinutes === undefined
        ? supplyRemark('BATTERY_NOT_STATED')
        : supplyRemark('ON_BATTERY', { minutes: batteryMinutes }),
      onCylinders > 0
        ? supplyRemark('ON_BED_CYLINDER', { minutes: onCylinders })
        : supplyRemark('NO_CYLINDER_AT_BED'),
    ],
    actions: onCylinders > 0 ? toCylinder(answer) : actions('DO_BRING_POWER', 'DO_FETCH_CYLINDER'),
  }
}

/** Runs on its own cylinder whatever fails; that ends too. */
function onOwnCylinder(answer: BedAnswer, place: OutagePlace): Outcome {
  if ((answer.bed.cylinders ?? []).length === 0) return unknown('CYLINDER_NOT_STATED')
  const minutes = cylinderMinutes(answer, place, answer.drawn?.oxygenLpm ?? 0)
  return {
    state: 'works',
    minutes,
    remarks: [supplyRemark('WORKS_ON'), supplyRemark('ON_BED_CYLINDER', { minutes })],
    actions: actions('DO_NOTHING_BUT_WATCH'),
  }
}

function noOxygen(answer: BedAnswer, place: OutagePlace, drawLpm: number): Outcome {
  const minutes = cylinderMinutes(answer, place, drawLpm)
  const isClose = answer.setUp !== null && isCloseFitting(answer.setUp.family)
  const takeOff = isClose ? (['DO_TAKE_MASK_OFF'] as const) : []
  if (minutes > 0)
    return {
      state: 'minutes',
      minutes,
      remarks: [supplyRemark('ON_BED_CYLINDER', { minutes })],
      actions: [...actions(...takeOff), ...toCylinder(answer)],
    }
  return {
    state: 'fails',
    minutes: 0,
    remarks: [supplyRemark('NO_GAS_AT_ALL'), supplyRemark('NO_CYLINDER_AT_BED')],
    actions: actions(...takeOff, 'DO_FETCH_CYLINDER', 'DO_CALL_FOR_HELP'),
  }
}

/** Masks with a bag hold what is breathed: empty, they hold nothing. */
function isCloseFitting(family: keyof typeof INTERFACE_FAMILIES): boolean {
  const { kind } = INTERFACE_FAMILIES[family].behaviour
  return kind === 'reservoir'
}

/** All cylinders at the bed, valves opened, down to nothing left; 0 where there are none. */
function cylinderMinutes(answer: BedAnswer, place: OutagePlace, drawLpm: number): number {
  const usableL = (answer.bed.cylinders ?? []).reduce(
    (sum, one) => sum + usableContents(opened(one, place), useAt(place)).usableL,
    0,
  )
  return drawLpm === 0 ? 0 : usableL / drawLpm
}

function opened({ waterVolumeL, gaugeKpa }: BedCylinder, { roomC }: OutagePlace) {
  return { waterVolumeL, gaugeKpa, readAtC: roomC, isValveOpen: true }
}

function useAt({ barometricKpa }: OutagePlace) {
  return { barometricKpa, leftGaugeKpa: 0 }
}

function toCylinder({ bed }: BedAnswer): readonly SupplyRemark[] {
  const isClosed = (bed.cylinders ?? []).some(({ isValveOpen }) => !isValveOpen)
  return actions(...(isClosed ? (['DO_OPEN_CYLINDER'] as const) : []), 'DO_MOVE_TO_CYLINDER')
}

function actions(...codes: readonly SupplyRemark['code'][]): readonly SupplyRemark[] {
  return codes.map((code) => supplyRemark(code))
}

function works(code: SupplyRemark['code']): Outcome {
  return {
    state: 'works',
    minutes: null,
    remarks: [supplyRemark(code)],
    actions: actions('DO_NOTHING_BUT_WATCH'),
  }
}

function unknown(code: SupplyRemark['code']): Outcome {
  return {
    state: 'unknown',
    minutes: null,
    remarks: [supplyRemark(code)],
    actions: actions('DO_FIND_OUT'),
  }
}
