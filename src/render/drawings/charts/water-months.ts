import type { WaterMonth } from '../../../model/manual/charts.ts'
import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { slanted } from '../boxes.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { line, type Point, sheetOf, slab } from '../ink.ts'
import { say } from '../letters.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'

const wording = labels('water-months', {
  ...entries('fairMonth', 'waterDay'),
  loads: holding('count'),
})
type Context = ContextFor<typeof wording>

const size = 8.6

/** Months and their water in words. */
const numbers = ({ manual, words }: Context): string =>
  (manual.charts.waterMonths ?? [])
    .map((m) => {
      const name = m.own ? `${m.name} (${words.fairMonth})` : m.name
      return `${name}: ${m.text}, ${fill(words.loads, { count: m.loads })}`
    })
    .join('; ')

const mostOf = (months: readonly WaterMonth[]): number => Math.max(...months.map((m) => m.water))

/** As large as the water of a month; the month of the fair hatched and outlined. */
const bar = (m: WaterMonth, at: Point, wide: number, high: number): string =>
  (m.own ? slanted(at, [wide, high], 4.6) : '') +
  slab(at, wide, high, { pen: m.own ? 1.8 : 0.8, name: 'column' })

/** Columns side by side, each month's words below it. */
function columns(months: readonly WaterMonth[], width: number, { words }: Context) {
  const [left, right, top, bottom] = [10, width - 10, 32, 142]
  const step = (right - left) / months.length
  const wide = Math.min(50, step * 0.66)
  // Among many months the unit stands below its number.
  const parts = (m: WaterMonth): readonly string[] => {
    const cut = m.text.lastIndexOf(' ')
    return months.length > 7 && cut > 0 ? [m.text.slice(0, cut), m.text.slice(cut + 1)] : [m.text]
  }
  const column = (m: WaterMonth, middle: number): string => {
    const style = { anchor: 'middle', size, bold: m.own } as const
    const high = ((bottom - top) * m.water) / mostOf(months)
    const said = parts(m)
    return [
      bar(m, [middle - wide / 2, bottom - high], wide, high),
      ...said.map((line, i) =>
        say([middle, bottom - high - 5 - (said.length - 1 - i) * 9.4], line, style),
      ),
      say([middle, bottom + 12], m.short, { ...style, size: 9.6 }),
      say([middle, bottom + 23.5], fill(words.loads, { count: m.loads }), {
        ...style,
        bold: false,
      }),
      m.own ? say([middle, bottom + 35], words.fairMonth, style) : '',
    ].join('')
  }
  return {
    height: bottom + 40,
    drawn:
      months.map((m, i) => column(m, left + (i + 0.5) * step)).join('') +
      line([left - 5, bottom], [right + 5, bottom], { pen: 1.6 }),
  }
}

/** Bars below each other, for a narrow place. */
function bars(months: readonly WaterMonth[], width: number, { words }: Context) {
  const [left, top, pitch] = [26, 17, 27]
  const row = (m: WaterMonth, y: number): string => {
    const style = { size, bold: m.own }
    const loads = fill(words.loads, { count: m.loads })
    const said = [m.text, loads, ...(m.own ? [words.fairMonth] : [])].join(', ')
    return [
      say([left - 4, y + 8.6], m.short, { ...style, anchor: 'end' }),
      bar(m, [left, y], ((width - left - 2) * m.water) / mostOf(months), 11),
      say([left, y + 20], said, style),
    ].join('')
  }
  return {
    height: top + months.length * pitch + 2,
    drawn: months.map((m, i) => row(m, top + i * pitch)).join(''),
  }
}

function draw(context: Context, of: DrawingSize): string {
  const { manual, words, alt } = context
  const months = manual.charts.waterMonths
  if (!months) return ''
  const width = drawingWidths[of]
  const { drawn, height } = (of === 'page' ? columns : bars)(months, width, context)
  return sheetOf(width, height, alt, say([2, 10], words.waterDay, { size: 9 }) + drawn)
}

/** For each month a column or a bar, as large as the water that a dry day takes. */
export const waterMonths = declareDrawing({
  name: 'water-months',
  labels: wording,
  draw,
  numbers,
})
