// Gas supply by name for evidence rows: contents, times, rooms, pipelines, each worked by the function the product uses. Leaves out delivered oxygen.
import { assert } from '../errors.ts'
import {
  freeOxygenMolPerL,
  oxygenCompressibility,
  oxygenContentsLitres,
  oxygenPressureAtKpa,
} from '../physics/real-gas-oxygen.ts'
import { usableContents } from '../supply/cylinder.ts'
import { handbookMinutes } from '../supply/duration.ts'
import { waterVolumeMinutes } from '../supply/handbook.ts'
import { gasFromLiquidL } from '../supply/liquid-oxygen.ts'
import { designFlowLpm, PIPELINE_AREAS } from '../supply/pipeline.ts'
import { roomEnrichment } from '../supply/room-enrichment.ts'
import { transportNeed } from '../supply/transport.ts'
import { STANDARD_PRESSURE_KPA } from '../units/constants.ts'
import { barFromKpa, kpaFromBar, kpaFromPsi } from '../units/pressure.ts'

type Given = Readonly<Record<string, number>>

export const SUPPLY_FORMULAS = {
  'oxygen-contents': (g: Given) => oxygenContentsLitres(filling(g)),
  'oxygen-compressibility': (g: Given) => oxygenCompressibility(filling(g)),
  'gauge-at-temperature': (g: Given) =>
    barFromKpa(oxygenPressureAtKpa({ ...filling(g), atC: of(g, 'atC') }) - STANDARD_PRESSURE_KPA),
  'cylinder-contents': (g: Given) => of(g, 'waterL') * oxygenContentsLitres(filling(g)),
  'cylinder-minutes': (g: Given) => usableL(g) / of(g, 'flowLpm'),
  'litres-per-psi': (g: Given) =>
    usableL({ ...g, bar: barFromKpa(kpaFromPsi(of(g, 'psi'))), leftBar: 0 }) / of(g, 'psi'),
  'handbook-minutes': (g: Given) =>
    handbookMinutes({
      gaugePsi: of(g, 'psi'),
      reservePsi: of(g, 'reservePsi'),
      factorLPerPsi: of(g, 'factor'),
      flowLpm: of(g, 'flowLpm'),
    }),
  'rule-of-thumb-minutes': (g: Given) =>
    waterVolumeMinutes({
      waterVolumeL: of(g, 'waterL'),
      gaugeKpa: kpaFromBar(of(g, 'bar')),
      leftGaugeKpa: kpaFromBar(of(g, 'leftBar')),
      drawLpm: of(g, 'flowLpm'),
    }),
  'transfer-need': (g: Given) =>
    transportNeed([{ kind: 'corridor', minutes: of(g, 'minutes'), drawLpm: of(g, 'drawLpm') }], {
      factor: of(g, 'factor'),
      extraMinutes: of(g, 'extraMinutes'),
    }).neededL,
  'gas-from-liquid': (g: Given) =>
    gasFromLiquidL(1) * (freeOxygenMolPerL(20) / freeOxygenMolPerL(of(g, 'atC'))),
  'room-percent': (g: Given) => 100 * roomEnrichment(room(g)).steadyO2Fraction,
  'room-minutes': (g: Given) => roomEnrichment(room(g)).timeConstantMin ?? 0,
  'outside-air': (g: Given) =>
    roomEnrichment({
      ...room({ ...g, volumeM3: 100, changes: 1 }),
      limitO2Fraction: of(g, 'limit'),
    }).outsideAirNeededM3PerH,
  'pipeline-design': (g: Given) => {
    const area = PIPELINE_AREAS[of(g, 'area')]
    assert(area !== undefined, 'pipeline area by number')
    return designFlowLpm({ area, places: of(g, 'places') })
  },
} as const satisfies Readonly<Record<string, (given: Given) => number>>

function filling(g: Given) {
  const pressureKpa = kpaFromBar(of(g, 'bar')) + STANDARD_PRESSURE_KPA
  return { temperatureC: g['atFillingC'] ?? 15, pressureKpa }
}

/** Litres counted at 15 °C, as the worked examples do. */
function usableL(g: Given): number {
  return usableContents(
    {
      waterVolumeL: of(g, 'waterL'),
      gaugeKpa: kpaFromBar(of(g, 'bar')),
      readAtC: 15,
      isValveOpen: true,
    },
    {
      barometricKpa: STANDARD_PRESSURE_KPA,
      leftGaugeKpa: kpaFromBar(of(g, 'leftBar')),
      litresAtC: 15,
    },
  ).usableL
}

function room(g: Given) {
  return {
    volumeM3: of(g, 'volumeM3'),
    airChangesPerHour: of(g, 'changes'),
    oxygenLpm: of(g, 'oxygenLpm'),
  }
}

function of(given: Given, key: string): number {
  const value = given[key]
  assert(value !== undefined, `evidence/supply given ${key}`)
  return value
}
