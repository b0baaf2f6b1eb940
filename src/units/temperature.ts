// Conversions of temperature between °C, K and °F.
import { ABSOLUTE_ZERO_C } from './constants.ts'

/** °F at 0 °C, and °F per °C: by definition. */
const FAHRENHEIT_AT_ZERO_C = 32
const FAHRENHEIT_PER_C = 1.8

export function kelvinFromC(temperatureC: number): number {
  return temperatureC - ABSOLUTE_ZERO_C
}

export function celsiusFromK(temperatureK: number): number {
  return temperatureK + ABSOLUTE_ZERO_C
}

export function celsiusFromF(temperatureF: number): number {
  return (temperatureF - FAHRENHEIT_AT_ZERO_C) / FAHRENHEIT_PER_C
}

export function fahrenheitFromC(temperatureC: number): number {
  return temperatureC * FAHRENHEIT_PER_C + FAHRENHEIT_AT_ZERO_C
}
