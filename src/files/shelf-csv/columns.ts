// Which columns each list of the shelf has, and which field each holds. Leaves out how a cell is written.
import type { SourceKind } from '../../kit/source-row.ts'
import { RULES } from '../../kit/shelf-rules.ts'
import type { ShelfCsvColumn, ShelfList } from './headings.ts'
import {
  CHOICE,
  countCell,
  MODES,
  NAMES,
  numberCell,
  numbersCell,
  SETTINGS,
  SIZES,
  TEXT,
  YES_NO,
} from './cell-kinds.ts'
import type { CellKind } from './cell-kinds.ts'

export interface Column {
  readonly column: ShelfCsvColumn
  /** The field in a row of the shelf file, with points between its parts. */
  readonly field: string
  readonly cell: CellKind
}

const of = (column: ShelfCsvColumn, field: string, cell: CellKind): Column => ({
  column,
  field,
  cell,
})

const ID = of('id', 'id', TEXT)
const ROW = [
  ID,
  of('name', 'label', TEXT),
  of('place', 'place', TEXT),
  of('wardMarking', 'wardMarking', TEXT),
]
const KIND = of('kind', 'kind', CHOICE)
const COUNT = of('count', 'count', countCell(RULES.count))
const COUNTED = [...ROW, COUNT]
const LABEL = [
  of('labelMin', 'ratedMinLpm', numberCell(RULES.ratedLpm)),
  of('labelMax', 'ratedMaxLpm', numberCell(RULES.ratedLpm)),
]
const OUTLET_END = of('outletEnd', 'outletEnd', CHOICE)
const OWN_ENDS = [of('inletEnds', 'inletEnds', NAMES), OUTLET_END]
const STEPS = of('steps', 'stepsLpm', numbersCell(RULES.stepLpm))
const USED_FRACTIONS = of('usedFractions', 'usedFractions', numbersCell(RULES.o2Fraction))
const HEATED = of('heated', 'isHeated', YES_NO)

const SOURCE = [
  ...COUNTED,
  KIND,
  of('usedSteps', 'usedStepsLpm', numbersCell(RULES.stepLpm)),
  of('usedFor', 'usedFor', NAMES),
  of('markedIn', 'markedIn', CHOICE),
  ...OWN_ENDS,
]
const METERED = [
  ...SOURCE,
  of('purity', 'purity', CHOICE),
  of('scaleKind', 'meter.kind', CHOICE),
  of('meterClass', 'meter.meterClass', CHOICE),
  of('steps', 'meter.stepsLpm', numbersCell(RULES.stepLpm)),
  of('flushLow', 'meter.flush.lowLpm', numberCell(RULES.flushLpm)),
  of('flushMedian', 'meter.flush.medianLpm', numberCell(RULES.flushLpm)),
  of('flushHigh', 'meter.flush.highLpm', numberCell(RULES.flushLpm)),
  of('flushSource', 'meter.flush.source', TEXT),
]
const NEBULISER = [
  ...METERED,
  of('fractions', 'settings', numbersCell(RULES.valveFraction)),
  of('drive', 'driveLpmMax', numberCell(RULES.stepLpm)),
  of('jets', 'jets', countCell(RULES.jets)),
  USED_FRACTIONS,
  HEATED,
]
const MIXED = [
  STEPS,
  of('fractions', 'fractionSteps', numbersCell(RULES.o2Fraction)),
  of('errorRelative', 'errorRelative', numberCell(RULES.errorRelative)),
  USED_FRACTIONS,
  of('pushes', 'pushesKpaMax', numberCell(RULES.pressureKpa)),
  of('airFails', 'failure.air', CHOICE),
  of('oxygenFails', 'failure.oxygen', CHOICE),
  of('mainsFail', 'failure.mains', CHOICE),
  of('biasFlow', 'biasFlowAddsToUse', CHOICE),
]
const BLENDER = [...SOURCE, ...MIXED]
const VENTILATOR = [
  ...BLENDER,
  of('leak', 'leakCompensationAddsToUse', CHOICE),
  of('ownFilter', 'hasOwnFilter', CHOICE),
  of('modes', 'modes', MODES),
]

const SOURCE_COLUMNS: Readonly<Record<SourceKind, readonly Column[]>> = {
  'wall-flowmeter': METERED,
  'two-flowmeters': METERED,
  'cylinder-regulator': METERED,
  concentrator: METERED,
  'jet-nebuliser': NEBULISER,
  blender: BLENDER,
  ventilator: VENTILATOR,
}

const LIST_COLUMNS: Readonly<Record<ShelfList, readonly Column[]>> = {
  hospital: [
    of('name', 'hospital', TEXT),
    of('altitude', 'altitudeM', numberCell(RULES.altitudeM)),
    of('invented', 'isInvented', YES_NO),
  ],
  wards: [ID, of('name', 'name', TEXT), of('beds', 'beds', countCell(RULES.beds))],
  interfaces: [
    ...ROW,
    of('kind', 'family', CHOICE),
    of('sizes', 'sizes', SIZES),
    of('valveSettings', 'settings', SETTINGS),
    of('collar', 'hasCollar', YES_NO),
    of('inletEnds', 'inletEnds', NAMES),
    of('tubingLength', 'tubing.lengthM', numberCell(RULES.lengthM)),
    of('tubingBore', 'tubing.boreMm', numberCell(RULES.boreMm)),
  ],
  // A source of no known kind: every column of any kind, so that only the kind is refused.
  sources: [
    ...NEBULISER,
    ...VENTILATOR.filter(({ column }) => !NEBULISER.some((one) => one.column === column)),
  ],
  humidifiers: [
    ...COUNTED,
    KIND,
    ...OWN_ENDS,
    ...LABEL,
    of('relief', 'reliefKpa', numberCell(RULES.pressureKpa)),
    of('water', 'waterMl', numberCell(RULES.waterMl)),
    of('output', 'outputMgPerL', numberCell(RULES.outputMgPerL)),
    of('breathMin', 'tidalMinMl', numberCell(RULES.tidalMl)),
    of('breathMax', 'tidalMaxMl', numberCell(RULES.tidalMl)),
  ],
  outlets: [...COUNTED, KIND, of('gas', 'gas', CHOICE), OUTLET_END],
  airMeters: [...COUNTED, STEPS, ...OWN_ENDS],
  tubes: [
    ...COUNTED,
    KIND,
    of('length', 'lengthM', numberCell(RULES.lengthM)),
    of('bore', 'boreMm', numberCell(RULES.boreMm)),
    HEATED,
    of('waterTrap', 'hasWaterTrap', YES_NO),
    of('inletEnds', 'inletEnd', CHOICE),
    OUTLET_END,
    ...LABEL,
  ],
  fittings: [
    ...COUNTED,
    KIND,
    ...OWN_ENDS,
    of('openEnds', 'openEnds', NAMES),
    of('ports', 'hasPorts', YES_NO),
    ...LABEL,
  ],
}

/** The columns of a row; those of a source depend on its kind. */
export function columnsOf(list: ShelfList, kind: string | undefined): readonly Column[] {
  return list === 'sources' && kind !== undefined && isSourceKind(kind)
    ? SOURCE_COLUMNS[kind]
    : LIST_COLUMNS[list]
}

function isSourceKind(kind: string): kind is SourceKind {
  return Object.hasOwn(SOURCE_COLUMNS, kind)
}
