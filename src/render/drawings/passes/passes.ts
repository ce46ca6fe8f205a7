import type { PassPattern } from '../../../model/manual/charts.ts'
import { fill } from '../../../model/pattern.ts'
import { decimalText } from '../../../model/quantity/number-text.ts'
import { type DeclaredDrawing, declareDrawing } from '../drawing.ts'
import { arrowAlong, type Point, sheetOf } from '../ink.ts'
import { say, wrapped } from '../letters.ts'
import { drawLabel, placeLabels } from '../oval/label-places.ts'
import { type DrawingSize, drawingWidths } from '../sizes.ts'
import { closeUp, pushesRow } from './close-up.ts'
import { wideFrame } from './frame.ts'
import { lanesOf } from './lanes.ts'
import { drawRing, type Ring } from './ring.ts'
import { ringLabels, ringLines } from './ring-labels.ts'
import { routeOf } from './route.ts'
import { trucksCloseUp } from './trucks-close-up.ts'
import { type PassContext, wording } from './words.ts'

function ringOf(pattern: PassPattern, { manual }: PassContext, size: DrawingSize): Ring {
  const g = manual.geometry
  const full = size === 'page'
  const lanes = lanesOf(g, pattern)
  const room = full
    ? { pitch: 7, infield: pattern.band === undefined ? 64 : 78 }
    : size === 'side'
      ? { pitch: 3.6, infield: 24 }
      : { pitch: 6, infield: 58 }
  const narrowest = Math.min(lanes.reach(g.straight / 2), lanes.reach(g.straight + 1))
  const step = lanes.count < 2 ? narrowest : (narrowest - lanes.covers) / (lanes.count - 1)
  return {
    frame: wideFrame(g, step, { width: drawingWidths[size], side: full ? 6 : 4, ...room }),
    pattern,
    lanes,
    route: routeOf(g),
    full,
  }
}

/** All laps; where trucks share them, those that each drives. */
function lapsText(
  { figure, perStrip, strips, laps }: PassPattern,
  { words, q }: PassContext,
): string {
  if (perStrip > 1) return fill(words.eachTruck, { laps: q('roll.each') })
  const all = q(`${figure}.laps`)
  return laps === 2 * strips
    ? fill(words.lapsTwice, { strips, laps: all })
    : fill(words.laps, { laps: all })
}

/** How the last lap fits where the strips together are wider than the track; else empty. */
function lastText(pattern: PassPattern, { manual, words }: PassContext): string {
  const { strips, covers, over, band, from } = pattern
  const { widthStraights, widthTurns } = manual.geometry
  const together = covers + (strips - 1) * (covers - over)
  const isFitted = together > Math.min(widthStraights, widthTurns) + 0.1
  if (strips < 2 || band !== undefined || !isFitted) return ''
  return from === 'rail' ? words.lastOut : words.lastIn
}

/** Laps beyond the strips: all of it once more. */
function againText(
  { strips, laps, perStrip }: PassPattern,
  { words }: PassContext,
  short = false,
): string {
  if (laps <= strips || perStrip > 1) return ''
  if (laps === strips + 1) return fill(words.againOne, { number: laps })
  return fill(short ? words.againShort : words.again, { from: strips + 1, to: laps })
}

/** How far each lap lies beyond the one before; empty where there is one alone. */
function addsText(pattern: PassPattern, { words, q }: PassContext): string {
  if (pattern.strips < 2 || pattern.perStrip > 1) return ''
  return pattern.half
    ? words.addsHalf
    : fill(words.adds, { width: q(`${pattern.figure}.effective`) })
}

/** Strips that take several laps of each truck, and what all trucks drive. */
function perStripTexts(
  { perStrip, strips }: PassPattern,
  { manual, words, q }: PassContext,
): readonly string[] {
  if (perStrip < 2) return []
  const trucks = manual.charts.rolling?.trucks ?? 1
  const laps = Math.round((perStrip / trucks) * 10) / 10
  return [fill(words.perStrip, { strips, laps }), fill(words.allTrucks, { laps: q('roll.laps') })]
}

/** Which way horses and machines go, in an arrow with words on both sides. */
function wayArrow([x, y]: Point, ring: Ring, { words }: PassContext): string {
  const way = ring.frame.g.direction === 'clockwise' ? -1 : 1
  const [before, after] = way > 0 ? [words.horses, words.machine] : [words.machine, words.horses]
  return (
    arrowAlong(
      [
        [x - way * 32, y],
        [x + way * 32, y],
      ],
      { pen: 1.6 },
      7,
    ) +
    say([x - 38, y + 3], before, { anchor: 'end' }) +
    say([x + 38, y + 3], after)
  )
}

/** What stands in the infield of a page: laps, close-up, direction. */
function pageInfield(ring: Ring, context: PassContext): { drawn: string; lines: readonly Point[] } {
  const { frame, pattern } = ring
  const { g, k } = frame
  const [x, y] = frame.middle
  const half = g.radius * k
  const above = ring.route.start > g.railLength / 2 - 1
  const again = againText(pattern, context) || perStripTexts(pattern, context).join(', ')
  const top = y - half + (above ? 39 : 20)
  const foot = y + half - (above ? 12 : 26)
  const window = {
    middle: x,
    top: top + (again ? 24 : 13) + (pattern.from === 'rail' ? 8 : 0),
    wide: Math.min(300, 2 * (g.straight / 2) * k + half),
    high: 0,
  }
  const blade = pushesRow(pattern)
  const high = foot - window.top - (pattern.from !== 'rail' || blade ? 20 : 10)
  const own = { ...window, high }
  const title = say([x, top], lapsText(pattern, context), {
    anchor: 'middle',
    size: 12,
    narrow: true,
  })
  const points: Point[] = []
  for (let px = x - window.wide / 2; px <= x + window.wide / 2; px += 6)
    for (let py = top - 8; py <= foot + 4; py += 5) points.push([px, py])
  return {
    drawn: [
      title,
      again ? say([x, top + 11], again, { anchor: 'middle' }) : '',
      pattern.perStrip > 1 ? trucksCloseUp(ring, own, context) : closeUp(ring, own, context),
      wayArrow([x, foot], ring, context),
    ].join(''),
    lines: points,
  }
}

