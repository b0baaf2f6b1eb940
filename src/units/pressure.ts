// Conversions of pressure to and from kPa, the one pressure unit inside. Gauge or absolute is the caller's matter.

/** kPa in one mmHg (conventional), by definition. */
export const KPA_PER_MMHG = 0.133322387415
/** kPa in one torr, 101.325/760, by definition; differs from the mmHg by 1.4e-7. */
export const KPA_PER_TORR = 101.325 / 760
/** kPa in one cmH2O (conventional, 4 °C), by definition. */
export const KPA_PER_CMH2O = 0.0980665
/** kPa in one bar, by definition. */
export const KPA_PER_BAR = 100
/** kPa in one pound-force per square inch, by definition. */
export const KPA_PER_PSI = 6.894757293168361

export function kpaFromMmhg(pressureMmhg: number): number {
  return pressureMmhg * KPA_PER_MMHG
}

export function mmhgFromKpa(pressureKpa: number): number {
  return pressureKpa / KPA_PER_MMHG
}

export function kpaFromTorr(pressureTorr: number): number {
  return pressureTorr * KPA_PER_TORR
}

export function torrFromKpa(pressureKpa: number): number {
  return pressureKpa / KPA_PER_TORR
}

export function kpaFromCmh2o(pressureCmh2o: number): number {
  return pressureCmh2o * KPA_PER_CMH2O
}

export function cmh2oFromKpa(pressureKpa: number): number {
  return pressureKpa / KPA_PER_CMH2O
}

export function kpaFromBar(pressureBar: number): number {
  return pressureBar * KPA_PER_BAR
}

export function barFromKpa(pressureKpa: number): number {
  return pressureKpa / KPA_PER_BAR
}

export function kpaFromPsi(pressurePsi: number): number {
  return pressurePsi * KPA_PER_PSI
}

export function psiFromKpa(pressureKpa: number): number {
  return pressureKpa / KPA_PER_PSI
}
