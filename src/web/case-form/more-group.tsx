// What may be known besides: each value narrows the spread. Shut until wanted, open where something is wrong in it. Leaves out judging.
import { FIT_IDS } from '../../kit/family-id.ts'
import { FIT_NAMES } from '../../words/names.ts'
import { FORM_WORDS } from '../../words/web-form-text.ts'
import { textOf } from '../case/draft.ts'
import { choicesOf } from '../parts/choice-field.tsx'
import { Fold } from '../parts/fold.tsx'
import { FormChoice, FormNumber } from './fields.tsx'
import { problemsAt } from './form.ts'
import type { Form } from './form.ts'

const NUMBERS_ASKED = [
  'patient.heightCm',
  'patient.haemoglobinGpl',
  'patient.temperatureC',
  'site.barometricPressureKpa',
  'breathing.tidalVolumeMl',
  'breathing.dutyFraction',
  'breathing.mouthShare',
  'patient.oxygenUptakeMlPerMin',
  'patient.bloodGas.arterialPco2Kpa',
  'patient.bloodGas.ph',
  'patient.bloodGas.arterialPo2Kpa',
  'patient.bloodGas.carboxyhaemoglobinFraction',
  'patient.bloodGas.minutesAgo',
] as const

export function MoreGroup({ form }: { readonly form: Form }) {
  const fields = [...NUMBERS_ASKED, 'breathing.fit']
  const isWrong = fields.some((field) => problemsAt(form, field).length > 0)
  const count = fields.filter((field) => textOf(form.draft, field) !== '').length
  const heading = count === 0 ? FORM_WORDS.more : `${FORM_WORDS.more} (${count})`
  return (
    <Fold heading={heading} mustOpen={isWrong}>
      <p className="field-help">{FORM_WORDS.moreHelp}</p>
      <div className="group-fields">
        <FormChoice
          form={form}
          field="breathing.fit"
          choices={choicesOf(FIT_IDS, FIT_NAMES)}
          empty={FORM_WORDS.notGiven}
        />
        {NUMBERS_ASKED.map((field) => (
          <FormNumber key={field} form={form} field={field} />
        ))}
      </div>
    </Fold>
  )
}
