// How many there are: typed, or one more or fewer by one tap. Leaves out what is counted.
import { useState } from 'react'
import { Button } from 'react-aria-components'
import type { Problem } from '../../errors.ts'
import { oneFewerText, oneMoreText } from '../../words/shelf-page-text.ts'
import { NumberField } from '../parts/number-field.tsx'

export function CountStepper(props: {
  readonly field: string
  readonly label: string
  readonly count: number
  /** What is wrong with the number, if it cannot be counted so. */
  readonly onCount: (count: number) => readonly Problem[]
}) {
  const { label, count } = props
  /** As typed, while it differs from the count on the shelf. */
  const [typed, setTyped] = useState<string | null>(null)
  const [problems, setProblems] = useState<readonly Problem[]>([])
  const take = (text: string): void => {
    const number = /^\s*\d+\s*$/.test(text) ? Number(text) : Number.NaN
    const found = Number.isNaN(number)
      ? [{ code: 'NOT_A_NUMBER', path: label, value: text, limit: { min: 0 } } as const]
      : props.onCount(number)
    setProblems(found)
    setTyped(found.length === 0 ? null : text)
  }
  const step = (by: number): void => {
    setTyped(null)
    setProblems(props.onCount(count + by))
  }
  return (
    <div className="count" data-out={count === 0}>
      <Button
        className="button count-step"
        aria-label={oneFewerText(label)}
        isDisabled={count === 0}
        onPress={() => step(-1)}
      >
        −
      </Button>
      <NumberField
        field={props.field}
        label={label}
        typed={typed ?? String(count)}
        onType={take}
        problems={problems}
      />
      <Button className="button count-step" aria-label={oneMoreText(label)} onPress={() => step(1)}>
        +
      </Button>
    </div>
  )
}
