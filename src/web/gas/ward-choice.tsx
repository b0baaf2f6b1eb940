// Which ward is looked at: chosen by name or read from a file. Leaves out what is shown of it.
import { FileTrigger, Button } from 'react-aria-components'
import { DEMO_WARD_IDS, DEMO_WARDS } from '../../supply/demo-wards/demo-wards.ts'
import { WARD_TEXT } from '../../words/gas-ward-text.ts'
import { ChoiceField } from '../parts/choice-field.tsx'
import { Fold } from '../parts/fold.tsx'
import type { ChosenWard } from './use-ward.ts'
import { OWN_FILE } from './use-ward.ts'

export function WardChoice({ chosen }: { readonly chosen: ChosenWard }) {
  const named = DEMO_WARD_IDS.map((id) => ({ value: id, text: DEMO_WARDS[id].ward }))
  const own = {
    value: OWN_FILE,
    text: chosen.fileName === '' ? WARD_TEXT.ofFile() : chosen.fileName,
  }
  return (
    <div className="group-fields">
      <ChoiceField
        field="ward.ward"
        label={WARD_TEXT.which()}
        value={chosen.choice}
        onChoose={chosen.choose}
        choices={[...named, own]}
      />
      <Fold heading={WARD_TEXT.readFile()} level={2}>
        <div className="group-fields">
          <FileTrigger
            acceptedFileTypes={['.yaml', '.yml', '.json']}
            onSelect={(files) => {
              const file = files?.[0]
              if (file !== undefined) chosen.readFile(file).catch(() => undefined)
            }}
          >
            <Button className="button">{WARD_TEXT.pickFile()}</Button>
          </FileTrigger>
          <p className="field-help">{WARD_TEXT.fileHelp()}</p>
        </div>
      </Fold>
    </div>
  )
}
