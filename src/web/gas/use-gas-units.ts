// The units in which Gas shows pressures and gas volumes, out of the settings. Leaves out the unit of a typed pressure, which stands at its field.
import { useMemo } from 'react'
import type { GasUnits } from '../../words/supply-value.ts'
import { useSettings } from '../settings/settings-store.ts'

export function useGasUnits(): GasUnits {
  const { gasPressure, gasVolume } = useSettings().units
  return useMemo(() => ({ pressure: gasPressure, volume: gasVolume }), [gasPressure, gasVolume])
}
