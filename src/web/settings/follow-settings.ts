// Puts look and motion on the document, where the styles read them. Leaves out the colours, which styles/tokens.css holds.
import { useSyncExternalStore } from 'react'
import { settingsStore, useSettings } from './settings-store.ts'

/** From now on the document follows the settings; called once, before anything is drawn. */
export function followSettings(): void {
  const { now, listen } = settingsStore()
  const apply = (): void => {
    const { look, motion } = now().settings
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
