import type { DrawingContext } from './drawing-context.ts'
import { arrow, arrowHead, dashed, dimension, line, svg, text } from './svg.ts'

/** Strips rolled by truck tires from the rail outward, seen from above. */
export function rollingDrawing({ words, q, caption }: DrawingContext): string {
  const rail = 210
  const band = 26
  const strip = (i: number): string => {
    const y = rail - (i + 1) * band
    return `<rect x="40" y="${y + 2}" width="430" height="${band - 4}" fill="none" stroke="currentColor" stroke-width="1" ${i > 2 ? dashed : ''}/>${arrowHead([462, y + band / 2], 0, 9)}${text([52, y + band / 2 + 5], `${words['lapNumber']} ${i + 1}`, 'start', 15)}`
  }
  return svg(620, 250, caption, [
    line([20, rail], [600, rail], 'bold'),
    text([20, rail + 20], words['rail'] ?? '', 'start', 15),
    text([200, rail + 20], words['start'] ?? '', 'start', 15),
    ...[0, 1, 2, 3, 4].map(strip),
    line([20, 40], [600, 40], 'line'),
    text([20, 32], words['outside'] ?? '', 'start', 15),
    dimension([490, rail], [490, rail - band]),
    text([502, rail - 8], q('roll.move'), 'start', 16),
    arrow([545, rail - 34], [545, 62], 'line'),
    text([538, 112], words['move'] ?? '', 'end', 15),
  ].join(''))
}

/** Passes of the spray bar beside each other, from the outside toward the rail. */
export function waterPassDrawing({ words, q, caption }: DrawingContext): string {
  const passes = [0, 1, 2].map((i) => {
    const y = 46 + i * 50
    return `<rect x="40" y="${y}" width="420" height="60" fill="currentColor" fill-opacity="0.06" stroke="currentColor" stroke-width="1" ${dashed}/>${arrow([250, y + 30], [330, y + 30], 'line')}${text([54, y + 35], `${words['lapNumber']} ${i + 1}`, 'start', 15)}`
  })
  return svg(620, 260, caption, [
    line([20, 36], [600, 36], 'line'), text([20, 28], words['outside'] ?? '', 'start', 15),
    ...passes,
    line([20, 226], [600, 226], 'bold'), text([20, 248], words['rail'] ?? '', 'start', 15),
    dimension([478, 46], [478, 106]), text([488, 82], `${words['bar']} ${q('gear.spray.spray-width')}`, 'start', 15),
    dimension([478, 146], [478, 156]), text([488, 156], `${words['overlap']} ${q('gear.spray.overlap')}`, 'start', 15),
    arrow([570, 108], [570, 214], 'line'),
  ].join(''))
}
