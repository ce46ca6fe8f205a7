import type { CushionMap, MapCell } from '../../../model/manual/survey.ts'
import { fill } from '../../../model/pattern.ts'
import { boxField } from '../fills.ts'
import { type Point, sheetOf } from '../ink.ts'
import { lines, say, wrapped } from '../letters.ts'
import { classNames, classOf, patterned } from './classes.ts'
import { numberedDisc } from './moves.ts'
import { classSaid, leftSaid, type MapContext, moveSaid, wantedSaid } from './words.ts'

const [size, high] = [8.6, 15]

/** Room for the stations at the left. */
const left = 42

/** Readings of one station in a row, from the rail outward, in the pattern of their class. */
function row(cells: readonly MapCell[], map: CushionMap, [x, y]: Point, wide: number): string {
  return cells
    .map((cell, i) => {
      const at: Point = [x + i * wide, y]
      const said = cell.text.replace(/ (in|mm)$/, '')
      return (
        patterned(boxField(at, [wide, high]), classOf(cell.value, map)) +
        say([at[0] + wide / 2, y + 10.5], said, { anchor: 'middle', size, bold: true, halo: true })
      )
    })
    .join('')
}

/** A part of the table, and where the next one begins. */
type Part = { readonly drawn: string; readonly end: number }

function stations(map: CushionMap, width: number, { words }: MapContext): Part {
  const across = map.stations.map((s) => map.cells.filter((c) => c.station === s.at))
  const wide = (width - left - 2) / Math.max(1, ...across.map((c) => c.length))
  const top = 15
  return {
    drawn: [
      say([left, 9], words.rail, { size }),
      say([width - 2, 9], words.outside, { anchor: 'end', size }),
      ...map.stations.map(
        (s, i) =>
          say([left - 4, top + i * high + 10.5], s.text, { anchor: 'end', size }) +
          row(across[i] ?? [], map, [left, top + i * high], wide),
      ),
    ].join(''),
    end: top + map.stations.length * high + 6,
  }
}

function legend(map: CushionMap, from: number, context: MapContext): Part {
  const top = from + 10
  return {
    drawn:
      say([1, top], wantedSaid(context), { size: 9.4, bold: true }) +
      classNames
        .map((of, i) => {
          const y = top + 6 + i * high
          return (
            patterned(boxField([1, y], [24, 11]), of) +
            say([31, y + 9], classSaid(of, map, context), { size })
          )
        })
        .join(''),
    end: top + 6 + classNames.length * high,
  }
}

/** Every move with its number, what is left, and when it was found. */
function moves(map: CushionMap, width: number, from: number, context: MapContext): Part {
  const { words } = context
  let y = from + 12
  const parts: string[] = []
  if (map.moves.length > 0) {
    parts.push(say([1, y], words.take, { size: 9.4, bold: true }))
    y += 14
  }
  for (const [i, move] of map.moves.entries()) {
    const said = wrapped(moveSaid(move, context), width - 20, size)
    parts.push(numberedDisc([7, y - 3], i + 1), lines([17, y], said, { size }))
    y += said.length * 10 + 4
  }
  for (const left of leftSaid(map, context)) {
    const said = wrapped(left, width - 4, size, true)
    parts.push(lines([1, y], said, { size, bold: true }))
    y += said.length * 10 + 2
  }
  parts.push(say([1, y + 3], fill(words.foundOn, { date: map.day }), { size }))
  return { drawn: parts.join(''), end: y + 8 }
}

/** What the map shows, where it has no room: a row for each station. */
export function drawTable(map: CushionMap, width: number, context: MapContext): string {
  const first = stations(map, width, context)
  const second = legend(map, first.end, context)
  const third = moves(map, width, second.end, context)
  return sheetOf(width, third.end, context.alt, first.drawn + second.drawn + third.drawn)
}
