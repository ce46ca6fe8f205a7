import type { Reading } from '../../model/survey.ts'

/** Areas of a section across the track that lie above and below what is wanted, m². */
export type SectionParts = { readonly over: number; readonly short: number }

/** Area above zero under a straight line from `a` to `b` over a stretch. */
function above(a: number, b: number, stretch: number): number {
  if (a <= 0 && b <= 0) return 0
  if (a >= 0 && b >= 0) return ((a + b) / 2) * stretch
  const high = Math.max(a, b)
  return ((high / (high - Math.min(a, b))) * stretch * high) / 2
}

/**
 * How much of a section lies above what is wanted and how much is missing, by trapezoids between
 * the readings; the outermost readings hold as far as the rail and the edge.
 * @param readings At one station, from the rail outward.
 * @param wanted Height or depth wanted at an offset, m.
 * @param width Of the track there, m.
 * @returns m², both ≥ 0.
 * @see geometry
 */
export function sectionParts(
  readings: readonly Reading[],
  wanted: (offset: number) => number,
  width: number,
): SectionParts {
  const inside = readings.map((r) => ({ x: r.offset, y: r.value - wanted(r.offset) }))
  const first = inside[0]
  const last = inside.at(-1)
  if (!first || !last) return { over: 0, short: 0 }
  const points = [{ x: 0, y: first.y }, ...inside, { x: Math.max(width, last.x), y: last.y }]
  return points.slice(1).reduce(
    (sum, p, i) => {
      const before = points[i] ?? p
      return {
        over: sum.over + above(before.y, p.y, p.x - before.x),
        short: sum.short + above(-before.y, -p.y, p.x - before.x),
      }
    },
    { over: 0, short: 0 },
  )
}
