// The faults to plant: one expression of the product replaced by a wrong one, and the named checks that must turn red. Leaves out how they are planted.

export interface Fault {
  readonly id: string
  readonly file: string
  /** Must match exactly once; white space stands for any. */
  readonly find: RegExp
  readonly replace: string
  /** All of these must hold without the fault and fail with it. */
  readonly red: readonly string[]
  /** Part of the short run within the tests. */
  readonly inTests: boolean
}

export const FAULTS: readonly Fault[] = [
  {
    id: 'entrainment ratio off by 5 %',
    file: 'src/physics/gas-mixing.ts',
    find: /return \(sourceO2Fraction - setting\.targetO2Fraction\)/,
    replace: 'return 1.05 * (sourceO2Fraction - setting.targetO2Fraction)',
    red: ['entrainment-ratio-0.28-0.209', 'entrainment-total-0.24-0.209-2'],
    inTests: true,
  },
  {
    id: 'no gas-condition conversion',
    file: 'src/physics/gas-condition.ts',
    find: /return conditionFactor\(\{ from: place\.scale \?\? FLOWMETER_SCALE, to: btps\(place\) \}\)/,
    replace: 'return 1',
    red: ['meter-to-body-101.325', 'meter-to-body-75.262'],
    inTests: false,
  },
  {
    id: 'altitude ignored',
    file: 'src/physics/gas-condition.ts',
    find: /to: btps\(place\)/,
    replace: 'to: btps({ barometricKpa: 101.325 })',
    red: ['meter-to-body-75.262'],
    inTests: false,
  },
  {
    id: 'altitude ignored in the alveolar gas equation',
    file: 'src/physiology/alveolar-gas.ts',
    find: /value: gas\.barometricKpa - \(gas\.waterVapourKpa/,
    replace: 'value: 101.325 - (gas.waterVapourKpa',
    red: ['alveolar-elsewhere-0.21-564.5-40'],
    inTests: false,
  },
  {
    id: 'water vapour ignored',
    file: 'src/physiology/alveolar-gas.ts',
    find: /value: gas\.barometricKpa - \(gas\.waterVapourKpa \?\? BODY_WATER_VAPOUR_KPA\)/,
    replace: 'value: gas.barometricKpa',
    red: ['alveolar-full-0.21-760-40', 'inspired-po2-1-760-40'],
    inTests: false,
  },
  {
    id: 'bag valve stuck open',
    file: 'src/kit/families/reservoir-mask.ts',
    find: /hasInletValve: true,\s+expiredShareIntoBag: 0,/,
    replace: 'hasInletValve: false, expiredShareIntoBag: 1 / 3,',
    red: ['simulator-tight-8'],
    inTests: true,
  },
  {
    id: 'dead space 0',
    file: 'src/delivery/set-up-network.ts',
    find: /serialL: setUp\.body\.intrathoracicL/,
    replace: 'serialL: 0 * setUp.body.intrathoracicL',
    red: ['law-dead-space-takes-its-share'],
    inTests: true,
  },
  {
    id: 'wrong duty',
    file: 'src/delivery/breath.ts',
    find: /return breathPeriodS\(breath\) \* breath\.dutyFraction/,
    replace: 'return breathPeriodS(breath) * (1 - breath.dutyFraction)',
    red: ['low-flow-engine-0.33-10-4', 'handbook-cannula-500-0.2-6'],
    inTests: true,
  },
  {
    id: 'inspiration square instead of half-sine',
    file: 'src/delivery/breath.ts',
    find: /return \(1 - Math\.cos\(Math\.PI \* s\)\) \/ 2/,
    replace: 'return s',
    red: ['valve-dilution-0.6-60', 'high-flow-dilution-1-30-60'],
    inTests: false,
  },
  {
    id: 'leak sign',
    file: 'src/delivery/bag.ts',
    find: /surplusL \/ \(1 \+ bag\.leakRatio\)/,
    replace: 'surplusL / (1 - bag.leakRatio)',
    red: ['law-agrees-with-the-integrator'],
    inTests: false,
  },
  {
    id: 'tracer lost',
    file: 'src/delivery/periodic.ts',
    find: /room: tracer === 'room' \? 1 : 0,/,
    replace: "room: tracer === 'room' ? 0 : 0,",
    red: ['law-tracers-sum-to-one', 'law-nothing-lost'],
    inTests: true,
  },
  {
    id: 'room air lost in the fixed point',
    file: 'src/delivery/periodic.ts',
    find: /block\.room\[ROOM\] = 1/,
    replace: 'block.room[ROOM] = 0.9',
    red: ['law-agrees-with-the-integrator'],
    inTests: false,
  },
  {
    id: 'mean instead of effective',
    file: 'src/delivery/delivered-breath.ts',
    find: /effectiveO2Fraction: effective,/,
    replace:
      'effectiveO2Fraction: o2(source.totals.openingInL, room.totals.openingInL, expired.totals.openingInL),',
    red: ['law-agrees-with-the-integrator'],
    inTests: true,
  },
  {
    id: 'capture 0',
    file: 'src/delivery/set-up-network.ts',
    find: /captureOut: quantile\(behaviour\.captureOut\.spread, setUp\.draw\.capture\)/,
    replace: 'captureOut: 0 * quantile(behaviour.captureOut.spread, setUp.draw.capture)',
    red: ['cannula-up-with-pause'],
    inTests: false,
  },
  {
    id: 'exchange ignored',
    file: 'src/delivery/set-up-network.ts',
    find: /return lpsFromLpm\(exchange\.fitFactor\[setUp\.fit\] \* \(baseLpm \+ jetLpm\)\)/,
    replace: 'return lpsFromLpm(0 * exchange.fitFactor[setUp.fit] * (baseLpm + jetLpm))',
    red: ['simple-usual-practice-6', 'expired-simple-flush'],
    inTests: true,
  },
  {
    id: 'forward loss 0',
    file: 'src/delivery/set-up-network.ts',
    find: /forwardLoss: quantile\(behaviour\.forwardLoss\.spread, setUp\.draw\.forwardLoss\)/,
    replace: 'forwardLoss: 0 * quantile(behaviour.forwardLoss.spread, setUp.draw.forwardLoss)',
    red: ['simulator-tight-8'],
    inTests: false,
  },
  {
    id: 'uptake ignored in expired gas',
    file: 'src/delivery/delivered-breath.ts',
    find: /const alveolarO2 = \(freshL \* effective - upL\) \/ alveolarL/,
    replace: 'const alveolarO2 = (freshL * effective) / alveolarL',
    red: ['expired-simple-flush', 'law-expired-gas-balances'],
    inTests: true,
  },
  {
    id: 'constant of the dissociation curve wrong',
    file: 'src/physiology/dissociation.ts',
    find: /const EQ1_CONSTANT = 23400/,
    replace: 'const EQ1_CONSTANT = 22400',
    red: ['standard-equation-40', 'standard-inverse-0.9'],
    inTests: true,
  },
  {
    id: 'shunt ignored',
    file: 'src/physiology/shunt-shift.ts',
    find: /capillaryContent - \(lung\.shuntFraction \/ \(1 - lung\.shuntFraction\)\) \* lung\.arteriovenousO2MlPerDl/,
    replace: 'capillaryContent',
    red: ['shunt-pressure-0.3-0-0.4', 'shunt-saturation-0.2-20-0.21'],
    inTests: false,
  },
  {
    id: 'high flow flushes nothing',
    file: 'src/delivery/set-up-network.ts',
    find: /Math\.min\(clearanceLps, base\.deviceFlowLps\)/,
    replace: '0 * Math.min(clearanceLps, base.deviceFlowLps)',
    red: ['law-clearance-frees-fresh-gas'],
    inTests: false,
  },
  {
    id: 'infant dead space as in an adult',
    file: 'src/physiology/dead-space.ts',
    find: /childMlPerKg\(Math\.min\(body\.ageYears, CHILD\.ageYearsMax\)\)/,
    replace: 'childMlPerKg(CHILD.ageYearsMax)',
    red: ['dead-space-0.5-7.5'],
    inTests: false,
  },
  {
    id: 'oxygen in a cylinder taken for an ideal gas',
    file: 'src/physics/real-gas-oxygen.ts',
    find: /state\.temperatureK \* \(1 \+ slope\)/,
    replace: 'state.temperatureK * (1 + 0 * slope)',
    red: ['oxygen-contents-137-15', 'cylinder-minutes-2-137-14-10'],
    inTests: false,
  },
  {
    id: 'what is left in the cylinder counted as usable',
    file: 'src/supply/cylinder.ts',
    find: /Math\.max\(0, heldMolPerL - leftMolPerL\)/,
    replace: 'Math.max(0, heldMolPerL - 0 * leftMolPerL)',
    red: ['cylinder-minutes-2-137-14-10', 'cylinder-minutes-10-150-10-5'],
    inTests: true,
  },
  {
    id: 'reserve of a transfer forgotten',
    file: 'src/supply/transport.ts',
    find: /const extraMinutes = reservedMinutes - plannedMinutes/,
    replace: 'const extraMinutes = 0 * (reservedMinutes - plannedMinutes)',
    red: ['transfer-need-16-10-2-0'],
    inTests: false,
  },
]
