// Which case: an example of the demo hospital or one's own, and whose shelf. What was typed before can be brought back. Leaves out files.
import { Button } from 'react-aria-components'
import { DEMO_SHELF } from '../../kit/demo-shelf/demo-shelf.ts'
import { exampleText } from '../../words/web-answer-text.ts'
import { FORM_WORDS } from '../../words/web-form-text.ts'
import { EMPTY_DRAFT, FORM_FIELDS } from '../case/draft.ts'
import type { Draft } from '../case/draft.ts'
import type { Example } from '../case/example.ts'
import { useExamples } from '../case/use-examples.ts'
import { useShelf } from '../shelf/shelf-store.ts'
import { ChoiceField } from '../parts/choice-field.tsx'
import { FormChoice } from './fields.tsx'
import type { Form } from './form.ts'

export interface ExampleGroupProps {
  readonly form: Form
  readonly before: Draft | null
  readonly onReplace: (draft: Draft) => void
}

export function ExampleGroup({ form, before, onReplace }: ExampleGroupProps) {
  const examples = useExamples()
  const choose = (id: string): void =>
    onReplace(examples.find((one) => one.id === id)?.draft ?? EMPTY_DRAFT)
  const { shelf } = useShelf()
  const isOwn = form.draft.exampleId === null
  return (
    <div className="group-fields">
      <ChoiceField
        field="example"
        label={FORM_WORDS.example}
        value={form.draft.exampleId ?? ''}
        onChoose={choose}
        empty={FORM_WORDS.own}
        choices={[]}
        help={isOwn ? undefined : FORM_WORDS.exampleHelp}
      >
        {DEMO_SHELF.wards.map((ward) => (
          <optgroup key={ward.id} label={ward.name}>
            {ofWard(examples, ward.name).map((example) => (
              <option key={example.id} value={example.id}>
                {exampleText(example.case)}
              </option>
            ))}
          </optgroup>
        ))}
      </ChoiceField>
      {before === null ? null : (
        <Button className="button" onPress={() => onReplace(before)}>
          {FORM_WORDS.restore}
        </Button>
      )}
      <FormChoice
        form={form}
        field={FORM_FIELDS.ward}
        label={FORM_WORDS.ward}
        choices={shelf.wards.map(({ id, name }) => ({ value: id, text: name }))}
        empty={FORM_WORDS.wholeHospital}
      />
    </div>
  )
}

function ofWard(examples: readonly Example[], name: string): readonly Example[] {
  return examples.filter((example) => (example.case.bed ?? '').startsWith(`${name} `))
}
