import type { OvalGeometry } from '../../model/manual.ts'
import { arrow, arrowHead, dashed, line, path, type Point, polyline, svg, text } from './svg.ts'
import type { DrawingContext } from './drawing-context.ts'

/** Where a point stands that lies `s` along the rail and `off` outside it, meters, seen from above (y down). */
export function onOval(g: OvalGeometry, s: number, off: number): { point: Point; out: Point } {
  const arc = Math.PI * g.radius
  const around = ((s % g.railLength) + g.railLength) % g.railLength
  const mirror = g.direction === 'clockwise' ? -1 : 1
  const place = (x: number, y: number, ox: number, oy: number): { point: Point; out: Point } => ({ point: [mirror * (x + off * ox), y + off * oy], out: [mirror * ox, oy] })
  const turn = (cx: number, phi: number) => place(cx + g.radius * Math.cos(phi), g.radius * Math.sin(phi), Math.cos(phi), Math.sin(phi))
  if (around < g.straight) return place(-g.straight / 2 + around, g.radius, 0, 1)
  if (around < g.straight + arc) return turn(g.straight / 2, Math.PI / 2 - (around - g.straight) / g.radius)
  if (around < 2 * g.straight + arc) return place(g.straight / 2 - (around - g.straight - arc), -g.radius, 0, -1)
  return turn(-g.straight / 2, -Math.PI / 2 - (around - 2 * g.straight - arc) / g.radius)
}

/** Path data of the oval: `onStraight` and `onTurn` are distances outside the rail, m; `k` is pixels a meter. */
export function ovalPath(g: OvalGeometry, onStraight: number, onTurn: number, k: number, [cx, cy]: Point): string {
  const f = (x: number): string => String(Math.round(x * 1000) / 1000)
  const h = (g.straight / 2) * k
  const rs = (g.radius + onStraight) * k
  const rt = (g.radius + onTurn) * k
  const join = rs === rt ? '' : undefined
  return [
    `M${f(cx - h)} ${f(cy + rs)}H${f(cx + h)}`, join ?? `V${f(cy + rt)}`,
    `A${f(rt)} ${f(rt)} 0 0 0 ${f(cx + h)} ${f(cy - rt)}`, join ?? `V${f(cy - rs)}`,
    `H${f(cx - h)}`, join ?? `V${f(cy - rt)}`,
    `A${f(rt)} ${f(rt)} 0 0 0 ${f(cx - h)} ${f(cy + rt)}Z`,
  ].join('')
}

const symbols: Readonly<Record<OvalGeometry['marks'][number]['kind'], (p: Point, along: Point) => string>> = {
  gate: ([x, y], [ax, ay]) => line([x - 9 * ax, y - 9 * ay], [x + 9 * ax, y + 9 * ay], 'bold'),
  drain: ([x, y]) => `<circle cx="${x}" cy="${y}" r="5" fill="none" stroke="currentColor" stroke-width="1.5"/><path d="M${x - 3} ${y}h6M${x} ${y - 3}v6" stroke="currentColor" stroke-width="1.2"/>`,
  water: ([x, y]) => `<path d="M${x} ${y - 8}c4 6 6 8 6 11a6 6 0 0 1-12 0c0-3 2-5 6-11Z" fill="currentColor"/>`,
  finish: () => '',
  stand: ([x, y]) => `<rect x="${x - 30}" y="${y}" width="60" height="12" fill="none" stroke="currentColor" stroke-width="1.5"/>`,
  stockpile: ([x, y]) => `<path d="M${x - 11} ${y + 6}L${x} ${y - 9}L${x + 11} ${y + 6}Z" fill="currentColor"/>`,
}

function marks(g: OvalGeometry, k: number, c: Point): string {
  const px = ([x, y]: Point): Point => [c[0] + k * x, c[1] + k * y]
  // Names of gates stand outside the way of loads.
  const hauls = g.marks.some((m) => m.kind === 'stockpile')
  return g.marks
    .map((m) => {
      const { point, out } = onOval(g, m.station, m.kind === 'finish' ? 0 : m.offset)
      const p = px(point)
      const inside = m.offset === 0 && m.kind !== 'finish'
      if (m.kind === 'finish') {
        const end = px(onOval(g, m.station, g.widthStraights).point)
        return line(p, end, 'bold') + text([p[0] - out[0] * 42, p[1] - out[1] * 42 + 4], m.name, 'middle', 14)
      }
      // Inside the rail the station numbers come first.
      const away = inside ? -44 : m.kind === 'stand' || m.kind === 'stockpile' || (hauls && m.kind === 'gate') ? 30 : 20
      const at: Point = [p[0] + out[0] * away, p[1] + out[1] * away + 5]
      const anchor = Math.abs(out[0]) < 0.35 ? 'middle' : (out[0] > 0) !== inside ? 'start' : 'end'
      const shift: Point = m.kind === 'stockpile' ? [p[0] + out[0] * beside, p[1] + out[1] * beside] : m.kind === 'stand' ? [p[0], p[1] + (out[1] > 0 ? 6 : -18)] : p
      return symbols[m.kind](shift, [-out[1], out[0]]) + text(at, m.name, anchor, 14)
    })
    .join('')
}

