import type { OvalGeometry } from '../../../model/manual/geometry.ts'
import { area, disc, line, type Point, poly, slab, stroke, tip } from '../ink.ts'
import { say, widthOf } from '../letters.ts'
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
    line([x - 4.6 * ax, y - 4.6 * ay], [x + 4.6 * ax, y + 4.6 * ay], {
      pen: 3.2,
      stroke: 'paper',
    }) +
    [-4.6, 4.6]
      .map((d) =>
        line(
          [x + d * ax - 3 * ay, y + d * ay + 3 * ax],
          [x + d * ax + 3 * ay, y + d * ay - 3 * ax],
          { pen: 1.6 },
        ),
      )
      .join(''),
  drain: ([x, y]) =>
    disc([x, y], 3.1, { fill: 'paper', pen: 0.8 }) +
    stroke(`M${x - 1.8} ${y}h3.6M${x} ${y - 1.8}v3.6`, { pen: 0.6 }),
  water: ([x, y]) =>
    stroke(`M${x} ${y - 4.6}c2 3 3.6 4.6 3.6 6.2a3.6 3.6 0 0 1 -7.2 0c0 -1.6 1.6 -3.2 3.6 -6.2Z`, {
      fill: 'ink',
      stroke: 'none',
    }),
  stand: ([x, y]) => slab([x - 17.5, y - 3.6], 35, 7.2, { pen: 0.8 }),
  stockpile: ([x, y]) =>
    area(
      [
        [x - 6.2, y + 3.6],
        [x, y - 4.6],
        [x + 6.2, y + 3.6],
      ],
      { fill: 'ink', stroke: 'none' },
    ),
}

/**
 * How far outside the track loads are hauled, and how far outside that buildings stand, as drawn,
 * points.
 */
const [beside, behind] = [6.7, 12.4]

/** Around a symbol, the nearest first: straight out, then to either side, then farther. */
function placesAround(at: Point, out: Point, nearest: number): readonly Place[] {
  const along: Point = [-out[1], out[0]]
  const level = Math.abs(out[0]) < 0.4
  const anchors: readonly Place['anchor'][] = level
    ? ['middle', 'start', 'end']
    : [out[0] > 0 ? 'start' : 'end', 'middle']
  const rise = out[1] > 0.4 ? 6.2 : out[1] < -0.4 ? 0 : 2.6
  const places = [0, 8, 16, 25, 34].flatMap((far) =>
    [0, 13, -13, 27, -27, 43, -43, 62, -62].flatMap((aside) =>
      anchors.map((anchor, i): Place & { far: number } => {
        const away = nearest + far
        return {
          at: [
            at[0] + out[0] * away + along[0] * aside,
            at[1] + out[1] * away + along[1] * aside + rise,
          ],
          anchor,
          far: far + Math.abs(aside) + 10 * i,
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
      drawn: line(at, end, { pen: 1.6 }),
      lines: pointsAlong([at, end]),
      labels: [{ ...named([mark.name]), of: at, places: placesAround(at, inward, 10) }],
    }
  }
  const inside = mark.offset === 0
  const off = mark.kind === 'stockpile' ? beside + 4 : mark.kind === 'stand' ? behind : 0
  const p: Point = [at[0] + out[0] * off, at[1] + out[1] * off]
  const half = mark.kind === 'stand' ? 18.5 : 6
  const lines = pointsAlong(
    [
      [p[0] - half, p[1]],
      [p[0] + half, p[1]],
    ],
    2,
  )
  // Inside the rail the numbers of the stations come first. Where its own side is full, a name
  // stands on the other side of the track.
  const [inner, outer] = inside
    ? [listed === undefined ? 17.5 : 12.4, frame.k * g.widthTurns + 8]
    : [frame.k * g.widthTurns + 17.5, 8]
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
    return listedNumber(at, String(i + 1), size) + say([at[0] + 0.9 * size, at[1]], name, { size })
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
      const places = placesAround(middle.at, middle.out, beside + 6)
      return [
        {
          drawn:
            poly(points, { pen: 0.8, name: 'haul', dash: '1 2' }) +
            tip(end, Math.atan2(end[1] - before[1], end[0] - before[0]), 5.7),
          lines: pointsAlong(points),
          labels: words === '' ? [] : [{ lines: [words], size, places }],
        },
      ]
    })
}
