// What a command line says of room and heater. Leaves out the water itself.
import type { ParsedWords } from './arguments.ts'
import { decimal } from './quantities.ts'

const PER_CENT = 100

export const WATER_OPTIONS = {
  'room-temperature': 'text',
  'room-humidity': 'text',
  heater: 'text',
} as const

/** Null is not known. */
export interface WaterWords {
  readonly roomTemperatureC: number | null
  readonly roomRelativeHumidityFraction: number | null
  readonly heaterTemperatureC: number | null
}

export function waterWords(words: ParsedWords): WaterWords {
  const roomHumidityPercent = decimal(words, 'room-humidity')
  return {
    roomTemperatureC: decimal(words, 'room-temperature') ?? null,
    roomRelativeHumidityFraction:
      roomHumidityPercent === undefined ? null : roomHumidityPercent / PER_CENT,
    heaterTemperatureC: decimal(words, 'heater') ?? null,
  }
}