/** How far outside the track loads are hauled, as drawn, px. */
const beside = 11

/** The way of loads from each stockpile to the nearest gate at the outside, the shorter way around. */
function haulRoutes(g: OvalGeometry, k: number, c: Point): string {
  const gates = g.marks.filter((m) => m.kind === 'gate' && m.offset > 0)
  return g.marks.filter((m) => m.kind === 'stockpile').map((pile) => {
    const way = (to: number): number => ((((to - pile.station) % g.railLength) + 1.5 * g.railLength) % g.railLength) - g.railLength / 2
    const [along] = gates.map((m) => way(m.station)).sort((a, b) => Math.abs(a) - Math.abs(b))
    if (along === undefined) return ''
    const steps = 24
    const points = Array.from({ length: steps + 1 }, (_, i): Point => {
      const { point } = onOval(g, pile.station + (along * i) / steps, Math.max(g.widthStraights, g.widthTurns) + beside / k)
      return [c[0] + k * point[0], c[1] + k * point[1]]
    })
    const [before, end] = [points.at(-2) ?? c, points.at(-1) ?? c]
    return polyline(points, 'line', 'class="haul" stroke-dasharray="2 4"') + arrowHead(end, Math.atan2(end[1] - before[1], end[0] - before[0]), 10)
  }).join('')
}

function stations(g: OvalGeometry, k: number, c: Point, us: boolean): string {
  const px = ([x, y]: Point): Point => [c[0] + k * x, c[1] + k * y]
  const unit = us ? 0.3048 : 1
  const count = Math.ceil(g.railLength / g.stationSpacing - 1e-9)
  return Array.from({ length: count }, (_, i) => {
    const { point, out } = onOval(g, i * g.stationSpacing, 0)
    const [x, y] = px(point)
    const long = i % 5 === 0
    const tick = line([x, y], [x - out[0] * (long ? 9 : 5), y - out[1] * (long ? 9 : 5)], 'thin')
    return long ? tick + text([x - out[0] * 22, y - out[1] * 20 + 4.5], String(Math.round((i * g.stationSpacing) / unit)), 'middle', 12.5) : tick
  }).join('')
}

/** A round length for the scale bar, about a sixth of the oval. */
function scaleBar(g: OvalGeometry, k: number, at: Point, us: boolean): string {
  const unit = us ? 0.3048 : 1
  const rough = (g.straight + 2 * g.radius) / 6 / unit
  const round = [10, 20, 50, 100, 200, 250, 500, 1000].filter((x) => x <= rough).at(-1) ?? 10
  const w = round * unit * k
  return line(at, [at[0] + w, at[1]], 'bold') + line([at[0], at[1] - 5], [at[0], at[1] + 5], 'line') + line([at[0] + w, at[1] - 5], [at[0] + w, at[1] + 5], 'line') + text([at[0] + w / 2, at[1] - 9], `${round} ${us ? 'ft' : 'm'}`, 'middle', 14)
}

/** The oval to scale, home straight below, station zero at its start in the direction of travel. */
export function planDrawing({ manual, words, q, caption }: DrawingContext): string {
  const g = manual.geometry
  const us = manual.facility.system === 'us'
  const width = 900
  const margin = 62
  const side = 96
  const k = (width - 2 * side) / (g.straight + 2 * (g.radius + g.widthTurns))
  const c: Point = [width / 2, margin + k * (g.radius + g.widthTurns)]
  const height = c[1] + k * (g.radius + g.widthTurns) + margin
  const mid = k * g.radius
  const way = g.direction === 'clockwise' ? -1 : 1
  const label = (y: number, words: string): string => text([c[0], c[1] + y], words, 'middle', 16)
  const w = k * g.widthStraights
  const top = c[1] - mid
  return svg(width, height, caption, [
    path(ovalPath(g, g.widthStraights, g.widthTurns, k, c), 'line'),
    path(ovalPath(g, g.offset, g.offset, k, c), 'thin', dashed),
    path(ovalPath(g, 0, 0, k, c), 'bold'),
    stations(g, k, c, us),
    haulRoutes(g, k, c),
    marks(g, k, c),
    label(-34, `${words['lap']} ${q('shape.lap')}`),
    label(-10, `${words['straight']} ${q('shape.straight')}`),
    label(14, `${words['radius']} ${q('shape.radius')}`),
    arrow([c[0] - way * 55, c[1] + 46], [c[0] + way * 55, c[1] + 46], 'line'),
    text([c[0], c[1] + 66], words['travel'] ?? '', 'middle', 14),
    line([c[0] + 40, top], [c[0] + 40, top - w], 'thin'),
    text([c[0] + 50, top - w / 2 + 5], `${q('oval.width.straights')} ${words['width']}`, 'start', 14),
    text([c[0] + way * ((k * g.straight) / 2 + k * g.radius - 34), c[1] + 5], `${q('oval.width.turns')} ${words['width']}`, 'end', 14),
    scaleBar(g, k, [margin - 30, height - 18], us),
  ].join(''))
}
