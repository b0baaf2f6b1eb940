// Which set-up is taken from Bedside, of whom, and whether it is only the invented example. Leaves out what it draws.
import { bedsideSaidText, CYLINDER_TEXT } from '../../words/gas-cylinder-text.ts'
import { setUpOnNowText } from '../../words/set-up-text.ts'
import type { BedsideDraw } from './bedside-draw.ts'
import { ShelfSaid } from './shelf-said.tsx'

export function BedsideSaid({ bedside }: { readonly bedside: BedsideDraw }) {
  if (bedside.kind !== 'drawn')
    return (
      <p className="field-problem">
        {bedside.kind === 'nothing'
          ? CYLINDER_TEXT.nothingAtBedside()
          : CYLINDER_TEXT.bedsideRefused()}
      </p>
    )
  const { bed, code } = bedside.about
  return (
    <>
      <p className="field-help">
        {bedsideSaidText({
          setUp: setUpOnNowText(bedside.setUp),
          who: [bed, code].filter((one) => one !== undefined).join(' · '),
          isExample: bedside.isExample,
        })}
      </p>
      <ShelfSaid />
    </>
  )
}
