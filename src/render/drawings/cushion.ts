import type { Manual, MapCell, OvalGeometry } from '../../model/manual.ts'
import type { DrawingContext } from './drawing-context.ts'
import { onOval, ovalPath } from './oval-shape.ts'
import { line, type Point, path, svg, text } from './svg.ts'

const width = 900
const margin = 46

/** Greatest shade of a field that is far too deep: text on it stays readable. */
const darkest = 0.56

type Map = NonNullable<Manual['cushionMap']>

/**
 * How dark a field is: white where far too shallow, the middle grey as wanted, dark where far too
 * deep.
 */
export function shade(
  value: number,
  { target, tolerance }: Pick<Map, 'target' | 'tolerance'>,
): number {
  const off = (value - target) / tolerance
  return ((Math.min(4, Math.max(-4, off)) + 4) / 8) * darkest
}

/** A field of the map as a closed line: along the inner edge, back along the outer. */
function field(cell: MapCell, g: OvalGeometry, px: (s: number, off: number) => Point): string {
  const steps = Math.max(2, Math.ceil((cell.to - cell.from) / (g.railLength / 96)))
  const at = (i: number): number => cell.from + ((cell.to - cell.from) * i) / steps
  const inner = Array.from({ length: steps + 1 }, (_, i) => px(at(i), cell.inner))
  const outer = Array.from({ length: steps + 1 }, (_, i) => px(at(steps - i), cell.outer))
  return `${[...inner, ...outer].map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('')}Z`
}

const fill = (d: string, opacity: number): string =>
  `<path d="${d}" fill="currentColor" fill-opacity="${opacity.toFixed(3)}" stroke="currentColor" stroke-width="0.6"/>`

/** Signs that need no shade to be told apart. */
const sign = (value: number, { target, tolerance }: Map): string =>
  value > target + tolerance + 1e-6 ? '+' : value < target - tolerance - 1e-6 ? '−' : ''

function legend(map: Map, words: DrawingContext['words'], at: Point): string {
  const steps: [number, string][] = [
    [-2, `− ${words.tooShallow}`],
    [0, words.asWanted],
    [2, `+ ${words.tooDeep}`],
  ]
  return steps
    .map(([off, label], i) => {
      const y = at[1] + i * 26
      return `${fill(`M${at[0]} ${y}h34v18h-34Z`, shade(map.target + off * map.tolerance, map))}${text([at[0] + 44, y + 14], label, 'start', 16)}`
    })
    .join('')
}

/**
 * The oval with the depth found in every field of the survey; the track is drawn wider than it is,
 * so that the numbers fit.
 */
export function cushionDrawing({ manual, words, q, caption }: DrawingContext): string {
  const g = manual.geometry
  const map = manual.cushionMap
  if (!map) return ''
  const across = Math.max(1, ...map.cells.map((c) => c.outer))
  // The band is as wide as its numbers need, but leaves room for the middle of the oval.
  const factor = Math.max(1, Math.round((0.5 * g.radius) / across))
  const k = (width - 2 * margin) / (g.straight + 2 * (g.radius + across * factor))
  const c: Point = [width / 2, margin + k * (g.radius + across * factor)]
  const px = (s: number, off: number): Point => {
    const { point } = onOval(g, s, off * factor)
    return [c[0] + k * point[0], c[1] + k * point[1]]
  }
  // With many stations the fields are too short for numbers; the shade and the signs stay.
  const size = Math.min(...map.cells.map((cell) => (cell.to - cell.from) * k)) > 52 ? 15 : 0
  const numbers = map.cells.map((cell) => {
    const station = (cell.from + cell.to) / 2
    const [x, y] = px(station, (cell.inner + cell.outer) / 2)
    const { out } = onOval(g, station, 0)
    // Numbers run along the track, where a field is long, and never upside down.
    const along = (Math.atan2(out[0], -out[1]) * 180) / Math.PI
    const turn = Math.abs(along) > 90 ? along - Math.sign(along) * 180 : along
    const s = sign(cell.value, map)
    return text(
      [x, y + 4.5],
      size > 0 ? `${s}${s === '' ? '' : ' '}${cell.text.replace(/ (in|mm)$/, '')}` : s,
      'middle',
      size > 0 ? size : 15,
      `transform="rotate(${turn.toFixed(1)} ${x.toFixed(1)} ${y.toFixed(1)})"`,
    )
  })
  const start = [px(0, across), px(0, across + 8 / (factor * k))] as const
  return svg(
    width,
    c[1] + k * (g.radius + across * factor) + margin,
    caption,
    [
      ...map.cells.map((cell) => fill(field(cell, g, px), shade(cell.value, map))),
      path(ovalPath(g, 0, 0, k, c), 'bold'),
      ...numbers,
      line(start[0], start[1], 'line'),
      text([start[1][0], start[1][1] + 15], '0', 'middle', 15),
      text(
        [c[0], c[1] - 44],
        `${q('cushion.depth.target')} ± ${q('cushion.depth.tolerance')}`,
        'middle',
        17,
      ),
      legend(map, words, [c[0] - 70, c[1] - 26]),
      text([c[0], c[1] + 74], `${words.wider} ${factor}`, 'middle', 15),
    ].join(''),
  )
}
