// One choice of a list, by the browser's own picker, which every phone and reader knows. Leaves out judging.
import { useId } from 'react'
import type { ReactNode } from 'react'
import type { Problem } from '../../errors.ts'
import { problemLineText } from '../../words/web-form-text.ts'
import { fieldDomId } from './field-id.ts'

export interface Choice {
  readonly value: string
  readonly text: string
}

export interface ChoiceFieldProps {
  readonly field: string
  readonly label: string
  readonly value: string
  readonly onChoose: (value: string) => void
  readonly choices: readonly Choice[]
  /** Text of the empty choice; absent where one must be chosen from the start. */
  readonly empty?: string | undefined
  readonly problems?: readonly Problem[]
  readonly help?: ReactNode
  readonly children?: ReactNode
}

const NO_PROBLEMS: readonly Problem[] = []

export function ChoiceField(props: ChoiceFieldProps) {
  const { field, label, value, onChoose, choices, empty } = props
  const problems = props.problems ?? NO_PROBLEMS
  const helpId = useId()
  const problemId = useId()
  const isInvalid = problems.length > 0
  const hasHelp = props.help !== undefined && !isInvalid
  const described = isInvalid ? problemId : hasHelp ? helpId : undefined
  const id = fieldDomId(field)
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <select
        id={id}
        className="select"
        value={value}
        aria-invalid={isInvalid}
        aria-describedby={described}
        onChange={(event) => onChoose(event.target.value)}
      >
        {empty === undefined ? null : <option value="">{empty}</option>}
        {props.children}
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.text}
          </option>
        ))}
      </select>
      {hasHelp ? (
        <div id={helpId} className="field-help">
          {props.help}
        </div>
      ) : null}
      {isInvalid ? (
        <div id={problemId} className="field-problem">
          {problems.map((problem) => (
            <span key={problem.code + problem.path}>{problemLineText(problem)}</span>
          ))}
        </div>
      ) : null}
    </div>
  )
}

/** The choices of a closed list with their names, in the list's own order. */
export function choicesOf<Id extends string>(
  ids: readonly Id[],
  names: Readonly<Record<Id, string>>,
): readonly Choice[] {
  return ids.map((value) => ({ value, text: names[value] }))
}
