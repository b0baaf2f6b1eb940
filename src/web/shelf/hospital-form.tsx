// What the shelf says of the hospital itself: its name, how high it lies, whether all of it is made up. Leaves out wards and rows.
import { shelfHelp, shelfLabel } from '../../words/shelf-field-labels.ts'
import { CheckField } from '../parts/check-field.tsx'
import { NumberField } from '../parts/number-field.tsx'
import { TextField } from '../parts/text-field.tsx'
import { FormFrame } from './form-frame.tsx'
import { NO, YES } from './row-draft.ts'
import type { WardFormProps } from './ward-part.tsx'

export function HospitalForm(props: WardFormProps) {
  const { draft, onDraft } = props
  const common = (path: string) => ({
    field: `shelf.${path}`,
    label: shelfLabel(path),
    help: shelfHelp(path),
    typed: draft[path] ?? '',
    onType: (text: string) => onDraft({ ...draft, [path]: text }),
    problems: props.problems
      .filter((problem) => problem.path === path)
      .map((problem) => ({ ...problem, path: shelfLabel(path) })),
  })
  return (
    <FormFrame {...props} isRefused={props.problems.length > 0}>
      <TextField {...common('hospital')} />
      <NumberField {...common('altitudeM')} unit="m" />
      <CheckField
        field="shelf.isInvented"
        label={shelfLabel('isInvented')}
        isChecked={draft['isInvented'] === YES}
        onCheck={(isInvented) => onDraft({ ...draft, isInvented: isInvented ? YES : NO })}
      />
    </FormFrame>
  )
}
