import type { Calculation, Steps } from '../../compute/calculation.ts'
import { formulaText } from '../../compute/formula/formula-text.ts'
import type { Worksheet } from '../../model/figure.ts'
import { exactNumber } from '../../model/quantity/format-exact.ts'
import {
  formatQuantity,
  type Locale,
  styleOf,
  unitText,
} from '../../model/quantity/format-quantity.ts'
import type { WorksheetWords } from '../../model/worksheet-words.ts'

/** Long sums lose a digit or two on the way; readings need fewer than the sun does. */
const [digitsOfSteps, digitsOfReadings] = [9, 6]

/** What stands before the numbers of a row has a line of its own where it is longer. */
const longest = 12

type Column = Steps['columns'][number]

const headText = ({ symbol, kind }: Column, locale: Locale): string => {
  const unit = kind && kind !== 'clock' && unitText(styleOf(kind, locale.system), locale)
  return `${formulaText(symbol)}${unit ? ` [${unit}]` : ''}`
}

function cellText(cell: number | string, column: Column | undefined, locale: Locale): string {
  if (typeof cell === 'string') return formulaText(cell)
  if (column?.kind === 'date' || column?.kind === 'clock')
    return formatQuantity(cell, column.kind, locale).text
  return column?.kind === undefined
    ? exactNumber(cell, '', digitsOfSteps)
    : exactNumber(cell, styleOf(column.kind, locale.system).unit, digitsOfReadings)
}

function tableText({ columns, rows }: Steps, locale: Locale): string[] {
  const texts = [
    columns.map((c) => headText(c, locale)),
    ...rows.map((row) => row.map((cell, i) => cellText(cell, columns[i], locale))),
  ]
  const parted = texts.flatMap(([first = '', ...rest]) =>
    first.length > longest ? [[first], ['', ...rest]] : [[first, ...rest]],
  )
  const widths = columns.map((_, i) =>
    Math.max(...parted.filter((r) => r.length > 1).map((r) => r[i]?.length ?? 0)),
  )
  return parted.map((row) =>
    row.length === 1
      ? `  ${row[0]}`
      : `  ${row.map((t, i) => t.padStart(widths[i] ?? 0)).join('  ')}`,
  )
}

/** The tables of a worksheet's steps, for the terminal; none where it gives no number. */
export function stepsText(
  sheet: Worksheet,
  { id, steps }: Calculation,
  locale: Locale,
  words: WorksheetWords,
): string[] {
  if (!sheet.outputs.some((o) => o.value.ok)) return []
  const x = Object.fromEntries(sheet.inputs.map((i) => [i.name, i.si]))
  return Object.entries(steps ?? {}).flatMap(([name, table]) => [
    words.calculations[id]?.steps?.[name] ?? '',
    ...tableText(table(x), locale),
    '',
  ])
}
