import { escapeHtml } from '../text/escape-html.ts'

const n = (x: number): string => String(Math.round(x * 100) / 100)

export type Point = readonly [number, number]

/** Paper around a line; three pens for drawings with a point for their unit, three for those drawn about twice as large. */
type Stroke = 'halo' | 'hair' | 'pen' | 'heavy' | 'thin' | 'line' | 'bold'
const widths: Readonly<Record<Stroke, number>> = {
  halo: 5,
  hair: 0.5,
  pen: 1,
  heavy: 2,
  thin: 0.8,
  line: 1.5,
  bold: 3,
}

/** Paper around letters that lie on something drawn. */
export const halo = 'paint-order="stroke" stroke="var(--paper,#fff)" stroke-width="3"'

/** A path through points, or any path data. */
export const path = (d: string, stroke: Stroke, more = ''): string =>
  `<path d="${d}" fill="none" stroke="${stroke === 'halo' ? 'var(--paper,#fff)' : 'currentColor'}" stroke-width="${widths[stroke]}" ${more}/>`

export const polyline = (points: readonly Point[], stroke: Stroke, more = ''): string =>
  path(points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${n(x)} ${n(y)}`).join(''), stroke, more)

export const line = (a: Point, b: Point, stroke: Stroke, more = ''): string =>
  polyline([a, b], stroke, more)

export const dashed = 'stroke-dasharray="6 4"'

const fractions: Readonly<Record<string, string>> = {
  '1/8': '⅛',
  '1/4': '¼',
  '3/8': '⅜',
  '1/2': '½',
  '5/8': '⅝',
  '3/4': '¾',
  '7/8': '⅞',
}

/** Fractions as one letter, close to the number before them. */
const withFractions = (words: string): string =>
  words.replace(
    /(\d )?(?<!\d)([1357]\/[248])(?!\d)/g,
    (all, whole: string | undefined, part: string) => {
      const letter = fractions[part]
      return letter === undefined ? all : `${(whole ?? '').trim()}${letter}`
    },
  )

export const text = (
  at: Point,
  words: string,
  anchor: 'start' | 'middle' | 'end' = 'start',
  size = 15,
  more = '',
): string =>
  `<text x="${n(at[0])}" y="${n(at[1])}" text-anchor="${anchor}" font-size="${size}" fill="currentColor" ${more}>${escapeHtml(withFractions(words))}</text>`

/**
 * A solid arrowhead with its tip at `tip`, pointing along `angle` (radians, clockwise from the
 * right).
 */
export function arrowHead(tip: Point, angle: number, size = 9): string {
  const back = (turn: number): Point => [
    tip[0] - size * Math.cos(angle + turn),
    tip[1] - size * Math.sin(angle + turn),
  ]
  return `<path d="M${[tip, back(0.42), back(-0.42)].map(([x, y]) => `${n(x)} ${n(y)}`).join('L')}Z" fill="currentColor"/>`
}

export const arrow = (from: Point, to: Point, stroke: Stroke = 'line', more = ''): string =>
  line(from, to, stroke, more) + arrowHead(to, Math.atan2(to[1] - from[1], to[0] - from[0]))

/** A dimension line with heads at both ends. */
export const dimension = (a: Point, b: Point, head = 7): string =>
  line(a, b, 'thin') +
  arrowHead(b, Math.atan2(b[1] - a[1], b[0] - a[0]), head) +
  arrowHead(a, Math.atan2(a[1] - b[1], a[0] - b[0]), head)

/** Short slanting strokes below a line: solid ground. */
export function hatch(from: Point, to: Point, depth = 12, every = 11): string {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1])
  const count = Math.floor(length / every)
  const d = Array.from({ length: count + 1 }, (_, i) => {
    const x = from[0] + ((to[0] - from[0]) * i) / Math.max(1, count)
    const y = from[1] + ((to[1] - from[1]) * i) / Math.max(1, count)
    return `M${n(x)} ${n(y)}l${-depth * 0.7} ${depth}`
  }).join('')
  return path(d, 'thin')
}

/** Slanting strokes that fill a box: tells a field apart without colour. */
export function hatchBox([x, y]: Point, w: number, h: number, every: number): string {
  const strokes: string[] = []
  for (let c = every; c < w + h; c += every) {
    const [from, to] = [Math.max(0, c - h), Math.min(w, c)]
    strokes.push(`M${n(x + from)} ${n(y + c - from)}L${n(x + to)} ${n(y + c - to)}`)
  }
  return path(strokes.join(''), 'thin')
}

/** A box; dimensions in pixels. */
export const box = ([x, y]: Point, w: number, h: number, stroke: Stroke, more = ''): string =>
  `<rect x="${n(x)}" y="${n(y)}" width="${n(w)}" height="${n(h)}" fill="none" stroke="currentColor" stroke-width="${widths[stroke]}" ${more}/>`

/**
 * Scattered dots: loose material. Placed by a fixed rule, so that the same drawing has the same
 * bytes.
 */
export function stipple(
  x0: number,
  x1: number,
  yAt: (x: number) => number,
  depth: number,
  every = 9,
): string {
  const dots: string[] = []
  for (let x = x0 + 4, i = 0; x < x1 - 2; x += every, i++)
    dots.push(
      `<circle cx="${n(x)}" cy="${n(yAt(x) + depth * (0.28 + 0.44 * ((i * 7) % 5) * 0.25))}" r="0.9" fill="currentColor"/>`,
    )
  return dots.join('')
}

export function svg(width: number, height: number, label: string, body: string): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label="${escapeHtml(label)}" viewBox="0 0 ${n(width)} ${n(height)}" font-family="inherit">${body}</svg>`
}
