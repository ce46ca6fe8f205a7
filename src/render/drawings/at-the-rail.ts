import type { DrawingContext } from './drawing-context.ts'
import { arrow, arrowHead, dashed, dimension, hatch, line, path, stipple, svg, text } from './svg.ts'

const left = 60
const right = 580
const y0 = 150
const rise = 74
const yAt = (x: number): number => y0 - (rise * (x - left)) / (right - left)

const ground = (words: DrawingContext['words']): string =>
  [line([left, y0], [right, y0 - rise], 'line'), hatch([left, y0], [right, y0 - rise]), line([left, y0 + 4], [left - 8, y0 - 46], 'bold'), text([left - 14, y0 - 52], words['rail'] ?? '', 'middle', 15), text([right, y0 - rise - 10], words['outside'] ?? '', 'end', 15)].join('')

/** The heap at the rail, carried up the slope by the blade and spread thin. */
export function pullbackDrawing({ words, q, caption }: DrawingContext): string {
  const heap = `M${left + 4} ${y0 - 1}q16 -30 44 -${(rise * 44) / (right - left) + 1}`
  return svg(620, 200, caption, [
    ground(words),
    path(`${heap}`, 'line'),
    stipple(left + 10, left + 46, (x) => yAt(x) - 12, 10, 7),
    text([left + 12, y0 + 38], `${words['lump']} ${q('creep.volume') === '' ? '' : `(${q('creep.volume')})`}`, 'start', 15),
    line([left + 26, y0 + 22], [left + 26, y0 - 6], 'thin'),
    ...[0, 1, 2].map((i) => {
      const x = left + 80 + i * 95
      return arrow([x, yAt(x) - 22], [x + 70, yAt(x + 70) - 22], 'line')
    }),
    text([left + 200, yAt(left + 200) - 40], words['up'] ?? '', 'middle', 15),
    line([left + 290, yAt(left + 290) - 5], [right - 6, yAt(right - 6) - 5], 'thin', dashed),
    stipple(left + 290, right - 6, (x) => yAt(x) - 7, 6, 12),
    text([right - 110, yAt(right - 110) + 52], words['thin'] ?? '', 'middle', 15),
    line([right - 110, yAt(right - 110) + 36], [right - 110, yAt(right - 110)], 'thin'),
  ].join(''))
}

/** Water that stands behind a ridge, level with its top. */
export function ridgeDrawing({ words, q, caption }: DrawingContext): string {
  const top = y0 - 34
  const reach = left + ((y0 - top) / rise) * (right - left)
  const height = q('rail-ridge.height') === '' ? q('practice.rail-build-up') : q('rail-ridge.height')
  return svg(620, 212, caption, [
    ground(words),
    path(`M${left} ${y0}L${left + 6} ${top}Q${left + 18} ${top - 4} ${left + 30} ${top + 14}L${left + 46} ${yAt(left + 46)}`, 'bold'),
    text([left + 16, top - 10], `${words['ridge']} ${height}`, 'start', 15),
    path(`M${left + 25} ${top + 4}H${reach}`, 'line'),
    ...[0, 1, 2].map((i) => path(`M${left + 60 + i * 50} ${top + 9 + i}h24`, 'thin')),
    text([left + 150, top - 10], words['water'] ?? '', 'start', 15),
    dimension([left, y0 + 30], [reach, y0 + 30]),
    line([reach, top], [reach, y0 + 34], 'thin', dashed),
    text([(left + reach) / 2, y0 + 48], q('ridge.dam-width'), 'middle', 16),
    arrowHead([reach + 40, yAt(reach + 40) - 8], Math.PI - Math.atan2(rise, right - left) * 1, 10),
    line([reach + 40, yAt(reach + 40) - 8], [reach + 130, yAt(reach + 130) - 8], 'thin'),
  ].join(''))
}
