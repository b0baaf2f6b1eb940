// The cylinders to choose from as typed: pressures that hold for all, and each kind with its count. Leaves out reading them.
import { Button } from 'react-aria-components'
import { CHOOSABLE_UNITS } from '../../units/choosable.ts'
import { GAS_TEXT } from '../../words/gas-page-text.ts'
import { TRANSFER_TEXT } from '../../words/gas-transfer-text.ts'
import { pressureUnitOf } from './cylinder-form.ts'
import { GasChoice, GasNumber, GasText } from './gas-fields.tsx'
import type { GasForm } from './gas-fields.tsx'
import { withoutRow } from './kept-form.ts'
import type { FormStore } from './kept-form.ts'
import type { FieldProblem } from './read-form.ts'
import { STORE_RULES, storePrefix } from './store-form.ts'
import { formOf, own, RowButton, rowForm, safetyChoices } from './transfer-form-fields.tsx'

export function StoreFields({
  store,
  problems,
}: {
  readonly store: FormStore
  readonly problems: readonly FieldProblem[]
}) {
  const form = formOf(store, 'store', problems)
  const unit = pressureUnitOf(form.texts)
  return (
    <div className="group-fields">
      <div className="pair">
        <GasChoice
          form={form}
          name="pressureUnit"
          choices={CHOOSABLE_UNITS.gasPressure.map((one) => ({ value: one, text: one }))}
        />
        <GasNumber form={form} name="left" unit={unit} />
        <GasNumber form={form} name="gaugeError" unit={unit} />
        <GasNumber form={form} name="gasTemperatureC" unit={STORE_RULES.gasTemperatureC.unit} />
      </div>
      <ol className="gas-rows">
        {store.form.rows.map((texts, position) => (
          <li key={position}>
            <StoreRowFields
              form={rowForm(store, { texts, position, prefix: storePrefix(position) }, problems)}
              position={position}
              unit={unit}
              onRemove={() => store.change(withoutRow(own(store.form), position))}
            />
          </li>
        ))}
      </ol>
      <Button
        className="button"
        onPress={() =>
          store.change({
            ...own(store.form),
            rows: [...store.form.rows, { count: '1', mrSafety: 'unknown' }],
          })
        }
      >
        {TRANSFER_TEXT.addCylinder()}
      </Button>
    </div>
  )
}

function StoreRowFields(props: {
  readonly form: GasForm
  readonly position: number
  readonly unit: string
  readonly onRemove: () => void
}) {
  const { form, unit } = props
  const heading = TRANSFER_TEXT.storeRow(props.position + 1)
  return (
    <section className="gas-row" aria-label={heading}>
      <div className="pair">
        <GasNumber form={form} name="count" />
        <GasNumber form={form} name="waterVolume" unit="L" />
        <GasNumber form={form} name="gauge" unit={unit} />
        <GasNumber form={form} name="regulatorMinimum" unit={unit} />
        <GasNumber form={form} name="flowLpmMax" unit="L/min" />
        <GasText form={form} name="label" />
      </div>
      <GasChoice
        form={{ ...form, texts: { mrSafety: 'unknown', ...form.texts } }}
        name="mrSafety"
        choices={safetyChoices()}
      />
      <RowButton label={GAS_TEXT.remove()} of={heading} onPress={props.onRemove} />
    </section>
  )
}
