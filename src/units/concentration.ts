// Conversions of haemoglobin (g/dL inside) and of fractions to per cent.

const G_PER_L_PER_G_PER_DL = 10
/** g/dL of haemoglobin in 1 mmol/L of its monomer, from the monomer's molar mass 16.114 kg/mol (common practice in laboratories). */
const G_PER_DL_PER_MMOL_PER_L = 1.6114
const PERCENT = 100

export function gramsPerDlFromGramsPerL(concentrationGPerL: number): number {
  return concentrationGPerL / G_PER_L_PER_G_PER_DL
}

export function gramsPerLFromGramsPerDl(concentrationGPerDl: number): number {
  return concentrationGPerDl * G_PER_L_PER_G_PER_DL
}

export function haemoglobinGPerDlFromMmolPerL(haemoglobinMmolPerL: number): number {
  return haemoglobinMmolPerL * G_PER_DL_PER_MMOL_PER_L
}

export function haemoglobinMmolPerLFromGPerDl(haemoglobinGPerDl: number): number {
  return haemoglobinGPerDl / G_PER_DL_PER_MMOL_PER_L
}

export function percentFromFraction(fraction: number): number {
  return fraction * PERCENT
}

export function fractionFromPercent(percent: number): number {
  return percent / PERCENT
}
