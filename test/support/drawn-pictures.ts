// Pictures of known data, to compare what Node draws with what a browser draws. Leaves out how they look.
import { compareRibbonsSvg, ribbonSvg } from '../../src/pictures/breath-ribbon.ts'
import { reachSvg } from '../../src/pictures/reach-chart.ts'
import { maskBreath } from './breath-data.ts'
import { planData, rankedData } from './plan-data.ts'

/** Breaths are solved anew, so that the engine's own numbers are compared with them. */
export function drawnPictures(): readonly string[] {
  const ribbon = (ratePerMin: number) => ({
    breath: maskBreath({ flowLpm: 6, ratePerMin }),
    printedO2Fraction: { low: 0.4, high: 0.6 },
    isChecked: true,
    title: `simple mask, adult, 6 L/min, ${ratePerMin}/min`,
  })
  const plan = planData({ ranked: [rankedData()] })
  return [
    ribbonSvg({ ...ribbon(16), widthPx: 560 }),
    compareRibbonsSvg({ before: ribbon(16), after: ribbon(34), widthPx: 358 }),
    reachSvg({ plan, widthPx: 720 }),
  ]
}
