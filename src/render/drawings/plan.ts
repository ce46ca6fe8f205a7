import { foot } from '../../model/quantity/units.ts'
import type { DrawingContext } from './drawing-context.ts'
import {
  type Box,
  drawLabel,
  type Label,
  type PlacedLabel,
  placeLabels,
  pointsAlong,
} from './label-places.ts'
import { ovalPath } from './oval-shape.ts'
import { aroundPlan, onPlan, type PlanFrame, stationText, zones } from './plan-frame.ts'
import { haulParts, markParts, type PlanPart } from './plan-marks.ts'
import { arrow, arrowHead, dashed, line, type Point, path, svg, text } from './svg.ts'

/**
 * How much a plan says: `page` is read across a page, `small` in the side column of a posted sheet.
 */
type Detail = {
  readonly width: number
  readonly side: number
  readonly margin: number
  readonly size: number
  readonly full: boolean
}

const details: Readonly<Record<'page' | 'small', Detail>> = {
  page: { width: 900, side: 112, margin: 84, size: 16, full: true },
  small: { width: 440, side: 74, margin: 84, size: 19, full: false },
}

const us = ({ manual }: DrawingContext): boolean => manual.facility.system === 'us'

/** Marks along the rail at every station, every fifth longer and numbered. */
function stationParts(
  frame: PlanFrame,
  { size, full }: Detail,
  feet: boolean,
): readonly PlanPart[] {
  const { g } = frame
  const count = Math.ceil(g.railLength / g.stationSpacing - 1e-9)
  return Array.from({ length: count }, (_, i): PlanPart => {
    const { at, out } = onPlan(frame, i * g.stationSpacing, 0)
    const long = i % 5 === 0
    const inward = (d: number): Point => [at[0] - out[0] * d, at[1] - out[1] * d]
    const number = String(Math.round((i * g.stationSpacing) / (feet ? foot : 1)))
    const [x, y] = inward(24)
    return {
      drawn: line(at, inward(long ? 10 : 5), 'thin'),
      lines: [],
      labels:
        long && full
          ? [
              {
                lines: [number],
                size: size - 0.5,
                spare: true,
                places: [{ at: [x, y + 5.5], anchor: 'middle' }],
              },
            ]
          : [],
    }
  })
}

/**
 * Lines across the track where straights and turns meet, and the names of the zones with their
 * stations.
 */
function zoneParts(
  frame: PlanFrame,
  { size }: Detail,
  { words }: DrawingContext,
  feet: boolean,
): readonly PlanPart[] {
  const { g, k } = frame
  return zones(g).map(({ name, from, to }): PlanPart => {
    const across = [
      onPlan(frame, from, 0).at,
      onPlan(frame, from, Math.max(g.widthStraights, g.widthTurns)).at,
    ] as const
    const turn = name.endsWith('Turn')
    const { at, out } = onPlan(frame, (from + to) / 2, 0)
    const range = `${stationText(from, feet)} – ${stationText(to, feet)}`
    const lines = turn ? [words[name], range] : [`${words[name]}, ${range}`]
    const deep = turn
      ? [0.68, 0.75, 0.82, 0.6].map((part) => g.radius * k * part)
      : [50, 56, 66, 84, 100]
    const asides = [
      0,
      30,
      -30,
      60,
      -60,
      90,
      -90,
      ...(turn ? [] : [120, -120, 150, -150, 190, -190, 230, -230, 270, -270]),
    ]
    const places = deep.flatMap((d) =>
      asides.map((aside) => ({
        at: [
          at[0] - out[0] * d - out[1] * aside,
          at[1] - out[1] * d + (turn ? out[0] * aside : 0) + (out[1] < -0.5 ? 6 : 0),
        ] as Point,
        anchor: 'middle' as const,
      })),
    )
    return {
      drawn: line(across[0], across[1], 'thin', dashed),
      lines: pointsAlong(across),
      labels: [{ lines, size, bold: true, spare: true, places }],
    }
  })
}

