import type { WaterMonth } from '../../../model/manual/charts.ts'
import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { box, hatchBox, line, svg, text } from '../svg.ts'

const wording = labels('water-months', {
  ...entries('fairMonth', 'waterDay'),
  loads: holding('count'),
})
type Context = ContextFor<typeof wording>

const [left, right, top, bottom] = [30, 870, 64, 290]
const size = 16

/** Months and their water in words. */
const numbers = ({ manual, words }: Context): string =>
  (manual.charts.waterMonths ?? [])
    .map((m) => {
      const name = m.own ? `${m.name} (${words.fairMonth})` : m.name
      return `${name}: ${m.text}, ${fill(words.loads, { count: m.loads })}`
    })
    .join('; ')

/** One month with its words below: as high as its water, `most` being the height of the chart. */
function column(m: WaterMonth, middle: number, wide: number, c: Context): string {
  const months = c.manual.charts.waterMonths ?? []
  const most = Math.max(...months.map((other) => other.water))
  const high = ((bottom - top) * m.water) / most
  const at = [middle - wide / 2, bottom - high] as const
  const bold = m.own ? 'font-weight="700"' : ''
  // Among many months the unit stands below its number.
  const cut = m.text.lastIndexOf(' ')
  const parts =
    months.length > 8 && cut > 0 ? [m.text.slice(0, cut), m.text.slice(cut + 1)] : [m.text]
  const loads = fill(c.words.loads, { count: m.loads })
  return [
    box(at, wide, high, m.own ? 'bold' : 'line', `class="column"`),
    m.own ? hatchBox(at, wide, high, 9) : '',
    ...parts.map((said, i) =>
      text([middle, at[1] - 10 - (parts.length - 1 - i) * 17], said, 'middle', size, bold),
    ),
    text([middle, bottom + 24], m.short, 'middle', size + 2, bold),
    text([middle, bottom + 46], loads, 'middle', size),
    m.own ? text([middle, bottom + 70], c.words.fairMonth, 'middle', size, bold) : '',
  ].join('')
}

function draw(context: Context): string {
  const { manual, words, alt } = context
  const months = manual.charts.waterMonths
  if (!months) return ''
  const step = (right - left) / months.length
  const wide = Math.min(96, step * 0.66)
  return svg(
    900,
    376,
    alt,
    [
      text([left, 26], words.waterDay, 'start', 17),
      ...months.map((m, i) => column(m, left + (i + 0.5) * step, wide, context)),
      line([left - 10, bottom], [right + 10, bottom], 'bold'),
    ].join(''),
  )
}

/** One column for each month, as high as the water that a dry day takes. */
export const waterMonths = declareDrawing({
  name: 'water-months',
  labels: wording,
  wide: true,
  draw,
  numbers,
})
