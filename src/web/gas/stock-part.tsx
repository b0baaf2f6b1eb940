// Stock of interfaces and consumables: use a day, days left, when to order, the scarcest first. Leaves out prices and expiry.
import { Button } from 'react-aria-components'
import { stockAnswers } from '../../supply/stock.ts'
import type { StockAnswer, StockItem } from '../../supply/stock.ts'
import { stockBasisLine } from '../../words/gas-assumptions.ts'
import { daysText, itemName, STOCK_TEXT, perDayText } from '../../words/gas-home-text.ts'
import { GAS_TEXT } from '../../words/gas-page-text.ts'
import { FAMILY_NAMES } from '../../words/names.ts'
import { supplyTexts } from '../../words/supply-text.ts'
import { Facts } from '../parts/facts.tsx'
import { Lines } from '../parts/lines.tsx'
import { GasNumber, GasText } from './gas-fields.tsx'
import type { GasForm } from './gas-fields.tsx'
import { GasRefused } from './gas-refused.tsx'
import { useKeptForm, withoutRow, withRow } from './kept-form.ts'
import type { KeptForm, Texts } from './kept-form.ts'
import { attempted, formReader } from './read-form.ts'
import type { FieldProblem, ReadForm } from './read-form.ts'
import { useGasUnits } from './use-gas-units.ts'

const RULES = {
  onHand: { min: 0, max: 100_000 },
  leadTimeDays: { min: 0, max: 365, unit: 'd' },
} as const

/** Invented. */
const START: KeptForm = {
  texts: { example: 'yes' },
  rows: [
    {
      item: FAMILY_NAMES['nasal-cannula'],
      onHand: '42',
      usedEachDay: '6 4 5 7 3 6 5',
      leadTimeDays: '7',
    },
    {
      item: FAMILY_NAMES['non-rebreather-mask'],
      onHand: '9',
      usedEachDay: '1 0 2 1 1 0 3',
      leadTimeDays: '7',
    },
  ],
}

export function StockPart() {
  const { form, change } = useKeptForm('stock', START)
  const items = form.rows.map((row, i) => readItem(row, i))
  const problems = items.flatMap((read) => (read.ok ? [] : read.problems))
  const good = items.flatMap((read) => (read.ok ? [read.value] : []))
  const answers = attempted(() => stockAnswers(good))
  const told = answers.ok ? problems : [...problems, ...answers.problems]
  const own = (): KeptForm => ({ ...form, texts: {} })
  return (
    <>
      <p className="section-help">{STOCK_TEXT.help()}</p>
      <section className="gas-card" aria-label={STOCK_TEXT.list()}>
        <div className="gas-result">
          {form.texts['example'] === undefined ? null : (
            <p className="badge-line">{GAS_TEXT.example()}</p>
          )}
          {told.length > 0 ? <GasRefused problems={told} /> : null}
          {answers.ok ? <StockList answers={answers.value} /> : null}
        </div>
        <div className="gas-form">
          <ol className="gas-rows">
            {form.rows.map((texts, position) => (
              <li key={position}>
                <ItemFields
                  form={{
                    prefix: `stock-${position}`,
                    texts,
                    problems: told,
                    type: (name, text) =>
                      change(withRow(own(), position, { ...texts, [name]: text })),
                  }}
                  position={position}
                  onRemove={() => change(withoutRow(own(), position))}
                />
              </li>
            ))}
          </ol>
          <Button
            className="button"
            onPress={() => change({ ...own(), rows: [...form.rows, { leadTimeDays: '7' }] })}
          >
            {STOCK_TEXT.add()}
          </Button>
        </div>
      </section>
    </>
  )
}

function readItem(row: Texts, position: number): ReadForm<StockItem> {
  const reader = formReader(row, `stock-${position}`)
  const onHand = reader.number('onHand', RULES.onHand)
  const leadTimeDays = reader.number('leadTimeDays', RULES.leadTimeDays)
  const used = (row['usedEachDay'] ?? '').trim().split(/\s+/)
  if (!used.every((one) => /^\d{1,5}$/.test(one)))
    reader.report(
      { code: 'UNREADABLE_TEXT', path: 'gas.usedEachDay', value: row['usedEachDay'] ?? '' },
      'usedEachDay',
    )
  const problems: readonly FieldProblem[] = reader.problems
  if (problems.length > 0) return { ok: false, problems }
  const label = itemName(row['item'] ?? '', position + 1)
  const usedEachDay = used.map(Number)
  return {
    ok: true,
    value: { id: `item-${position + 1}`, label, onHand, usedEachDay, leadTimeDays },
  }
}

function ItemFields(props: {
  readonly form: GasForm
  readonly position: number
  readonly onRemove: () => void
}) {
  const { form, position } = props
  const name = itemName(form.texts['item'] ?? '', position + 1)
  return (
    <section className="gas-row" aria-label={name}>
      <GasText form={form} name="item" />
      <GasText form={form} name="usedEachDay" />
      <div className="pair">
        <GasNumber form={form} name="onHand" />
        <GasNumber form={form} name="leadTimeDays" unit={RULES.leadTimeDays.unit} />
      </div>
      <Button className="button" onPress={props.onRemove}>
        {GAS_TEXT.remove()}
        <span className="unseen">, {name}</span>
      </Button>
    </section>
  )
}

function StockList({ answers }: { readonly answers: readonly StockAnswer[] }) {
  const units = useGasUnits()
  return (
    <ol className="gas-rows">
      {answers.map((answer) => (
        <li key={answer.item.id} className="answer">
          <h2>{answer.item.label}</h2>
          <p className={answer.mustOrder ? 'must-act' : 'why'}>
            {answer.mustOrder ? STOCK_TEXT.order() : STOCK_TEXT.enough()}
          </p>
          <Facts
            facts={[
              {
                name: STOCK_TEXT.left(),
                value: answer.daysLeft === null ? STOCK_TEXT.noUse() : daysText(answer.daysLeft),
              },
              { name: STOCK_TEXT.perDay(), value: perDayText(answer.usePerDay) },
              { name: STOCK_TEXT.reorder(), value: String(answer.reorderPoint) },
            ]}
          />
          <Lines lines={[...supplyTexts(answer.remarks, units), stockBasisLine(answer.item)]} />
        </li>
      ))}
    </ol>
  )
}
