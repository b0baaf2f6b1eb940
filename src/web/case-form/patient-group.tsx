// The patient: age, size, airway, risk of carbon-dioxide retention, place. Leaves out blood and measured breathing.
import { SECRETIONS } from '../../patient/case.ts'
import { NOSE_STATES } from '../../patient/read-airway.ts'
import { CUFFS } from '../../patient/read-airway.ts'
import { RETENTION_RISKS, SEXES } from '../../patient/read-patient.ts'
import {
  AIRWAY_NAMES,
  CUFF_NAMES,
  NOSE_NAMES,
  RETENTION_NAMES,
  SECRETION_NAMES,
  SEX_NAMES,
} from '../../words/names.ts'
import { AGE_UNIT_NAMES, FORM_WORDS } from '../../words/web-form-text.ts'
import { airwayAsks, hasNeckOpening } from '../case/case-input.ts'
import {
  AGE_UNITS,
  ageUnitOf,
  AIRWAY_KINDS,
  airwayKindOf,
  FORM_FIELDS,
  isOn,
  textOf,
  withText,
} from '../case/draft.ts'
import type { Draft } from '../case/draft.ts'
import { CheckField } from '../parts/check-field.tsx'
import { ChoiceField, choicesOf } from '../parts/choice-field.tsx'
import { FormChoice, FormNumber, MustChoose } from './fields.tsx'
import { problemsAt } from './form.ts'
import type { Form } from './form.ts'
import { Group } from './group.tsx'

export function PatientGroup({ form }: { readonly form: Form }) {
  const { draft } = form
  return (
    <Group heading={FORM_WORDS.patient}>
      <div className="pair">
        <FormNumber
          form={form}
          field={FORM_FIELDS.age}
          label={FORM_WORDS.age}
          unit={AGE_UNIT_NAMES[ageUnitOf(draft)]}
          isRequired
        />
        <ChoiceField
          field={FORM_FIELDS.ageUnit}
          label={FORM_WORDS.ageUnit}
          value={ageUnitOf(draft)}
          onChoose={(unit) => form.change(withText(draft, FORM_FIELDS.ageUnit, unit))}
          choices={choicesOf(AGE_UNITS, AGE_UNIT_NAMES)}
        />
      </div>
      {asksGestation(draft) ? <FormNumber form={form} field="patient.gestationWeeks" /> : null}
      <div className="pair">
        <FormNumber form={form} field="patient.weightKg" />
        <FormChoice
          form={form}
          field="patient.sex"
          choices={choicesOf(SEXES, SEX_NAMES)}
          empty={FORM_WORDS.notGiven}
        />
      </div>
      <AirwayFields form={form} />
      <NeckFields form={form} />
      <MustChoose
        form={form}
        field="patient.retentionRisk"
        choices={choicesOf(RETENTION_RISKS, RETENTION_NAMES)}
      />
      <FormNumber form={form} field="site.altitudeM" />
    </Group>
  )
}

/** What decides how gas at the neck is humidified. */
function NeckFields({ form }: { readonly form: Form }) {
  const { draft } = form
  const isNeckOpen = hasNeckOpening(airwayKindOf(draft))
  if (!isNeckOpen && textOf(draft, 'patient.secretions') === '') return null
  return (
    <div className="pair">
      {isNeckOpen ? <FormNumber form={form} field="patient.tracheostomyAgeDays" /> : null}
      <FormChoice
        form={form}
        field="patient.secretions"
        choices={choicesOf(SECRETIONS, SECRETION_NAMES)}
        empty={FORM_WORDS.notGiven}
      />
    </div>
  )
}

function AirwayFields({ form }: { readonly form: Form }) {
  const { draft } = form
  const asks = airwayAsks(airwayKindOf(draft))
  return (
    <>
      <FormChoice
        form={form}
        field={FORM_FIELDS.airway}
        label={FORM_WORDS.airway}
        choices={choicesOf(AIRWAY_KINDS, AIRWAY_NAMES)}
      />
      {asks.cuff ? (
        <MustChoose
          form={form}
          field={FORM_FIELDS.cuff}
          label={FORM_WORDS.cuff}
          choices={choicesOf(CUFFS, CUFF_NAMES)}
        />
      ) : null}
      {asks.nose ? (
        <ChoiceField
          field={FORM_FIELDS.nose}
          label={FORM_WORDS.nose}
          value={textOf(draft, FORM_FIELDS.nose) === '' ? 'open' : textOf(draft, FORM_FIELDS.nose)}
          onChoose={(nose) => form.change(withText(draft, FORM_FIELDS.nose, nose))}
          choices={choicesOf(NOSE_STATES, NOSE_NAMES)}
          problems={problemsAt(form, FORM_FIELDS.nose)}
        />
      ) : null}
      {asks.exchanger ? (
        <CheckField
          field={FORM_FIELDS.exchanger}
          label={FORM_WORDS.exchanger}
          isChecked={isOn(draft, FORM_FIELDS.exchanger)}
          onCheck={(isChecked) =>
            form.change(withText(draft, FORM_FIELDS.exchanger, isChecked ? 'yes' : ''))
          }
          problems={problemsAt(form, FORM_FIELDS.exchanger)}
        />
      ) : null}
    </>
  )
}

/** Asked where the age is not typed in years, and wherever it has been given. */
function asksGestation(draft: Draft): boolean {
  return ageUnitOf(draft) !== 'ageYears' || textOf(draft, 'patient.gestationWeeks') !== ''
}
