import type { PassPattern } from '../../../model/manual/charts.ts'
import { area, disc, type Point, placed, poly, slab, tip } from '../ink.ts'
import { say } from '../letters.ts'
import { widthAt } from '../oval/shape.ts'
import { along, beside, heading, spot, type WideFrame } from './frame.ts'
import type { Lanes } from './lanes.ts'
import { machineOf } from './machine-of.ts'
import { type Lap, lapOf, type Route } from './route.ts'

/** All that a pattern on the oval is drawn from. */
export type Ring = {
  readonly frame: WideFrame
  readonly pattern: PassPattern
  readonly lanes: Lanes
  readonly route: Route
  /** Across a page, or in a narrow column. */
  readonly full: boolean
}

const lapsOf = ({ frame: { g }, lanes, route }: Ring): readonly Lap[] =>
  Array.from({ length: lanes.count }, (_, i) => lapOf(g, lanes, route, i))

/** The laps that are done, and how far the machine has come in the one after them. */
function progress({ frame: { g }, lanes, route, full }: Ring): { done: number; at: number } {
  const done = Math.min(lanes.count - 1, lanes.count > 5 ? 2 : 1)
  const place = g.straight * (full ? 0.72 : 0.86)
  const ahead = (((place - route.start) % g.railLength) + g.railLength) % g.railLength
  return { done, at: route.start + ahead + (ahead < 1.5 * route.shift ? g.railLength / 2 : 0) }
}

/** Ground that is worked already: a tint under the lines, which say the same. */
function worked(ring: Ring): string {
  const { frame, lanes } = ring
  const half = lanes.covers / 2
  const strip = (lap: Lap, to: number): string =>
    area(
      [
        ...along(frame, lap.from, to, (s) => lap.at(s) - half),
        ...[...along(frame, lap.from, to, (s) => lap.at(s) + half)].reverse(),
      ],
      { fill: 'stone', stroke: 'none' },
    )
  const { done, at } = progress(ring)
  return lapsOf(ring)
    .slice(0, done + 1)
    .map((lap, i) => strip(lap, i < done ? lap.to : at))
    .join('')
}

/** From lap to lap where they lie closest, points. */
function pitchOf({ frame: { g, k, wider }, lanes }: Ring): number {
  const reach = Math.min(lanes.reach(g.straight / 2), lanes.reach(g.straight + 1))
  return lanes.count < 2 ? 20 : ((reach - lanes.covers) * k * wider) / (lanes.count - 1)
}

/** The middles of all laps, thick where the machine has been. */
function tracks(ring: Ring): string {
  const { frame, full } = ring
  const { done, at } = progress(ring)
  const isTight = pitchOf(ring) < 5
  const [thin, thick] = isTight ? [0.35, 0.8] : full ? [0.6, 1.6] : [0.45, 1.2]
  return lapsOf(ring)
    .map((lap, i) => {
      const points = along(frame, lap.from, lap.to, lap.at)
      const whole = poly(points, { pen: i < done ? thick : thin, name: 'lap' })
      if (i !== done) return whole
      return whole + poly(along(frame, lap.from, at - (full ? 6 : 12), lap.at), { pen: thick })
    })
    .join('')
}

/** Stations at which all laps are numbered: where no gate is near. */
function numberStations({ frame: { g }, route }: Ring): readonly number[] {
  const arc = Math.PI * g.radius
  const busy = [route.entry?.station, route.exit?.station, route.start, route.start + route.shift]
  const clearance = (s: number): number =>
    Math.min(
      ...busy
        .filter((b) => b !== undefined)
        .map((b) => Math.abs(((b - s + 1.5 * g.railLength) % g.railLength) - g.railLength / 2)),
    )
  const [home = 0] = [0.3, 0.4, 0.5, 0.6]
    .map((share) => share * g.straight)
    .sort((a, b) => clearance(b) - clearance(a))
  return [home, g.straight + arc / 2, 2 * g.straight + 1.5 * arc]
}

const numberSize = 8.4

/** Numbers of the laps, as many as have room, and heads that say which way they are driven. */
function numbers(ring: Ring): string {
  const { frame, lanes, full } = ring
  const { k } = frame
  const pitch = pitchOf(ring)
  const last = lanes.count - 1
  const every = Math.ceil(6.8 / pitch)
  const tight = pitch * last < 5
  const shown = (i: number): boolean =>
    i === last || (!tight && i % every === 0 && last - i >= every)
  const name = (i: number): string => (tight && last > 0 ? `1–${last + 1}` : String(i + 1))
  const size = Math.max(2.4, Math.min(full ? 4.6 : 3.2, pitch * 0.6))
  const marks = numberStations(ring).flatMap((station) =>
    Array.from({ length: lanes.count }, (_, i) => {
      const at = lanes.middle(i, station)
      const [x, y] = spot(frame, station, at)
      const number = shown(i)
        ? say([x, y + 2.9], name(i), {
            anchor: 'middle',
            size: numberSize,
            narrow: true,
            halo: true,
          })
        : ''
      const next = station + (full ? 10 : 8) / k
      return number + tip(spot(frame, next, lanes.middle(i, next)), heading(frame, next), size)
    }),
  )
  return marks.join('')
}

