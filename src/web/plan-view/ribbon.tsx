// One breath ribbon with its text equivalent, drawn from a breath that is there. Leaves out asking for it.
import { useCallback } from 'react'
import type { CSSProperties } from 'react'
import { ribbonSvg, ribbonText } from '../../pictures/breath-ribbon.ts'
import { ribbonShape } from '../../pictures/ribbon-shape.ts'
import type { Ribbon } from '../../pictures/ribbon-shape.ts'
import { RIBBON_SECTION } from '../../words/web-page-text.ts'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'
import { Picture } from '../parts/picture.tsx'

const ID = 'breath-ribbon'

export interface RibbonViewProps {
  readonly ribbon: Ribbon | null
  /** The rate of the breath drawn: the line over it moves as fast. */
  readonly ratePerMin: number | null
}

export function RibbonView({ ribbon, ratePerMin }: RibbonViewProps) {
  const draw = useCallback(
    (widthPx: number) =>
      ribbon === null ? '' : ribbonSvg({ ...ribbon, widthPx, id: ID, hasSweep: true }),
    [ribbon],
  )
  return (
    <div className="ribbon" style={ribbon === null ? {} : breathStyle(ribbon, ratePerMin)}>
      <h4>{RIBBON_SECTION.heading}</h4>
      {ribbon === null ? (
        <p className="picture-waiting">{RIBBON_SECTION.working}</p>
      ) : (
        <>
          <Picture draw={draw} />
          <Fold heading={RIBBON_SECTION.inWords} level={4}>
            <p className="section-help">{RIBBON_SECTION.help}</p>
            <Lines lines={ribbonText(ribbon)} />
          </Fold>
        </>
      )}
    </div>
  )
}

const S_PER_MIN = 60

/** How the line moves: over the ribbon while breath is drawn in, at its end until the next. */
function breathStyle(ribbon: Ribbon, ratePerMin: number | null): CSSProperties {
  if (ratePerMin === null) return {}
  const breathS = S_PER_MIN / ratePerMin
  const inPercent = (100 * ribbonShape(ribbon.breath).inspirationS) / breathS
  // Safe: properties of our own, which the type of the library does not list.
  return {
    '--breath-s': `${breathS.toFixed(2)}s`,
    '--breath-in': `linear(0, 1 ${inPercent.toFixed(1)}%, 1)`,
  } as CSSProperties
}
