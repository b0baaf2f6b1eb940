// A part that is shut until wanted, under a heading that opens it. Leaves out its content.
import { useState } from 'react'
import type { ReactNode } from 'react'
import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components'

export interface FoldProps {
  readonly heading: string
  readonly level?: 2 | 3 | 4
  /** Open whatever the reader chose, because something in it must be seen. */
  readonly mustOpen?: boolean
  readonly children: ReactNode
}

export function Fold({ heading, level, mustOpen, children }: FoldProps) {
  const [isOpen, setOpen] = useState(false)
  const isExpanded = isOpen || mustOpen === true
  return (
    <Disclosure className="fold" isExpanded={isExpanded} onExpandedChange={setOpen}>
      <Heading level={level ?? 3} className="fold-heading">
        <Button slot="trigger" className="fold-button">
          <span className="fold-mark" aria-hidden="true" />
          {heading}
        </Button>
      </Heading>
      <DisclosurePanel className="fold-panel">{isExpanded ? children : null}</DisclosurePanel>
    </Disclosure>
  )
}
