// What every part of the case form needs: the draft, how to change it, problems and assumptions by field. Leaves out controls.
import type { Problem } from '../../errors.ts'
import type { AssumedValue, ValueKey } from '../../patient/patient-spread.ts'
import { assumedHelpText, fromSettingsText } from '../../words/web-form-text.ts'
import { fieldOfPath, isSiteGiven } from '../case/case-input.ts'
import type { Draft } from '../case/draft.ts'
import { ALTITUDE_PATH } from '../settings/site-altitude.ts'

export interface Form {
  readonly draft: Draft
  readonly problems: readonly Problem[]
  readonly assumed: readonly AssumedValue[]
  /** Altitude of the site as set for this device; stands in where the case gives none. */
  readonly siteAltitudeM?: number | undefined
  readonly change: (draft: Draft) => void
}

export function problemsAt(form: Form, field: string): readonly Problem[] {
  return form.problems.filter(({ path }) => fieldOfPath(path) === field)
}

/** Fields that a value stands in for when they are empty. */
const FIELD_OF_VALUE: Readonly<Partial<Record<ValueKey, string>>> = {
  weightKg: 'patient.weightKg',
  heightCm: 'patient.heightCm',
  haemoglobinGpl: 'patient.haemoglobinGpl',
  temperatureC: 'patient.temperatureC',
  oxygenUptakeMlPerMin: 'patient.oxygenUptakeMlPerMin',
  arterialPco2Kpa: 'patient.bloodGas.arterialPco2Kpa',
  ph: 'patient.bloodGas.ph',
  carboxyhaemoglobinFraction: 'patient.bloodGas.carboxyhaemoglobinFraction',
  ratePerMin: 'breathing.ratePerMin',
  tidalVolumeMl: 'breathing.tidalVolumeMl',
  dutyFraction: 'breathing.dutyFraction',
  mouthShare: 'breathing.mouthShare',
  barometricPressureKpa: 'site.barometricPressureKpa',
}

/** What stands in for this field while it is empty: a setting, or what the last plan assumed. */
export function standInAt(form: Form, field: string): string | undefined {
  const { siteAltitudeM } = form
  if (field === ALTITUDE_PATH && siteAltitudeM !== undefined && !isSiteGiven(form.draft))
    return fromSettingsText(siteAltitudeM)
  return assumedAt(form, field)
}

function assumedAt(form: Form, field: string): string | undefined {
  const found = form.assumed.find(({ key }) => FIELD_OF_VALUE[key] === field)
  return found === undefined ? undefined : assumedHelpText(found)
}
