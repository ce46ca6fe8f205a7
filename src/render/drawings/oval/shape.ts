import type { OvalGeometry } from '../../../model/manual/geometry.ts'
import type { Point } from '../ink.ts'

/**
 * Where a point stands that lies `s` along the rail and `off` outside it, meters, seen from above
 * (y down).
 */
export function onOval(g: OvalGeometry, s: number, off: number): { point: Point; out: Point } {
  const arc = Math.PI * g.radius
  const around = ((s % g.railLength) + g.railLength) % g.railLength
  const mirror = g.direction === 'clockwise' ? -1 : 1
  const place = (x: number, y: number, ox: number, oy: number): { point: Point; out: Point } => ({
    point: [mirror * (x + off * ox), y + off * oy],
    out: [mirror * ox, oy],
  })
  const turn = (cx: number, phi: number) =>
    place(cx + g.radius * Math.cos(phi), g.radius * Math.sin(phi), Math.cos(phi), Math.sin(phi))
  if (around < g.straight) return place(-g.straight / 2 + around, g.radius, 0, 1)
  if (around < g.straight + arc)
    return turn(g.straight / 2, Math.PI / 2 - (around - g.straight) / g.radius)
  if (around < 2 * g.straight + arc)
    return place(g.straight / 2 - (around - g.straight - arc), -g.radius, 0, -1)
  return turn(-g.straight / 2, -Math.PI / 2 - (around - 2 * g.straight - arc) / g.radius)
}

/**
 * How wide the track is at a station, m. Where straights and turns differ, the fence runs from one
 * width to the other over the last eighth of a straight, since no fence has a step in it.
 */
export function widthAt(g: OvalGeometry, s: number): number {
  const arc = Math.PI * g.radius
  const around = ((s % g.railLength) + g.railLength) % g.railLength
  const onStraight = around < g.straight ? around : around - g.straight - arc
  if (onStraight < 0 || onStraight > g.straight) return g.widthTurns
  const toTurn = Math.min(onStraight, g.straight - onStraight) / (g.straight / 8)
  return g.widthTurns + (g.widthStraights - g.widthTurns) * Math.min(1, toTurn)
}

/** Path data of the oval at a distance outside the rail, m; `k` is points a meter. */
export function ovalPath(g: OvalGeometry, off: number, k: number, [cx, cy]: Point): string {
  const f = (x: number): string => String(Math.round(x * 1000) / 1000)
  const h = (g.straight / 2) * k
  const r = (g.radius + off) * k
  return [
    `M${f(cx - h)} ${f(cy + r)}H${f(cx + h)}`,
    `A${f(r)} ${f(r)} 0 0 0 ${f(cx + h)} ${f(cy - r)}`,
    `H${f(cx - h)}`,
    `A${f(r)} ${f(r)} 0 0 0 ${f(cx - h)} ${f(cy + r)}Z`,
  ].join('')
}
