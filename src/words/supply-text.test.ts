// Remarks of the gas answers in the units chosen, values by the units' definitions. Leaves out whether each code has a text, which test/words.test.ts shows.
import { afterEach, describe, expect, it } from 'vitest'
import { supplyRemark } from '../supply/supply-remark.ts'
import { CHOOSABLE_UNITS, USUAL_UNITS } from '../units/choosable.ts'
import { showUnits } from './shown-unit.ts'
import { supplyText } from './supply-text.ts'
import type { GasUnits } from './supply-value.ts'

afterEach(() => showUnits(USUAL_UNITS))

/** Every remark that holds a pressure or a volume of gas. */
const WITH_UNITS = [
  supplyRemark('AT_OR_BELOW_FLOOR', { gaugeKpa: 1000, leftGaugeKpa: 1400 }),
  supplyRemark('FILLED_WARM_USED_COLD', { readAtC: 35, usedAtC: -5, gaugeAtUseKpa: 13000 }),
  supplyRemark('GAUGE_MAY_READ_HIGH', { gaugeErrorKpa: 500 }),
  supplyRemark('STORE_TOO_SMALL', { missingL: 283.168 }),
  supplyRemark('WORST_CASE_NOT_COVERED', { missingL: 283.168 }),
  supplyRemark('RESERVE_NOT_COVERED', { missingL: 283.168 }),
  supplyRemark('RUNS_OUT_ON_THE_WAY', { missingL: 283.168 }),
  supplyRemark('TUBE_MAKES_METER_READ_LOW', { lengthM: 10, dropKpa: 4, readsLowShare: 0.02 }),
  supplyRemark('THIN_AIR', { barometricKpa: 80, inspiredPo2Share: 0.78 }),
  supplyRemark('DENSER_AIR', { barometricKpa: 104, inspiredPo2Share: 1.03 }),
  supplyRemark('CABIN_PRESSURE_ASSUMED', { altitudeM: 2000 }),
]

const PRESSURES = CHOOSABLE_UNITS.gasPressure
const COMBINED = PRESSURES.flatMap((pressure) =>
  CHOOSABLE_UNITS.gasVolume.map((volume): GasUnits => ({ pressure, volume })),
)

/** The units that stand behind a number in a text; flows in L/min are no volumes. */
function unitsIn(text: string): readonly string[] {
  return [...text.matchAll(/\d\s(bar|psi|kPa|mmHg|Torr|ft³|L)(?![\w/])/g)].map(
    ([, unit]) => unit ?? '',
  )
}

describe('remarks of the gas answers', () => {
  it.each(COMBINED)('hold no unit that was not chosen: $pressure, $volume', (units) => {
    showUnits({ ...USUAL_UNITS, pressure: 'mmHg' })
    const found = WITH_UNITS.map((remark) => ({
      code: remark.code,
      units: unitsIn(supplyText(remark, units)),
    }))
    for (const { code, units: said } of found) expect(said, code).not.toEqual([])
    const chosen: readonly string[] = [units.pressure, units.volume, 'mmHg']
    expect(found.filter(({ units: said }) => !said.every((unit) => chosen.includes(unit)))).toEqual(
      [],
    )
  })

  it('are right by the definitions of the units', () => {
    const [atFloor, , , tooSmall] = WITH_UNITS
    const text = (remark: typeof atFloor, units: GasUnits): string =>
      remark === undefined ? '' : supplyText(remark, units)
    // 1400 kPa is 14 bar, 203 psi; 283.168 L are 10 cubic feet.
    expect(text(atFloor, { pressure: 'bar', volume: 'L' })).toMatch(/At 10 bar .* 14 bar/)
    expect(text(atFloor, { pressure: 'psi', volume: 'L' })).toMatch(/At 150 psi .* 200 psi/)
    expect(text(atFloor, { pressure: 'kPa', volume: 'L' })).toMatch(/At 1000 kPa .* 1400 kPa/)
    expect(text(tooSmall, { pressure: 'bar', volume: 'ft³' })).toMatch(/lacks 10 ft³/)
    expect(text(tooSmall, { pressure: 'bar', volume: 'L' })).toMatch(/lacks 283 L/)
  })

  it('say a small drop along a tube finely enough', () => {
    const drop = supplyRemark('TUBE_MAKES_METER_READ_LOW', {
      lengthM: 10,
      dropKpa: 4,
      readsLowShare: 0.02,
    })
    // 4 kPa is 0.04 bar, 0.58 psi.
    expect(supplyText(drop, { pressure: 'bar', volume: 'L' })).toContain('0.04 bar')
    expect(supplyText(drop, { pressure: 'psi', volume: 'L' })).toContain('0.6 psi')
    expect(supplyText(drop, { pressure: 'kPa', volume: 'L' })).toContain('4 kPa')
  })
})
