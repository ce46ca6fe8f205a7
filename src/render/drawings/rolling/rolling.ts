import type { RollingBlock } from '../../../model/manual/charts.ts'
import { fill } from '../../../model/pattern.ts'
import { declareDrawing } from '../drawing.ts'
import { arrowAlong, poly, sheetOf, slab } from '../ink.ts'
import { lines, say, widthOf, wrapped } from '../letters.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'
import {
  behind,
  lapsPerStrip,
  left,
  outerAt,
  page,
  railName,
  shutText,
  thenText,
  totalText,
  wholeWidth,
} from './parts.ts'
import { rollingTable, rowsToShow } from './table.ts'
import { rollingRows } from './tracks.ts'
import { dropLines, truckHigh } from './trucks.ts'
import { type RollingContext as Context, wording } from './words.ts'

/** Where the inside tires of each truck run, at the end of each row. */
function placesColumn(
  block: RollingBlock,
  top: number,
  rowHigh: number,
  rows: number,
  { words }: Context,
): string {
  const at = page - 4
  const trucks = (rollingRows(block)[0] ?? []).map(({ truck }) => truck).join(' · ')
  const said = rollingRows(block)
    .slice(0, rows)
    .map((laps, i) => {
      const text = laps.flatMap((lap) => lap.at ?? []).join(' · ')
      return say([at, top + i * rowHigh + (rowHigh - 4) / 2 + 3], text, {
        anchor: 'end',
        bold: true,
        halo: true,
      })
    })
  return say([at, top - 6], fill(words.places, { trucks }), { anchor: 'end' }) + said.join('')
}

function drawPage(block: RollingBlock, context: Context): string {
  const { words, alt } = context
  const rows = rowsToShow(block, true)
  const shown = rollingRows(block).slice(0, rows).flat()
  const view = Math.max(...shown.map((lap) => outerAt(block, lap.place))) + 0.1
  const k = (page - left - 92) / view
  const across = { left, k }
  const trucks = behind(block, across, context)
  const top = trucks.foot + 14
  const rowHigh = rows > 8 ? 16 : 20
  const foot = top + rows * rowHigh
  const x = (off: number): number => left + off * k
  const bar = shutText(block, context)
  // The words of the bar may be wider than the bar.
  const thenAt = x(block.width / 2) + Math.max(block.width * k, widthOf(bar, 9, true)) / 2 + 6
  return sheetOf(
    page,
    foot + 105,
    alt,
    [
      ...(rollingRows(block)[0] ?? [])
        .slice(0, 2)
        .map((lap, i) =>
          dropLines(block, across, lap.place, 4 + truckHigh + i * (truckHigh + 22), top),
        ),
      trucks.drawn,
      rollingTable(block, { left, k, top, view, row: rowHigh, rows, size: 9 }, words),
      placesColumn(block, top, rowHigh, rows, context),
      poly(
        [
          [left, top - 10],
          [left, foot + 16],
        ],
        { pen: 'bold' },
      ),
      slab([left, foot], block.width * k, 14, { fill: 'stone', pen: 'line' }),
      say([left + (block.width * k) / 2, foot + 10], bar, {
        anchor: 'middle',
        bold: true,
        halo: true,
      }),
      say([thenAt, foot + 10], thenText(block, context)),
      say([x(0) - 6, top - 6], railName(context), { anchor: 'end' }),
      lines([x(outerAt(block, 0)) + 34, 4 + truckHigh + 34], wrapped(words.near, 150, 9), {}),
      wholeWidth(block, foot + 41, context),
    ].join(''),
  )
}

function drawNarrow(block: RollingBlock, context: Context, narrow: number): string {
  const { words, alt } = context
  const rows = rowsToShow(block, false)
  const edge = 30
  const view = block.width + 0.35
  const k = (narrow - edge - 2) / view
  const rowHigh = rows > 6 ? 15 : 18
  const top = 16
  const foot = top + rows * rowHigh
  const size = 8.4
  const total = wrapped(totalText(block, context), narrow - 4, size, true)
  const below = [
    ...(block.trucks > 1
      ? [
          fill(words.key, {
            trucks: Array.from({ length: block.trucks }, (_, i) => i + 1).join(', '),
          }),
        ]
      : []),
    ...wrapped(shutText(block, context), narrow - 4, size),
    ...wrapped(thenText(block, context, 1), narrow - 4, size),
    ...wrapped(words.near, narrow - 4, size),
    ...total,
  ]
  return sheetOf(
    narrow,
    foot + 4 + below.length * 11,
    alt,
    [
      say([edge + 3, 10], railName(context), { size, bold: true }),
      arrowAlong(
        [
          [118, 7],
          [134, 7],
        ],
        { pen: 1.2 },
        5,
      ),
      say([138, 10], words.outside, { size }),
      rollingTable(block, { left: edge, k, top, view, row: rowHigh, rows, size }, words),
      poly(
        [
          [edge, 4],
          [edge, foot],
        ],
        { pen: 'bold' },
      ),
      poly(
        [
          [edge, foot],
          [narrow - 2, foot],
        ],
        { pen: 'hair' },
      ),
      ...below.map((said, i) =>
        say([2, foot + 11 + i * 11], said, { size, bold: i >= below.length - total.length }),
      ),
    ].join(''),
  )
}

/** Each lap in words: where the inside tires of every truck run. */
function numbers(context: Context): string {
  const { manual, words } = context
  const block = manual.charts.rolling
  if (!block) return ''
  const rows = rollingRows(block)
    .slice(0, rowsToShow(block, false))
    .map((laps, i) =>
      fill(words.row, {
        number: i + 1,
        trucks: laps.map(({ truck, at }) => fill(words.drives, { truck, at: at ?? '' })).join(', '),
      }),
    )
  return [
    fill(words.between, { width: block.between }),
    ...rows,
    shutText(block, context),
    thenText(block, context),
    fill(words.strips, { strips: block.starts.length, laps: lapsPerStrip(block) }),
    `${words.starts} ${block.begins.join(', ')}`,
    words.near,
    totalText(block, context),
  ].join('; ')
}

function draw(context: Context, size: DrawingSize): string {
  const block = context.manual.charts.rolling
  if (!block) return ''
  return size === 'page'
    ? drawPage(block, context)
    : drawNarrow(block, context, drawingWidths[size])
}

/** Rolling with the tires of trucks: what each lap shuts, across the track to scale. */
export const rolling = declareDrawing({
  name: 'rolling',
  labels: wording,
  needs: 'roll.move',
  draw,
  numbers,
})
