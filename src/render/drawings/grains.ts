import type { Manual } from '../../model/manual.ts'
import { fill } from '../../model/pattern.ts'
import { entries, holding } from '../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from './drawing.ts'
import { dashed, line, type Point, path, polyline, svg, text } from './svg.ts'

const wording = labels('grains', { ...entries('grainSize', 'passes'), grit: holding('size') })
type Context = ContextFor<typeof wording>
type Curve = NonNullable<Manual['grainCurve']>

const [left, right, top, bottom] = [74, 860, 34, 330]
/** Grain sizes at the ends of the axis, m. */
const [least, most] = [0.00005, 0.02]

const xOf = (size: number): number =>
  left + ((right - left) * Math.log(size / least)) / Math.log(most / least)
const yOf = (share: number): number => bottom - (bottom - top) * share

const decade = (size: number): string =>
  line([xOf(size), top], [xOf(size), bottom], 'thin') +
  text([xOf(size), bottom + 20], String(size * 1000), 'middle', 16)

function shareLine(share: number): string {
  const faint = share === 0 ? '' : 'stroke-opacity="0.45"'
  return (
    line([left, yOf(share)], [right, yOf(share)], 'thin', faint) +
    text([left - 8, yOf(share) + 5], `${share * 100} %`, 'end', 16)
  )
}

const sieveNames = ({ points }: Curve): string[] =>
  points
    .filter((p) => xOf(p.opening) <= right)
    .map((p) => text([xOf(p.opening), top - 10], p.name.replace('No. ', '#'), 'middle', 15.5))

/** D10, D30, D60: which share passes, and down to its size. */
const namedSizes = ({ sizes }: Curve): string[] =>
  sizes.flatMap(({ name, share, size }) => [
    path(
      `M${left} ${yOf(share).toFixed(1)}H${xOf(size).toFixed(1)}V${bottom}`,
      'line',
      'stroke-dasharray="2 3"',
    ),
    text([xOf(size) + 5, bottom - 8], name, 'start', 15.5),
  ])

/** The curve with a point for each sieve; sieves beyond the axis stand at its end. */
function curveOf({ points: sieves }: Curve): string[] {
  const inside = (x: number): number => Math.min(right, Math.max(left, x))
  const points = [...sieves].reverse().map((p): Point => [inside(xOf(p.opening)), yOf(p.passing)])
  return [
    polyline(points, 'bold'),
    ...points.map(
      ([x, y]) => `<circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="3.5" fill="currentColor"/>`,
    ),
  ]
}

function draw({ manual, words, alt }: Context): string {
  const curve = manual.grainCurve
  if (!curve) return ''
  const grit = xOf(curve.grit)
  const middle = (top + bottom) / 2
  return svg(
    900,
    382,
    alt,
    [
      ...[0, 0.2, 0.4, 0.6, 0.8, 1].map(shareLine),
      ...[0.0001, 0.001, 0.01].map(decade),
      ...sieveNames(curve),
      ...namedSizes(curve),
      ...curveOf(curve),
      path(`M${grit.toFixed(1)} ${top}V${bottom}`, 'line', dashed),
      text([grit + 6, bottom - 60], fill(words.grit, { size: curve.gritText }), 'start', 16),
      text([(left + right) / 2, bottom + 44], words.grainSize, 'middle', 16),
      text([18, middle], words.passes, 'middle', 16, `transform="rotate(-90 18 ${middle})"`),
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
  wide: true,
  draw,
  numbers,
})
