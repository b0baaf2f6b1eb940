// Shelf rows as parts of a chain, with the usual ends where a row names none. Leaves out where a row lies and how many there are.
import { settingsOf } from '../kit/feeds.ts'
import { marksLpm } from '../kit/flow-steps.ts'
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { AirMeterRow, FittingRow, OutletRow, TubeRow } from '../kit/part-rows.ts'
import { ratedRange } from '../kit/set-up-settings.ts'
import type { HumidifierRow, InterfaceRow, ShelfSource, SizeStock } from '../kit/shelf.ts'
import type { LabelFlow } from '../kit/shelf-row.ts'
import { hasLabelWeight, labelWeight } from '../kit/weight-fit.ts'
import {
  USUAL_AIR_METER_ENDS,
  USUAL_HUMIDIFIER_ENDS,
  USUAL_INTERFACE_ENDS,
  USUAL_SOURCE_ENDS,
  USUAL_TUBE_END,
  usualOutletEnd,
} from '../kit/usual-ends.ts'
import type { Part, PartFlow } from './part.ts'

/** What a part has unless its kind says otherwise. */
const PLAIN = {
  openEnds: [],
  isOpen: false,
  tube: null,
  flow: { isFromLabel: false },
} as const satisfies Partial<Part>

function labelFlow(label: LabelFlow): PartFlow {
  const { ratedMinLpm, ratedMaxLpm } = label
  return {
    ...(ratedMinLpm === undefined ? {} : { minLpm: ratedMinLpm }),
    ...(ratedMaxLpm === undefined ? {} : { maxLpm: ratedMaxLpm }),
    isFromLabel: ratedMinLpm !== undefined || ratedMaxLpm !== undefined,
  }
}

export function outletPart(row: OutletRow): Part {
  return {
    ...PLAIN,
    id: row.id,
    kind: row.kind,
    label: row.label,
    inlets: [],
    outlet: row.outletEnd ?? usualOutletEnd(row),
    gas: row.gas,
  }
}

export function airMeterPart(row: AirMeterRow): Part {
  return {
    ...PLAIN,
    id: row.id,
    kind: 'air-flowmeter',
    label: row.label,
    inlets: row.inletEnds ?? USUAL_AIR_METER_ENDS.inletEnds,
    outlet: row.outletEnd ?? USUAL_AIR_METER_ENDS.outletEnd,
    marksLpm: row.stepsLpm,
  }
}

/** A jet nebuliser has as many inlets as jets, each for a meter of its own. */
export function sourcePart(row: ShelfSource): Part {
  const usual = USUAL_SOURCE_ENDS[row.kind]
  return {
    ...PLAIN,
    id: row.id,
    kind: row.kind,
    label: row.label,
    inlets: row.inletEnds ?? usual.inletEnds,
    outlet: row.outletEnd ?? usual.outletEnd,
    source: row,
    ...(row.kind === 'jet-nebuliser' ? {} : { marksLpm: marksLpm(row) }),
    ...fractionsOf(row),
  }
}

function fractionsOf(row: ShelfSource): Pick<Part, 'fractions'> {
  if (row.kind === 'jet-nebuliser') return { fractions: row.settings }
  return 'fractionSteps' in row ? { fractions: row.fractionSteps } : {}
}

export function humidifierPart(row: HumidifierRow): Part {
  const usual = USUAL_HUMIDIFIER_ENDS[row.kind]
  return {
    ...PLAIN,
    id: row.id,
    kind: row.kind,
    label: row.label,
    inlets: row.inletEnds ?? usual.inletEnds,
    outlet: row.outletEnd ?? usual.outletEnd,
    flow: labelFlow(row),
    humidifier: row,
  }
}

export function tubePart(row: TubeRow): Part {
  const end = USUAL_TUBE_END[row.kind]
  return {
    ...PLAIN,
    id: row.id,
    kind: row.kind,
    label: row.label,
    inlets: [row.inletEnd ?? end],
    outlet: row.outletEnd ?? end,
    flow: labelFlow(row),
    tube: {
      lengthM: row.lengthM,
      boreMm: row.boreMm,
      isHeated: row.isHeated ?? false,
      hasWaterTrap: row.hasWaterTrap ?? false,
    },
  }
}

export function fittingPart(row: FittingRow): Part {
  return {
    ...PLAIN,
    id: row.id,
    kind: row.kind,
    label: row.label,
    inlets: row.inletEnds,
    outlet: row.outletEnd ?? null,
    openEnds: row.openEnds ?? [],
    isOpen: row.hasPorts ?? false,
    flow: labelFlow(row),
  }
}

const AIR_PORTS = ['air-ports'] as const

/** Every interface family of ours is open to the room: ports, loose lying, the open arm of a T-piece, or the other nostril. The arm can be capped, so it counts as an end. */
export function interfacePart(options: {
  readonly row: InterfaceRow
  readonly stock: SizeStock
  /** The collar goes over the air ports and feeds them. */
  readonly hasCollarOn: boolean
}): Part {
  const { row, stock, hasCollarOn } = options
  const family = INTERFACE_FAMILIES[row.family]
  const usual = USUAL_INTERFACE_ENDS[row.family]
  const isTPiece = usual.outletEnd === 'conical-15-female'
  const rated = ratedRange(family, stock)
  return {
    ...PLAIN,
    id: `${row.id}/${stock.size}`,
    kind: 'interface',
    label: row.label,
    inlets: [...(row.inletEnds ?? usual.inletEnds), ...(hasCollarOn ? AIR_PORTS : [])],
    outlet: usual.outletEnd,
    openEnds: isTPiece ? ['conical-22-male'] : [],
    isOpen: !isTPiece,
    tube: row.tubing === undefined ? null : { ...row.tubing, isHeated: false, hasWaterTrap: false },
    flow:
      rated === null
        ? { isFromLabel: false }
        : { minLpm: rated.minLpm, maxLpm: rated.maxLpm, isFromLabel: rated.isFromLabel },
    ...(family.entrainsAir === 'no'
      ? {}
      : { fractions: settingsOf(row).map(({ o2Fraction }) => o2Fraction) }),
    family: row.family,
    size: stock.size,
    ...(hasLabelWeight(stock) ? { fits: labelWeight(stock) } : {}),
  }
}
