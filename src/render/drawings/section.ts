import type { DrawingContext } from './drawing-context.ts'
import { dashed, dimension, hatch, line, type Point, polyline, stipple, svg, text } from './svg.ts'

const left = 34
const right = 352
const size = 17

/**
 * Surface from the rail up to the outside edge, as pixels; heights are drawn larger by a whole
 * factor.
 */
function slope(width: number, fall: number): { k: number; factor: number; rise: number } {
  const k = (right - left) / width
  const natural = width * fall * k
  const factor = Math.max(1, Math.min(8, Math.round(54 / natural)))
  return { k, factor, rise: natural * factor }
}

/** Thickness of the layers as drawn; in truth they are far thinner against the width. */
const [cushion, base] = [11, 20]

/**
 * Cross-section of the straight or the turn as wanted, with its layers; where levels were taken,
 * with the cross-fall found.
 */
export function sectionDrawing(
  where: 'straights' | 'turns',
  { manual, words, q, caption }: DrawingContext,
): string {
  const g = manual.geometry
  const width = where === 'straights' ? g.widthStraights : g.widthTurns
  const fall = where === 'straights' ? g.crossFallStraights : g.crossFallTurns
  const { factor, rise } = slope(width, fall)
  const y0 = 82 + rise
  const yAt = (x: number): number => y0 - (rise * (x - left)) / (right - left)
  const a: Point = [left, y0]
  const b: Point = [right, y0 - rise]
  const down = (p: Point, d: number): Point => [p[0], p[1] + d]
  const tilt = (-Math.atan2(rise, right - left) * 180) / Math.PI
  const along = (x: number, dy: number, words: string): string =>
    text(
      [x, yAt(x) + dy],
      words,
      'middle',
      size,
      `transform="rotate(${Math.round(tilt * 100) / 100} ${x} ${Math.round((yAt(x) + dy) * 100) / 100})"`,
    )
  const found = q(`levels.${where}`)
  const depth = q('base.depth')
  const basePlace = right - 62
  return svg(
    400,
    y0 + 142,
    caption,
    [
      polyline([a, b], 'bold'),
      polyline([down(a, cushion), down(b, cushion)], 'line'),
      stipple(left, right, yAt, cushion),
      polyline([down(a, cushion + base), down(b, cushion + base)], 'thin'),
      hatch(down(a, cushion + base), down(b, cushion + base)),
      line(a, [right + 24, y0], 'thin', dashed),
      dimension([right + 16, y0], [right + 16, y0 - rise]),
      line([right, y0 - rise], [right + 24, y0 - rise], 'thin'),
      text([right + 44, y0 - rise - 14], `${q(`rise.${where}`)} ${words.raised}`, 'end', size),
      line([left, y0 + 4], [left - 7, y0 - 40], 'bold'),
      text([left - 14, y0 - 48], words.rail, 'middle', size),
      along(left + 120, -12, `${words.cushion} ${q('cushion.depth.target')}`),
      line([basePlace, yAt(basePlace) + cushion + base / 2], [basePlace, y0 + 48], 'thin'),
      text([basePlace, y0 + 64], `${words.base}${depth === '' ? '' : ` ${depth}`}`, 'middle', size),
      text([left, y0 + 64], `${words.crossFall} ${q(`oval.cross-fall.${where}`)}`, 'start', size),
      ...(found === ''
        ? []
        : [text([left, y0 + 84], `${words.foundSlope} ${found}`, 'start', size)]),
      dimension([left, y0 + 98], [right, y0 + 98]),
      text(
        [(left + right) / 2, y0 + 117],
        `${q(`oval.width.${where}`)} ${words.width}`,
        'middle',
        size,
      ),
      text([right + 44, y0 + 137], `${words.heights} ${factor}`, 'end', 15),
    ].join(''),
  )
}
