import { disc as discAt, line, type Point } from '../ink.ts'
import { say } from '../letters.ts'

type Anchor = 'start' | 'middle' | 'end'

/** A place where a label may stand: the left, middle or right of its first line's foot. */
export type Place = { readonly at: Point; readonly anchor: Anchor }

export type Label = {
  readonly lines: readonly string[]
  readonly size: number
  readonly bold?: boolean /** White on a black disc: a number that a list below explains. */
  readonly isListed?: boolean /** What it names; a thin line leads there from a label that stands away from it. */
  readonly of?: Point /** Left out where it would lie on another. */
  readonly spare?: boolean /** The best first. */
  readonly places: readonly Place[]
}

export type Box = {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

export type PlacedLabel = Label & { readonly place: Place; readonly box: Box }

/**
 * Width of a letter against the size of its type: a little more than the mean, so that a box is
 * rather too wide.
 */
const letter = 0.52
const leading = 1.18

/** Radius of a disc around a number, against the size of its type. */
const disc = 0.62

/** What a label covers at a place. */
function labelBox(
  { lines, size, isListed }: Pick<Label, 'lines' | 'size' | 'isListed'>,
  { at: [x, y], anchor }: Place,
): Box {
  if (isListed) {
    const r = disc * size + 1
    return { left: x - r, right: x + r, top: y - 0.35 * size - r, bottom: y - 0.35 * size + r }
  }
  const width = Math.max(...lines.map((l) => l.length)) * letter * size
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2
  return {
    left,
    right: left + width,
    top: y - 0.76 * size,
    bottom: y + 0.24 * size + (lines.length - 1) * leading * size,
  }
}

export const boxesMeet = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom

/**
 * A label must not lie on another or leave the drawing; rather than cross a line it goes farther
 * from its place.
 */
const [onLabel, outOfFrame, leaderOnLabel, onLine, farther] = [1000, 800, 400, 30, 1]

const isIn = ([x, y]: Point, box: Box): boolean =>
  x > box.left && x < box.right && y > box.top && y < box.bottom

function countIn(points: readonly Point[], box: Box): number {
  let count = 0
  for (const point of points) if (isIn(point, box)) count++
  return count
}

/** From how far away a line leads to what a label names. */
const near = 14

/** The line from what is named to the box of its label; undefined where the label stands by it. */
function leaderOf(of: Point | undefined, box: Box): readonly [Point, Point] | undefined {
  if (!of) return undefined
  const to: Point = [
    Math.min(box.right, Math.max(box.left, of[0])),
    Math.min(box.bottom, Math.max(box.top, of[1])),
  ]
  const away = Math.hypot(to[0] - of[0], to[1] - of[1])
  const start = 5.5 / away
  return away < near
    ? undefined
    : [[of[0] + (to[0] - of[0]) * start, of[1] + (to[1] - of[1]) * start], to]
}

const leaderPoints = (of: Point | undefined, box: Box): readonly Point[] =>
  pointsAlong(leaderOf(of, box) ?? [])

/**
 * Gives every label the best of its places, one after another: clear of labels already placed,
 * inside the frame, and off the lines of the drawing.
 * @param lines Points along everything that is drawn, close enough together that no label slips
 * between them.
 */
export function placeLabels(
  labels: readonly Label[],
  lines: readonly Point[],
  frame: Box,
): readonly PlacedLabel[] {
  const placed: PlacedLabel[] = []
  const leaders: Point[] = []
  for (const label of labels) {
    let best: { readonly place: Place; readonly box: Box; readonly cost: number } | undefined
    for (const [i, place] of label.places.entries()) {
      const box = labelBox(label, place)
      const out =
        box.left < frame.left ||
        box.right > frame.right ||
        box.top < frame.top ||
        box.bottom > frame.bottom
      const met = placed.filter((p) => boxesMeet(p.box, box)).length
      const soFar = met * onLabel + (out ? outOfFrame : 0) + i * farther
      // Lines only add to what a place costs, and there are thousands of points on them.
      if (best && soFar >= best.cost) continue
      const crossed = countIn(lines, box) + countIn(leaders, box)
      const leads = leaderPoints(label.of, box)
      const led = placed.filter((other) => leads.some((p) => isIn(p, other.box))).length
      const cost = soFar + led * leaderOnLabel + crossed * onLine
      if (!best || cost < best.cost) best = { place, box, cost }
    }
    if (best && !(label.spare && best.cost >= onLabel)) {
      placed.push({ ...label, place: best.place, box: best.box })
      leaders.push(...leaderPoints(label.of, best.box))
    }
  }
  return placed
}

function leader({ of, box }: PlacedLabel): string {
  const found = leaderOf(of, box)
  return found ? line(found[0], found[1], { pen: 'hair' }) : ''
}

/** A white number on a black disc. */
export const listedNumber = ([x, y]: Point, said: string, size: number): string =>
  discAt([x, y - 0.35 * size], disc * size, { fill: 'ink', stroke: 'none' }) +
  say([x, y], said, { anchor: 'middle', size, bold: true, color: 'paper' })

export const drawLabel = (label: PlacedLabel): string => {
  if (label.isListed)
    return leader(label) + listedNumber(label.place.at, label.lines[0] ?? '', label.size)

  const {
    lines,
    size,
    bold = false,
    place: {
      at: [x, y],
      anchor,
    },
  } = label
  return (
    leader(label) +
    lines
      .map((words, i) => say([x, y + i * leading * size], words, { anchor, size, bold }))
      .join('')
  )
}

/** Points along a line, no farther apart than small type is high. */
export function pointsAlong(line: readonly Point[], every = 6): readonly Point[] {
  return line.flatMap((from, i): Point[] => {
    const to = line[i + 1]
    if (!to) return [from]
    const count = Math.max(1, Math.ceil(Math.hypot(to[0] - from[0], to[1] - from[1]) / every))
    return Array.from(
      { length: count },
      (_, k): Point => [
        from[0] + ((to[0] - from[0]) * k) / count,
        from[1] + ((to[1] - from[1]) * k) / count,
      ],
    )
  })
}
