// What each field of the Gas page is called, and what stands under it. Leaves out units, which follow the reader's choice.
import { say } from './say.ts'

/** Problems name a field of the Gas page by this and its own name. */
const GAS_PATH = 'gas.'

interface GasLabel {
  readonly label: () => string
  readonly help?: () => string
}

const GAS_LABELS: Readonly<Record<string, GasLabel>> = {
  marking: {
    label: () => say('marking of your own'),
    help: () => say('free text, such as a number or a place; letters of sizes are not read'),
  },
  waterVolume: {
    label: () => say('water volume'),
    help: () => say('stamped on the shoulder'),
  },
  gauge: { label: () => say('gauge reads') },
  pressureUnit: { label: () => say('gauge marked in') },
  readAt: {
    label: () => say('gauge read at'),
    help: () => say('such as 13:50; set anew when the gauge is typed'),
  },
  draw: { label: () => say('what is drawn') },
  flowLpm: { label: () => say('flow on the meter') },
  drivingLpm: {
    label: () => say('driving flow'),
    help: () => say('what the meter shows; the setting of the valve does not count'),
  },
  totalLpm: { label: () => say('total flow') },
  setO2Fraction: {
    label: () => say('fraction set'),
    help: () => say('0.4, not 40'),
  },
  ventilatorLpm: { label: () => say('flow or minute volume') },
  biasFlowLpm: { label: () => say('bias flow') },
  drivingGasLpm: { label: () => say('oxygen that drives the machine') },
  jetLpm: { label: () => say('jet nebuliser for drugs') },
  leakLpm: { label: () => say('leak') },
  left: {
    label: () => say('pressure to leave'),
    help: () => say('the reserve'),
  },
  regulatorMinimum: {
    label: () => say('lowest pressure of the regulator'),
    help: () => say('below it the flow is no longer kept'),
  },
  gaugeError: { label: () => say('gauge may be wrong by') },
  readAtC: { label: () => say('gas temperature when read') },
  usedAtC: { label: () => say('gas temperature when used') },
  altitudeM: { label: () => say('altitude') },
  handbookFactor: {
    label: () => say('handbook factor to compare'),
    help: () => say('litres for each psi, from your own table'),
  },
  on: { label: () => say('set-up') },
  setUpLpm: { label: () => say('flow') },
  kind: { label: () => say('kind of leg') },
  minutes: { label: () => say('time') },
  delayMinutes: { label: () => say('waiting besides') },
  legFlowLpm: {
    label: () => say('flow from here on'),
    help: () => say('as before where empty'),
  },
  legOn: { label: () => say('set-up from here on') },
  legAltitudeM: {
    label: () => say('altitude here, or of the cabin'),
    help: () => say('as at the start where empty'),
  },
  feed: { label: () => say('fed by') },
  leaveAt: {
    label: () => say('leave at'),
    help: () => say('now where empty'),
  },
  factor: { label: () => say('times the planned time') },
  extraMinutes: { label: () => say('or minutes more') },
  label: { label: () => say('name of your own') },
  count: { label: () => say('how many') },
  mrSafety: { label: () => say('near a scanner') },
  flowLpmMax: {
    label: () => say('highest flow of its regulator'),
    help: () => say('not judged where empty'),
  },
  regulator: { label: () => say('regulator') },
  flowmeter: { label: () => say('flowmeter') },
  tubeLengthM: {
    label: () => say('length of the tube into the room'),
    help: () => say('where empty: what the chain of parts has'),
  },
  tubeBoreMm: {
    label: () => say('its inner width'),
    help: () => say('where empty: as in the chain, else 5 mm'),
  },
  gasTemperatureC: { label: () => say('gas temperature') },
  ward: { label: () => say('ward') },
  volumeM3: { label: () => say('volume of the room') },
  airChangesPerHour: {
    label: () => say('air changes'),
    help: () => say('with outside air, in an hour'),
  },
  oxygenLpm: { label: () => say('oxygen given to patients here') },
  asideLpm: { label: () => say('a mask laid aside, running') },
  shownMinutes: { label: () => say('look ahead') },
  limitPercent: { label: () => say('limit') },
  setting: { label: () => say('what is set') },
  useLpm: { label: () => say('flow set') },
  ratedFlowLpm: { label: () => say('highest flow on its label') },
  purityPercent: {
    label: () => say('purity at this flow, from its label'),
    help: () => say('where empty: what such machines give in general'),
  },
  minutesOn: { label: () => say('running for') },
  warmUpMinutes: { label: () => say('warms up in') },
  ratedAltitudeM: { label: () => say('highest altitude on its label') },
  pureFraction: {
    label: () => say('fraction inhaled with pure oxygen'),
    help: () => say('such as 0.32 from Bedside; shows what is left of it'),
  },
  liquidL: { label: () => say('liquid in the vessel') },
  liquidDrawLpm: { label: () => say('flow drawn') },
  evaporationLPerDay: { label: () => say('evaporates, liquid a day') },
  item: { label: () => say('what it is') },
  onHand: { label: () => say('on hand') },
  usedEachDay: {
    label: () => say('used on each of the last days'),
    help: () => say('whole numbers with blanks between, the latest last: 3 5 2 4'),
  },
  leadTimeDays: { label: () => say('days until a delivery comes') },
}

export function gasLabel(name: string): string {
  return GAS_LABELS[name]?.label() ?? name
}

export function gasHelp(name: string): string | undefined {
  return GAS_LABELS[name]?.help?.()
}

/** The label where the path is one of the Gas page. */
export function gasPathLabel(path: string): string | undefined {
  return path.startsWith(GAS_PATH) ? gasLabel(path.slice(GAS_PATH.length)) : undefined
}
