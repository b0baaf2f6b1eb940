// The demo hospital's shelf as a whole. Hospital, wards and figures are invented; flows are such as devices of each kind carry.
import { EVERYWHERE, SHELF_VERSION, type HumidifierRow, type Shelf } from '../shelf.ts'
import { DEMO_FLOWMETERS } from './flowmeters.ts'
import { DEMO_INTERFACES } from './interfaces.ts'
import { DEMO_MIXERS } from './mixers.ts'

const HUMIDIFIERS: readonly HumidifierRow[] = [
  { id: 'bubble', kind: 'bubble', label: 'Bubble humidifier', count: 12, place: 'heron' },
  { id: 'collar', kind: 'collar', label: 'Humidification collar', count: 6, place: EVERYWHERE },
  { id: 'heated', kind: 'heated', label: 'Heated humidifier', count: 9, place: EVERYWHERE },
]

const FELL = 'Brackwater Fell'

export const DEMO_SHELF: Shelf = {
  version: SHELF_VERSION,
  hospital: `${FELL} Hospital`,
  isInvented: true,
  altitudeM: 1180,
  wards: [
    { id: 'heron', name: 'Heron', beds: 18 },
    { id: 'plover', name: 'Plover', beds: 6 },
    { id: 'wren', name: 'Wren', beds: 10 },
  ],
  interfaces: DEMO_INTERFACES,
  sources: [...DEMO_FLOWMETERS, ...DEMO_MIXERS],
  humidifiers: HUMIDIFIERS,
}
