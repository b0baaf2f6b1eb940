// The tables in docs/models/<family>.md, made from families and evidence rows themselves so that page and code cannot differ. Leaves out prose.
import type { EvidenceRow, RowUse } from '../../src/evidence/evidence-row.ts'
import type { InterfaceFamily, PrintedFraction } from '../../src/kit/interface-family.ts'
import { UNCHECKED_WIDENING } from '../../src/kit/interface-family.ts'
import type { Provenance } from '../../src/units/provenance.ts'
import { limitsOf, medianOf } from '../../src/units/spread.ts'
import type { Spread } from '../../src/units/spread.ts'

export const NUMBERS_BEGIN = '<!-- numbers from src/kit/families: begin -->'
export const NUMBERS_END = '<!-- numbers from src/kit/families: end -->'

export const CHECKS_BEGIN = '<!-- checks from src/evidence/rows: begin -->'
export const CHECKS_END = '<!-- checks from src/evidence/rows: end -->'

/** What the pages call each field of a gas behaviour, with its unit. */
const LABELS: Readonly<Record<string, string>> = {
  captureOut: 'share of the flow that enters the nose while breathing out or pausing',
  flushShare: 'share of the flow that runs on through the pharynx with the mouth open',
  behindNoseShare: 'share of the upper airway that counts as nose',
  clearanceMlPerSPerLpm: 'clearance of the upper airway, mL/s for each L/min',
  meanPressureCmH2oPerLpm: 'mean airway pressure, cmH2O for each L/min, mouth closed',
  openMouthPressureShare: 'share of that pressure with the mouth open',
  'exchange.baseLpm': 'exchange with the room, base, L/min',
  'exchange.perJetFlow': 'exchange with the room, L/min for each L/min of device flow',
  'exchange.fitFactor.tight': 'fit factor, tight',
  'exchange.fitFactor.gentle': 'fit factor, gentle',
  'exchange.fitFactor.loose': 'fit factor, loose',
  'exchange.fitFactor.over-surgical-mask': 'fit factor, over a surgical mask',
  limbL: 'open limb, L',
  draughtLpm: 'draught, L/min',
  bagL: 'bag, L (adult)',
  'leakRatio.tight': 'leak ratio, tight',
  'leakRatio.gentle': 'leak ratio, gentle',
  'leakRatio.loose': 'leak ratio, loose',
  'leakRatio.over-surgical-mask': 'leak ratio, over a surgical mask',
  forwardLoss: 'share of the flow that slips past a slack bag',
  hasInletValve: 'inlet valve',
  expiredShareIntoBag: 'share of the expired gas that enters the bag until it is full',
}

/** Everything between the two marks, marks included. */
export function numbersBlock(family: InterfaceFamily): string {
  return [
    NUMBERS_BEGIN,
    ...sizeTable(family),
    '',
    ...numberTable(family),
    '',
    `Unexplained spread of the oxygen added above room air: ${text(family.modelSd.value)} (relative SD; ${known(family.modelSd)})${family.isChecked ? '' : `, widened × ${UNCHECKED_WIDENING} because no measurement judges this family`}.`,
    `Shown beside ours: ${printed(family.printed)}.`,
    family.isChecked
      ? 'Checked against measurements: yes, see the evidence report.'
      : '**Not checked against measurements.**',
    NUMBERS_END,
  ].join('\n')
}

const USES: readonly RowUse[] = ['judge', 'calibrate', 'trend', 'context']

