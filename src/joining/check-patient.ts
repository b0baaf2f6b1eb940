// Faults of chain and patient together: a size for another body, an opening that does not lead to the lungs, an exchanger worn with a humidifier. Leaves out the plan's own exclusions.
import { sizeSuits } from '../kit/sizes-for.ts'
import { neckInUse } from '../physiology/airway-state.ts'
import { placed } from './chain.ts'
import type { Chain } from './chain.ts'
import { linesToPatients } from './lines.ts'
import { openingsOf } from './patient-part.ts'
import type { ChainPatient } from './patient-part.ts'
import { toldOnce } from './refusal.ts'
import type { Refusal } from './refusal.ts'
import { traitsOf } from './traits.ts'

export function patientFaults(chain: Chain, patient: ChainPatient): readonly Refusal[] {
  return [
    ...chain.parts.flatMap((_, at) => [
      ...sizeFaults(chain, patient, at),
      ...openingFaults(chain, patient, at),
    ]),
    ...toldOnce(moistureFaults(chain, patient)),
  ]
}

function sizeFaults(chain: Chain, patient: ChainPatient, at: number): readonly Refusal[] {
  const { family, size, label, fits } = placed(chain, at).part
  if (family === undefined || size === undefined) return []
  if (sizeSuits({ family, size, body: patient, label: fits ?? {} })) return []
  const values = { part: label, size, ageYears: patient.ageYears }
  return [{ code: 'WRONG_SIZE', values, part: at }]
}

function openingFaults(chain: Chain, patient: ChainPatient, at: number): readonly Refusal[] {
  const { part } = placed(chain, at)
  const [end] = part.inlets
  if (part.kind !== 'patient' || end === undefined) return []
  if (openingsOf(patient.airway).includes(end)) return []
  return [{ code: 'OPENING_NOT_IN_USE', values: { end }, part: at }]
}

/** Past mouth and nose gas must be moistened, and by one way alone. */
function moistureFaults(chain: Chain, patient: ChainPatient): readonly Refusal[] {
  const wearsExchanger = isExchangerWorn(patient)
  return linesToPatients(chain).flatMap((line): readonly Refusal[] => {
    const parts = line.map((at) => placed(chain, at).part)
    const at = line.find((one) => traitsOf(placed(chain, one).part).includes('active-humidifier'))
    if (wearsExchanger && at !== undefined)
      return [
        {
          code: 'EXCHANGER_WORN_WITH_HUMIDIFIER',
          values: { part: placed(chain, at).part.label },
          part: at,
        },
      ]
    const opening = parts.at(-1)?.inlets[0]
    const isNeck = opening === 'neck' || opening === 'conical-15-male'
    if (!isNeck || !neckInUse(patient.airway) || wearsExchanger) return []
    return parts.some((part) => traitsOf(part).includes('moistens'))
      ? []
      : [{ code: 'DRY_GAS_TO_NECK', values: {} }]
  })
}

function isExchangerWorn({ airway }: ChainPatient): boolean {
  if (airway.route === 'tracheostomy') return airway.tube.heatMoistureExchanger
  return airway.route === 'laryngectomy' && airway.heatMoistureExchanger
}
