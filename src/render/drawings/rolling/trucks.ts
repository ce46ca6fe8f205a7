import type { RollingBlock } from '../../../model/manual/charts.ts'
import type { Rail } from '../../../model/oval-choices.ts'
import { area, disc, type Point, poly, slab } from '../ink.ts'
import { say } from '../letters.ts'
import { printsAt } from './tracks.ts'

/** Across the track: `left` is the rail, `k` points a meter. */
export type Across = { readonly left: number; readonly k: number }

/** How much of a tire is drawn, and its bed over it, points. */
const [tireHigh, bedHigh] = [30, 15]
export const truckHigh = tireHigh + bedHigh + 6

/** The inside line: a pylon, or a post with its rail. */
function insideLine(rail: Rail, left: number, ground: number): string {
  const foot: Point = [left - 6, ground]
  return rail === 'pylons'
    ? area(
        [
          [foot[0] - 4, ground],
          [foot[0] - 1.2, ground - 36],
          [foot[0] + 1.2, ground - 36],
          [foot[0] + 4, ground],
        ],
        { fill: 'paper', pen: 'line' },
      )
    : slab([foot[0] - 1.5, ground - 38], 3, 38, { fill: 'paper', pen: 'line' }) +
        slab([foot[0] - 1.5, ground - 40], 9, 5, { fill: 'ink', stroke: 'none' })
}

/** The wheels of a truck from behind, below its bed. */
export function truckBehind(
  block: RollingBlock,
  { left, k }: Across,
  place: number,
  ground: number,
  said: string,
  rail: Rail,
): string {
  const prints = printsAt(block, place)
  const first = prints[0]?.[0] ?? 0
  const last = prints.at(-1)?.[1] ?? 0
  const [a, b] = [left + first * k, left + last * k]
  const top = ground - tireHigh
  const axle = top + tireHigh * 0.42
  const tires = prints.map(([from, to]) => {
    const [x, wide] = [left + from * k, (to - from) * k]
    const grooves = [0.3, 0.55, 0.8].map((share) =>
      poly(
        [
          [x + wide * share, top + 3],
          [x + wide * share, ground - 2],
        ],
        { pen: 'hair', stroke: 'paper' },
      ),
    )
    return (
      slab([x + 0.4, top], wide - 0.8, tireHigh, { fill: 'ink', stroke: 'none' }, 2) +
      grooves.join('')
    )
  })
  return [
    poly(
      [
        [left - 18, ground],
        [b + 26, ground],
      ],
      { pen: 'line' },
    ),
    insideLine(rail, left, ground),
    slab([a + 6, axle], b - a - 12, 4, { fill: 'paper', pen: 'line' }),
    disc([(a + b) / 2, axle + 2], 6, { fill: 'paper', pen: 'line' }),
    ...tires,
    slab([a - 1, top - 4 - bedHigh], b - a + 2, bedHigh, { fill: 'stone', pen: 'line' }),
    say([(a + b) / 2, top - 4 - bedHigh / 2 + 3], said, { anchor: 'middle', bold: true }),
  ].join('')
}

/** Lines from the edges of the tires down to their bands. */
export const dropLines = (
  block: RollingBlock,
  { left, k }: Across,
  place: number,
  from: number,
  to: number,
): string =>
  printsAt(block, place)
    .flat()
    .map((off) =>
      poly(
        [
          [left + off * k, from],
          [left + off * k, to],
        ],
        { pen: 'hair', dash: '2 2' },
      ),
    )
    .join('')
