// How much the people behind a published mean differ. Leaves out disease.
import type { PeopleSpread } from '../people.ts'

/** Between healthy adults: VT 383 ± 91 mL, rate 16.6 ± 2.8, Ti/Ttot 0.42 ± 0.03 [Tobin1983]; extrathoracic 72 ± 32 mL [Nunn1959]. */
export const ADULT_PEOPLE: PeopleSpread = {
  tidalVolumeCv: 0.24,
  rateCv: 0.17,
  dutyCv: 0.07,
  deadSpaceCv: 0.4,
  devicesDiffer: true,
  addsUnexplained: true,
}

/** Infants: tidal volume 5.2 ± 1.2 mL/kg [Lindahl1984]; rate from the 5th to the 95th centile of its age [Rusconi1994]. */
export const INFANT_PEOPLE: PeopleSpread = {
  tidalVolumeCv: 0.23,
  rateCv: 0.2,
  dutyCv: 0.07,
  deadSpaceCv: 0.25,
  devicesDiffer: false,
  addsUnexplained: true,
}

/** For means: what the model leaves unexplained has no mean. */
export const ADULT_MEANS: PeopleSpread = { ...ADULT_PEOPLE, addsUnexplained: false }
