// What of the patient and the room bears on humidity, as facts handed in. What is not known is null and stays so. Leaves out where the facts come from.

export type SecretionsFact = 'thin' | 'thick' | 'bloody' | 'thick-or-bloody' | 'crusting'

export interface AirwayFacts {
  /** Inspired gas reaches the windpipe past mouth and nose: tube or stoma, unless it is capped. */
  readonly isBypassed: boolean
  /** There is an opening at the neck at all. */
  readonly hasNeckOpening: boolean
  readonly ageYears: number
  readonly secretions: SecretionsFact | null
  /** The opening at the neck: new, by age in days or by what was ticked. Null: not known. */
  readonly isNewOpening: boolean | null
  readonly tracheostomyAgeDays: number | null
  /** A heat and moisture exchanger sits on tube or stoma. */
  readonly wearsExchanger: boolean
  /** All of the breath comes back through the neck: cuff up, or no way past the tube. */
  readonly returnsThroughNeck: boolean
  /** A drug is nebulised through this set-up. Null: not known. */
  readonly nebulisesDrug: boolean | null
  readonly tidalVolumeMl: number | null
}

export interface RoomFacts {
  /** Null: not known, carried as a spread. */
  readonly temperatureC: number | null
  readonly relativeHumidityFraction: number | null
  readonly barometricKpa: number
}

/** Temperatures of a room for which the model stands: below, water of an unheated bottle may freeze. */
export const ROOM_TEMPERATURE_C_MIN = 12
export const ROOM_TEMPERATURE_C_MAX = 45

/** Temperatures of gas leaving a heater that are taken; a reading of the water or of the heater plate is higher and is refused. */
export const HEATER_TEMPERATURE_C_MIN = 20
export const HEATER_TEMPERATURE_C_MAX = 45

/** Up to here a child counts as an infant, years (by definition). */
export const INFANT_AGE_YEARS_MAX = 1

/** An opening at the neck counts as new up to this many days (common practice: until the track has healed). */
export const NEW_OPENING_DAYS_MAX = 7
