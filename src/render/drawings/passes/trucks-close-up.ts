import { fill } from '../../../model/pattern.ts'
import { foot } from '../../../model/quantity/units.ts'
import { grainsIn, slanted } from '../boxes.ts'
import { type Point, placed, poly, slab } from '../ink.ts'
import { say } from '../letters.ts'
import { dumpTruck } from '../machines/trucks.ts'
import { looseBands } from '../rolling/table.ts'
import { printsAt } from '../rolling/tracks.ts'
import type { Window } from './close-up.ts'
import type { Ring } from './ring.ts'
import type { PassContext } from './words.ts'

/** How far the middle of a truck stands before that of the next, feet. */
const apart = 30

/**
 * The first lap from above: trucks one behind the other along the rail, each with the bands that its
 * tires leave, and loose ground between them.
 */
export function trucksCloseUp(ring: Ring, window: Window, context: PassContext): string {
  const block = context.manual.charts.rolling
  if (!block) return ''
  const { words } = context
  const way = ring.frame.g.direction === 'clockwise' ? -1 : 1
  const places = block.places.slice(0, Math.min(block.trucks, 2)).map((p) => p.offset)
  const prints = places.map((place) => printsAt(block, place))
  const first = prints[0] ?? []
  const wide = (first.at(-1)?.[1] ?? 0) - (first[0]?.[0] ?? 0)
  const far = (prints.at(-1)?.at(-1)?.[1] ?? wide) + 0.35
  const k = Math.min(
    (window.high - 12) / far,
    (window.wide - 20) / (apart * (places.length + 0.4) * foot),
  )
  const [left, right] = [-window.wide / 2, window.wide / 2]
  const x = (along: number): number => window.middle + way * along
  const y = (off: number): number => window.top + off * k
  const box = (a: number, b: number, from: number, to: number): [Point, Point] => [
    [Math.min(x(a), x(b)), y(from)],
    [Math.abs(b - a), (to - from) * k],
  ]
  const at = (i: number): number => right - (17 + i * apart) * foot * k
  const bands = prints.flatMap((own, i) =>
    own.map(([from, to]) => {
      const [corner, size] = box(left, at(i), from, to)
      return (
        slab(corner, ...size, { fill: 'paper', pen: 'hair' }) +
        slanted(corner, size, 3.2, { width: 0.6, falling: i % 2 === 1 })
      )
    }),
  )
  const free = looseBands(prints.flat(), far).map(([from, to]) => {
    const [corner, size] = box(left, at(places.length - 1) - 9 * foot * k, from, to)
    return size[1] > 4 ? grainsIn(corner, size, 4.4, 0.5) : ''
  })
  const trucks = places.map((place, i) => {
    const name = fill(words.truck, { number: i + 1 })
    const middle: Point = [x(at(i)), y(place + wide / 2)]
    const body = placed(middle, dumpTruck(k * foot, wide / foot, 0.9), {
      turn: way > 0 ? 0 : 180,
      mirrored: way < 0,
    })
    return (
      body +
      say([middle[0] - way * 6, middle[1] + 3], name, { anchor: 'middle', bold: true, halo: true })
    )
  })
  const end: readonly Point[] = [
    [x(left), y(0) - 1.5],
    [x(right), y(0) - 1.5],
  ]
  return [
    ...free,
    ...bands,
    poly(end, { pen: 'bold' }),
    ...trucks,
    say([x(right), y(0) - 5], words.rail, { anchor: way > 0 ? 'end' : 'start' }),
    say([window.middle, y(far) + 9], words.loose, { anchor: 'middle' }),
  ].join('')
}
