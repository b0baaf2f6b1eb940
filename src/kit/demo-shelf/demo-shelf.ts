// The demo hospital's shelf as a whole. Hospital, wards and figures are invented; flows are such as devices of each kind carry.
import { EVERYWHERE, SHELF_VERSION, type HumidifierRow, type Shelf } from '../shelf.ts'
import { DEMO_FLOWMETERS } from './flowmeters.ts'
import { DEMO_INTERFACES } from './interfaces.ts'
import { DEMO_MIXERS } from './mixers.ts'
import { DEMO_AIR_METERS, DEMO_FITTINGS, DEMO_OUTLETS, DEMO_TUBES } from './parts.ts'

const HUMIDIFIERS: readonly HumidifierRow[] = [
  {
    id: 'bubble',
    kind: 'bubble',
    label: 'Bubble humidifier',
    count: 12,
    place: 'heron',
    ratedMaxLpm: 10,
    reliefKpa: 14,
    waterMl: 340,
  },
  { id: 'collar', kind: 'collar', label: 'Humidification collar', count: 6, place: EVERYWHERE },
  {
    id: 'heated',
    kind: 'heated',
    label: 'Heated humidifier',
    count: 9,
    place: EVERYWHERE,
    ratedMaxLpm: 60,
    waterMl: 280,
  },
  {
    id: 'exchanger',
    kind: 'exchanger',
    label: 'Heat–moisture exchanger (tracheostomy)',
    count: 20,
    place: EVERYWHERE,
    outputMgPerL: 27,
    tidalMinMl: 150,
    tidalMaxMl: 1000,
  },
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
  outlets: DEMO_OUTLETS,
  airMeters: DEMO_AIR_METERS,
  tubes: DEMO_TUBES,
  fittings: DEMO_FITTINGS,
}
