// What is typed for a transfer: the set-up, the legs, reserve and start, the cylinders to choose from. Leaves out judging.
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { MR_SAFETIES } from '../../supply/store.ts'
import { CHOOSABLE_UNITS } from '../../units/choosable.ts'
import { GAS_TEXT } from '../../words/gas-page-text.ts'
import {
  FEED_CHOICES,
  feedText,
  ON_CHOICES,
  onChoiceText,
} from '../../words/gas-transfer-choices.ts'
import { legHeading, TRANSFER_TEXT } from '../../words/gas-transfer-text.ts'
import { legName, mrSafetyName } from '../../words/supply-names.ts'
import { Fold } from '../parts/fold.tsx'
import type { BedsideDraw } from './bedside-draw.ts'
import { BedsideSaid } from './bedside-said.tsx'
import { pressureUnitOf } from './cylinder-form.ts'
import { GasChoice, GasNumber, GasText } from './gas-fields.tsx'
import type { GasForm } from './gas-fields.tsx'
import { withMovedRow, withoutRow, withRow } from './kept-form.ts'
import type { FormStore, KeptForm, Texts } from './kept-form.ts'
import type { FieldProblem } from './read-form.ts'
import { ShelfSaid } from './shelf-said.tsx'
import { STORE_RULES, storePrefix } from './store-form.ts'
import {
  hasScanner,
  LEG_KINDS,
  legKindOf,
  legPrefix,
  ON_FIELDS,
  onChoiceOf,
  TRANSFER_RULES,
} from './transfer-form.ts'

export interface TransferFieldsProps {
  readonly way: FormStore
  readonly store: FormStore
  readonly problems: readonly FieldProblem[]
  readonly bedside: BedsideDraw
}

export function TransferFields({ way, store, problems, bedside }: TransferFieldsProps) {
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
      {hasScanner(way.form) ? <ScannerFields form={form} /> : null}
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

/** A form of the page over what is kept; anything typed makes an example one's own. */
function formOf(store: FormStore, prefix: string, problems: readonly FieldProblem[]): GasForm {
  const { form, change } = store
  return {
    prefix,
    texts: form.texts,
    problems,
    type: (name, text) => change({ ...own(form), texts: { ...own(form).texts, [name]: text } }),
  }
}

function rowForm(
  store: FormStore,
  row: { readonly texts: Texts; readonly position: number; readonly prefix: string },
  problems: readonly FieldProblem[],
): GasForm {
  const { texts, position, prefix } = row
  return {
    prefix,
    texts,
    problems,
    type: (name, text) =>
      store.change(withRow(own(store.form), position, { ...texts, [name]: text })),
  }
}

function own(form: KeptForm): KeptForm {
  const { example: _, ...texts } = form.texts
  return { ...form, texts }
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
      <div className="pair">
        {ON_FIELDS[on].map((name) => (
          <GasNumber key={name} form={form} name={name} unit={ruleUnit(TRANSFER_RULES[name])} />
        ))}
      </div>
    </>
  )
}

function ruleUnit(rule: object): string | undefined {
  return 'unit' in rule && typeof rule.unit === 'string' ? rule.unit : undefined
}

function Legs({
  way,
  problems,
}: {
  readonly way: FormStore
  readonly problems: readonly FieldProblem[]
}) {
  const [before, setBefore] = useState<KeptForm | null>(null)
  const { form, change } = way
  return (
    <>
      <ol className="gas-rows">
        {form.rows.map((texts, position) => (
          <li key={position}>
            <Leg
              form={rowForm(way, { texts, position, prefix: legPrefix(position) }, problems)}
              position={position}
              count={form.rows.length}
              onMove={(by) => change(withMovedRow(own(form), position, by))}
              onRemove={() => {
                setBefore(form)
                change(withoutRow(own(form), position))
              }}
            />
          </li>
        ))}
      </ol>
      <div className="gas-actions">
        <Button
          className="button"
          id="field-transfer-addLeg"
          onPress={() =>
            change({ ...own(form), rows: [...form.rows, { kind: 'corridor', minutes: '' }] })
          }
        >
          {TRANSFER_TEXT.addLeg()}
        </Button>
        {before === null ? null : (
          <Button
            className="button"
            onPress={() => {
              change(before)
              setBefore(null)
            }}
          >
            {GAS_TEXT.bringBack()}
          </Button>
        )}
      </div>
    </>
  )
}

const MORE_LEG = ['delayMinutes', 'legFlowLpm', 'legAltitudeM'] as const

function Leg(props: {
  readonly form: GasForm
  readonly position: number
  readonly count: number
  readonly onMove: (by: -1 | 1) => void
  readonly onRemove: () => void
}) {
  const { form, position, count } = props
  const heading = legHeading(position + 1, legKindOf(form.texts))
  const isWrong = form.problems.some(({ field }) =>
    MORE_LEG.some((name) => field === `${form.prefix}.${name}`),
  )
  return (
    <section className="gas-row" aria-label={heading}>
      <div className="pair">
        <GasChoice
          form={form}
          name="kind"
          choices={LEG_KINDS.map((kind) => ({ value: kind, text: legName(kind) }))}
        />
        <GasNumber form={form} name="minutes" unit="min" />
      </div>
      <Fold heading={TRANSFER_TEXT.moreLeg()} mustOpen={isWrong}>
        <div className="group-fields">
          {MORE_LEG.map((name) => (
            <GasNumber key={name} form={form} name={name} unit={TRANSFER_RULES[name].unit} />
          ))}
          <GasChoice
            form={{ ...form, texts: { feed: 'carried', ...form.texts } }}
            name="feed"
            choices={FEED_CHOICES.map((feed) => ({ value: feed, text: feedText(feed) }))}
          />
          <div className="gas-actions">
            <RowButton
              label={TRANSFER_TEXT.earlier()}
              of={heading}
              isDisabled={position === 0}
              onPress={() => props.onMove(-1)}
            />
            <RowButton
              label={TRANSFER_TEXT.later()}
              of={heading}
              isDisabled={position === count - 1}
              onPress={() => props.onMove(1)}
            />
            <RowButton label={GAS_TEXT.remove()} of={heading} onPress={props.onRemove} />
          </div>
        </div>
      </Fold>
    </section>
  )
}

function RowButton(props: {
  readonly label: string
  readonly of: string
  readonly isDisabled?: boolean
  readonly onPress: () => void
}) {
  return (
    <Button className="button" isDisabled={props.isDisabled ?? false} onPress={props.onPress}>
      {props.label}
      <span className="unseen">, {props.of}</span>
    </Button>
  )
}

function safetyChoices() {
  return MR_SAFETIES.map((safety) => ({ value: safety, text: mrSafetyName(safety) }))
}

function ScannerFields({ form }: { readonly form: GasForm }) {
  const told = { ...form, texts: { regulator: 'unknown', flowmeter: 'unknown', ...form.texts } }
  return (
    <fieldset className="group">
      <legend>{TRANSFER_TEXT.scanner()}</legend>
      <div className="group-fields">
        <div className="pair">
          <GasChoice form={told} name="regulator" choices={safetyChoices()} />
          <GasChoice form={told} name="flowmeter" choices={safetyChoices()} />
        </div>
        <GasNumber form={form} name="tubeLengthM" unit="m" />
      </div>
    </fieldset>
  )
}

function StoreFields({
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
