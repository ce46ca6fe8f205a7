import type { OvalGeometry } from '../../../model/manual/geometry.ts'
import { widthOf } from '../lines.ts'
import { arrowHead, line, type Point, polyline, text } from '../svg.ts'
import { aroundPlan, onPlan, type PlanFrame } from './frame.ts'
import { type Label, listedNumber, type Place, pointsAlong } from './label-places.ts'
import { widthAt } from './shape.ts'

type Mark = OvalGeometry['marks'][number]

/**
 * Something drawn: its strokes, points along them for labels to keep clear of, and its own label.
 */
export type PlanPart = {
  readonly drawn: string
  readonly lines: readonly Point[]
  readonly labels: readonly Label[]
}

const symbols: Readonly<
  Record<Exclude<Mark['kind'], 'finish'>, (p: Point, along: Point) => string>
> = {
  // A gap in the fence between two posts.
  gate: ([x, y], [ax, ay]) =>
    `<path d="M${x - 9 * ax} ${y - 9 * ay}L${x + 9 * ax} ${y + 9 * ay}" stroke="var(--paper,#fff)" stroke-width="6"/>` +
    [-9, 9]
      .map((d) =>
        line(
          [x + d * ax - 6 * ay, y + d * ay + 6 * ax],
          [x + d * ax + 6 * ay, y + d * ay - 6 * ax],
          'bold',
        ),
      )
      .join(''),
  drain: ([x, y]) =>
    `<circle cx="${x}" cy="${y}" r="6" fill="var(--paper,#fff)" stroke="currentColor" stroke-width="1.5"/><path d="M${x - 3.5} ${y}h7M${x} ${y - 3.5}v7" stroke="currentColor" stroke-width="1.2"/>`,
  water: ([x, y]) =>
    `<path d="M${x} ${y - 9}c4 6 7 9 7 12a7 7 0 0 1-14 0c0-3 3-6 7-12Z" fill="currentColor"/>`,
  stand: ([x, y]) =>
    `<rect x="${x - 34}" y="${y - 7}" width="68" height="14" fill="none" stroke="currentColor" stroke-width="1.5"/>`,
  stockpile: ([x, y]) =>
    `<path d="M${x - 12} ${y + 7}L${x} ${y - 9}L${x + 12} ${y + 7}Z" fill="currentColor"/>`,
}

/**
 * How far outside the track loads are hauled, and how far outside that buildings stand, as drawn,
 * px.
 */
const [beside, behind] = [13, 24]

/** Around a symbol, the nearest first: straight out, then to either side, then farther. */
function placesAround(at: Point, out: Point, nearest: number): readonly Place[] {
  const along: Point = [-out[1], out[0]]
  const level = Math.abs(out[0]) < 0.4
  const anchors: readonly Place['anchor'][] = level
    ? ['middle', 'start', 'end']
    : [out[0] > 0 ? 'start' : 'end', 'middle']
  const rise = out[1] > 0.4 ? 12 : out[1] < -0.4 ? 0 : 5
  const places = [0, 16, 32, 48, 66].flatMap((far) =>
    [0, 26, -26, 52, -52, 84, -84, 120, -120].flatMap((aside) =>
      anchors.map((anchor, i): Place & { far: number } => {
        const away = nearest + far
        return {
          at: [
            at[0] + out[0] * away + along[0] * aside,
            at[1] + out[1] * away + along[1] * aside + rise,
          ],
          anchor,
          far: far + Math.abs(aside) + 20 * i,
        }
      }),
    ),
  )
  return places.sort((a, b) => a.far - b.far)
}

/** A name on two lines where it stands beside the oval and would run out of the drawing. */
function nameLines(name: string, out: Point): readonly string[] {
  const cut = name.indexOf(' (')
  if (cut > 0) return [name.slice(0, cut), name.slice(cut + 1)]
  const words = name.split(' ')
  if (Math.abs(out[0]) < 0.4 || name.length < 14 || words.length < 2) return [name]
  const half = Math.ceil(words.length / 2)
  return [words.slice(0, half).join(' '), words.slice(half).join(' ')]
}

/** How a mark is named: with its name, or with a number that a list below explains. */
type Naming = { readonly size: number; readonly listed: number | undefined }

