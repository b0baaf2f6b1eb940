// The table of ranked set-ups, answer columns first. Leaves out notes and reasons.
import type { Shelf } from '../kit/shelf.ts'
import type { Plan, RankedSetUp } from '../planning/plan-types.ts'
import { UNCHECKED_MARK } from '../words/caution-texts.ts'
import { CLI_WORDS } from '../words/cli-text.ts'
import {
  chanceCellText,
  chanceHeadingText,
  fractionCellText,
  holdsUntilText,
  oxygenCellText,
  saturationCellText,
  twinsText,
} from '../words/plan-text.ts'
import { reasonText } from '../words/remark-text.ts'
import { setUpText } from '../words/set-up-text.ts'
import { tableLines } from './table.ts'
import type { TableColumn } from './table.ts'

/** Each row, and under it why it is not first, with the number that would change that. */
export function planTable(
  shown: readonly RankedSetUp[],
  plan: Plan,
  shelf: Shelf,
): readonly string[] {
  const { columns } = CLI_WORDS
  const layout: readonly TableColumn[] = [
    { heading: columns.rank, align: 'right' },
    { heading: columns.setUp, widthMost: 28 },
    { heading: columns.fraction, widthMost: 15 },
    { heading: columns.saturation, widthMost: 10 },
    { heading: chanceHeadingText(plan), widthMost: 12 },
    { heading: columns.oxygen, widthMost: 8, align: 'right' },
    { heading: columns.holds, widthMost: 12 },
  ]
  return tableLines(
    layout,
    shown.map((one) => ({
      cells: cellsOf(one, shelf),
      note: noteOf(one),
    })),
  )
}

/** Why it is not first, and where else the gas may come from. Those that count as equal say so by their number. */
function noteOf(one: RankedSetUp): string {
  const parts = [
    one.whyNotFirst === null || one.isEqualToFirst ? null : reasonText(one.whyNotFirst),
    twinsText(one),
  ]
  return parts.filter((part) => part !== null).join('; ')
}

function cellsOf(one: RankedSetUp, shelf: Shelf): readonly string[] {
  const mark = one.isChecked ? '' : ` ${UNCHECKED_MARK}`
  return [
    String(one.rank),
    setUpText(one.setUp, shelf) + mark,
    fractionCellText(one),
    saturationCellText(one),
    chanceCellText(one),
    oxygenCellText(one),
    holdsUntilText(one.holdsUntil),
  ]
}
