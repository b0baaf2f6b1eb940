// One thing that is so or not, as a box to tick with a large target. Leaves out judging.
import type { Problem } from '../../errors.ts'
import { problemLineText } from '../../words/web-form-text.ts'
import { fieldDomId } from './field-id.ts'

export interface CheckFieldProps {
  readonly field: string
  readonly label: string
  readonly isChecked: boolean
  readonly onCheck: (isChecked: boolean) => void
  readonly problems?: readonly Problem[]
}

export function CheckField(props: CheckFieldProps) {
  const { field, label, isChecked, onCheck, problems } = props
  const id = fieldDomId(field)
  const problemId = `${id}-problem`
  const isInvalid = problems !== undefined && problems.length > 0
  return (
    <div className="check">
      <label className="check-label">
        <input
          id={id}
          type="checkbox"
          checked={isChecked}
          aria-invalid={isInvalid}
          aria-describedby={isInvalid ? problemId : undefined}
          onChange={(event) => onCheck(event.target.checked)}
        />
        <span>{label}</span>
      </label>
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
