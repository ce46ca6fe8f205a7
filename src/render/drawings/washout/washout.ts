import type { WashoutCut } from '../../../model/manual/charts.ts'
import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { line, measure, type Point, sheetOf, stroke } from '../ink.ts'
import { say, wrapped } from '../letters.ts'
import type { DrawingSize } from '../sizes.ts'
import { cutSquare, filledAsFound, type Hole, liftTops, under } from './ground.ts'

const wording = labels('washout', {
  ...entries('found', 'foundWhy', 'cut', 'cutWhy', 'cushion'),
  lift: holding('number'),
  lifts: holding('count'),
  thin: holding('depth', 'share'),
  size: holding('width', 'length'),
  heights: holding('factor'),
})
type Context = ContextFor<typeof wording>

/** Where the two pictures lie, beside or below each other; points. */
type Room = {
  readonly width: number
  /** Width of the ground in each picture. */
  readonly ground: number
  readonly size: number
  readonly isStacked: boolean
}

const rooms: Readonly<Record<DrawingSize, Room>> = {
  page: { width: 465, ground: 203, size: 9, isStacked: false },
  column: { width: 326, ground: 136, size: 8.4, isStacked: false },
  side: { width: 172, ground: 128, size: 8.2, isStacked: true },
}

/** Ground beside the hole, as a share of what is drawn. */
const beside = 0.17
/** One scale for both pictures, and one enlargement of heights. */
function scaleOf(cut: WashoutCut, { ground, isStacked }: Room): { k: number; factor: number } {
  const k = (ground * (1 - 2 * beside)) / cut.width
  const most = isStacked ? 34 : 52
  return { k, factor: Math.max(1, Math.min(8, Math.floor(most / (cut.depth * k)))) }
}

const holeAt = (cut: WashoutCut, [start, top]: Point, room: Room): Hole => {
  const { k, factor } = scaleOf(cut, room)
  const left = start + room.ground * beside
  return {
    start,
    end: start + room.ground,
    left,
    right: left + cut.width * k,
    top,
    floor: top + cut.depth * k * factor,
  }
}

const cross = ([x, y]: Point): string => stroke(`M${x - 4} ${y - 4}l8 8m0 -8l-8 8`, { pen: 'bold' })
const tick = ([x, y]: Point): string => stroke(`M${x - 4} ${y}l3 4l6 -9`, { pen: 'bold' })

/** The name of a picture with its sign, and why it fails or holds. */
function heading(name: string, why: string, sign: string, [x, y]: Point, room: Room): string {
  const lines = wrapped(why, room.ground + (room.isStacked ? 24 : 0), room.size)
  return [
    sign,
    say([x + 13, y], name, { size: room.size + 3, bold: true }),
    ...lines.map((said, i) => say([x, y + room.size * (1.5 + 1.2 * i)], said, { size: room.size })),
  ].join('')
}

/** How much of the groove is filled thinner than what holds. */
function thinMarks(cut: WashoutCut, hole: Hole, { words, q }: Context, size: number): string {
  const { left, right, top, floor } = hole
  const thin = (Math.min(1, cut.thinShare) * (right - left)) / 2
  const y = floor + under + 8
  const edge = (x: number): string =>
    line([x, top + Math.min(1, cut.thinShare) * (floor - top)], [x, y + 3], {
      pen: 'hair',
      dash: '2 2',
    })
  const said = fill(words.thin, {
    depth: q('practice.thin-layer'),
    share: q('washout.thin-share'),
  })
  return [
    measure([left, y], [left + thin, y]),
    measure([right - thin, y], [right, y]),
    ...[left, right].map((x) => line([x, top], [x, y + 3], { pen: 'hair', dash: '2 2' })),
    edge(left + thin),
    edge(right - thin),
    say([(left + right) / 2, y + size + 4], said, { anchor: 'middle', size }),
  ].join('')
}

/** Each lift by its number where there is room for it, else their count. */
function liftNames(cut: WashoutCut, hole: Hole, { words }: Context, size: number): string {
  const tops = liftTops(hole, cut.lifts)
  const high = (hole.floor - hole.top) / cut.lifts
  const x = (hole.left + hole.right) / 2
  const name = (y: number, said: string): string =>
    say([x, y + size * 0.35], said, { anchor: 'middle', size, bold: true, halo: true })
  return high < size + 1
    ? name((hole.top + hole.floor) / 2, fill(words.lifts, { count: String(cut.lifts) }))
    : tops.map((y, i) => name(y + high / 2, fill(words.lift, { number: String(i + 1) }))).join('')
}

function cutMarks(hole: Hole, cushion: number, { words, q }: Context, size: number): string {
  const { left, right, end, top, floor } = hole
  const y = floor + under + 8
  const said = fill(words.size, {
    width: q('practice.washout.width'),
    length: q('practice.washout.length'),
  })
  return [
    measure([left, y], [right, y]),
    say([(left + right) / 2, y + size + 4], said, { anchor: 'middle', size, bold: true }),
    measure([end + 6, top], [end + 6, floor]),
    line([right + 2, floor], [end + 9, floor], { pen: 'hair' }),
    say([end + 11, (top + floor) / 2 + size * 0.35], q('practice.washout.depth'), {
      size,
      bold: true,
    }),
    say([end, top - cushion - 4], words.cushion, { anchor: 'end', size }),
  ].join('')
}

function draw(context: Context, room: Room): string {
  const { manual, words, alt } = context
  const cut = manual.charts.washout
  if (!cut) return ''
  const { size, isStacked } = room
  const { k, factor } = scaleOf(cut, room)
  const cushion = cut.cushion * k * factor
  const head = size * 4.6 + (isStacked ? 6 : 0)
  const left = 4
  const v = holeAt(cut, [left, head + (isStacked ? 14 : cushion + size + 8)], room)
  const below = v.floor + under + size * 2 + 14
  const square = isStacked
    ? holeAt(cut, [left, below + head + cushion + size], room)
    : holeAt(cut, [room.width - room.ground - 44, v.top], room)
  const squareHead = isStacked ? below + size + 2 : size + 3
  const foot = square.floor + under + size * 2 + 22
  return sheetOf(
    room.width,
    foot + 4,
    alt,
    [
      heading(words.found, words.foundWhy, cross([left + 4, size - 1]), [left, size + 3], room),
      filledAsFound(v, cut.thinShare),
      thinMarks(cut, v, context, size),
      heading(
        words.cut,
        words.cutWhy,
        tick([square.start + 4, squareHead - 4]),
        [square.start, squareHead],
        room,
      ),
      cutSquare(square, cut.lifts, cushion),
      liftNames(cut, square, context, size),
      cutMarks(square, cushion, context, size),
      say([left, foot], fill(words.heights, { factor: String(factor) }), { size }),
    ].join(''),
  )
}

const numbers = ({ manual, words, q }: Context): string =>
  [
    `${words.found}: ${words.foundWhy} ${fill(words.thin, {
      depth: q('practice.thin-layer'),
      share: q('washout.thin-share'),
    })}`,
    `${words.cut}: ${words.cutWhy} ${fill(words.size, {
      width: q('practice.washout.width'),
      length: q('practice.washout.length'),
    })}, ${q('practice.washout.depth')}`,
    fill(words.lifts, { count: String(manual.charts.washout?.lifts ?? '') }),
    words.cushion,
  ].join('; ')

/** A groove filled as found, which breaks out at its edges, and the square cut that holds. */
export const washout = declareDrawing({
  name: 'washout',
  labels: wording,
  needs: 'washout.lifts',
  draw: (context, size) => draw(context, rooms[size]),
  numbers,
})
