import { escapeHtml } from '../text/escape-html.ts'

export type Point = readonly [number, number]

/**
 * Strokes and fields of all drawings, whose unit is one point in print; letters are in `letters.ts`.
 * Three pens, one tint, one brown; neither tint nor brown carries a meaning alone, since both are
 * gone on a copier.
 */
const pens = { hair: 0.5, line: 1, bold: 2 } as const
const colors = {
  ink: 'var(--ink)',
  stone: 'var(--stone)',
  earth: 'var(--earth)',
  paper: 'var(--paper)',
  none: 'none',
} as const

export type Color = keyof typeof colors
export type Style = {
  readonly pen?: keyof typeof pens | number
  readonly fill?: Color
  readonly stroke?: Color
  readonly dash?: string
  /** What a style sheet or a test knows it by. */
  readonly name?: string
}

const n = (x: number): string => String(Math.round(x * 100) / 100)

const widthOf = (pen: Style['pen'] = 'line'): number => (typeof pen === 'number' ? pen : pens[pen])

function look({ pen, fill = 'none', stroke = 'ink', dash, name }: Style): string {
  const dashes =
    (dash === undefined ? '' : ` stroke-dasharray="${dash}"`) +
    (name === undefined ? '' : ` class="${name}"`)
  if (stroke === 'none') return `fill="${colors[fill]}"${dashes}`
  return `fill="${colors[fill]}" stroke="${colors[stroke]}" stroke-width="${n(widthOf(pen))}" stroke-linejoin="round" stroke-linecap="round"${dashes}`
}

