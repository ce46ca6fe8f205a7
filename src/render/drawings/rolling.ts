import type { RollingBlock } from '../../model/manual/charts.ts'
import { fill } from '../../model/pattern.ts'
import { entries, holding } from '../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from './drawing.ts'
import { line, svg, text } from './svg.ts'

const wording = labels('rolling', {
  ...entries('rail', 'lap', 'inside'),
  then: holding('jump'),
  number: holding('lap', 'at'),
})
type Context = ContextFor<typeof wording>

const [left, right, top, rail] = [46, 394, 34, 186]

const print = (x: number, y: number, width: number, height: number, opacity: number): string =>
  `<rect x="${x.toFixed(1)}" y="${y.toFixed(1)}" width="${width.toFixed(1)}" height="${height.toFixed(1)}" fill="currentColor" fill-opacity="${opacity}"/>`

/** Where the prints of all tires lie on a lap, from the rail, m. */
const printsOf = (block: RollingBlock, offset: number): readonly number[] =>
  [0, block.track].flatMap((side) =>
    Array.from(
      { length: block.perSide },
      (_, tire) => offset + side + tire * (block.tread + block.gap),
    ),
  )

function draw({ manual, words, q, alt }: Context): string {
  const block = manual.charts.rolling
  if (!block) return ''
  const { places, tread, width } = block
  const k = (rail - top) / width
  const column = (right - left) / places.length
  // Where many laps make a block, every other place is printed.
  const every = places.length > 8 ? 2 : 1
  const columns = places.map((place, lap) => {
    const x = left + lap * column
    const prints = (of: number, opacity: number): string =>
      printsOf(block, of)
        .map((from) => print(x + 3, rail - (from + tread) * k, column - 6, tread * k, opacity))
        .join('')
    const middle = x + column / 2
    return [
      ...places.slice(0, lap).map((earlier) => prints(earlier.offset, 0.18)),
      prints(place.offset, 0.9),
      text([middle, rail + 20], String(lap + 1), 'middle', 17, 'font-weight="700"'),
      lap % every === 0 ? text([middle, rail + 42], place.at, 'middle', 15) : '',
    ].join('')
  })
  return svg(
    400,
    266,
    alt,
    [
      text([right, top - 14], fill(words.then, { jump: q('roll.jump') }), 'end', 16),
      ...columns,
      line([left - 2, rail], [right, rail], 'bold'),
      text([2, rail + 4], words.rail, 'start', 16),
      text([2, rail + 20], words.lap, 'start', 16),
      text([left, rail + 66], words.inside, 'start', 16),
    ].join(''),
  )
}

const numbers = ({ manual, words }: Context): string =>
  (manual.charts.rolling?.places ?? [])
    .map(({ at }, lap) => fill(words.number, { lap: String(lap + 1), at }))
    .join('; ')

/** The first laps of rolling with truck tires, from the rail outward, to scale across the track. */
export const rolling = declareDrawing({
  name: 'rolling',
  labels: wording,
  needs: 'roll.move',
  draw,
  numbers,
})
