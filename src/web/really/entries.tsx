// The entries of "what is on really": interface, flow and rate give one honest line to copy, for the patient of the form or for an average adult. Leaves out ranking.
import { useMemo, useState } from 'react'
import { Button } from 'react-aria-components'
import type { Problem } from '../../errors.ts'
import type { Shelf } from '../../kit/shelf.ts'
import type { Case } from '../../patient/case.ts'
import { reallyLineText, REALLY_WORDS, wearableText } from '../../words/web-really-text.ts'
import { problemLineText } from '../../words/web-form-text.ts'
import { SHOWN_WORDS } from '../../words/web-trial-text.ts'
import { ChoiceField } from '../parts/choice-field.tsx'
import { CopyLine } from '../parts/copy-line.tsx'
import { NumberField } from '../parts/number-field.tsx'
import { useBench } from '../worker/bench.tsx'
import { reallyCase } from './really-case.ts'
import { wearablesOf } from './wearables.ts'

export interface EntriesProps {
  /** The patient of the form; null where the form holds none. */
  readonly about: Case | null
  readonly shelf: Shelf
}

type Told =
  | { readonly kind: 'line'; readonly line: string }
  | { readonly kind: 'problems'; readonly problems: readonly Problem[] }
  | { readonly kind: 'working' }
  | { readonly kind: 'failed' }

const FIELD = {
  worn: 'really.worn',
  flow: 'really.flowLpm',
  overFlow: 'really.overFlowLpm',
  rate: 'really.ratePerMin',
} as const

/** Where the reader of a case finds what was entered here. */
const PATHS = {
  flow: 'onNow.setUp.flowLpm',
  overFlow: 'onNow.setUp.over.flowLpm',
  rate: 'breathing.ratePerMin',
} as const
const FIELD_PATHS: readonly string[] = Object.values(PATHS)

export function Entries({ about, shelf }: EntriesProps) {
  const worn = useMemo(() => wearablesOf(shelf), [shelf])
  const [wornKey, setWornKey] = useState('')
  const [flowTyped, setFlowTyped] = useState('')
  const [overFlowTyped, setOverFlowTyped] = useState('')
  const [rateTyped, setRateTyped] = useState('')
  const [answer, setAnswer] = useState<{ readonly told: Told; readonly about: Case | null } | null>(
    null,
  )
  // A line told of the case before is none of this one.
  const told = answer !== null && answer.about === about ? answer.told : null
  const setTold = (next: Told | null): void =>
    setAnswer(next === null ? null : { told: next, about })
  const bench = useBench()
  const chosen = worn.find(({ key }) => key === wornKey)
  const hasOver = chosen !== undefined && chosen.overFamily !== null
  const problems = told?.kind === 'problems' ? told.problems : []
  const changed = (set: (text: string) => void) => (text: string) => {
    set(text)
    setTold(null)
  }
  const tell = async (): Promise<void> => {
    if (chosen === undefined) return
    const read = reallyCase(about, { worn: chosen, flowTyped, overFlowTyped, rateTyped })
    if (!read.ok) return setTold({ kind: 'problems', problems: read.problems })
    setTold({ kind: 'working' })
    const request = { about: read.case, shelf }
    const tried = await bench.ask(
      'really',
      async (core) => await core.trial({ request, question: 'on-now' }),
    )
    if (tried === undefined) return
    if (!tried.ok) return setTold({ kind: 'problems', problems: [tried.problem] })
    const setUp = read.case.onNow?.setUp
    const flow = setUp?.flowLpm
    const overFlow = setUp?.over?.flowLpm
    const ratePerMin = read.case.breathing.ratePerMin
    if (typeof flow !== 'number' || ratePerMin === undefined) return setTold({ kind: 'failed' })
    const line = reallyLineText({
      wearing: wearableText(chosen),
      flowLpm: flow,
      overFlowLpm: typeof overFlow === 'number' ? overFlow : null,
      ratePerMin,
      trial: tried.value.trial,
      isOfCase: about !== null,
    })
    setTold({ kind: 'line', line })
  }
  return (
    <div className="really">
      <p className="field-help">{REALLY_WORDS.help}</p>
      <ChoiceField
        field={FIELD.worn}
        label={REALLY_WORDS.interface}
        value={wornKey}
        onChoose={changed(setWornKey)}
        empty={wornKey === '' ? REALLY_WORDS.choose : undefined}
        choices={worn.map((one) => ({ value: one.key, text: wearableText(one) }))}
      />
      <div className="pair">
        <NumberField
          field={FIELD.flow}
          label={REALLY_WORDS.flow}
          unit="L/min"
          typed={flowTyped}
          onType={changed(setFlowTyped)}
          problems={problems.filter(({ path }) => path === PATHS.flow)}
        />
        {hasOver ? (
          <NumberField
            field={FIELD.overFlow}
            label={REALLY_WORDS.overFlow}
            unit="L/min"
            typed={overFlowTyped}
            onType={changed(setOverFlowTyped)}
            problems={problems.filter(({ path }) => path === PATHS.overFlow)}
          />
        ) : null}
        <NumberField
          field={FIELD.rate}
          label={REALLY_WORDS.rate}
          unit="/min"
          typed={rateTyped}
          onType={changed(setRateTyped)}
          problems={problems.filter(({ path }) => path === PATHS.rate)}
        />
      </div>
      <Button
        className="button"
        isDisabled={
          chosen === undefined ||
          flowTyped === '' ||
          rateTyped === '' ||
          (hasOver && overFlowTyped === '')
        }
        onPress={() => {
          tell().catch(() => setTold({ kind: 'failed' }))
        }}
      >
        {REALLY_WORDS.tell}
      </Button>
      <div aria-live="polite">
        {told?.kind === 'working' ? <p>{REALLY_WORDS.working}</p> : null}
        {told?.kind === 'failed' ? <p>{SHOWN_WORDS.failed}</p> : null}
        {problems
          .filter(({ path }) => !FIELD_PATHS.includes(path))
          .map((problem) => (
            <p key={problem.code + problem.path} className="field-problem">
              {problemLineText(problem)}
            </p>
          ))}
      </div>
      {told?.kind === 'line' ? <CopyLine key={told.line} line={told.line} /> : null}
    </div>
  )
}
