// The sampler of one case: draws of body and breath, and draws of lungs and blood, kept apart so that many lungs share one breath.
import { assumePatient } from '../patient/assume.ts'
import { UNKNOWN_LUNGS } from '../patient/assume-lungs.ts'
import type { Case } from '../patient/case.ts'
import { BODY_DIMENSIONS, drawBody } from '../patient/draw-body.ts'
import type { PatientSpreads } from '../patient/patient-spread.ts'
import type { BodyDraw } from '../patient/draw-body.ts'
import { GAS_DIMENSIONS, gasSampler, lungOf } from '../patient/draw-gas.ts'
import type { DeliveryBody } from '../delivery/delivery-body.ts'
import type { PatientSampler } from './plan-sample.ts'

/** Draws follow patient/draw-body.ts and patient/draw-gas.ts; dimensions are theirs, in their order. */
export function patientSampler(about: Case): PatientSampler {
  const spreads = assumePatient(about)
  const drawOwn = gasSampler(spreads)
  const drawOther = gasSampler(withUnknownLungs(spreads))
  return {
    deliveryDimensions: BODY_DIMENSIONS.length,
    gasDimensions: GAS_DIMENSIONS.length + 1,
    drawDelivery: (u) => {
      const drawn = drawBody(about, u)
      return { body: deliveryBodyOf(drawn), fit: drawn.fit }
    },
    drawGas: (u) => {
      const isOther = u(GAS_DIMENSIONS.length) < OTHER_LUNGS_SHARE
      const drawn = (isOther ? drawOther : drawOwn)(u)
      return {
        lung: lungOf(drawn),
        arterialPco2Kpa: drawn.arterialPco2Kpa,
        respiratoryQuotient: drawn.respiratoryQuotient,
        oximeterBiasPercent: drawn.oximeterBiasPercent,
        carboxyhaemoglobinFraction: drawn.carboxyhaemoglobinFraction,
      }
    },
  }
}

/** How often a patient's lungs are not those of the state that was typed (common practice): one in five. */
const OTHER_LUNGS_SHARE = 0.2

function withUnknownLungs(spreads: PatientSpreads): PatientSpreads {
  const { shuntFraction, extraShiftKpa } = spreads.values
  return {
    ...spreads,
    values: {
      ...spreads.values,
      shuntFraction: { ...shuntFraction, spread: UNKNOWN_LUNGS.shuntFraction },
      extraShiftKpa: { ...extraShiftKpa, spread: UNKNOWN_LUNGS.extraShiftKpa },
    },
  }
}

export function deliveryBodyOf(drawn: BodyDraw): DeliveryBody {
  const { airway, breath, extrathoracicL, intrathoracicL, mouthShare, tubeShare } = drawn
  return { airway, breath, extrathoracicL, intrathoracicL, mouthShare, tubeShare }
}
