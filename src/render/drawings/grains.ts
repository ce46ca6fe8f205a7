import type { DrawingContext } from './drawing-context.ts'
import { dashed, line, type Point, path, polyline, svg, text } from './svg.ts'

const [left, right, top, bottom] = [74, 860, 34, 330]
/** Grain sizes at the ends of the axis, m. */
const [least, most] = [0.00005, 0.02]

const xOf = (size: number): number =>
  left + ((right - left) * Math.log(size / least)) / Math.log(most / least)
const yOf = (share: number): number => bottom - (bottom - top) * share

/** The grain-size curve of the cushion, fine grains at the left, on a logarithmic axis. */
export function grainsDrawing({ manual, words, caption }: DrawingContext): string {
  const curve = manual.grainCurve
  if (!curve) return ''
  const inside = (x: number): number => Math.min(right, Math.max(left, x))
  const points = [...curve.points]
    .reverse()
    .map((p): Point => [inside(xOf(p.opening)), yOf(p.passing)])
  const decades = [0.0001, 0.001, 0.01].map(
    (size) =>
      line([xOf(size), top], [xOf(size), bottom], 'thin') +
      text([xOf(size), bottom + 20], String(size * 1000), 'middle', 16),
  )
  const shares = [0, 0.2, 0.4, 0.6, 0.8, 1].map(
    (share) =>
      line(
        [left, yOf(share)],
        [right, yOf(share)],
        'thin',
        share === 0 ? '' : 'stroke-opacity="0.45"',
      ) + text([left - 8, yOf(share) + 5], `${share * 100} %`, 'end', 16),
  )
  const names = curve.points
    .filter((p) => xOf(p.opening) <= right)
    .map((p) => text([xOf(p.opening), top - 10], p.name.replace('No. ', '#'), 'middle', 15))
  const sizes = curve.sizes.flatMap(({ name, share, size }) => [
    path(
      `M${left} ${yOf(share).toFixed(1)}H${xOf(size).toFixed(1)}V${bottom}`,
      'line',
      'stroke-dasharray="2 3"',
    ),
    text([xOf(size) + 5, bottom - 8], name, 'start', 15),
  ])
  return svg(
    900,
    382,
    caption,
    [
      ...shares,
      ...decades,
      ...names,
      ...sizes,
      polyline(points, 'bold'),
      ...points.map(
        ([x, y]) =>
          `<circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="3.5" fill="currentColor"/>`,
      ),
      path(`M${xOf(curve.grit).toFixed(1)} ${top}V${bottom}`, 'line', dashed),
      text([xOf(curve.grit) + 6, bottom - 60], `${words.grit}: > ${curve.gritText}`, 'start', 16),
      text([(left + right) / 2, bottom + 44], words.grainSize, 'middle', 16),
      text(
        [16, (top + bottom) / 2],
        words.passes,
        'middle',
        16,
        `transform="rotate(-90 16 ${(top + bottom) / 2})"`,
      ),
    ].join(''),
  )
}
