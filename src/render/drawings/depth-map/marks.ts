import type { CushionMap } from '../../../model/manual/survey.ts'
import { line, type Point } from '../ink.ts'
import {
  type Box,
  drawLabel,
  type Label,
  type Place,
  placeLabels,
  pointsAlong,
} from '../oval/label-places.ts'
import { widthAt } from '../oval/shape.ts'
import { along, type Frame, onMap, width } from './frame.ts'

const size = 9

/** Beyond a mark on the edge of the track: straight out first, then aside. */
function beyond(at: Point, out: Point): readonly Place[] {
  const anchor = Math.abs(out[0]) < 0.5 ? 'middle' : out[0] > 0 ? 'start' : 'end'
  const drop = out[1] > 0.5 ? 7 : out[1] < -0.5 ? 0 : 3
  return [4, 12, 22, 34].flatMap((far) =>
    [0, 24, -24, 44, -44].map((aside) => ({
      at: [
        at[0] + out[0] * far - out[1] * aside,
        at[1] + out[1] * far + out[0] * aside + drop,
      ] as const,
      anchor: anchor as Place['anchor'],
    })),
  )
}

type Marked = { readonly drawn: string; readonly label: Label; readonly lines: readonly Point[] }

/** A station of the survey: a stroke beyond the outside edge, with its distance. */
function station(frame: Frame, at: number, said: string): Marked {
  const edge = widthAt(frame.g, at)
  const from = onMap(frame, at, edge)
  const to: Point = [from.at[0] + from.out[0] * 5, from.at[1] + from.out[1] * 5]
  return {
    drawn: line(from.at, to, { pen: 'line' }),
    label: { lines: [said], size, places: beyond(to, from.out) },
    lines: [to],
  }
}

/** What a gate is for stands below its name. */
const nameLines = (name: string): readonly string[] => {
  const cut = name.indexOf(' (')
  return cut > 0 ? [name.slice(0, cut), name.slice(cut + 1)] : [name]
}

/** A gap in the fence between two posts, with its name. */
function gate(frame: Frame, mark: Frame['g']['marks'][number]): Marked {
  const isOutside = mark.offset > 0
  const { at, out } = onMap(frame, mark.station, isOutside ? widthAt(frame.g, mark.station) : 0)
  const [ox, oy] = out
  const post = (side: number): string => {
    const [x, y] = [at[0] - oy * side, at[1] + ox * side]
    return line([x - ox * 4, y - oy * 4], [x + ox * 4, y + oy * 4], { pen: 'bold' })
  }
  const away: Point = isOutside ? out : [-ox, -oy]
  const gap = line([at[0] + oy * 6, at[1] - ox * 6], [at[0] - oy * 6, at[1] + ox * 6], {
    pen: 4,
    stroke: 'paper',
  })
  return {
    drawn: gap + post(-6) + post(6),
    label: { lines: nameLines(mark.name), size, places: beyond(at, away) },
    lines: pointsAlong([
      [at[0] - oy * 8, at[1] + ox * 8],
      [at[0] + oy * 8, at[1] - ox * 8],
    ]),
  }
}

/**
 * Stations of the survey and gates, named where nothing else stands.
 * @param taken Boxes inside the oval that are written on already.
 */
export function marks(
  map: CushionMap,
  frame: Frame,
  bottom: number,
  taken: readonly Box[],
): string {
  const { g } = frame
  const all = [
    ...map.stations.map((s) => station(frame, s.at, s.text)),
    ...g.marks.filter((m) => m.kind === 'gate').map((m) => gate(frame, m)),
  ]
  const edges = [
    ...pointsAlong(
      along(frame, 0, g.railLength, () => 0),
      4,
    ),
    ...pointsAlong(
      along(frame, 0, g.railLength, (s) => widthAt(g, s)),
      4,
    ),
    // No name lies on the fields.
    ...[0.25, 0.5, 0.75].flatMap((part) =>
      pointsAlong(
        along(frame, 0, g.railLength, (s) => widthAt(g, s) * part),
        6,
      ),
    ),
    ...taken.flatMap((b) =>
      pointsAlong(
        [0, 0.25, 0.5, 0.75, 1].flatMap((part): Point[] => [
          [b.left, b.top + (b.bottom - b.top) * part],
          [b.right, b.top + (b.bottom - b.top) * part],
        ]),
        4,
      ),
    ),
  ]
  const placed = placeLabels(
    all.map((m) => m.label),
    [...edges, ...all.flatMap((m) => m.lines)],
    { left: 2, right: width - 2, top: 2, bottom },
  )
  return all.map((m) => m.drawn).join('') + placed.map(drawLabel).join('')
}
