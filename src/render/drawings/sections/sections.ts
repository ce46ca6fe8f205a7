import { fill } from '../../../model/pattern.ts'
import { entries, holding } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { disc, line, measure, type Point, sheetOf, tip } from '../ink.ts'
import { say } from '../letters.ts'
import type { DrawingSize } from '../sizes.ts'
import { type Cut, cutsOf, type Scale, scaleOf } from './frame.ts'
import { depthBelow, glass, layers, type Surface, surfaceOf, trueSlope } from './layers.ts'

const wording = labels('sections', {
  ...entries(
    'rail',
    'cushion',
    'base',
    'baseUnknown',
    'true',
    'higher',
    'straights',
    'turns',
    'glass',
  ),
  slope: holding('width', 'slope'),
  found: holding('slope'),
  heights: holding('factor'),
})
type Context = ContextFor<typeof wording>

/** Where things lie, across a page or in a narrow column; points. */
type Room = {
  readonly width: number
  readonly left: number
  /** Width of the wider section, and height of the higher one. */
  readonly across: number
  readonly high: number
  readonly size: number
  readonly glass: boolean
}

const rooms: Readonly<Record<DrawingSize, Room>> = {
  page: { width: 465, left: 40, across: 262, high: 92, size: 9, glass: true },
  column: { width: 326, left: 10, across: 222, high: 80, size: 8.4, glass: false },
  side: { width: 172, left: 7, across: 98, high: 52, size: 8.2, glass: false },
}

const measures = ({ where }: Cut, { words, q }: Context): string =>
  fill(words.slope, { width: q(`oval.width.${where}`), slope: q(`oval.cross-fall.${where}`) })

/** How far right of the rail the name of a section begins. */
const indent = 8

/** How high above the rail the name stands: clear of the surface that rises below its measures. */
function headingRise(cut: Cut, scale: Scale, context: Context, { size }: Room): number {
  const end = (indent + measures(cut, context).length * size * 0.5) / scale.k
  const surface = Math.min(end, cut.width) * cut.slope * scale.ky
  return Math.max(24 + size, surface + size * 1.35 + 5)
}

/** The name of a section and its two measures, above the low end of the surface. */
const heading = (cut: Cut, at: Point, context: Context, { size }: Room): string =>
  say(at, context.words[cut.where], { size: size + 3, bold: true }) +
  say([at[0], at[1] + size * 1.35], measures(cut, context), { size })

/** How far right of a section its height is drawn, and of that the words; points. */
const beside = { line: 20, label: 6 } as const

/** How much higher the outside edge lies than the rail, and where it was found. */
function rise(cut: Cut, { from, to }: Surface, scale: Scale, c: Context, room: Room): string {
  const { words, q } = c
  const x = to[0] + (room.glass ? beside.line : 8)
  const middle = Math.min((from[1] + to[1]) / 2, from[1] - room.size * 1.2)
  const found = q(`levels.${cut.where}`)
  const label = (row: number, said: string, bold = false): string =>
    say([x + beside.label, middle + row * room.size * 1.2], said, { size: room.size, bold })
  return [
    line(from, [x + 4, from[1]], { pen: 'hair', dash: '4 3' }),
    line(to, [x + 4, to[1]], { pen: 'hair' }),
    measure([x, from[1]], [x, to[1]]),
    label(0, q(`rise.${cut.where}`), true),
    label(1, words.higher),
    cut.found === undefined || found === ''
      ? ''
      : tip([x - 1, from[1] - cut.width * cut.found * scale.ky], 0, 6) +
        (room.glass ? label(2, fill(words.found, { slope: found })) : ''),
  ].join('')
}

/** One section with everything that is said beside it. */
function section(cut: Cut, y: number, scale: Scale, context: Context, room: Room): string {
  const g = context.manual.geometry
  const { left, size } = room
  const surface = surfaceOf(cut, [left, y], scale)
  const under = y + depthBelow(g, scale) + 16
  const post = left - 2
  return [
    layers(surface, g, scale),
    line([post, y + 3], [post, y - 22], { pen: 'bold' }),
    line([post - 3, y - 22], [post + 3, y - 22], { pen: 'bold' }),
    room.glass ? say([post - 5, y - 12], context.words.rail, { anchor: 'end', size }) : '',
    heading(cut, [left + indent, y - headingRise(cut, scale, context, room)], context, room),
    rise(cut, surface, scale, context, room),
    trueSlope(cut, [left, under], scale),
    say([left + cut.width * scale.k + 4, under], context.words.true, { size }),
  ].join('')
}

