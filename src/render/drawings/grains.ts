import type { Manual } from '../../model/manual.ts'
import { fill } from '../../model/pattern.ts'
import { entries, holding } from '../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from './drawing.ts'
import { disc, line, type Point, poly, sheetOf, stroke } from './ink.ts'
import { say, widthOf } from './letters.ts'
import { type DrawingSize, drawingWidths } from './sizes.ts'

const wording = labels('grains', { ...entries('grainSize', 'passes'), grit: holding('size') })
type Context = ContextFor<typeof wording>
type Curve = NonNullable<Manual['grainCurve']>

/** Grain sizes at the ends of the axis, m. */
const [least, most] = [0.00005, 0.02]
const size = 8.4

/** Where sizes and shares lie. */
type Room = {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
  readonly x: (size: number) => number
  readonly y: (share: number) => number
}

function roomOf(of: DrawingSize): Room {
  const [left, right] = [29, drawingWidths[of] - 12]
  const [top, bottom] = [29, of === 'page' ? 182 : 160]
  return {
    left,
    right,
    top,
    bottom,
    x: (grain) => left + ((right - left) * Math.log(grain / least)) / Math.log(most / least),
    y: (share) => bottom - (bottom - top) * share,
  }
}

const decade = ({ x, top, bottom }: Room, grain: number): string =>
  line([x(grain), top], [x(grain), bottom], { pen: 'hair' }) +
  say([x(grain), bottom + 11], String(grain * 1000), { anchor: 'middle', size })

const shareLine = ({ left, right, y }: Room, share: number): string =>
  line([left, y(share)], [right, y(share)], share === 0 ? {} : { pen: 0.25 }) +
  say([left - 4, y(share) + 2.8], `${share * 100} %`, { anchor: 'end', size })

/** Names of the sieves, without those for which there is no room beside the last. */
function sieveNames({ points }: Curve, { x, right, top }: Room): string[] {
  let end = right + 12
  return points
    .filter((p) => x(p.opening) <= right)
    .toSorted((a, b) => b.opening - a.opening)
    .flatMap((p) => {
      const name = p.name.replace('No. ', '#')
      const half = widthOf(name, size) / 2
      if (x(p.opening) + half > end) return []
      end = x(p.opening) - half - 3
      return [say([x(p.opening), top - 5], name, { anchor: 'middle', size })]
    })
}

/** D10, D30, D60: which share passes, and down to its size. */
const namedSizes = ({ sizes }: Curve, { x, y, left, bottom }: Room): string[] =>
  sizes.flatMap(({ name, share, size: grain }) => [
    stroke(`M${left} ${y(share).toFixed(1)}H${x(grain).toFixed(1)}V${bottom}`, {
      pen: 0.8,
      dash: '1 1.6',
    }),
    say([x(grain) + 2.5, bottom - 4], name, { size, halo: true }),
  ])

/** The curve with a point for each sieve; sieves beyond the axis stand at its end. */
function curveOf({ points: sieves }: Curve, { x, y, left, right }: Room): string[] {
  const inside = (at: number): number => Math.min(right, Math.max(left, at))
  const points = [...sieves].reverse().map((p): Point => [inside(x(p.opening)), y(p.passing)])
  return [
    poly(points, { pen: 1.7 }),
    ...points.map((p) => disc(p, 1.9, { fill: 'ink', stroke: 'none' })),
  ]
}

/** What is grit, to the right of a line; said on the side of it that has room. */
function gritMark(curve: Curve, { x, y, right, top, bottom }: Room, { words }: Context): string {
  const grit = x(curve.grit)
  const said = fill(words.grit, { size: curve.gritText })
  const isRight = grit + 4 + widthOf(said, size) < right
  return (
    line([grit, top], [grit, bottom], { dash: '4 2.5' }) +
    say([grit + (isRight ? 4 : -4), y(0.14)], said, {
      anchor: isRight ? 'start' : 'end',
      size,
      halo: true,
    })
  )
}

function draw(context: Context, of: DrawingSize): string {
  const { manual, words, alt } = context
  const curve = manual.grainCurve
  if (!curve) return ''
  const room = roomOf(of)
  return sheetOf(
    drawingWidths[of],
    room.bottom + 27,
    alt,
    [
      say([2, 9], words.passes, { size }),
      ...[0, 0.2, 0.4, 0.6, 0.8, 1].map((share) => shareLine(room, share)),
      ...[0.0001, 0.001, 0.01].map((grain) => decade(room, grain)),
      ...sieveNames(curve, room),
      ...namedSizes(curve, room),
      ...curveOf(curve, room),
      gritMark(curve, room, context),
      say([(room.left + room.right) / 2, room.bottom + 23], words.grainSize, {
        anchor: 'middle',
        size,
      }),
    ].join(''),
  )
}

const percent = (share: number): string => `${Math.round(share * 100)} %`

/** Every sieve with the share that passes it. */
const numbers = ({ manual, words }: Context): string =>
  [
    fill(words.grit, { size: manual.grainCurve?.gritText ?? '' }),
    `${words.passes}: ${(manual.grainCurve?.points ?? []).map((p) => `${p.name} ${percent(p.passing)}`).join(', ')}`,
  ].join('; ')

/** The grain-size curve of the cushion, fine grains at the left, on a logarithmic axis. */
export const grains = declareDrawing({
  name: 'grains',
  labels: wording,
  needs: 'sieve.share',
  draw,
  numbers,
})
