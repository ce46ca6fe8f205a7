import { area, loose, type Point, poly, slab, solid } from '../ink.ts'

/** Inches in a meter: parts of these drawings are laid out in inches, whatever the units. */
export const inches = (si: number): number => si / 0.0254

/** A piece of ground cut open: from `x` on, `wide`, its surface and its base, points. */
export type Cut = {
  readonly x: number
  readonly wide: number
  readonly surface: number
  readonly base: number
}

/** Height of a line through points at a place; `level` beside them. */
function heightAt(edge: readonly Point[], place: number, level: number): number {
  const i = edge.findIndex((p) => p[0] >= place)
  const [a, b] = [edge[i - 1], edge[i]]
  if (!a || !b) return level
  return b[0] === a[0] ? b[1] : a[1] + ((b[1] - a[1]) * (place - a[0])) / (b[0] - a[0])
}

/** Cushion, dotted, under an edge of points, and base, hatched, below it. */
export function layers(
  { x, wide, surface, base }: Cut,
  edge: readonly Point[] = [],
  seed = 4,
): string {
  const whole: Point[] = [[x, surface], ...edge, [x + wide, surface]]
  return (
    loose(
      x,
      x + wide,
      (at) => heightAt(whole, at, surface),
      () => base,
      { every: 10, seed },
    ) +
    solid([
      [x, base],
      [x + wide, base],
    ]) +
    poly(whole, { pen: 1.5 })
  )
}

/** A tooth from its frame down to its tip. */
export const tooth = (x: number, from: number, to: number, half = 2.2): string =>
  area(
    [
      [x - half, from],
      [x + half, from],
      [x + half * 0.9, Math.max(from, to - 4)],
      [x, to],
      [x - half * 0.9, Math.max(from, to - 4)],
    ],
    { fill: 'ink', pen: 0.3 },
  )

/** A harrow from the side: frame and teeth that reach down to `tip`. */
export const harrow = (x: number, top: number, wide: number, tip: number, count = 3): string =>
  slab([x, top], wide, 5, { fill: 'paper' }) +
  Array.from({ length: count }, (_, i) => tooth(x + (wide * (i + 0.5)) / count, top + 5, tip)).join(
    '',
  )

/** A surface that was worked: small waves from `from` to `to`. */
export function waves(from: number, to: number, y: number): Point[] {
  const count = Math.max(1, Math.round((to - from) / 2.5))
  return Array.from(
    { length: count + 1 },
    (_, i): Point => [from + ((to - from) * i) / count, y + (i % 2 === 0 ? 0 : -1.6)],
  )
}
