// A bedside sheet as JSON (schema/sheet.schema.json): codes and numbers, and the page in words beside them. Leaves out the plan it was made from.
import { jsonText } from './json-output.ts'
import { toldHead, toldSetUp } from './json-parts.ts'
import type { PlanWords } from './plan-question.ts'
import type { SheetToPrint } from './sheet-lines.ts'

export const SHEET_JSON_FORMAT = 'oxwright-sheet-1'

export function sheetJson(
  options: SheetToPrint & { readonly given: PlanWords; readonly version: string },
): string {
  const { sheet, page, fragment, address } = options
  return jsonText({
    format: SHEET_JSON_FORMAT,
    ...toldHead(options),
    sheet: { ...sheet, setUp: toldSetUp(sheet.setUp) },
    page,
    fragment,
    address,
  })
}
