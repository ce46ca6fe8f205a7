import type { RollingBlock } from '../../../model/manual/charts.ts'
import { fill, type Pattern } from '../../../model/pattern.ts'
import { grainsIn, slanted } from '../boxes.ts'
import { slab } from '../ink.ts'
import { say } from '../letters.ts'
import { type Band, merged, printsAt, rollingRows } from './tracks.ts'

/** Where the rows stand: `k` points a meter from `left`, which is the rail. */
export type Table = {
  readonly left: number
  readonly k: number
  readonly top: number
  /** How far from the rail the rows reach, m. */
  readonly view: number
  readonly row: number
  readonly rows: number
  readonly size: number
}

/** As many rows as show the first block and the first lap beyond it. */
export const rowsToShow = (block: RollingBlock, beyond: boolean): number =>
  Math.min(
    rollingRows(block).length,
    Math.ceil((block.places.length + (beyond && block.starts.length > 1 ? 1 : 0)) / block.trucks),
  )

const within = ([from, to]: Band, view: number): Band | undefined =>
  from >= view ? undefined : [from, Math.min(to, view)]

/** Prints of each truck in strokes of its own, with its number. */
function prints(block: RollingBlock, t: Table, row: number, y: number): string {
  const high = t.row - 4
  const laps = rollingRows(block)[row] ?? []
  return laps
    .flatMap(({ truck, place }) =>
      printsAt(block, place).map((band) => {
        const cut = within(band, t.view)
        if (!cut) return ''
        const x = t.left + cut[0] * t.k
        const wide = (cut[1] - cut[0]) * t.k
        const whole = cut[1] === band[1]
        return (
          slab([x, y], wide, high, { fill: 'paper', pen: 'line' }) +
          slanted([x, y], [wide, high], 2.8, { falling: truck % 2 === 0 }) +
          (whole
            ? say([x + wide / 2, y + high / 2 + t.size * 0.34], String(truck), {
                anchor: 'middle',
                size: t.size,
                narrow: true,
                halo: true,
              })
            : '')
        )
      }),
    )
    .join('')
}

/** Rows of laps: what is loose, what is shut already, what each truck rolls on this lap. */
export function rollingTable(
  block: RollingBlock,
  t: Table,
  words: { readonly lap: Pattern<'number'> },
): string {
  const done: Band[] = []
  const rows = Array.from({ length: t.rows }, (_, row) => {
    const y = t.top + row * t.row
    const high = t.row - 4
    const shut = merged(done).flatMap((band) => {
      const cut = within(band, t.view)
      return cut
        ? slab([t.left + cut[0] * t.k, y], (cut[1] - cut[0]) * t.k, high, {
            fill: 'stone',
            pen: 'hair',
          })
        : ''
    })
    const free = looseBands(done, t.view).map(([from, to]) =>
      grainsIn([t.left + from * t.k, y + 1], [(to - from) * t.k, high - 2], 4.2, 0.5),
    )
    const body = [...free, ...shut, prints(block, t, row, y)].join('')
    for (const { place } of rollingRows(block)[row] ?? []) done.push(...printsAt(block, place))
    return (
      body +
      say([t.left - 6, y + high / 2 + 3], fill(words.lap, { number: row + 1 }), {
        anchor: 'end',
        bold: true,
        size: t.size,
      })
    )
  })
  return rows.join('')
}

/** Ground that no tire has rolled, out to a distance. */
export function looseBands(done: readonly Band[], to: number): readonly Band[] {
  const gaps: Band[] = []
  let at = 0
  for (const [from, end] of merged(done)) {
    if (from > at + 1e-9 && at < to) gaps.push([at, Math.min(from, to)])
    at = Math.max(at, end)
  }
  if (at < to - 1e-9) gaps.push([at, to])
  return gaps
}
