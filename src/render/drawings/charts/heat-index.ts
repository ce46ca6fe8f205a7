import type { DrawingContext } from '../drawing-context.ts'
import { box, hatchBox, type Point, svg, text } from '../svg.ts'

const [left, top, high] = [84, 62, 30]
const levels = [1, 2, 3, 4] as const

/** What a level asks for, in words. */
const meaning = (words: DrawingContext['words'], level: number): string =>
  [words.heat1, words.heat2, words.heat3, words.heat4][level - 1] ?? ''

/** The table in words: each temperature with what it feels like, from dry to moist. */
export function heatIndexDetails({ manual, words }: DrawingContext): string {
  const table = manual.charts.heat
  return (table?.rows ?? [])
    .map(
      (row) =>
        `${row.temperature}: ${row.cells.map((c, i) => `${table?.humidities[i] ?? ''} ${c.text} (${c.level})`).join(', ')}`,
    )
    .concat(levels.map((l) => meaning(words, l)))
    .join('; ')
}

/**
 * A field whose level shows without colour: plain, open strokes, close strokes and heavy type,
 * white on black.
 */
function field([x, y]: Point, wide: number, label: string, level: number): string {
  const size = 16
  const plate = 7 + label.length * 8.4
  if (level >= 4)
    return `<rect class="level-4" x="${x}" y="${y}" width="${wide}" height="${high}" fill="currentColor" stroke="currentColor"/>${text([x + wide / 2, y + 21], label, 'middle', size, 'font-weight="700" style="fill:#fff"')}`
  return [
    level > 1 ? hatchBox([x, y], wide, high, level === 2 ? 11 : 5) : '',
    box([x, y], wide, high, level === 3 ? 'line' : 'thin', `class="level-${level}"`),
    level > 1
      ? `<rect x="${x + (wide - plate) / 2}" y="${y + 5}" width="${plate}" height="${high - 10}" fill="#fff"/>`
      : '',
    text([x + wide / 2, y + 21], label, 'middle', size, level === 3 ? 'font-weight="700"' : ''),
  ].join('')
}

/** Felt temperature by air temperature and humidity, with the four levels of care. */
export function heatIndexDrawing({ manual, words, caption }: DrawingContext): string {
  const table = manual.charts.heat
  if (!table) return ''
  const wide = (392 - left) / table.humidities.length
  const foot = top + table.rows.length * high
  return svg(
    400,
    foot + 20 + levels.length * 31,
    caption,
    [
      text([left + (392 - left) / 2, 20], words.humidity, 'middle', 16),
      ...table.humidities.map((h, i) =>
        text([left + (i + 0.5) * wide, 50], h, 'middle', 16, 'font-weight="700"'),
      ),
      text([8, 50], words.airTemperature, 'start', 16),
      ...table.rows.flatMap((row, j) => [
        text([left - 10, top + j * high + 21], row.temperature, 'end', 16, 'font-weight="700"'),
        ...row.cells.map((c, i) =>
          field([left + i * wide, top + j * high], wide, c.text.replace(/ .*$/, ''), c.level),
        ),
      ]),
      ...levels.flatMap((level, i) => [
        field([8, foot + 16 + i * 31], 58, String(level), level),
        text([76, foot + 37 + i * 31], meaning(words, level), 'start', 16),
      ]),
    ].join(''),
  )
}
