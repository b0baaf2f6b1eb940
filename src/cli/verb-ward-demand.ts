// `oxwright ward-demand FILE`: what a ward draws against its supply, and the lights-out drill. Leaves out how it is laid out.
import type { Shelf } from '../kit/shelf.ts'
import { wardDemandSvg } from '../pictures/gas-bars.ts'
import { FAILURES, type BedOutage, type Failure } from '../supply/bed-outage.ts'
import { USUAL_SIMULATION } from '../supply/demand-simulation.ts'
import { lightsOut, type LightsOut } from '../supply/lights-out.ts'
import { ONE_MORE_HIGH_FLOW, wardDemand, type WardDemand } from '../supply/ward-demand.ts'
import type { WardFile } from '../supply/ward.ts'
import { CLI_WORDS } from '../words/cli-text.ts'
import { oneOf, wholeNumber, type ParsedWords } from './arguments.ts'
import { EXIT } from './exit-codes.ts'
import { jsonText } from './json-output.ts'
import { decimal } from './quantities.ts'
import { shelfFrom, wardFrom } from './read-input.ts'
import { toldBody, toldRemarks } from './supply-json.ts'
import { writeText } from './terminal.ts'
import { COMMON_OPTIONS, type Verb } from './verb.ts'
import { demandLines, drillLines } from './ward-lines.ts'

export const WARD_DEMAND_JSON_FORMAT = 'oxwright-ward-demand-1'

export interface WardAnswer {
  readonly ward: WardFile
  readonly shelf: Shelf
  readonly demand: WardDemand
  readonly drill: LightsOut
  /** One failure alone, or all. */
  readonly failure: Failure | undefined
}

const DRAWS = { min: 64, max: 100_000 }
const SEED = { min: 0, max: 4_294_967_295 }

export const wardDemandVerb: Verb = {
  options: {
    ...COMMON_OPTIONS,
    shelf: 'text',
    svg: 'text',
    drill: 'switch',
    failure: 'text',
    'more-flow': 'text',
    'more-fraction': 'text',
    draws: 'text',
    seed: 'text',
  },
  takesCase: true,
  takes: 'ward',
  run: ({ words, terminal, version }) => {
    const answer = answerOf(words)
    const svgPath = words.texts.get('svg')
    if (svgPath !== undefined) writeText(svgPath, pictureOf(answer))
    if (words.switches.has('json')) terminal.out(wardJson(answer, version))
    else {
      const isDrill = words.switches.has('drill') || answer.failure !== undefined
      terminal.out((isDrill ? drillLines(answer) : demandLines(answer)).join('\n'))
      if (svgPath !== undefined) terminal.out(`\n${CLI_WORDS.demandWritten} ${svgPath}`)
    }
    return EXIT.ok
  },
}

function pictureOf({ ward, demand }: WardAnswer): string {
  const { branchLpmMax } = ward.supply
  return wardDemandSvg({
    demand,
    ...(branchLpmMax === undefined ? {} : { branchLpmMax }),
    mode: 'file',
  })
}

function answerOf(words: ParsedWords): WardAnswer {
  const ward = wardFrom(words.positionals[0] ?? '')
  const shelf = shelfFrom(words.texts.get('shelf'))
  const flowLpm = decimal(words, 'more-flow')
  const setO2Fraction = decimal(words, 'more-fraction')
  const demand = wardDemand({
    ward,
    shelf,
    simulation: {
      ...USUAL_SIMULATION,
      draws: wholeNumber(words, 'draws', DRAWS) ?? USUAL_SIMULATION.draws,
      seed: wholeNumber(words, 'seed', SEED) ?? USUAL_SIMULATION.seed,
    },
    oneMore: {
      ...ONE_MORE_HIGH_FLOW,
      ...(flowLpm === undefined ? {} : { flowLpm }),
      ...(setO2Fraction === undefined ? {} : { setO2Fraction }),
    },
  })
  return {
    ward,
    shelf,
    demand,
    drill: lightsOut(ward, shelf),
    failure: oneOf(words, 'failure', FAILURES),
  }
}

function wardJson({ ward, demand, drill }: WardAnswer, version: string): string {
  const { simulation, oneMore, beds } = demand
  return jsonText({
    format: WARD_DEMAND_JSON_FORMAT,
    version,
    hospital: ward.hospital,
    ward: ward.ward,
    isInvented: ward.isInvented ?? false,
    barometricKpa: demand.barometricKpa,
    drawnLpm: demand.drawnLpm,
    airLpm: demand.airLpm,
    unknownBeds: demand.unknownBeds,
    design: { area: ward.supply.area, designLpm: demand.designLpm, known: 'memory' },
    autonomy: demand.autonomy,
    simulation: {
      ...simulation.rule,
      meanLpm: simulation.meanLpm,
      percentilesLpm: simulation.percentilesLpm,
      aboveDesignShare: simulation.shareAbove(demand.designLpm),
    },
    oneMore: { ...oneMore, remarks: toldRemarks(oneMore.remarks) },
    beds: beds.map((bed) => ({
      bed: bed.bed.bed,
      code: bed.bed.code ?? null,
      feed: bed.feed,
      pipelineLpm: bed.pipelineLpm,
      airLpm: bed.airLpm,
      setUp: toldBody(bed),
    })),
    remarks: toldRemarks(demand.remarks),
    drill: {
      beds: drill.beds.map(({ answer, outages }) => ({
        bed: answer.bed.bed,
        code: answer.bed.code ?? null,
        outages: FAILURES.map((failure) => toldOutage(outages[failure])),
      })),
      remarks: toldRemarks(drill.remarks),
    },
  })
}

function toldOutage(outage: BedOutage): object {
  return {
    ...outage,
    remarks: toldRemarks(outage.remarks),
    actions: toldRemarks(outage.actions),
  }
}
