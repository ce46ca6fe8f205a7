import { fill } from '../../../model/pattern.ts'
import type { Point } from '../ink.ts'
import { onPlan } from '../oval/frame.ts'
import { type Label, type Place, pointsAlong } from '../oval/label-places.ts'
import { widthAt } from '../oval/shape.ts'
import { along, beside, heading } from './frame.ts'
import { bracketOf, endOf, type Ring, startOf, ways } from './ring.ts'
import type { PassContext } from './words.ts'

const asides = [0, 12, -12, 26, -26, 42, -42, 60, -60, 80, -80, 104, -104, 130, -130]

/**
 * Around a point, the nearest first, on the side to which `out` points: outside the track, or in
 * the infield.
 */
function placesBeside(
  at: Point,
  out: Point,
  lines: number,
  size: number,
  toward: Point | undefined,
): readonly Place[] {
  const level = Math.abs(out[0]) < 0.5
  const anchors: readonly Place['anchor'][] = !level
    ? [out[0] > 0 ? 'start' : 'end']
    : toward
      ? [toward[0] > 0 ? 'start' : 'end']
      : ['start', 'end', 'middle']
  const isToward = (aside: number): boolean =>
    toward === undefined || aside * (out[0] * toward[1] - out[1] * toward[0]) >= 0
  const lead = (lines - 1) * size * 1.18
  const drop =
    out[1] > 0.4 ? size * 0.75 : out[1] < -0.4 ? -lead - size * 0.2 : size * 0.3 - lead / 2
  const places = [5, 13, 22, 32, 44].flatMap((far) =>
    asides.filter(isToward).flatMap((aside) =>
      anchors.map((anchor) => ({
        at: [
          at[0] + out[0] * far - out[1] * aside,
          at[1] + out[1] * far + out[0] * aside + drop,
        ] as Point,
        anchor,
        cost: 1.6 * far + Math.abs(aside) * 0.6,
      })),
    ),
  )
  return places.sort((a, b) => a.cost - b.cost)
}

const shortName = (name: string): string => name.split(' (')[0] ?? name

/** What a driver does with the tool where work begins, and where it ends. */
const tools = {
  grade: ['bladeDown', 'bladeUp'],
  'grade-band': ['bladeDown', 'bladeUp'],
  condition: ['cutterDown', 'cutterUp'],
  spray: ['sprayOn', 'sprayOff'],
} as const

/**
 * What is said at the start, where the last lap ends, and at the way out. A tool that is lifted or
 * shut rests from the end of the last lap; what is dragged or rolls has no up and down.
 */
function toolWords(figure: string, { words }: PassContext) {
  const tool = tools[figure as keyof typeof tools]
  return tool
    ? { start: words[tool[0]], end: [words[tool[1]]], out: [] }
    : { start: words.noStop, end: [], out: [words.keepRolling] }
}

/** Which lap ends at the end; where all is done twice, the last of each time. */
function endsText({ pattern, lanes }: Ring, { words, q }: PassContext): string {
  const number = lanes.count
  return pattern.laps === 2 * pattern.strips
    ? fill(words.endsBoth, { number, laps: q(`${pattern.figure}.laps`) })
    : fill(words.ends, { number })
}

/** What is said at each place of the drawing, in the order in which places are given away. */
export function ringLabels(ring: Ring, context: PassContext): readonly Label[] {
  const { words } = context
  const { frame, pattern, lanes, route, full } = ring
  const { g } = frame
  const size = full ? 9 : 8.2
  const outward = pattern.from === 'rail'
  const tool = toolWords(pattern.figure, context)
  const normal = (station: number): Point => onPlan(frame, station, 0).out
  const label = (
    lines: readonly string[],
    of: Point,
    station: number,
    { inside = false, bold = true, ahead = false, at = of } = {},
  ): Label => {
    const [x, y] = normal(station)
    const turn = heading(frame, station)
    const toward: Point | undefined = ahead ? [Math.cos(turn), Math.sin(turn)] : undefined
    const places = placesBeside(at, inside ? [-x, -y] : [x, y], lines.length, size, toward)
    return { lines, size, bold, of, places }
  }
  const way = ways(ring)
  const [a] = bracketOf(ring)
  const shift = route.start + route.shift
  const entryAt = way.in[0]
  const exitAt = way.out.at(-1)
  const moves = pattern.perStrip > 1 ? words.moveLap : outward ? words.moveOut : words.moveIn
  const start = outward ? words.startRail : words.startOutside
  const found: (Label | false)[] = [
    route.entry !== undefined &&
      entryAt !== undefined &&
      label([fill(words.in, { gate: shortName(route.entry.name) })], entryAt, route.entry.station),
    route.exit !== undefined &&
      exitAt !== undefined &&
      label(
        [fill(words.out, { gate: shortName(route.exit.name) }), ...(full ? tool.out : [])],
        exitAt,
        route.exit.station,
      ),
    lanes.count > 1 &&
      label(
        full ? [moves, words.moveHere] : [outward ? words.outHere : words.inHere],
        a,
        (route.start + shift) / 2,
        { bold: false, ahead: true },
      ),
    full &&
      label(
        [start, tool.start],
        outward ? startOf(ring) : beside(frame, route.start, widthAt(g, route.start), 3),
        route.start,
        outward ? { inside: true, at: beside(frame, route.start, 0, 0) } : {},
      ),
    full &&
      label(
        [pattern.perStrip > 1 ? words.lastLap : endsText(ring, context), ...tool.end],
        endOf(ring),
        shift,
        { inside: !outward, ahead: outward },
      ),
  ]
  return found.filter((l) => l !== false)
}

/** Points along all that labels keep clear of. */
export function ringLines(ring: Ring): readonly Point[] {
  const { frame, lanes } = ring
  const { g } = frame
  const [a, b] = bracketOf(ring)
  const way = ways(ring)
  return [
    ...along(frame, 0, g.railLength, (s) => widthAt(g, s)),
    // Beyond a band next to the rail the track is empty, and words may lie on it.
    ...[0.25, 0.5, 0.75, 1].flatMap((part) =>
      along(frame, 0, g.railLength, (s) => lanes.reach(s) * part),
    ),
    ...along(frame, 0, g.railLength, () => 0),
    ...pointsAlong([a, b], 3),
    ...pointsAlong(way.in.slice(0, 2), 3),
    ...pointsAlong(way.out.slice(-2), 3),
  ]
}
