// A bedside sheet as lines for a terminal. Leaves out its words.
import type { Sheet } from '../sheet/sheet.ts'
import { CLI_WORDS } from '../words/cli-text.ts'
import type { SheetFact, SheetPage } from '../words/sheet-text.ts'
import { bulleted, indented, section } from './table.ts'

export interface SheetToPrint {
  readonly sheet: Sheet
  readonly page: SheetPage
  /** What stands behind # in the address of this sheet. */
  readonly fragment: string
  /** Null where the address of the installation is not known. */
  readonly address: string | null
}

export function sheetLines({ page, address }: SheetToPrint): readonly string[] {
  const { fraction } = page
  const head = [
    `${page.title}: ${page.who}`,
    page.state,
    page.because,
    '',
    ...page.settings.map(factText),
    `${fraction.name}: ${fraction.value}, ${fraction.spread}; ${fraction.printed}`,
    fraction.dependsOn,
    ...page.goal.map(factText),
    ...page.clocks.map(factText),
    factText(page.restsOn),
  ]
  return [
    ...indented(`! ${page.emergency}`, 0),
    '',
    ...head.flatMap((line) => (line === '' ? [''] : indented(line, 0))),
    ...[...page.phases, page.call, page.watch, page.cautions].flatMap((list) =>
      section(list.name, bulleted(list.lines)),
    ),
    '',
    ...page.foot.flatMap((line) => indented(line, 0)),
    ...(address === null ? indented(page.code.absent, 0) : [`${CLI_WORDS.address}: ${address}`]),
  ]
}

function factText(fact: SheetFact): string {
  return `${fact.name}: ${fact.value}`
}
