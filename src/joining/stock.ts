// What a chain can be built from: every row of a shelf as a part with its count, and whether it lies at hand. Leaves out which of it fits.
import { EVERYWHERE, isAtHand } from '../kit/shelf.ts'
import type { Shelf } from '../kit/shelf.ts'
import type { Part } from './part.ts'
import {
  airMeterPart,
  fittingPart,
  humidifierPart,
  interfacePart,
  outletPart,
  sourcePart,
  tubePart,
} from './parts-of-shelf.ts'

export interface Stocked {
  readonly part: Part
  readonly count: number
  /** A ward's id, EVERYWHERE, or null for a part that no ward has. */
  readonly place: string | null
  readonly isAtHand: boolean
}

/** Interfaces come with the collar on or off; both draw on the same stock. */
export function stockOf(options: {
  readonly shelf: Shelf
  readonly wardId?: string
  readonly hasCollarOn: boolean
}): readonly Stocked[] {
  const { shelf, wardId, hasCollarOn } = options
  const stocked = (
    row: { readonly place: string; readonly count: number },
    part: Part,
  ): readonly Stocked[] =>
    row.count > 0
      ? [{ part, count: row.count, place: row.place, isAtHand: isAtHand(row, wardId) }]
      : []
  return [
    ...shelf.interfaces.flatMap((row) =>
      row.sizes.flatMap((stock) =>
        stocked(
          { place: row.place, count: stock.count },
          interfacePart({ row, stock, hasCollarOn: hasCollarOn && row.hasCollar === true }),
        ),
      ),
    ),
    ...shelf.sources.flatMap((row) => stocked(row, sourcePart(row))),
    ...shelf.humidifiers.flatMap((row) => stocked(row, humidifierPart(row))),
    ...(shelf.outlets ?? []).flatMap((row) => stocked(row, outletPart(row))),
    ...(shelf.airMeters ?? []).flatMap((row) => stocked(row, airMeterPart(row))),
    ...(shelf.tubes ?? []).flatMap((row) => stocked(row, tubePart(row))),
    ...(shelf.fittings ?? []).flatMap((row) => stocked(row, fittingPart(row))),
  ]
}

/** Wards to borrow a part from; empty where no ward has it. */
export function lendersOf({ place }: Stocked): readonly string[] {
  return place === null || place === EVERYWHERE ? [] : [place]
}
