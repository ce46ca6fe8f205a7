import type { OvalGeometry } from '../../../model/manual/geometry.ts'
import type { CushionMap, MapCell } from '../../../model/manual/survey.ts'
import type { Field } from '../fills.ts'
import type { Point } from '../ink.ts'
import { onOval, widthAt } from '../oval/shape.ts'
import { drawingWidths } from '../sizes.ts'

export const width = drawingWidths.page
/** Room for stations beside the oval, and for stations and gates above and below it. */
const [side, above] = [48, 32]

/** Where the oval lies on the map; the track is drawn wider than it is. */
export type Frame = {
  readonly g: OvalGeometry
  readonly factor: number
  /** Points a meter along the rail. */
  readonly k: number
  readonly middle: Point
  /** Distance of the outside edge from the rail that a survey reaches, m. */
  readonly across: number
}

/** As wide as the numbers need, leaving room for the list in the middle of the oval. */
export function frameOf(g: OvalGeometry, map: CushionMap): Frame {
  const across = Math.max(g.widthStraights, g.widthTurns, ...map.cells.map((c) => c.inner))
  const factor = Math.max(1, Math.round((6.8 * g.radius) / across) / 10)
  const k = (width - 2 * side) / (g.straight + 2 * (g.radius + across * factor))
  return { g, factor, k, across, middle: [width / 2, above + k * (g.radius + across * factor)] }
}

/** A point of the track, with the direction outward. */
export function onMap(
  { g, factor, k, middle }: Frame,
  station: number,
  offset: number,
): { readonly at: Point; readonly out: Point } {
  const { point, out } = onOval(g, station, offset * factor)
  return { at: [middle[0] + k * point[0], middle[1] + k * point[1]], out }
}

/** Points along the track from one station to another. */
export const along = (
  frame: Frame,
  from: number,
  to: number,
  offset: (station: number) => number,
): readonly Point[] => {
  const steps = Math.max(2, Math.ceil(Math.abs(to - from) / (frame.g.railLength / 120)))
  return Array.from({ length: steps + 1 }, (_, i) => {
    const station = from + ((to - from) * i) / steps
    return onMap(frame, station, offset(station)).at
  })
}

/** Whether no other reading of its station lies farther out. */
const isOutermost = (cell: MapCell, map: CushionMap): boolean =>
  !map.cells.some((c) => c.station === cell.station && c.inner > cell.inner)

/** How far out a field reaches: the last one to the edge of the track. */
const outerAt = (cell: MapCell, map: CushionMap, frame: Frame): ((station: number) => number) =>
  isOutermost(cell, map)
    ? (station) => Math.max(widthAt(frame.g, station), cell.inner)
    : () => cell.outer

/** The ground that one reading stands for. */
export const fieldOf = (cell: MapCell, map: CushionMap, frame: Frame): Field => [
  [
    ...along(frame, cell.from, cell.to, () => cell.inner),
    ...along(frame, cell.to, cell.from, outerAt(cell, map, frame)),
  ],
]

/** How far out the middle of a field lies, m. */
export const middleOf = (cell: MapCell, map: CushionMap, frame: Frame): number =>
  (cell.inner + outerAt(cell, map, frame)(cell.station)) / 2
