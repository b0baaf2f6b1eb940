// A line of text with a button that copies it; where copying is not allowed the line is selected to be copied by hand. Leaves out what it says.
import { useRef, useState } from 'react'
import { Button } from 'react-aria-components'
import { REALLY_WORDS } from '../../words/web-really-text.ts'

type Outcome = 'copied' | 'not-copied' | null

export function CopyLine({ line }: { readonly line: string }) {
  const shown = useRef<HTMLParagraphElement>(null)
  const [outcome, setOutcome] = useState<Outcome>(null)
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(line)
      setOutcome('copied')
    } catch {
      // No permission, or a page that is not served safely: then there is no clipboard at all.
      if (shown.current !== null) getSelection()?.selectAllChildren(shown.current)
      setOutcome('not-copied')
    }
  }
  return (
    <div className="copy-line">
      <p ref={shown} className="copied-line">
        {line}
      </p>
      <Button className="button" onPress={() => void copy()}>
        {REALLY_WORDS.copy}
      </Button>
      <output>
        {outcome === null
          ? ''
          : outcome === 'copied'
            ? REALLY_WORDS.copied
            : REALLY_WORDS.notCopied}
      </output>
    </div>
  )
}
