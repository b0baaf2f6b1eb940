// A text as the squares of a QR code: one path over a grid, black on white. Leaves out what is in the text.
import { create } from 'qrcode'

export interface QrCode {
  /** Squares along one side, with the white rim that a reader needs. */
  readonly size: number
  /** Dark squares as an SVG path in that grid. */
  readonly path: string
}

/** White squares all round, as the standard asks. */
const RIM = 4

/** Correction level M bears a sheet that is creased or stained over about a seventh of its squares. */
export function qrCode(text: string): QrCode {
  const { modules } = create(text, { errorCorrectionLevel: 'M' })
  const dark: string[] = []
  for (let row = 0; row < modules.size; row++) {
    for (let column = 0; column < modules.size; column++) {
      if (modules.get(row, column) !== 0) dark.push(`M${column + RIM} ${row + RIM}h1v1h-1z`)
    }
  }
  return { size: modules.size + 2 * RIM, path: dark.join('') }
}

/** The code as a picture; its text equivalent is the caller's. */
export function qrSvg({ size, path }: QrCode): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}"><path fill="#fff" d="M0 0h${size}v${size}h-${size}z"/><path fill="#000" d="${path}"/></svg>`
}
