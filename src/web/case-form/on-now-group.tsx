// What is on now and what it reads. Asks only what this interface and source have. Leaves out judging.
import { FAMILY_IDS, FIT_IDS } from '../../kit/family-id.ts'
import { INTERFACE_FAMILIES } from '../../kit/interface-families.ts'
import { SOURCE_KINDS } from '../../patient/read-set-up.ts'
import { FAMILY_NAMES, FIT_NAMES, SIZE_NAMES, SOURCE_NAMES } from '../../words/names.ts'
import { FORM_WORDS, ON_NOW_NAMES } from '../../words/web-form-text.ts'
import { setUpAsks } from '../case/case-input.ts'
import { familyOf, FORM_FIELDS, isOn, ON_NOW_KINDS, onNowKindOf, withText } from '../case/draft.ts'
import { CheckField } from '../parts/check-field.tsx'
import { ChoiceField, choicesOf } from '../parts/choice-field.tsx'
import { FormChoice, FormNumber, MustChoose } from './fields.tsx'
import type { Form } from './form.ts'
import { problemsAt } from './form.ts'
import { Group } from './group.tsx'

export function OnNowGroup({ form }: { readonly form: Form }) {
  const kind = onNowKindOf(form.draft)
  return (
    <Group heading={FORM_WORDS.onNow}>
      <ChoiceField
        field={FORM_FIELDS.onNow}
        label={FORM_WORDS.onNowKind}
        value={kind}
        onChoose={(value) => form.change(withText(form.draft, FORM_FIELDS.onNow, value))}
        choices={choicesOf(ON_NOW_KINDS, ON_NOW_NAMES)}
        problems={problemsAt(form, 'onNow.setUp')}
      />
      {kind === 'set-up' ? <SetUpFields form={form} /> : null}
      {kind === 'unknown' ? null : <ReadingFields form={form} />}
    </Group>
  )
}

function SetUpFields({ form }: { readonly form: Form }) {
  const asks = setUpAsks(form.draft)
  const family = familyOf(form.draft)
  return (
    <>
      <MustChoose
        form={form}
        field="onNow.setUp.family"
        choices={choicesOf(FAMILY_IDS, FAMILY_NAMES)}
      />
      <MustChoose
        form={form}
        field="onNow.setUp.sourceKind"
        choices={choicesOf(SOURCE_KINDS, SOURCE_NAMES)}
      />
      <FlowField
        form={form}
        field="onNow.setUp.flowLpm"
        flush={FORM_FIELDS.flush}
        flushLabel={FORM_WORDS.flush}
        hasFlush={asks.flush}
      />
      {asks.over ? (
        <FlowField
          form={form}
          field="onNow.setUp.over.flowLpm"
          flush={FORM_FIELDS.overFlush}
          flushLabel={FORM_WORDS.overFlush}
          hasFlush={asks.flush}
        />
      ) : null}
      {asks.setting ? (
        <FormNumber form={form} field="onNow.setUp.setO2Fraction" isRequired />
      ) : null}
      {family === undefined ? null : (
        <div className="pair">
          <FormChoice
            form={form}
            field="onNow.setUp.size"
            choices={choicesOf(
              INTERFACE_FAMILIES[family].sizes.map(({ id }) => id),
              SIZE_NAMES,
            )}
            empty={FORM_WORDS.usualSize}
          />
          <FormChoice
            form={form}
            field="onNow.setUp.fit"
            choices={choicesOf(FIT_IDS, FIT_NAMES)}
            empty={FORM_WORDS.notGiven}
          />
        </div>
      )}
    </>
  )
}

function FlowField(props: {
  readonly form: Form
  readonly field: string
  readonly flush: string
  readonly flushLabel: string
  readonly hasFlush: boolean
}) {
  const { form, field, flush, flushLabel, hasFlush } = props
  const isFlush = hasFlush && isOn(form.draft, flush)
  return (
    <>
      {isFlush ? null : <FormNumber form={form} field={field} isRequired />}
      {hasFlush ? (
        <CheckField
          field={flush}
          label={flushLabel}
          isChecked={isFlush}
          onCheck={(isChecked) => form.change(withText(form.draft, flush, isChecked ? 'yes' : ''))}
        />
      ) : null}
    </>
  )
}

function ReadingFields({ form }: { readonly form: Form }) {
  return (
    <>
      <div className="pair">
        <FormNumber form={form} field="onNow.saturationPercent" />
        <FormNumber form={form} field="onNow.sinceMinutes" />
      </div>
      <FormNumber form={form} field="onNow.ratePerMin" />
    </>
  )
}
