// The picks of a chain: ward, interface, source, flow, fraction, humidifier, airway. Leaves out the answer.
import type { Shelf } from '../../kit/shelf.ts'
import { CHAIN_PAGE } from '../../words/chain-page-text.ts'
import { HUMIDIFIER_NAMES } from '../../words/joining-names.ts'
import { SIZE_NAMES } from '../../words/names.ts'
import { flowText, fractionText } from '../../words/number-text.ts'
import { translated } from '../../words/say.ts'
import { ChoiceField } from '../parts/choice-field.tsx'
import { RadioChoice } from '../parts/radio-choice.tsx'
import { HUMIDIFICATIONS } from './chain-choice.ts'
import type { ChainChoice, Picked } from './chain-choice.ts'

export function BuildForm(props: {
  readonly shelf: Shelf
  readonly picked: Picked
  readonly onChoose: (choice: ChainChoice) => void
}) {
  const { shelf, picked, onChoose } = props
  const { choice } = picked
  const set = (change: Partial<ChainChoice>) => onChoose({ ...choice, ...change })
  return (
    <form className="chain-form" onSubmit={(event) => event.preventDefault()}>
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
        help={CHAIN_PAGE.usualAge()}
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
        choices={picked.flows.map((mark) => ({ value: String(mark), text: flowText(mark, MARK) }))}
      />
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
        onChoose={(value) => {
          const found = HUMIDIFICATIONS.find((one) => one === value)
          if (found !== undefined) set({ humidification: found })
        }}
        choices={HUMIDIFICATIONS.map((value) => ({ value, text: HUMIDIFIER_NAMES[value] }))}
      />
      <RadioChoice
        label={CHAIN_PAGE.airway()}
        value={choice.airway}
        choices={AIRWAYS}
        texts={{ natural: CHAIN_PAGE.natural(), tube: CHAIN_PAGE.tube() }}
        onChoose={(airway) => set({ airway })}
      />
    </form>
  )
}

const AIRWAYS = ['natural', 'tube'] as const
/** Finest mark of any meter, L/min. */
const MARK = 0.01
