// Nasal cannula and nasopharyngeal catheter of small children: gas enters the nose, the upper airway is the store. Leaves out pulse devices.
import type { InterfaceFamily, SourcedSpread } from '../interface-family.ts'
import { NO_POCKET, sizeOf } from './sizes.ts'

/**
 * Share of the cannula's flow that enters the nose while the patient breathes out or pauses; while breathing in, all of it does.
 * The tracheal slope of ONugent2014 does not settle it: at one tidal volume any share gives that slope (scripts/calibrate.ts shows
 * it), so this is a wide prior around the middle.
 */
export const CAPTURE_OUT: SourcedSpread = {
  spread: { kind: 'triangular', min: 0.2, mode: 0.6, max: 1 },
  known: 'common-practice',
}

/** Share of the cannula's flow that runs on through the pharynx and out by the mouth when the mouth is open (half of it: common practice, no measurement). */
const FLUSH_SHARE: SourcedSpread = {
  spread: { kind: 'uniform', min: 0, max: 0.6 },
  known: 'common-practice',
}

/** Part of the extrathoracic dead space that the nose makes up: 20 of 72 mL (nose depth figures and cadavers, Nunn1959; split from memory). */
const BEHIND_NOSE = 0.28

export const NASAL_CANNULA: InterfaceFamily = {
  id: 'nasal-cannula',
  opening: 'nose',
  feeds: ['small-bore'],
  isCloseFitting: false,
  entrainsAir: 'no',
  sizes: [
    sizeOf('preterm', { minLpm: 0.01, maxLpm: 1, known: 'common-practice' }, NO_POCKET),
    sizeOf(
      'newborn',
      { minLpm: 0.01, maxLpm: 2, known: 'secondary', source: 'WhoSari2023' },
      NO_POCKET,
    ),
    sizeOf(
      'infant',
      { minLpm: 0.05, maxLpm: 2, known: 'seen', source: 'NswProngs2019' },
      NO_POCKET,
    ),
    sizeOf(
      'child',
      { minLpm: 0.125, maxLpm: 4, known: 'seen', source: 'NswProngs2019' },
      NO_POCKET,
    ),
    sizeOf('adult', { minLpm: 0.5, maxLpm: 6, known: 'common-practice' }, NO_POCKET),
  ],
  behaviour: {
    kind: 'nasal',
    captureOut: CAPTURE_OUT,
    flushShare: FLUSH_SHARE,
    behindNoseShare: BEHIND_NOSE,
  },
  isChecked: true,
  modelSd: { value: 0.12, known: 'derived', source: 'Wettstein2005' },
  printed: { kind: 'per-litre', base: 0.2, perLpm: 0.04, maxLpm: 6, known: 'secondary' },
}

export const NASAL_CATHETER: InterfaceFamily = {
  id: 'nasal-catheter',
  opening: 'nose',
  feeds: ['small-bore'],
  isCloseFitting: false,
  entrainsAir: 'no',
  sizes: [
    sizeOf('newborn', { minLpm: 0.1, maxLpm: 0.5, known: 'seen', source: 'Shann1988' }, NO_POCKET),
    sizeOf('infant', { minLpm: 0.1, maxLpm: 1, known: 'seen', source: 'Shann1988' }, NO_POCKET),
    sizeOf('child', { minLpm: 0.25, maxLpm: 2, known: 'memory' }, NO_POCKET),
  ],
  // Shann1988 measured it with the tip in the nasopharynx, hence its name; the id is older. Its flow is always inside the airway and flushes the pharynx.
  behaviour: {
    kind: 'nasal',
    captureOut: { spread: { kind: 'fixed', value: 1 }, known: 'derived' },
    flushShare: { spread: { kind: 'uniform', min: 0.4, max: 1 }, known: 'common-practice' },
    behindNoseShare: 0.5,
  },
  isChecked: true,
  modelSd: { value: 0.15, known: 'common-practice' },
  printed: { kind: 'none' },
}
