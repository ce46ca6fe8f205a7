import { type Point, text } from './svg.ts'

/**
 * Strokes and fills of drawings whose unit is one point in print. A tint never carries a meaning
 * alone: on a copier and in black it is gone.
 */
export const paper = 'var(--paper,#fff)'
export const tint = 'var(--stone,#ece5d9)'
export const black = 'currentColor'

/** Pens, points. */
export const [hair, fine, firm, bold] = [0.5, 0.8, 1.1, 2]

const n = (x: number): string => String(Math.round(x * 10) / 10)

const pathOf = (points: readonly Point[]): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${n(x)} ${n(y)}`).join('')

export const stroke = (d: string, width: number, more = ''): string =>
  `<path d="${d}" fill="none" stroke="currentColor" stroke-width="${width}" stroke-linejoin="round" ${more}/>`

export const lineOf = (points: readonly Point[], width: number, more = ''): string =>
  stroke(pathOf(points), width, more)

/** A closed shape; without a pen it has no outline. */
export const area = (points: readonly Point[], fill: string, width = 0): string =>
  `<path d="${pathOf(points)}Z" fill="${fill}"${width > 0 ? ` stroke="currentColor" stroke-width="${n(width)}" stroke-linejoin="round"` : ''}/>`

export const rect = (
  [x, y]: Point,
  [wide, high]: Point,
  { fill = 'none', width = 0, round = 0 }: { fill?: string; width?: number; round?: number } = {},
): string =>
  `<rect x="${n(x)}" y="${n(y)}" width="${n(wide)}" height="${n(high)}"${round > 0 ? ` rx="${n(round)}"` : ''} fill="${fill}"${width > 0 ? ` stroke="currentColor" stroke-width="${width}"` : ''}/>`

export const disc = ([x, y]: Point, radius: number, fill: string, width = 0): string =>
  `<circle cx="${n(x)}" cy="${n(y)}" r="${n(radius)}" fill="${fill}"${width > 0 ? ` stroke="currentColor" stroke-width="${width}"` : ''}/>`

/** Dots as one path of round ends without length: a tenth of the bytes of circles. */
const dots = (points: readonly Point[], radius: number): string =>
  points.length === 0
    ? ''
    : `<path d="${points.map(([x, y]) => `M${n(x)} ${n(y)}h0`).join('')}" fill="none" stroke="currentColor" stroke-width="${2 * radius}" stroke-linecap="round"/>`

/** Loose material: dots over a box, scattered by a fixed rule so that the bytes stay the same. */
export function loose([x, y]: Point, [wide, high]: Point, every = 4, radius = 0.55): string {
  const points: Point[] = []
  for (let row = 0; (row + 0.5) * every < high; row++)
    for (let i = 0; (i + 0.5) * every < wide; i++) {
      const shift = (((i * 7 + row * 13) % 10) / 10 - 0.5) * every * 0.6
      const drop = (((i * 3 + row * 7) % 10) / 10 - 0.5) * every * 0.6
      points.push([
        Math.min(x + wide - 0.7, Math.max(x + 0.7, x + (i + 0.5) * every + shift)),
        Math.min(y + high - 0.7, Math.max(y + 0.7, y + (row + 0.5) * every + drop)),
      ])
    }
  return dots(points, radius)
}

/** Strokes that fill a box, rising to the right or falling: tells fields apart without colour. */
export function slanted(
  [x, y]: Point,
  [wide, high]: Point,
  every: number,
  { width = 0.7, falling = false } = {},
): string {
  const strokes: string[] = []
  for (let c = every / 2; c < wide + high; c += every) {
    const [from, to] = [Math.max(0, c - high), Math.min(wide, c)]
    const at = (along: number): string =>
      `${n(x + along)} ${n(falling ? y + high - (c - along) : y + (c - along))}`
    strokes.push(`M${at(from)}L${at(to)}`)
  }
  return stroke(strokes.join(''), width)
}

type Said = {
  readonly anchor?: 'start' | 'middle' | 'end'
  readonly size?: number
  readonly strong?: boolean
  /** With paper around the letters, where a line must pass behind them. */
  readonly clear?: boolean
  /** In the narrow face, as numbers are. */
  readonly narrow?: boolean
}

/** A text of one line. */
export const say = (
  at: Point,
  words: string,
  { anchor = 'start', size = 9, strong = false, clear = false, narrow = false }: Said = {},
): string =>
  text(
    at,
    words,
    anchor,
    size,
    [
      strong || narrow ? 'font-weight="600"' : '',
      narrow ? 'font-family="Barlow Condensed"' : '',
      clear ? 'class="clear"' : '',
    ]
      .filter((part) => part !== '')
      .join(' '),
  )

/** A measure between two lines: hair line, heads, a short stroke across at both ends. */
export function measure(a: Point, b: Point): string {
  const angle = Math.atan2(b[1] - a[1], b[0] - a[0])
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)]
  const tick = ([x, y]: Point): string =>
    lineOf(
      [
        [x + 3 * sin, y - 3 * cos],
        [x - 3 * sin, y + 3 * cos],
      ],
      hair,
    )
  const short = Math.hypot(b[0] - a[0], b[1] - a[1]) < 12
  const heads = short ? '' : head(b, angle, 4) + head(a, angle + Math.PI, 4)
  return lineOf([a, b], hair) + tick(a) + tick(b) + heads
}

/** An arrowhead with its tip at `tip`. */
export function head(tip: Point, angle: number, size: number): string {
  const back = (turn: number): Point => [
    tip[0] - size * Math.cos(angle + turn),
    tip[1] - size * Math.sin(angle + turn),
  ]
  return area([tip, back(0.42), back(-0.42)], black)
}

export const arrowOf = (points: readonly Point[], width: number, size = 6, more = ''): string => {
  const [before, tip] = points.slice(-2) as [Point, Point]
  const angle = Math.atan2(tip[1] - before[1], tip[0] - before[0])
  const end: Point = [tip[0] - size * 0.7 * Math.cos(angle), tip[1] - size * 0.7 * Math.sin(angle)]
  return lineOf([...points.slice(0, -1), end], width, more) + head(tip, angle, size)
}

/** Something drawn around a middle of its own, turned and set in its place. */
export const placed = (
  at: Point,
  body: string,
  { turn = 0, mirrored = false }: { turn?: number; mirrored?: boolean } = {},
): string =>
  `<g transform="translate(${n(at[0])} ${n(at[1])})${turn === 0 ? '' : ` rotate(${n(turn)})`}${mirrored ? ' scale(1 -1)' : ''}">${body}</g>`
