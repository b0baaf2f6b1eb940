// Gas: its parts, each at its own address, with the cautions that hold for all. Leaves out the parts.
import type { ComponentType } from 'react'
import { Link, useLocation } from 'wouter'
import { GAS_PARTS, GAS_TEXT, gasStandingText } from '../../words/gas-page-text.ts'
import type { GasPart } from '../../words/gas-page-text.ts'
import { CylindersPart } from '../gas/cylinders-part.tsx'
import { GasUnitSwitch } from '../gas/gas-unit-switch.tsx'
import { DrillPart } from '../gas/drill-part.tsx'
import { HomePart } from '../gas/home-part.tsx'
import { RoomPart } from '../gas/room-part.tsx'
import { StockPart } from '../gas/stock-part.tsx'
import { WardPart } from '../gas/ward-part.tsx'
import { TransferPart } from '../gas/transfer-part.tsx'
import '../styles/gas.css'

const PARTS: readonly {
  readonly id: GasPart
  readonly path: string
  readonly Part: ComponentType
  /** Shows pressures or volumes of gas. */
  readonly hasUnits?: boolean
}[] = [
  { id: 'cylinder', path: '/gas', Part: CylindersPart, hasUnits: true },
  { id: 'transfer', path: '/gas/transfer', Part: TransferPart, hasUnits: true },
  { id: 'ward', path: '/gas/ward', Part: WardPart },
  { id: 'drill', path: '/gas/drill', Part: DrillPart },
  { id: 'room', path: '/gas/room', Part: RoomPart },
  { id: 'home', path: '/gas/home', Part: HomePart, hasUnits: true },
  { id: 'stock', path: '/gas/stock', Part: StockPart },
]

export function GasPage() {
  const [path] = useLocation()
  const shown = PARTS.find((part) => part.path === path) ?? PARTS[0]
  return (
    <main className="gas wide-place" id="answer" tabIndex={-1}>
      <div className="gas-top">
        <h1>{GAS_TEXT.heading()}</h1>
        <nav className="places" aria-label={GAS_TEXT.parts()}>
          {PARTS.map((part) => (
            <Link
              key={part.path}
              href={part.path}
              className="place"
              aria-current={part === shown ? 'page' : undefined}
            >
              {GAS_PARTS[part.id]()}
            </Link>
          ))}
        </nav>
        {shown?.hasUnits === true ? <GasUnitSwitch /> : null}
      </div>
      {shown === undefined ? null : <shown.Part />}
      <p className="gas-standing">{gasStandingText()}</p>
    </main>
  )
}
