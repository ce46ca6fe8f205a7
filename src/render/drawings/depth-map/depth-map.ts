import type { CushionMap, MapCell } from '../../../model/manual/survey.ts'
import { fill } from '../../../model/pattern.ts'
import { declareDrawing } from '../drawing.ts'
import { boxField } from '../fills.ts'
import { arrow, type Point, poly, sheetOf } from '../ink.ts'
import { say } from '../letters.ts'
import { widthAt } from '../oval/shape.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'
import { classNames, classOf, patterned } from './classes.ts'
import { along, type Frame, fieldOf, frameOf, middleOf, onMap, width } from './frame.ts'
import { marks } from './marks.ts'
import { listed, moveArrows, shownMoves } from './moves.ts'
import { drawTable } from './table.ts'
import { classSaid, leftSaid, type MapContext, moveSaid, wantedSaid, wording } from './words.ts'

const size = 9

/** The classes, from far too deep to far too thin, three in a row. */
const legend = (map: CushionMap, [x, y]: Point, context: MapContext): string =>
  [
    say([x, y], wantedSaid(context), { size: size + 1, bold: true }),
    ...classNames.map((of, i) => {
      const at: Point = [x + (i % 3) * 150, y + 7 + Math.floor(i / 3) * 16]
      return (
        patterned(boxField(at, [24, 11]), of) +
        say([at[0] + 30, at[1] + 9], classSaid(of, map, context), { size })
      )
    }),
  ].join('')

/** Height of the legend. */
const legendHigh = 44

/** What stands below the numbered moves: how many more there are, and what is left. */
function belowMoves(map: CushionMap, context: MapContext): readonly string[] {
  const rest = map.moves.length - shownMoves(map).length
  const smaller = rest > 0 ? [fill(context.words.smaller, { count: String(rest) })] : []
  return [...smaller, ...leftSaid(map, context)]
}

/** Room that the list of moves takes. */
const listWide = 124
const listHigh = (map: CushionMap, context: MapContext): number =>
  shownMoves(map).length * 15 + belowMoves(map, context).length * 13 + 14

/** What to take where, and what is left. */
function list(map: CushionMap, [x, y]: Point, context: MapContext): string {
  const shown = shownMoves(map)
  const below = y + 12 + shown.length * 15
  return [
    shown.length > 0 ? say([x, y], context.words.take, { size: size + 1, bold: true }) : '',
    ...shown.map((move, i) => listed(moveSaid(move, context), [x, y + 15 + i * 15], i + 1, size)),
    ...belowMoves(map, context).map((said, i) =>
      say([x, below + 4 + i * 13], said, { size, bold: true }),
    ),
  ].join('')
}

/** The depth of a field, upright, without its unit: the foot says it. */
function depth(cell: MapCell, map: CushionMap, frame: Frame): string {
  const { at } = onMap(frame, cell.station, middleOf(cell, map, frame))
  return say([at[0], at[1] + 3], cell.text.replace(/ (in|mm)$/, ''), {
    anchor: 'middle',
    size: 8.2,
    bold: true,
    halo: true,
  })
}

const track = (frame: Frame): string => {
  const { g } = frame
  return (
    poly(
      along(frame, 0, g.railLength, (s) => widthAt(g, s)),
      { pen: 'line' },
    ) +
    poly(
      along(frame, 0, g.railLength, () => 0),
      { pen: 'bold' },
    )
  )
}

/** Which way horses go on the home straight, at the foot. */
function travel(frame: Frame, y: number, { words }: MapContext): string {
  const way = frame.g.direction === 'clockwise' ? -1 : 1
  const x = width - 30
  return (
    say([x - 30, y + 3], words.travel, { anchor: 'end', size }) +
    arrow([x - way * 22, y], [x + way * 22, y], { pen: 'bold' })
  )
}

/** Where the list stands: inside the oval where it has room, else below the legend. */
function listPlace(map: CushionMap, frame: Frame, legendAt: number, context: MapContext) {
  const { g, k, middle: c } = frame
  const high = listHigh(map, context)
  const fits = 2 * g.radius * k > high + 20 && (g.straight + 0.6 * g.radius) * k > listWide + 60
  const at: Point = fits
    ? [c[0] - listWide / 2, c[1] - high / 2 + 9]
    : [6, legendAt + legendHigh + 16]
  const box = {
    left: at[0],
    right: at[0] + listWide,
    top: at[1] - 10,
    bottom: at[1] + high - 8,
  }
  return { at, taken: fits ? [box] : [], below: fits ? 0 : high + 14 }
}

function drawMap(map: CushionMap, context: MapContext): string {
  const { manual, words, alt } = context
  const frame = frameOf(manual.geometry, map)
  const { g, k, factor, middle: c, across } = frame
  const edge = c[1] + k * (g.radius + across * factor)
  const legendAt = edge + 46
  const { at, taken, below } = listPlace(map, frame, legendAt, context)
  const foot = legendAt + legendHigh + below + 16
  const note = fill(words.wider, { factor: String(factor), date: map.day })
  return sheetOf(
    width,
    foot + 5,
    alt,
    [
      ...map.cells.map((cell) => patterned(fieldOf(cell, map, frame), classOf(cell.value, map))),
      track(frame),
      moveArrows(map, frame),
      ...map.cells.map((cell) => depth(cell, map, frame)),
      marks(map, frame, edge + 32, taken),
      legend(map, [6, legendAt], context),
      list(map, at, context),
      travel(frame, foot - 3, context),
      say([6, foot], note, { size }),
    ].join(''),
  )
}

/** Across a page as a map, in narrower places as a table. */
export function drawDepthMap(context: MapContext, of: DrawingSize): string {
  const map = context.manual.cushionMap
  if (!map) return ''
  return of === 'page' ? drawMap(map, context) : drawTable(map, drawingWidths[of], context)
}

/** Station by station every reading with its class, then what to move. */
function numbers(context: MapContext): string {
  const { manual, words } = context
  const map = manual.cushionMap
  if (!map) return ''
  const at = map.stations.map((s) => {
    const own = map.cells.filter((cell) => cell.station === s.at)
    const said = own.map((c) => `${c.text} (${classSaid(classOf(c.value, map), map, context)})`)
    return `${s.text}: ${said.join(', ')}`
  })
  const moves = map.moves.map((move) => moveSaid(move, context))
  return [
    wantedSaid(context),
    ...at,
    ...(moves.length > 0 ? [`${words.take}: ${moves.join(', ')}`] : []),
    ...leftSaid(map, context),
  ].join('. ')
}

/**
 * The oval with the depth found in every field of the survey, and what to take from where to where;
 * the track is drawn wider than it is, so that the numbers fit.
 */
export const depthMap = declareDrawing({
  name: 'cushion',
  labels: wording,
  needs: 'depths.mean',
  draw: drawDepthMap,
  numbers,
})
