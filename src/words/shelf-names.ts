// What the lists, kinds and choices of a shelf are called. Leaves out interfaces, sources, humidifiers and ends, which have names elsewhere.
import type { FlowmeterClass } from '../physics/flowmeter-accuracy.ts'
import type { FlowmeterKind } from '../physics/flowmeter.ts'
import type { PurityClass } from '../physics/source-purity.ts'
import type { RowList } from '../kit/edit-shelf.ts'
import type { GasId } from '../kit/ends.ts'
import type { FittingKind, OutletKind, TubeKind } from '../kit/part-rows.ts'
import type { ModeKind, YesNoUnknown } from '../kit/shelf.ts'
import { say } from './say.ts'

type Names<Id extends string> = Readonly<Record<Id, string>>

export const LIST_TITLES: Names<RowList> = {
  interfaces: say('Interfaces'),
  sources: say('Gas sources'),
  humidifiers: say('Humidifiers'),
  tubes: say('Tubing and hoses'),
  fittings: say('Adapters, filters and valves'),
  outlets: say('Outlets and cylinders'),
  airMeters: say('Flowmeters for air'),
}

export const GAS_KIND_NAMES: Names<GasId> = {
  oxygen: say('oxygen'),
  air: say('medical air'),
  'nitrous-oxide': say('nitrous oxide'),
  'nitrous-oxide-oxygen': say('nitrous oxide with oxygen'),
  'carbon-dioxide': say('carbon dioxide'),
  vacuum: say('vacuum'),
}

export const OUTLET_NAMES: Names<OutletKind> = {
  'wall-outlet': say('wall outlet'),
  cylinder: say('cylinder'),
}

export const TUBE_NAMES: Names<TubeKind> = {
  'oxygen-tubing': say('oxygen tubing'),
  'breathing-hose': say('breathing hose'),
}

export const FITTING_NAMES: Names<FittingKind> = {
  adapter: say('adapter'),
  filter: say('filter'),
  'y-piece': say('Y-piece'),
  'open-t-piece': say('open T-piece'),
  'exhalation-port': say('exhalation port'),
  'one-way-valve': say('one-way valve'),
  'relief-valve': say('relief valve'),
  reservoir: say('reservoir'),
  cap: say('cap'),
  'cuffed-mask': say('cuffed mask'),
}

export const METER_NAMES: Names<FlowmeterKind> = {
  'tube-compensated': say('tube, back-pressure compensated'),
  'tube-uncompensated': say('tube, not compensated'),
  dial: say('dial'),
  electronic: say('electronic'),
}

export const METER_CLASS_NAMES: Names<FlowmeterClass> = {
  ordinary: say('ordinary'),
  'low-flow': say('low flow'),
}

export const PURITY_NAMES: Names<PurityClass> = {
  pipeline: say('oxygen from pipeline or cylinder'),
  concentrator: say('oxygen from a concentrator'),
  'oxygen-93': say('oxygen 93 per cent'),
  'who-floor': say('oxygen of at least 82 per cent'),
}

export const YES_NO_NAMES: Names<YesNoUnknown> = {
  yes: say('yes'),
  no: say('no'),
  unknown: say('unknown'),
}

export const MODE_NAMES: Names<ModeKind> = {
  'constant-flow': say('even flow, no breaths'),
  'cycles-pressure': say('gives or supports breaths: not for this use'),
}
