// The answer for a stock as lines for a terminal: what to order first, then every item, the scarcest first. Leaves out what is computed.
import type { StockFile } from '../supply/read-stock.ts'
import type { StockAnswer } from '../supply/stock.ts'
import type { SupplyRemark } from '../supply/supply-remark.ts'
import { daysText, orderLine, perDayText, STOCK_TEXT } from '../words/gas-home-text.ts'
import { ROOM_TEXT } from '../words/gas-room-text.ts'
import { numberText } from '../words/number-text.ts'
import { supplyTexts } from '../words/supply-text.ts'
import { GAS_UNITS } from '../words/supply-value.ts'
import { bulleted, indented, section, tableLines } from './table.ts'

export function stockLines(
  { isInvented }: StockFile,
  answers: readonly StockAnswer[],
): readonly string[] {
  const labels = answers.filter(({ mustOrder }) => mustOrder).map(({ item }) => item.label)
  return [
    ...indented(orderLine(labels), 0),
    ...(isInvented === true ? [STOCK_TEXT.invented()] : []),
    '',
    ...tableLines(
      [
        { heading: STOCK_TEXT.item(), widthMost: 40 },
        { heading: STOCK_TEXT.onHand(), align: 'right' },
        { heading: STOCK_TEXT.perDay(), align: 'right' },
        { heading: STOCK_TEXT.left(), align: 'right' },
        { heading: STOCK_TEXT.reorder(), align: 'right' },
      ],
      answers.map(({ item, usePerDay, daysLeft, reorderPoint }) => ({
        cells: [
          item.label,
          numberText(item.onHand, 1),
          perDayText(usePerDay),
          daysLeft === null ? STOCK_TEXT.noUse() : daysText(daysLeft),
          numberText(reorderPoint, 1),
        ],
      })),
    ),
    ...section(ROOM_TEXT.mind(), bulleted(remarkLines(answers))),
  ]
}

/** What an item says of itself, then the rule of the numbers, each rule once. */
function remarkLines(answers: readonly StockAnswer[]): readonly string[] {
  const isRule = ({ code }: SupplyRemark): boolean => code === 'STOCK_FORMULA'
  const own = answers.flatMap(({ item, remarks }) => {
    const said = remarks.filter((remark) => !isRule(remark))
    return supplyTexts(said, GAS_UNITS).map((text) => `${item.label}: ${text}`)
  })
  const rules = answers.flatMap(({ remarks }) => supplyTexts(remarks.filter(isRule), GAS_UNITS))
  return [...own, ...new Set(rules)]
}
