// Everything a reader may set for this device. Leaves out what each setting does elsewhere.
import { Button } from 'react-aria-components'
import { CHOOSABLE_QUANTITIES, CHOOSABLE_UNITS } from '../../units/choosable.ts'
import { LANGUAGE_NAMES, LANGUAGES } from '../../words/languages.ts'
import { PAGE_WORDS } from '../../words/web-page-text.ts'
import { faultsText, QUANTITY_LABELS, SETTINGS_WORDS } from '../../words/web-settings-text.ts'
import { CheckField } from '../parts/check-field.tsx'
import { ChoiceField } from '../parts/choice-field.tsx'
import { NumberField } from '../parts/number-field.tsx'
import { RadioChoice } from '../parts/radio-choice.tsx'
import { changeSettings, resetSettings, useKeptSettings } from './settings-store.ts'
import { DEVICE_LANGUAGE, LOOKS, MOTIONS } from './settings.ts'
import type { Settings } from './settings.ts'
import { ALTITUDE_PATH, siteAltitude } from './site-altitude.ts'
import '../styles/settings.css'

const LOOK_TEXTS = {
  device: SETTINGS_WORDS.lookDevice,
  light: SETTINGS_WORDS.lookLight,
  dark: SETTINGS_WORDS.lookDark,
}
const MOTION_TEXTS = {
  device: SETTINGS_WORDS.motionDevice,
  still: SETTINGS_WORDS.motionStill,
}

const LANGUAGE_CHOICES = [DEVICE_LANGUAGE, ...LANGUAGES] as const
const LANGUAGE_TEXTS = { [DEVICE_LANGUAGE]: SETTINGS_WORDS.languageDevice, ...LANGUAGE_NAMES }

export function SettingsPage() {
  const { settings, faults } = useKeptSettings()
  return (
    <main className="settings" id="answer" tabIndex={-1}>
      <h1 className="settings-heading">{SETTINGS_WORDS.heading}</h1>
      <p className="field-help">{SETTINGS_WORDS.kept}</p>
      {faults.length === 0 ? null : (
        <output className="settings-faults">{faultsText(faults)}</output>
      )}
      <Units settings={settings} />
      <section className="settings-part" aria-labelledby="settings-site">
        <h2 id="settings-site">{SETTINGS_WORDS.site}</h2>
        <NumberField
          field={ALTITUDE_PATH}
          label={SETTINGS_WORDS.altitude}
          unit="m"
          typed={settings.altitudeTyped}
          onType={(altitudeTyped) => changeSettings({ altitudeTyped })}
          problems={siteAltitude(settings.altitudeTyped).problems}
          help={SETTINGS_WORDS.altitudeHelp}
        />
      </section>
      <section className="settings-part" aria-labelledby="settings-language">
        <h2 id="settings-language">{SETTINGS_WORDS.language}</h2>
        <RadioChoice
          label={SETTINGS_WORDS.language}
          isLabelUnseen
          value={LANGUAGE_CHOICES.find((one) => one === settings.language) ?? DEVICE_LANGUAGE}
          choices={LANGUAGE_CHOICES}
          texts={LANGUAGE_TEXTS}
          onChoose={(language) => changeSettings({ language })}
        />
        <p className="field-help">{SETTINGS_WORDS.languageHelp}</p>
      </section>
      <Appearance settings={settings} />
      <Button className="button" onPress={resetSettings}>
        {SETTINGS_WORDS.usual}
      </Button>
    </main>
  )
}

function Units({ settings }: { readonly settings: Settings }) {
  const { units } = settings
  return (
    <section className="settings-part" aria-labelledby="settings-units">
      <h2 id="settings-units">{SETTINGS_WORDS.units}</h2>
      <div className="settings-fields">
        {CHOOSABLE_QUANTITIES.map((quantity) => (
          <ChoiceField
            key={quantity}
            field={`units.${quantity}`}
            label={QUANTITY_LABELS[quantity]}
            value={units[quantity]}
            onChoose={(unit) => changeSettings({ units: { ...units, [quantity]: unit } })}
            choices={CHOOSABLE_UNITS[quantity].map((unit) => ({ value: unit, text: unit }))}
          />
        ))}
      </div>
      <p className="field-help">{SETTINGS_WORDS.unitsHelp}</p>
    </section>
  )
}

function Appearance({ settings }: { readonly settings: Settings }) {
  return (
    <section className="settings-part" aria-labelledby="settings-look">
      <h2 id="settings-look">{PAGE_WORDS.look}</h2>
      <RadioChoice
        label={SETTINGS_WORDS.look}
        value={settings.look}
        choices={LOOKS}
        texts={LOOK_TEXTS}
        onChoose={(look) => changeSettings({ look })}
      />
      <RadioChoice
        label={SETTINGS_WORDS.motion}
        value={settings.motion}
        choices={MOTIONS}
        texts={MOTION_TEXTS}
        onChoose={(motion) => changeSettings({ motion })}
      />
      <CheckField
        field="isTwoMetre"
        label={SETTINGS_WORDS.twoMetreOn}
        isChecked={settings.isTwoMetre}
        onCheck={(isTwoMetre) => changeSettings({ isTwoMetre })}
      />
      <p className="field-help">{SETTINGS_WORDS.twoMetreHelp}</p>
    </section>
  )
}
