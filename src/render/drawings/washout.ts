import { fill } from '../../model/pattern.ts'
import { entries, holding } from '../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from './drawing.ts'
import { dashed, dimension, hatch, line, path, stipple, svg, text } from './svg.ts'

const wording = labels('washout', {
  ...entries('groove', 'cut', 'lifts', 'base'),
  long: holding('length'),
})
type Context = ContextFor<typeof wording>

const size = 17
/** Edges of the cut. */
const [l, r, top, bottom] = [86, 286, 78, 172]
const middle = (l + r) / 2

/** The cushion beside the cut, the cut, and the groove that was found in it. */
const ground = (): string =>
  [
    line([10, top], [l, top], 'bold'),
    line([r, top], [390, top], 'bold'),
    stipple(10, l, () => top, 10),
    stipple(r, 390, () => top, 10),
    path(`M${l} ${top}V${bottom}H${r}V${top}`, 'bold'),
    hatch([18, top + 12], [l - 4, top + 12], 13),
    hatch([r + 10, top + 12], [390, top + 12], 13),
    hatch([l, bottom], [r, bottom], 13),
    path(`M${l + 6} ${top}L${middle} ${bottom - 3}L${r - 6} ${top}`, 'line', dashed),
  ].join('')

/** The lifts in which it is filled, from below. */
function lifts({ words, q }: Context): string {
  const count = Math.max(1, Math.min(4, Number(q('washout.lifts')) || 1))
  const topOf = (i: number): number => bottom - ((bottom - top) * i) / count
  const all = Array.from({ length: count }, (_, i) => i)
  const halo = 'paint-order="stroke" stroke="#fff" stroke-width="5"'
  return [
    ...all.slice(1).map((i) => line([l, topOf(i)], [r, topOf(i)], 'thin')),
    ...all.map((i) => text([l + 8, topOf(i) - 9], `${words.lifts} ${i + 1}`, 'start', 16, halo)),
  ].join('')
}

const measures = ({ words, q }: Context): string =>
  [
    text([10, 24], words.groove, 'start', size),
    line([92, 26], [l + 40, top + 34], 'thin'),
    dimension([l, top - 14], [r, top - 14]),
    text([middle + 30, top - 22], q('practice.washout.width'), 'middle', size),
    dimension([r + 18, top], [r + 18, bottom]),
    text([r + 28, (top + bottom) / 2 + 30], q('practice.washout.depth'), 'start', size),
    text([middle, bottom + 34], `${words.cut},`, 'middle', size),
    text(
      [middle, bottom + 53],
      fill(words.long, { length: q('practice.washout.length') }),
      'middle',
      size,
    ),
    text([14, bottom - 18], words.base, 'start', size),
  ].join('')

/** The groove as found (dashed) and the square cut with its lifts, in section. */
export const washout = declareDrawing({
  name: 'washout',
  labels: wording,
  draw: (context) =>
    svg(400, 232, context.alt, [ground(), lifts(context), measures(context)].join('')),
  numbers: ({ words, q }) =>
    [
      `${words.groove}: ${q('practice.washout.width')} × ${q('practice.washout.depth')}`,
      fill(words.long, { length: q('practice.washout.length') }),
      `${words.cut}, ${words.lifts}: ${q('washout.lifts')}`,
    ].join('; '),
})
