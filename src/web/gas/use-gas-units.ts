// The units in which Gas shows pressures and gas volumes, remembered in this browser. Leaves out the unit of a typed pressure, which stands at its field.
import { useEffect, useState } from 'react'
import { PRESSURE_UNITS, VOLUME_UNITS } from '../../words/gas-page-text.ts'
import type { GasUnits } from '../../words/gas-page-text.ts'

const KEY = 'oxwright.gas.units.1'

export function useGasUnits(): {
  readonly units: GasUnits
  readonly setUnits: (units: GasUnits) => void
} {
  const [units, setUnits] = useState<GasUnits>(keptUnits)
  useEffect(() => {
    try {
      localStorage.setItem(KEY, JSON.stringify(units))
    } catch {
      // Blocked storage: the choice lasts until the page is left.
    }
  }, [units])
  return { units, setUnits }
}

function keptUnits(): GasUnits {
  const start: GasUnits = { pressure: 'bar', volume: 'L' }
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(KEY) ?? 'null')
    if (typeof kept !== 'object' || kept === null) return start
    const { pressure, volume } = kept as Partial<Record<keyof GasUnits, unknown>>
    return {
      pressure: PRESSURE_UNITS.find((unit) => unit === pressure) ?? start.pressure,
      volume: VOLUME_UNITS.find((unit) => unit === volume) ?? start.volume,
    }
  } catch {
    return start
  }
}
