// The picks of a chain: for whom, ward, interface, source, flow, fraction, humidifier, airway. Leaves out the answer.
import { stepCode } from '../../kit/flow-steps.ts'
import { HUMIDIFICATIONS } from '../../kit/shelf.ts'
import type { Shelf } from '../../kit/shelf.ts'
import type { FlowStep } from '../../kit/source-row.ts'
import { bedsidePatientText, CHAIN_PAGE } from '../../words/chain-page-text.ts'
import { HUMIDIFIER_NAMES } from '../../words/joining-names.ts'
import { SIZE_NAMES } from '../../words/names.ts'
import { flowText, fractionText } from '../../words/number-text.ts'
import { translated } from '../../words/say.ts'
import { flowStepText } from '../../words/set-up-text.ts'
import { ChoiceField } from '../parts/choice-field.tsx'
import { RadioChoice } from '../parts/radio-choice.tsx'
import type { BedsidePatient } from './bedside-patient.ts'
import { AIRWAYS, PATIENTS } from './chain-choice.ts'
import type { ChainChoice, Picked } from './chain-choice.ts'

export function BuildForm(props: {
  readonly shelf: Shelf
  readonly picked: Picked
  readonly bedside: BedsidePatient
  readonly onChoose: (choice: ChainChoice) => void
}) {
  const { shelf, picked, bedside, onChoose } = props
  const { choice } = picked
  const isUsual = bedside.kind !== 'patient' || choice.patient === 'usual'
  const set = (change: Partial<ChainChoice>) => onChoose({ ...choice, ...change })
  return (
    <form className="chain-form" onSubmit={(event) => event.preventDefault()}>
      <Patient bedside={bedside} patient={choice.patient} onChoose={set} />
      <ChoiceField
        field="chain-ward"
        label={CHAIN_PAGE.ward()}
        value={choice.wardId}
        empty={CHAIN_PAGE.anyWard()}
        onChoose={(wardId) => set({ wardId })}
        choices={shelf.wards.map(({ id, name }) => ({ value: id, text: name }))}
      />
      <ChoiceField
        field="chain-interface"
        label={CHAIN_PAGE.interface()}
        value={choice.interfaceKey}
        onChoose={(interfaceKey) => set({ interfaceKey })}
        choices={shelf.interfaces.flatMap((row) =>
          row.sizes.map(({ size }) => ({
            value: `${row.id}/${size}`,
            text: `${translated(row.label)}, ${SIZE_NAMES[size]}`,
          })),
        )}
        help={isUsual ? CHAIN_PAGE.usualAge() : undefined}
      />
      <ChoiceField
        field="chain-source"
        label={CHAIN_PAGE.source()}
        value={choice.sourceId}
        onChoose={(sourceId) => set({ sourceId })}
        choices={shelf.sources.map(({ id, label }) => ({ value: id, text: translated(label) }))}
      />
      <ChoiceField
        field="chain-flow"
        label={CHAIN_PAGE.flow()}
        value={choice.flow}
        onChoose={(flow) => set({ flow })}
        choices={picked.flows.map(stepChoice)}
      />
      {picked.overFlows.length === 0 ? null : (
        <ChoiceField
          field="chain-over-flow"
          label={CHAIN_PAGE.overFlow()}
          value={choice.overFlow}
          onChoose={(overFlow) => set({ overFlow })}
          choices={picked.overFlows.map(stepChoice)}
        />
      )}
      {picked.fractions.length === 0 ? null : (
        <ChoiceField
          field="chain-fraction"
          label={CHAIN_PAGE.fraction()}
          value={choice.fraction}
          onChoose={(fraction) => set({ fraction })}
          choices={picked.fractions.map((one) => ({
            value: String(one),
            text: fractionText(one),
          }))}
        />
      )}
      <ChoiceField
        field="chain-humidifier"
        label={CHAIN_PAGE.humidifier()}
        value={choice.humidification}
        onChoose={(humidification) => set({ humidification })}
        choices={HUMIDIFICATIONS.map((value) => ({ value, text: HUMIDIFIER_NAMES[value] }))}
      />
      {isUsual ? (
        <RadioChoice
          label={CHAIN_PAGE.airway()}
          value={AIRWAYS.find((one) => one === choice.airway) ?? 'natural'}
          choices={AIRWAYS}
          texts={{ natural: CHAIN_PAGE.natural(), tube: CHAIN_PAGE.tube() }}
          onChoose={(airway) => set({ airway })}
        />
      ) : null}
    </form>
  )
}

/** For whom: the patient on Bedside is told, and can be left for a usual one. */
function Patient(props: {
  readonly bedside: BedsidePatient
  readonly patient: string
  readonly onChoose: (change: Partial<ChainChoice>) => void
}) {
  const { bedside, patient, onChoose } = props
  if (bedside.kind === 'none') return null
  if (bedside.kind === 'unreadable') return <p>{CHAIN_PAGE.bedsideUnreadable()}</p>
  return (
    <>
      <RadioChoice
        label={CHAIN_PAGE.patient()}
        value={PATIENTS.find((one) => one === patient) ?? 'bedside'}
        choices={PATIENTS}
        texts={{ bedside: CHAIN_PAGE.fromBedside(), usual: CHAIN_PAGE.usual() }}
        onChoose={(chosen) => onChoose({ patient: chosen })}
      />
      {patient === 'usual' ? null : (
        <p className="chain-patient">{bedsidePatientText(bedside.about)}</p>
      )}
    </>
  )
}

function stepChoice(step: FlowStep) {
  const text = step.kind === 'flush' ? flowStepText(step) : flowText(step.flowLpm, MARK)
  return { value: stepCode(step), text }
}

/** Finest mark of any meter, L/min. */
const MARK = 0.01