function markPart(frame: PlanFrame, mark: Mark, { size, listed }: Naming): PlanPart {
  const { g } = frame
  const named = (lines: readonly string[]): Pick<Label, 'lines' | 'size' | 'isListed'> =>
    listed === undefined ? { lines, size } : { lines: [String(listed)], size, isListed: true }
  const isAtRail = mark.kind === 'finish' || mark.offset === 0
  const offset = isAtRail ? 0 : widthAt(g, mark.station)
  const { at, out, along } = onPlan(frame, mark.station, offset)
  const inward: Point = [-out[0], -out[1]]
  if (mark.kind === 'finish') {
    const end = onPlan(frame, mark.station, g.widthStraights).at
    return {
      drawn: line(at, end, 'bold'),
      lines: pointsAlong([at, end]),
      labels: [{ ...named([mark.name]), of: at, places: placesAround(at, inward, 20) }],
    }
  }
  const inside = mark.offset === 0
  const off = mark.kind === 'stockpile' ? beside + 8 : mark.kind === 'stand' ? behind : 0
  const p: Point = [at[0] + out[0] * off, at[1] + out[1] * off]
  const half = mark.kind === 'stand' ? 36 : 12
  const lines = pointsAlong(
    [
      [p[0] - half, p[1]],
      [p[0] + half, p[1]],
    ],
    4,
  )
  // Inside the rail the numbers of the stations come first. Where its own side is full, a name
  // stands on the other side of the track.
  const [inner, outer] = inside
    ? [listed === undefined ? 34 : 24, frame.k * g.widthTurns + 16]
    : [frame.k * g.widthTurns + 34, 16]
  const sides = [placesAround(at, inward, inner), placesAround(inside ? at : p, out, outer)]
  const places = (inside ? sides : [...sides].reverse()).flat()
  return {
    drawn: symbols[mark.kind](p, along),
    lines,
    labels: [{ ...named(nameLines(mark.name, out)), of: p, places }],
  }
}

/** Gates, drains, water, stands, stockpiles, each with its name or the number of its name. */
export const markParts = (
  frame: PlanFrame,
  size: number,
  areListed: boolean,
): readonly PlanPart[] =>
  frame.g.marks.map((m, i) => markPart(frame, m, { size, listed: areListed ? i + 1 : undefined }))

/** Names of the marks by their numbers, in two columns where they are short enough. */
export function markList(
  { g }: PlanFrame,
  [x, y]: Point,
  width: number,
  size: number,
): { readonly drawn: string; readonly high: number } {
  const names = g.marks.map((m) => m.name)
  const indent = 1.5 * size
  const isShort = names.every((n) => indent + widthOf(n, size) < width / 2)
  const rows = isShort ? Math.ceil(names.length / 2) : names.length
  const high = 1.35 * size
  const drawn = names.map((name, i) => {
    const at: Point = [
      x + (i < rows ? 0 : width / 2) + 0.62 * size,
      y + (i % Math.max(1, rows)) * high,
    ]
    return (
      listedNumber(at, String(i + 1), size) + text([at[0] + 0.9 * size, at[1]], name, 'start', size)
    )
  })
  return { drawn: drawn.join(''), high: rows * high }
}

/**
 * How far around from a stockpile to its gate, else to the nearest gate at the outside, the shorter
 * way, m; undefined without a gate.
 */
function wayToGate({ g }: PlanFrame, pile: Mark): number | undefined {
  const gates = g.marks.filter((m) => m.kind === 'gate' && m.offset > 0)
  const own = gates.filter((m) => m.name === pile.gate)
  const way = (to: number): number =>
    ((((to - pile.station) % g.railLength) + 1.5 * g.railLength) % g.railLength) - g.railLength / 2
  const [nearest] = (own.length > 0 ? own : gates)
    .map((m) => way(m.station))
    .sort((a, b) => Math.abs(a) - Math.abs(b))
  return nearest
}

/** The way of loads from each stockpile to its gate. */
export function haulParts(frame: PlanFrame, words: string, size: number): readonly PlanPart[] {
  const { g, k } = frame
  const edge = Math.max(g.widthStraights, g.widthTurns)
  return g.marks
    .filter((m) => m.kind === 'stockpile')
    .flatMap((pile): PlanPart[] => {
      const along = wayToGate(frame, pile)
      if (along === undefined) return []
      const points = aroundPlan(frame, edge + beside / k, pile.station, along, 24)
      const [before, end] = points.slice(-2) as [Point, Point]
      const middle = onPlan(frame, pile.station + along / 2, edge)
      const places = placesAround(middle.at, middle.out, beside + 12)
      return [
        {
          drawn:
            polyline(points, 'line', 'class="haul" stroke-dasharray="2 4"') +
            arrowHead(end, Math.atan2(end[1] - before[1], end[0] - before[0]), 11),
          lines: pointsAlong(points),
          labels: words === '' ? [] : [{ lines: [words], size, places }],
        },
      ]
    })
}