/** How many engine rows of the family each source gives, by use; limiting cases counted apart. Marks included. */
export function checksBlock(family: InterfaceFamily, rows: readonly EvidenceRow[]): string {
  const own = rows.filter((one) => one.family === family.id && one.kind === 'model')
  const measured = own.filter((one) => !one.isLimitingCase)
  const limiting = own.length - measured.length
  const sources = [...new Set(measured.map(sourceText))].toSorted()
  const table = sources.map((source) => {
    const ofSource = measured.filter((one) => sourceText(one) === source)
    const counts = USES.map((use) => ofSource.filter((one) => one.use === use).length)
    return `| ${source} | ${counts.map((count) => (count === 0 ? '–' : String(count))).join(' | ')} |`
  })
  return [
    CHECKS_BEGIN,
    ...(table.length === 0
      ? ['No row of the evidence report runs this family.']
      : [
          '| source | judge | calibrate | direction only | context |',
          '| --- | --- | --- | --- | --- |',
          ...table,
        ]),
    ...(limiting === 0 ? [] : ['', `Limiting cases that are exact arithmetic: ${limiting}.`]),
    CHECKS_END,
  ].join('\n')
}

function sourceText(one: EvidenceRow): string {
  return one.source ?? 'common practice, arithmetic'
}

function sizeTable(family: InterfaceFamily): readonly string[] {
  return [
    '| size | ages, years | flow, L/min | how we know the flow | gas space, L |',
    '| --- | --- | --- | --- | --- |',
    ...family.sizes.map((size) => {
      const from = size.weightKgMin === undefined ? '' : `, from ${text(size.weightKgMin)} kg`
      const to = size.weightKgMax === undefined ? '' : `, to ${text(size.weightKgMax)} kg`
      const ages = `${text(size.ageYearsMin)}–${text(size.ageYearsMax)}${from}${to}`
      const flow = `${text(size.rated.minLpm)}–${text(size.rated.maxLpm)}`
      return `| ${size.id} | ${ages} | ${flow} | ${known(size.rated)} | ${spreadText(size.pocketL.spread)} |`
    }),
  ]
}

function numberTable(family: InterfaceFamily): readonly string[] {
  const rows = rowsOf(family.behaviour, '')
  if (rows.length === 0) return ['No numbers of its own: it uses those of the two parts.']
  return ['| number | middle (range) | how we know it |', '| --- | --- | --- |', ...rows]
}

function rowsOf(node: object, prefix: string): readonly string[] {
  return Object.entries(node).flatMap(([key, value]: [string, unknown]) => {
    const name = prefix === '' ? key : `${prefix}.${key}`
    if (name === 'kind' || value === null) return []
    if (typeof value === 'number') return [row(name, text(value), '–')]
    if (typeof value === 'boolean') return [row(name, value ? 'yes' : 'no', '–')]
    if (isSourced(value)) return [row(name, spreadText(value.spread), known(value))]
    return typeof value === 'object' ? rowsOf(value, name) : []
  })
}

function row(name: string, value: string, how: string): string {
  return `| ${LABELS[name] ?? name} | ${value} | ${how} |`
}

function isSourced(value: unknown): value is Provenance & { readonly spread: Spread } {
  return typeof value === 'object' && value !== null && 'spread' in value && 'known' in value
}

function spreadText(spread: Spread): string {
  if (spread.kind === 'fixed') return text(spread.value)
  const { min, max } = limitsOf(spread)
  return `${text(medianOf(spread))} (${text(min)}–${text(max)})`
}

function known(provenance: Provenance): string {
  return provenance.source === undefined
    ? provenance.known
    : `${provenance.known}, ${provenance.source}`
}

function printed(fraction: PrintedFraction): string {
  switch (fraction.kind) {
    case 'none':
      return 'nothing is printed for it'
    case 'setting':
      return `the setting itself (${known(fraction)})`
    case 'per-litre':
      return `${text(fraction.base)} + ${text(fraction.perLpm)} for each L/min up to ${text(fraction.maxLpm)} (${known(fraction)})`
    case 'table': {
      const rows = fraction.rows.map(
        ({ flowLpm, low, high }) => `${text(low)}–${text(high)} at ${text(flowLpm)} L/min`,
      )
      return `${rows.join(', ')} (${known(fraction)})`
    }
  }
}

function text(value: number): string {
  return String(Number(value.toPrecision(3)))
}
