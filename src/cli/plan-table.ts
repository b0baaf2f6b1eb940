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

/** Each row, and under it why it is not first, with the number that would change that. Columns that the goal leaves empty are not shown. */
export function planTable(
  shown: readonly RankedSetUp[],
  plan: Plan,
  shelf: Shelf,
): readonly string[] {
  const columns = columnsFor(plan, shelf).filter(({ isShown }) => isShown)
  return tableLines(
    columns,
    shown.map((one) => ({ cells: columns.map(({ cell }) => cell(one)), note: noteOf(one) })),
  )
}

interface PlanColumn extends TableColumn {
  readonly isShown: boolean
  readonly cell: (one: RankedSetUp) => string
}

function columnsFor(plan: Plan, shelf: Shelf): readonly PlanColumn[] {
  const { columns } = CLI_WORDS
  const hasRange = plan.goal.kind === 'saturation' || plan.goal.kind === 'fraction'
  const hasSaturation = plan.ranked.some((one) => one.saturationPercent !== null)
  const always = { isShown: true }
  const withRange = { isShown: hasRange }
  return [
    { ...always, heading: columns.rank, align: 'right', cell: (one) => String(one.rank) },
    {
      ...always,
      heading: columns.setUp,
      widthMost: hasRange ? 28 : 44,
      cell: (one) => setUpText(one.setUp, shelf) + (one.isChecked ? '' : ` ${UNCHECKED_MARK}`),
    },
    { ...always, heading: columns.fraction, widthMost: 15, cell: fractionCellText },
    {
      isShown: hasSaturation,
      heading: columns.saturation,
      widthMost: 10,
      cell: saturationCellText,
    },
    { ...withRange, heading: chanceHeadingText(plan), widthMost: 12, cell: chanceCellText },
    {
      ...always,
      heading: columns.oxygen,
      widthMost: 8,
      align: 'right',
      cell: oxygenCellText,
    },
    {
      ...withRange,
      heading: columns.holds,
      widthMost: 12,
      cell: (one) => holdsUntilText(one.holdsUntil),
    },
  ]
}

/** Why it is not first, and where else the gas may come from. Those that count as equal say so by their number. */
function noteOf(one: RankedSetUp): string {
  const parts = [
    one.whyNotFirst === null || one.isEqualToFirst ? null : reasonText(one.whyNotFirst),
    twinsText(one),
  ]
  return parts.filter((part) => part !== null).join('; ')
}
