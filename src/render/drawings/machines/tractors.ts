import { type Point, placed } from '../ink.ts'
import { type PartsKit, partsKit } from './kit.ts'

const tractor = (t: PartsKit): string =>
  [
    t.tire([-3, -3.7, 5, 1.5]),
    t.tire([-3, 2.2, 5, 1.5]),
    t.tire([7, -2.9, 2.6, 1]),
    t.tire([7, 1.9, 2.6, 1]),
    t.line([
      [8.3, -2],
      [8.3, 2],
    ]),
    t.box([1, -1.35, 8.6, 2.7], { round: 0.6 }),
    t.box([-2.6, -2.1, 4.4, 4.2], { round: 0.4 }),
    t.disc([-0.7, 0], 0.95, 'ink'),
  ].join('')

/** The middle of a drag harrow behind its tractor, feet. */
const harrowMiddle = -9.8

/** A drag harrow around its own middle, and how far out its chains are hooked. */
function drag(t: PartsKit, k: number, width: number): string {
  const h = width / 2
  const rows = [3, 0.6, -1.8]
  const count = Math.max(4, Math.round(width * (k > 3 ? 1.5 : 0.6)))
  const teeth = rows.flatMap((x, row) =>
    Array.from({ length: count }, (_, i): readonly [Point, Point] => {
      const y = -h + ((i + 0.5 + (row % 2) * 0.4 - 0.2) * width) / count
      return [
        [x, y],
        [x - 1.3, y],
      ]
    }),
  )
  return [
    t.box([-3.4, -h, 6.8, width], { pen: 1 }),
    t.strokes(teeth, 0.8),
    t.strokes(
      rows.map((x): readonly [Point, Point] => [
        [x, -h],
        [x, h],
      ]),
      0.6,
    ),
  ].join('')
}

/** Tractor with a drag harrow, its end at the rail ahead by an angle. */
export function angledHarrow(k: number, width: number, pen: number, angle: number): string {
  const t = partsKit(k, pen)
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)]
  const hooked = (side: -1 | 1): Point => {
    const [x, y] = [3.4, side * width * 0.35]
    return [harrowMiddle + x * cos - y * sin, x * sin + y * cos]
  }
  return [
    t.line(
      [
        [-2.6, 0],
        [-4.4, 0],
      ],
      1.4,
    ),
    t.line([hooked(-1), [-4.4, 0], hooked(1)]),
    placed([harrowMiddle * k, 0], drag(t, k, width), { turn: (angle * 180) / Math.PI }),
    tractor(t),
  ].join('')
}

/** Tractor with a drag harrow. */
export const harrow = (k: number, width: number, pen: number): string =>
  angledHarrow(k, width, pen, 0)

/** Tractor with a conditioner: a box on wheels with one row of cutters and a leveling bar. */
export function conditioner(k: number, width: number, pen: number): string {
  const t = partsKit(k, pen)
  const h = width / 2
  const count = Math.max(4, Math.round(width * (k > 3 ? 1.6 : 0.7)))
  const cutters = Array.from({ length: count }, (_, i): readonly [Point, Point] => {
    const y = -h + ((i + 0.5) * width) / count
    return [
      [-8.4, y - 0.25],
      [-9.6, y + 0.25],
    ]
  })
  return [
    t.line(
      [
        [-2.6, 0],
        [-7, 0],
      ],
      1.4,
    ),
    t.tire([-12.4, -h - 0.2, 2.6, 0.9]),
    t.tire([-12.4, h - 0.7, 2.6, 0.9]),
    t.box([-13.6, -h, 7, width], { pen: 1 }),
    t.strokes(cutters, 1.3),
    t.box([-13.2, -h, 1, width], { fill: 'ink' }),
    tractor(t),
  ].join('')
}

/** The ends of a blade set at an angle around a middle, the end at the rail ahead. */
function bladeEnds(width: number, angle: number, middle: number): readonly [Point, Point] {
  const h = width / 2
  const [ahead, aside] = [h * Math.sin(angle), h * Math.cos(angle)]
  return [
    [middle + ahead, -aside],
    [middle - ahead, aside],
  ]
}

const blade = (t: PartsKit, width: number, angle: number, middle: number): string => {
  const [rail, slope] = bladeEnds(width, angle, middle)
  const thick = 0.45
  return t.area(
    [
      [rail[0] + thick, rail[1]],
      [slope[0] + thick, slope[1]],
      [slope[0] - thick, slope[1]],
      [rail[0] - thick, rail[1]],
    ],
    'ink',
  )
}

/** Where the blade of either machine turns, feet ahead of the machine's middle. */
const bladeMiddle = { grader: 1.2, tractor: -8 } as const

/** Tractor with a blade behind. */
export function backBlade(k: number, width: number, pen: number, angle: number): string {
  const t = partsKit(k, pen)
  return [
    t.line(
      [
        [-2.6, 0],
        [bladeMiddle.tractor, 0],
      ],
      1.6,
    ),
    blade(t, width, angle, bladeMiddle.tractor),
    tractor(t),
  ].join('')
}

/** Motor grader. */
export function grader(k: number, width: number, pen: number, angle: number): string {
  const t = partsKit(k, pen)
  return [
    ...[-12.5, -8.4].flatMap((x) => [t.tire([x, -4.2, 3.7, 1.5]), t.tire([x, 2.7, 3.7, 1.5])]),
    t.tire([11.2, -4.2, 3.7, 1.4]),
    t.tire([11.2, 2.8, 3.7, 1.4]),
    t.line(
      [
        [13, -3.4],
        [13, 3.4],
      ],
      1.3,
    ),
    t.box([-13.5, -2.4, 10, 4.8], { round: 0.5 }),
    t.box([-4.6, -2.1, 4.4, 4.2], { round: 0.4 }),
    t.disc([-2.6, 0], 0.9, 'ink'),
    t.area([
      [-0.2, -0.7],
      [13.4, -0.45],
      [13.4, 0.45],
      [-0.2, 0.7],
    ]),
    t.disc([bladeMiddle.grader, 0], 2.3, 'paper'),
    blade(t, width, angle, bladeMiddle.grader),
  ].join('')
}
