import type { CushionMap, MapMove } from '../../../model/manual/survey.ts'
import { arrowHead, type Point, polyline, text } from '../svg.ts'
import { along, type Frame, middleOf, onMap } from './frame.ts'

/** So many arrows can be followed; the rest are counted. */
const mostArrows = 4

/** What is moved from one stretch of the track to another, the largest first. */
export const shownMoves = (map: CushionMap): readonly MapMove[] => map.moves.slice(0, mostArrows)

/** A white number on a black disc: the same on the arrow and in the list. */
const numberedDisc = ([x, y]: Point, number: number): string =>
  `<circle cx="${x.toFixed(1)}" cy="${y.toFixed(1)}" r="6" fill="currentColor" stroke="var(--paper,#fff)" stroke-width="1"/>` +
  `<text x="${x.toFixed(1)}" y="${(y + 3).toFixed(1)}" text-anchor="middle" font-size="9" font-weight="700" fill="var(--paper,#fff)">${number}</text>`

/** Half of the room that a number and its disc take along the track, points. */
const clear = 17

/** Lines between the readings of a station, where arrows cross no number. */
const betweenReadings = (map: CushionMap, station: number): readonly number[] =>
  map.cells.filter((c) => c.station === station && c.inner > 0).map((c) => c.inner)

/** An arrow, and where its number stands. */
type Way = { readonly points: readonly Point[]; readonly disc: Point }

/** Across the track, from the deepest reading to the thinnest, beside the numbers. */
function across(map: CushionMap, frame: Frame, station: number): Way | undefined {
  const cells = map.cells.filter((c) => c.station === station).sort((a, b) => b.value - a.value)
  const [deepest, thinnest] = [cells[0], cells.at(-1)]
  if (!deepest || !thinnest) return undefined
  const at = station + clear / frame.k
  const [from, to] = [deepest, thinnest].map((c) => middleOf(c, map, frame)) as [number, number]
  return {
    points: [0, 0.5, 1].map((part) => onMap(frame, at, from + (to - from) * part).at),
    disc: onMap(frame, at + 10 / frame.k, from).at,
  }
}

/** The shorter way around, ending clear of the numbers of both stations. */
function around(map: CushionMap, frame: Frame, move: MapMove, lane: number): Way | undefined {
  const rail = frame.g.railLength
  const way = ((move.to - move.from + 1.5 * rail) % rail) - rail / 2
  const lines = betweenReadings(map, move.from)
  const offset = lines[lane % Math.max(1, lines.length)] ?? frame.across / 2
  const gap = (Math.sign(way) * clear) / frame.k
  const points = along(frame, move.from + gap, move.from + way - gap, () => offset)
  return points[0] && { points, disc: points[0] }
}

function arrow({ points, disc }: Way, number: number): string {
  const [before, end] = points.slice(-2)
  if (!before || !end) return ''
  const angle = Math.atan2(end[1] - before[1], end[0] - before[0])
  const neck: Point = [end[0] - 6 * Math.cos(angle), end[1] - 6 * Math.sin(angle)]
  const shaft = [...points.slice(0, -1), neck]
  return [
    polyline(shaft, 'halo'),
    polyline(shaft, 'heavy'),
    arrowHead(end, angle, 9),
    numberedDisc(disc, number),
  ].join('')
}

/** Numbered arrows from where there is too much to where it is missing. */
export const moveArrows = (map: CushionMap, frame: Frame): string =>
  shownMoves(map)
    .map((move, i) => {
      const isAcross = move.from === move.to
      const way = isAcross ? across(map, frame, move.from) : around(map, frame, move, i)
      return way ? arrow(way, i + 1) : ''
    })
    .join('')

/** A line of the list beside its disc. */
export const listed = (said: string, [x, y]: Point, number: number, size: number): string =>
  numberedDisc([x + 6, y - 3], number) + text([x + 17, y], said, 'start', size)
