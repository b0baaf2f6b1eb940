// What the transfer planner says: the answer, the legs, the lift, the sheet, and the picture of cylinders over the way. Leaves out labels of fields and remarks by code.
import type { ClockTime } from '../supply/duration.ts'
import type { LegKind } from '../supply/transport.ts'
import { durationText, fractionText, numberText } from './number-text.ts'
import { say } from './say.ts'
import { legName } from './supply-names.ts'
import {
  airPressureText,
  clockTimeText,
  drawText,
  gasPressureText,
  gasVolumeText,
} from './supply-value.ts'
import type { GasUnits } from './supply-value.ts'

export const TRANSFER_TEXT = {
  help: () =>
    say('Oxygen for the whole way with its reserve, which cylinders, and when to change them.'),
  onPatient: () => say('On the patient'),
  legs: () => say('The way'),
  addLeg: () => say('Add a leg'),
  moreLeg: () => say('Set-up, delay, air pressure, outlet'),
  earlier: () => say('Move up'),
  later: () => say('Move down'),
  reserve: () => say('Reserve and start'),
  reserveHelp: () =>
    say(
      'Usual: twice the planned time or 30 minutes more, whichever is more. Local policy comes first.',
    ),
  store: () => say('Cylinders to choose from'),
  addCylinder: () => say('Add a kind of cylinder'),
  asBefore: () => say('as before'),
  scanner: () => say('At the scanner'),
  tube: (from: string) => say('Tube counted: {from}.', { from }),
  setUps: () => say('Set-ups on the way'),
  take: () => say('Take'),
  none: () => say('Nothing is drawn from a cylinder'),
  noCylinder: () => say('No cylinder of the store can be used'),
  change: () => say('Change at'),
  noChange: () => say('No change on the way'),
  empty: () => say('down to the reserve at'),
  worst: () => say('If the flow must rise to the next step'),
  still: (leg: string) => say('{leg} stands still: 20 minutes more', { leg: capital(leg) }),
  moving: () => say('It moves again'),
  /** Two legs of one kind are told apart by their number. */
  numbered: (leg: string, position: number) =>
    say('{leg} (leg {position})', { leg, position: String(position) }),
  mind: () => say('Mind'),
  checks: () => say('Before leaving, and on the way'),
  picture: () => say('Cylinders over the way'),
  legTable: () => say('Leg by leg'),
  printSheet: () => say('Print the transfer sheet'),
  sheet: () => say('Transfer sheet'),
  sheetLine: () => say('Patient code, bed, name of who checked: ____________________________'),
  gasFails: () =>
    say(
      'If the gas fails: take a close-fitting mask off, give oxygen from another source, call for help.',
    ),
  storeRow: (position: number) =>
    say('Kind {position} of cylinder', { position: String(position) }),
  onIt: (setUp: string) => say('On the way: {setUp}.', { setUp }),
  notTaken: (cylinder: string, reason: string) =>
    say('Not taken: {cylinder}: {reason}.', { cylinder, reason }),
} as const

function capital(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1)
}

export function legHeading(position: number, kind: LegKind): string {
  return say('Leg {position}: {kind}', { position: String(position), kind: legName(kind) })
}

/** "2 × 3 L at 150 bar" */
export function pickText(
  pick: {
    readonly count: number
    readonly label: string
    readonly waterVolumeL: number
    readonly gaugeKpa: number
  },
  units: GasUnits,
): string {
  const count = String(pick.count)
  const cylinder = cylinderKindText(pick, units)
  const label = pick.label.trim()
  return label === ''
    ? say('{count} × {cylinder}', { count, cylinder })
    : say('{count} × {cylinder} ({label})', { count, cylinder, label })
}

/** "3 L at 150 bar" */
export function cylinderKindText(
  kind: { readonly waterVolumeL: number; readonly gaugeKpa: number },
  units: GasUnits,
): string {
  return say('{water} L at {gauge}', {
    water: numberText(kind.waterVolumeL, 0.1),
    gauge: gasPressureText(kind.gaugeKpa, units),
  })
}

export function wayText(way: {
  readonly leaveAt: string
  readonly plannedMinutes: number
  readonly reservedMinutes: number
}): string {
  return say('Leave at {leaveAt}; the way takes {planned}, the oxygen is for {reserved}', {
    leaveAt: way.leaveAt,
    planned: durationText(way.plannedMinutes),
    reserved: durationText(way.reservedMinutes),
  })
}

export function needText(
  need: { readonly neededL: number; readonly usableL: number },
  units: GasUnits,
): string {
  return say('{needed} wanted, {usable} usable in what is taken', {
    needed: gasVolumeText(need.neededL, units),
    usable: gasVolumeText(need.usableL, units),
  })
}

