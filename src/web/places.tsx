// The places of the page: address, name, what is shown there. Leaves out each place itself, loaded when first entered.
import { lazy } from 'react'
import type { ComponentType } from 'react'
import { PLACE_NAMES } from '../words/web-page-text.ts'
import { BedsidePage } from './pages/bedside-page.tsx'
import { SHEET_PATH } from './sheet/sheet-path.ts'

export interface Place {
  readonly path: string
  readonly name: string
  readonly Page: ComponentType
  /** Has parts at addresses of their own below its path. */
  readonly hasParts?: boolean
  /** Reached from another place alone, not from the menu. */
  readonly isOutOfMenu?: boolean
}

export const SETTINGS_PATH = '/settings'

/** In the order of the menu. A new place is one line here, loaded late: `lazy(async () => ({ default: (await import(…)).NamePage }))`. */
export const PLACES: readonly Place[] = [
  { path: '/', name: PLACE_NAMES.bedside, Page: BedsidePage },
  {
    path: '/gas',
    name: PLACE_NAMES.gas,
    Page: lazy(async () => ({ default: (await import('./pages/gas-page.tsx')).GasPage })),
    hasParts: true,
  },
  {
    path: '/chain',
    name: PLACE_NAMES.chain,
    Page: lazy(async () => ({ default: (await import('./chain/chain-page.tsx')).ChainPage })),
    hasParts: true,
  },
  {
    path: '/shelf',
    name: PLACE_NAMES.shelf,
    Page: lazy(async () => ({ default: (await import('./shelf/shelf-page.tsx')).ShelfPage })),
  },
  {
    path: '/evidence',
    name: PLACE_NAMES.evidence,
    Page: lazy(async () => ({
      default: (await import('./evidence/evidence-page.tsx')).EvidencePage,
    })),
  },
  {
    path: SHEET_PATH,
    name: PLACE_NAMES.sheet,
    Page: lazy(async () => ({ default: (await import('./sheet/sheet-page.tsx')).SheetPage })),
    isOutOfMenu: true,
  },
  {
    path: SETTINGS_PATH,
    name: PLACE_NAMES.settings,
    Page: lazy(async () => ({
      default: (await import('./settings/settings-page.tsx')).SettingsPage,
    })),
  },
]
