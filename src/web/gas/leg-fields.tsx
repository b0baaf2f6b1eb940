// The legs of a transfer as typed: kind and time, and in a fold the set-up from there on, delay, air and outlet; added, moved, removed. Leaves out reading them.
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { GAS_TEXT } from '../../words/gas-page-text.ts'
import { FEED_CHOICES, feedText, onChoiceText } from '../../words/gas-transfer-choices.ts'
import { legHeading, TRANSFER_TEXT } from '../../words/gas-transfer-text.ts'
import { legName } from '../../words/supply-names.ts'
import { Fold } from '../parts/fold.tsx'
import { BringBack } from './bring-back.tsx'
import { GasChoice, GasNumber } from './gas-fields.tsx'
import type { GasForm } from './gas-fields.tsx'
import { withMovedRow, withoutRow } from './kept-form.ts'
import type { FormStore, KeptForm } from './kept-form.ts'
import { legOnOf, ON_FIELDS, TYPED_ON } from './on-form.ts'
import type { FieldProblem } from './read-form.ts'
import { OnNumbers, own, RowButton, rowForm } from './transfer-form-fields.tsx'
import { LEG_KINDS, legKindOf, legPrefix, TRANSFER_RULES } from './transfer-form.ts'

export function Legs({
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
        <BringBack
          before={before}
          onBack={(removed) => {
            change(removed)
            setBefore(null)
          }}
        />
      </div>
    </>
  )
}

const MORE_LEG = ['delayMinutes', 'legAltitudeM'] as const
const ON_LEG = ['legFlowLpm', 'setUpLpm', 'setO2Fraction', 'biasFlowLpm'] as const

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
    [...MORE_LEG, ...ON_LEG].some((name) => field === `${form.prefix}.${name}`),
  )
  return (
    <section className="gas-row" aria-label={heading}>
      <p className="gas-row-name" aria-hidden="true">
        {heading}
      </p>
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
          <LegOn form={form} />
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

/** The set-up from this leg on: another, or the one before, at another flow where one is typed. */
function LegOn({ form }: { readonly form: GasForm }) {
  const on = legOnOf(form.texts)
  return (
    <>
      <GasChoice
        form={{ ...form, texts: { ...form.texts, legOn: on ?? 'same' } }}
        name="legOn"
        choices={[
          { value: 'same', text: TRANSFER_TEXT.asBefore() },
          ...TYPED_ON.map((choice) => ({ value: choice, text: onChoiceText(choice) })),
        ]}
      />
      {on === null ? (
        <GasNumber form={form} name="legFlowLpm" unit={TRANSFER_RULES.legFlowLpm.unit} />
      ) : (
        <OnNumbers form={form} names={ON_FIELDS[on]} />
      )}
    </>
  )
}
