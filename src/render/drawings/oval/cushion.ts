import type { OvalGeometry } from '../../../model/manual/geometry.ts'
import type { MapCell } from '../../../model/manual/survey.ts'
import type { Manual } from '../../../model/manual.ts'
import { entries } from '../../../validate/schemas/words/group.ts'
import { type ContextFor, declareDrawing, labels } from '../drawing.ts'
import { line, type Point, path, svg, text } from '../svg.ts'
import { onOval, ovalPath } from './shape.ts'
import { stationText } from './zones.ts'

const wording = labels('cushion', entries('tooShallow', 'asWanted', 'tooDeep', 'wider'))
type Context = ContextFor<typeof wording>
type Map = NonNullable<Manual['cushionMap']>

const width = 900
const margin = 46

/** Greatest shade of a field that is far too deep: text on it stays readable. */
const darkest = 0.56

/**
 * How dark a field is: white where far too shallow, the middle grey as wanted, dark where far too
 * deep.
 */
function shade(value: number, { target, tolerance }: Pick<Map, 'target' | 'tolerance'>): number {
  const off = (value - target) / tolerance
  return ((Math.min(4, Math.max(-4, off)) + 4) / 8) * darkest
}

/** Where the oval lies on the map; the track is drawn wider than it is by a whole factor. */
type Frame = {
  readonly g: OvalGeometry
  /** How far outside the rail the survey reaches, m. */
  readonly across: number
  readonly factor: number
  /** Pixels a meter. */
  readonly k: number
  readonly middle: Point
}

function frameOf(g: OvalGeometry, map: Map): Frame {
  const across = Math.max(1, ...map.cells.map((c) => c.outer))
  // The band is as wide as its numbers need, but leaves room for the middle of the oval.
  const factor = Math.max(1, Math.round((0.5 * g.radius) / across))
  const k = (width - 2 * margin) / (g.straight + 2 * (g.radius + across * factor))
  return { g, across, factor, k, middle: [width / 2, margin + k * (g.radius + across * factor)] }
}

function onMap({ g, factor, k, middle }: Frame, station: number, offset: number): Point {
  const { point } = onOval(g, station, offset * factor)
  return [middle[0] + k * point[0], middle[1] + k * point[1]]
}

/** A field of the map as a closed line: along the inner edge, back along the outer. */
function field(cell: MapCell, frame: Frame): string {
  const steps = Math.max(2, Math.ceil((cell.to - cell.from) / (frame.g.railLength / 96)))
  const at = (i: number): number => cell.from + ((cell.to - cell.from) * i) / steps
  const inner = Array.from({ length: steps + 1 }, (_, i) => onMap(frame, at(i), cell.inner))
  const outer = Array.from({ length: steps + 1 }, (_, i) => onMap(frame, at(steps - i), cell.outer))
  return `${[...inner, ...outer].map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('')}Z`
}

const filled = (d: string, opacity: number): string =>
  `<path d="${d}" fill="currentColor" fill-opacity="${opacity.toFixed(3)}" stroke="currentColor" stroke-width="0.6"/>`

/** Signs that need no shade to be told apart. */
const sign = (value: number, { target, tolerance }: Map): string =>
  value > target + tolerance + 1e-6 ? '+' : value < target - tolerance - 1e-6 ? '−' : ''

/** The depth of a field, along the track, where a field is long, and never upside down. */
function number(cell: MapCell, map: Map, frame: Frame, size: number): string {
  const station = (cell.from + cell.to) / 2
  const [x, y] = onMap(frame, station, (cell.inner + cell.outer) / 2)
  const { out } = onOval(frame.g, station, 0)
  const along = (Math.atan2(out[0], -out[1]) * 180) / Math.PI
  const turn = Math.abs(along) > 90 ? along - Math.sign(along) * 180 : along
  const s = sign(cell.value, map)
  return text(
    [x, y + 4.5],
    size > 0 ? `${s}${s === '' ? '' : ' '}${cell.text.replace(/ (in|mm)$/, '')}` : s,
    'middle',
    size > 0 ? size : 15,
    `transform="rotate(${turn.toFixed(1)} ${x.toFixed(1)} ${y.toFixed(1)})"`,
  )
}

function legend(map: Map, words: Context['words'], at: Point): string {
  const steps: [number, string][] = [
    [-2, `− ${words.tooShallow}`],
    [0, words.asWanted],
    [2, `+ ${words.tooDeep}`],
  ]
  return steps
    .map(([off, label], i) => {
      const y = at[1] + i * 26
      const box = `M${at[0]} ${y}h34v18h-34Z`
      return (
        filled(box, shade(map.target + off * map.tolerance, map)) +
        text([at[0] + 44, y + 14], label, 'start', 16)
      )
    })
    .join('')
}

/** Where stations are counted from. */
function start(frame: Frame): string {
  const from = onMap(frame, 0, frame.across)
  const to = onMap(frame, 0, frame.across + 8 / (frame.factor * frame.k))
  return line(from, to, 'line') + text([to[0], to[1] + 15], '0', 'middle', 15)
}

function draw({ manual, words, q, alt }: Context): string {
  const map = manual.cushionMap
  if (!map) return ''
  const frame = frameOf(manual.geometry, map)
  const { g, across, factor, k, middle: c } = frame
  // With many stations the fields are too short for numbers; the shade and the signs stay.
  const size = Math.min(...map.cells.map((cell) => (cell.to - cell.from) * k)) > 52 ? 15 : 0
  const wanted = `${q('cushion.depth.target')} ± ${q('cushion.depth.tolerance')}`
  return svg(
    width,
    c[1] + k * (g.radius + across * factor) + margin,
    alt,
    [
      ...map.cells.map((cell) => filled(field(cell, frame), shade(cell.value, map))),
      path(ovalPath(g, 0, 0, k, c), 'bold'),
      ...map.cells.map((cell) => number(cell, map, frame, size)),
      start(frame),
      text([c[0], c[1] - 44], wanted, 'middle', 17),
      legend(map, words, [c[0] - 70, c[1] - 26]),
      text([c[0], c[1] + 74], `${words.wider} ${factor}`, 'middle', 15),
    ].join(''),
  )
}

/** The readings of each class, with their stations. */
function numbers({ manual, words }: Context): string {
  const map = manual.cushionMap
  if (!map) return ''
  const feet = manual.facility.system === 'us'
  const said = (wanted: string): string =>
    map.cells
      .filter((cell) => sign(cell.value, map) === wanted)
      .map((cell) => `${cell.text} (${stationText((cell.from + cell.to) / 2, feet)})`)
      .join(', ')
  return [
    `${words.tooShallow}: ${said('−')}`,
    `${words.tooDeep}: ${said('+')}`,
    `${words.asWanted}: ${said('')}`,
  ].join('; ')
}

/**
 * The oval with the depth found in every field of the survey; the track is drawn wider than it is,
 * so that the numbers fit.
 */
export const cushion = declareDrawing({
  name: 'cushion',
  labels: wording,
  needs: 'depths.mean',
  wide: true,
  draw,
  numbers,
})
