// The wards of the demo hospital by id. Everything in them is invented; examples/wards holds the same as files.
import type { WardFile } from '../ward.ts'
import { HERON } from './heron.ts'
import { PLOVER } from './plover.ts'
import { WREN } from './wren.ts'

export const DEMO_WARD_IDS = ['heron', 'plover', 'wren'] as const
export type DemoWardId = (typeof DEMO_WARD_IDS)[number]

export const DEMO_WARDS: Readonly<Record<DemoWardId, WardFile>> = {
  heron: HERON,
  plover: PLOVER,
  wren: WREN,
}
