// Other names lead to choices that exist.
import { describe, expect, it } from 'vitest'
import { FAMILY_IDS, FIT_IDS, SIZE_IDS } from '../kit/family-id.ts'
import * as aliases from './aliases.ts'
import { KEYS } from './case-fields.ts'
import { BREATHING_STATES, CHANGES } from './case.ts'
import { plain } from './did-you-mean.ts'
import { CUFFS, NOSE_STATES, ROUTES } from './read-airway.ts'
import { GOAL_KINDS } from './read-goal.ts'
import { RETENTION_RISKS, SEXES } from './read-patient.ts'
import { SOURCE_KINDS } from './read-set-up.ts'

const ALL_KEYS: readonly string[] = Object.values(KEYS).flat()

const TABLES: readonly (readonly [
  name: string,
  table: Readonly<Record<string, string>>,
  choices: readonly string[],
])[] = [
  ['FIELD_ALIASES', aliases.FIELD_ALIASES, ALL_KEYS],
  ['SATURATION_GOAL_ALIASES', aliases.SATURATION_GOAL_ALIASES, KEYS.saturationGoal],
  ['FRACTION_GOAL_ALIASES', aliases.FRACTION_GOAL_ALIASES, KEYS.fractionGoal],
  ['STATE_ALIASES', aliases.STATE_ALIASES, BREATHING_STATES],
  ['FAMILY_ALIASES', aliases.FAMILY_ALIASES, FAMILY_IDS],
  ['SIZE_ALIASES', aliases.SIZE_ALIASES, SIZE_IDS],
  ['FIT_ALIASES', aliases.FIT_ALIASES, FIT_IDS],
  ['SOURCE_ALIASES', aliases.SOURCE_ALIASES, SOURCE_KINDS],
  ['ROUTE_ALIASES', aliases.ROUTE_ALIASES, ROUTES],
  ['NOSE_ALIASES', aliases.NOSE_ALIASES, NOSE_STATES],
  ['CUFF_ALIASES', aliases.CUFF_ALIASES, CUFFS],
  ['RISK_ALIASES', aliases.RISK_ALIASES, RETENTION_RISKS],
  ['SEX_ALIASES', aliases.SEX_ALIASES, SEXES],
  ['CHANGE_ALIASES', aliases.CHANGE_ALIASES, CHANGES],
  ['GOAL_ALIASES', aliases.GOAL_ALIASES, GOAL_KINDS],
]

describe('other names', () => {
  it.each(TABLES)(
    '%s: plain letters, each standing for a choice that exists',
    (_name, table, choices) => {
      for (const [typed, choice] of Object.entries(table)) {
        expect(plain(typed)).toBe(typed)
        expect(choices).toContain(choice)
      }
    },
  )
})
