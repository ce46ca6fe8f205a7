import { fill } from '../../../model/pattern.ts'
import { grainsIn, slanted } from '../boxes.ts'
import { arrowAlong, measure, type Point, placed, poly, slab } from '../ink.ts'
import { say } from '../letters.ts'
import { machineOf } from './machine-of.ts'
import type { Ring } from './ring.ts'
import type { PassContext } from './words.ts'

/** Where the close-up stands: the middle of its upper edge, and its size, points. */
export type Window = {
  readonly middle: number
  readonly top: number
  readonly wide: number
  readonly high: number
}

/** How wide the row of material is that a blade leaves, m. */
const rowWidth = 0.8

/** Whether a row of material lies beside each strip: what is drawn out at an angle. */
export const pushesRow = ({ figure }: Ring['pattern']): boolean =>
  ['grade', 'grade-band', 'draw-in'].includes(figure)

/** Everything that the parts of a close-up measure from. */
function scene({ frame: { g }, pattern, lanes }: Ring, window: Window) {
  const { covers, over, from } = pattern
  const blade = pushesRow(pattern)
  const step = lanes.count > 1 ? covers - over : 0
  const total = step + covers + (blade ? rowWidth : 0)
  const k = Math.min(14.5, window.high / total)
  const way = g.direction === 'clockwise' ? -1 : 1
  const left = -window.wide / 2 + 46
  const right = window.wide / 2
  const machine = machineOf(pattern)
  const middle = right - (machine.reach + 0.4) * k
  return {
    blade,
    step,
    total,
    k,
    left,
    right,
    machine,
    /** Of the machine, and where its tool meets new ground, along the drawing. */
    at: middle,
    tool: middle + machine.tool * k,
    x: (along: number): number => window.middle + way * along,
    /** From the edge at which the work begins. */
    y: (off: number): number =>
      from === 'rail' ? window.top + off * k : window.top + (total - off) * k,
    way,
  }
}

type Scene = ReturnType<typeof scene>

/** A box between two places along and two off the edge, whichever way the drawing runs. */
function boxOf({ x, y }: Scene, [a, b]: Point, [c, d]: Point): { at: Point; size: Point } {
  const [left, right] = [Math.min(x(a), x(b)), Math.max(x(a), x(b))]
  const [top, bottom] = [Math.min(y(c), y(d)), Math.max(y(c), y(d))]
  return { at: [left, top], size: [right - left, bottom - top] }
}

/** Strips that are done, with the edges of each. */
function strips(s: Scene, covers: number, spray: boolean): string {
  const { left, right, tool, step } = s
  const one = (to: number, [from, end]: Point): string => {
    const { at, size } = boxOf(s, [left, to], [from, end])
    return (
      slab(at, ...size, { fill: 'stone', stroke: 'none' }) +
      (spray ? grainsIn(at, size, 6.5, 0.5) : '')
    )
  }
  const edge = (off: number, to: number): string =>
    poly(
      [
        [s.x(left), s.y(off)],
        [s.x(to), s.y(off)],
      ],
      { pen: 'hair' },
    )
  if (step === 0) return one(tool, [0, covers]) + edge(covers, tool)
  const twice = boxOf(s, [left, tool], [step, covers])
  return [
    one(right, [0, covers]),
    one(tool, [step, step + covers]),
    edge(covers, right),
    edge(step, tool),
    edge(step + covers, tool),
    slanted(twice.at, twice.size, 3),
  ].join('')
}

/** The row of material that a blade pushes out, before it and behind it. */
function rows(s: Scene, { covers, tool: width, angle }: Ring['pattern']): string {
  const { x, y, k, step, left, right, tool } = s
  const lead = (width / 2) * Math.sin(angle) * k
  const before = boxOf(
    s,
    [tool + lead * (1 - (2 * (covers - step)) / covers) + 3, right],
    [covers, covers + rowWidth],
  )
  const behind = boxOf(s, [left, tool - lead + 4], [step + covers, step + covers + rowWidth])
  const alongBlade = [0.3, 0.62].map((share) => {
    const from: Point = [x(tool + lead * (1 - 2 * share) + 9), y(step + covers * (share - 0.07))]
    const to: Point = [x(tool + lead * (1 - 2 * share) + 2), y(step + covers * (share + 0.16))]
    return arrowAlong([from, to], { pen: 1 }, 4.5)
  })
  return [
    step > 0 ? grainsIn(before.at, before.size, 2.9, 0.65) : '',
    grainsIn(behind.at, behind.size, 2.9, 0.65),
    ...alongBlade,
  ].join('')
}

/** Names of the strips, and what they measure. */
function names(s: Scene, ring: Ring, { words, q }: PassContext): string {
  const { x, y, left, right, step, way, tool } = s
  const { covers, figure, angle, overlap, width, from, half } = ring.pattern
  const [near, far] = way > 0 ? (['start', 'end'] as const) : (['end', 'start'] as const)
  const between = (a: number, b: number): number => (y(a) + y(b)) / 2 + 3
  const lap = (n: number, a: number, b: number): string =>
    say([x(left + 6), between(a, b)], fill(words.lap, { number: n }), {
      anchor: near,
      bold: true,
      halo: true,
    })
  const size = (a: number, b: number, said: string): string =>
    measure([x(left - 9), y(a)], [x(left - 9), y(b)]) +
    say([x(left - 14), between(a, b)], said, { anchor: far, bold: true })
  const angled = angle > 0.02
  const edge = from === 'rail' ? words.rail : words.outside
  return [
    lap(1, 0, step > 0 ? step : covers),
    step > 0 ? lap(2, covers, step + covers) : '',
    angled ? '' : size(0, covers, q(width)),
    step > 0 ? size(covers, step + covers, half ? words.half : `+${q(`${figure}.effective`)}`) : '',
    say([x(right), from === 'rail' ? y(0) - 4 : y(0) + 10], edge, { anchor: far }),
    step > 0 && overlap !== undefined
      ? poly(
          [
            [x(left + 52), y((step + covers) / 2)],
            [x(left + 60), between(0, step) - 3],
          ],
          { pen: 'hair' },
        ) +
        say([x(left + 62), between(0, step)], fill(words.twice, { overlap: q(overlap) }), {
          anchor: near,
          halo: true,
        })
      : '',
    angled && from === 'rail' ? say([x(left), y(0) - 4], words.firstEnd, { anchor: near }) : '',
    s.blade
      ? say([x(tool - 46), y(step + covers + rowWidth) + 10], words.row, { anchor: 'middle' })
      : '',
  ].join('')
}

/** Part of a straight from above: one strip done, the next being laid over its edge. */
export function closeUp(ring: Ring, window: Window, context: PassContext): string {
  const s = scene(ring, window)
  const { pattern } = ring
  const { covers } = pattern
  const middle = s.step + covers / 2
  const edge: readonly Point[] = [
    [s.x(s.left - 4), s.y(0)],
    [s.x(s.right + 4), s.y(0)],
  ]
  return [
    strips(s, covers, pattern.figure === 'spray'),
    s.blade ? rows(s, pattern) : '',
    poly(edge, { pen: pattern.from === 'rail' ? 'bold' : 'line' }),
    placed([s.x(s.at), s.y(middle)], s.machine.draw(s.k, 1), {
      turn: s.way > 0 ? 0 : 180,
      mirrored: s.way < 0,
    }),
    names(s, ring, context),
  ].join('')
}