/** How wide the track is, on the back straight and in a turn. */
function widthParts(
  frame: PlanFrame,
  { size }: Detail,
  { words, q }: DrawingContext,
): readonly PlanPart[] {
  const { g } = frame
  const arc = Math.PI * g.radius
  const at = (station: number, width: number, quantity: string): PlanPart => {
    const [inner, outer, middle] = [
      onPlan(frame, station, 0),
      onPlan(frame, station, width),
      onPlan(frame, station, width / 2),
    ]
    const words2 = `${q(quantity)} ${words.width}`
    const beside = Math.abs(middle.out[0]) < 0.5
    const places = beside
      ? [10, -10].map((dx) => ({
          at: [middle.at[0] + dx, middle.at[1] + 5.5] as Point,
          anchor: dx > 0 ? ('start' as const) : ('end' as const),
        }))
      : [
          outer.out[0] > 0
            ? { at: [outer.at[0] + 10, outer.at[1] + 6] as Point, anchor: 'start' as const }
            : { at: [outer.at[0] - 10, outer.at[1] + 6] as Point, anchor: 'end' as const },
        ]
    return {
      drawn: line(inner.at, outer.at, 'thin'),
      lines: pointsAlong([inner.at, outer.at]),
      labels: [{ lines: beside ? [words2] : [q(quantity), words.width], size, places }],
    }
  }
  return [
    at(1.62 * g.straight + arc, g.widthStraights, 'oval.width.straights'),
    at(g.straight + arc / 2, g.widthTurns, 'oval.width.turns'),
  ]
}

/** A round length for the scale bar, about a sixth of the oval. */
function scaleBar({ g, k }: PlanFrame, at: Point, { size }: Detail, feet: boolean): string {
  const unit = feet ? foot : 1
  const rough = (g.straight + 2 * g.radius) / 6 / unit
  const round = [10, 20, 50, 100, 200, 250, 500, 1000].filter((x) => x <= rough).at(-1) ?? 10
  const w = round * unit * k
  return (
    line(at, [at[0] + w, at[1]], 'bold') +
    [0, w].map((dx) => line([at[0] + dx, at[1] - 5], [at[0] + dx, at[1] + 5], 'line')).join('') +
    text([at[0] + w / 2, at[1] - 9], `${round} ${feet ? 'ft' : 'm'}`, 'middle', size)
  )
}

/**
 * An arrow to true north; the home straight is drawn level, horses running to the right (to the
 * left where they run clockwise).
 */
function northArrow(bearing: number, clockwise: boolean, [x, y]: Point, size: number): string {
  const angle = (clockwise ? Math.PI : 0) - (bearing * Math.PI) / 180
  const [dx, dy] = [Math.cos(angle) * 20, Math.sin(angle) * 20]
  return (
    arrow([x - dx, y - dy], [x + dx, y + dy], 'line') +
    text([x + dx * 1.75, y + dy * 1.75 + size * 0.36], 'N', 'middle', size, 'font-weight="600"')
  )
}

/** Which way horses go, in heads on the track. */
function directionPart(frame: PlanFrame): PlanPart {
  const { g } = frame
  const heads = [0.45, 0.45 + (g.straight + Math.PI * g.radius) / g.straight].map((place) => {
    const { at, along } = onPlan(frame, place * g.straight, g.widthStraights / 2)
    const forward = g.direction === 'clockwise' ? along : ([-along[0], -along[1]] as const)
    return arrowHead(
      [at[0] + forward[0] * 6, at[1] + forward[1] * 6],
      Math.atan2(forward[1], forward[0]),
      13,
    )
  })
  return { drawn: heads.join(''), lines: [], labels: [] }
}

/** What stands in the middle of the oval: its measures and which way horses go. */
function middlePart(frame: PlanFrame, { size }: Detail, { words, q }: DrawingContext): PlanPart {
  const [x, y] = frame.middle
  const way = frame.g.direction === 'clockwise' ? -1 : 1
  const measures = [`${words.lap} ${q('shape.lap')}`, `${words.radius} ${q('shape.radius')}`]
  const top = y - ((measures.length + 1) * size * 1.3) / 2 + 8
  const below = top + measures.length * size * 1.3
  const label = (words2: string, at: number): Label => ({
    lines: [words2],
    size,
    places: [{ at: [x, at], anchor: 'middle' }],
  })
  return {
    drawn: arrow([x - way * 60, below - 4], [x + way * 60, below - 4], 'line'),
    lines: pointsAlong([
      [x - 62, below - 4],
      [x + 62, below - 4],
    ]),
    labels: [
      ...measures.map((m, i) => label(m, top + i * size * 1.3)),
      label(words.travel, below + size * 1.1),
    ],
  }
}

