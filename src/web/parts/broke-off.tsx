// In place of an answer that the program could not work out: that it broke off, why, and once more. Leaves out what was asked.
import { Button } from 'react-aria-components'
import { PAGE_WORDS } from '../../words/web-page-text.ts'

export function BrokeOff({
  said,
  onRetry,
}: {
  readonly said: string
  readonly onRetry: () => void
}) {
  return (
    <div className="refused" role="alert">
      <p>
        <strong>{PAGE_WORDS.failedHeading}</strong>
      </p>
      <p>{PAGE_WORDS.failedWhy}</p>
      <p>{said}</p>
      <Button className="button" onPress={onRetry}>
        {PAGE_WORDS.tryAgain}
      </Button>
    </div>
  )
}
