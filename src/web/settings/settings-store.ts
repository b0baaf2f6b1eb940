// Keeps the settings in this browser, in every tab alike, and tells whoever shows them. Leaves out what each one does.
import { useSyncExternalStore } from 'react'
import { readSettings, USUAL_SETTINGS } from './settings.ts'
import type { KeptSettings, Settings } from './settings.ts'

const KEY = 'oxwright.settings.1'

export interface SettingsStore {
  readonly now: () => KeptSettings
  readonly change: (part: Partial<Settings>) => void
  readonly listen: (listener: () => void) => () => void
}

/** Where settings are kept; a test gives its own. */
export interface SettingsPlace {
  readonly read: () => string | null
  /** May throw where the browser refuses to keep anything. */
  readonly write: (text: string) => void
  /** Calls back with what another tab has kept. */
  readonly onForeignChange: (listener: (text: string | null) => void) => void
}

export function createSettingsStore(place: SettingsPlace): SettingsStore {
  const listeners = new Set<() => void>()
  let kept = readSettings(readOrNone(place))
  const replace = (next: KeptSettings): void => {
    kept = next
    for (const listener of listeners) listener()
  }
  place.onForeignChange((text) => replace(readSettings(text)))
  return {
    now: () => kept,
    change: (part) => {
      const settings = { ...kept.settings, ...part }
      try {
        place.write(JSON.stringify(settings))
      } catch {
        // Storage is blocked: the settings last until the page is left.
      }
      replace({ settings, faults: [] })
    },
    listen: (listener) => {
      listeners.add(listener)
      return () => listeners.delete(listener)
    },
  }
}

function readOrNone(place: SettingsPlace): string | null {
  try {
    return place.read()
  } catch {
    return null
  }
}

const browserPlace: SettingsPlace = {
  read: () => localStorage.getItem(KEY),
  write: (text) => localStorage.setItem(KEY, text),
  onForeignChange: (listener) =>
    window.addEventListener('storage', ({ key, newValue, storageArea }) => {
      // A null key: everything was cleared.
      if (storageArea === localStorage && (key === KEY || key === null)) listener(newValue)
    }),
}

let store: SettingsStore | undefined

/** The one store of this page, made when first asked for. */
export function settingsStore(): SettingsStore {
  store ??= createSettingsStore(browserPlace)
  return store
}

/** The settings as they stand, in this tab and in others. */
export function useSettings(): Settings {
  return useKeptSettings().settings
}

/** The settings, and which of those kept could not be read. */
export function useKeptSettings(): KeptSettings {
  const { listen, now } = settingsStore()
  return useSyncExternalStore(listen, now)
}

export function changeSettings(part: Partial<Settings>): void {
  settingsStore().change(part)
}

export function resetSettings(): void {
  settingsStore().change(USUAL_SETTINGS)
}
