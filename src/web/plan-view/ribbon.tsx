// One breath ribbon with its text equivalent, drawn from a breath that is there. Leaves out asking for it.
import { useCallback } from 'react'
import { ribbonSvg, ribbonText } from '../../pictures/breath-ribbon.ts'
import type { Ribbon } from '../../pictures/ribbon-shape.ts'
import { RIBBON_SECTION } from '../../words/web-page-text.ts'
import { Fold } from '../parts/fold.tsx'
import { Lines } from '../parts/lines.tsx'
import { Picture } from '../parts/picture.tsx'

const ID = 'breath-ribbon'

export function RibbonView({ ribbon }: { readonly ribbon: Ribbon | null }) {
  const draw = useCallback(
    (widthPx: number) => (ribbon === null ? '' : ribbonSvg({ ...ribbon, widthPx, id: ID })),
    [ribbon],
  )
  return (
    <div className="ribbon">
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
