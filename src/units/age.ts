// Conversions of age and time between days, weeks, months and years.

/** Days in a mean month, 365.25/12: the convention of the WHO growth standards [WHO2006]. */
export const DAYS_PER_MONTH = 30.4375
const MONTHS_PER_YEAR = 12
const DAYS_PER_WEEK = 7

export function monthsFromYears(ageYears: number): number {
  return ageYears * MONTHS_PER_YEAR
}

export function yearsFromMonths(ageMonths: number): number {
  return ageMonths / MONTHS_PER_YEAR
}

export function daysFromMonths(ageMonths: number): number {
  return ageMonths * DAYS_PER_MONTH
}

export function monthsFromDays(ageDays: number): number {
  return ageDays / DAYS_PER_MONTH
}

export function weeksFromDays(ageDays: number): number {
  return ageDays / DAYS_PER_WEEK
}

export function daysFromWeeks(ageWeeks: number): number {
  return ageWeeks * DAYS_PER_WEEK
}
