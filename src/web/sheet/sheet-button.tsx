// One tap from the set-up in sight to its bedside sheet. Leaves out the sheet.
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { useLocation } from 'wouter'
import { DomainError } from '../../errors.ts'
import type { Humidification } from '../../kit/shelf.ts'
import { SHEET_WORDS } from '../../words/web-sheet-text.ts'
import type { PlanRequest } from '../worker/core-api.ts'
import { sheetHref } from './sheet-address.ts'

export interface SheetButtonProps {
  readonly request: PlanRequest
  /** Of the set-up on the shelf. */
  readonly id: string
  /** As chosen; absent: what the set-up usually has. */
  readonly humidification?: Humidification | undefined
}

export function SheetButton({ request, id, humidification }: SheetButtonProps) {
  const [, navigate] = useLocation()
  const [isTooLong, setTooLong] = useState(false)
  const open = (): void => {
    try {
      navigate(sheetHref(request, id, humidification))
    } catch (thrown) {
      if (!(thrown instanceof DomainError)) throw thrown
      setTooLong(true)
    }
  }
  return (
    <>
      <Button className="button" onPress={open}>
        {SHEET_WORDS.open}
      </Button>
      {isTooLong ? <span role="alert">{SHEET_WORDS.tooLong}</span> : null}
    </>
  )
}
