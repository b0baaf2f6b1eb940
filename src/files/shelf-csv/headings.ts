// The headings of the shelf as a spreadsheet, and what may stand in cells with a form of their own. They are a file format: the same in every language. Leaves out how cells are read.

/** What a column is called in the file, with its unit in brackets. */
export const SHELF_CSV_HEADINGS = {
  list: 'list',
  id: 'id',
  name: 'name',
  place: 'place',
  count: 'count',
  sizes: 'sizes',
  kind: 'kind',
  gas: 'gas',
  wardMarking: 'ward marking',
  labelMin: 'label from (L/min)',
  labelMax: 'label to (L/min)',
  beds: 'beds',
  altitude: 'altitude (m)',
  invented: 'invented',
  purity: 'purity',
  scaleKind: 'scale kind',
  meterClass: 'scale accuracy',
  steps: 'marks (L/min)',
  usedSteps: 'marks used (L/min)',
  markedIn: 'scale unit',
  flushLow: 'flush low (L/min)',
  flushMedian: 'flush middle (L/min)',
  flushHigh: 'flush high (L/min)',
  flushSource: 'flush source',
  fractions: 'fractions',
  usedFractions: 'fractions used',
  errorRelative: 'flow error (share)',
  drive: 'highest drive (L/min)',
  jets: 'jets',
  usedFor: 'used for',
  heated: 'heated',
  pushes: 'highest pressure (kPa)',
  airFails: 'air fails',
  oxygenFails: 'oxygen fails',
  mainsFail: 'mains fail',
  biasFlow: 'bias-flow adds',
  leak: 'leak-compensation adds',
  ownFilter: 'own filter',
  modes: 'modes',
  valveSettings: 'valve settings',
  collar: 'collar',
  tubingLength: 'tubing length (m)',
  tubingBore: 'tubing bore (mm)',
  relief: 'relief valve (kPa)',
  water: 'water (mL)',
  output: 'output (mg/L)',
  breathMin: 'smallest breath (mL)',
  breathMax: 'largest breath (mL)',
  length: 'length (m)',
  bore: 'bore (mm)',
  waterTrap: 'water trap',
  inletEnds: 'inlet ends',
  outletEnd: 'outlet end',
  openEnds: 'open ends',
  ports: 'ports',
} as const

export type ShelfCsvColumn = keyof typeof SHELF_CSV_HEADINGS

/** Stands in files of refused rows and is passed over when read. */
export const REASON_HEADING = 'reason'

/** What the lists are called in the column `list`. */
export const SHELF_CSV_LISTS = {
  hospital: 'hospital',
  wards: 'wards',
  interfaces: 'interfaces',
  sources: 'sources',
  humidifiers: 'humidifiers',
  outlets: 'outlets',
  airMeters: 'air meters',
  tubes: 'tubes',
  fittings: 'fittings',
} as const

export type ShelfList = keyof typeof SHELF_CSV_LISTS

/** What may stand in a cell, by example. */
export const CELL_FORMS = {
  text: 'text',
  number: '12.5',
  numbers: '0.5 | 1 | 2',
  names: 'one | two | none',
  yesNo: 'yes',
  sizes: 'child 6 (10 to 25 kg) | adult 4 (15 to 30) | infant 2 (to 6) | newborn 1 (from 1)',
  settings: '0.24 at 2 | 0.28 at 4 (fast 6)',
  modes: 'constant-flow: Steady | cycles-pressure: Support',
} as const

export type CellForm = keyof typeof CELL_FORMS
