// What the command line says around a bedside sheet. Leaves out the sheet.
import { say } from './say.ts'

export function noSheetText(): string {
  return say('No sheet: nothing suits this patient.')
}

export function pdfWrittenText(path: string): string {
  return say('sheet written to {path}', { path })
}
