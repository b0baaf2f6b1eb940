// What each field of a shelf row is called, and what stands under it. Leaves out units and the names of choices.
import { say } from './say.ts'

interface ShelfLabel {
  readonly label: string
  readonly help?: string
}

const LABELS: Readonly<Record<string, ShelfLabel>> = {
  hospital: { label: say('hospital') },
  altitudeM: {
    label: say('altitude'),
    help: say('for chains; on Bedside the altitude is the patient’s own'),
  },
  isInvented: {
    label: say('everything on it is made up'),
    help: say('said wherever this shelf is named'),
  },
  name: { label: say('name of the ward') },
  beds: { label: say('beds') },
  label: { label: say('name on the shelf') },
  wardMarking: {
    label: say('marking of your own'),
    help: say('free text, such as a drawer or a colour; nothing is concluded from it'),
  },
  place: { label: say('where it lies') },
  count: { label: say('how many') },
  kind: { label: say('kind') },
  family: { label: say('kind of interface') },
  gas: { label: say('gas') },
  'sizes[].size': { label: say('size') },
  'sizes[].count': { label: say('how many of this size') },
  'sizes[].ratedMinLpm': {
    label: say('lowest flow on its label'),
    help: say('only where printed on the device; it wins over ours'),
  },
  'sizes[].ratedMaxLpm': {
    label: say('highest flow on its label'),
    help: say('only where printed on the device; it wins over ours'),
  },
  'sizes[].fitsMinKg': {
    label: say('least weight on its label'),
    help: say('only where printed on the device; it wins over ours'),
  },
  'sizes[].fitsMaxKg': {
    label: say('highest weight on its label'),
    help: say('only where printed on the device; it wins over ours'),
  },
  ratedMinLpm: {
    label: say('lowest flow on its label'),
    help: say('only where printed on the device; it wins over ours'),
  },
  ratedMaxLpm: {
    label: say('highest flow on its label'),
    help: say('only where printed on the device; it wins over ours'),
  },
  'settings[].o2Fraction': { label: say('printed fraction'), help: say('0.28, not 28') },
  'settings[].minimumLpm': { label: say('printed flow') },
  'settings[].fastBreathingLpm': { label: say('printed flow for fast breathing') },
  hasCollar: { label: say('takes a humidification collar') },
  'tubing.lengthM': { label: say('length of the fixed tubing') },
  'tubing.boreMm': { label: say('bore of the fixed tubing') },
  'meter.kind': { label: say('kind of meter') },
  'meter.meterClass': { label: say('class of meter') },
  'meter.stepsLpm': {
    label: say('marks that can be set'),
    help: say('rising, with spaces between; leave out 0'),
  },
  'meter.flush.lowLpm': {
    label: say('flush, lowest'),
    help: say('the meter fully open; leave empty where it has no flush'),
  },
  'meter.flush.medianLpm': { label: say('flush, usual') },
  'meter.flush.highLpm': { label: say('flush, highest') },
  'meter.flush.source': { label: say('how the flush is known') },
  purity: { label: say('purity') },
  markedIn: { label: say('unit on its scale') },
  settings: { label: say('settings of the dial'), help: say('as fractions: 0.4 0.6 1') },
  driveLpmMax: { label: say('highest driving flow') },
  jets: { label: say('jets'), help: say('1, or 2 where two flowmeters feed it') },
  isHeated: { label: say('heated') },
  stepsLpm: {
    label: say('flows that can be set'),
    help: say('rising, with spaces between; leave out 0'),
  },
  fractionSteps: { label: say('fractions that can be set'), help: say('0.21 0.3 0.4 and so on') },
  errorRelative: { label: say('error of the flow'), help: say('as a fraction: 0.1 for 10 %') },
  pushesKpaMax: { label: say('highest pressure it pushes with') },
  'modes[].label': { label: say('mode, as named on it') },
  'modes[].kind': { label: say('what the mode does') },
  usedStepsLpm: {
    label: say('flows in use here'),
    help: say('out of those it has; empty means all'),
  },
  usedFractions: {
    label: say('fractions in use here'),
    help: say('out of those it has; empty means all'),
  },
  usedFor: { label: say('kept for'), help: say('none ticked means for all it can feed') },
  'failure.air': { label: say('if air fails') },
  'failure.oxygen': { label: say('if oxygen fails') },
  'failure.mains': { label: say('if mains power fails') },
  biasFlowAddsToUse: { label: say('bias flow adds to the gas used') },
  leakCompensationAddsToUse: { label: say('leak compensation adds to the gas used') },
  hasOwnFilter: {
    label: say('filter of its own on the inspiratory limb'),
    help: say('unless it surely has one, a filter is put on the limb'),
  },
  'inletEnds[]': { label: say('end where gas comes in') },
  inletEnd: { label: say('end where gas comes in') },
  outletEnd: { label: say('end where gas goes out') },
  'openEnds[]': { label: say('end open to the room') },
  hasPorts: { label: say('ports that cannot be capped') },
  reliefKpa: { label: say('pressure at which its valve opens') },
  waterMl: { label: say('water when full') },
  outputMgPerL: { label: say('water given off, as printed') },
  tidalMinMl: { label: say('smallest breath, as printed') },
  tidalMaxMl: { label: say('largest breath, as printed') },
  lengthM: { label: say('length') },
  boreMm: { label: say('bore') },
  hasWaterTrap: { label: say('water trap') },
}

/** A field of a row by its path, `[]` or `[2]` for entries; one without a name stands for itself. */
export function shelfLabel(path: string): string {
  return labelAt(path)?.label ?? path
}

export function shelfHelp(path: string): string | undefined {
  return labelAt(path)?.help
}

function labelAt(path: string): ShelfLabel | undefined {
  const pattern = path.replaceAll(/\[\d+\]/g, '[]')
  return LABELS[pattern] ?? LABELS[pattern.replace(/\[\]$/, '')]
}
