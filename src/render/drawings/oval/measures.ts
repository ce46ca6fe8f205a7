import { fill } from '../../../model/pattern.ts'
import { decimalText } from '../../../model/quantity/number-text.ts'
import { foot } from '../../../model/quantity/units.ts'
import { arrow, line, type Point, tip } from '../ink.ts'
import type { Detail, OvalContext } from './detail.ts'
import { onPlan, type PlanFrame } from './frame.ts'
import { type Label, type Place, pointsAlong } from './label-places.ts'
import type { PlanPart } from './marks.ts'

/** Marks along the rail at every station, every fifth longer and numbered. */
export function stationParts(
  frame: PlanFrame,
  { size }: Detail,
  feet: boolean,
): readonly PlanPart[] {
  const { g } = frame
  const count = Math.ceil(g.railLength / g.stationSpacing - 1e-9)
  return Array.from({ length: count }, (_, i): PlanPart => {
    const { at, out } = onPlan(frame, i * g.stationSpacing, 0)
    const long = i % 5 === 0
    const inward = (d: number): Point => [at[0] - out[0] * d, at[1] - out[1] * d]
    const number = decimalText(Math.round((i * g.stationSpacing) / (feet ? foot : 1)), 0)
    // Beside the rail where it runs upright, below or above it elsewhere.
    const isUpright = Math.abs(out[0]) > 0.7
    const [x, y] = inward(isUpright ? 7.7 : size + 4)
    const anchor = isUpright ? (out[0] > 0 ? 'end' : 'start') : 'middle'
    const label: Label = {
      lines: [number],
      size,
      spare: true,
      places: [{ at: [x, y + 0.35 * size], anchor }],
    }
    return {
      drawn: line(at, inward(long ? 5 : 2.5), { pen: 'hair' }),
      lines: [],
      labels: long ? [label] : [],
    }
  })
}

/** Beside a line across the track that stands level or upright. */
function besideLine(outer: Point, out: Point, middle: Point): readonly Place[] {
  if (Math.abs(out[0]) < 0.5)
    return [
      { at: [middle[0] + 5, middle[1] + 2.8], anchor: 'start' },
      { at: [middle[0] - 5, middle[1] + 2.8], anchor: 'end' },
    ]
  return out[0] > 0
    ? [{ at: [outer[0] + 5, outer[1] + 3], anchor: 'start' }]
    : [{ at: [outer[0] - 5, outer[1] + 3], anchor: 'end' }]
}

/** Words on two lines, broken before the last of them. */
function twoLines(words: string): readonly string[] {
  const cut = words.lastIndexOf(' ')
  return cut < 0 ? [words] : [words.slice(0, cut), words.slice(cut + 1)]
}

/** How wide the track is, on the back straight and in a turn. */
export function widthParts(
  frame: PlanFrame,
  { size }: Detail,
  { words, q }: OvalContext,
): readonly PlanPart[] {
  const { g } = frame
  const arc = Math.PI * g.radius
  const part = (station: number, width: number, quantity: string): PlanPart => {
    const inner = onPlan(frame, station, 0)
    const outer = onPlan(frame, station, width)
    const middle = onPlan(frame, station, width / 2)
    const said = fill(words.width, { width: q(quantity) })
    const isUpright = Math.abs(middle.out[0]) < 0.5
    const places = besideLine(outer.at, outer.out, middle.at)
    return {
      drawn: line(inner.at, outer.at, { pen: 'hair' }),
      lines: pointsAlong([inner.at, outer.at]),
      labels: [{ lines: isUpright ? [said] : twoLines(said), size, places }],
    }
  }
  return [
    part(1.62 * g.straight + arc, g.widthStraights, 'oval.width.straights'),
    part(g.straight + arc / 2, g.widthTurns, 'oval.width.turns'),
  ]
}

/** Which way horses go, in heads on the track. */
export function directionPart(frame: PlanFrame): PlanPart {
  const { g } = frame
  const heads = [0.45, 0.45 + (g.straight + Math.PI * g.radius) / g.straight].map((place) => {
    const { at, along } = onPlan(frame, place * g.straight, g.widthStraights / 2)
    const forward = g.direction === 'clockwise' ? along : ([-along[0], -along[1]] as const)
    return tip(
      [at[0] + forward[0] * 3, at[1] + forward[1] * 3],
      Math.atan2(forward[1], forward[0]),
      6,
    )
  })
  return { drawn: heads.join(''), lines: [], labels: [] }
}

/** What stands in the middle of the oval: its measures and which way horses go. */
export function middlePart(
  frame: PlanFrame,
  { size }: Detail,
  { words, q }: OvalContext,
): PlanPart {
  const [x, y] = frame.middle
  const way = frame.g.direction === 'clockwise' ? -1 : 1
  const measures = [`${words.lap} ${q('shape.lap')}`, `${words.radius} ${q('shape.radius')}`]
  const top = y - ((measures.length + 1) * size * 1.3) / 2 + 4
  const below = top + measures.length * size * 1.3
  const label = (said: string, at: number): Label => ({
    lines: [said],
    size,
    places: [{ at: [x, at], anchor: 'middle' }],
  })
  return {
    drawn: arrow([x - way * 31, below - 2], [x + way * 31, below - 2], { pen: 0.8 }),
    lines: pointsAlong([
      [x - 32, below - 2],
      [x + 32, below - 2],
    ]),
    labels: [
      ...measures.map((m, i) => label(m, top + i * size * 1.3)),
      label(words.travel, below + size * 1.1),
    ],
  }
}
