// What the demo wards share. Invented.
import { DEMO_SHELF } from '../../kit/demo-shelf/demo-shelf.ts'
import { WARD_VERSION } from '../ward.ts'

export const DEMO_HOSPITAL = {
  version: WARD_VERSION,
  hospital: DEMO_SHELF.hospital,
  isInvented: true,
  note: 'invented',
  altitudeM: 1180,
  roomC: 21,
} as const
