// What can be done with a sheet on the page: print it, say when its readings were taken and what the cylinder holds, open its case. Leaves out the paper.
import { useState } from 'react'
import { Button, Input, Label, TextField } from 'react-aria-components'
import { isDomainError } from '../../errors.ts'
import type { SheetRequest } from '../../sheet/fragment.ts'
import type { Sheet } from '../../sheet/sheet.ts'
import { wallTime } from '../../sheet/wall-clock.ts'
import { SHEET_WORDS } from '../../words/web-sheet-text.ts'
import { CylinderFields } from './cylinder-fields.tsx'
import { replaceRequest } from './sheet-address.ts'

export interface SheetToolsProps {
  readonly request: SheetRequest
  readonly sheet: Sheet
  readonly onOpenCase: () => void
}

export function SheetTools({ request, sheet, onOpenCase }: SheetToolsProps) {
  return (
    <div className="sheet-tools">
      <div className="sheet-buttons">
        <Button className="button sheet-print" onPress={() => print()}>
          {SHEET_WORDS.print}
        </Button>
        <Button className="button" onPress={onOpenCase}>
          {SHEET_WORDS.openCase}
        </Button>
      </div>
      <ReadingsTime request={request} />
      {sheet.cylinder === null ? null : <CylinderFields request={request} />}
    </div>
  )
}

/** A time the reader has not finished typing stays in the field and changes nothing. */
function ReadingsTime({ request }: { readonly request: SheetRequest }) {
  const [typed, setTyped] = useState(request.readAt)
  const change = (text: string): void => {
    setTyped(text)
    if (isMoment(text)) replaceRequest({ ...request, readAt: text })
  }
  return (
    <TextField
      className="field sheet-readings"
      value={typed}
      onChange={change}
      isInvalid={!isMoment(typed)}
    >
      <Label className="field-label">{SHEET_WORDS.readAt}</Label>
      <div className="field-box">
        <Input className="number-input" type="datetime-local" max="9999-12-31T23:59" />
      </div>
      <span className="field-help">{SHEET_WORDS.readAtHelp}</span>
    </TextField>
  )
}

function isMoment(text: string): boolean {
  try {
    wallTime(text)
    return true
  } catch (thrown) {
    if (!isDomainError(thrown)) throw thrown
    return false
  }
}
