// Reads what is known of blenders, ventilators and nebulisers beyond flow and fraction: failures, extra use, modes, pressure. Leaves out their scales.
import { at, given, has, openFields, readChoice, readList, readNumber } from './read-fields.ts'
import { readSwitch, readText } from './read-fields.ts'
import type { Opened } from './read-fields.ts'
import { AFTER_FAILURE, MODE_KINDS, YES_NO_UNKNOWN } from './shelf.ts'
import type { SupplyFailure, VentilatorMode, YesNoUnknown } from './shelf.ts'
import { KEYS, RULES } from './shelf-rules.ts'

export function readMixerFacts(node: Opened) {
  return given({
    pushesKpaMax: readNumber(node, 'pushesKpaMax', RULES.pressureKpa),
    failure: readFailure(node),
    biasFlowAddsToUse: readYesNo(node, 'biasFlowAddsToUse'),
    leakCompensationAddsToUse: readYesNo(node, 'leakCompensationAddsToUse'),
    hasOwnFilter: readYesNo(node, 'hasOwnFilter'),
    modes: readModes(node),
    isHeated: readSwitch(node, 'isHeated'),
  })
}

function readYesNo(node: Opened, key: string): YesNoUnknown | undefined {
  return has(node, key) ? readChoice(node, key, YES_NO_UNKNOWN) : undefined
}

function readFailure(parent: Opened): SupplyFailure | undefined {
  if (!has(parent, 'failure')) return undefined
  const node = openFields({
    problems: parent.problems,
    path: at(parent, 'failure'),
    value: parent.fields.get('failure'),
    keys: KEYS.failure,
  })
  if (node === undefined) return undefined
  const after = (key: string) => (has(node, key) ? readChoice(node, key, AFTER_FAILURE) : undefined)
  return given({ air: after('air'), oxygen: after('oxygen'), mains: after('mains') })
}

function readModes(parent: Opened): readonly VentilatorMode[] | undefined {
  return readList(parent, 'modes')?.flatMap((value, i) => {
    const path = `${at(parent, 'modes')}[${i}]`
    const node = openFields({ problems: parent.problems, path, value, keys: KEYS.mode })
    if (node === undefined) return []
    const label = readText(node, 'label')
    const kind = readChoice(node, 'kind', MODE_KINDS)
    return label === undefined || kind === undefined ? [] : [{ label, kind }]
  })
}
