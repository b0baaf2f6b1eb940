// Everything about one patient as spreads: what was typed with the error of its measurement, the rest from documented distributions. Leaves out what readings teach.
import type { Body } from '../physiology/body.ts'
import {
  cardiacOutput,
  carboxyhaemoglobinSpread,
  p50Spread,
  phSpread,
  quotientSpread,
  temperatureSpread,
  uptakeSpread,
} from './assume-blood.ts'
import { heightSpread, middleBody, sexAt, weightSpread } from './assume-body.ts'
import { breathingSpreads } from './assume-breathing.ts'
import { fitSpread } from './assume-fit.ts'
import { haemoglobinSpread } from './assume-haemoglobin.ts'
import { lungSpreads, oximeterBiasSpread } from './assume-lungs.ts'
import { pressureSpread } from './assume-site.ts'
import type { Case } from './case.ts'
import type { PatientSpreads } from './patient-spread.ts'

/** Spreads of a case that the reader accepted, for its middle body. Never throws on such a case (assume.test.ts). */
export function assumePatient(about: Case): PatientSpreads {
  return spreadsForBody(about, middleBody(about.patient, about.breathing))
}

/** The same for a given body: what goes by size is scaled to it. */
export function spreadsForBody(about: Case, body: Body): PatientSpreads {
  const patient = { ...about.patient, sex: sexAt(about.patient, 0) }
  const { preset, values } = breathingSpreads(about, body)
  const sized = { body, preset }
  return {
    body,
    values: {
      weightKg: weightSpread(patient, body.heightCm),
      heightCm: heightSpread(about),
      ...values,
      haemoglobinGpl: haemoglobinSpread(about),
      temperatureC: temperatureSpread(about),
      ph: phSpread(about),
      carboxyhaemoglobinFraction: carboxyhaemoglobinSpread(about),
      p50Kpa: p50Spread(about),
      respiratoryQuotient: quotientSpread(),
      oxygenUptakeMlPerMin: uptakeSpread(about, sized),
      cardiacOutputLpm: cardiacOutput(about, sized),
      ...lungSpreads(about, preset.lungCondition),
      oximeterBiasPercent: oximeterBiasSpread(),
      barometricPressureKpa: pressureSpread(about),
    },
    fit: fitSpread(about),
    inspiratoryShape: preset.inspiratoryShape,
    variability: preset.variability,
  }
}
