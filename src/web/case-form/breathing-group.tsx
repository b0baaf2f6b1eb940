// How the patient breathes now. Leaves out measured volumes, which stand under what may be known besides.
import { BREATHING_STATES } from '../../patient/case.ts'
import { BREATHING_NAMES } from '../../words/names.ts'
import { FORM_WORDS } from '../../words/web-form-text.ts'
import { choicesOf } from '../parts/choice-field.tsx'
import { FormNumber, MustChoose } from './fields.tsx'
import type { Form } from './form.ts'
import { Group } from './group.tsx'

export function BreathingGroup({ form }: { readonly form: Form }) {
  return (
    <Group heading={FORM_WORDS.breathing}>
      <MustChoose
        form={form}
        field="breathing.state"
        choices={choicesOf(BREATHING_STATES, BREATHING_NAMES)}
      />
      <FormNumber form={form} field="breathing.ratePerMin" />
    </Group>
  )
}
