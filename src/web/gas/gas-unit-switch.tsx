// The units of Gas, quickly from its own page; they are the settings. Leaves out the unit at a typed pressure.
import { CHOOSABLE_UNITS } from '../../units/choosable.ts'
import { GAS_TEXT } from '../../words/gas-page-text.ts'
import { RadioChoice } from '../parts/radio-choice.tsx'
import { changeSettings, useSettings } from '../settings/settings-store.ts'

const PRESSURE_TEXTS = { bar: 'bar', psi: 'psi', kPa: 'kPa' } as const
const VOLUME_TEXTS = { L: 'L', 'ft³': 'ft³' } as const

export function GasUnitSwitch() {
  const { units } = useSettings()
  return (
    <div className="gas-units">
      <RadioChoice
        label={GAS_TEXT.pressureShownIn()}
        isLabelUnseen
        value={units.gasPressure}
        choices={CHOOSABLE_UNITS.gasPressure}
        texts={PRESSURE_TEXTS}
        onChoose={(gasPressure) => changeSettings({ units: { ...units, gasPressure } })}
      />
      <RadioChoice
        label={GAS_TEXT.volumeShownIn()}
        isLabelUnseen
        value={units.gasVolume}
        choices={CHOOSABLE_UNITS.gasVolume}
        texts={VOLUME_TEXTS}
        onChoose={(gasVolume) => changeSettings({ units: { ...units, gasVolume } })}
      />
    </div>
  )
}
