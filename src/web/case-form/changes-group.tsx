// What changes the interface: one tap each. Leaves out what follows from it.
import { CHANGES } from '../../patient/case.ts'
import type { InterfaceChange } from '../../patient/case.ts'
import { CHANGE_NAMES } from '../../words/names.ts'
import { FORM_WORDS, problemLineText } from '../../words/web-form-text.ts'
import { CheckField } from '../parts/check-field.tsx'
import { fieldDomId } from '../parts/field-id.ts'
import { problemsAt } from './form.ts'
import type { Form } from './form.ts'
import { Group } from './group.tsx'

export function ChangesGroup({ form }: { readonly form: Form }) {
  const { draft } = form
  const problems = problemsAt(form, 'patient.changes')
  const check = (change: InterfaceChange, isChecked: boolean): void => {
    const changes = CHANGES.filter((one) =>
      one === change ? isChecked : draft.changes.includes(one),
    )
    form.change({ ...draft, changes })
  }
  return (
    <Group heading={FORM_WORDS.changes}>
      <div className="chips" id={fieldDomId('patient.changes')}>
        {CHANGES.map((change) => (
          <CheckField
            key={change}
            field={`changes.${change}`}
            label={CHANGE_NAMES[change]}
            isChecked={draft.changes.includes(change)}
            onCheck={(isChecked) => check(change, isChecked)}
          />
        ))}
      </div>
      {problems.map((problem) => (
        <div key={problem.code} className="field-problem">
          {problemLineText(problem)}
        </div>
      ))}
    </Group>
  )
}
