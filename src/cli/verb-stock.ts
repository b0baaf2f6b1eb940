// `oxwright stock FILE`: use a day, days left and when to order, of every item of a stock file. Leaves out how it is laid out.
import { stockAnswers, type StockAnswer } from '../supply/stock.ts'
import type { StockFile } from '../supply/read-stock.ts'
import { EXIT } from './exit-codes.ts'
import { jsonText } from './json-output.ts'
import { stockFrom } from './read-input.ts'
import { stockLines } from './stock-lines.ts'
import { toldRemarks } from './supply-json.ts'
import { COMMON_OPTIONS, type Verb } from './verb.ts'

export const STOCK_JSON_FORMAT = 'oxwright-stock-1'

export const stockVerb: Verb = {
  options: COMMON_OPTIONS,
  takesCase: true,
  takes: 'stock',
  run: ({ words, terminal, version }) => {
    const stock = stockFrom(words.positionals[0] ?? '')
    const answers = stockAnswers(stock.items)
    if (words.switches.has('json')) terminal.out(stockJson(stock, answers, version))
    else terminal.out(stockLines(stock, answers).join('\n'))
    return EXIT.ok
  },
}

function stockJson(
  { isInvented }: StockFile,
  answers: readonly StockAnswer[],
  version: string,
): string {
  return jsonText({
    format: STOCK_JSON_FORMAT,
    version,
    isInvented: isInvented ?? false,
    items: answers.map(({ item, ...answer }) => ({
      id: item.id,
      label: item.label,
      onHand: item.onHand,
      leadTimeDays: item.leadTimeDays,
      daysSeen: item.usedEachDay.length,
      ...answer,
      remarks: toldRemarks(answer.remarks),
    })),
  })
}
