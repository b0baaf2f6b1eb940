// What the Gas page says of a ward's demand and in the lights-out drill, and the picture of the demand. Leaves out remarks by code.
import type { Failure, OutageState } from '../supply/bed-outage.ts'
import { numberText, percentText } from './number-text.ts'
import { say } from './say.ts'
import { drawText, minutesLeftText } from './supply-value.ts'

export const WARD_TEXT = {
  help: () =>
    say('What all beds of a ward draw together, against its pipework, and the hours behind it.'),
  which: () => say('Ward'),
  ofFile: () => say('a ward file of your own'),
  readFile: () => say('Read a ward file'),
  pickFile: () => say('Pick the file'),
  fileHelp: () => say('YAML or JSON as examples/wards shows; it stays on this device.'),
  drawn: () => say('drawn now'),
  design: () => say('design flow by the formula'),
  p95: () => say('simulated: 95 of 100 times at most'),
  aboveDesign: () => say('simulated: time above the design flow'),
  branch: () => say('its branch of the pipeline carries'),
  notKnown: () => say('not known'),
  air: () => say('medical air drawn'),
  manifold: () => say('manifold lasts'),
  tank: () => say('tank lasts'),
  unknown: () => say('beds whose set-up is not known'),
  oneMore: () => say('One more high-flow patient'),
  oneLess: () => say('Without that patient again'),
  picture: () => say('Demand of the ward'),
  beds: () => say('Bed by bed'),
  mind: () => say('Mind'),
  demo: () => say('Demo ward: every figure is invented'),
} as const

export function demandText(of: { readonly drawnLpm: number; readonly designLpm: number }): string {
  const times = numberText(of.drawnLpm / of.designLpm, 0.1)
  return of.drawnLpm > of.designLpm
    ? say('That is {times} times the {design} its pipework was designed for by the formula.', {
        times,
        design: drawText(of.designLpm),
      })
    : say('Within the {design} its pipework was designed for by the formula.', {
        design: drawText(of.designLpm),
      })
}

export function oneMoreText(of: { readonly moreLpm: number; readonly drawnLpm: number }): string {
  return say('One more at 60 L/min of pure oxygen draws {more}: {drawn} in all.', {
    more: drawText(of.moreLpm),
    drawn: drawText(of.drawnLpm),
  })
}

export function hoursRangeText(shortest: string, longest: string): string {
  return shortest === longest ? shortest : say('{shortest} to {longest}', { shortest, longest })
}

export function shareText(share: number): string {
  return percentText(share, 1)
}

/** "Bed 3: nasal high flow …: 24 L/min" */
export function bedDrawText(bed: string, setUp: string, drawLpm: number): string {
  return say('Bed {bed}, {setUp}: {draw}', { bed, setUp, draw: drawText(drawLpm) })
}

/** The same with what it is made up of. */
export function bedPartsText(line: string, parts: string): string {
  return say('{line} ({parts})', { line, parts })
}

export const DRILL_TEXT = {
  help: () =>
    say(
      'What each bed does when something fails: most endangered first. Print it before it is needed.',
    ),
  fails: () => say('What fails'),
  beds: () => say('Beds, most endangered first'),
  print: () => say('Print this page'),
  printedOn: () => say('Printed on: ____________ Set-ups change: print anew when they do.'),
  nextPage: () => say('Beds that this page does not hold stand on the next: the least endangered.'),
  sheet: () => say('Lights-out drill'),
  notComputed: () => say('How the saturation falls minute by minute is not computed yet.'),
  doThis: () => say('Do this'),
} as const

export function failureName(failure: Failure): string {
  switch (failure) {
    case 'mains':
      return say('mains power')
    case 'pipeline-oxygen':
      return say('oxygen from the pipeline')
    case 'medical-air':
      return say('medical air')
    case 'blender':
      return say('the blender or ventilator itself')
  }
}

export function sheetHeadText(of: { readonly ward: string; readonly failure: string }): string {
  const { ward, failure } = of
  return say('{ward}: what to do when this fails: {failure}', { ward, failure })
}

export function bedName(bed: string, code: string | undefined): string {
  return code === undefined ? say('Bed {bed}', { bed }) : say('Bed {bed} · {code}', { bed, code })
}

/** What is left, in the largest letters of a row. */
export function outageText(outage: {
  readonly state: OutageState
  readonly minutes: number | null
}): string {
  switch (outage.state) {
    case 'fails':
      return say('fails at once')
    case 'unknown':
      return say('not known')
    case 'minutes':
      return say('{minutes} left', { minutes: minutesLeftText(outage.minutes ?? 0) })
    case 'other-gas':
      return say('another gas flows')
    case 'works':
      return outage.minutes === null
        ? say('works on')
        : say('works on, {minutes} left', { minutes: minutesLeftText(outage.minutes) })
  }
}

export function endangeredText(count: number, total: number): string {
  return say('{count} of {total} beds fail at once or are not known', {
    count: String(count),
    total: String(total),
  })
}

export const DEMAND_PICTURE = {
  title: () => say('Demand of the ward'),
  now: (draw: string) => say('drawn now: {draw}', { draw }),
  p95: (draw: string) => say('simulated, 95 of 100 times at most: {draw}', { draw }),
  oneMore: (draw: string) => say('with one more high-flow patient: {draw}', { draw }),
  design: (draw: string) => say('design flow by the formula, from memory: {draw}', { draw }),
  branch: (draw: string) => say('the branch carries: {draw}', { draw }),
  axis: () => say('oxygen, L/min'),
} as const
