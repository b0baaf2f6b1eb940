// The address of the Chain page with picks in it: kit alone, never the patient. Leaves out whether the shelf holds what it names.
import { stepCode } from '../../kit/flow-steps.ts'
import type { SetUp } from '../../kit/set-up.ts'
import type { ChainChoice } from './chain-choice.ts'

export const CHAIN_PATH = '/chain'

/** What an address can name, by its name there. */
const NAMES = {
  interface: 'interfaceKey',
  source: 'sourceId',
  humidifier: 'humidification',
  flow: 'flow',
  over: 'overFlow',
  fraction: 'fraction',
  ward: 'wardId',
} as const satisfies Readonly<Record<string, keyof ChainChoice>>

export type Named = Partial<Pick<ChainChoice, (typeof NAMES)[keyof typeof NAMES]>>

/** `/chain?interface=…`; what is not given is left to what was picked before. */
export function chainHref(named: Named): string {
  const search = searchOf(named)
  return search === '' ? CHAIN_PATH : `${CHAIN_PATH}?${search}`
}

export function searchOf(named: Named): string {
  const given = new URLSearchParams()
  for (const [name, key] of Object.entries(NAMES)) {
    const value = named[key]
    if (value !== undefined) given.set(name, value)
  }
  return given.toString()
}

/** Every pick of a set-up of a shelf; null for one whose interface is of no shelf. */
export function namedBy(setUp: SetUp, wardId: string | undefined): Named | null {
  const { interfaceId, size, source, humidification, flow, over, setO2Fraction } = setUp
  if (interfaceId === undefined) return null
  return {
    interfaceKey: `${interfaceId}/${size}`,
    sourceId: source.id,
    humidification,
    flow: stepCode(flow),
    overFlow: over === null ? '' : stepCode(over.flow),
    fraction: setO2Fraction === null ? '' : String(setO2Fraction),
    wardId: wardId ?? '',
  }
}

/** What an address names, whether the shelf holds it or not. */
export function readSearch(search: string): Named {
  const given = new URLSearchParams(search)
  const named = Object.entries(NAMES).flatMap(([name, key]) => {
    const value = given.get(name)
    return value === null ? [] : [[key, value] as const]
  })
  return Object.fromEntries(named)
}
