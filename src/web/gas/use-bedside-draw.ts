// The set-up typed at Bedside with the shelf in use and the altitude of the settings, as it stood when the part was opened. Leaves out following what another window types.
import { useMemo } from 'react'
import { useSettings } from '../settings/settings-store.ts'
import { siteAltitude } from '../settings/site-altitude.ts'
import { useShelf } from '../shelf/shelf-store.ts'
import { bedsideDraw } from './bedside-draw.ts'
import type { BedsideDraw } from './bedside-draw.ts'

export function useBedsideDraw(): BedsideDraw {
  const { shelf } = useShelf()
  const { altitudeM: siteAltitudeM } = siteAltitude(useSettings().altitudeTyped)
  return useMemo(() => bedsideDraw(localStorage, { shelf, siteAltitudeM }), [shelf, siteAltitudeM])
}
