import type { HeatTable } from '../../../model/manual/charts.ts'
import { entries } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { box, hatchBox, type Point, svg, text } from '../svg.ts'

const wording = labels(
  'heat-index',
  entries('humidity', 'airTemperature', 'low', 'moderate', 'high', 'veryHigh'),
)
type Context = ContextFor<typeof wording>

const [left, top, high] = [88, 62, 30]
/** Read in the side column of a sheet. */
const size = 18.6

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
  const plate = 7 + label.length * 9.8
  if (level >= 4)
    return `<rect class="level-4" x="${x}" y="${y}" width="${wide}" height="${high}" fill="currentColor" stroke="currentColor"/>${text([x + wide / 2, y + 21], label, 'middle', size, 'font-weight="700" class="on-dark"')}`
  return [
    level > 1 ? hatchBox([x, y], wide, high, level === 2 ? 11 : 5) : '',
    box([x, y], wide, high, level === 3 ? 'line' : 'thin', `class="level-${level}"`),
    level > 1
      ? `<rect x="${x + (wide - plate) / 2}" y="${y + 5}" width="${plate}" height="${high - 10}" fill="#fff"/>`
      : '',
    text([x + wide / 2, y + 21], label, 'middle', size, level === 3 ? 'font-weight="700"' : ''),
  ].join('')
}

/** Temperatures at the left, and what each feels like by humidity. */
const fields = (table: HeatTable, wide: number): string[] =>
  table.rows.flatMap((row, j) => [
    text([left - 10, top + j * high + 21], row.temperature, 'end', size, 'font-weight="700"'),
    ...row.cells.map((c, i) =>
      field([left + i * wide, top + j * high], wide, c.text.replace(/ .*$/, ''), c.level),
    ),
  ])

function draw(context: Context): string {
  const { manual, words, alt } = context
  const table = manual.charts.heat
  if (!table) return ''
  const wide = (392 - left) / table.humidities.length
  const foot = top + table.rows.length * high
  const levels = meanings(context)
  return svg(
    400,
    foot + 20 + levels.length * 31,
    alt,
    [
      text([left + (392 - left) / 2, 20], words.humidity, 'middle', size),
      ...table.humidities.map((h, i) =>
        text([left + (i + 0.5) * wide, 50], h, 'middle', size, 'font-weight="700"'),
      ),
      text([8, 50], words.airTemperature, 'start', size),
      ...fields(table, wide),
      ...levels.flatMap((meaning, i) => [
        field([8, foot + 16 + i * 31], 58, String(i + 1), i + 1),
        text([76, foot + 37 + i * 31], meaning, 'start', size),
      ]),
    ].join(''),
  )
}

/** Felt temperature by air temperature and humidity, with the four levels of care. */
export const heatIndex = declareDrawing({ name: 'heat-index', labels: wording, draw, numbers })
