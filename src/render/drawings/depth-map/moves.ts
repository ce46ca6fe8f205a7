import type { CushionMap, MapMove } from '../../../model/manual/survey.ts'
import { disc, type Point, poly, tip } from '../ink.ts'
import { say } from '../letters.ts'
import { along, type Frame, middleOf, onMap } from './frame.ts'

/** So many arrows can be followed; the rest are counted. */
const mostArrows = 4

/** What is moved from one stretch of the track to another, the largest first. */
export const shownMoves = (map: CushionMap): readonly MapMove[] => map.moves.slice(0, mostArrows)

/** A white number on a black disc: the same on the arrow and in the list. */
export const numberedDisc = ([x, y]: Point, number: number): string =>
  disc([x, y], 6.5, { fill: 'paper', stroke: 'none' }) +
  disc([x, y], 5.7, { fill: 'ink', stroke: 'none' }) +
  say([x, y + 3], String(number), { anchor: 'middle', size: 9, bold: true, color: 'paper' })

/** Half of the room that a number and its disc take along the track, points. */
const clear = 17

/** How far out the middles of the deepest and the thinnest field of two stations lie, m. */
function ends(map: CushionMap, frame: Frame, { from, to }: MapMove): readonly [number, number] {
  const sorted = (station: number) =>
    map.cells.filter((c) => c.station === station).sort((a, b) => b.value - a.value)
  const [deepest, thinnest] = [sorted(from)[0], sorted(to).at(-1)]
  return [deepest, thinnest].map((c) => (c ? middleOf(c, map, frame) : 0)) as [number, number]
}

/** An arrow, and where its number stands. */
type Way = { readonly points: readonly Point[]; readonly disc: Point }

/** Across the track, from the deepest reading to the thinnest, beside the numbers. */
function across(map: CushionMap, frame: Frame, move: MapMove): Way {
  const at = move.from + clear / frame.k
  const [from, to] = ends(map, frame, move)
  return {
    points: [0, 0.5, 1].map((part) => onMap(frame, at, from + (to - from) * part).at),
    disc: onMap(frame, at + 10 / frame.k, from).at,
  }
}

/** The shorter way around, from the deepest field of one station to the thinnest of the other. */
function around(map: CushionMap, frame: Frame, move: MapMove): Way | undefined {
  const rail = frame.g.railLength
  const way = ((move.to - move.from + 1.5 * rail) % rail) - rail / 2
  const [from, to] = ends(map, frame, move)
  const gap = (Math.sign(way) * clear) / frame.k
  const begin = move.from + gap
  const points = along(
    frame,
    begin,
    move.from + way - gap,
    (station) => from + ((to - from) * (station - begin)) / (way - 2 * gap),
  )
  return points[0] && { points, disc: points[0] }
}

function drawnWay({ points, disc }: Way, number: number): string {
  const [before, end] = points.slice(-2)
  if (!before || !end) return ''
  const angle = Math.atan2(end[1] - before[1], end[0] - before[0])
  const neck: Point = [end[0] - 6 * Math.cos(angle), end[1] - 6 * Math.sin(angle)]
  const shaft = [...points.slice(0, -1), neck]
  return [
    poly(shaft, { pen: 5, stroke: 'paper' }),
    poly(shaft, { pen: 'bold' }),
    tip(end, angle, 9),
    numberedDisc(disc, number),
  ].join('')
}

/** Numbered arrows from where there is too much to where it is missing. */
export const moveArrows = (map: CushionMap, frame: Frame): string =>
  shownMoves(map)
    .map((move, i) => {
      const way = move.from === move.to ? across(map, frame, move) : around(map, frame, move)
      return way ? drawnWay(way, i + 1) : ''
    })
    .join('')

/** A line of the list beside its disc. */
export const listed = (said: string, [x, y]: Point, number: number, size: number): string =>
  numberedDisc([x + 6, y - 3], number) + say([x + 17, y], said, { size })
