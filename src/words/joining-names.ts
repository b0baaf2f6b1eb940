// Names of ends, of what holds a joint, and of the patient's openings. Leaves out parts, which the shelf names.
import type { EndId } from '../kit/ends.ts'
import type { Hold } from '../joining/mating-rules.ts'
import type { HumidifierKind } from '../kit/shelf.ts'
import { say } from './say.ts'

export const END_NAMES: Readonly<Record<EndId, string>> = {
  'terminal-oxygen': say('oxygen wall outlet'),
  'probe-oxygen': say('oxygen probe'),
  'terminal-air': say('air wall outlet'),
  'probe-air': say('air probe'),
  'terminal-other': say('wall outlet of another gas'),
  'probe-other': say('probe of another gas'),
  'cylinder-pin-oxygen': say('pin-index valve, oxygen'),
  'yoke-oxygen': say('pin-index yoke, oxygen'),
  'cylinder-screw-oxygen': say('screw valve, oxygen'),
  'nut-oxygen': say('nut, oxygen'),
  'cylinder-pin-air': say('pin-index valve, air'),
  'yoke-air': say('pin-index yoke, air'),
  'thread-oxygen-male': say('oxygen thread, outside'),
  'thread-oxygen-female': say('oxygen thread, inside'),
  'thread-air-male': say('air thread, outside'),
  'thread-air-female': say('air thread, inside'),
  nipple: say('tubing nipple'),
  funnel: say('end of oxygen tubing'),
  'conical-8-male': say('8.5 mm cone, outside'),
  'conical-8-female': say('8.5 mm cone, inside'),
  'conical-15-male': say('15 mm cone, outside'),
  'conical-15-female': say('15 mm cone, inside'),
  'conical-22-male': say('22 mm cone, outside'),
  'conical-22-female': say('22 mm cone, inside'),
  'conical-22-male-15-female': say('cone 22 mm outside and 15 mm inside'),
  collar: say('collar'),
  'air-ports': say('air ports of the valve'),
  prongs: say('prongs'),
  nose: say('nose'),
  'mask-rim': say('rim of the mask'),
  face: say('face'),
  'neck-rim': say('rim at the neck'),
  neck: say('opening at the neck'),
  box: say('box'),
  head: say('head'),
  'luer-male': say('Luer cone, outside'),
  'luer-female': say('Luer cone, inside'),
  'needle-free-port': say('port of a line into a vein'),
  'enteral-male': say('feeding connector, outside'),
  'enteral-female': say('feeding connector, inside'),
  'neuraxial-female': say('spinal connector'),
  'limb-cuff-line': say('line of a blood-pressure cuff'),
  'tube-cuff-line': say('cuff line of a tracheostomy tube'),
}

export const HOLD_NAMES: Readonly<Record<Hold, string>> = {
  'quick-connector': say('latched'),
  yoke: say('clamped'),
  thread: say('screwed'),
  'push-fit': say('pushed on'),
  taper: say('cone pushed in'),
  clip: say('clipped on'),
  worn: say('worn'),
}

export const AFTER_NAMES: Readonly<Record<string, string>> = {
  'goes-on': say('goes on'),
  'oxygen-alone': say('oxygen alone'),
  'air-alone': say('air alone'),
  'room-air-only': say('room air alone'),
  nothing: say('nothing'),
  unknown: say('unknown'),
}

export const HUMIDIFIER_NAMES: Readonly<Record<'none' | HumidifierKind, string>> = {
  none: say('none'),
  bubble: say('bubble humidifier'),
  collar: say('humidification collar'),
  heated: say('heated humidifier'),
  'pass-over': say('pass-over humidifier'),
  exchanger: say('heat and moisture exchanger'),
}