const baseSaid = ({ manual, words, q }: Context): string =>
  manual.geometry.baseDepth === undefined ? words.baseUnknown : `${words.base} ${q('base.depth')}`

const cushionSaid = ({ words, q }: Context): string =>
  `${words.cushion} ${q('cushion.depth.target')}`

/** Radius of the glass, and how far from the edge its middle stands. */
const lens = { radius: 44, inset: 48 } as const

/** The two layers through a glass, with what they are. */
function magnified(at: Point, mark: Point, context: Context, size: number): string {
  const { manual, words } = context
  const g = manual.geometry
  const seen = glass(g, at, lens.radius)
  return [
    line(mark, [at[0] - lens.radius * 0.8, at[1] - lens.radius * 0.6], { pen: 'hair' }),
    disc(mark, 5),
    seen.drawn,
    say(seen.cushion, cushionSaid(context), { anchor: 'middle', size, bold: true, halo: true }),
    say(seen.base, baseSaid(context), { anchor: 'middle', size, bold: true, halo: true }),
    say([at[0], at[1] + lens.radius + 12], words.glass, { anchor: 'middle', size }),
  ].join('')
}

/** How wide the wider section is drawn: what is said beside the straight ends before the glass. */
function acrossBeside([turns, straights]: readonly [Cut, Cut], { words }: Context, room: Room) {
  if (!room.glass) return room.across
  const said = beside.line + beside.label + words.higher.length * room.size * 0.5
  const straight = room.width - lens.inset - lens.radius - room.left - said
  return Math.min(room.across, straight * Math.max(1, turns.width / straights.width))
}

function draw(context: Context, room: Room): string {
  const { manual, words, alt } = context
  const g = manual.geometry
  const cuts = cutsOf(g)
  const scale = scaleOf(cuts, acrossBeside(cuts, context, room), room.high)
  const { size } = room
  const [turns, straights] = cuts
  const high = (cut: Cut): number => cut.width * cut.slope * scale.ky
  const below = depthBelow(g, scale) + 16
  // The name of a section stands above its low end, or its high end reaches farther up.
  const above = (cut: Cut): number =>
    Math.max(high(cut) + 8, headingRise(cut, scale, context, room) + size + 3)
  const first = above(turns)
  const second = first + below + 10 + above(straights)
  const foot = second + below + size * 2
  const edge = surfaceOf(straights, [room.left, second], scale).to
  const said = room.glass ? [] : [cushionSaid(context), baseSaid(context)]
  const notes = [fill(words.heights, { factor: String(scale.factor) }), ...said]
  return sheetOf(
    room.width,
    foot + (notes.length - 1) * size * 1.25 + 5,
    alt,
    [
      section(turns, first, scale, context, room),
      section(straights, second, scale, context, room),
      room.glass
        ? magnified(
            [room.width - lens.inset, second - 22],
            [edge[0] - 14, edge[1] + 2],
            context,
            size,
          )
        : '',
      ...notes.map((note, i) => say([room.left, foot + i * size * 1.25], note, { size })),
    ].join(''),
  )
}

/** Measures of both sections, from the top down. */
function numbers(context: Context): string {
  const { manual, words, q } = context
  const told = cutsOf(manual.geometry).map((cut) => {
    const found = q(`levels.${cut.where}`)
    return [
      `${words[cut.where]}: ${measures(cut, context)}`,
      `${q(`rise.${cut.where}`)} ${words.higher}`,
      ...(found === '' ? [] : [fill(words.found, { slope: found })]),
    ].join(', ')
  })
  return [...told, cushionSaid(context), baseSaid(context)].join('. ')
}

/**
 * Turn and straight in section as wanted, at one scale and one enlargement of heights, with layers
 * as thick as they are; where levels were taken, with the height found.
 */
export const sections = declareDrawing({
  name: 'sections',
  labels: wording,
  draw: (context, size) => draw(context, rooms[size]),
  numbers,
})
