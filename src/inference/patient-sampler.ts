// The sampler of one case: draws of body and breath, and draws of lungs and blood, kept apart so that many lungs share one breath.
import { assumePatient } from '../patient/assume.ts'
import type { Case } from '../patient/case.ts'
import { BODY_DIMENSIONS, drawBody } from '../patient/draw-body.ts'
import type { BodyDraw } from '../patient/draw-body.ts'
import { drawGas, GAS_DIMENSIONS, lungOf } from '../patient/draw-gas.ts'
import type { DeliveryBody } from '../delivery/delivery-body.ts'
import type { PatientSampler } from './plan-sample.ts'

/** Draws follow patient/draw-body.ts and patient/draw-gas.ts; dimensions are theirs, in their order. */
export function patientSampler(about: Case): PatientSampler {
  const spreads = assumePatient(about)
  return {
    deliveryDimensions: BODY_DIMENSIONS.length,
    gasDimensions: GAS_DIMENSIONS.length,
    drawDelivery: (u) => {
      const drawn = drawBody(about, u)
      return { body: deliveryBodyOf(drawn), fit: drawn.fit }
    },
    drawGas: (u) => {
      const drawn = drawGas(spreads, u)
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

export function deliveryBodyOf(drawn: BodyDraw): DeliveryBody {
  const { airway, breath, extrathoracicL, intrathoracicL, mouthShare, tubeShare } = drawn
  return { airway, breath, extrathoracicL, intrathoracicL, mouthShare, tubeShare }
}