/** Path data through points. */
export const through = (points: readonly Point[]): string =>
  points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${n(x)} ${n(y)}`).join('')

export const stroke = (d: string, style: Style = {}): string => `<path d="${d}" ${look(style)}/>`

export const poly = (points: readonly Point[], style: Style = {}): string =>
  stroke(through(points), style)

export const area = (points: readonly Point[], style: Style = {}): string =>
  stroke(`${through(points)}Z`, style)

export const disc = ([x, y]: Point, r: number, style: Style = {}): string =>
  `<circle cx="${n(x)}" cy="${n(y)}" r="${n(r)}" ${look(style)}/>`

export const slab = ([x, y]: Point, w: number, h: number, style: Style = {}, round = 0): string =>
  `<rect x="${n(x)}" y="${n(y)}" width="${n(w)}" height="${n(h)}" rx="${n(round)}" ${look(style)}/>`

/** Moves what is drawn around 0, 0 to a place; `turn` in degrees, `mirrored` upside down. */
export function placed(
  [x, y]: Point,
  body: string,
  { scale = 1, turn = 0, mirrored = false } = {},
): string {
  const turned = turn === 0 ? '' : ` rotate(${n(turn)})`
  const scaled = mirrored
    ? ` scale(${n(scale)} ${n(-scale)})`
    : scale === 1
      ? ''
      : ` scale(${n(scale)})`
  return `<g transform="translate(${n(x)} ${n(y)})${turned}${scaled}">${body}</g>`
}

export const tip = (at: Point, angle: number, size = 5): string => {
  const back = (turn: number): Point => [
    at[0] - size * Math.cos(angle + turn),
    at[1] - size * Math.sin(angle + turn),
  ]
  return area([at, back(0.42), back(-0.42)], { fill: 'ink', pen: 0.3 })
}

export const line = (from: Point, to: Point, style: Style = {}): string => poly([from, to], style)

/** An arrow through points, with its head at the last. */
export function arrowAlong(points: readonly Point[], style: Style = {}, size = 6): string {
  const [from, to] = points.slice(-2)
  if (!from || !to) return ''
  const angle = Math.atan2(to[1] - from[1], to[0] - from[0])
  const end: Point = [to[0] - size * 0.7 * Math.cos(angle), to[1] - size * 0.7 * Math.sin(angle)]
  return poly([...points.slice(0, -1), end], style) + tip(to, angle, size)
}

export const arrow = (from: Point, to: Point, style: Style = {}, size = 6): string =>
  arrowAlong([from, to], style, size)

/** A measure between two points: a hair line with a cross stroke at both ends. */
export function measure(a: Point, b: Point): string {
  const t = Math.atan2(b[1] - a[1], b[0] - a[0])
  const cross = ([x, y]: Point): string =>
    poly(
      [
        [x - 3 * Math.sin(t), y + 3 * Math.cos(t)],
        [x + 3 * Math.sin(t), y - 3 * Math.cos(t)],
      ],
      { pen: 0.7 },
    )
  const heads =
    Math.hypot(b[0] - a[0], b[1] - a[1]) < 14 ? '' : tip(b, t, 4) + tip(a, t + Math.PI, 4)
  return poly([a, b], { pen: 'hair' }) + cross(a) + cross(b) + heads
}

/** A hair line from words to the thing that they name, with a dot on it. */
export const leader = (from: Point, to: Point): string =>
  poly([from, to], { pen: 'hair' }) + disc(to, 1.2, { fill: 'ink', pen: 0.2 })

/** Done right, in ink: a sign that is no sign of safety. */
export const right = ([x, y]: Point, size = 8): string =>
  stroke(`M${n(x)} ${n(y)}l${n(size * 0.35)} ${n(size * 0.4)}l${n(size * 0.65)} ${n(-size)}`, {
    pen: 1.8,
  })

export const wrong = ([x, y]: Point, size = 8, pen = 2): string =>
  stroke(
    `M${n(x - size / 2)} ${n(y - size / 2)}l${n(size)} ${n(size)}M${n(x + size / 2)} ${n(y - size / 2)}l${n(-size)} ${n(size)}`,
    { pen },
  )

/** Dots of one size as one path of round ends without length, a tenth of the bytes of circles. */
export const dots = (points: readonly Point[], r = 0.55): string =>
  stroke(points.map(([x, y]) => `M${n(x)} ${n(y)}h0`).join(''), { pen: 2 * r })

/** A fixed scatter between 0 and 1, so that the same drawing has the same bytes. */
export function scatter(seed: number): () => number {
  let s = (seed * 2654435761) % 4294967296
  return () => {
    s = (s * 1664525 + 1013904223) % 4294967296
    return s / 4294967296
  }
}

/** Loose material between two edges; about one grain for each `every` square points. */
export function loose(
  x0: number,
  x1: number,
  top: (x: number) => number,
  bottom: (x: number) => number,
  { every = 11, seed = 7 } = {},
): string {
  const random = scatter(seed)
  const step = Math.sqrt(every)
  const grains: Point[] = []
  for (let x = x0 + step / 2; x < x1; x += step)
    for (let y = top(x) + step * 0.5; y < bottom(x) - 0.5; y += step)
      grains.push([
        x + (random() - 0.5) * step * 0.8,
        Math.min(bottom(x) - 0.8, y + (random() - 0.5) * step * 0.6),
      ])
  return dots(grains)
}

/** Solid ground below an edge: the line, and slanting strokes under it. */
export function solid(edge: readonly Point[], depth = 7, every = 4): string {
  const strokes = edge.slice(1).flatMap((b, i) => {
    const a = edge[i] ?? b
    const count = Math.max(1, Math.round(Math.hypot(b[0] - a[0], b[1] - a[1]) / every))
    return Array.from({ length: count }, (_, j) => {
      const at = (j + 0.7) / count
      return `M${n(a[0] + (b[0] - a[0]) * at)} ${n(a[1] + (b[1] - a[1]) * at)}l${n(-depth * 0.55)} ${n(depth)}`
    })
  })
  return poly(edge) + stroke(strokes.join(''), { pen: 'hair' })
}

/** Slanting strokes inside any outline. */
export function hatched(outline: readonly Point[], every = 4, pen = 0.6): string {
  const [xs, ys] = [outline.map((p) => p[0]), outline.map((p) => p[1])]
  const [x0, x1] = [Math.min(...xs), Math.max(...xs)]
  const [y0, y1] = [Math.min(...ys), Math.max(...ys)]
  const strokes: string[] = []
  // Each slanting line is cut to the outline where it crosses its edges.
  for (let c = x0 + y0 + every; c < x1 + y1; c += every) {
    const at = outline.flatMap(([ax, ay], i): number[] => {
      const [bx, by] = outline[(i + 1) % outline.length] ?? [ax, ay]
      const [da, db] = [ax + ay - c, bx + by - c]
      if (da > 0 === db > 0) return []
      return [ax + ((bx - ax) * da) / (da - db)]
    })
    at.sort((a, b) => a - b)
    for (let i = 0; i + 1 < at.length; i += 2) {
      const [from = 0, to = 0] = [at[i], at[i + 1]]
      strokes.push(`M${n(from)} ${n(c - from)}L${n(to)} ${n(c - to)}`)
    }
  }
  return stroke(strokes.join(''), { pen })
}

/**
 * Limbs and hands as thick round strokes with one common outline: first all in ink, then all in
 * paper, a little thinner.
 */
export function limbs(
  list: readonly { readonly at: readonly Point[]; readonly wide: number; readonly fill?: Color }[],
  outline = 1,
): string {
  const draw = (points: readonly Point[], pen: number, color: Color): string =>
    poly(points, { pen, stroke: color })
  return (
    list.map(({ at, wide }) => draw(at, wide + 2 * outline, 'ink')).join('') +
    list.map(({ at, wide, fill = 'paper' }) => draw(at, wide, fill)).join('')
  )
}

/** The whole drawing. Its class tells the style sheet its width in points (`drawingWidths`). */
export const sheetOf = (width: number, height: number, label: string, body: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" role="img" aria-label="${escapeHtml(label)}" viewBox="0 0 ${n(width)} ${n(height)}" class="wide-${n(width)}" font-family="inherit">${body}</svg>`