/** A gap in the outer fence between two posts. */
function gap({ frame, full }: Ring, station: number): string {
  const { g, k } = frame
  const half = full ? 8 : 5
  const edge = (d: number, away: number): Point =>
    beside(frame, station + d / k, widthAt(g, station + d / k), away)
  return (
    poly([edge(-half, 0), edge(half, 0)], { pen: 4, stroke: 'paper' }) +
    [-half, half]
      .map((d) => poly([edge(d, -half / 2), edge(d, half / 2)], { pen: 'bold' }))
      .join('')
  )
}

/** The dashed ways in and out, which are not part of any lap. */
export function ways({ frame, lanes, route, full }: Ring): {
  readonly in: readonly Point[]
  readonly out: readonly Point[]
} {
  const { g, k } = frame
  const { entry, exit, start } = route
  const aside = (full ? 8 : 5) / k
  const edge = (station: number, away: number): Point =>
    beside(frame, station, widthAt(g, station), away)
  const to = start + (entry && start < entry.station ? g.railLength : 0)
  const lastLane = lanes.count - 1
  const out = exit?.station ?? 0
  // Where the last lap runs close to the fence, it is left late: the way stays clear of the posts.
  const inside = (widthAt(g, out) - lanes.middle(lastLane, out)) * k * frame.wider
  const before = out - Math.min(full ? 26 : 12, inside * 1.2) / k
  return {
    in: entry
      ? [
          edge(entry.station - aside, full ? 14 : 10),
          edge(entry.station, 0),
          ...along(frame, entry.station, to, (s) => {
            const far = Math.max(0, 1 - (to - s) / Math.min(35, to - entry.station))
            return (widthAt(g, s) - 1) * (1 - far) + lanes.middle(0, start) * far
          }).slice(1),
        ]
      : [],
    out: exit
      ? [
          spot(frame, before, lanes.middle(lastLane, before)),
          edge(exit.station, 0),
          edge(exit.station + aside, full ? 14 : 10),
        ]
      : [],
  }
}

function machine(ring: Ring): string {
  const { frame, pattern, full } = ring
  const { done, at } = progress(ring)
  const lap = lapsOf(ring)[done]
  if (!lap) return ''
  return placed(
    spot(frame, at, lap.at(at)),
    machineOf(pattern).draw(frame.k * frame.wider * (full ? 1 : 1.7), full ? 0.55 : 0.5),
    {
      turn: (heading(frame, at) * 180) / Math.PI,
      mirrored: frame.g.direction === 'clockwise',
    },
  )
}

/** Where the last lap ends. */
export const endOf = ({ frame, lanes, route }: Ring): Point => {
  const at = route.start + route.shift * 0.95
  return spot(frame, at, lanes.middle(lanes.count - 1, at))
}

export const startOf = ({ frame, lanes, route }: Ring): Point =>
  spot(frame, route.start, lanes.middle(0, route.start))

/** The bracket along which machines move over, outside the fence. */
export const bracketOf = ({ frame, route }: Ring): readonly [Point, Point] => {
  const at = (s: number): Point => beside(frame, s, widthAt(frame.g, s), 5)
  return [at(route.start), at(route.start + route.shift)]
}

function bracket(ring: Ring): string {
  const [a, b] = bracketOf(ring)
  const turn = heading(ring.frame, ring.route.start)
  const post = ([x, y]: Point): string =>
    poly(
      [
        [x - 3 * Math.sin(turn), y + 3 * Math.cos(turn)],
        [x + 3 * Math.sin(turn), y - 3 * Math.cos(turn)],
      ],
      { pen: 1.8 },
    )
  return poly([a, b], { pen: 1.8 }) + post(a) + post(b)
}

/** The track with all laps, gates, start and end, and the machine in its lap; no words. */
export function drawRing(ring: Ring): string {
  const { frame, route, full } = ring
  const { g } = frame
  const way = ways(ring)
  const gates = [...new Set([route.entry, route.exit])].filter((m) => m !== undefined)
  const outTip = way.out.slice(-2) as [Point, Point]
  const [ex, ey] = endOf(ring)
  return [
    worked(ring),
    poly(
      along(frame, 0, g.railLength, (s) => widthAt(g, s)),
      { pen: 'line' },
    ),
    poly(
      along(frame, 0, g.railLength, () => 0),
      { pen: pitchOf(ring) < 5 ? 1.2 : full ? 'bold' : 1.5 },
    ),
    tracks(ring),
    ...gates.map((m) => gap(ring, m.station)),
    way.in.length > 0 ? poly(way.in, { pen: 'line', dash: '3 2' }) : '',
    way.out.length > 0
      ? poly(way.out, { pen: 'line', dash: '3 2' }) +
        tip(outTip[1], Math.atan2(outTip[1][1] - outTip[0][1], outTip[1][0] - outTip[0][0]), 6)
      : '',
    numbers(ring),
    machine(ring),
    disc(startOf(ring), full ? 3.4 : 2.6, { fill: 'ink', stroke: 'none' }),
    slab([ex - 3, ey - 3], 6, 6, { fill: 'ink', stroke: 'none' }),
    ring.lanes.count > 1 ? bracket(ring) : '',
  ].join('')
}
