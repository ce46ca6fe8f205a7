import type { DrawingContext } from '../drawing-context.ts'
import { box, hatchBox, line, svg, text } from '../svg.ts'

const [left, right, top, bottom] = [30, 870, 64, 290]

/** Months and their water in words. */
export const waterMonthsDetails = ({ manual, words }: DrawingContext): string =>
  (manual.charts.waterMonths ?? [])
    .map(
      (m) =>
        `${m.name}${m.own ? ` (${words.fairMonth})` : ''}: ${m.text}, ${words.loads} ${m.loads}`,
    )
    .join('; ')

/** One column for each month, as high as the water that a dry day takes. */
export function waterMonthsDrawing({ manual, words, caption }: DrawingContext): string {
  const months = manual.charts.waterMonths
  if (!months) return ''
  const most = Math.max(...months.map((m) => m.water))
  const step = (right - left) / months.length
  const wide = Math.min(96, step * 0.66)
  const size = months.length > 8 ? 13 : 16
  const columns = months.map((m, i) => {
    const middle = left + (i + 0.5) * step
    const high = ((bottom - top) * m.water) / most
    const at = [middle - wide / 2, bottom - high] as const
    return [
      box(at, wide, high, m.own ? 'bold' : 'line', `class="column"`),
      m.own ? hatchBox(at, wide, high, 9) : '',
      text([middle, at[1] - 10], m.text, 'middle', size, m.own ? 'font-weight="700"' : ''),
      text([middle, bottom + 24], m.short, 'middle', size + 2, m.own ? 'font-weight="700"' : ''),
      text([middle, bottom + 46], `${words.loads} ${m.loads}`, 'middle', size),
      m.own
        ? text([middle, bottom + 70], words.fairMonth, 'middle', size, 'font-weight="700"')
        : '',
    ].join('')
  })
  return svg(
    900,
    376,
    caption,
    [
      text([left, 26], words.waterDay, 'start', 17),
      ...columns,
      line([left - 10, bottom], [right + 10, bottom], 'bold'),
    ].join(''),
  )
}
