// Brings back what was just removed from a list. Leaves out removing.
import { Button } from 'react-aria-components'
import { GAS_TEXT } from '../../words/gas-page-text.ts'
import type { KeptForm } from './kept-form.ts'

/** Stands only while there is something to bring back. */
export function BringBack(props: {
  readonly before: KeptForm | null
  readonly onBack: (before: KeptForm) => void
}) {
  const { before, onBack } = props
  if (before === null) return null
  return (
    <Button className="button" onPress={() => onBack(before)}>
      {GAS_TEXT.bringBack()}
    </Button>
  )
}
