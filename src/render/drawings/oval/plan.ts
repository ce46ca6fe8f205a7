import { declareDrawing } from '../drawing.ts'
import { type Point, poly, sheetOf, stroke } from '../ink.ts'
import type { DrawingSize } from '../sizes.ts'
import { type Detail, details, type OvalContext, wording } from './detail.ts'
import { aroundPlan, fenceOnPlan, type PlanFrame } from './frame.ts'
import { type Box, drawLabel, type PlacedLabel, placeLabels, pointsAlong } from './label-places.ts'
import { haulParts, markList, markParts, type PlanPart } from './marks.ts'
import { directionPart, middlePart, stationParts, widthParts } from './measures.ts'
import { northArrow, scaleBar } from './scale-and-north.ts'
import { ovalPath } from './shape.ts'
import { stationText, zoneParts, zones } from './zones.ts'

const usesFeet = ({ manual }: OvalContext): boolean => manual.facility.system === 'us'

/** Everything with a label, in the order in which labels are placed. */
function labelledParts(frame: PlanFrame, detail: Detail, context: OvalContext): PlanPart[] {
  const feet = usesFeet(context)
  const { full, size } = detail
  return [
    full ? middlePart(frame, detail, context) : directionPart(frame),
    ...stationParts(frame, detail, feet),
    ...(full ? widthParts(frame, detail, context) : []),
    ...markParts(frame, size, !full),
    ...(full ? zoneParts(frame, detail, context, feet) : []),
    ...haulParts(frame, full ? context.words.haul : '', size),
  ]
}

function frameOf({ manual }: OvalContext, { width, side, margin }: Detail): PlanFrame {
  const g = manual.geometry
  const k = (width - 2 * side) / (g.straight + 2 * (g.radius + g.widthTurns))
  return { g, k, middle: [width / 2, margin + k * (g.radius + g.widthTurns)] }
}

/** Labels at their places, clear of the track and of everything else that is drawn. */
function placedLabels(
  { width, margin }: Detail,
  frame: PlanFrame,
  parts: readonly PlanPart[],
): readonly PlacedLabel[] {
  const { g, k, middle } = frame
  const around = [...pointsAlong(aroundPlan(frame, 0)), ...pointsAlong(fenceOnPlan(frame))]
  const bottom = middle[1] + k * (g.radius + g.widthTurns) + margin
  const box: Box = { left: 2, right: width - 2, top: 2, bottom }
  return placeLabels(
    parts.flatMap((p) => p.labels),
    [...around, ...parts.flatMap((p) => p.lines)],
    box,
  )
}

/** How far from the rail the line of the lap is drawn at the least, points: it would touch the rail. */
const lapApart = 3

function track(frame: PlanFrame): readonly string[] {
  const { g, k, middle } = frame
  const lap = Math.max(g.offset, lapApart / k)
  return [
    poly(fenceOnPlan(frame), { pen: 0.8 }),
    stroke(ovalPath(g, lap, k, middle), { pen: 'hair', dash: '3 2' }),
    stroke(ovalPath(g, 0, k, middle), { pen: 1.6 }),
  ]
}

/** Everything on the plan, labels placed: as drawn, and as a test looks at it. */
export function planParts(
  context: OvalContext,
  which: DrawingSize,
): {
  readonly width: number
  readonly height: number
  readonly drawn: string
  readonly labels: readonly PlacedLabel[]
} {
  const detail = details[which]
  const frame = frameOf(context, detail)
  const { g, k, middle } = frame
  const parts = labelledParts(frame, detail, context)
  const labels = placedLabels(detail, frame, parts)
  // No more paper above and below than the labels take; the scale and the arrow to north stand
  // below all.
  const outer = k * (g.radius + g.widthTurns)
  const top = Math.min(middle[1] - outer, ...labels.map((l) => l.box.top)) - 4
  const foot = Math.max(middle[1] + outer, ...labels.map((l) => l.box.bottom)) + 22
  const list = detail.full
    ? { drawn: '', high: 0 }
    : markList(frame, [4, foot + detail.size + 3], detail.width - 8, detail.size)
  const bottom = foot + list.high + (list.high > 0 ? 5 : 0)
  const north: Point = [detail.width - 20, foot - 20]
  const drawn = [
    ...track(frame),
    ...parts.map((p) => p.drawn),
    ...labels.map(drawLabel),
    list.drawn,
    scaleBar(frame, [6, foot - 5], detail, usesFeet(context)),
    northArrow(g, north, detail.size, context.words.north),
  ]
  return {
    width: detail.width,
    height: bottom - top,
    labels,
    drawn: `<g transform="translate(0 ${(-top).toFixed(2)})">${drawn.join('')}</g>`,
  }
}

/** The plan for a width, as SVG. */
export function drawPlan(context: OvalContext, which: DrawingSize): string {
  const { width, height, drawn } = planParts(context, which)
  return sheetOf(width, height, context.alt, drawn)
}

/** Zones and marks in words. */
function numbers(context: OvalContext): string {
  const g = context.manual.geometry
  const feet = usesFeet(context)
  const parts = zones(g).map(
    ({ name, from, to }) =>
      `${context.words[name]}: ${stationText(from, feet)} – ${stationText(to, feet)}`,
  )
  return [...parts, ...g.marks.map((m) => `${m.name}: ${stationText(m.station, feet)}`)].join('; ')
}

/** The oval to scale, home straight below, station zero at its start in the direction of travel. */
export const plan = declareDrawing({
  name: 'plan',
  labels: wording,
  draw: drawPlan,
  numbers,
})
