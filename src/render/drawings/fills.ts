import { type Color, type Point, type Style, stroke } from './ink.ts'

// Fields are told apart by strokes and dots, which a copier keeps and which need no clipping by the
// browser: what lies in a field is worked out here.

/** A closed field; further outlines are holes in it. */
export type Field = readonly (readonly Point[])[]

/** A box by its left upper corner and its size. */
export const boxField = ([x, y]: Point, [wide, high]: Point): Field => [
  [
    [x, y],
    [x + wide, y],
    [x + wide, y + high],
    [x, y + high],
  ],
]

const round = (x: number): string => String(Math.round(x * 10) / 10)

const turned = ([x, y]: Point, angle: number): Point => [
  x * Math.cos(angle) + y * Math.sin(angle),
  y * Math.cos(angle) - x * Math.sin(angle),
]

/** Where a level line meets the outlines, from left to right. */
function crossings(field: Field, y: number): readonly number[] {
  return field
    .flatMap((outline) =>
      outline.flatMap((a, i) => {
        const b = outline[(i + 1) % outline.length] as Point
        if (a[1] <= y === b[1] <= y) return []
        return [a[0] + ((y - a[1]) * (b[0] - a[0])) / (b[1] - a[1])]
      }),
    )
    .sort((a, b) => a - b)
}

/** The parts of parallel lines that lie in a field; lines of all fields lie in one raster. */
function strokesIn(
  field: Field,
  angle: number,
  every: number,
): readonly { readonly from: Point; readonly to: Point; readonly row: number }[] {
  const level = field.map((outline) => outline.map((p) => turned(p, angle)))
  const ys = level.flat().map((p) => p[1])
  const [first, last] = [Math.ceil(Math.min(...ys) / every), Math.floor(Math.max(...ys) / every)]
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i).flatMap(
    (row) => {
      const y = row * every
      const xs = crossings(level, y)
      return xs.flatMap((x, i) => {
        const end = xs[i + 1]
        if (i % 2 === 1 || end === undefined) return []
        return [{ from: turned([x, y], -angle), to: turned([end, y], -angle), row }]
      })
    },
  )
}

/** Parallel strokes, the angle in degrees from level, clockwise. */
export function hatched(
  field: Field,
  angle: number,
  every: number,
  pen: Style['pen'] = 'hair',
): string {
  const d = strokesIn(field, (angle * Math.PI) / 180, every)
    .map(({ from, to }) => `M${round(from[0])} ${round(from[1])}L${round(to[0])} ${round(to[1])}`)
    .join('')
  return d === '' ? '' : stroke(d, { pen: pen })
}

/** Dots in staggered rows: dashes without length, with round ends. */
export function dotted(field: Field, every: number, size: number): string {
  const d = strokesIn(field, 0, every * 0.87)
    .flatMap(({ from, to, row }) => {
      const shift = row % 2 === 0 ? 0 : every / 2
      const start = Math.ceil((from[0] + size - shift) / every) * every + shift
      return start > to[0] - size
        ? []
        : [`M${round(start)} ${round(from[1])}H${round(to[0] - size)}`]
    })
    .join('')
  return d === '' ? '' : stroke(d, { pen: size, dash: `0 ${every}` })
}

/** A field in ink, paper or the tint of stone, which carries no meaning alone; holes stay open. */
export function filled(field: Field, fill: Color): string {
  const d = field
    .map(
      (o) => `${o.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('')}Z`,
    )
    .join('')
  return stroke(d, { fill, stroke: 'none' })
}

/** The part of a disc between two level lines. */
export function discBetween([x, y]: Point, radius: number, top: number, bottom: number): Field {
  const [from, to] = [Math.max(top, y - radius), Math.min(bottom, y + radius)]
  if (from >= to) return []
  const steps = 24
  const half = (at: number): number => Math.sqrt(Math.max(0, radius ** 2 - (at - y) ** 2))
  const levels = Array.from({ length: steps + 1 }, (_, i) => from + ((to - from) * i) / steps)
  return [
    [
      ...levels.map((at): Point => [x - half(at), at]),
      ...levels.toReversed().map((at): Point => [x + half(at), at]),
    ],
  ]
}
