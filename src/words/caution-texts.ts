// Phrases that must stand beside certain numbers wherever they are shown, and the cautions that no code of the core carries. Leaves out the rest.
import { say } from './say.ts'

/** With every plan, wherever it is shown or printed, beside the cautions that the plan itself brings. */
export const STANDING_CAUTIONS: readonly string[] = [
  say(
    'Only for patients who breathe by themselves. Not validated for care until a hospital has done so.',
  ),
  say('Flows and fractions printed on a device by its maker take precedence over ours.'),
]

/** Beside every number of a family that no outside measurement checks. */
export const NOT_CHECKED = say('not checked against measurements')

/** Stands for it where room is short; its meaning stands below. */
export const UNCHECKED_MARK = '*'

/** What the mark behind a label means. */
export const UNCHECKED_NOTE = `${UNCHECKED_MARK} ${NOT_CHECKED}`

/** Beside every chance when no saturation was read. */
export const NO_READING = say('no reading: from averages only')

/** The same where a saturation was typed but could not be used. */
export const READING_PUT_ASIDE = say('reading put aside: from averages only')

/** In place of any forecast of carbon dioxide in a patient at risk. */
export const CO2_NOT_PREDICTABLE = say(
  'carbon dioxide not predictable: blood gas within 30–60 minutes',
)

/** With everything worked out from the demo shelf. */
export const DEMO_SHELF_NOTE = say('demo shelf of an invented hospital, not your ward')
