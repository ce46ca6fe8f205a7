import type { HeatTable } from '../../../model/manual/charts.ts'
import { entries } from '../../../validate/schemas/words/group.ts'
import { slanted } from '../boxes.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { type Point, sheetOf, slab } from '../ink.ts'
import { say, widthOf } from '../letters.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'

const wording = labels(
  'heat-index',
  entries('humidity', 'airTemperature', 'low', 'moderate', 'high', 'veryHigh'),
)
type Context = ContextFor<typeof wording>

/** The table: room for temperatures, for humidities above it, height of a row; points. */
const [left, top, high] = [38, 24, 15]
const size = 9

/** What each level asks for, from 1 on. */
const meanings = ({ words }: Context): readonly string[] => [
  words.low,
  words.moderate,
  words.high,
  words.veryHigh,
]

/** The table in words: each temperature with what it feels like, from dry to moist. */
function numbers(context: Context): string {
  const { heat } = context.manual.charts
  const said = (row: HeatTable['rows'][number]): string =>
    row.cells.map((c, i) => `${heat?.humidities[i] ?? ''} ${c.text} (${c.level})`).join(', ')
  return (heat?.rows ?? [])
    .map((row) => `${row.temperature}: ${said(row)}`)
    .concat(meanings(context))
    .join('; ')
}

/**
 * A field whose level shows without colour: plain, open strokes, close strokes and heavy type,
 * white on black.
 */
function field([x, y]: Point, wide: number, label: string, level: number): string {
  const number = (bold: boolean, color: 'ink' | 'paper'): string =>
    say([x + wide / 2, y + 10.7], label, { anchor: 'middle', size, bold, color })
  const name = `level-${level}`
  if (level >= 4)
    return slab([x, y], wide, high, { fill: 'ink', pen: 'hair', name }) + number(true, 'paper')
  const plate = 3 + widthOf(label, size, true)
  return [
    level > 1 ? slanted([x, y], [wide, high], level === 2 ? 5.4 : 2.6, { width: 0.5 }) : '',
    slab([x, y], wide, high, { pen: level === 3 ? 0.9 : 'hair', name }),
    level > 1
      ? slab([x + (wide - plate) / 2, y + 2.6], plate, high - 5.2, {
          fill: 'paper',
          stroke: 'none',
        })
      : '',
    number(level === 3, 'ink'),
  ].join('')
}

/** Temperatures at the left, and what each feels like by humidity. */
const fields = (table: HeatTable, wide: number): string[] =>
  table.rows.flatMap((row, j) => [
    say([left - 4, top + j * high + 10.7], row.temperature, { anchor: 'end', size, bold: true }),
    ...row.cells.map((c, i) =>
      field([left + i * wide, top + j * high], wide, c.text.replace(/ .*$/, ''), c.level),
    ),
  ])

/** Width of the table; what the levels mean stands beside it where there is room. */
const tables: Readonly<Record<DrawingSize, number>> = { page: 250, column: 172, side: 172 }

function draw(context: Context, of: DrawingSize): string {
  const { manual, words, alt } = context
  const table = manual.charts.heat
  if (!table) return ''
  const width = drawingWidths[of]
  const wide = (tables[of] - 1 - left) / table.humidities.length
  const foot = top + table.rows.length * high
  const [x, y] = of === 'side' ? [1, foot + 7] : [tables[of] + 14, top]
  const plate = of === 'column' ? 20 : 30
  const levels = meanings(context)
  const pitch = of === 'side' ? high + 2 : Math.min(22, (foot - y - high) / (levels.length - 1))
  return sheetOf(
    width,
    of === 'side' ? y + levels.length * pitch : foot + 2,
    alt,
    [
      say([left + (tables[of] - left) / 2, 9], words.humidity, { anchor: 'middle', size }),
      ...table.humidities.map((h, i) =>
        say([left + (i + 0.5) * wide, 21], h, { anchor: 'middle', size: 8.6, bold: true }),
      ),
      say([2, 21], words.airTemperature, { size }),
      ...fields(table, wide),
      ...levels.flatMap((meaning, i) => [
        field([x, y + i * pitch], plate, String(i + 1), i + 1),
        say([x + plate + 5, y + i * pitch + 10.7], meaning, { size: of === 'column' ? 8.4 : size }),
      ]),
    ].join(''),
  )
}

/** Felt temperature by air temperature and humidity, with the four levels of care. */
export const heatIndex = declareDrawing({
  name: 'heat-index',
  labels: wording,
  draw,
  numbers,
})
