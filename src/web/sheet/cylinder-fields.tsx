// Volume and gauge of the cylinder at the bed, for the clock times on its sheet. Leaves out working them out.
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { kpaFromBar, barFromKpa } from '../../units/pressure.ts'
import type { Problem } from '../../errors.ts'
import type { SheetRequest } from '../../sheet/fragment.ts'
import { SHEET_WORDS } from '../../words/web-sheet-text.ts'
import { textOfNumber, typedNumber } from '../case/typed-number.ts'
import { NumberField } from '../parts/number-field.tsx'
import { replaceRequest } from './sheet-address.ts'

/** As the cylinder itself accepts them; gauge in bar. */
const RULES = {
  waterVolumeL: { code: 'VOLUME_OUT_OF_RANGE', min: 0.1, max: 150, unit: 'L' },
  gauge: { code: 'PRESSURE_OUT_OF_RANGE', min: 1, max: 350, unit: 'bar' },
  left: { code: 'PRESSURE_OUT_OF_RANGE', min: 0, max: 350, unit: 'bar' },
} as const
type Name = keyof typeof RULES
const NAMES: readonly Name[] = ['waterVolumeL', 'gauge', 'left']

export function CylinderFields({ request }: { readonly request: SheetRequest }) {
  const [typed, setTyped] = useState<Readonly<Record<Name, string>>>(() => typedOf(request))
  const [isAsked, setAsked] = useState(false)
  const problems = (name: Name): readonly Problem[] =>
    isAsked ? problemsOf(name, typed[name]) : []
  const take = (): void => {
    setAsked(true)
    const [waterVolumeL, gauge, left] = NAMES.map((name) => valueOf(name, typed[name]))
    if (waterVolumeL === undefined || gauge === undefined || left === undefined) return
    const cylinder = {
      waterVolumeL,
      gaugeKpa: kpaFromBar(gauge),
      leftGaugeKpa: kpaFromBar(left),
    }
    replaceRequest({ ...request, cylinder })
  }
  return (
    <div className="sheet-cylinder">
      {NAMES.map((name) => (
        <NumberField
          key={name}
          field={`cylinder.${name}`}
          label={SHEET_WORDS.cylinder[name]}
          unit={RULES[name].unit}
          typed={typed[name]}
          onType={(text) => setTyped({ ...typed, [name]: text })}
          problems={problems(name)}
        />
      ))}
      <Button className="button" onPress={take}>
        {SHEET_WORDS.workOut}
      </Button>
    </div>
  )
}

function typedOf({ cylinder }: SheetRequest): Readonly<Record<Name, string>> {
  if (cylinder === undefined) return { waterVolumeL: '', gauge: '', left: '' }
  const bar = (kpa: number): string => textOfNumber(Number(barFromKpa(kpa).toFixed(1)))
  return {
    waterVolumeL: textOfNumber(cylinder.waterVolumeL),
    gauge: bar(cylinder.gaugeKpa),
    left: bar(cylinder.leftGaugeKpa),
  }
}

function valueOf(name: Name, text: string): number | undefined {
  const typed = typedNumber(text, RULES[name])
  if (typed.kind !== 'number') return undefined
  return problemsOf(name, text).length === 0 ? typed.value : undefined
}

function problemsOf(name: Name, text: string): readonly Problem[] {
  const { code, min, max, unit } = RULES[name]
  const path = `cylinder.${name}`
  const typed = typedNumber(text, { min, max })
  if (typed.kind === 'empty') return [{ code: 'MISSING_FIELD', path, value: null }]
  if (typed.kind === 'refused') return [{ code: 'NOT_A_NUMBER', path, value: typed.text }]
  if (typed.value >= min && typed.value <= max) return []
  return [{ code, path, value: typed.value, limit: { min, max }, unit }]
}
