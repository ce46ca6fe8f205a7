import type { RollingBlock } from '../../../model/manual/charts.ts'
import { fill } from '../../../model/pattern.ts'
import { slanted } from '../boxes.ts'
import { measure, poly, slab } from '../ink.ts'
import { say, widthOf, withFractions } from '../letters.ts'
import { printsAt, rollingRows } from './tracks.ts'
import { type Across, truckBehind, truckHigh } from './trucks.ts'
import type { RollingContext as Context } from './words.ts'

/** Width of the drawing, and where its rail stands. */
export const [page, left] = [465, 58]

/** Outer edge of the outside tires of a truck whose inside tires run at a place, m. */
export const outerAt = (block: RollingBlock, place: number): number =>
  printsAt(block, place).at(-1)?.[1] ?? place

export const railName = ({ manual, words }: Context): string =>
  manual.geometry.rail === 'pylons' ? words.pylons : words.hubRail

/** The trucks of the first row from behind, with what is measured between their tires. */
export function behind(
  block: RollingBlock,
  across: Across,
  context: Context,
): { drawn: string; foot: number } {
  const { words, q, manual } = context
  const { k } = across
  const x = (off: number): number => left + off * k
  const first = rollingRows(block)[0] ?? []
  const parts: string[] = []
  let y = 4
  for (const [i, { truck, place }] of first.slice(0, 2).entries()) {
    const ground = y + truckHigh
    parts.push(
      truckBehind(
        block,
        across,
        place,
        ground,
        fill(words.behind, { number: truck }),
        manual.geometry.rail,
      ),
    )
    const row = ground + 8
    if (i === 0) {
      const [a, b] = [printsAt(block, place)[block.perSide - 1]?.[1] ?? 0, place + block.track]
      parts.push(measure([x(a), row], [x(b), row]))
      parts.push(
        say([x((a + b) / 2), row + 11], fill(words.between, { width: block.between }), {
          anchor: 'middle',
          bold: true,
        }),
      )
      const tread = q('gear.roll-tires.tire-width')
      const said =
        block.perSide > 1
          ? fill(words.tires, { tread, gap: q('gear.roll-tires.tire-gap') })
          : fill(words.tire, { tread })
      parts.push(say([x(outerAt(block, place)) + 6, ground - 8], said))
    } else {
      parts.push(measure([x(0), row], [x(place), row]))
      parts.push(
        say([x(place) + 6, row + 3], fill(words.farther, { move: q('roll.move') }), {
          bold: true,
          halo: true,
        }),
      )
    }
    y = ground + (i === 0 ? 22 : 14)
  }
  return { drawn: parts.join(''), foot: y }
}

/** What is shut when the left strips have met the right ones. */
export const shutText = (block: RollingBlock, { words, q }: Context): string =>
  fill(words.shut, { width: q('roll.width'), laps: lapsPerStrip(block) })

/** Laps that each truck drives in a strip: a fraction where they share the last one. */
export const lapsPerStrip = ({ places, trucks }: RollingBlock): number =>
  Math.round((places.length / trucks) * 10) / 10

/** What each truck drives, and where there are several, what all do. */
export const totalText = (block: RollingBlock, { words, q }: Context): string =>
  fill(words.total, { each: q('roll.each') }) +
  (block.trucks > 1 ? `, ${fill(words.all, { laps: q('roll.laps') })}` : '')

/** Where the strips begin, each over its left edge; on a line above where two stand close. */
function beginnings(block: RollingBlock, x: (off: number) => number, y: number): string {
  let end = -Infinity
  return block.starts
    .map((start, i) => {
      const said = block.begins[i] ?? ''
      const isClose = x(start) < end + 4
      end = x(start) + widthOf(withFractions(said), 8.4, true)
      return say([x(start), isClose ? y - 9.6 : y], said, { size: 8.4, bold: true, halo: true })
    })
    .join('')
}

/**
 * Where new ground begins. A lone truck moves out by the jump; of several, each has its own way to
 * go there, so it is told its place.
 * @param most Of how many trucks it is said.
 */
export function thenText(block: RollingBlock, { words, q }: Context, most = block.trucks): string {
  if (block.trucks < 2) return fill(words.then, { jump: q('roll.jump') })
  const next = rollingRows(block)
    .flat()
    .slice(block.places.length, block.places.length + most)
    .map(({ truck, at }) => fill(words.drives, { truck, at: at ?? '' }))
  return next.length === 0 ? '' : fill(words.thenAt, { trucks: next.join(', ') })
}

/** All strips across the track, to scale, the last over the one before. */
export function wholeWidth(block: RollingBlock, y: number, context: Context): string {
  const { words } = context
  const k = (page - left - 8) / block.across
  const x = (off: number): number => left + off * k
  const boxes = block.starts.map((start, i) => {
    const end = start + block.width
    const own = Math.min(end, block.starts[i + 1] ?? block.across)
    return (
      slab([x(start), y], block.width * k, 14, {
        fill: i % 2 === 0 ? 'stone' : 'paper',
        pen: 'line',
      }) +
      say(
        [
          (x(Math.max(start, (block.starts[i - 1] ?? -block.width) + block.width)) + x(own)) / 2,
          y + 10.4,
        ],
        String(i + 1),
        { anchor: 'middle', size: 10, narrow: true, halo: true },
      )
    )
  })
  const [before, last] = block.starts.slice(-2)
  const shared = before !== undefined && last !== undefined ? before + block.width - last : 0
  const twice = last !== undefined && shared > 2 * block.overlap
  return [
    ...boxes,
    twice ? slanted([x(last), y], [shared * k, 14], 3.2) : '',
    poly(
      [
        [x(0), y - 4],
        [x(0), y + 18],
      ],
      { pen: 'bold' },
    ),
    poly(
      [
        [x(block.across), y - 4],
        [x(block.across), y + 18],
      ],
      { pen: 'line' },
    ),
    say([left - 6, y + 10], words.above, { anchor: 'end' }),
    say(
      [left, y + 27],
      fill(words.strips, { strips: block.starts.length, laps: lapsPerStrip(block) }),
    ),
    say([left - 6, y - 6], words.starts, { anchor: 'end' }),
    beginnings(block, x, y - 6),
    say([left, y + 38], totalText(block, context), { bold: true }),
    twice ? say([left, y + 49], words.last) : '',
  ].join('')
}
