import { fill } from '../../model/pattern.ts'
import { entries, holding } from '../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from './drawing.ts'
import { dashed, dimension, hatch, line, path, stipple, svg, text } from './svg.ts'

const wording = labels('washout', {
  ...entries('groove', 'cut', 'lifts', 'base'),
  long: holding('length'),
})

const size = 17

/** The groove as found (dashed) and the square cut with its lifts, in section. */
function draw({ words, q, alt }: ContextFor<typeof wording>): string {
  const [l, r, top, bottom] = [86, 286, 78, 172]
  const lifts = Math.max(1, Math.min(4, Number(q('washout.lifts')) || 1))
  const liftTop = (i: number): number => bottom - ((bottom - top) * i) / lifts
  return svg(
    400,
    232,
    alt,
    [
      line([10, top], [l, top], 'bold'),
      line([r, top], [390, top], 'bold'),
      stipple(10, l, () => top, 10),
      stipple(r, 390, () => top, 10),
      path(`M${l} ${top}V${bottom}H${r}V${top}`, 'bold'),
      hatch([18, top + 12], [l - 4, top + 12], 13),
      hatch([r + 10, top + 12], [390, top + 12], 13),
      hatch([l, bottom], [r, bottom], 13),
      path(`M${l + 6} ${top}L${(l + r) / 2} ${bottom - 3}L${r - 6} ${top}`, 'line', dashed),
      ...Array.from({ length: lifts - 1 }, (_, i) =>
        line([l, liftTop(i + 1)], [r, liftTop(i + 1)], 'thin'),
      ),
      ...Array.from({ length: lifts }, (_, i) =>
        text(
          [l + 8, liftTop(i) - 9],
          `${words.lifts} ${i + 1}`,
          'start',
          16,
          'paint-order="stroke" stroke="#fff" stroke-width="5"',
        ),
      ),
      text([10, 24], words.groove, 'start', size),
      line([92, 26], [l + 40, top + 34], 'thin'),
      dimension([l, top - 14], [r, top - 14]),
      text([(l + r) / 2 + 30, top - 22], q('practice.washout.width'), 'middle', size),
      dimension([r + 18, top], [r + 18, bottom]),
      text([r + 28, (top + bottom) / 2 + 30], q('practice.washout.depth'), 'start', size),
      text([(l + r) / 2, bottom + 34], `${words.cut},`, 'middle', size),
      text(
        [(l + r) / 2, bottom + 53],
        fill(words.long, { length: q('practice.washout.length') }),
        'middle',
        size,
      ),
      text([14, bottom - 18], words.base, 'start', size),
    ].join(''),
  )
}

export const washout = declareDrawing({ name: 'washout', labels: wording, draw })
