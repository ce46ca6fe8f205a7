import type { OvalGeometry } from '../../../model/manual/geometry.ts'
import { discBetween, dotted, type Field, filled, hatched } from '../fills.ts'
import { disc, line, type Point, poly, solid } from '../ink.ts'
import type { Cut, Scale } from './frame.ts'

/** Where the surface begins at the rail, and where it ends. */
export type Surface = { readonly from: Point; readonly to: Point }

export const surfaceOf = (cut: Cut, [x, y]: Point, { k, ky }: Scale): Surface => ({
  from: [x, y],
  to: [x + cut.width * k, y - cut.width * cut.slope * ky],
})

const below = ([x, y]: Point, by: number): Point => [x, y + by]

/** A band of one thickness below the surface. */
const band = ({ from, to }: Surface, top: number, bottom: number): Field => [
  [below(from, top), below(to, top), below(to, bottom), below(from, bottom)],
]

/** How deep the base is drawn where nobody knows how deep it is: it has no lower line then. */
const unknownBase = 9

/** Cushion and base, each as thick as it is at the enlargement of the drawing. */
export function layers(surface: Surface, g: OvalGeometry, { ky }: Scale): string {
  const cushion = g.cushionDepth * ky
  const known = g.baseDepth === undefined ? undefined : g.baseDepth * ky
  const bottom = cushion + (known ?? unknownBase)
  const { from, to } = surface
  return [
    hatched(band(surface, cushion, bottom), 60, 3.4),
    filled(band(surface, 0, cushion), 'ink'),
    known === undefined
      ? ''
      : poly([below(from, bottom), below(to, bottom)], { pen: 'hair' }) +
        solid([below(from, bottom), below(to, bottom)], 4, 9),
  ].join('')
}

/** How far below the surface all of it reaches, points. */
export const depthBelow = (g: OvalGeometry, { ky }: Scale): number =>
  (g.cushionDepth + (g.baseDepth ?? 0)) * ky + (g.baseDepth === undefined ? unknownBase : 4)

/** The same slope with nothing enlarged, over a level line. */
export const trueSlope = (cut: Cut, [x, y]: Point, { k }: Scale): string =>
  line([x, y], [x + cut.width * k, y], { pen: 'hair', dash: '1 2' }) +
  line([x, y], [x + cut.width * k, y - cut.width * cut.slope * k], { pen: 'line' })

/** Meters that a point on paper stands for, to choose from: 1 : 4 and so on. */
const glassScales = [4, 5, 6, 8, 10, 12, 15, 20, 25] as const
const pointsInMeter = 72 / 0.0254

/** The scale at which the cushion takes no more than a third of the glass. */
const glassScale = (g: OvalGeometry, radius: number): number =>
  glassScales.find((s) => (g.cushionDepth * pointsInMeter) / s <= radius * 0.6) ?? 25

/** Places in the glass for words on the cushion and on the base. */
export type Glass = { readonly drawn: string; readonly cushion: Point; readonly base: Point }

/** Cushion and base at one scale in both directions, seen through a round glass. */
export function glass(g: OvalGeometry, [x, y]: Point, radius: number): Glass {
  const u = pointsInMeter / glassScale(g, radius)
  const top = y - radius * 0.5
  const floor = top + g.cushionDepth * u
  const end = g.baseDepth === undefined ? y + radius : floor + g.baseDepth * u
  const half = (at: number): number => Math.sqrt(Math.max(0, radius ** 2 - (at - y) ** 2))
  const level = (at: number, pen: 'line' | 'bold'): string =>
    line([x - half(at), at], [x + half(at), at], { pen: pen })
  return {
    drawn: [
      disc([x, y], radius, { fill: 'paper', stroke: 'none' }),
      dotted(discBetween([x, y], radius, top + 1, floor - 1), 3.2, 1.1),
      hatched(discBetween([x, y], radius, floor, Math.min(end, y + radius)), 60, 5),
      level(top, 'bold'),
      level(floor, 'line'),
      end < y + radius ? level(end, 'line') : '',
      disc([x, y], radius, { pen: 1.4 }),
    ].join(''),
    cushion: [x, (top + floor) / 2 + 3],
    base: [x, Math.min(floor + 22, (floor + Math.min(end, y + radius)) / 2 + 3)],
  }
}
