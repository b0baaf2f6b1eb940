// What is typed for a transfer: the set-up, the legs, reserve and start, the cylinders to choose from. Leaves out judging.
import type { TransferPlan } from '../../supply/transfer.ts'
import { scannerTubeText } from '../../words/gas-chain-text.ts'
import { ON_CHOICES, onChoiceText } from '../../words/gas-transfer-choices.ts'
import { TRANSFER_TEXT } from '../../words/gas-transfer-text.ts'
import { Fold } from '../parts/fold.tsx'
import type { BedsideDraw } from './bedside-draw.ts'
import { BedsideSaid } from './bedside-said.tsx'
import { GasChoice, GasNumber, GasText } from './gas-fields.tsx'
import type { GasForm } from './gas-fields.tsx'
import type { FormStore } from './kept-form.ts'
import { Legs } from './leg-fields.tsx'
import { ON_FIELDS, onChoiceOf } from './on-form.ts'
import type { FieldProblem } from './read-form.ts'
import { ShelfSaid } from './shelf-said.tsx'
import { StoreFields } from './store-fields.tsx'
import { formOf, OnNumbers, safetyChoices } from './transfer-form-fields.tsx'
import { hasScanner } from './transfer-form.ts'

export interface TransferFieldsProps {
  readonly way: FormStore
  readonly store: FormStore
  readonly problems: readonly FieldProblem[]
  readonly bedside: BedsideDraw
  /** As answered last; null while there is no answer. */
  readonly plan: TransferPlan | null
}

export function TransferFields({ way, store, problems, bedside, plan }: TransferFieldsProps) {
  const form = formOf(way, 'transfer', problems)
  const isWrong = (prefix: string): boolean =>
    problems.some(({ field }) => field.startsWith(`${prefix}.`) || field.startsWith(`${prefix}-`))
  return (
    <div className="group-fields">
      <fieldset className="group">
        <legend>{TRANSFER_TEXT.onPatient()}</legend>
        <div className="group-fields">
          <OnFields form={form} bedside={bedside} />
        </div>
      </fieldset>
      <fieldset className="group">
        <legend>{TRANSFER_TEXT.legs()}</legend>
        <div className="group-fields">
          <Legs way={way} problems={problems} />
        </div>
      </fieldset>
      {hasScanner(way.form) ? <ScannerFields form={form} plan={plan} /> : null}
      <fieldset className="group">
        <legend>{TRANSFER_TEXT.reserve()}</legend>
        <div className="group-fields">
          <p className="field-help">{TRANSFER_TEXT.reserveHelp()}</p>
          <div className="pair">
            <GasNumber form={form} name="factor" unit="×" />
            <GasNumber form={form} name="extraMinutes" unit="min" />
          </div>
          <div className="pair">
            <GasText form={form} name="leaveAt" />
            <GasNumber form={form} name="altitudeM" unit="m" />
          </div>
        </div>
      </fieldset>
      <Fold heading={TRANSFER_TEXT.store()} mustOpen={isWrong('store')}>
        <StoreFields store={store} problems={problems} />
      </Fold>
    </div>
  )
}

function OnFields({ form, bedside }: { readonly form: GasForm; readonly bedside: BedsideDraw }) {
  const on = onChoiceOf(form.texts)
  return (
    <>
      <GasChoice
        form={form}
        name="on"
        choices={ON_CHOICES.map((choice) => ({ value: choice, text: onChoiceText(choice) }))}
      />
      {on === 'bedside' ? <BedsideSaid bedside={bedside} /> : <ShelfSaid />}
      <OnNumbers form={form} names={ON_FIELDS[on]} />
    </>
  )
}

/** The tube counts as typed, else as the chain has it; which of the two stands under it. */
function ScannerFields(props: { readonly form: GasForm; readonly plan: TransferPlan | null }) {
  const { form } = props
  const scanner = props.plan?.scanner ?? null
  const told = { ...form, texts: { regulator: 'unknown', flowmeter: 'unknown', ...form.texts } }
  return (
    <fieldset className="group">
      <legend>{TRANSFER_TEXT.scanner()}</legend>
      <div className="group-fields">
        <GasChoice form={told} name="regulator" choices={safetyChoices()} />
        <GasChoice form={told} name="flowmeter" choices={safetyChoices()} />
        <div className="pair">
          <GasNumber form={form} name="tubeLengthM" unit="m" />
          <GasNumber form={form} name="tubeBoreMm" unit="mm" />
        </div>
        {scanner?.gas === 'outside' ? (
          <p className="field-help">{TRANSFER_TEXT.tube(scannerTubeText(scanner.tube))}</p>
        ) : null}
      </div>
    </fieldset>
  )
}
