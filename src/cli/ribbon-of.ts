// The ribbon of a set-up's answer: middle breath, printed fraction, title. Leaves out drawing.
import type { Ribbon } from '../pictures/ribbon-shape.ts'
import { setUpText } from '../words/set-up-text.ts'
import type { SetUpAnswer } from './breath-answer.ts'

export function ribbonOf(answer: SetUpAnswer): Ribbon {
  return {
    breath: answer.bedside.breath,
    printedO2Fraction: answer.ranked?.printedO2Fraction ?? null,
    isChecked: answer.bedside.isChecked,
    title: setUpText(answer.setUp),
  }
}
