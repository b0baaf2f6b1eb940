// The case form: only what changes the answer, in the order it is asked at a bed. Leaves out judging and computing.
import { memo } from 'react'
import type { Draft } from '../case/draft.ts'
import { BreathingGroup } from './breathing-group.tsx'
import { ChangesGroup } from './changes-group.tsx'
import { ExampleGroup } from './example-group.tsx'
import type { Form } from './form.ts'
import { GoalGroup } from './goal-group.tsx'
import { MoreGroup } from './more-group.tsx'
import { OnNowGroup } from './on-now-group.tsx'
import { PatientGroup } from './patient-group.tsx'

export interface CaseFormProps {
  readonly form: Form
  readonly before: Draft | null
  readonly onReplace: (draft: Draft) => void
}

/** Drawn anew only when the case changes, not while the core tells its progress. */
export const CaseForm = memo(function CaseForm({ form, before, onReplace }: CaseFormProps) {
  return (
    <form className="case-form" noValidate onSubmit={(event) => event.preventDefault()}>
      <ExampleGroup form={form} before={before} onReplace={onReplace} />
      <PatientGroup form={form} />
      <BreathingGroup form={form} />
      <OnNowGroup form={form} />
      <GoalGroup form={form} />
      <ChangesGroup form={form} />
      <MoreGroup form={form} />
    </form>
  )
})
