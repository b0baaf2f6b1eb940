// Exclusions that follow from the airway and from what changes the interface.
import { INTERFACE_FAMILIES } from '../kit/interface-families.ts'
import type { OpeningId } from '../kit/family-id.ts'
import type { SetUp } from '../kit/set-up.ts'
import { airwayKind, neckInUse } from '../physiology/airway-state.ts'
import type { ExclusionRule, Found, PlanSubject } from './exclusion-rule.ts'

function openingOf(setUp: SetUp): OpeningId {
  return INTERFACE_FAMILIES[setUp.family].opening
}

function usesNose(setUp: SetUp): boolean {
  return openingOf(setUp) === 'nose' || setUp.family === 'cannula-under-mask'
}

/** A large-volume nebuliser wets its own gas. */
function isDry(setUp: SetUp): boolean {
  return setUp.humidification === 'none' && setUp.source.kind !== 'jet-nebuliser'
}

function when(applies: boolean, found: Found): Found | null {
  return applies ? found : null
}

function airwayFound(subject: PlanSubject, value: string): Found {
  return { values: { airway: airwayKind(subject.airway) }, flip: { path: 'patient.airway', value } }
}

export const exclusionsByAirway: readonly ExclusionRule[] = [
  {
    code: 'FACE_DOES_NOT_REACH_LUNGS',
    known: 'common-practice',
    applies: (subject, setUp) => {
      const kind = airwayKind(subject.airway)
      const closed = kind === 'laryngectomy' || kind === 'tracheostomy-cuff-up'
      return when(closed && openingOf(setUp) !== 'neck', airwayFound(subject, 'natural'))
    },
  },
  {
    code: 'VALVE_DRAWS_FROM_TUBE',
    known: 'common-practice',
    applies: (subject, setUp) =>
      when(
        airwayKind(subject.airway) === 'tracheostomy-speaking-valve' && openingOf(setUp) !== 'neck',
        airwayFound(subject, 'tracheostomy-capped'),
      ),
  },
  {
    code: 'NO_NECK_OPENING_IN_USE',
    known: 'common-practice',
    applies: (subject, setUp) =>
      when(
        !neckInUse(subject.airway) && openingOf(setUp) === 'neck',
        airwayFound(subject, 'tracheostomy-cuff-down'),
      ),
  },
  {
    code: 'NOSE_BLOCKED',
    known: 'common-practice',
    applies: (subject, setUp) => {
      const { airway } = subject
      const blocked = airway.route !== 'laryngectomy' && airway.nose === 'blocked'
      return when(blocked && usesNose(setUp), {
        values: {},
        flip: { path: 'patient.airway.nose', value: 'open' },
      })
    },
  },
  {
    code: 'HIGH_FLOW_AFTER_SKULL_BASE_FRACTURE',
    known: 'common-practice',
    applies: (subject, setUp) =>
      when(
        subject.changes.includes('base-of-skull-fracture') && setUp.family === 'nasal-high-flow',
        {
          values: {},
          flip: { path: 'patient.changes', value: 'base-of-skull-fracture' },
        },
      ),
  },
  {
    // Nothing is pushed blindly through a nose behind which the skull may be open.
    code: 'CATHETER_AFTER_SKULL_BASE_FRACTURE',
    known: 'common-practice',
    applies: (subject, setUp) =>
      when(
        subject.changes.includes('base-of-skull-fracture') && setUp.family === 'nasal-catheter',
        {
          values: {},
          flip: { path: 'patient.changes', value: 'base-of-skull-fracture' },
        },
      ),
  },
  {
    code: 'CONTACT_ON_BURN_OR_INJURY',
    known: 'common-practice',
    applies: (subject, setUp) => {
      const presses = openingOf(setUp) === 'face' && setUp.family !== 'face-tent'
      return when(subject.changes.includes('facial-burn-or-injury') && presses, {
        values: {},
        flip: { path: 'patient.changes', value: 'facial-burn-or-injury' },
      })
    },
  },
  {
    code: 'NEVER_DRY_TO_NECK',
    known: 'common-practice',
    applies: (subject, setUp) =>
      when(openingOf(setUp) === 'neck' && neckInUse(subject.airway) && isDry(setUp), {
        values: {},
        flip: { path: 'setUp.humidification', value: 'heated' },
      }),
  },
  {
    code: 'EXCHANGER_UNDER_WET_GAS',
    known: 'common-practice',
    applies: (subject, setUp) => {
      const { airway } = subject
      const isStoma = airway.route === 'laryngectomy'
      const worn = isStoma
        ? airway.heatMoistureExchanger
        : airway.route === 'tracheostomy' && airway.tube.heatMoistureExchanger
      // The mist of a jet nebuliser wets an exchanger like heated vapour.
      const isWet = setUp.humidification === 'heated' || setUp.source.kind === 'jet-nebuliser'
      const holder = isStoma ? 'patient.airway' : 'patient.airway.tube'
      return when(worn && openingOf(setUp) === 'neck' && isWet, {
        values: {},
        flip: { path: `${holder}.heatMoistureExchanger`, value: 'false' },
      })
    },
  },
]
