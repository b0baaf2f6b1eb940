// One strict decimal field: shows and keeps exactly what is typed, its unit beside it. Leaves out judging, which the case reader does.
import { Button, FieldError, Input, Label, Text, TextField } from 'react-aria-components'
import type { Problem } from '../../errors.ts'
import { withUnit } from '../../words/number-text.ts'
import { problemLineText, takeText } from '../../words/web-form-text.ts'
import { fieldDomId } from './field-id.ts'

export interface NumberFieldProps {
  readonly field: string
  readonly label: string
  readonly unit?: string | undefined
  readonly typed: string
  readonly onType: (typed: string) => void
  /** The field is left: typing is over. */
  readonly onLeave?: () => void
  readonly problems: readonly Problem[]
  readonly help?: string | undefined
  readonly isRequired?: boolean
}

export function NumberField(props: NumberFieldProps) {
  const { field, label, unit, typed, onType, problems, help } = props
  const isInvalid = problems.length > 0
  const meant = problems.find(({ suggestion }) => typeof suggestion === 'number')?.suggestion
  return (
    <TextField
      className="field"
      id={fieldDomId(field)}
      value={typed}
      onChange={onType}
      onBlur={() => props.onLeave?.()}
      isInvalid={isInvalid}
      isRequired={props.isRequired ?? false}
      validationBehavior="aria"
    >
      <Label className="field-label">
        {label}
        {unit === undefined ? null : <span className="unseen">, {withUnit('', unit).trim()}</span>}
      </Label>
      <div className="field-box">
        <Input className="number-input" inputMode="decimal" autoComplete="off" spellCheck="false" />
        {unit === undefined ? null : (
          <span className="unit" aria-hidden="true">
            {withUnit('', unit).trim()}
          </span>
        )}
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
      {meant === undefined ? null : (
        <Button className="button" onPress={() => onType(String(meant))}>
          {takeText(meant, problems[0]?.unit)}
        </Button>
      )}
    </TextField>
  )
}