/** Everything on the plan, labels placed: as drawn, and as a test looks at it. */
export function planParts(
  context: DrawingContext,
  which: keyof typeof details,
): {
  readonly width: number
  readonly height: number
  readonly drawn: string
  readonly labels: readonly PlacedLabel[]
} {
  const g = context.manual.geometry
  const feet = us(context)
  const detail = details[which]
  const { width, side, margin } = detail
  const k = (width - 2 * side) / (g.straight + 2 * (g.radius + g.widthTurns))
  const middle: Point = [width / 2, margin + k * (g.radius + g.widthTurns)]
  const frame: PlanFrame = { g, k, middle }
  const around = [
    ...pointsAlong(aroundPlan(frame, 0)),
    ...pointsAlong(aroundPlan(frame, g.widthStraights)),
  ]
  const inOrder = [
    detail.full ? middlePart(frame, detail, context) : directionPart(frame),
    ...stationParts(frame, detail, feet),
    ...(detail.full ? widthParts(frame, detail, context) : []),
    ...markParts(frame, detail.size),
    ...(detail.full ? zoneParts(frame, detail, context, feet) : []),
    ...haulParts(frame, detail.full ? context.words.haul : '', detail.size),
  ]
  const outer = k * (g.radius + g.widthTurns)
  const frameBox: Box = { left: 4, right: width - 4, top: 4, bottom: middle[1] + outer + margin }
  const labels = placeLabels(
    inOrder.flatMap((p) => p.labels),
    [...around, ...inOrder.flatMap((p) => p.lines)],
    frameBox,
  )
  // No more paper above and below than the labels take; the scale and the arrow to north stand
  // below all.
  const top = Math.min(middle[1] - outer, ...labels.map((l) => l.box.top)) - 8
  const bottom = Math.max(middle[1] + outer, ...labels.map((l) => l.box.bottom)) + 44
  const drawn = [
    path(ovalPath(g, g.widthStraights, g.widthTurns, k, middle), 'line'),
    path(ovalPath(g, g.offset, g.offset, k, middle), 'thin', dashed),
    path(ovalPath(g, 0, 0, k, middle), 'bold'),
    ...inOrder.map((p) => p.drawn),
    ...labels.map(drawLabel),
    scaleBar(frame, [16, bottom - 10], detail, feet),
    g.homeBearing === undefined
      ? ''
      : northArrow(
          g.homeBearing,
          g.direction === 'clockwise',
          [width - 44, bottom - 40],
          detail.size,
        ),
  ]
  return {
    width,
    height: bottom - top,
    labels,
    drawn: `<g transform="translate(0 ${(-top).toFixed(2)})">${drawn.join('')}</g>`,
  }
}

/** The oval to scale, home straight below, station zero at its start in the direction of travel. */
export const planDrawing =
  (which: 'page' | 'small') =>
  (context: DrawingContext): string => {
    // Without gates and drains a small plan would show nothing that anybody looks for.
    if (which === 'small' && context.manual.geometry.marks.length === 0) return ''
    const { width, height, drawn } = planParts(context, which)
    return svg(width, height, context.caption, drawn)
  }

/** Zones and marks in words. */
export function planDetails(context: DrawingContext): string {
  const g = context.manual.geometry
  const feet = us(context)
  const parts = zones(g).map(
    ({ name, from, to }) =>
      `${context.words[name]}: ${stationText(from, feet)} – ${stationText(to, feet)}`,
  )
  return [...parts, ...g.marks.map((m) => `${m.name}: ${stationText(m.station, feet)}`)].join('; ')
}
