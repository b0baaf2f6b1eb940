// One cylinder: what is typed on one side, its clock times on the other. Leaves out how they are worked out.
import { useMemo } from 'react'
import { Button } from 'react-aria-components'
import { CHOOSABLE_UNITS } from '../../units/choosable.ts'
import {
  cylinderName,
  CYLINDER_TEXT,
  DRAW_KINDS,
  DRAW_KIND_TEXTS,
} from '../../words/gas-cylinder-text.ts'
import { GAS_TEXT } from '../../words/gas-page-text.ts'
import type { GasUnits } from '../../words/supply-value.ts'
import { CheckField } from '../parts/check-field.tsx'
import { Fold } from '../parts/fold.tsx'
import type { BedsideDraw } from './bedside-draw.ts'
import { BedsideSaid } from './bedside-said.tsx'
import { cardAnswer } from './cylinder-answer.ts'
import {
  CYLINDER_RULES,
  DRAW_FIELDS,
  drawKindOf,
  pressureUnitOf,
  readCylinder,
  withReadingNow,
  withTyped,
} from './cylinder-form.ts'
import { CylinderResult } from './cylinder-result.tsx'
import { GasChoice, GasNumber, GasText } from './gas-fields.tsx'
import type { GasForm } from './gas-fields.tsx'
import { GasRefused } from './gas-refused.tsx'
import type { Texts } from './kept-form.ts'
import { followed } from './read-form.ts'

export interface CylinderCardProps {
  readonly position: number
  readonly texts: Texts
  readonly now: Date
  readonly units: GasUnits
  readonly bedside: BedsideDraw
  readonly siteAltitudeM: number | undefined
  readonly onChange: (texts: Texts) => void
  readonly onRemove: (() => void) | undefined
}

export function CylinderCard(props: CylinderCardProps) {
  const { position, texts, now, units, bedside, siteAltitudeM, onChange } = props
  const prefix = `cylinder-${position}`
  const read = useMemo(
    () => readCylinder(texts, { prefix, now, bedside, siteAltitudeM }),
    [texts, prefix, now, bedside, siteAltitudeM],
  )
  const answer = followed(read, (question) => ({
    question,
    answer: cardAnswer(question, now),
  }))
  const form: GasForm = {
    prefix,
    texts,
    problems: answer.ok ? [] : answer.problems,
    type: (name, text) => onChange(withTyped(texts, { name, text }, new Date())),
  }
  const name = cylinderName(texts['marking'] ?? '', position + 1)
  const headingId = `${prefix}-heading`
  return (
    <section className="gas-card" aria-labelledby={headingId}>
      <div className="gas-result">
        <h2 id={headingId}>{name}</h2>
        {texts['example'] === undefined ? null : <p className="badge-line">{GAS_TEXT.example()}</p>}
        {answer.ok ? (
          <CylinderResult {...answer.value} name={name} now={now} units={units} />
        ) : (
          <GasRefused problems={answer.problems} />
        )}
      </div>
      <div className="gas-form">
        <CylinderFields
          form={form}
          bedside={bedside}
          onRead={() => onChange(withReadingNow(texts, new Date()))}
        />
        {props.onRemove === undefined ? null : (
          <Button className="button" onPress={props.onRemove}>
            {GAS_TEXT.remove()}
            <span className="unseen"> {name}</span>
          </Button>
        )}
      </div>
    </section>
  )
}

const FINE_PRESSURES = ['regulatorMinimum', 'gaugeError'] as const
const FINE_NUMBERS = ['readAtC', 'usedAtC', 'altitudeM'] as const
const BESIDE_NUMBERS = ['jetLpm', 'leakLpm'] as const

function CylinderFields(props: {
  readonly form: GasForm
  readonly bedside: BedsideDraw
  readonly onRead: () => void
}) {
  const { form, bedside } = props
  const unit = pressureUnitOf(form.texts)
  const isWrong = (names: readonly string[]): boolean =>
    form.problems.some(({ field }) => names.some((name) => field === `${form.prefix}.${name}`))
  return (
    <div className="group-fields">
      <div className="pair">
        <GasNumber form={form} name="gauge" unit={unit} />
        <GasChoice form={form} name="pressureUnit" choices={PRESSURE_CHOICES} />
      </div>
      <div className="pair">
        <GasNumber form={form} name="left" unit={unit} />
        <GasNumber form={form} name="waterVolume" unit={CYLINDER_RULES.waterVolume.unit} />
      </div>
      <CheckField
        field={`${form.prefix}.valve`}
        label={CYLINDER_TEXT.isOpen()}
        isChecked={form.texts['valve'] !== 'closed'}
        onCheck={(isOpen) => form.type('valve', isOpen ? 'open' : 'closed')}
      />
      {form.texts['example'] === undefined ? (
        <div className="gas-time">
          <GasText form={form} name="readAt" />
          <Button className="button" onPress={props.onRead}>
            {GAS_TEXT.now()}
          </Button>
        </div>
      ) : null}
      <GasChoice form={form} name="draw" choices={drawChoices()} />
      <DrawFields form={form} bedside={bedside} />
      <Fold heading={CYLINDER_TEXT.moreDrawn()} mustOpen={isWrong(BESIDE_NUMBERS)}>
        <Numbers form={form} names={BESIDE_NUMBERS} />
      </Fold>
      <Fold
        heading={CYLINDER_TEXT.fine()}
        mustOpen={isWrong([...FINE_PRESSURES, ...FINE_NUMBERS, 'handbookFactor'])}
      >
        <div className="group-fields">
          <GasText form={form} name="marking" />
          {FINE_PRESSURES.map((name) => (
            <GasNumber key={name} form={form} name={name} unit={unit} />
          ))}
          <Numbers form={form} names={[...FINE_NUMBERS, 'handbookFactor']} />
        </div>
      </Fold>
    </div>
  )
}

function DrawFields({ form, bedside }: { readonly form: GasForm; readonly bedside: BedsideDraw }) {
  const kind = drawKindOf(form.texts)
  if (kind !== 'bedside') return <Numbers form={form} names={DRAW_FIELDS[kind]} />
  return <BedsideSaid bedside={bedside} />
}

function Numbers(props: {
  readonly form: GasForm
  readonly names: readonly (keyof typeof CYLINDER_RULES)[]
}) {
  return (
    <div className="pair">
      {props.names.map((name) => (
        <GasNumber key={name} form={props.form} name={name} unit={unitOf(name)} />
      ))}
    </div>
  )
}

function unitOf(name: keyof typeof CYLINDER_RULES): string | undefined {
  const rule = CYLINDER_RULES[name]
  return 'unit' in rule ? rule.unit : undefined
}

const PRESSURE_CHOICES = CHOOSABLE_UNITS.gasPressure.map((unit) => ({ value: unit, text: unit }))

function drawChoices() {
  return DRAW_KINDS.map((kind) => ({ value: kind, text: DRAW_KIND_TEXTS[kind]() }))
}
