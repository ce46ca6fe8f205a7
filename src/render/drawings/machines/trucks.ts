import type { Point } from '../ink.ts'
import { type PartsKit, partsKit } from './kit.ts'

/** Strokes across a box in both directions: wire mesh. */
function mesh(x: number, width: number, long: number, every: number): readonly [Point, Point][] {
  const h = width / 2
  const lines: [Point, Point][] = []
  for (let y = -h + every; y < h; y += every)
    lines.push([
      [x, y],
      [x + long, y],
    ])
  for (let q = x + every; q < x + long; q += every)
    lines.push([
      [q, -h],
      [q, h],
    ])
  return lines
}

const pickup = (t: PartsKit): string =>
  [
    t.tire([-2.6, -3.4, 2.6, 0.9]),
    t.tire([-2.6, 2.5, 2.6, 0.9]),
    t.tire([8.4, -3.4, 2.6, 0.9]),
    t.tire([8.4, 2.5, 2.6, 0.9]),
    t.box([-4.5, -3.1, 18, 6.2], { round: 1 }),
    t.box([-4, -2.6, 6.5, 5.2], { pen: 0.6 }),
    t.area(
      [
        [3.4, -2.4],
        [7, -2.6],
        [8.2, -2.2],
        [8.2, 2.2],
        [7, 2.6],
        [3.4, 2.4],
      ],
      'stone',
      0.7,
    ),
  ].join('')

/** Pickup with a light screen or float. */
export function screen(k: number, width: number, pen: number): string {
  const t = partsKit(k, pen)
  const h = width / 2
  return [
    t.line(
      [
        [-10, -h],
        [-4.5, 0],
        [-10, h],
      ],
      0.7,
    ),
    t.box([-16, -h, 6, width], { pen: 1 }),
    t.strokes(mesh(-16, width, 6, Math.max(0.8, 2.2 / k)), 0.35),
    t.box([-10.6, -h, 1, width], { fill: 'ink' }),
    pickup(t),
  ].join('')
}

/** Water truck with the fan of its spray bar. */
export function waterTruck(k: number, width: number, pen: number): string {
  const t = partsKit(k, pen)
  const h = width / 2
  const jets = Array.from({ length: 7 }, (_, i) => -1 + i / 3)
  return [
    t.area(
      [
        [-10, -3.6],
        [-14.6, -h],
        [-14.6, h],
        [-10, 3.6],
      ],
      'none',
      0.6,
    ),
    t.strokes(
      jets.map((share): readonly [Point, Point] => [
        [-10, share * 3.6],
        [-14.6, share * h],
      ]),
      0.5,
    ),
    t.box([-10.4, -4, 0.9, 8], { fill: 'ink' }),
    ...[-8, -5, 11.5].flatMap((x) => [t.tire([x, -4.3, 2.8, 1]), t.tire([x, 3.3, 2.8, 1])]),
    t.box([-9, -3.9, 18.5, 7.8], { round: 3.4 }),
    t.disc([0, 0], 1.3),
    t.box([10, -3.9, 6.6, 7.8], { round: 0.9 }),
    t.area(
      [
        [13, -3],
        [15.4, -3],
        [15.4, 3],
        [13, 3],
      ],
      'stone',
      0.7,
    ),
  ].join('')
}

/** Roller with one smooth drum ahead. */
export function drumRoller(k: number, width: number, pen: number): string {
  const t = partsKit(k, pen)
  const h = width / 2
  return [
    t.box([3, -h - 0.5, 6.4, width + 1], { round: 0.4 }),
    t.box([4, -h, 4.6, width], { fill: 'stone', pen: 1 }),
    t.strokes(
      [0.25, 0.5, 0.75].map((share): readonly [Point, Point] => [
        [4, -h + width * share],
        [8.6, -h + width * share],
      ]),
      0.5,
    ),
    t.tire([-7, -h + 0.1, 4.6, 1.6]),
    t.tire([-7, h - 1.7, 4.6, 1.6]),
    t.box([-8, -2.2, 8.4, 4.4], { round: 0.5 }),
    t.box([-1.6, -2.2, 4, 4.4], { round: 0.4 }),
    t.disc([0.4, 0], 0.9, 'ink'),
  ].join('')
}

/**
 * Empty dump truck; its tail is 9 ft behind its middle.
 * @param wide From outside to outside of its rear tires, feet.
 */
export function dumpTruck(k: number, wide: number, pen: number): string {
  const t = partsKit(k, pen)
  const h = wide / 2
  return [
    ...[-7.6, -4].flatMap((x) => [t.tire([x, -h, 3, 1.3]), t.tire([x, h - 1.3, 3, 1.3])]),
    t.tire([10, -h + 0.2, 3, 1]),
    t.tire([10, h - 1.2, 3, 1]),
    t.box([-9, -h + 0.4, 15.5, wide - 0.8], { pen: 1.1 }),
    t.box([-8, -h + 1.2, 13.5, wide - 2.4], { pen: 0.5, fill: 'stone' }),
    t.box([7.2, -h + 0.5, 5.6, wide - 1], { round: 0.6 }),
    t.box([12.8, -h + 1.5, 3, wide - 3], { round: 0.8 }),
    t.area(
      [
        [10.4, -h + 1.1],
        [12.2, -h + 1.4],
        [12.2, h - 1.4],
        [10.4, h - 1.1],
      ],
      'stone',
      0.7,
    ),
  ].join('')
}
