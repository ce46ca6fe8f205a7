import type { DrawingContext } from './drawing-context.ts'
import { dashed, dimension, hatch, line, type Point, polyline, stipple, svg, text } from './svg.ts'

const left = 62
const right = 556

/** Surface from the rail up to the outside edge, as pixels; heights are drawn larger by a whole factor. */
export function slope(width: number, fall: number): { k: number; factor: number; rise: number } {
  const k = (right - left) / width
  const natural = width * fall * k
  const factor = Math.max(1, Math.min(8, Math.round(64 / natural)))
  return { k, factor, rise: natural * factor }
}

/** Cross-section of the straight or the turn as wanted. */
export function sectionDrawing(where: 'straights' | 'turns', { manual, words, q, caption }: DrawingContext): string {
  const g = manual.geometry
  const width = where === 'straights' ? g.widthStraights : g.widthTurns
  const fall = where === 'straights' ? g.crossFallStraights : g.crossFallTurns
  const { factor, rise } = slope(width, fall)
  const y0 = 62 + rise
  const cushion = 11
  const yAt = (x: number): number => y0 - (rise * (x - left)) / (right - left)
  const a: Point = [left, y0]
  const b: Point = [right, y0 - rise]
  const down = (p: Point, d: number): Point => [p[0], p[1] + d]
  const height = y0 + 82
  return svg(620, height, caption, [
    polyline([a, b], 'bold'),
    polyline([down(a, cushion), down(b, cushion)], 'line'),
    stipple(left, right, yAt, cushion),
    hatch(down(a, cushion), down(b, cushion)),
    line(a, [right, y0], 'thin', dashed),
    text([right - 8, y0 + 5 - 9], words['level'] ?? '', 'end', 14),
    dimension([right + 14, y0], [right + 14, y0 - rise]),
    text([right + 8, y0 - rise - 12], `${q(`rise.${where}`)} ${words['raised']}`, 'end', 15),
    line([left, y0 + 4], [left - 8, y0 - 40], 'bold'),
    text([left - 12, y0 - 46], words['rail'] ?? '', 'middle', 15),
    text([left + 120, yAt(left + 120) - 12], `${words['cushion']} ${q('cushion.depth.target')}`, 'start', 15),
    text([left + 330, yAt(left + 330) - 12], `${words['crossFall']} ${q(`oval.cross-fall.${where}`)}`, 'middle', 15, `transform="rotate(${(-Math.atan2(rise, right - left) * 180) / Math.PI} ${left + 330} ${yAt(left + 330) - 12})"`),
    dimension([left, y0 + 40], [right, y0 + 40]),
    text([(left + right) / 2, y0 + 58], `${q(`oval.width.${where}`)} ${words['width']}`, 'middle', 15),
    text([right, y0 + 76], `${words['heights']} ${factor}`, 'end', 13),
    text([left + 60, y0 + 30], words['base'] ?? '', 'middle', 14),
  ].join(''))
}
