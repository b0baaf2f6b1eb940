// One line of free text, kept exactly as typed. Leaves out judging.
import { FieldError, Input, Label, Text, TextField as AriaTextField } from 'react-aria-components'
import type { Problem } from '../../errors.ts'
import { problemLineText } from '../../words/web-form-text.ts'
import { fieldDomId } from './field-id.ts'

export function TextField(props: {
  readonly field: string
  readonly label: string
  readonly typed: string
  readonly onType: (typed: string) => void
  readonly problems: readonly Problem[]
  readonly help?: string | undefined
}) {
  const { problems, help } = props
  const isInvalid = problems.length > 0
  return (
    <AriaTextField
      className="field"
      id={fieldDomId(props.field)}
      value={props.typed}
      onChange={props.onType}
      isInvalid={isInvalid}
      validationBehavior="aria"
    >
      <Label className="field-label">{props.label}</Label>
      <div className="field-box">
        <Input className="number-input" autoComplete="off" spellCheck="false" />
      </div>
      {help === undefined || isInvalid ? null : (
        <Text slot="description" className="field-help">
          {help}
        </Text>
      )}
      <FieldError className="field-problem">
        {problems.map((problem) => (
          <span key={problem.code + problem.path}>{problemLineText(problem)}</span>
        ))}
      </FieldError>
    </AriaTextField>
  )
}
