import type { OvalGeometry } from '../../../model/manual/geometry.ts'
import type { Lanes } from './lanes.ts'

type Gate = OvalGeometry['marks'][number]

/** Where machines go in, begin, change to the next strip and go out. Stations in meters. */
export type Route = {
  /** Undefined where the facility names no gate. */
  readonly entry: Gate | undefined
  readonly exit: Gate | undefined
  readonly start: number
  /** Length over which a machine moves over to its next strip. */
  readonly shift: number
}

/** Room that a machine takes to swing in from its gate, and to move over, m. */
const [swing, moveOver] = [16, 30]

const around = (g: OvalGeometry, station: number): number =>
  ((station % g.railLength) + g.railLength) % g.railLength

/** How much of its straight is left ahead of a station; nothing in a turn. */
function straightAhead(g: OvalGeometry, station: number): number {
  const along = around(g, station) % (g.railLength / 2)
  return Math.max(0, g.straight - along)
}

/** The beginning of the next straight ahead. */
const nextStraight = (g: OvalGeometry, station: number): number =>
  Math.ceil(around(g, station) / (g.railLength / 2) + 1e-9) * (g.railLength / 2)

/**
 * Work begins, and strips are changed, on a straight just past the gate by which machines come in.
 * They leave by the next gate ahead of where the last lap ends, so that nothing turns round on
 * finished ground.
 */
export function routeOf(g: OvalGeometry): Route {
  const gates = g.marks.filter((m) => m.kind === 'gate' && m.offset > 0)
  const entry = gates.find((m) => m.machines) ?? gates[0]
  const from = entry?.station ?? g.railLength / 2
  const past = from + swing
  const start = around(
    g,
    straightAhead(g, past) >= moveOver + swing ? past : nextStraight(g, from) + swing / 2,
  )
  const ahead = (m: Gate): number => around(g, m.station - start - moveOver)
  const [exit] = [...gates].sort((a, b) => ahead(a) - ahead(b))
  return { entry, exit, start, shift: moveOver }
}

/** One lap as it is driven: stations counted on past the end of the oval, m. */
export type Lap = {
  readonly from: number
  readonly to: number
  /** Middle of the tool, m from the rail. */
  readonly at: (station: number) => number
}

const ease = (t: number): number => t * t * (3 - 2 * t)

/**
 * A lap (from 0): its own strip once around, then over to the next. The last goes straight on as
 * far as the others take to move over, so that no wedge is left.
 */
export function lapOf(g: OvalGeometry, lanes: Lanes, route: Route, lap: number): Lap {
  const turn = route.start + g.railLength
  const next = Math.min(lap + 1, lanes.count - 1)
  return {
    from: lap === 0 ? route.start : route.start + route.shift,
    to: turn + route.shift,
    at: (station) => {
      const t = ease(Math.min(1, Math.max(0, (station - turn) / route.shift)))
      return lanes.middle(lap, station) * (1 - t) + lanes.middle(next, station) * t
    },
  }
}