export function worstText(
  worst: {
    readonly neededL: number
    readonly missingL: number
    readonly emptyAt: string
  },
  units: GasUnits,
): string {
  const needed = gasVolumeText(worst.neededL, units)
  const { emptyAt } = worst
  return worst.missingL > 0
    ? say(
        '{needed} wanted with its reserve: {missing} are missing. Down to the reserve at {emptyAt}.',
        { needed, missing: gasVolumeText(worst.missingL, units), emptyAt },
      )
    : say('{needed} wanted with its reserve: still covered. Down to the reserve at {emptyAt}.', {
        needed,
        emptyAt,
      })
}

export function stoppedText(stopped: {
  readonly leg: string
  readonly changeAt: string
  readonly emptyAt: string
  readonly arriveAt: string
}): string {
  const { changeAt, emptyAt, arriveAt } = stopped
  return say(
    '{leg} stands still for 20 minutes: arrive at {arriveAt}; change at {changeAt}; down to the reserve at {emptyAt}.',
    { leg: capital(stopped.leg), arriveAt, changeAt, emptyAt },
  )
}

export function stoppedShortText(missingL: number, units: GasUnits): string {
  return say('Then {missing} are missing on the way: take more, or do not leave like this.', {
    missing: gasVolumeText(missingL, units),
  })
}

export function stoppedCoveredText(): string {
  return say('The cylinders taken still last the whole way.')
}

/** One leg in a line: times, draw, air pressure, what is inhaled where it was modelled. */
export function legLine(leg: {
  readonly name: string
  readonly from: ClockTime
  readonly until: ClockTime
  readonly carriedLpm: number
  readonly worstLpm: number
  readonly barometricKpa: number
  readonly effectiveO2Fraction: number | null
}): string {
  const line = say(
    '{name}, {from} to {until}: {draw} drawn, {worst} at the next step; air at {pressure}',
    {
      name: capital(leg.name),
      from: clockTimeText(leg.from),
      until: clockTimeText(leg.until),
      draw: drawText(leg.carriedLpm),
      worst: drawText(leg.worstLpm),
      pressure: airPressureText(leg.barometricKpa),
    },
  )
  return leg.effectiveO2Fraction === null
    ? line
    : say('{line}; about {fraction} inhaled', {
        line,
        fraction: fractionText(leg.effectiveO2Fraction),
      })
}

/** From which leg on, and when, another set-up or flow stands. */
export function legSetUpText(leg: {
  readonly position: number
  readonly kind: LegKind
  readonly from: string
  readonly setUp: string
}): string {
  const { from, setUp } = leg
  const position = String(leg.position)
  return say('From {from}, leg {position}, {kind}: {setUp}', {
    from,
    position,
    kind: legName(leg.kind),
    setUp,
  })
}

/** What the planner's numbers rest on. */
export function transferBasisLines(basis: {
  readonly factor: number
  readonly extraMinutes: number
  readonly leftText: string
  readonly gaugeErrorText: string | null
  readonly temperatureC: number
}): readonly string[] {
  return [
    say(
      'Reserve: {factor} times the planned time, or {extra} more, whichever is more, at the highest draw of any leg.',
      { factor: numberText(basis.factor, 0.1), extra: durationText(basis.extraMinutes) },
    ),
    say('Each cylinder is used down to {left}, as typed, and then changed.', {
      left: basis.leftText,
    }),
    basis.gaugeErrorText === null
      ? say('Gauge error not given: gauges are taken as right.')
      : say('Only what is surely there counts: each gauge may read {error} too high.', {
          error: basis.gaugeErrorText,
        }),
    say('Gas at {temperature} °C, oxygen as a real gas (Stewart 1991), litres at 20 °C.', {
      temperature: numberText(basis.temperatureC, 1),
    }),
    say('Fewest cylinders first, then the least left over; the largest is used first.'),
  ]
}

export const TIMELINE_TEXT = {
  title: () => say('Cylinders over the way'),
  way: () => say('the way'),
  reserve: () => say('reserve'),
  used: () => say('cylinder in use'),
  wayEnds: (clock: string) => say('arrive at {clock}', { clock }),
  reserveEnds: (clock: string) => say('reserve until {clock}', { clock }),
  missing: () => say('no cylinder left'),
  empty: () => say('Nothing is drawn from a cylinder on this way.'),
} as const

export function timelineLegText(leg: {
  readonly name: string
  readonly from: string
  readonly until: string
}): string {
  const { from, until } = leg
  return say('{name}: {from} to {until}', { name: capital(leg.name), from, until })
}

export function timelineRunText(run: {
  readonly cylinder: number
  readonly label: string
  readonly from: string
  readonly until: string
  readonly isLast: boolean
}): string {
  const cylinder = String(run.cylinder)
  const { label, from, until } = run
  return run.isLast
    ? say('cylinder {cylinder}, {label}: from {from}, down to the reserve at {until}', {
        cylinder,
        label,
        from,
        until,
      })
    : say('cylinder {cylinder}, {label}: from {from}, change at {until}', {
        cylinder,
        label,
        from,
        until,
      })
}
