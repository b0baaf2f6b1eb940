// The cylinders at hand as cards, kept as typed. Leaves out one card's content.
import { useState } from 'react'
import { Button } from 'react-aria-components'
import { CYLINDER_TEXT } from '../../words/gas-cylinder-text.ts'
import { useSettings } from '../settings/settings-store.ts'
import { siteAltitude } from '../settings/site-altitude.ts'
import { BringBack } from './bring-back.tsx'
import { CylinderCard } from './cylinder-card.tsx'
import { EXAMPLE_CYLINDER, newCylinder } from './cylinder-form.ts'
import type { KeptForm } from './kept-form.ts'
import { useKeptForm, withoutRow, withRow } from './kept-form.ts'
import { useBedsideDraw } from './use-bedside-draw.ts'
import { useGasUnits } from './use-gas-units.ts'
import { useNow } from './use-now.ts'

const START: KeptForm = { texts: {}, rows: [EXAMPLE_CYLINDER] }

export function CylindersPart() {
  const { form, change } = useKeptForm('cylinders', START)
  const [before, setBefore] = useState<KeptForm | null>(null)
  const bedside = useBedsideDraw()
  const units = useGasUnits()
  const { altitudeM } = siteAltitude(useSettings().altitudeTyped)
  const now = useNow()
  const remove = (at: number): void => {
    setBefore(form)
    change(withoutRow(form, at))
  }
  return (
    <>
      <p className="section-help">{CYLINDER_TEXT.help()}</p>
      {form.rows.map((texts, position) => (
        <CylinderCard
          // Cards have no identity beyond their place: what is typed is kept in the row.
          key={position}
          position={position}
          texts={texts}
          now={now}
          units={units}
          bedside={bedside}
          siteAltitudeM={altitudeM}
          onChange={(row) => change(withRow(form, position, row))}
          onRemove={form.rows.length > 1 ? () => remove(position) : undefined}
        />
      ))}
      <div className="gas-actions">
        <Button
          className="button"
          onPress={() => change({ ...form, rows: [...form.rows, newCylinder(units.pressure)] })}
        >
          {CYLINDER_TEXT.another()}
        </Button>
        <BringBack
          before={before}
          onBack={(removed) => {
            change(removed)
            setBefore(null)
          }}
        />
      </div>
    </>
  )
}
