// The humidity rules in words: what this chain breaks, what to ask, to do and to know. Leaves out amounts of water.
import { nameIn, numberOf, textOf } from './remark-value.ts'
import type { RemarkTexts } from './remark-value.ts'
import { SECRETION_NAMES } from './names.ts'
import { numberText } from './number-text.ts'
import { say } from './say.ts'

const BREACH_TEXTS: RemarkTexts = {
  NEVER_DRY_TO_BYPASSED: () =>
    say(
      'dry gas to a bypassed upper airway: never; put a humidifier in the stream or an exchanger on the tube',
    ),
  NEVER_BOTH_HUMIDIFIERS: () =>
    say(
      'a heat and moisture exchanger together with a humidifier: never; it soaks and blocks. Take one of them off',
    ),
  EXCHANGER_OFF_FOR_NEBULISED_DRUG: () =>
    say('take the exchanger off while a drug is nebulised, and put it back afterwards'),
  GAS_TOO_HOT: (v) =>
    say(
      'gas may reach the airway at {temperature} °C: above {limit} °C it scalds; lower the heater',
      {
        temperature: numberText(numberOf(v, 'temperatureC'), 1),
        limit: numberText(numberOf(v, 'limitC'), 1),
      },
    ),
  ACTIVE_FOR_NEW_OPENING: (v) =>
    say(
      'a new opening at the neck, up to {days} days: active humidification, no exchanger and no cool bottle',
      { days: numberText(numberOf(v, 'days'), 1) },
    ),
  ACTIVE_FOR_SECRETIONS: (v) =>
    say('secretions are {kind}: active humidification', {
      kind: nameIn(SECRETION_FACT_NAMES, textOf(v, 'secretions')),
    }),
  ACTIVE_FOR_INFANT: () => say('an infant with a bypassed airway: active humidification'),
  ACTIVE_FOR_HIGH_FLOW: (v) =>
    say('high flow ({flow} L/min): active humidification', {
      flow: numberText(numberOf(v, 'flowLpm'), 0.1),
    }),
  EXCHANGER_NOT_WITH_SMALL_BREATHS: (v) =>
    say('breaths of {volume} mL are small for an exchanger: its own space is breathed again', {
      volume: numberText(numberOf(v, 'tidalVolumeMl'), 1),
    }),
}

const SECRETION_FACT_NAMES: Readonly<Record<string, string>> = {
  ...SECRETION_NAMES,
  'thick-or-bloody': say('thick or bloody'),
}

const ASK_TEXTS: RemarkTexts = {
  ASK_AGE_OF_OPENING: () =>
    say('not known how old the opening at the neck is: a new one needs active humidification'),
  ASK_SECRETIONS: () =>
    say(
      'not known what the secretions are like: thick, bloody or crusting ones need active humidification',
    ),
  ASK_NEBULISED_DRUG: () =>
    say('if a drug is nebulised through this set-up, take the exchanger off meanwhile'),
}

const DO_TEXTS: RemarkTexts = {
  DRAIN_AWAY_FROM_PATIENT: (v) =>
    numberOf(v, 'condensateMlPerHour') < DROPLET_ML_PER_HOUR
      ? say('keep the hose below the airway and drain water away from the patient, never back')
      : say(
          'about {volume} mL of water an hour gathers in the hose: keep it below the airway and drain it away from the patient, never back',
          { volume: numberText(numberOf(v, 'condensateMlPerHour'), 1) },
        ),
  STERILE_WATER_DATED: () =>
    say('sterile water only; write date and time on the bottle; change it, do not top it up'),
  CHANGE_SOAKED_EXCHANGER: () =>
    say(
      'look at the exchanger at each visit; change it when it is wet, soiled or hard to breathe through',
    ),
}

/** Less than this an hour is not worth a number. */
const DROPLET_ML_PER_HOUR = 0.5

const NOTE_TEXTS: RemarkTexts = {
  EXCHANGER_WILL_DO: () => say('an exchanger will do here: no sign that calls for more'),
  GAS_COOL_FOR_BYPASSED: (v) =>
    say('gas reaches the airway at about {temperature} °C; {limit} °C or more is recommended', {
      temperature: numberText(numberOf(v, 'temperatureC'), 1),
      limit: numberText(numberOf(v, 'limitC'), 1),
    }),
}

export const HUMIDITY_RULE_TEXTS: RemarkTexts = {
  ...BREACH_TEXTS,
  ...ASK_TEXTS,
  ...DO_TEXTS,
  ...NOTE_TEXTS,
}
