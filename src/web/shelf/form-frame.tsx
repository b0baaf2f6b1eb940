// What stands around a row or ward being typed: its name, that it cannot stand yet, saving and leaving. Leaves out the fields.
import { useEffect, useRef } from 'react'
import type { ReactNode } from 'react'
import { Button } from 'react-aria-components'
import { SHELF_PAGE, editingText } from '../../words/shelf-page-text.ts'

export interface FormFrameProps {
  /** Name as it stands on the shelf; empty for what is new. */
  readonly name: string
  readonly isRefused: boolean
  /** What is wrong and has no field of its own. */
  readonly elsewhere?: readonly string[]
  readonly onSave: () => void
  readonly onCancel: () => void
  readonly children: ReactNode
}

export function FormFrame(props: FormFrameProps) {
  const heading = useRef<HTMLHeadingElement>(null)
  useEffect(() => heading.current?.focus(), [])
  return (
    <section className="shelf-form" aria-labelledby="shelf-form-heading">
      <h2 id="shelf-form-heading" ref={heading} tabIndex={-1}>
        {editingText(props.name)}
      </h2>
      {props.isRefused ? (
        <div className="must-act" role="alert">
          <p>{SHELF_PAGE.toMend()}</p>
          {(props.elsewhere ?? []).map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
      ) : null}
      {props.children}
      <div className="buttons">
        <Button className="button" onPress={props.onSave}>
          {SHELF_PAGE.save()}
        </Button>
        <Button className="button" onPress={props.onCancel}>
          {SHELF_PAGE.cancel()}
        </Button>
      </div>
    </section>
  )
}
