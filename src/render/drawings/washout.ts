import type { DrawingContext } from './drawing-context.ts'
import { dashed, dimension, hatch, line, path, stipple, svg, text } from './svg.ts'

/** The groove as found (dashed) and the square cut with its lifts, in section. */
export function washoutDrawing({ words, q, caption }: DrawingContext): string {
  const [l, r, top, bottom] = [190, 430, 70, 160]
  const lifts = Math.max(1, Math.min(4, Number(q('washout.lifts')) || 1))
  return svg(620, 250, caption, [
    line([40, top], [l, top], 'bold'), line([r, top], [580, top], 'bold'),
    stipple(40, l, () => top, 10), stipple(r, 580, () => top, 10),
    path(`M${l} ${top}V${bottom}H${r}V${top}`, 'bold'),
    hatch([44, top + 12], [l - 4, top + 12], 14), hatch([r + 8, top + 12], [580, top + 12], 14), hatch([l, bottom], [r, bottom], 14),
    path(`M${l + 8} ${top}L${(l + r) / 2} ${bottom - 3}L${r - 8} ${top}`, 'line', dashed),
    ...Array.from({ length: lifts - 1 }, (_, i) => line([l, bottom - ((bottom - top) * (i + 1)) / lifts], [r, bottom - ((bottom - top) * (i + 1)) / lifts], 'thin')),
    text([l + 10, bottom - 10], `${words['lifts']} 1`, 'start', 15),
    ...(lifts > 1 ? [text([l + 10, bottom - (bottom - top) / lifts - 10], `${words['lifts']} 2`, 'start', 15)] : []),
    text([(l + r) / 2, top - 34], words['groove'] ?? '', 'middle', 15),
    line([(l + r) / 2, top - 28], [(l + r) / 2 - 34, top + 46], 'thin'),
    dimension([l, top - 12], [r, top - 12]),
    text([r + 12, top - 10], q('practice.washout.width'), 'start', 16),
    dimension([r + 22, top], [r + 22, bottom]),
    text([r + 32, (top + bottom) / 2 + 26], q('practice.washout.depth'), 'start', 16),
    text([(l + r) / 2, bottom + 36], `${words['cut']}, ${q('practice.washout.length')} ${words['long']}`, 'middle', 16),
    text([112, bottom + 10], words['base'] ?? '', 'middle', 15),
  ].join(''))
}
