// Makes the document follow the settings: look and motion for the styles, units for the words. Leaves out the colours, which styles/tokens.css holds.
import { useSyncExternalStore } from 'react'
import { showUnits } from '../../words/shown-unit.ts'
import { settingsStore, useSettings } from './settings-store.ts'

/** From now on the document follows the settings; called once, before anything is drawn. */
export function followSettings(): void {
  const { now, listen } = settingsStore()
  const apply = (): void => {
    const { look, motion, units } = now().settings
    showUnits(units)
    const { dataset } = document.documentElement
    dataset['look'] = look
    dataset['motion'] = motion
  }
  apply()
  listen(apply)
}

const STILL = '(prefers-reduced-motion: reduce)'

/** Whether pictures must stand still: set so, or preferred so by the device. */
export function useStandsStill(): boolean {
  const { motion } = useSettings()
  const isPreferred = useSyncExternalStore(
    (listener) => {
      const query = matchMedia(STILL)
      query.addEventListener('change', listener)
      return () => query.removeEventListener('change', listener)
    },
    () => matchMedia(STILL).matches,
  )
  return motion === 'still' || isPreferred
}
