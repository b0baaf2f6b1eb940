// What each number of a cylinder card rests on, one sentence each, and the handbook's number beside ours. Leaves out the numbers' making.
import { durationText, numberText } from './number-text.ts'
import { say } from './say.ts'

export type AirFrom = 'typed' | 'bedside' | 'settings' | 'nowhere'

export interface CylinderBasis {
  readonly heldText: string
  readonly readAtC: number
  readonly isReadAtGiven: boolean
  readonly usedAtC: number
  readonly isUsedAtGiven: boolean
  readonly leftText: string
  readonly regulatorMinimumText: string | null
  readonly gaugeErrorText: string | null
  /** Pressure of the air around, and that at which gas is counted. */
  readonly airText: string
  readonly standardAirText: string
  readonly airFrom: AirFrom
  readonly drawnFrom: 'meter' | 'driving' | 'blend' | 'ventilator' | 'bedside'
}

/** In the order in which the numbers are made. */
export function cylinderBasisLines(basis: CylinderBasis): readonly string[] {
  return [
    say(
      'It holds {held} down to no pressure at all: oxygen as a real gas (Stewart 1991), counted as a flowmeter counts it, at 20 °C and {standard}.',
      { held: basis.heldText, standard: basis.standardAirText },
    ),
    temperatureLine(basis),
    say('Left in it on purpose: {left}, as typed. Local policy comes first.', {
      left: basis.leftText,
    }),
    basis.regulatorMinimumText === null
      ? say('Lowest pressure of the regulator not given: taken to work until the cylinder is flat.')
      : say('Empty means {pressure}: below it the regulator no longer keeps its flow.', {
          pressure: basis.regulatorMinimumText,
        }),
    basis.gaugeErrorText === null
      ? say('Gauge error not given: the gauge is taken as right.')
      : say('The gauge may be wrong by {error} either way; the range above carries it.', {
          error: basis.gaugeErrorText,
        }),
    airLine(basis.airFrom, basis.airText),
    drawnLine(basis),
  ]
}

export function airLine(airFrom: AirFrom, pressure: string): string {
  switch (airFrom) {
    case 'typed':
      return say('Air pressure {pressure}, from the altitude typed.', { pressure })
    case 'bedside':
      return say('Air pressure {pressure}, as at Bedside.', { pressure })
    case 'settings':
      return say('Air pressure {pressure}, from the altitude in the settings.', { pressure })
    case 'nowhere':
      return say('Altitude not given: sea level taken, {pressure}.', { pressure })
  }
}

function temperatureLine(basis: CylinderBasis): string {
  const readC = numberText(basis.readAtC, 1)
  const usedC = numberText(basis.usedAtC, 1)
  if (!basis.isReadAtGiven)
    return say(
      'Gas temperature not given: {temperature} °C taken. Ten degrees warmer hold about 5 % less at the same reading.',
      { temperature: readC },
    )
  return basis.isUsedAtGiven
    ? say('Read at {read} °C and used at {used} °C.', { read: readC, used: usedC })
    : say('Read at {read} °C; used at the same temperature, as no other is given.', { read: readC })
}

function drawnLine({ drawnFrom }: CylinderBasis): string {
  switch (drawnFrom) {
    case 'meter':
      return say(
        'An ordinary flowmeter may be wrong by 10 %, below 5 L/min by 0.5 L/min (Duprez 2014); the range above carries it.',
      )
    case 'driving':
      return say(
        'Only the driving flow comes from the cylinder; the air comes from the room. The meter may be wrong by 10 %, below 5 L/min by 0.5 L/min (Duprez 2014).',
      )
    case 'blend':
      return say(
        'Of a blend only its oxygen share is drawn: (fraction − 0.2095) / 0.7905. Air comes from elsewhere. The flow may be wrong by 10 % (common practice).',
      )
    case 'ventilator':
      return say(
        'Flow and bias flow at the fraction set, oxygen share only; driving gas is pure oxygen. The flow may be wrong by 10 % (common practice).',
      )
    case 'bedside':
      return say(
        'Drawn as typed at Bedside, with the error of its meter and the air pressure there.',
      )
  }
}

/** The rule of water volume times pressure, and by how much ours differs. */
export function simpleRuleText(rule: {
  readonly ruleMinutes: number
  readonly oursMinutes: number
}): string {
  return say(
    'Water volume × pressure, as often taught: {rule}. {difference} The rule takes oxygen for an ideal gas and knows no temperature.',
    { rule: durationText(rule.ruleMinutes), difference: differenceText(rule) },
  )
}

/** A factor of a handbook, litres for each psi. */
export function factorRuleText(rule: {
  readonly factorText: string
  readonly ruleMinutes: number
  readonly oursMinutes: number
}): string {
  return say(
    'With {factor} L for each psi: {rule}. {difference} A factor belongs to one size of one country; ours comes from the water volume.',
    {
      factor: rule.factorText,
      rule: durationText(rule.ruleMinutes),
      difference: differenceText(rule),
    },
  )
}

function differenceText(rule: {
  readonly ruleMinutes: number
  readonly oursMinutes: number
}): string {
  const difference = rule.oursMinutes - rule.ruleMinutes
  if (Math.abs(difference) < 0.5) return say('Ours is the same to the minute.')
  const by = durationText(Math.abs(difference))
  return difference > 0 ? say('Ours is {by} longer.', { by }) : say('Ours is {by} shorter.', { by })
}