/** What stands in the infield of a narrow drawing. */
function sideInfield(ring: Ring, context: PassContext): { drawn: string; lines: readonly Point[] } {
  const { words } = context
  const { pattern, frame } = ring
  const [x, y] = frame.middle
  const again = againText(pattern, context, true)
  const rows = [
    pattern.from === 'rail' ? words.startRail : words.startOutside,
    ...[addsText(pattern, context)].filter((said) => said !== ''),
    ...(again ? [again] : []),
    ...perStripTexts(pattern, context),
  ]
  const top = y - (rows.length * 9.8 + 2) / 2 + 4
  return {
    drawn: [
      say([x, top], lapsText(pattern, context), { anchor: 'middle', size: 12, narrow: true }),
      ...rows.map((row, i) => say([x, top + 10.5 + i * 9.8], row, { anchor: 'middle', size: 8.2 })),
    ].join(''),
    lines: [],
  }
}

function drawPasses(pattern: PassPattern, context: PassContext, size: DrawingSize): string {
  const ring = ringOf(pattern, context, size)
  const { frame, full } = ring
  const { g, k, wider } = frame
  const width = drawingWidths[size]
  const infield = full ? pageInfield(ring, context) : sideInfield(ring, context)
  const outer = k * (g.radius + g.widthTurns * wider)
  const [, y] = frame.middle
  const labels = placeLabels(ringLabels(ring, context), [...ringLines(ring), ...infield.lines], {
    left: 2,
    right: width - 2,
    top: y - outer - 60,
    bottom: y + outer + 60,
  })
  const top = Math.min(y - outer, ...labels.map((l) => l.box.top)) - 3
  const bottom = Math.max(y + outer, ...labels.map((l) => l.box.bottom)) + 4
  const factor = decimalText(wider, 1)
  const { words } = context
  const last = lastText(pattern, context)
  const notes = [
    ...(last === '' ? [] : wrapped(last, width - 8, full ? 9 : 8.2)),
    fill(full ? words.wider : words.widerShort, { factor }),
    ...(ring.route.entry || !full ? [] : [words.noGate]),
  ]
  const size9 = full ? 9 : 8.2
  return sheetOf(
    width,
    bottom - top + 11 * notes.length + 2,
    context.alt,
    `<g transform="translate(0 ${(-top).toFixed(1)})">${[
      drawRing(ring),
      infield.drawn,
      ...labels.map(drawLabel),
      ...notes.map((note, i) => say([4, bottom + 9 + i * 11], note, { size: size9 })),
    ].join('')}</g>`,
  )
}

/** The pattern in words. */
function numbers(pattern: PassPattern, context: PassContext): string {
  const { words, q } = context
  const { from, overlap, width, strips } = pattern
  const route = routeOf(context.manual.geometry)
  return [
    route.entry ? fill(words.in, { gate: route.entry.name }) : words.noGate,
    from === 'rail' ? words.startRail : words.startOutside,
    fill(words.strips, { strips, width: q(width) }),
    ...perStripTexts(pattern, context),
    addsText(pattern, context),
    overlap === undefined || strips < 2 ? '' : fill(words.twice, { overlap: q(overlap) }),
    strips > 1 ? `${from === 'rail' ? words.moveOut : words.moveIn} ${words.moveHere}` : '',
    pattern.perStrip > 1 ? '' : fill(words.ends, { number: strips }),
    againText(pattern, context),
    lastText(pattern, context),
    lapsText(pattern, context),
    route.exit ? fill(words.out, { gate: route.exit.name }) : '',
  ]
    .filter((part) => part !== '')
    .join('; ')
}

/**
 * Strips that an implement lays around this oval, and how it is driven.
 * @param figure First part of the names of the figures that the pattern is made from.
 */
function passes<const N extends string>(name: N, figure: string): DeclaredDrawing<N> {
  const patternOf = ({ manual }: PassContext): PassPattern | undefined =>
    manual.charts.passes[figure]
  return declareDrawing({
    name,
    labels: wording,
    draw: (context, size) => {
      const pattern = patternOf(context)
      return pattern ? drawPasses(pattern, context, size) : ''
    },
    numbers: (context) => {
      const pattern = patternOf(context)
      return pattern ? numbers(pattern, context) : ''
    },
  })
}

export const passPatterns = [
  passes('passes-grade', 'grade'),
  passes('passes-blade', 'grade-band'),
  passes('passes-draw-in', 'draw-in'),
  passes('passes-harrow', 'harrow'),
  passes('passes-screen', 'screen'),
  passes('passes-roll', 'roll'),
  passes('passes-drum', 'drum'),
  passes('passes-condition', 'condition'),
  passes('passes-water', 'spray'),
] as const
