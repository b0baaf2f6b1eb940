// One tap from the set-up in sight to its bedside sheet. Leaves out the sheet.
import { useMemo, useState } from 'react'
import { Button } from 'react-aria-components'
import { useLocation } from 'wouter'
import { DomainError } from '../../errors.ts'
import type { SetUp } from '../../kit/set-up.ts'
import { SHEET_WORDS } from '../../words/web-sheet-text.ts'
import type { PlanRequest } from '../worker/core-api.ts'
import { candidateIdOf, sheetHref } from './sheet-address.ts'

export interface SheetButtonProps {
  readonly request: PlanRequest
  readonly setUp: SetUp
}

/** Nothing where the shelf does not build exactly this set-up. */
export function SheetButton({ request, setUp }: SheetButtonProps) {
  const [, navigate] = useLocation()
  const [isTooLong, setTooLong] = useState(false)
  const id = useMemo(() => candidateIdOf(setUp, request), [setUp, request])
  if (id === undefined) return null
  const open = (): void => {
    try {
      navigate(sheetHref(request, id))
    } catch (thrown) {
      if (!(thrown instanceof DomainError)) throw thrown
      setTooLong(true)
    }
  }
  return (
    <p className="sheet-door">
      <Button className="button" onPress={open}>
        {SHEET_WORDS.open}
      </Button>
      {isTooLong ? <span role="alert">{SHEET_WORDS.tooLong}</span> : null}
    </p>
  )
}
